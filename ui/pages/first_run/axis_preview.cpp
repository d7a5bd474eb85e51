// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/first_run/axis_preview.h"

#include "core/wording/numbers.h"
#include "ui/models/day_words.h"
#include "ui/paint/time_ticks.h"
#include "ui/theme/figures.h"

#include <QFontMetrics>
#include <QPainter>
#include <array>

namespace littoral::ui {

namespace {
constexpr double kDaysEitherSide = 33.0;
constexpr std::array kRowHeights{64.0, 30.0, 28.0};
} // namespace

AxisPreview::AxisPreview(Theme& theme, const record::Clock& clock, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_clock(clock)
{
    setAccessibleName(tr("The time axis, empty"));
    setAccessibleDescription(tr("Left of today: readings as marks, what was done, work done. Right of today: the "
                                "forecast as a band with its odds, changes "
                                "planned, work due."));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

double AxisPreview::headerHeight() const
{
    return 2.0 * QFontMetrics(m_theme.font(11)).height() + m_theme.px(10);
}

QSize AxisPreview::sizeHint() const
{
    double rows = 0.0;
    for (double height : kRowHeights) {
        rows += m_theme.px(height);
    }
    return {m_theme.px(600), static_cast<int>(headerHeight() + rows)};
}

void AxisPreview::paintHeader(QPainter& painter, double header) const
{
    const qint64 now = m_clock.now().utcMs();
    const double perDay = width() / (2.0 * kDaysEitherSide);
    const auto from = now - static_cast<qint64>(kDaysEitherSide * kDayMs);
    const auto to = now + static_cast<qint64>(kDaysEitherSide * kDayMs);
    const QFontMetrics metrics(m_theme.font(11));
    const double label = metrics.horizontalAdvance(QStringLiteral("Mon 30 ")) + m_theme.px(8);
    const QTimeZone zone = QTimeZone::systemTimeZone();
    const AxisTicks ticks = calendarTicks(from, to, zone, perDay, label, m_clock.today().year());
    const auto x = [&](qint64 at) { return static_cast<double>(at - from) / kDayMs * perDay; };
    painter.fillRect(QRectF(0, 0, width(), header), m_theme[Token::Sunk]);
    for (const AxisTick& tick : ticks.lower) {
        painter.setPen(m_theme[Token::Rule]);
        painter.drawLine(QPointF(x(tick.at), header), QPointF(x(tick.at), height()));
        painter.setPen(m_theme[Token::Rule2]);
        painter.drawLine(QPointF(x(tick.at), header - metrics.height() - 2), QPointF(x(tick.at), header));
        painter.setPen(m_theme[Token::Ink3]);
        painter.setFont(m_theme.font(11));
        drawFigures(painter, QRectF(x(tick.at) + 4, header - metrics.height() - 3, label * 2, metrics.height()),
                    Qt::AlignLeft | Qt::AlignVCenter, tick.label);
    }
    for (const AxisTick& tick : ticks.upper) {
        const double at = std::max(0.0, x(tick.at));
        const double wide = figuresWidth(m_theme.font(11, 600), tick.label) + 6.0;
        if (at < flagBox().right() && at + wide > flagBox().left()) {
            continue; // the flag of now would cut it
        }
        painter.setPen(m_theme[Token::Ink3]);
        painter.drawLine(QPointF(at, 4), QPointF(at, 4 + metrics.height()));
        painter.setPen(m_theme[Token::Ink2]);
        painter.setFont(m_theme.font(11, 600));
        drawFigures(painter, QRectF(at + 5, 3, m_theme.px(140), metrics.height()), Qt::AlignLeft | Qt::AlignVCenter,
                    tick.label);
    }
}

void AxisPreview::paintRows(QPainter& painter, double header) const
{
    const std::array words{std::pair{tr("readings, as marks"), tr("forecast, as a band with its odds")},
                           std::pair{tr("what was done: water changes, doses, trims"), tr("changes planned")},
                           std::pair{tr("work done"), tr("work due")}};
    const double middle = width() / 2.0;
    painter.setFont(m_theme.font(12));
    const double room = middle - m_theme.px(24);
    // The part before the colon says enough where the whole does not fit.
    const auto fitting = [&](const QString& text) {
        return painter.fontMetrics().horizontalAdvance(text) <= room ? text : text.section(u':', 0, 0);
    };
    double y = header;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const double tall = m_theme.px(kRowHeights[i]);
        painter.setPen(m_theme[Token::Ink3]);
        painter.drawText(QRectF(8, y, room, tall), Qt::AlignRight | Qt::AlignVCenter, fitting(words[i].first));
        painter.drawText(QRectF(middle + m_theme.px(16), y, room, tall), Qt::AlignLeft | Qt::AlignVCenter,
                         fitting(words[i].second));
        y += tall;
        painter.fillRect(QRectF(0, y - 1, width(), 1), m_theme[i + 1 == words.size() ? Token::Rule2 : Token::Rule]);
    }
}

QString AxisPreview::nowText() const
{
    const record::Moment now = m_clock.now();
    return tr("%1, %2", "day, time")
        .arg(wording::weekdayText(now.localDate(), now.localDate()),
             now.toDateTime().time().toString(QStringLiteral("HH:mm")));
}

QRectF AxisPreview::flagBox() const
{
    const QFont font = m_theme.font(11, 650);
    const double wide = figuresWidth(font, nowText()) + m_theme.px(20);
    return {width() / 2.0 - wide / 2.0, 2.0, wide, static_cast<double>(QFontMetrics(font).height() + m_theme.px(7))};
}

void AxisPreview::paintNow(QPainter& painter, double header) const
{
    const double middle = width() / 2.0;
    const QFont font = m_theme.font(11, 650);
    painter.fillRect(QRectF(middle - 1, header - m_theme.px(8), 2, height() - header + m_theme.px(8)),
                     m_theme[Token::Ink]);
    const QRectF flag = flagBox();
    painter.fillRect(flag, m_theme[Token::Ink]);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_theme[Token::Ink]);
    painter.drawPolygon(QPolygonF{QPointF(middle - 6, flag.bottom()), QPointF(middle + 6, flag.bottom()),
                                  QPointF(middle, flag.bottom() + 6)});
    painter.setFont(font);
    painter.setPen(m_theme[Token::Panel]);
    drawFigures(painter, flag, Qt::AlignCenter, nowText());
}

void AxisPreview::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const double header = headerHeight();
    painter.fillRect(rect(), m_theme[Token::Panel]);
    painter.fillRect(QRectF(width() / 2.0, 0, width() / 2.0, height()), m_theme[Token::Future]);
    paintHeader(painter, header);
    painter.fillRect(QRectF(0, header, width(), 1), m_theme[Token::Rule2]);
    painter.fillRect(QRectF(0, 0, width(), 1), m_theme[Token::Rule]);
    paintRows(painter, header);
    paintNow(painter, header);
}

} // namespace littoral::ui
