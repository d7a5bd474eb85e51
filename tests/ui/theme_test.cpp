// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/figures.h"
#include "ui/theme/palette.h"
#include "ui/theme/theme.h"

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QSignalSpy>
#include <gtest/gtest.h>

#include <array>

namespace littoral::ui {
namespace {

using facade::Status;

constexpr std::array kSchemes{Scheme::Light, Scheme::Dark, Scheme::HighContrast};
constexpr std::array kGrounds{Token::Window, Token::Panel, Token::Sunk, Token::Future, Token::Selection};

// WCAG 2.1, success criteria 1.4.3 (text, 4.5 : 1) and 1.4.11 (parts of the interface and graphics, 3 : 1).
constexpr double kText = 4.5;
constexpr double kGraphic = 3.0;

// The ends of the scale and a pair worked out by hand from the definition of relative luminance in WCAG 2.1: mid grey
// #777777 on white is 4.48 : 1, just short of what text needs.
TEST(Contrast, FollowsTheDefinition)
{
    EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21.0, 1e-6);
    EXPECT_NEAR(contrastRatio(Qt::white, Qt::white), 1.0, 1e-6);
    EXPECT_NEAR(contrastRatio(QColor(0x77, 0x77, 0x77), Qt::white), 4.48, 0.01);
}

TEST(Tokens, TextIsReadableOnEveryGroundItStandsOn)
{
    for (const Scheme scheme : kSchemes) {
        const Tokens tokens(scheme);
        for (const Token ground : kGrounds) {
            for (const Token ink : {Token::Ink, Token::Ink2, Token::Ink3, Token::Accent}) {
                EXPECT_GE(contrastRatio(tokens[ink], tokens[ground]), kText)
                    << "scheme " << int(scheme) << " ink " << int(ink) << " on " << int(ground);
            }
            for (const Status status :
                 {Status::Ok, Status::Watch, Status::Act, Status::Overdue, Status::Waiting, Status::Unknown}) {
                EXPECT_GE(contrastRatio(tokens.status(status), tokens[ground]), kText)
                    << "scheme " << int(scheme) << " status " << int(status) << " on " << int(ground);
            }
        }
    }
}

TEST(Tokens, FilledThingsKeepTheirTextReadable)
{
    for (const Scheme scheme : kSchemes) {
        const Tokens tokens(scheme);
        EXPECT_GE(contrastRatio(tokens[Token::OnAccent], tokens[Token::Accent]), kText);
        EXPECT_GE(contrastRatio(tokens[Token::OnOverdue], tokens[Token::Overdue]), kText);
        EXPECT_GE(contrastRatio(tokens[Token::Panel], tokens[Token::Ink]), kText) << "now flag and tool tips";
        EXPECT_GE(contrastRatio(tokens[Token::Ink], tokens[Token::Rule]), kText) << "phase names";
        for (const Status status : {Status::Ok, Status::Watch, Status::Act, Status::Overdue, Status::Waiting}) {
            EXPECT_GE(contrastRatio(tokens.status(status), tokens.statusTint(status)), kText) << int(status);
            EXPECT_GE(contrastRatio(tokens[Token::Ink], tokens.statusTint(status)), kText) << int(status);
        }
    }
}

TEST(Tokens, EdgesAndMarksStandOutFromEveryGround)
{
    const std::array parameters{"tan", "nh3", "no2", "no3",  "fe",   "po4", "k", "ph",
                                "co2", "kh",  "gh",  "temp", "cond", "tds", "o2"};
    for (const Scheme scheme : kSchemes) {
        const Tokens tokens(scheme);
        for (const Token ground : kGrounds) {
            for (const Token edge : {Token::Rule2, Token::Accent, Token::WaterSurface}) {
                EXPECT_GE(contrastRatio(tokens[edge], tokens[ground]), kGraphic)
                    << "scheme " << int(scheme) << " edge " << int(edge) << " on " << int(ground);
            }
            for (const char* key : parameters) {
                const QColor hue = tokens.parameter(QLatin1String(key));
                EXPECT_GE(contrastRatio(hue, tokens[ground]), kGraphic)
                    << "scheme " << int(scheme) << ' ' << key << " on " << int(ground);
            }
        }
        EXPECT_GE(contrastRatio(tokens[Token::Overdue], tokens[Token::Panel]), kGraphic);
        EXPECT_GE(contrastRatio(tokens[Token::Accent], tokens[Token::Selection]), kGraphic) << "edge of today's chip";
    }
}

TEST(Tokens, ParametersThatShareAHueDifferInTheirMark)
{
    const Tokens tokens(Scheme::Light);
    const std::array pairs{std::pair{"tan", "nh3"}, std::pair{"no3", "fe"}, std::pair{"po4", "k"},
                           std::pair{"kh", "gh"}, std::pair{"temp", "cond"}};
    for (const auto& [a, b] : pairs) {
        EXPECT_EQ(tokens.parameter(QLatin1String(a)), tokens.parameter(QLatin1String(b)));
        EXPECT_NE(Tokens::mark(QLatin1String(a)), Tokens::mark(QLatin1String(b)));
    }
}

TEST(Palette, SetsEveryRoleOfEveryGroup)
{
    for (const Scheme scheme : kSchemes) {
        const QPalette palette = paletteOf(Tokens(scheme));
        for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
            for (int role = 0; role < QPalette::NColorRoles; ++role) {
                if (role != QPalette::NoRole) {
                    EXPECT_TRUE(palette.isBrushSet(group, static_cast<QPalette::ColorRole>(role))) << role;
                }
            }
            EXPECT_GE(contrastRatio(palette.color(group, QPalette::Text), palette.color(group, QPalette::Base)), kText);
            EXPECT_GE(contrastRatio(palette.color(group, QPalette::ButtonText), palette.color(group, QPalette::Button)),
                      kText);
            EXPECT_GE(
                contrastRatio(palette.color(group, QPalette::PlaceholderText), palette.color(group, QPalette::Base)),
                kText);
            EXPECT_GE(contrastRatio(palette.color(group, QPalette::HighlightedText),
                                    palette.color(group, QPalette::Highlight)),
                      kText);
        }
    }
}

