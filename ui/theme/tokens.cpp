// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/tokens.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

struct Row
{
    Token token;
    QRgb light, dark, highContrast;
};

constexpr QRgb c(unsigned rgb)
{
    return 0xff000000u | rgb;
}

constexpr std::array<Row, static_cast<std::size_t>(Token::Count)> kRows{{
    {Token::Window, c(0xEEF1F0), c(0x0F1618), c(0x000000)},
    {Token::Panel, c(0xFFFFFF), c(0x161F22), c(0x000000)},
    {Token::Sunk, c(0xF6F8F7), c(0x121A1D), c(0x000000)},
    {Token::Future, c(0xFBFAF5), c(0x192225), c(0x101010)},
    {Token::Ink, c(0x17211F), c(0xE8EEEC), c(0xFFFFFF)},
    {Token::Ink2, c(0x45524E), c(0xB6C3BF), c(0xFFFFFF)},
    {Token::Ink3, c(0x5E6B67), c(0x90A09B), c(0xE0E0E0)},
    {Token::Rule, c(0xD6DDDA), c(0x2B393C), c(0x6E6E6E)},
    {Token::Rule2, c(0x7C8A85), c(0x70817E), c(0xFFFFFF)},
    {Token::Accent, c(0x0E5A63), c(0x74C7CC), c(0x5CF0FF)},
    {Token::OnAccent, c(0xFFFFFF), c(0x0B1416), c(0x000000)},
    {Token::Selection, c(0xE0EEEF), c(0x1D3438), c(0x003A40)},
    {Token::Ok, c(0x006B4E), c(0x5CC9A1), c(0x5CFFC0)},
    {Token::OkTint, c(0xE2F1EB), c(0x16332B), c(0x00261B)},
    {Token::Watch, c(0x7A4F00), c(0xE8B04A), c(0xFFD060)},
    {Token::WatchTint, c(0xF8EED6), c(0x352B16), c(0x2A2000)},
    {Token::Act, c(0xB03A00), c(0xFF8A54), c(0xFF9C6A)},
    {Token::ActTint, c(0xFBE8DE), c(0x3A2318), c(0x301200)},
    {Token::Info, c(0x005A92), c(0x6FB7E8), c(0x8CCBFF)},
    {Token::InfoTint, c(0xE1EEF7), c(0x182E3D), c(0x00203A)},
    {Token::Overdue, c(0x8E2A00), c(0xFF9A66), c(0xFFB080)},
    {Token::OnOverdue, c(0xFFFFFF), c(0x1B0E07), c(0x000000)},
    {Token::Water, c(0xCFE3E8), c(0x1F4049), c(0x123840)},
    {Token::WaterSurface, c(0x3B7F8C), c(0x74B4C0), c(0xA0F0FF)},
    {Token::Soil, c(0x8B8172), c(0x6E6557), c(0x908674)},
    {Token::Glass, c(0x7C8A85), c(0x70817E), c(0xFFFFFF)},
}};

struct Hue
{
    QLatin1String key;
    QRgb light, dark;
    Mark mark;
};

constexpr std::array kHues{
    Hue{"tan"_L1, c(0xB87700), c(0xE69F00), Mark::Circle},
    Hue{"nh3"_L1, c(0xB87700), c(0xE69F00), Mark::OpenCircle},
    Hue{"no2"_L1, c(0xA34A7E), c(0xD98DB7), Mark::TriangleUp},
    Hue{"no3"_L1, c(0xC65200), c(0xF0733A), Mark::Square},
    Hue{"fe"_L1, c(0xC65200), c(0xF0733A), Mark::OpenSquare},
    Hue{"po4"_L1, c(0x857B00), c(0xE2D64A), Mark::Diamond},
    Hue{"k"_L1, c(0x857B00), c(0xE2D64A), Mark::OpenDiamond},
    Hue{"ph"_L1, c(0x0072B2), c(0x4A9FDB), Mark::TriangleDown},
    Hue{"co2"_L1, c(0x2A86BF), c(0x6CC0F0), Mark::Hexagon},
    Hue{"kh"_L1, c(0x008562), c(0x22B98C), Mark::Plus},
    Hue{"gh"_L1, c(0x008562), c(0x22B98C), Mark::Cross},
    Hue{"temp"_L1, c(0x17211F), c(0xE8EEEC), Mark::Bar},
    Hue{"cond"_L1, c(0x17211F), c(0xE8EEEC), Mark::Pentagon},
    Hue{"tds"_L1, c(0x17211F), c(0xE8EEEC), Mark::Pentagon},
};

const Hue* hueOf(const QString& key)
{
    const auto found = std::ranges::find_if(kHues, [&](const Hue& h) { return h.key == key; });
    return found == kHues.end() ? nullptr : &*found;
}

double channel(double value)
{
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour)
{
    return 0.2126 * channel(colour.redF()) + 0.7152 * channel(colour.greenF()) + 0.0722 * channel(colour.blueF());
}

} // namespace

QColor Tokens::operator[](Token token) const
{
    const Row& row = kRows[static_cast<std::size_t>(token)];
    switch (m_scheme) {
    case Scheme::Dark:
        return QColor::fromRgb(row.dark);
    case Scheme::HighContrast:
        return QColor::fromRgb(row.highContrast);
    case Scheme::Light:
        break;
    }
    return QColor::fromRgb(row.light);
}

QColor Tokens::parameter(const QString& key) const
{
    const Hue* hue = hueOf(key);
    if (hue == nullptr) {
        return (*this)[Token::Ink2];
    }
    return QColor::fromRgb(m_scheme == Scheme::Light ? hue->light : hue->dark);
}

Mark Tokens::mark(const QString& parameterKey)
{
    const Hue* hue = hueOf(parameterKey);
    return hue == nullptr ? Mark::Dot : hue->mark;
}

QColor Tokens::status(facade::Status status) const
{
    switch (status) {
    case facade::Status::Ok:
        return (*this)[Token::Ok];
    case facade::Status::Watch:
        return (*this)[Token::Watch];
    case facade::Status::Act:
        return (*this)[Token::Act];
    case facade::Status::Overdue:
        return (*this)[m_scheme == Scheme::Light ? Token::Overdue : Token::Act];
    case facade::Status::Waiting:
        return (*this)[Token::Info];
    case facade::Status::Unknown:
        break;
    }
    return (*this)[Token::Ink3];
}

QColor Tokens::statusTint(facade::Status status) const
{
    switch (status) {
    case facade::Status::Ok:
        return (*this)[Token::OkTint];
    case facade::Status::Watch:
        return (*this)[Token::WatchTint];
    case facade::Status::Act:
    case facade::Status::Overdue:
        return (*this)[Token::ActTint];
    case facade::Status::Waiting:
        return (*this)[Token::InfoTint];
    case facade::Status::Unknown:
        break;
    }
    return (*this)[Token::Sunk];
}

double contrastRatio(const QColor& a, const QColor& b)
{
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

} // namespace littoral::ui
