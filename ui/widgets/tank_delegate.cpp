// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/tank_delegate.h"

#include "ui/paint/glyphs.h"
#include "ui/paint/outline.h"
#include "ui/theme/figures.h"

#include <QApplication>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

namespace littoral::ui {

TankDelegate::TankDelegate(Theme& theme, const TanksModel& model, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
    , m_model(model)
{
}

QSize TankDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const
{
    const int small = QFontMetrics(m_theme.font(11)).height();
    if (index.data(TanksModel::HeadingRole).toBool()) {
        return {m_theme.px(64), m_folded ? m_theme.px(9) : std::max(32, small + m_theme.px(18))};
    }
    if (m_folded) {
        return {m_theme.px(64), m_theme.px(24) + small + m_theme.px(20)};
    }
    const int lines = index.data(TanksModel::StatusWordRole).toString().isEmpty() ? 1 : 2;
    return {m_theme.px(120),
            QFontMetrics(m_theme.font(13, 600)).height() + lines * (small + m_theme.px(3)) + m_theme.px(16)};
}

QRect TankDelegate::tick(const QRect& row) const
{
    const int side = m_theme.px(15);
    return {row.left() + m_theme.px(14), row.top() + m_theme.px(10), side, side};
}

void TankDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (index.data(TanksModel::HeadingRole).toBool()) {
        paintHeading(painter, option.rect, index);
    } else {
        paintTank(painter, option, index);
    }
    painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1), m_theme[Token::Rule]);
    painter->restore();
}

void TankDelegate::paintHeading(QPainter* painter, const QRect& rect, const QModelIndex& index) const
{
    if (m_folded) {
        return;
    }
    const QRect line = rect.adjusted(m_theme.px(14), m_theme.px(4), -m_theme.px(10), 0);
    const QString side = index.data(TanksModel::SideTextRole).toString();
    const QFont font = m_theme.font(11, 550);
    const int sideWidth = static_cast<int>(figuresWidth(font, side)) + m_theme.px(6);
    painter->setFont(font);
    painter->setPen(m_theme[Token::Ink2]);
    drawFigures(*painter, line, Qt::AlignRight | Qt::AlignVCenter, side);
    drawFigures(*painter, line, Qt::AlignLeft | Qt::AlignVCenter,
                elidedFigures(font, index.data().toString(), line.width() - sideWidth));
}

void TankDelegate::paintStatus(QPainter* painter, const QRect& line, const QModelIndex& index, bool withWord,
                               bool selected) const
{
    const auto status = static_cast<facade::Status>(index.data(TanksModel::StatusRole).toInt());
    const int side = m_theme.px(13);
    const int left = withWord ? line.left() : line.center().x() - side / 2;
    const QRectF shape(left, line.center().y() - side / 2.0, side, side);
    const QColor ink = m_theme.tokens().status(status);
    drawStatus(*painter, status, shape, ink, m_theme[selected ? Token::Selection : Token::Sunk]);
    if (withWord) {
        const QFont font = m_theme.font(11, 550);
        const QRect words = line.adjusted(side + m_theme.px(5), 0, 0, 0);
        painter->setFont(font);
        painter->setPen(ink);
        drawFigures(*painter, words, Qt::AlignLeft | Qt::AlignVCenter,
                    elidedFigures(font, index.data(TanksModel::StatusWordRole).toString(), words.width()));
    }
}

void TankDelegate::paintOutline(QPainter* painter, const QRect& room, const QModelIndex& index) const
{
    std::vector<TankShape> all;
    for (int row = 0; row < m_model.rowCount(); ++row) {
        const QModelIndex other = m_model.index(row);
        if (!other.data(TanksModel::HeadingRole).toBool()) {
            all.push_back(
                {other.data(TanksModel::LengthRole).toDouble(), other.data(TanksModel::HeightRole).toDouble(), 0.0});
        }
    }
    const TankShape shape{index.data(TanksModel::LengthRole).toDouble(), index.data(TanksModel::HeightRole).toDouble(),
                          index.data(TanksModel::BedShareRole).toDouble()};
    drawOutline(*painter, m_theme, room, shape, outlineScale(all, QSizeF(room.width() - 7, room.height() - 2)));
}

