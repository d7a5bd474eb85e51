// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/case_parts.h"
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::Entry;
using record::EntryKind;

namespace {

constexpr double kRunGapDays = 30.0;

QString words(const char* text)
{
    return QCoreApplication::translate("CaseFile", text);
}

QString capital(QString text)
{
    return text.isEmpty() ? text : text.replace(0, 1, text[0].toUpper());
}

bool tellsOfTrouble(const Entry& entry)
{
    return entry.kind == EntryKind::Loss || (entry.kind == EntryKind::Observation && entry.severity.has_value() &&
                                             !entry.subject.contains(u'=') && !entry.subject.contains(u"count"_s));
}

class Runs
{
public:
    void take(const Entry& entry)
    {
        const bool loss = entry.kind == EntryKind::Loss;
        const QString key = loss ? u"loss"_s : entry.subject;
        const int severity = loss ? 2 : entry.severity.value_or(0);
        const auto open = m_open.find(key);
        const bool follows = open != m_open.end() && record::daysBetween(open->second.last, entry.at) <= kRunGapDays;
        if (follows) {
            open->second.last = entry.at;
            open->second.worst = std::max(open->second.worst, severity);
            if (severity == 0) {
                close(key);
            }
            return;
        }
        if (open != m_open.end()) {
            close(key);
        }
        if (severity > 0) {
            CaseQuestion run;
            run.subject = entry.subject;
            run.losses = loss;
            run.onset = entry.at;
            run.last = entry.at;
            run.worst = severity;
            m_open[key] = run;
        }
    }

    [[nodiscard]] std::vector<CaseQuestion> all()
    {
        while (!m_open.empty()) {
            close(m_open.begin()->first);
        }
        return m_closed;
    }

private:
    void close(const QString& key)
    {
        const auto run = m_open.find(key);
        m_closed.push_back(run->second);
        m_open.erase(run);
    }

    std::map<QString, CaseQuestion> m_open;
    std::vector<CaseQuestion> m_closed;
};

QString questionText(const CaseQuestion& run, const QDate& today)
{
    const QString day = wording::dateText(run.onset.localDate(), today);
    return run.losses ? words("Animals lost, from %1").arg(day)
                      : words("%1, from %2").arg(capital(wording::subjectText(run.subject)), day);
}

std::vector<CaseQuestion> questionsOf(const record::LayoutRecord& layout, const record::Moment& now, bool current)
{
    Runs runs;
    for (const Entry& entry : layout.entries) {
        if (!entry.planned && entry.at <= now && tellsOfTrouble(entry)) {
            runs.take(entry);
        }
    }
    std::vector<CaseQuestion> questions = runs.all();
    const record::Moment end = std::min(layout.layout.ended.value_or(now), now);
    // What is going on now before what is over, what was heavy before what was slight, the newest first.
    const auto going = [&](const CaseQuestion& run) { return record::daysBetween(run.last, end) <= kRunGapDays; };
    std::ranges::stable_sort(questions, [&](const CaseQuestion& a, const CaseQuestion& b) {
        if (going(a) != going(b)) {
            return going(a);
        }
        if (going(a) && a.worst != b.worst) {
            return a.worst > b.worst;
        }
        return b.onset < a.onset;
    });
    for (CaseQuestion& run : questions) {
        const QString text = questionText(run, now.localDate());
        run.text = current ? text : words("%1: %2").arg(record::layoutName(layout.layout), text);
    }
    CaseQuestion open;
    open.onset = end;
    open.last = end;
    open.text = current ? words("Nothing in particular, up to today")
                        : words("%1: its last weeks").arg(record::layoutName(layout.layout));
    questions.push_back(open);
    for (CaseQuestion& question : questions) {
        question.layout = layout.layout.id;
    }
    return questions;
}

} // namespace

std::vector<CaseQuestion> caseQuestions(const record::Row& row, record::TankId tank, const record::Moment& now)
{
    std::vector<CaseQuestion> questions;
    const record::LayoutRecord* current = row.currentLayout(tank, now);
    std::vector<const record::LayoutRecord*> layouts = row.layoutsOf(tank);
    std::ranges::reverse(layouts);
    std::ranges::stable_partition(layouts, [&](const record::LayoutRecord* layout) { return layout == current; });
    for (const record::LayoutRecord* layout : layouts) {
        for (CaseQuestion& question : questionsOf(*layout, now, layout == current)) {
            questions.push_back(std::move(question));
        }
    }
    return questions;
}

} // namespace littoral::facade
