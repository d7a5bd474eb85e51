// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/record_card.h"

#include "ui/paint/glyphs.h"
#include "ui/theme/figures.h"
#include "ui/widgets/flow_layout.h"

#include <QComboBox>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

namespace {

using Role = HistoryRecord::Role;

/// Time, picture, what it says, and a smaller line; wrapped, so that nothing is cut.
class RecordDelegate final : public QStyledItemDelegate
{
public:
    RecordDelegate(Theme& theme, QListView* view)
        : QStyledItemDelegate(view)
        , m_theme(theme)
        , m_view(view)
    {
    }

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        const int width = m_view->viewport()->width();
        if (index.data(Role::HeadingRole).toBool()) {
            return {width, QFontMetrics(m_theme.font(11, 600)).height() + m_theme.px(8)};
        }
        const int room = std::max(40, width - left() - m_theme.px(8));
        const auto high = [room](const QFont& font, const QString& text) {
            return text.isEmpty()
                       ? 0
                       : QFontMetrics(font).boundingRect(QRect(0, 0, room, 1 << 20), Qt::TextWordWrap, text).height();
        };
        const int text = high(m_theme.font(13), index.data().toString());
        const int detail = high(m_theme.font(11), index.data(Role::DetailRole).toString());
        return {width, std::max(28, text + detail + m_theme.px(9))};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        painter->save();
        const QRect& box = option.rect;
        if (index.data(Role::HeadingRole).toBool()) {
            painter->fillRect(box, m_theme[Token::Sunk]);
            painter->setFont(m_theme.font(11, 600));
            painter->setPen(m_theme[Token::Ink2]);
            drawFigures(*painter, QRectF(box).adjusted(m_theme.px(12), 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                        index.data().toString());
            painter->restore();
            return;
        }
        const bool marked = index.data(Role::MarkedRole).toBool();
        const bool inWindow = index.data(Role::WindowRole).toBool();
        const bool chosen = option.state.testFlag(QStyle::State_Selected);
        painter->fillRect(box, m_theme[chosen     ? Token::Selection
                                       : marked   ? Token::InfoTint
                                       : inWindow ? Token::WatchTint
                                                  : Token::Panel]);
        if (marked || inWindow) {
            painter->fillRect(QRect(box.left(), box.top(), marked ? 4 : 2, box.height()),
                              m_theme[marked ? Token::Accent : Token::Watch]);
        }
        paintLine(*painter, box, index);
        painter->fillRect(QRect(box.left(), box.bottom(), box.width(), 1), m_theme[Token::Rule]);
        if (option.state.testFlag(QStyle::State_HasFocus)) {
            painter->setRenderHint(QPainter::Antialiasing);
            painter->setPen(QPen(m_theme[Token::Accent], 2));
            painter->setBrush(Qt::NoBrush);
            painter->drawRoundedRect(QRectF(box).adjusted(1, 1, -1, -1), 3, 3);
        }
        painter->restore();
    }

private:
    [[nodiscard]] int left() const
    {
        return m_theme.px(12) + static_cast<int>(figuresWidth(m_theme.font(11), QStringLiteral("00:00"))) +
               m_theme.px(30);
    }

    void paintLine(QPainter& painter, const QRect& box, const QModelIndex& index) const
    {
        const QFont body = m_theme.font(13);
        const int line = QFontMetrics(body).height();
        const int top = box.top() + m_theme.px(4);
        painter.setFont(m_theme.font(11));
        painter.setPen(m_theme[Token::Ink3]);
        drawFigures(painter, QRectF(box.left() + m_theme.px(10), top, m_theme.px(60), line),
                    Qt::AlignVCenter | Qt::AlignLeft, index.data(Role::TimeRole).toString());
        const double side = m_theme.px(14);
        drawGlyph(painter, static_cast<facade::Glyph>(index.data(Role::GlyphRole).toInt()),
                  QRectF(box.left() + left() - side - m_theme.px(8), top + (line - side) / 2, side, side),
                  m_theme[Token::Ink2]);
        const QRect room(box.left() + left(), top, std::max(40, box.width() - left() - m_theme.px(8)), box.height());
        const QString text = index.data().toString();
        painter.setFont(body);
        painter.setPen(m_theme[Token::Ink]);
        painter.drawText(room, Qt::TextWordWrap, text);
        const int used = QFontMetrics(body).boundingRect(room, Qt::TextWordWrap, text).height();
        painter.setFont(m_theme.font(11));
        painter.setPen(m_theme[Token::Ink3]);
        painter.drawText(room.adjusted(0, used, 0, 0), Qt::TextWordWrap, index.data(Role::DetailRole).toString());
    }

    Theme& m_theme;
    QListView* m_view;
};

} // namespace

