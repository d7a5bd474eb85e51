// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/stock/lineage_view.h"

#include "core/wording/numbers.h"
#include "ui/models/stock_words.h"
#include "ui/theme/figures.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <map>

namespace littoral::ui {

LineageView::LineageView(Theme& theme, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Filter media moved between tanks"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

std::size_t LineageView::node(record::TankId tank, const record::Row& row, record::TankId own)
{
    const auto known = std::ranges::find(m_nodes, tank, &Node::tank);
    if (known != m_nodes.end()) {
        return static_cast<std::size_t>(known - m_nodes.begin());
    }
    const record::Tank* found = row.tank(tank);
    m_nodes.push_back({tank, found == nullptr ? tr("Tank that is gone") : found->name, 0, 0, tank == own});
    return m_nodes.size() - 1;
}

void LineageView::setMoves(const facade::StockModel& model, const record::Row& row, const QDate& today)
{
    m_nodes.clear();
    m_edges.clear();
    for (const facade::MediaMove& move : model.moves) {
        Edge edge;
        edge.from = node(move.from, row, model.tank);
        edge.to = node(move.to, row, model.tank);
        const QString day = wording::dateText(move.at.localDate(), today);
        edge.label = move.share ? tr("%1, %2").arg(wording::percentText(*move.share), day) : day;
        edge.sentence = moveText(move, row, today);
        edge.entry = move.entry;
        m_edges.push_back(std::move(edge));
    }
    place();
    m_part = std::clamp(m_part, 0, std::max(0, partCount() - 1));
    partsChanged();
    setAccessibleDescription(partSentence(m_part));
    updateGeometry();
    update();
}

/// A tank stands one column after the tank it got media from; moves both ways do not push each other on for ever.
void LineageView::place()
{
    for (std::size_t round = 0; round < m_nodes.size(); ++round) {
        for (const Edge& edge : m_edges) {
            const int column = m_nodes[edge.from].column + 1;
            if (m_nodes[edge.to].column < column && column < static_cast<int>(m_nodes.size())) {
                m_nodes[edge.to].column = column;
            }
        }
    }
    std::map<int, int> used;
    for (Node& each : m_nodes) {
        each.row = used[each.column]++;
    }
}

int LineageView::rows() const
{
    int most = 0;
    for (const Node& each : m_nodes) {
        most = std::max(most, each.row + 1);
    }
    return most;
}

QRectF LineageView::box(const Node& node) const
{
    int columns = 1;
    for (const Node& each : m_nodes) {
        columns = std::max(columns, each.column + 1);
    }
    const double height = QFontMetrics(m_theme.font(12, 600)).height() + m_theme.px(10);
    const double pitch = height + m_theme.px(14);
    const double width = columns > 1 ? (this->width() - 4.0) / (columns + 0.9 * (columns - 1)) : this->width() - 4.0;
    const double x = 2 + node.column * width * 1.9;
    const int inColumn = static_cast<int>(std::ranges::count(m_nodes, node.column, &Node::column));
    const double shift = (rows() - inColumn) * pitch / 2;
    return {x, 4 + shift + node.row * pitch, width, height};
}

QSize LineageView::sizeHint() const
{
    const int height = QFontMetrics(m_theme.font(12, 600)).height() + m_theme.px(24);
    return {m_theme.px(300), std::max(1, rows()) * height + 8};
}

QSize LineageView::minimumSizeHint() const
{
    return {m_theme.px(160), sizeHint().height()};
}

QString LineageView::partSentence(int part) const
{
    return part >= 0 && part < partCount() ? m_edges[static_cast<std::size_t>(part)].sentence : QString();
}

QRect LineageView::partRect(int part) const
{
    if (part < 0 || part >= partCount()) {
        return {};
    }
    const Edge& edge = m_edges[static_cast<std::size_t>(part)];
    const QRectF from = box(m_nodes[edge.from]);
    const QRectF to = box(m_nodes[edge.to]);
    const QRectF between(QPointF(from.right(), std::min(from.top(), to.top())),
                         QPointF(std::max(from.right() + 24.0, to.left()), std::max(from.bottom(), to.bottom())));
    return between.toAlignedRect();
}

void LineageView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QFont small = m_theme.font(10);
    const int line = QFontMetrics(small).height();
    for (std::size_t i = 0; i < m_edges.size(); ++i) {
        const QRectF from = box(m_nodes[m_edges[i].from]);
        const QRectF to = box(m_nodes[m_edges[i].to]);
        const QPointF a(from.right(), from.center().y());
        const QPointF b(to.left() - 1, to.center().y());
        const bool here = hasFocus() && static_cast<int>(i) == m_part;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme[here ? Token::Accent : Token::Ink3], here ? 2.2 : 1.4));
        QPainterPath way(a);
        const double bend = (b.x() - a.x()) / 2;
        way.cubicTo(a + QPointF(bend, 0), b - QPointF(bend, 0), b);
        painter.drawPath(way);
        const double head = m_theme.px(5);
        painter.setBrush(m_theme[here ? Token::Accent : Token::Ink3]);
        painter.drawPolygon(QPolygonF{b, b + QPointF(-head * 1.5, -head * 0.8), b + QPointF(-head * 1.5, head * 0.8)});
        painter.setFont(small);
        const double room = b.x() - a.x() - head * 2;
        const QString text = elidedFigures(small, m_edges[i].label, room);
        const QPointF middle = way.pointAtPercent(0.6);
        const QRectF place(middle.x() - room / 2, middle.y() - line / 2.0, room, line);
        // On a ground of its own, so that another arrow does not run through it.
        const double wide = figuresWidth(small, text) + 6.0;
        painter.fillRect(QRectF(middle.x() - wide / 2, place.top(), wide, line), m_theme[Token::Panel]);
        painter.setPen(m_theme[Token::Ink2]);
        drawFigures(painter, place, Qt::AlignHCenter | Qt::AlignVCenter, text);
    }
    painter.setFont(m_theme.font(12, 600));
    for (const Node& each : m_nodes) {
        const QRectF place = box(each);
        painter.setPen(QPen(m_theme[each.own ? Token::Accent : Token::Rule2], each.own ? 2 : 1));
        painter.setBrush(m_theme[each.own ? Token::Selection : Token::Panel]);
        painter.drawRoundedRect(place, 4, 4);
        painter.setPen(m_theme[Token::Ink]);
        painter.drawText(
            place.adjusted(6, 0, -6, 0), Qt::AlignCenter,
            QFontMetrics(painter.font()).elidedText(each.name, Qt::ElideRight, static_cast<int>(place.width()) - 12));
    }
    paintFocusRing(painter, m_theme[Token::Accent]);
}

