// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/stock/stock_delegates.h"

#include "core/wording/numbers.h"
#include "ui/models/stock_words.h"
#include "ui/paint/glyphs.h"
#include "ui/paint/marks.h"
#include "ui/theme/figures.h"

#include <QPainter>
#include <QTextLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using facade::Suits;

namespace {
constexpr int kPad = 10;
constexpr double kBarHalf = 6.0;
} // namespace

double scaleX(const facade::StockColumn& column, const QRect& cell, double value, const Theme& theme)
{
    const double left = cell.left() + theme.px(kPad);
    const double right = cell.right() - theme.px(kPad);
    return left + (right - left) * std::clamp((value - column.from) / (column.to - column.from), 0.0, 1.0);
}

void StockDelegate::ground(QPainter& painter, const QStyleOptionViewItem& option) const
{
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    painter.fillRect(option.rect, m_theme[chosen ? Token::Selection : Token::Panel]);
    painter.fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1), m_theme[Token::Rule]);
}

void StockDelegate::ring(QPainter& painter, const QStyleOptionViewItem& option) const
{
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme[Token::Accent], 2));
        painter.drawRoundedRect(QRectF(option.rect).adjusted(2, 2, -2, -3), 4, 4);
    }
}

/// Two lines at most; what does not fit ends in dots and is among the row's reasons.
void StockDelegate::wrapped(QPainter& painter, const QRect& rect, const QFont& font, const QColor& ink,
                            const QString& text) const
{
    const QFontMetrics metrics(font);
    QTextLayout layout(text, font);
    layout.beginLayout();
    QTextLine first = layout.createLine();
    if (first.isValid()) {
        first.setLineWidth(rect.width());
    }
    layout.endLayout();
    QStringList lines;
    if (!first.isValid() || first.textLength() >= text.size()) {
        lines << metrics.elidedText(text, Qt::ElideRight, rect.width());
    } else {
        lines << metrics.elidedText(text.left(first.textLength()).trimmed(), Qt::ElideRight, rect.width())
              << metrics.elidedText(text.mid(first.textLength()), Qt::ElideRight, rect.width());
    }
    const int height = metrics.height();
    int y = rect.center().y() - height * static_cast<int>(lines.size()) / 2 + 1;
    painter.setFont(font);
    painter.setPen(ink);
    for (const QString& line : lines) {
        drawFigures(painter, QRectF(rect.left(), y, rect.width(), height), Qt::AlignLeft | Qt::AlignVCenter, line);
        y += height;
    }
}

void StockDelegate::verdict(QPainter& painter, const QRect& rect, facade::Status status, const QString& text) const
{
    const int side = m_theme.px(14);
    const QColor ink = m_theme.tokens().status(status);
    drawStatus(painter, status, QRectF(rect.left() + m_theme.px(4), rect.center().y() - side / 2.0, side, side), ink,
               m_theme[Token::Panel]);
    const QRect room = rect.adjusted(m_theme.px(4) + side + m_theme.px(7), 0, -m_theme.px(6), 0);
    wrapped(painter, room, m_theme.font(12, 600), status == facade::Status::Unknown ? m_theme[Token::Ink2] : ink, text);
}

void AnimalsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const facade::AnimalRow* row = m_model.animal(index.row());
    if (row == nullptr) {
        painter->fillRect(option.rect, m_theme[Token::Sunk]);
        painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1),
                          m_theme[Token::Rule]);
        painter->setFont(m_theme.font(11, 600));
        painter->setPen(m_theme[Token::Ink2]);
        painter->drawText(option.rect.adjusted(m_theme.px(14), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                          index.data().toString());
        painter->restore();
        return;
    }
    ground(*painter, option);
    const int parameter = index.column() - AnimalsModel::FirstParameter;
    if (index.column() == AnimalsModel::SpeciesColumn) {
        species(*painter, option.rect, index);
    } else if (index.column() == AnimalsModel::ClassColumn) {
        wrapped(*painter, option.rect.adjusted(m_theme.px(6), 0, -m_theme.px(6), 0), m_theme.font(12),
                m_theme[Token::Ink2], index.data().toString());
    } else if (index.column() == m_model.verdictColumn()) {
        verdict(*painter, option.rect, row->status, index.data().toString());
    } else if (parameter < static_cast<int>(row->cells.size())) {
        cell(*painter, option.rect, m_model.stock().columns[static_cast<std::size_t>(parameter)],
             row->cells[static_cast<std::size_t>(parameter)]);
    }
    ring(*painter, option);
    painter->restore();
}

