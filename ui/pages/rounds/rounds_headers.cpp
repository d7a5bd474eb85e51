// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/rounds_headers.h"

#include "ui/models/rounds_model.h"
#include "ui/paint/marks.h"
#include "ui/paint/outline.h"
#include "ui/theme/figures.h"

#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

namespace littoral::ui {

ParameterHeader::ParameterHeader(Theme& theme, QWidget* parent)
    : QHeaderView(Qt::Horizontal, parent)
    , m_theme(theme)
{
    setSectionsClickable(false);
    setHighlightSections(false);
    setAccessibleName(tr("Parameters"));
    viewport()->setBackgroundRole(QPalette::Base);
}

QSize ParameterHeader::sizeHint() const
{
    return {QHeaderView::sizeHint().width(),
            QFontMetrics(m_theme.font(12, 600)).height() + QFontMetrics(m_theme.font(11)).height() + m_theme.px(14)};
}

void ParameterHeader::paintSection(QPainter* painter, const QRect& rect, int section) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->fillRect(rect, m_theme[Token::Panel]);
    const QFont name = m_theme.font(12, 600);
    const QFont small = m_theme.font(11);
    const QString text = model()->headerData(section, Qt::Horizontal).toString();
    const QString unit = model()->headerData(section, Qt::Horizontal, RoundsModel::UnitLabelRole).toString();
    const QRect inside = rect.adjusted(m_theme.px(6), m_theme.px(6), -m_theme.px(10), -m_theme.px(6));
    const QRect upper(inside.left(), inside.top(), inside.width(), QFontMetrics(name).height());
    painter->setFont(name);
    painter->setPen(m_theme[Token::Ink]);
    painter->drawText(upper, Qt::AlignRight | Qt::AlignVCenter, text);
    const double markX = upper.right() - QFontMetrics(name).horizontalAdvance(text) - m_theme.px(11);
    drawParameterMark(*painter, m_theme,
                      model()->headerData(section, Qt::Horizontal, RoundsModel::ParameterRole).toString(),
                      QPointF(markX, upper.center().y() + 1), m_theme.px(8), m_theme[Token::Panel]);
    painter->setFont(small);
    painter->setPen(m_theme[Token::Ink3]);
    const QRect lower(inside.left(), upper.bottom(), inside.width(), inside.bottom() - upper.bottom() + 1);
    painter->drawText(lower, Qt::AlignRight | Qt::AlignVCenter,
                      QFontMetrics(small).elidedText(unit, Qt::ElideRight, lower.width()));
    painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), m_theme[Token::Rule2]);
    painter->restore();
}

TankHeader::TankHeader(Theme& theme, const facade::Keeper& keeper, const RoundsModel& model, QWidget* parent)
    : QHeaderView(Qt::Vertical, parent)
    , m_theme(theme)
    , m_keeper(keeper)
    , m_model(model)
{
    setSectionsClickable(false);
    setHighlightSections(false);
    setSectionResizeMode(QHeaderView::Fixed);
    setAccessibleName(tr("Tanks"));
    viewport()->setBackgroundRole(QPalette::Base);
}

QSize TankHeader::sizeHint() const
{
    int widest = m_theme.px(90);
    const QFontMetrics name(m_theme.font(13, 600));
    for (int row = 0; row < m_model.rowCount(); ++row) {
        widest = std::max(
            {widest, name.horizontalAdvance(m_model.headerData(row, Qt::Vertical).toString()),
             static_cast<int>(figuresWidth(
                 m_theme.font(11), m_model.headerData(row, Qt::Vertical, RoundsModel::TankLineRole).toString()))});
    }
    return {std::min(widest, m_theme.px(170)) + m_theme.px(74), 0};
}

void TankHeader::setCurrentRow(int row)
{
    m_current = row;
    viewport()->update();
}

void TankHeader::paintSection(QPainter* painter, const QRect& rect, int section) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->fillRect(rect, m_theme[section == m_current ? Token::Selection : Token::Panel]);
    std::vector<TankShape> all;
    TankShape own;
    for (int row = 0; row < m_model.rowCount(); ++row) {
        if (const record::Tank* tank = m_keeper.row().tank(m_model.tank(row))) {
            all.push_back({tank->length_cm, tank->height_cm, 0.15});
            own = row == section ? all.back() : own;
        }
    }
    const int outline = m_theme.px(56);
    const QRect room(rect.right() - outline - m_theme.px(4), rect.top(), outline, rect.height() - m_theme.px(8));
    drawOutline(*painter, m_theme, room, own, outlineScale(all, QSizeF(outline - 7, m_theme.px(24))));
    const QFont name = m_theme.font(13, 600);
    const QFont small = m_theme.font(11);
    const QRect inside(rect.left() + m_theme.px(12), rect.top(), room.left() - rect.left() - m_theme.px(14),
                       rect.height());
    const int block = QFontMetrics(name).height() + QFontMetrics(small).height();
    const QRect upper(inside.left(), inside.center().y() - block / 2, inside.width(), QFontMetrics(name).height());
    painter->setFont(name);
    painter->setPen(m_theme[Token::Ink]);
    painter->drawText(upper, Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetrics(name).elidedText(m_model.headerData(section, Qt::Vertical).toString(),
                                                    Qt::ElideRight, upper.width()));
    painter->setFont(small);
    painter->setPen(m_theme[Token::Ink3]);
    const QRect lower(inside.left(), upper.bottom() + 1, inside.width(), QFontMetrics(small).height());
    drawFigures(*painter, lower, Qt::AlignLeft | Qt::AlignVCenter,
                elidedFigures(small, m_model.headerData(section, Qt::Vertical, RoundsModel::TankLineRole).toString(),
                              lower.width()));
    painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), m_theme[Token::Rule]);
    painter->fillRect(QRect(rect.right(), rect.top(), 1, rect.height()), m_theme[Token::Rule]);
    painter->restore();
}

} // namespace littoral::ui
