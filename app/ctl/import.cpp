// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/import.h"

#include "app/ctl/arguments.h"
#include "app/ctl/verbs.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

QByteArray summaryJson(const facade::ImportSummary& summary, bool dryRun, bool written)
{
    const QJsonObject object{{u"dry_run"_s, dryRun},
                             {u"written"_s, written},
                             {u"tanks"_s, summary.tanks},
                             {u"readings"_s, summary.readings},
                             {u"entries"_s, summary.entries},
                             {u"facts"_s, summary.facts},
                             {u"journeys"_s, summary.journeys},
                             {u"supplies"_s, summary.shelf},
                             {u"skipped"_s, summary.skipped},
                             {u"remarks"_s, QJsonArray::fromStringList(summary.remarks)},
                             {u"problems"_s, QJsonArray::fromStringList(summary.problems)}};
    return QJsonDocument(object).toJson();
}

QString summaryText(const facade::ImportSummary& summary, bool dryRun)
{
    const QString sentence = dryRun ? words("Would write: tanks %1, readings %2, entries %3. There already: %4.")
                                    : words("Written: tanks %1, readings %2, entries %3. There already: %4.");
    QString text = sentence.arg(QString::number(summary.tanks), QString::number(summary.readings),
                                QString::number(summary.entries), QString::number(summary.skipped));
    if (summary.facts != 0) {
        text = words("%1 Records of knowledge: %2.").arg(text, QString::number(summary.facts));
    }
    if (summary.journeys != 0) {
        text = words("%1 Journeys: %2.").arg(text, QString::number(summary.journeys));
    }
    return summary.shelf == 0 ? text : words("%1 Supplies: %2.").arg(text, QString::number(summary.shelf));
}

} // namespace

int runImport(Context& context, const QStringList& line)
{
    Arguments arguments(
        u"import FILE CSV|JSON... [--dry-run] [--json]"_s,
        words("Brings in readings and entries from CSV files and whole tanks from JSON files. All files are one "
              "change: if a single "
              "row is wrong, nothing is written. What is there already is skipped, so a file may be brought in again."),
        {u"littoralctl import row.littoral readings.csv --dry-run"_s,
         u"littoralctl import row.littoral tank.json readings.csv entries.csv"_s});
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.operand(u"CSV|JSON..."_s, words("Files to bring in, in this order."));
    arguments.flag(u"dry-run"_s, words("Check and count; write nothing."));
    arguments.flag(u"json"_s, words("Print the summary as JSON."));
    if (const auto code = arguments.parse(context, line, 2, 10000)) {
        return *code;
    }
    const bool dryRun = arguments.isSet(u"dry-run"_s);
    const OpenStore keeper =
        openStore(context, arguments.operands()[0], dryRun ? store::Access::ReadOnly : store::Access::ReadWrite);
    if (!keeper) {
        return keeper.code;
    }
    const auto imported = facade::importFiles(*keeper.keeper, arguments.operands().mid(1), dryRun);
    if (!imported) {
        return context.fail(imported.error());
    }
    const bool refused = !imported->problems.isEmpty();
    if (arguments.json()) {
        context.out << summaryJson(*imported, dryRun, !dryRun && !refused);
        return refused ? kRefused : kDone;
    }
    for (const QString& remark : imported->remarks) {
        context.err << remark << '\n';
    }
    if (refused) {
        for (const QString& problem : imported->problems) {
            context.err << problem << '\n';
        }
        return context.fail(words("Nothing was written."), kRefused);
    }
    context.out << summaryText(*imported, dryRun) << '\n';
    return kDone;
}

} // namespace littoral::ctl