void AnimalsDelegate::species(QPainter& painter, const QRect& rect, const QModelIndex& index) const
{
    const facade::AnimalRow* row = m_model.animal(index.row());
    QFont name = m_theme.font(13, 600);
    name.setItalic(row->species.has_value());
    const QFont small = m_theme.font(11);
    const QFontMetrics first(name), second(small);
    const QRect room = rect.adjusted(m_theme.px(14), 0, -m_theme.px(4), 0);
    const int top = rect.center().y() - (first.height() + second.height()) / 2;
    QString text = index.data().toString();
    if (row->species && first.horizontalAdvance(text) > room.width()) {
        // As printed where the genus is clear; the whole name is in the tip and for screen readers.
        text = text.left(1) + u". "_s + text.section(u' ', 1);
    }
    painter.setFont(name);
    painter.setPen(m_theme[Token::Ink]);
    painter.drawText(QRect(room.left(), top, room.width(), first.height()), Qt::AlignLeft | Qt::AlignVCenter,
                     first.elidedText(text, Qt::ElideRight, room.width()));
    painter.setFont(small);
    painter.setPen(m_theme[Token::Ink2]);
    const QString line = index.data(AnimalsModel::CountRole).toString();
    drawFigures(painter, QRectF(room.left(), top + first.height(), room.width(), second.height()),
                Qt::AlignLeft | Qt::AlignVCenter, elidedFigures(small, line, room.width()));
}

void AnimalsDelegate::cell(QPainter& painter, const QRect& rect, const facade::StockColumn& column,
                           const facade::StockCell& cell) const
{
    const QFont small = m_theme.font(10);
    const QFontMetrics metrics(small);
    const double half = m_theme.px(kBarHalf);
    const double block = metrics.height() + 2 * half + 2;
    const double top = rect.center().y() - block / 2;
    const double middle = top + metrics.height() + 2 + half;
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    painter.drawLine(QPointF(scaleX(column, rect, column.from, m_theme), middle),
                     QPointF(scaleX(column, rect, column.to, m_theme), middle));
    const bool bad = cell.suits == Suits::No;
    if (cell.borne) {
        const double low = scaleX(column, rect, cell.borne->low, m_theme);
        const double high = scaleX(column, rect, cell.borne->high, m_theme);
        const QColor edge = m_theme.tokens().parameter(column.parameter);
        QColor fill = edge;
        fill.setAlphaF(0.28F);
        painter.fillRect(QRectF(low, middle - half, high - low, 2 * half), fill);
        painter.setPen(QPen(edge, 2));
        painter.drawLine(QPointF(low, middle - half), QPointF(low, middle + half));
        painter.drawLine(QPointF(high, middle - half), QPointF(high, middle + half));
        painter.setFont(small);
        painter.setPen(m_theme[Token::Ink2]);
        const QString text = rangeText(column.parameter, *cell.borne);
        const double wide = figuresWidth(small, text);
        const double left = std::clamp((low + high - wide) / 2, rect.left() + 2.0,
                                       std::max(rect.left() + 2.0, rect.right() - wide - 2));
        drawFigures(painter, QRectF(left, top, wide + 1, metrics.height()), Qt::AlignLeft | Qt::AlignVCenter, text);
    }
    if (column.ahead) {
        const double low = scaleX(column, rect, column.ahead->low, m_theme);
        const double high = scaleX(column, rect, column.ahead->high, m_theme);
        painter.fillRect(QRectF(low, middle - m_theme.px(4), std::max(3.0, high - low), m_theme.px(8)),
                         QBrush(m_theme[Token::Ink2], Qt::BDiagPattern));
    }
    if (column.water) {
        const double low = scaleX(column, rect, column.water->low, m_theme);
        const double high = scaleX(column, rect, column.water->high, m_theme);
        const double least = m_theme.px(5);
        const double centre = (low + high) / 2;
        const double width = std::max(least, high - low);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_theme[bad ? Token::Act : Token::Ink]);
        painter.drawRect(QRectF(centre - width / 2, middle - m_theme.px(2.5), width, m_theme.px(5)));
    }
    if (bad || cell.suits == Suits::Partly) {
        const auto status = bad ? facade::Status::Act : facade::Status::Watch;
        const double side = m_theme.px(11);
        drawStatus(painter, status, QRectF(rect.right() - side - 2, top, side, side), m_theme.tokens().status(status),
                   m_theme[Token::Panel]);
    }
}

void PlantsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    ground(*painter, option);
    const facade::PlantRow* row = m_model.plant(index.row());
    const facade::StockModel& stock = m_model.stock();
    const QRect room = option.rect.adjusted(m_theme.px(6), 0, -m_theme.px(6), 0);
    if (row != nullptr) {
        switch (index.column()) {
        case PlantsModel::SpeciesColumn: {
            QFont name = m_theme.font(13, 600);
            name.setItalic(row->species.has_value());
            wrapped(*painter, option.rect.adjusted(m_theme.px(14), 0, -m_theme.px(4), 0), name, m_theme[Token::Ink],
                    index.data().toString());
            break;
        }
        case PlantsModel::PlaceColumn:
            wrapped(*painter, room, m_theme.font(12), m_theme[Token::Ink2], index.data().toString());
            break;
        case PlantsModel::LightColumn: {
            const auto sum = stock.lightSum();
            need(*painter, room, row->lightNeed, sum ? std::optional(facade::lightLevel(*sum)) : std::nullopt);
            break;
        }
        case PlantsModel::Co2Column:
            need(*painter, room, row->co2Need, facade::co2Level(stock.co2_mg_per_L.value_or(3.0)));
            break;
        case PlantsModel::CoverColumn:
            cover(*painter, room, *row);
            break;
        default:
            verdict(*painter, option.rect, row->status, index.data().toString());
        }
    }
    ring(*painter, option);
    painter->restore();
}

void PlantsDelegate::need(QPainter& painter, const QRect& rect, int steps, std::optional<double> level) const
{
    constexpr int kSteps = 4;
    const double gap = 2.0;
    const double side = std::min<double>(m_theme.px(15), (rect.width() - gap * (kSteps - 1)) / kSteps);
    const double high = m_theme.px(10);
    const double top = rect.center().y() - high / 2;
    for (int i = 0; i < kSteps; ++i) {
        const QRectF box(rect.left() + i * (side + gap), top, side, high);
        painter.setPen(QPen(m_theme[Token::Rule2], 1));
        painter.setBrush(i < steps ? m_theme[Token::Rule2] : QColor(Qt::transparent));
        painter.drawRect(box);
    }
    if (level) {
        const int whole = std::min(kSteps - 1, static_cast<int>(*level));
        const double x = rect.left() + whole * (side + gap) + (*level - whole) * side;
        painter.setPen(QPen(m_theme[Token::Accent], m_theme.px(2)));
        painter.drawLine(QPointF(x, top - m_theme.px(3)), QPointF(x, top + high + m_theme.px(3)));
    }
}

