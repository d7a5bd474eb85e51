// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/ctl/text_table.h"
#include "app/ctl/verbs.h"
#include "core/exchange/name_book.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace littoral::ctl {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("littoralctl", text);
}

struct Verb
{
    const char* name;
    const char* synopsis;
    const char* summary;
    int (*run)(Context&, const QStringList&);
};

constexpr std::array kVerbs{
    Verb{"init", "init FILE", QT_TRANSLATE_NOOP("littoralctl", "Make a new, empty store."), runInit},
    Verb{"sample", "sample FILE", QT_TRANSLATE_NOOP("littoralctl", "Make a store with the invented sample row."),
         runSample},
    Verb{"tank", "tank add|list|show FILE",
         QT_TRANSLATE_NOOP("littoralctl", "Add a tank, list the row, show one tank."), runTank},
    Verb{"import", "import FILE CSV|JSON...",
         QT_TRANSLATE_NOOP("littoralctl", "Bring in readings, entries and whole tanks."), runImport},
    Verb{"due", "due FILE", QT_TRANSLATE_NOOP("littoralctl", "Show what is overdue, due and to come, and why."),
         runDue},
    Verb{"water-plan", "water-plan FILE",
         QT_TRANSLATE_NOOP("littoralctl", "Show the water the row needs day by day, and where large changes collide."),
         runWaterPlan},
    Verb{"hand-over", "hand-over FILE --from DATE --to DATE",
         QT_TRANSLATE_NOOP("littoralctl", "Split the work of a journey: before, the helper, after."), runHandOver},
    Verb{"gates", "gates FILE --tank NAME",
         QT_TRANSLATE_NOOP("littoralctl", "Show every gate's conditions, what decides them, and the odds by date."),
         runGates},
    Verb{"forecast", "forecast FILE --tank NAME",
         QT_TRANSLATE_NOOP("littoralctl", "Forecast ammonia, nitrite, nitrate and the end of the cycle."), runForecast},
    Verb{"findings", "findings FILE --tank NAME",
         QT_TRANSLATE_NOOP("littoralctl", "Weigh what was seen and read, and name the look that decides best."),
         runFindings},
    Verb{"review", "review FILE --tank NAME",
         QT_TRANSLATE_NOOP("littoralctl", "Show what changed before trouble began, change points and exposure."),
         runReview},
    Verb{"plans", "plans FILE --tank NAME", QT_TRANSLATE_NOOP("littoralctl", "Compare water-change plans, adopt one."),
         runPlans},
    Verb{"next-test", "next-test FILE --tank NAME",
         QT_TRANSLATE_NOOP("littoralctl", "Show which test would narrow the dates most."), runNextTest},
    Verb{"record", "record FILE", QT_TRANSLATE_NOOP("littoralctl", "Show how earlier forecasts turned out."),
         runRecord},
    Verb{"reckon", "reckon [SHEET]",
         QT_TRANSLATE_NOOP("littoralctl", "Reckon a worksheet: water changes, doses, CO2, ammonia and more."),
         runReckon},
    Verb{"supplies", "supplies FILE",
         QT_TRANSLATE_NOOP("littoralctl", "Show what is in stock, how long it lasts, and what is past its date."),
         runSupplies},
    Verb{"export", "export FILE DIR", QT_TRANSLATE_NOOP("littoralctl", "Write everything as CSV and JSON."), runExport},
    Verb{"verify", "verify FILE", QT_TRANSLATE_NOOP("littoralctl", "Check a store from end to end."), runVerify},
    Verb{"backup", "backup FILE DEST", QT_TRANSLATE_NOOP("littoralctl", "Copy a store, also one in use."), runBackup},
};

void showHelp(QTextStream& out)
{
    out << words("Usage: littoralctl VERB FILE [options]") << "\n\n"
        << words("The record of a row of planted freshwater tanks, for scripts and for machines without a screen.")
        << "\n\n";
    std::vector<QStringList> rows;
    for (const Verb& verb : kVerbs) {
        rows.push_back({QLatin1String(verb.synopsis), words(verb.summary)});
    }
    out << textTable({words("Verb"), words("What it does")}, rows, 2) << '\n'
        << words("littoralctl VERB --help shows a verb's options and examples.") << '\n'
        << words("--language de makes it speak German; data (--csv, --json) keep their form in every language.") << '\n'
        << words("Exit codes: 0 done; 1 a file or the store failed; 2 usage; 3 input refused; 4 verify found problems.")
        << '\n';
}

} // namespace

int run(Context& context, const QStringList& line)
{
    const QString first = line.value(0);
    if (first == u"--help"_s || first == u"-h"_s || first == u"help"_s) {
        showHelp(context.out);
        return kDone;
    }
    if (first == u"--version"_s || first == u"-v"_s) {
        context.out << "littoralctl " << LITTORAL_VERSION << '\n';
        return kDone;
    }
    if (first.isEmpty()) {
        showHelp(context.err);
        return kUsage;
    }
    const auto found =
        std::ranges::find_if(kVerbs, [&](const Verb& verb) { return first == QLatin1String(verb.name); });
    if (found != kVerbs.end()) {
        return found->run(context, line.mid(1));
    }
    QStringList names;
    std::ranges::transform(kVerbs, std::back_inserter(names),
                           [](const Verb& verb) { return QString::fromLatin1(verb.name); });
    const auto near = exchange::nearestName(first, names);
    return context.fail(near ? words("There is no verb \"%1\". Did you mean \"%2\"?").arg(first, *near)
                             : words("There is no verb \"%1\". See: littoralctl --help").arg(first),
                        kUsage);
}

} // namespace littoral::ctl
