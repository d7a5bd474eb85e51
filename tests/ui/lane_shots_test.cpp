// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/lane_demo.h"
#include "ui/style/littoral_style.h"
#include "ui/widgets/lanes/lane_view.h"

#include <QDir>
#include <QTimeZone>
#include <gtest/gtest.h>

namespace littoral::ui {
namespace {

struct Shot
{
    const char* name;
    Scheme scheme;
    double scale;
    QSize size;
    AxisMode mode;
    int lanes; ///< 0: the six
};

class LaneShots : public ::testing::TestWithParam<Shot>
{
};

/// Renders the made-up row in every look. Set LITTORAL_SHOTS to a folder to keep the pictures.
TEST_P(LaneShots, DrawsSomethingEverywhere)
{
    const Shot shot = GetParam();
    Theme theme(shot.scheme, shot.scale);
    TimeAxis axis;
    axis.setZone(QTimeZone(3600));
    axis.setNow(demo::now());
    axis.showAround(27, 19.8);
    if (shot.mode == AxisMode::Age) {
        axis.setMode(AxisMode::Age);
        axis.setRange(-kDayMs / 4, 63 * kDayMs);
    }
    LaneView view(theme, axis);
    view.setLanes(shot.lanes == 0 ? demo::sixLanes() : demo::manyLanes(shot.lanes, 730));
    view.resize(shot.size);
    view.show();
    view.selectTank(record::TankId{3});
    view.setFocus();
    const QImage picture = view.grab().toImage();
    ASSERT_EQ(picture.size(), shot.size);
    // Header column, strip and future ground differ: nothing is left unpainted.
    EXPECT_NE(picture.pixelColor(4, shot.size.height() / 2),
              picture.pixelColor(shot.size.width() - 40, shot.size.height() / 2));
    if (const QString folder = qEnvironmentVariable("LITTORAL_SHOTS"); !folder.isEmpty()) {
        QDir().mkpath(folder);
        EXPECT_TRUE(picture.save(folder + QLatin1String("/lanes_") + QLatin1String(shot.name) + QLatin1String(".png")));
    }
}

INSTANTIATE_TEST_SUITE_P(
    Looks, LaneShots,
    ::testing::Values(Shot{"light", Scheme::Light, 1.0, {1392, 850}, AxisMode::Calendar, 0},
                      Shot{"dark", Scheme::Dark, 1.0, {1392, 850}, AxisMode::Calendar, 0},
                      Shot{"contrast", Scheme::HighContrast, 1.0, {1392, 850}, AxisMode::Calendar, 0},
                      Shot{"age", Scheme::Light, 1.0, {1392, 850}, AxisMode::Age, 0},
                      Shot{"double", Scheme::Light, 2.0, {1392, 850}, AxisMode::Calendar, 0},
                      Shot{"small", Scheme::Light, 1.0, {960, 560}, AxisMode::Calendar, 0},
                      Shot{"many", Scheme::Light, 1.0, {1392, 850}, AxisMode::Calendar, 24}),
    [](const auto& info) { return std::string(info.param.name); });

} // namespace
} // namespace littoral::ui