void PlantsDelegate::cover(QPainter& painter, const QRect& rect, const facade::PlantRow& row) const
{
    if (row.cover.empty()) {
        wrapped(painter, rect, m_theme.font(11), m_theme[Token::Ink3], PlantsModel::tr("no cover noted"));
        return;
    }
    const QFont figures = m_theme.font(12, 600);
    const QString last = wording::numberText(row.cover.back().share * 100.0, 0);
    const double text = figuresWidth(figures, last) + m_theme.px(8);
    const QRectF plot = QRectF(rect).adjusted(0, m_theme.px(8), -text - m_theme.px(4), -m_theme.px(9));
    const double from = static_cast<double>(std::min(row.since.utcMs(), row.cover.front().at));
    const double to = std::max(from + 1.0, static_cast<double>(row.cover.back().at));
    const auto point = [&](const facade::CoverPoint& one) {
        return QPointF(plot.left() + plot.width() * (static_cast<double>(one.at) - from) / (to - from),
                       plot.bottom() - plot.height() * std::clamp(one.share, 0.0, 1.0));
    };
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    painter.drawLine(plot.bottomLeft(), plot.bottomRight());
    QPolygonF line;
    for (const facade::CoverPoint& one : row.cover) {
        line << point(one);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(m_theme[Token::Ink2], 1.5));
    painter.drawPolyline(line);
    painter.setBrush(m_theme[Token::Ink]);
    painter.setPen(Qt::NoPen);
    painter.drawEllipse(line.back(), m_theme.px(2.5), m_theme.px(2.5));
    painter.setFont(figures);
    painter.setPen(m_theme[Token::Ink]);
    drawFigures(painter, QRectF(rect.right() - text, rect.top(), text, rect.height()),
                Qt::AlignRight | Qt::AlignVCenter, last);
}

StockHeader::StockHeader(Theme& theme, const AnimalsModel* animals, QWidget* parent)
    : QHeaderView(Qt::Horizontal, parent)
    , m_theme(theme)
    , m_animals(animals)
{
}

QSize StockHeader::sizeHint() const
{
    return {QHeaderView::sizeHint().width(), QFontMetrics(m_theme.font(11)).height() + m_theme.px(12) +
                                                 (m_animals == nullptr ? 0 : QFontMetrics(m_theme.font(10)).height())};
}

void StockHeader::paintSection(QPainter* painter, const QRect& rect, int section) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->fillRect(rect, m_theme[Token::Panel]);
    painter->fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), m_theme[Token::Rule2]);
    const QFont name = m_theme.font(11, 600);
    const QFont small = m_theme.font(10);
    const int smallHeight = QFontMetrics(small).height();
    const QString text = model()->headerData(section, Qt::Horizontal, Qt::DisplayRole).toString();
    painter->setFont(name);
    painter->setPen(m_theme[Token::Ink2]);
    const int parameter = section - AnimalsModel::FirstParameter;
    const int columns = m_animals == nullptr ? 0 : static_cast<int>(m_animals->stock().columns.size());
    if (parameter < 0 || parameter >= columns) {
        const int left = section == AnimalsModel::SpeciesColumn ? m_theme.px(14) : m_theme.px(6);
        painter->drawText(rect.adjusted(left, 0, -2, -m_theme.px(5)), Qt::AlignLeft | Qt::AlignBottom, text);
        painter->restore();
        return;
    }
    const facade::StockColumn& column = m_animals->stock().columns[static_cast<std::size_t>(parameter)];
    const int nameHeight = QFontMetrics(name).height();
    const QRect top(rect.left() + m_theme.px(kPad), rect.top() + m_theme.px(4), rect.width() - m_theme.px(kPad),
                    nameHeight);
    drawParameterMark(*painter, m_theme, column.parameter, QPointF(top.left() + m_theme.px(4), top.center().y() + 0.5),
                      m_theme.px(kMarkSize), m_theme[Token::Panel]);
    painter->setFont(name);
    painter->setPen(m_theme[Token::Ink]);
    const QRect words = top.adjusted(m_theme.px(13), 0, 0, 0);
    painter->drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetrics(name).elidedText(text, Qt::ElideRight, words.width()));
    painter->setFont(small);
    painter->setPen(m_theme[Token::Ink3]);
    for (const double share : {0.0, 0.5, 1.0}) {
        const double value = column.from + share * (column.to - column.from);
        const bool fine = column.to - column.from < 0.1;
        if (fine && share == 0.5) {
            continue; // three figures of this length would run into each other
        }
        const int decimals = std::abs(value - std::round(value)) < 0.001 ? 0 : fine ? 2 : 1;
        const QString number = wording::numberText(value, decimals);
        const double wide = figuresWidth(small, number);
        const double x = scaleX(column, rect, value, m_theme);
        drawFigures(*painter, QRectF(x - share * wide, rect.bottom() - smallHeight - 3, wide + 1, smallHeight),
                    Qt::AlignLeft | Qt::AlignVCenter, number);
    }
    painter->restore();
}

} // namespace littoral::ui
