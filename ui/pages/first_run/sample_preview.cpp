// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/first_run/sample_preview.h"

#include "ui/paint/outline.h"

#include <QPainter>
#include <array>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

enum class Curve { Peak, SmallPeak, Saw, Step, Slow };

struct Strip
{
    const char* parameter;
    Curve curve;
    double length_cm, height_cm;
    int overdue;
};

// Tank boxes as in the sample row, roughly; the lines are drawn by formula.
constexpr std::array kStrips{Strip{"no2", Curve::Peak, 90, 45, 0}, Strip{"no2", Curve::SmallPeak, 60, 36, 0},
                             Strip{"no3", Curve::Saw, 150, 60, 2}, Strip{"kh", Curve::Step, 35, 35, 0},
                             Strip{"no3", Curve::Saw, 120, 50, 0}, Strip{"cond", Curve::Slow, 30, 20, 1}};

double valueOf(Curve curve, double t)
{
    switch (curve) {
    case Curve::Peak:
        return t < 0.25 ? 0.05 : std::exp(-std::pow((t - 0.47) / 0.12, 2.0)) * 0.9 + 0.04;
    case Curve::SmallPeak:
        return t < 0.25 ? 0.05 : std::exp(-std::pow((t - 0.36) / 0.07, 2.0)) * 0.6 + 0.06;
    case Curve::Saw:
        return 0.25 + 0.6 * std::fmod(t * 7.0, 1.0);
    case Curve::Step:
        return t < 0.2 ? 0.3 : 0.6 - 0.1 * t;
    case Curve::Slow:
        return 0.35 + 0.25 * t + 0.12 * std::sin(t * 30.0);
    }
    return 0.5;
}

} // namespace

SamplePreview::SamplePreview(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(tr("Impression of the sample row"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

QSize SamplePreview::sizeHint() const
{
    return {m_theme.px(340), m_theme.px(200)};
}

void SamplePreview::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const double left = m_theme.px(76);
    const double middle = left + (width() - left) * 0.5;
    const double tall = height() / static_cast<double>(kStrips.size());
    painter.fillRect(rect(), m_theme[Token::Panel]);
    painter.fillRect(QRectF(0, 0, left, height()), m_theme[Token::Sunk]);
    painter.fillRect(QRectF(middle, 0, width() - middle, height()), m_theme[Token::Future]);
    painter.setRenderHint(QPainter::Antialiasing);
    std::vector<TankShape> shapes;
    for (const Strip& strip : kStrips) {
        shapes.push_back({strip.length_cm, strip.height_cm, 0.2});
    }
    const double scale = outlineScale(shapes, QSizeF(left - 26, tall - 10));
    for (std::size_t i = 0; i < kStrips.size(); ++i) {
        const Strip& strip = kStrips[i];
        const double top = static_cast<double>(i) * tall;
        drawOutline(painter, m_theme, QRectF(0, top, left - 10, tall - 6), shapes[i], scale);
        QPolygonF past;
        QPolygonF future;
        for (int step = 0; step <= 120; ++step) {
            const double t = step / 120.0;
            const double x = left + 4 + t * (width() - left - 8);
            (x <= middle ? past : future) << QPointF(x, top + tall - 6 - valueOf(strip.curve, t) * (tall - 12));
        }
        const QColor hue = m_theme.tokens().parameter(QString::fromLatin1(strip.parameter));
        painter.setPen(QPen(hue, 1.4));
        painter.drawPolyline(past);
        painter.setPen(QPen(hue, 1.2, Qt::DashLine));
        painter.drawPolyline(future);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_theme[Token::Overdue]);
        for (int chip = 0; chip < strip.overdue; ++chip) {
            painter.drawRoundedRect(QRectF(middle - m_theme.px(25) * (chip + 1), top + tall - m_theme.px(11),
                                           m_theme.px(21), m_theme.px(8)),
                                    2, 2);
        }
        painter.setBrush(Qt::NoBrush);
        painter.fillRect(QRectF(0, top + tall - 1, width(), 1), m_theme[Token::Rule]);
    }
    painter.fillRect(QRectF(middle - 1, 0, 2, height()), m_theme[Token::Ink]);
    painter.setPen(m_theme[Token::Rule]);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
}

} // namespace littoral::ui
