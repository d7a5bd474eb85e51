// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/arguments.h"
#include "app/ctl/verbs.h"
#include "core/facade/export.h"
#include "core/facade/sample_row.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

/// The verbs that handle a store as a whole: init, sample, export, verify, backup.
namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

QString fileHelp()
{
    return words("The store, a file ending in .littoral.");
}

} // namespace

int runInit(Context& context, const QStringList& line)
{
    Arguments arguments(u"init FILE"_s, words("Makes a new, empty store. An existing file is left alone."),
                        {u"littoralctl init row.littoral"_s});
    arguments.operand(u"FILE"_s, fileHelp());
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    facade::Keeper keeper(context.clock);
    if (const auto made = keeper.create(arguments.operands()[0]); !made) {
        return context.fail(made.error());
    }
    return kDone;
}

int runSample(Context& context, const QStringList& line)
{
    Arguments arguments(u"sample FILE"_s,
                        words("Makes a store with the invented sample row, its dates moved so that today is today. An "
                              "existing file is left alone."),
                        {u"littoralctl sample sample.littoral"_s, u"littoralctl forecast sample.littoral --all"_s});
    arguments.operand(u"FILE"_s, fileHelp());
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    facade::Keeper keeper(context.clock);
    const QString path = arguments.operands()[0];
    if (const auto made = keeper.create(path); !made) {
        return context.fail(made.error());
    }
    if (const auto filled = facade::makeSampleRow(keeper, context.clock.now()); !filled) {
        keeper.close();
        QFile::remove(path);
        return context.fail(filled.error());
    }
    return kDone;
}

int runExport(Context& context, const QStringList& line)
{
    Arguments arguments(u"export FILE DIR [--overwrite]"_s,
                        words("Writes readings.csv, entries.csv and one JSON file per tank into a directory. "
                              "Photographs stay in the store."),
                        {u"littoralctl export row.littoral out"_s});
    arguments.operand(u"FILE"_s, fileHelp());
    arguments.operand(u"DIR"_s, words("Where to write; made if it is not there."));
    arguments.flag(u"overwrite"_s, words("Replace files of an earlier export."));
    if (const auto code = arguments.parse(context, line, 2, 2)) {
        return *code;
    }
    const OpenStore keeper = openStore(context, arguments.operands()[0], store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    const auto written = facade::exportRow(keeper->row(), arguments.operands()[1], arguments.isSet(u"overwrite"_s));
    if (!written) {
        return context.fail(written.error());
    }
    for (const QString& path : *written) {
        context.out << path << '\n';
    }
    return kDone;
}

int runVerify(Context& context, const QStringList& line)
{
    Arguments arguments(u"verify FILE [--json]"_s,
                        words("Checks the whole store: the database, the links between records, and the record's own "
                              "rules. Changes nothing. "
                              "Exit code 4 when there are problems."),
                        {u"littoralctl verify row.littoral"_s});
    arguments.operand(u"FILE"_s, fileHelp());
    arguments.flag(u"json"_s, words("Print JSON instead of text."));
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    facade::Keeper keeper(context.clock);
    if (const auto opened = keeper.open(arguments.operands()[0], store::Access::ReadOnly); !opened) {
        const int code = context.fail(opened.error());
        return opened.error().fault == Fault::Damaged ? kNotSound : code;
    }
    const auto verified = keeper.store()->verify();
    if (!verified) {
        return context.fail(verified.error());
    }
    if (arguments.json()) {
        QJsonArray problems;
        for (const QString& problem : verified->problems) {
            problems.append(problem);
        }
        const QJsonObject object{{u"schema_version"_s, verified->schemaVersion},
                                 {u"tanks"_s, verified->tanks},
                                 {u"layouts"_s, verified->layouts},
                                 {u"readings"_s, verified->readings},
                                 {u"entries"_s, verified->entries},
                                 {u"tasks"_s, verified->tasks},
                                 {u"photos"_s, verified->photos},
                                 {u"problems"_s, problems}};
        context.out << QJsonDocument(object).toJson();
    } else {
        context.out << words("Schema %1. Tanks %2, layouts %3, readings %4, entries %5, tasks %6, photographs %7.")
                           .arg(QString::number(verified->schemaVersion), QString::number(verified->tanks),
                                QString::number(verified->layouts), QString::number(verified->readings),
                                QString::number(verified->entries), QString::number(verified->tasks),
                                QString::number(verified->photos))
                    << '\n';
    }
    for (const QString& problem : verified->problems) {
        context.fail(problem, kNotSound);
    }
    if (!arguments.json() && verified->problems.empty()) {
        context.out << words("The store is sound.") << '\n';
    }
    return verified->problems.empty() ? kDone : kNotSound;
}

int runBackup(Context& context, const QStringList& line)
{
    Arguments arguments(
        u"backup FILE DEST"_s,
        words("Copies a store, also one that is in use, and checks the copy. An existing file is left alone."),
        {u"littoralctl backup row.littoral row-2026-11-25.littoral"_s});
    arguments.operand(u"FILE"_s, fileHelp());
    arguments.operand(u"DEST"_s, words("The copy to make."));
    if (const auto code = arguments.parse(context, line, 2, 2)) {
        return *code;
    }
    const OpenStore keeper = openStore(context, arguments.operands()[0], store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    if (const auto copied = keeper->store()->backup(arguments.operands()[1]); !copied) {
        return context.fail(copied.error());
    }
    return kDone;
}

} // namespace littoral::ctl
