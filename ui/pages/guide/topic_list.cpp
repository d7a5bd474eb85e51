// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/guide/topic_list.h"

#include <QFontMetrics>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>

namespace littoral::ui {

namespace {

class TopicDelegate final : public QStyledItemDelegate
{
public:
    TopicDelegate(Theme& theme, QObject* parent)
        : QStyledItemDelegate(parent)
        , m_theme(theme)
    {
    }

    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        if (index.data(GuideModel::HeadingRole).toBool()) {
            return {m_theme.px(120), std::max(24, QFontMetrics(m_theme.font(11)).height() + m_theme.px(10))};
        }
        return {m_theme.px(120),
                QFontMetrics(m_theme.font(13)).height() + QFontMetrics(m_theme.font(11)).height() + m_theme.px(12)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        if (index.data(GuideModel::HeadingRole).toBool()) {
            heading(*painter, option.rect, index);
        } else {
            topic(*painter, option, index);
        }
        painter->restore();
    }

private:
    void heading(QPainter& painter, const QRect& rect, const QModelIndex& index) const
    {
        painter.fillRect(rect, m_theme[Token::Sunk]);
        painter.setFont(m_theme.font(11, 600));
        painter.setPen(m_theme[Token::Ink2]);
        painter.drawText(rect.adjusted(m_theme.px(14), 0, -m_theme.px(8), 0), Qt::AlignVCenter | Qt::AlignLeft,
                         index.data().toString());
        painter.fillRect(QRect(rect.left(), rect.bottom(), rect.width(), 1), m_theme[Token::Rule]);
    }

    void topic(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
    {
        const bool chosen = option.state.testFlag(QStyle::State_Selected);
        if (chosen) {
            painter.fillRect(option.rect, m_theme[Token::Selection]);
            painter.fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), m_theme[Token::Accent]);
        }
        const QRect room = option.rect.adjusted(m_theme.px(14), m_theme.px(6), -m_theme.px(8), 0);
        QFont name = m_theme.font(13, chosen ? 600 : 500);
        name.setItalic(index.data(GuideModel::ShelfRole).toString() == QLatin1String("species"));
        const QFontMetrics first(name), second(m_theme.font(11));
        painter.setFont(name);
        painter.setPen(m_theme[Token::Ink]);
        painter.drawText(QRect(room.topLeft(), QSize(room.width(), first.height())), Qt::AlignLeft | Qt::AlignVCenter,
                         first.elidedText(index.data().toString(), Qt::ElideRight, room.width()));
        painter.setFont(m_theme.font(11));
        painter.setPen(m_theme[chosen ? Token::Ink2 : Token::Ink3]);
        painter.drawText(
            QRect(room.left(), room.top() + first.height(), room.width(), second.height()),
            Qt::AlignLeft | Qt::AlignVCenter,
            second.elidedText(index.data(GuideModel::DetailRole).toString(), Qt::ElideRight, room.width()));
        if (option.state.testFlag(QStyle::State_HasFocus)) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(m_theme[Token::Accent], 2));
            painter.drawRoundedRect(QRectF(option.rect).adjusted(2, 2, -2, -2), 4, 4);
        }
    }

    Theme& m_theme;
};

} // namespace

TopicList::TopicList(Theme& theme, GuideModel& model, QWidget* parent)
    : QListView(parent)
    , m_model(model)
{
    setModel(&model);
    setItemDelegate(new TopicDelegate(theme, this));
    setFrameShape(QFrame::NoFrame);
    setUniformItemSizes(false);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Topics found"));
    connect(&theme, &Theme::changed, this, [this] { doItemsLayout(); });
}

QString TopicList::current() const
{
    return currentIndex().data(GuideModel::TopicRole).toString();
}

void TopicList::showTopic(const QString& topic)
{
    m_quiet = true;
    const int row = m_model.rowOf(topic);
    const QModelIndex index = row < 0 ? QModelIndex() : m_model.index(row);
    setCurrentIndex(index);
    if (index.isValid()) {
        scrollTo(index);
    } else {
        clearSelection();
    }
    m_quiet = false;
}

void TopicList::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QListView::currentChanged(current, previous);
    const QString topic = current.data(GuideModel::TopicRole).toString();
    if (!m_quiet && !topic.isEmpty()) {
        emit chosen(topic);
    }
}

} // namespace littoral::ui
