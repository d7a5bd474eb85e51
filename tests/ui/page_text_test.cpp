// SPDX-License-Identifier: GPL-3.0-or-later
// Every page of the sample row in every look and size: all of it is drawn, and all text on it can be read.
#include "tests/support/page_tour.h"
#include "tests/ui/support/look_of_all.h"
#include "tests/ui/support/text_fit.h"

#include <QSet>
#include <gtest/gtest.h>

namespace littoral::ui::test {

namespace {

struct Look
{
    const char* name;
    Scheme scheme;
    double scale;
    QSize size;
    std::size_t known; ///< faults not mended yet, on all pages together; may only fall
};

constexpr std::size_t kKnownOnFirstRun = 2; // dates at the edges of the example axis

using littoral::test::kSmallestWindow;
using littoral::test::kWholeWindow;

/// Shades on a grid over the picture: a page that was not drawn has very few.
int shadesOf(const QImage& picture)
{
    QSet<QRgb> found;
    for (int y = 2; y < picture.height(); y += 5) {
        for (int x = 2; x < picture.width(); x += 5) {
            found.insert(picture.pixel(x, y));
        }
    }
    return static_cast<int>(found.size());
}

} // namespace

class PageText : public ::testing::TestWithParam<Look>
{
};

TEST_P(PageText, IsWholeOnEveryPage)
{
    const Look look = GetParam();
    Theme& theme = lookOfAll(look.scheme, look.scale);
    littoral::test::PageTour tour(theme, look.size);
    ASSERT_EQ(tour.window().size(), look.size) << "nothing forces the window wider";
    std::size_t found = 0;
    std::string all;
    const auto check = [&](const QString& view) {
        const QImage picture = tour.window().grab().toImage();
        EXPECT_EQ(picture.size(), look.size);
        EXPECT_GT(shadesOf(picture), 20) << view.toStdString() << " is not drawn";
        const auto faults = textFaults(tour.window());
        found += faults.size();
        all += view.toStdString() + ":\n" + listed(faults) + '\n';
    };
    tour.pages(check);
    tour.panels(check);
    EXPECT_LE(found, look.known) << all;
    lookOfAll(Scheme::Light, 1.0);
}

TEST_P(PageText, IsWholeOnTheFirstRunPage)
{
    const Look look = GetParam();
    littoral::test::PageTour tour(lookOfAll(look.scheme, look.scale), look.size, false);
    tour.pages([&](const QString& view) {
        const auto faults = textFaults(tour.window());
        EXPECT_LE(faults.size(), kKnownOnFirstRun) << view.toStdString() << ":\n" << listed(faults);
    });
    lookOfAll(Scheme::Light, 1.0);
}

INSTANTIATE_TEST_SUITE_P(Looks, PageText,
                         ::testing::Values(Look{"Light", Scheme::Light, 1.0, kWholeWindow, 40},
                                           Look{"Dark", Scheme::Dark, 1.0, kWholeWindow, 40},
                                           Look{"LightDouble", Scheme::Light, 2.0, kWholeWindow, 40},
                                           Look{"DarkDouble", Scheme::Dark, 2.0, kWholeWindow, 40},
                                           Look{"LightHalfAgain", Scheme::Light, 1.5, kWholeWindow, 60},
                                           Look{"LightSmall", Scheme::Light, 1.0, kSmallestWindow, 60},
                                           Look{"LightDoubleSmall", Scheme::Light, 2.0, kSmallestWindow, 40}),
                         [](const auto& info) { return std::string(info.param.name); });

} // namespace littoral::ui::test