void TankDelegate::paintTank(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const QRect rect = option.rect;
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    if (selected) {
        painter->fillRect(rect, m_theme[Token::Selection]);
        painter->fillRect(QRect(rect.topLeft(), QSize(3, rect.height())), m_theme[Token::Accent]);
    }
    if (m_folded) {
        paintFolded(painter, rect, index);
    } else {
        QStyleOptionButton box;
        box.rect = tick(rect);
        box.palette = option.palette;
        box.state = QStyle::State_Enabled |
                    (index.data(Qt::CheckStateRole).toInt() == static_cast<int>(Qt::Checked) ? QStyle::State_On
                                                                                             : QStyle::State_Off);
        QApplication::style()->drawPrimitive(QStyle::PE_IndicatorCheckBox, &box, painter, option.widget);

        const QFont name = m_theme.font(13, 600);
        const QFont small = m_theme.font(11);
        const int left = box.rect.right() + m_theme.px(9);
        const bool running = !index.data(TanksModel::StatusWordRole).toString().isEmpty();
        const int outline = running ? m_theme.px(60) : 0;
        const int right = rect.right() - m_theme.px(10);
        const int nameHeight = QFontMetrics(name).height();
        const int smallHeight = QFontMetrics(small).height() + m_theme.px(3);
        int y = rect.top() + m_theme.px(8);
        const QRect nameLine(left, y, right - outline - left, nameHeight);
        painter->setFont(name);
        painter->setPen(m_theme[Token::Ink]);
        painter->drawText(nameLine, Qt::AlignLeft | Qt::AlignVCenter,
                          QFontMetrics(name).elidedText(index.data().toString(), Qt::ElideRight, nameLine.width()));
        y += nameHeight;
        const QRect second(left, y, right - left - outline, smallHeight);
        painter->setFont(small);
        painter->setPen(m_theme[Token::Ink3]);
        drawFigures(*painter, second, Qt::AlignLeft | Qt::AlignVCenter,
                    elidedFigures(small, index.data(TanksModel::LineRole).toString(), second.width()));
        y += smallHeight;
        if (running) {
            paintStatus(painter, QRect(left, y, right - left, smallHeight), index, true, selected);
            paintOutline(painter, QRect(right - outline, rect.top() + m_theme.px(6), outline, m_theme.px(28)), index);
        }
    }
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen(m_theme[Token::Accent], 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(QRectF(rect).adjusted(3, 3, -3, -4), 4, 4);
    }
}

void TankDelegate::paintFolded(QPainter* painter, const QRect& rect, const QModelIndex& index) const
{
    const bool selected = false;
    const int small = QFontMetrics(m_theme.font(11)).height();
    paintOutline(
        painter,
        QRect(rect.left() + m_theme.px(6), rect.top() + m_theme.px(6), rect.width() - m_theme.px(12), m_theme.px(26)),
        index);
    paintStatus(painter, QRect(rect.left(), rect.bottom() - small - m_theme.px(6), rect.width(), small), index, false,
                selected);
}

bool TankDelegate::editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                               const QModelIndex& index)
{
    if (!index.flags().testFlag(Qt::ItemIsUserCheckable)) {
        return false;
    }
    bool toggle = false;
    if (event->type() == QEvent::MouseButtonRelease && !m_folded) {
        // 24 px at least about the tick counts as the tick.
        toggle =
            tick(option.rect).adjusted(-8, -8, 6, 8).contains(static_cast<QMouseEvent*>(event)->position().toPoint());
    } else if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        toggle = key == Qt::Key_Space || key == Qt::Key_Select;
    }
    if (!toggle) {
        return false;
    }
    const bool checked = index.data(Qt::CheckStateRole).toInt() == static_cast<int>(Qt::Checked);
    return model->setData(index, static_cast<int>(checked ? Qt::Unchecked : Qt::Checked), Qt::CheckStateRole);
}

} // namespace littoral::ui