RecordCard::RecordCard(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : HistoryCard(theme, tr("Record"), parent)
    , m_keeper(keeper)
    , m_model(new HistoryRecord(this))
    , m_kind(new QComboBox)
    , m_order(new QComboBox)
    , m_find(new QLineEdit)
    , m_list(new QListView)
    , m_empty(addText(TextStyle::Body, Token::Ink2))
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_kind->addItems({tr("All kinds"), tr("Readings"), tr("Water"), tr("Seen"), tr("Done")});
    m_kind->setAccessibleName(tr("Kinds of lines shown"));
    m_order->addItems({tr("Newest first"), tr("Oldest first")});
    m_order->setAccessibleName(tr("Order of the lines"));
    m_find->setPlaceholderText(tr("Find in the record"));
    m_find->setAccessibleName(tr("Show only lines with these words"));
    m_find->setClearButtonEnabled(true);
    m_find->setMinimumWidth(60);
    auto* bar = new QWidget;
    auto* flow = new FlowLayout(bar, 6);
    flow->setContentsMargins(10, 0, 10, 4);
    flow->addWidget(m_kind);
    flow->addWidget(m_order);
    flow->addWidget(m_find);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new RecordDelegate(theme, m_list));
    m_list->setResizeMode(QListView::Adjust);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setAccessibleName(tr("Record of the layout; Enter opens a line, Delete removes it"));
    m_list->setMinimumHeight(theme.px(160));
    m_list->installEventFilter(this);
    column()->insertWidget(2, bar);
    column()->addWidget(m_list, 1);
    m_foot = addText(TextStyle::Secondary, Token::Ink3);
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this](int kind) {
        m_model->setKind(static_cast<HistoryRecord::Kind>(kind));
        refreshFoot();
    });
    connect(m_order, &QComboBox::currentIndexChanged, this, [this](int order) { m_model->setNewestFirst(order == 0); });
    connect(m_find, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_model->setFilter(text);
        refreshFoot();
    });
    connect(m_list, &QListView::doubleClicked, this,
            [this](const QModelIndex& index) { emit opened(m_model->refAt(index.row())); });
    connect(&theme, &Theme::changed, this, [this] { m_list->doItemsLayout(); });
}

void RecordCard::setCase(const facade::CaseFile& file)
{
    const facade::RecordRef at = m_model->refAt(m_list->currentIndex().row());
    const int row = m_list->currentIndex().row();
    m_model->setRecord(m_keeper.row(), file.request.question.layout, file.today);
    m_model->setWindow(file.strip.from, file.strip.onset);
    const int same = m_model->rowOf(at);
    // The keyboard stays on its line, or on the next one down when that line is gone.
    int wanted = same >= 0 ? same : std::min(row, m_model->rowCount() - 1);
    while (wanted >= 0 && wanted < m_model->rowCount() && m_model->refAt(wanted).at == 0) {
        ++wanted;
    }
    m_list->setCurrentIndex(m_model->index(wanted));
    refreshFoot();
}

void RecordCard::refreshFoot()
{
    const int all = m_model->allLines();
    const int shown = m_model->lineCount();
    say(m_empty, all == 0     ? tr("Readings and entries of this layout stand here once there are some. New entry "
                                       "(Ctrl+E) writes the first.")
                 : shown == 0 ? tr("No line matches.")
                              : QString());
    m_list->setVisible(shown > 0);
    const QString count = shown == all ? tr("%1 lines").arg(all) : tr("%1 of %2 lines").arg(shown).arg(all);
    say(m_foot, tr("Bar and tint: in the window looked back on. %1.").arg(count));
}

void RecordCard::setMarked(const std::vector<facade::RecordRef>& marked)
{
    m_model->setMarked(marked);
}

void RecordCard::bring(const std::vector<facade::RecordRef>& refs)
{
    for (const facade::RecordRef& ref : refs) {
        const int row = m_model->rowOf(ref);
        if (row >= 0) {
            m_list->setCurrentIndex(m_model->index(row));
            m_list->scrollTo(m_model->index(row), QAbstractItemView::PositionAtCenter);
            return;
        }
    }
}

void RecordCard::openFind()
{
    m_find->setFocus(Qt::ShortcutFocusReason);
    m_find->selectAll();
}

void RecordCard::removeCurrent()
{
    const QModelIndex index = m_list->currentIndex();
    const facade::RecordRef ref = m_model->refAt(index.row());
    if (ref.at == 0 || m_keeper.isReadOnly()) {
        return;
    }
    const QString text = index.data().toString();
    store::Edit edit(tr("remove: %1").arg(text));
    if (ref.entry) {
        edit.remove(ref.entry);
    } else {
        edit.remove(ref.reading);
    }
    if (const auto done = m_keeper.commit(edit); !done) {
        emit failed(done.error(), tr("The record is as it was."));
        return;
    }
    emit told(tr("Removed: %1. Ctrl+Z brings it back.").arg(text));
}

bool RecordCard::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_list && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Delete) {
            removeCurrent();
            return true;
        }
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            const facade::RecordRef ref = m_model->refAt(m_list->currentIndex().row());
            if (ref.at != 0) {
                emit opened(ref);
            }
            return true;
        }
    }
    return HistoryCard::eventFilter(watched, event);
}

} // namespace littoral::ui
