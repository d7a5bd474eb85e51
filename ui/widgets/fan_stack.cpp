// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fan_stack.h"

#include "core/wording/numbers.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

constexpr double kZoomStep = 0.8;
/// A notch of the wheel (120 units) moves the axis by this part of its span.
constexpr double kPanPerNotch = 0.08;
constexpr double kReach = 9.0; // px a pointer may be off a mark

} // namespace

FanStack::FanStack(const Theme& theme, TimeAxis& axis, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
    , m_axis(axis)
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Charts of the cycle"));
    setAutoFillBackground(false);
    for (const auto signal : {&TimeAxis::rangeChanged, &TimeAxis::modeChanged, &TimeAxis::nowChanged}) {
        connect(&axis, signal, this, &FanStack::forget);
    }
    connect(&theme, &Theme::changed, this, [this] {
        m_metrics.reset();
        forget();
        updateGeometry();
    });
}

void FanStack::setModel(FanStackModel model)
{
    const bool same = model.panels.size() == m_model.panels.size();
    m_model = std::move(model);
    m_part = std::clamp(m_part, 0, std::max(0, partCount() - 1));
    if (!same) {
        partsChanged();
        updateGeometry();
    }
    describe();
    forget();
}

void FanStack::forget()
{
    m_layout.reset();
    m_still.forget();
    update();
}

const FanStackLayout& FanStack::layoutNow() const
{
    if (!m_metrics) {
        m_metrics.emplace(m_theme);
    }
    if (!m_layout) {
        m_layout = layOutFans(m_model, *m_metrics, m_axis.view(0, width()), QSizeF(size()));
    }
    return *m_layout;
}

void FanStack::setCursorAt(std::optional<qint64> at)
{
    m_cursor = at;
    describe();
    announcePart();
    update();
}

qint64 FanStack::cursorOrNow() const
{
    return m_cursor.value_or(m_axis.now());
}

void FanStack::describe()
{
    QStringList sentences;
    for (int i = 0; i < partCount(); ++i) {
        sentences << partSentence(i);
    }
    setAccessibleDescription(sentences.join(QStringLiteral(". ")));
}

QString FanStack::partSentence(int part) const
{
    if (part < 0 || part >= partCount()) {
        return {};
    }
    const FanPanel& panel = m_model.panels[static_cast<std::size_t>(part)];
    const qint64 at = cursorOrNow();
    const QDate day = QDateTime::fromMSecsSinceEpoch(at, m_axis.zone()).date();
    const QDate today = QDateTime::fromMSecsSinceEpoch(m_axis.now(), m_axis.zone()).date();
    QStringList parts;
    for (const FanSeries& series : panel.series) {
        const auto number = [&](double value) { return wording::numberText(value, panel.decimals); };
        const QString name = series.label.isEmpty() ? panel.title : series.label;
        const LaneBand* ahead = bandAt(series.preview.empty() ? series.future : series.preview, at);
        const LaneBand* past = bandAt(series.fitted, at);
        if (!m_model.futureText.isEmpty()) {
            for (const auto& [way, bands] :
                 {std::pair{&m_model.futureText, &series.future}, std::pair{&m_model.previewText, &series.preview}}) {
                if (const LaneBand* band = bandAt(*bands, at)) {
                    parts << tr("%1 %2, 8 in 10 between %3 and %4", "way, middle value, range")
                                 .arg(*way, number(band->q50), number(band->q10), number(band->q90));
                }
            }
        } else if (ahead != nullptr) {
            parts << tr("%1 %2, 8 in 10 between %3 and %4", "quantity, middle value, range")
                         .arg(name, number(ahead->q50), number(ahead->q10), number(ahead->q90));
        } else if (past != nullptr) {
            parts << tr("%1 %2, fitted", "quantity, value").arg(name, number(past->q50));
        } else {
            parts << tr("%1: no forecast for this day", "quantity").arg(name);
        }
    }
    for (const FanReading& reading : panel.readings) {
        if (std::abs(reading.at - at) < kDayMs / 2) {
            parts << reading.sentence;
        }
    }
    return tr("%1, %2, %3: %4", "panel, unit, day, values")
        .arg(panel.title, panel.unit, wording::dateText(day, today), parts.join(QStringLiteral("; ")));
}

QRect FanStack::partRect(int part) const
{
    if (part < 0 || part >= partCount()) {
        return {};
    }
    const FanBox& box = layoutNow().panels[static_cast<std::size_t>(part)];
    return box.title.united(box.plot).toAlignedRect();
}

QSize FanStack::sizeHint() const
{
    return {m_theme.px(700), std::max(minimumSizeHint().height(), m_theme.px(760))};
}

QSize FanStack::minimumSizeHint() const
{
    if (!m_metrics) {
        m_metrics.emplace(m_theme);
    }
    return {m_theme.px(320), static_cast<int>(leastFanHeight(m_model, *m_metrics))};
}

void FanStack::paintEvent(QPaintEvent*)
{
    const FanStackLayout& layout = layoutNow();
    const FanPainter fans(m_theme, *m_metrics, m_model, layout);
    QPainter painter(this);
    m_still.paint(painter, size(), m_theme[Token::Panel], [&](QPainter& still) { fans.paint(still, m_axis); });
    if (m_cursor) {
        fans.paintCursor(painter, *m_cursor);
    }
    paintFocusRing(painter, m_theme[Token::Accent]);
}

void FanStack::resizeEvent(QResizeEvent*)
{
    forget();
}

void FanStack::stepCursor(int days)
{
    qint64 at = m_cursor ? *m_cursor + days * kDayMs : m_axis.now();
    const AxisView& view = layoutNow().axis;
    const qint64 first = view.at(view.left, m_model.flooded);
    const qint64 last = view.at(view.right(), m_model.flooded);
    setCursorAt(std::clamp(at, first, last));
}

