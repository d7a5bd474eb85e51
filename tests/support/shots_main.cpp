// SPDX-License-Identifier: GPL-3.0-or-later
// Renders every page of the sample row to PNG without a display: fixed clock, light and dark, 100 % and 200 % text.
// Usage: littoral_shots FOLDER [LANGUAGE]
#include "core/wording/language.h"
#include "tests/support/page_tour.h"
#include "ui/style/littoral_style.h"

#include <QApplication>
#include <QDir>
#include <QLocale>
#include <QStandardPaths>
#include <cstdio>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

QString suffixOf(const ui::Theme& theme, QSize size)
{
    const ui::Scheme scheme = theme.tokens().scheme();
    const double scale = theme.textScale();
    return u"_%1%2%3"_s.arg(scheme == ui::Scheme::Dark           ? u"dark"_s
                            : scheme == ui::Scheme::HighContrast ? u"contrast"_s
                                                                 : u"light"_s,
                            scale > 1.0 ? u"_%1"_s.arg(qRound(scale * 100)) : QString(),
                            size == test::kWholeWindow ? QString() : u"_small"_s);
}

/// One window with its own store, photographed page by page.
void shoot(ui::Theme& theme, const QDir& folder, QSize size, bool sample)
{
    test::PageTour tour(theme, size, sample);
    const auto save = [&](const QString& view) {
        const QString path = folder.filePath(view + suffixOf(theme, size) + u".png"_s);
        if (!tour.window().grab().save(path)) {
            std::fprintf(stderr, "cannot write %s\n", qPrintable(path));
            std::exit(1);
        }
        std::printf("%s\n", qPrintable(path));
    };
    tour.pages(save);
    if (sample) {
        tour.panels(save);
    }
}

} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    // The keeper's own window size and look stay out of the pictures.
    QTemporaryDir settings;
    qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
    QApplication app(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const QStringList arguments = QApplication::arguments();
    wording::Translation translation;
    translation.use(arguments.value(2, u"en"_s));
    if (translation.tag() != u"en"_s) {
        QLocale::setDefault(wording::localeFor(translation.tag()));
    }
    QDir folder(arguments.size() > 1 ? arguments[1] : u"build/shots"_s);
    if (!folder.mkpath(u"."_s)) {
        std::fprintf(stderr, "cannot make %s\n", qPrintable(folder.path()));
        return 1;
    }
    ui::Theme theme(ui::Scheme::Light);
    ui::applyTheme(app, theme);
    ui::reduceMotion(true);
    const auto look = [&](ui::Scheme scheme, double scale) {
        theme.setScheme(scheme);
        theme.setTextScale(scale);
    };
    for (const ui::Scheme scheme : {ui::Scheme::Light, ui::Scheme::Dark}) {
        for (const double scale : {1.0, 2.0}) {
            look(scheme, scale);
            shoot(theme, folder, test::kWholeWindow, true);
            shoot(theme, folder, test::kWholeWindow, false);
        }
    }
    look(ui::Scheme::HighContrast, 1.0);
    shoot(theme, folder, test::kWholeWindow, true);
    for (const double scale : {1.0, 2.0}) {
        look(ui::Scheme::Light, scale);
        shoot(theme, folder, test::kSmallestWindow, true);
    }
    return 0;
}
