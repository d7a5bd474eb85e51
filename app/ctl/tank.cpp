// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/arguments.h"
#include "app/ctl/tank_text.h"
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/exchange/codes.h"
#include "core/exchange/name_book.h"
#include "core/facade/export.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

/// Reads an option that is one of an enumeration's words into `target`; false when it is set to something else.
template <typename T> bool choose(Context& context, const Arguments& arguments, const QString& name, T& target)
{
    if (!arguments.isSet(name)) {
        return true;
    }
    const std::optional<T> value = exchange::fromCode<T>(arguments.value(name));
    if (!value) {
        arguments.misused(context, words("--%1 takes one of %2, not \"%3\".")
                                       .arg(name, exchange::codes<T>().join(u", "_s), arguments.value(name)));
        return false;
    }
    target = *value;
    return true;
}

Arguments addArguments()
{
    return {
        u"tank add FILE --name NAME (--net-litres L | --length-cm L --depth-cm D --height-cm H) [options]"_s,
        words("Adds a tank with its first layout. Whole tanks with their record come in from a JSON file: littoralctl "
              "import --help."),
        {u"littoralctl tank add row.littoral --name \"Fen Corner\" --length-cm 60 --depth-cm 45 --height-cm 40 --flooded 2026-11-09 --bed rich-soil --bed-litres 14"_s,
         u"littoralctl tank add row.littoral --name Sill --net-litres 18 --start mature-media --bed inert"_s}};
}

void declareOptions(Arguments& arguments)
{
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.option(u"name"_s, u"NAME"_s, words("What you call it."));
    arguments.option(u"length-cm"_s, u"CM"_s, words("Outside length."));
    arguments.option(u"depth-cm"_s, u"CM"_s, words("Outside depth, front to back."));
    arguments.option(u"height-cm"_s, u"CM"_s, words("Outside height."));
    arguments.option(u"glass-mm"_s, u"MM"_s, words("Thickness of the glass; 6 if not given."));
    arguments.option(u"gap-cm"_s, u"CM"_s, words("Rim to water; 3 if not given."));
    arguments.option(u"net-litres"_s, u"L"_s, words("Water in it as measured on the day it was flooded."));
    arguments.option(u"flooded"_s, u"DATE"_s, words("When it was filled; now if not given."));
    arguments.option(u"start"_s, u"METHOD"_s,
                     words("One of %1.").arg(exchange::codes<record::StartMethod>().join(u", "_s)));
    arguments.option(u"bed"_s, u"KIND"_s, words("One of %1.").arg(exchange::codes<record::Bed>().join(u", "_s)));
    arguments.option(u"bed-litres"_s, u"L"_s, words("Soil or sand in it."));
    arguments.option(u"rock-kg"_s, u"KG"_s, words("Rock in it."));
    arguments.option(u"plants"_s, u"DENSITY"_s,
                     words("One of %1.").arg(exchange::codes<record::PlantDensity>().join(u", "_s)));
    arguments.option(u"temperature-c"_s, u"C"_s, words("24 if not given."));
    arguments.option(u"source"_s, u"NAME"_s, words("A source water that is in the store."));
}

bool readMeasures(Context& context, const Arguments& arguments, record::Tank& tank, record::Layout& layout)
{
    bool bad = false;
    tank.name = arguments.value(u"name"_s).trimmed();
    tank.length_cm = arguments.number(context, u"length-cm"_s, 1.0, 2000.0, bad).value_or(0.0);
    tank.depth_cm = arguments.number(context, u"depth-cm"_s, 1.0, 2000.0, bad).value_or(0.0);
    tank.height_cm = arguments.number(context, u"height-cm"_s, 1.0, 2000.0, bad).value_or(0.0);
    tank.glass_mm = arguments.number(context, u"glass-mm"_s, 0.0, 100.0, bad).value_or(tank.glass_mm);
    layout.gap_cm = arguments.number(context, u"gap-cm"_s, 0.0, 200.0, bad).value_or(layout.gap_cm);
    layout.measuredNet_L = arguments.number(context, u"net-litres"_s, 0.1, 100000.0, bad);
    layout.bed_L = arguments.number(context, u"bed-litres"_s, 0.0, 10000.0, bad).value_or(0.0);
    layout.rock_kg = arguments.number(context, u"rock-kg"_s, 0.0, 10000.0, bad).value_or(0.0);
    layout.temperature_C = arguments.number(context, u"temperature-c"_s, 0.0, 45.0, bad).value_or(layout.temperature_C);
    layout.flooded = arguments.instant(context, u"flooded"_s, bad).value_or(context.clock.now());
    return !bad && choose(context, arguments, u"start"_s, layout.start) &&
           choose(context, arguments, u"bed"_s, layout.bed) && choose(context, arguments, u"plants"_s, layout.plants);
}

