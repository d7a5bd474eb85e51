// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/glyphs.h"
#include "ui/paint/marks.h"
#include "ui/paint/outline.h"
#include "ui/paint/value_scale.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

#include <array>
#include <functional>
#include <set>

namespace littoral::ui {
namespace {

QImage drawn(const std::function<void(QPainter&)>& draw)
{
    QImage image(40, 40, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    draw(painter);
    return image;
}

QByteArray bytes(const QImage& image)
{
    return QByteArray(reinterpret_cast<const char*>(image.constBits()), static_cast<int>(image.sizeInBytes()));
}

TEST(ValueScale, StepsAreRoundAndCoverTheRange)
{
    const ValueScale scale = niceScale(0.1, 6.0, 5);
    EXPECT_EQ(scale.ticks, (std::vector<double>{0, 2, 4, 6}));
    EXPECT_EQ(scale.decimals, 0);
    EXPECT_DOUBLE_EQ(scale.y(0, 10, 110), 110.0);
    EXPECT_DOUBLE_EQ(scale.y(6, 10, 110), 10.0);
}

TEST(ValueScale, SmallRangesGetTheDecimalsTheyNeed)
{
    const ValueScale scale = niceScale(0.0, 0.8, 4);
    EXPECT_GE(scale.decimals, 1);
    EXPECT_LE(scale.ticks.size(), 4u);
    EXPECT_GE(scale.high, 0.8);
}

TEST(ValueScale, HoldsForEveryMagnitude)
{
    for (const double top : {0.02, 0.3, 1.0, 7.2, 33.0, 312.0, 4100.0}) {
        for (const int most : {2, 3, 4, 5}) {
            for (const double low : {0.0, top * 0.5, top * 0.9}) {
                const ValueScale scale = niceScale(low, top, most);
                ASSERT_FALSE(scale.ticks.empty());
                EXPECT_LE(static_cast<int>(scale.ticks.size()), most);
                EXPECT_LE(scale.low, low + 1e-12);
                EXPECT_GE(scale.high, top - 1e-12);
                EXPECT_GE(scale.ticks.front(), scale.low - 1e-9);
                EXPECT_LE(scale.ticks.back(), scale.high + 1e-9);
            }
        }
    }
}

TEST(ValueScale, ARangeWithoutWidthIsGivenOne)
{
    EXPECT_GT(niceScale(5, 5, 4).high, niceScale(5, 5, 4).low);
    EXPECT_GT(niceScale(0, 0, 4).high, 0.0);
    EXPECT_EQ(niceScale(0, 0, 4).low, 0.0);
}

TEST(Marks, EveryMarkHasAShapeOfItsOwn)
{
    std::set<QByteArray> pictures;
    for (int mark = 0; mark <= static_cast<int>(Mark::Dot); ++mark) {
        pictures.insert(bytes(drawn([&](QPainter& p) {
            drawMark(p, static_cast<Mark>(mark), {20, 20}, 24, Qt::black, Qt::white);
        })));
    }
    EXPECT_EQ(pictures.size(), static_cast<std::size_t>(Mark::Dot) + 1);
}

TEST(Marks, OutOfRangeReadingsAreToldApart)
{
    const QImage plain = drawn([](QPainter& p) { drawMark(p, Mark::Circle, {20, 20}, 10, Qt::black, Qt::white); });
    const QImage below = drawn([](QPainter& p) {
        drawCensoredMark(p, Mark::Circle, {20, 20}, 10, Qt::black, Qt::white, true);
    });
    const QImage above = drawn([](QPainter& p) {
        drawCensoredMark(p, Mark::Circle, {20, 20}, 10, Qt::black, Qt::white, false);
    });
    EXPECT_NE(plain, below);
    EXPECT_NE(below, above);
}

TEST(Glyphs, EveryGlyphHasAShapeOfItsOwnAndStaysInItsBox)
{
    std::set<QByteArray> pictures;
    const int last = static_cast<int>(facade::Glyph::Photo);
    for (int glyph = 0; glyph <= last; ++glyph) {
        const QImage image = drawn(
            [&](QPainter& p) { drawGlyph(p, static_cast<facade::Glyph>(glyph), QRectF(6, 6, 28, 28), Qt::black); });
        for (int i = 0; i < 40; ++i) {
            EXPECT_EQ(image.pixel(i, 2), image.pixel(0, 0)) << glyph;
            EXPECT_EQ(image.pixel(2, i), image.pixel(0, 0)) << glyph;
            EXPECT_EQ(image.pixel(37, i), image.pixel(0, 0)) << glyph;
            EXPECT_EQ(image.pixel(i, 37), image.pixel(0, 0)) << glyph;
        }
        pictures.insert(bytes(image));
    }
    EXPECT_EQ(pictures.size(), static_cast<std::size_t>(last) + 1);
}

TEST(Glyphs, StatusIsToldByShapeAlone)
{
    std::set<QByteArray> pictures;
    for (int status = 0; status <= static_cast<int>(facade::Status::Unknown); ++status) {
        pictures.insert(bytes(drawn([&](QPainter& p) {
            drawStatus(p, static_cast<facade::Status>(status), QRectF(6, 6, 28, 28), Qt::black, Qt::white);
        })));
    }
    EXPECT_EQ(pictures.size(), static_cast<std::size_t>(facade::Status::Unknown) + 1);
}

TEST(Glyphs, AFullerGlassHoldsMoreInk)
{
    const auto ink = [](double fraction) {
        const QImage image = drawn(
            [&](QPainter& p) { drawGlyph(p, facade::Glyph::WaterChange, QRectF(6, 6, 28, 28), Qt::black, fraction); });
        int dark = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
            }
        }
        return dark;
    };
    EXPECT_LT(ink(0.2), ink(0.5));
    EXPECT_LT(ink(0.5), ink(0.9));
}

TEST(Outline, TheWholeRowIsDrawnToOneScale)
{
    const std::array shapes{TankShape{150, 60, 0.1}, TankShape{30, 30, 0.1}, TankShape{60, 45, 0.1}};
    const double scale = outlineScale(shapes, {100, 36});
    EXPECT_LE(outlineSize(shapes[0], scale).width(), 100.0);
    EXPECT_LE(outlineSize(shapes[0], scale).height(), 36.0);
    EXPECT_NEAR(outlineSize(shapes[0], scale).width() / outlineSize(shapes[2], scale).width(), 2.5, 0.15);
    EXPECT_EQ(outlineScale({}, {100, 36}), 0.0);
}

} // namespace
} // namespace littoral::ui
