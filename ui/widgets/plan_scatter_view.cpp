// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/plan_scatter_view.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <numeric>

namespace littoral::ui {

namespace {
constexpr double kReach = 12.0; // a target is 24 px across
}

PlanScatterView::PlanScatterView(const Theme& theme, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Plans: litres against exposure"));
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void PlanScatterView::setModel(ScatterModel model)
{
    const bool same = model.points.size() == m_model.points.size();
    m_model = std::move(model);
    if (!same) {
        partsChanged();
    }
    m_current = m_model.selected ? static_cast<int>(*m_model.selected) : std::min(m_current, partCount() - 1);
    setAccessibleDescription(m_current >= 0 ? partSentence(m_current) : QString());
    update();
}

ScatterLayout PlanScatterView::layoutNow() const
{
    return layOutScatter(m_model, LaneMetrics(m_theme), QRectF(rect()));
}

QString PlanScatterView::partSentence(int part) const
{
    return part >= 0 && part < partCount() ? m_model.points[static_cast<std::size_t>(part)].sentence : QString();
}

QRect PlanScatterView::partRect(int part) const
{
    if (part < 0 || part >= partCount()) {
        return {};
    }
    const double reach = m_theme.px(kReach);
    const QPointF at = layoutNow().at[static_cast<std::size_t>(part)];
    return QRectF(at.x() - reach, at.y() - reach, 2 * reach, 2 * reach).toAlignedRect();
}

QSize PlanScatterView::sizeHint() const
{
    return {m_theme.px(400), static_cast<int>(leastScatterHeight(LaneMetrics(m_theme))) + m_theme.px(24)};
}

QSize PlanScatterView::minimumSizeHint() const
{
    return {m_theme.px(240), static_cast<int>(leastScatterHeight(LaneMetrics(m_theme)))};
}

void PlanScatterView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const LaneMetrics metrics(m_theme);
    const ScatterLayout layout = layOutScatter(m_model, metrics, QRectF(rect()));
    paintScatter(painter, m_theme, metrics, m_model, layout);
    if (hasFocus() && m_current >= 0 && m_current < partCount()) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme[Token::Accent], 2));
        const double reach = m_theme.px(13);
        painter.drawEllipse(layout.at[static_cast<std::size_t>(m_current)], reach, reach);
    }
    paintFocusRing(painter, m_theme[Token::Accent]);
}

void PlanScatterView::step(bool right)
{
    std::vector<int> order(m_model.points.size());
    std::iota(order.begin(), order.end(), 0);
    std::ranges::stable_sort(order, {}, [this](int i) { return m_model.points[static_cast<std::size_t>(i)].litres; });
    const auto at = std::ranges::find(order, m_current);
    if (at == order.end()) {
        m_current = order.empty() ? -1 : order.front();
    } else if (right && at + 1 != order.end()) {
        m_current = *(at + 1);
    } else if (!right && at != order.begin()) {
        m_current = *(at - 1);
    }
    setAccessibleDescription(partSentence(m_current));
    announcePart();
    update();
}

void PlanScatterView::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
        step(event->key() == Qt::Key_Right);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (m_current >= 0) {
            emit chosen(m_current);
        }
        return;
    default:
        event->ignore();
    }
}

void PlanScatterView::mousePressEvent(QMouseEvent* event)
{
    if (const auto hit = layoutNow().hit(event->position(), m_theme.px(kReach))) {
        m_current = static_cast<int>(*hit);
        emit chosen(m_current);
    }
}

void PlanScatterView::focusInEvent(QFocusEvent* event)
{
    ChartWidget::focusInEvent(event);
    announcePart();
    update();
}

void PlanScatterView::focusOutEvent(QFocusEvent* event)
{
    ChartWidget::focusOutEvent(event);
    update();
}

bool PlanScatterView::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        if (const auto hit = layoutNow().hit(help->pos(), m_theme.px(kReach))) {
            QToolTip::showText(help->globalPos(), partSentence(static_cast<int>(*hit)), this);
        } else {
            QToolTip::hideText();
        }
        return true;
    }
    return ChartWidget::event(event);
}

} // namespace littoral::ui