int addTank(Context& context, const QStringList& line)
{
    Arguments arguments = addArguments();
    declareOptions(arguments);
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    if (arguments.value(u"name"_s).trimmed().isEmpty()) {
        return arguments.misused(context, words("--name is needed."));
    }
    record::Tank tank;
    record::Layout layout;
    if (!readMeasures(context, arguments, tank, layout)) {
        return kUsage;
    }
    if (!record::netVolume(tank, layout)) {
        return arguments.misused(
            context, words("Give --net-litres, or --length-cm, --depth-cm and --height-cm with room for water."));
    }
    const OpenStore keeper = openStore(context, arguments.operands()[0], store::Access::ReadWrite);
    if (!keeper) {
        return keeper.code;
    }
    if (keeper->row().tankNamed(tank.name) != nullptr) {
        return context.fail(words("There is a tank \"%1\" already.").arg(tank.name), kRefused);
    }
    if (arguments.isSet(u"source"_s)) {
        const exchange::NameBook names(keeper->row());
        const auto source = names.source(arguments.value(u"source"_s));
        if (!source) {
            return context.fail(names.noSource(arguments.value(u"source"_s)), kRefused);
        }
        layout.source = *source;
    }
    if (const auto added = keeper->addTank(tank, layout); !added) {
        return context.fail(added.error());
    }
    return kDone;
}

int listTanks(Context& context, const QStringList& line)
{
    Arguments arguments(u"tank list FILE [--json | --csv]"_s, words("Lists the tanks in row order."),
                        {u"littoralctl tank list row.littoral --csv"_s});
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.dataFormats();
    if (const auto code = arguments.parse(context, line, 1, 1)) {
        return *code;
    }
    const OpenStore keeper = openStore(context, arguments.operands()[0], store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    const record::Moment now = context.clock.now();
    if (arguments.json()) {
        context.out << tankListJson(keeper->row(), now);
    } else if (arguments.csv()) {
        context.out << csvTable(tankColumns(), tankListRows(keeper->row(), now));
    } else {
        context.out << tankListText(keeper->row(), now);
    }
    return kDone;
}

int showTank(Context& context, const QStringList& line)
{
    Arguments arguments(u"tank show FILE NAME [--json]"_s,
                        words("Shows one tank: its layout, newest readings and last entries. --json prints its whole "
                              "record, as import takes it."),
                        {u"littoralctl tank show row.littoral \"Fen Corner\""_s});
    arguments.operand(u"FILE"_s, words("The store, a file ending in .littoral."));
    arguments.operand(u"NAME"_s, words("The tank."));
    arguments.flag(u"json"_s, words("Print JSON instead of text."));
    if (const auto code = arguments.parse(context, line, 2, 2)) {
        return *code;
    }
    const OpenStore keeper = openStore(context, arguments.operands()[0], store::Access::ReadOnly);
    if (!keeper) {
        return keeper.code;
    }
    const record::Tank* tank = findTank(context, keeper->row(), arguments.operands()[1]);
    if (tank == nullptr) {
        return kRefused;
    }
    if (arguments.json()) {
        const auto json = facade::exportTankJson(keeper->row(), tank->id);
        if (!json) {
            return context.fail(json.error());
        }
        context.out << QString::fromUtf8(*json);
    } else {
        context.out << tankText(keeper->row(), *tank, context.clock.now());
    }
    return kDone;
}

} // namespace

int runTank(Context& context, const QStringList& line)
{
    const QString what = line.value(0);
    if (what == u"add"_s) {
        return addTank(context, line.mid(1));
    }
    if (what == u"list"_s) {
        return listTanks(context, line.mid(1));
    }
    if (what == u"show"_s) {
        return showTank(context, line.mid(1));
    }
    const QString help = words("Usage: littoralctl tank add|list|show FILE [options]\nEach has its own --help.");
    if (what == u"--help"_s || what == u"-h"_s) {
        context.out << help << '\n';
        return kDone;
    }
    return context.fail(help, kUsage);
}

} // namespace littoral::ctl
