// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/theme.h"

#include <QFont>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

double bounded(double scale)
{
    return std::clamp(scale, 1.0, 2.0);
}

} // namespace

Theme::Theme(Scheme scheme, double textScale, QObject* parent)
    : QObject(parent)
    , m_tokens(scheme)
    , m_textScale(bounded(textScale))
{
}

int Theme::px(double atOne) const
{
    return static_cast<int>(std::lround(atOne * m_textScale));
}

QFont Theme::font(double pixelsAtOne, int weight) const
{
    QFont font;
    font.setFamilies({QStringLiteral("Inter"), QStringLiteral("DejaVu Sans")});
    font.setPixelSize(std::max(1, px(pixelsAtOne)));
    font.setWeight(static_cast<QFont::Weight>(weight));
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

void Theme::setScheme(Scheme scheme)
{
    if (scheme != m_tokens.scheme()) {
        m_tokens = Tokens(scheme);
        emit changed();
    }
}

void Theme::setTextScale(double scale)
{
    const double wanted = bounded(scale);
    if (!qFuzzyCompare(wanted, m_textScale)) {
        m_textScale = wanted;
        emit changed();
    }
}

} // namespace littoral::ui
