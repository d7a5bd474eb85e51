// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/language.h"
#include "ui/style/littoral_style.h"

#include <QApplication>
#include <QLocale>
#include <gtest/gtest.h>

#include <cstring>

namespace {

/// The offscreen platform says on every show that it cannot pass size hints on: noise, not news.
void quietHandler(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    if (!message.contains(QLatin1String("propagateSizeHints"))) {
        std::fprintf(stderr, "%s\n", qPrintable(qFormatLogMessage(type, context, message)));
    }
}

} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    qInstallMessageHandler(quietHandler);
    ::testing::InitGoogleTest(&argc, argv);
    QApplication app(argc, argv);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    littoral::wording::Translation translation;
    translation.use(QStringLiteral("en"));
    littoral::ui::Theme theme(littoral::ui::Scheme::Light);
    littoral::ui::applyTheme(app, theme);
    littoral::ui::reduceMotion(true); // tests look at where things end
    return RUN_ALL_TESTS();
}