TEST(Theme, SizesFollowTheTextScaleAndItsBounds)
{
    Theme theme(Scheme::Light);
    QSignalSpy spy(&theme, &Theme::changed);
    EXPECT_EQ(theme.px(13), 13);
    theme.setTextScale(2.0);
    EXPECT_EQ(theme.px(13), 26);
    EXPECT_EQ(theme.font(13).pixelSize(), 26);
    theme.setTextScale(5.0);
    EXPECT_DOUBLE_EQ(theme.textScale(), 2.0);
    EXPECT_EQ(spy.count(), 1);
    theme.setScheme(Scheme::Dark);
    EXPECT_EQ(spy.count(), 2);
}

TEST(Figures, EveryDigitTakesTheSameRoom)
{
    const Theme theme(Scheme::Light);
    for (const double size : {10.0, 13.0, 26.0}) {
        const QFont font = theme.font(size, 600);
        const double cell = figureAdvance(font);
        for (char digit = '0'; digit <= '9'; ++digit) {
            EXPECT_GE(cell, QFontMetricsF(font).horizontalAdvance(QLatin1Char(digit)));
            EXPECT_DOUBLE_EQ(figuresWidth(font, QString(QLatin1Char(digit))), cell);
        }
        EXPECT_DOUBLE_EQ(figuresWidth(font, QStringLiteral("1111")), figuresWidth(font, QStringLiteral("8080")));
        EXPECT_DOUBLE_EQ(figuresWidth(font, QStringLiteral("1.15")), figuresWidth(font, QStringLiteral("8.04")));
    }
}

/// First and last inked column of a text drawn as figures at the left edge.
std::pair<int, int> inkSpan(const QFont& font, const QString& text)
{
    QImage image(300, 60, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setFont(font);
    drawFigures(painter, QRectF(10, 0, 280, 60), Qt::AlignVCenter | Qt::AlignLeft, text);
    painter.end();
    int first = -1;
    int last = -1;
    for (int x = 0; x < image.width(); ++x) {
        for (int y = 0; y < image.height(); ++y) {
            if (qGray(image.pixel(x, y)) < 200) {
                first = first < 0 ? x : first;
                last = x;
                break;
            }
        }
    }
    return {first, last};
}

TEST(Figures, DrawnDigitsLineUpWhateverTheyAre)
{
    const QFont font = Theme(Scheme::Light).font(26);
    const QString bar = QStringLiteral("|");
    // A bar after four narrow digits stands where it stands after four wide ones.
    EXPECT_EQ(inkSpan(font, QStringLiteral("1111") + bar).second, inkSpan(font, QStringLiteral("8888") + bar).second);
}

TEST(Figures, ElidedTextFitsAndSaysThatItWasCut)
{
    const QFont font = Theme(Scheme::Light).font(13);
    const QString text = QStringLiteral("Nitrite clear about 4–9 Dec (8 in 10)");
    const QString cut = elidedFigures(font, text, 120);
    EXPECT_LE(figuresWidth(font, cut), 120.0);
    EXPECT_TRUE(cut.endsWith(QChar(0x2026)));
    EXPECT_EQ(elidedFigures(font, text, 1000), text);
}

} // namespace
} // namespace littoral::ui
