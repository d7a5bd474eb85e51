// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/findings.h"

#include "app/ctl/one_tank.h"
#include "app/ctl/verbs.h"
#include "core/care/age.h"
#include "core/wording/finding_sentences.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>
#include <set>

namespace littoral::ctl {

using namespace Qt::StringLiterals;
using findings::Finding;

namespace {

constexpr std::size_t kShown = 5;
constexpr int kBarCells = 10;
constexpr std::size_t kUnknownShown = 4;

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

struct Asked
{
    QString tank;
    int age = 0;
    QDate today;
    const facts::FactBook* book = nullptr;
    std::vector<Finding> shown;
    std::optional<findings::Check> check;
};

QString barText(double bar)
{
    const int full = static_cast<int>(bar * kBarCells + 0.5);
    return u"["_s + QString(full, u'#') + QString(kBarCells - full, u'.') + u"]"_s;
}

QStringList evidenceLines(const std::vector<const findings::Judged*>& items, const Asked& asked)
{
    QStringList lines;
    for (const findings::Judged* judged : items) {
        lines << wording::evidenceText(*judged, *asked.book, asked.today);
    }
    return lines;
}

QStringList unknownLines(const Finding& finding, const Asked& asked)
{
    QStringList lines;
    for (const findings::Judged* judged : finding.unknown()) {
        const QString line = wording::unknownText(*judged, *asked.book);
        if (!lines.contains(line)) {
            lines << line;
        }
    }
    return lines;
}

QStringList translated(const QStringList& texts)
{
    QStringList lines;
    for (const QString& text : texts) {
        lines << wording::factText(text);
    }
    return lines;
}

void addLines(QString& text, const QString& head, const QStringList& lines)
{
    if (lines.isEmpty()) {
        return;
    }
    text += u"   "_s + head + u'\n';
    for (const QString& line : lines) {
        text += u"     "_s + line + u'\n';
    }
}

/// The cautions stand before the actions they belong to; one that has been printed is only named again.
QStringList cautionLines(const Finding& finding, const Asked& asked, std::set<QString>& printed)
{
    QStringList lines;
    for (const QString& id : finding.condition->cautions) {
        const facts::Caution* caution = asked.book->caution(id);
        if (caution == nullptr) {
            continue;
        }
        const QString title = wording::factText(caution->title);
        if (!printed.insert(id).second) {
            lines << words("%1 %2: as above.").arg(id, title);
            continue;
        }
        lines << words("%1 %2").arg(id, title);
        for (const facts::CautionPoint& point : caution->points) {
            lines << u"- "_s + wording::factText(point.text);
        }
    }
    return lines;
}

QString findingsText(const Asked& asked)
{
    QString text = words("%1, day %2").arg(asked.tank).arg(asked.age) + u'\n';
    if (asked.shown.empty()) {
        return text +
               words("Nothing on record points to any condition. What was seen is written down as an observation; "
                     "looks such as wipes_off=easy count as well.") +
               u'\n';
    }
    std::set<QString> printed;
    int place = 0;
    for (const Finding& finding : asked.shown) {
        const facts::Condition& condition = *finding.condition;
        text += u"\n%1. %2  %3 %4\n"_s.arg(++place).arg(wording::factText(condition.name), barText(finding.bar),
                                                        wording::supportText(finding.support));
        text += u"   "_s + wording::factText(condition.look) + u'\n';
        addLines(text, words("Speaks for it"), evidenceLines(finding.holding(), asked));
        addLines(text, words("Speaks against it"), evidenceLines(finding.opposing(), asked));
        addLines(text, words("Not known"), unknownLines(finding, asked).mid(0, kUnknownShown));
        addLines(text, words("Before anything is done"), cautionLines(finding, asked, printed));
        if (const QString deferral = wording::healthDeferral(condition); !deferral.isEmpty()) {
            addLines(text, words("Who decides"), {deferral});
        }
        addLines(text, words("First"), translated(condition.actions));
        addLines(text, words("Avoid"), translated(condition.avoid));
        addLines(text, words("Next look"), {wording::factText(condition.check)});
        addLines(text, words("Source"), {wording::factText(condition.source)});
    }
    if (asked.check) {
        text += u'\n' + wording::checkText(*asked.check) + u'\n';
        for (const QString& line : wording::checkAnswers(*asked.check)) {
            text += u"  "_s + line + u'\n';
        }
    }
    return text + u'\n' + wording::factText(asked.book->aboveAll) + u'\n';
}

QJsonObject findingJson(const Finding& finding, const Asked& asked)
{
    const facts::Condition& condition = *finding.condition;
    return {{u"condition"_s, condition.id},
            {u"name"_s, wording::factText(condition.name)},
            {u"support"_s, findings::supportCode(finding.support)},
            {u"bar"_s, std::round(finding.bar * 100.0) / 100.0},
            {u"points"_s, finding.weighing.points},
            {u"seen"_s, finding.seen},
            {u"for"_s, QJsonArray::fromStringList(evidenceLines(finding.holding(), asked))},
            {u"against"_s, QJsonArray::fromStringList(evidenceLines(finding.opposing(), asked))},
            {u"unknown"_s, QJsonArray::fromStringList(unknownLines(finding, asked))},
            {u"cautions"_s, QJsonArray::fromStringList(condition.cautions)},
            {u"deferral"_s, wording::healthDeferral(condition)},
            {u"own"_s, condition.own},
            {u"actions"_s, QJsonArray::fromStringList(translated(condition.actions))},
            {u"avoid"_s, QJsonArray::fromStringList(translated(condition.avoid))},
            {u"next"_s, wording::factText(condition.check)},
            {u"source"_s, wording::factText(condition.source)}};
}

QByteArray findingsJson(const Asked& asked)
{
    QJsonArray all;
    for (const Finding& finding : asked.shown) {
        all.append(findingJson(finding, asked));
    }
    QJsonObject top{{u"tank"_s, asked.tank},
                    {u"on"_s, asked.today.toString(Qt::ISODate)},
                    {u"age_days"_s, asked.age},
                    {u"findings"_s, all}};
    if (asked.check) {
        top.insert(u"check"_s,
                   QJsonObject{{u"key"_s, asked.check->key->key},
                               {u"text"_s, wording::checkText(*asked.check)},
                               {u"answers"_s, QJsonArray::fromStringList(wording::checkAnswers(*asked.check))}});
    }
    return QJsonDocument(top).toJson();
}

/// What is worth showing: all on request, else the seen ones that are not refuted, five at most.
std::vector<Finding> chosen(std::vector<Finding> ranked, bool all)
{
    if (all) {
        return ranked;
    }
    std::erase_if(
        ranked, [](const Finding& finding) { return !finding.seen || finding.support == findings::Support::Against; });
    if (ranked.size() > kShown) {
        ranked.resize(kShown);
    }
    return ranked;
}

Arguments findingArguments()
{
    return {u"findings FILE --tank NAME [--on DATE] [--all] [--json]"_s,
            words("Weighs what was seen, read and done for and against each condition, names the look that "
                  "would decide best, and says what to do first. It is no diagnosis."),
            {u"littoralctl findings row.littoral --tank \"Fen Corner\""_s,
             u"littoralctl findings row.littoral --tank Sill --on 2026-11-20 --json"_s}};
}

void declareOptions(Arguments& arguments)
{
    declareTank(arguments);
    arguments.option(u"on"_s, u"DATE"_s, words("As it stood on that day; now if not given."));
    arguments.flag(u"all"_s, words("Also what nothing seen points to, and what is refuted."));
    arguments.flag(u"json"_s, words("Print JSON instead of text."));
}

} // namespace

int runFindings(Context& context, const QStringList& line)
{
    Arguments arguments = findingArguments();
    declareOptions(arguments);
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    bool bad = false;
    const record::Moment now = arguments.isSet(u"on"_s)
                                   ? arguments.instant(context, u"on"_s, bad).value_or(context.clock.now())
                                   : context.clock.now();
    if (bad) {
        return kUsage;
    }
    NamedTank named = openNamedTank(context, arguments, store::Access::ReadOnly);
    const record::LayoutRecord* layout = named ? layoutOf(context, named, now) : nullptr;
    if (layout == nullptr) {
        return named.code;
    }
    const facts::FactSet set = facts::factsFor(named.row());
    for (const Error& problem : set.problems) {
        context.err << QString::fromStdString(problem.sentence()) << '\n';
    }
    findings::Report report = findings::findings(set.book, named.row(), *layout, now);
    const Asked asked{named.tank->name,
                      care::ageDays(layout->layout, now.localDate()),
                      now.localDate(),
                      &set.book,
                      chosen(std::move(report.ranked), arguments.isSet(u"all"_s)),
                      report.check};
    if (arguments.json()) {
        context.out << QString::fromUtf8(findingsJson(asked));
    } else {
        context.out << findingsText(asked);
    }
    return kDone;
}

} // namespace littoral::ctl
