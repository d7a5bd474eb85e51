// SPDX-License-Identifier: GPL-3.0-or-later
// The workbench: this is where its parts are made and joined.
#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/frame/file_ask.h"
#include "ui/frame/report_run.h"
#include "ui/frame/workbench.h"
#include "ui/style/littoral_style.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QTextStream>
#include <algorithm>
#include <string_view>

using namespace Qt::StringLiterals;

namespace {

/// A report needs no screen: it may be asked for by a timer on a machine without one.
void stayOffscreenForReports(int argc, char** argv)
{
    const bool report =
        std::any_of(argv, argv + argc, [](const char* word) { return std::string_view(word).starts_with("--report"); });
    if (report && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
}

int tellError(const littoral::Error& error)
{
    QTextStream(stderr) << "littoral: " << QString::fromStdString(error.sentence()) << Qt::endl;
    return error.fault == littoral::Fault::BadInput ? 3 : 1; // as littoralctl has it
}

int report(const littoral::ui::ReportRequest& request, const QStringList& files)
{
    if (files.size() != 2) {
        QTextStream(stderr) << QApplication::translate("main", "Give the file to write and the store: littoral "
                                                               "--report row FILE.pdf row.littoral")
                            << Qt::endl;
        return 2;
    }
    littoral::ui::ReportRequest asked = request;
    asked.pdf = files.front();
    const littoral::record::SystemClock clock;
    littoral::facade::Keeper keeper(clock);
    littoral::facade::Forecasts forecasts(keeper);
    if (const auto opened = keeper.open(files.back(), littoral::store::Access::ReadOnly); !opened) {
        return tellError(opened.error());
    }
    const auto done = littoral::ui::runReport(asked, keeper, forecasts);
    return done ? 0 : tellError(done.error());
}

} // namespace

int main(int argc, char** argv)
{
    stayOffscreenForReports(argc, argv);
    QApplication app(argc, argv);
    QApplication::setApplicationName(u"Littoral"_s);
    QApplication::setApplicationVersion(QStringLiteral(LITTORAL_VERSION));
    QApplication::setDesktopFileName(u"littoral"_s);

    littoral::wording::Translation translation;
    const QString asked = littoral::ui::Session().language();
    translation.use(asked.isEmpty() ? littoral::wording::systemLanguage() : asked);

    QCommandLineParser parser;
    parser.setApplicationDescription(
        QApplication::translate("main", "A workbench for keepers of several planted aquariums."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption sample(
        u"sample"_s, QApplication::translate("main", "Open the invented sample row, as a copy in its own file."));
    parser.addOption(sample);
    const QCommandLineOption reportKind(
        u"report"_s,
        QApplication::translate("main", "Write a report as a PDF and end: %1. Then the file to write and the store.")
            .arg(littoral::ui::reportKinds().join(u", "_s)),
        QApplication::translate("main", "kind"));
    const QCommandLineOption reportTank(u"tank"_s, QApplication::translate("main", "The tank whose case is reported."),
                                        QApplication::translate("main", "name"));
    const QCommandLineOption reportByKit(
        u"by-kit"_s, QApplication::translate("main", "Order the round sheet kit by kit instead of tank by tank."));
    parser.addOptions({reportKind, reportTank, reportByKit});
    parser.addPositionalArgument(
        u"store"_s, QApplication::translate("main", "The store to open (*.littoral); the last one when not given."),
        u"[store]"_s);
    parser.process(app);
    if (parser.isSet(reportKind)) {
        return report({parser.value(reportKind), parser.value(reportTank), {}, parser.isSet(reportByKit)},
                      parser.positionalArguments());
    }

    const littoral::ui::Session session;
    const littoral::ui::Scheme system = littoral::ui::systemScheme();
    littoral::ui::Theme theme(littoral::ui::schemeOf(session.look(), system), session.textScale());
    littoral::ui::applyTheme(app, theme);

    const littoral::record::SystemClock clock;
    littoral::facade::Keeper keeper(clock);
    littoral::facade::Forecasts forecasts(keeper);
    littoral::ui::FileAsk ask;
    littoral::ui::Workbench workbench(keeper, forecasts, theme, ask, translation);
    workbench.setSystemScheme(system);
    workbench.setSystemMotion(littoral::ui::systemReducesMotion());
    const QStringList paths = parser.positionalArguments();
    workbench.window().openAtStart(paths.isEmpty() ? std::nullopt : std::optional(paths.first()), parser.isSet(sample));
    workbench.window().show();
    return QApplication::exec();
}
