// SPDX-License-Identifier: GPL-3.0-or-later
// The workbench: this is where its parts are made and joined.
#include "core/facade/forecasts.h"
#include "core/facade/keeper.h"
#include "ui/frame/file_ask.h"
#include "ui/frame/workbench.h"
#include "ui/style/littoral_style.h"

#include <QApplication>
#include <QCommandLineParser>

using namespace Qt::StringLiterals;

int main(int argc, char** argv)
{
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
    parser.addPositionalArgument(
        u"store"_s, QApplication::translate("main", "The store to open (*.littoral); the last one when not given."),
        u"[store]"_s);
    parser.process(app);

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
