// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bench/sheet_list.h"

#include "ui/paint/glyphs.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>

namespace littoral::ui {

namespace {

class SheetDelegate final : public QStyledItemDelegate
{
public:
    SheetDelegate(Theme& theme, QObject* parent)
        : QStyledItemDelegate(parent)
        , m_theme(theme)
    {
    }

    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        const bool heading = index.data(BenchListModel::KeyRole).toString().isEmpty();
        const int text = QFontMetrics(m_theme.font(heading ? 11 : 13)).height();
        return {m_theme.px(160), heading ? text + m_theme.px(16) : std::max(24, text + m_theme.px(12))};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        if (index.data(BenchListModel::KeyRole).toString().isEmpty()) {
            painter->setFont(m_theme.font(11, 600));
            painter->setPen(m_theme[Token::Ink2]);
            painter->drawText(option.rect.adjusted(m_theme.px(12), 0, -m_theme.px(6), -m_theme.px(4)),
                              Qt::AlignLeft | Qt::AlignBottom, index.data().toString());
        } else {
            paintSheet(*painter, option, index);
        }
        painter->restore();
    }

private:
    void paintSheet(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
    {
        const bool chosen = option.state.testFlag(QStyle::State_Selected);
        if (chosen || option.state.testFlag(QStyle::State_MouseOver)) {
            painter.fillRect(option.rect, m_theme[chosen ? Token::Selection : Token::Sunk]);
        }
        if (chosen) {
            painter.fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), m_theme[Token::Accent]);
        }
        const double side = m_theme.px(14);
        const double left = option.rect.left() + m_theme.px(13);
        drawGlyph(painter, static_cast<facade::Glyph>(index.data(BenchListModel::GlyphRole).toInt()),
                  QRectF(left, option.rect.center().y() - side / 2 + 0.5, side, side),
                  m_theme[chosen ? Token::Ink : Token::Ink2]);
        const QFont font = m_theme.font(13, chosen ? 600 : 400);
        painter.setFont(font);
        painter.setPen(m_theme[Token::Ink]);
        QRect room = option.rect;
        room.setLeft(static_cast<int>(left + side) + m_theme.px(9));
        room.setRight(room.right() - m_theme.px(6));
        painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                         QFontMetrics(font).elidedText(index.data().toString(), Qt::ElideRight, room.width()));
        if (option.state.testFlag(QStyle::State_HasFocus)) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(m_theme[Token::Accent], 2));
            painter.drawRoundedRect(QRectF(option.rect).adjusted(2, 2, -2, -2), 4, 4);
        }
    }

    Theme& m_theme;
};

} // namespace

SheetList::SheetList(Theme& theme, BenchListModel& model, QWidget* parent)
    : QListView(parent)
    , m_model(model)
{
    setModel(&model);
    setItemDelegate(new SheetDelegate(theme, this));
    setFrameShape(QFrame::NoFrame);
    setMouseTracking(true);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Worksheets"));
    connect(&theme, &Theme::changed, this, [this] { doItemsLayout(); });
    connect(this, &QListView::clicked, this, [this](const QModelIndex& index) {
        const QString key = index.data(BenchListModel::KeyRole).toString();
        if (!key.isEmpty()) {
            emit chosen(key);
        }
    });
}

QString SheetList::current() const
{
    return currentIndex().data(BenchListModel::KeyRole).toString();
}

void SheetList::showSheet(const QString& key)
{
    m_quiet = true;
    const int row = m_model.rowOf(key);
    setCurrentIndex(row < 0 ? QModelIndex() : m_model.index(row));
    m_quiet = false;
}

void SheetList::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QListView::currentChanged(current, previous);
    const QString key = current.data(BenchListModel::KeyRole).toString();
    if (!m_quiet && !key.isEmpty()) {
        emit chosen(key);
    }
}

void SheetList::keyPressEvent(QKeyEvent* event)
{
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && !current().isEmpty()) {
        emit entered(current());
        return;
    }
    // The list begins with a heading, which the keyboard cannot stand on.
    if (event->key() == Qt::Key_Home || event->key() == Qt::Key_End) {
        const int row = event->key() == Qt::Key_Home ? m_model.firstSheet() : m_model.rowCount() - 1;
        if (row >= 0) {
            setCurrentIndex(m_model.index(row));
        }
        return;
    }
    // Letters belong to the page (pin, task, record): the list is searched in its filter.
    if (!event->text().isEmpty() && event->text()[0].isPrint()) {
        event->ignore();
        return;
    }
    QListView::keyPressEvent(event);
}

} // namespace littoral::ui