void FanStack::stepReading(bool forward)
{
    const qint64 at = cursorOrNow();
    std::optional<qint64> best;
    for (const FanPanel& panel : m_model.panels) {
        for (const FanReading& reading : panel.readings) {
            const bool beyond = forward ? reading.at > at : reading.at < at;
            if (beyond && (!best || (forward ? reading.at < *best : reading.at > *best))) {
                best = reading.at;
            }
        }
    }
    if (best) {
        setCursorAt(best);
    }
}

void FanStack::keyPressEvent(QKeyEvent* event)
{
    const bool control = (event->modifiers() & Qt::ControlModifier) != 0;
    if ((event->modifiers() & (Qt::AltModifier | Qt::MetaModifier)) != 0) {
        event->ignore();
        return;
    }
    const AxisView view = layoutNow().axis;
    const double now = (layoutNow().nowX - view.left) / view.width;
    const double share = now >= 0.0 && now <= 1.0 ? now : 0.5;
    switch (event->key()) {
    case Qt::Key_Left:
        stepCursor(control ? -7 : -1);
        return;
    case Qt::Key_Right:
        stepCursor(control ? 7 : 1);
        return;
    case Qt::Key_Up:
    case Qt::Key_Down: {
        const int next = std::clamp(m_part + (event->key() == Qt::Key_Up ? -1 : 1), 0, std::max(0, partCount() - 1));
        if (next == m_part) {
            event->ignore();
            return;
        }
        m_part = next;
        announcePart();
        update();
        return;
    }
    case Qt::Key_Period:
    case Qt::Key_Comma:
        stepReading(event->key() == Qt::Key_Period);
        return;
    case Qt::Key_Home:
        setCursorAt(m_model.flooded);
        return;
    case Qt::Key_End:
        setCursorAt(view.at(view.right(), m_model.flooded));
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        m_axis.zoom(share, kZoomStep);
        return;
    case Qt::Key_Minus:
        m_axis.zoom(share, 1.0 / kZoomStep);
        return;
    case Qt::Key_Escape:
        if (m_cursor) {
            setCursorAt(std::nullopt);
            return;
        }
        break;
    default:
        break;
    }
    event->ignore();
}

const FanReading* FanStack::readingAt(QPointF pos, int* panelIndex) const
{
    const FanStackLayout& layout = layoutNow();
    const FanReading* best = nullptr;
    double nearest = m_theme.px(kReach) * m_theme.px(kReach);
    for (std::size_t i = 0; i < m_model.panels.size(); ++i) {
        for (const FanReading& reading : m_model.panels[i].readings) {
            const QPointF off = QPointF(layout.x(reading.at, m_model.flooded), layout.panels[i].y(reading.value)) - pos;
            const double distance = off.x() * off.x() + off.y() * off.y();
            if (distance < nearest) {
                nearest = distance;
                best = &reading;
                *panelIndex = static_cast<int>(i);
            }
        }
    }
    return best;
}

void FanStack::mousePressEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton) {
        m_dragFrom = event->position().x();
        for (int i = 0; i < partCount(); ++i) {
            m_part = partRect(i).contains(event->position().toPoint()) ? i : m_part;
        }
        const AxisView& view = layoutNow().axis;
        if (event->position().x() >= view.left) {
            setCursorAt(view.at(event->position().x(), m_model.flooded));
        }
    }
}

void FanStack::mouseMoveEvent(QMouseEvent* event)
{
    if (m_dragFrom && (event->buttons() & Qt::LeftButton) != 0) {
        const AxisView& view = layoutNow().axis;
        setCursorAt(view.at(std::clamp(event->position().x(), view.left, view.right()), m_model.flooded));
    }
}

void FanStack::mouseReleaseEvent(QMouseEvent*)
{
    m_dragFrom.reset();
}

void FanStack::mouseDoubleClickEvent(QMouseEvent* event)
{
    int panel = 0;
    const FanReading* reading = readingAt(event->position(), &panel);
    if (reading != nullptr && reading->reading) {
        emit readingOpenWanted(reading->reading);
    }
}

void FanStack::wheelEvent(QWheelEvent* event)
{
    const QPoint turned = event->angleDelta();
    const AxisView view = m_axis.view(layoutNow().axis.left, layoutNow().axis.width);
    if ((event->modifiers() & Qt::ControlModifier) != 0) {
        const qint64 under = layoutNow().axis.at(event->position().x(), m_model.flooded);
        const double share = (view.x(under, m_model.flooded) - view.left) / view.width;
        m_axis.zoom(std::clamp(share, 0.0, 1.0), std::pow(kZoomStep, turned.y() / 120.0));
    } else if (std::abs(turned.x()) > std::abs(turned.y())) {
        m_axis.pan(-turned.x() / 120.0 * kPanPerNotch);
    } else if ((event->modifiers() & Qt::ShiftModifier) != 0) {
        m_axis.pan(-turned.y() / 120.0 * kPanPerNotch);
    } else {
        event->ignore();
        return;
    }
    event->accept();
}

void FanStack::focusInEvent(QFocusEvent* event)
{
    ChartWidget::focusInEvent(event);
    announcePart();
    update();
}

void FanStack::focusOutEvent(QFocusEvent* event)
{
    ChartWidget::focusOutEvent(event);
    update();
}

bool FanStack::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        int panel = 0;
        if (const FanReading* reading = readingAt(help->pos(), &panel)) {
            QToolTip::showText(help->globalPos(), reading->sentence, this);
        } else {
            QToolTip::hideText();
        }
        return true;
    }
    return ChartWidget::event(event);
}

} // namespace littoral::ui