void LineageView::keyPressEvent(QKeyEvent* event)
{
    const int key = event->key();
    if (key == Qt::Key_Down || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Left) {
        const int step = key == Qt::Key_Down || key == Qt::Key_Right ? 1 : -1;
        m_part = std::clamp(m_part + step, 0, std::max(0, partCount() - 1));
        setAccessibleDescription(partSentence(m_part));
        announcePart();
        update();
    } else if ((key == Qt::Key_Return || key == Qt::Key_Enter) && m_part < partCount()) {
        emit entryOpenWanted(m_edges[static_cast<std::size_t>(m_part)].entry);
    } else {
        event->ignore();
    }
}

void LineageView::mouseDoubleClickEvent(QMouseEvent* event)
{
    for (int part = 0; part < partCount(); ++part) {
        if (partRect(part).contains(event->position().toPoint())) {
            m_part = part;
            emit entryOpenWanted(m_edges[static_cast<std::size_t>(part)].entry);
            return;
        }
    }
}

void LineageView::focusInEvent(QFocusEvent* event)
{
    ChartWidget::focusInEvent(event);
    announcePart();
    update();
}

void LineageView::focusOutEvent(QFocusEvent* event)
{
    ChartWidget::focusOutEvent(event);
    update();
}

} // namespace littoral::ui
