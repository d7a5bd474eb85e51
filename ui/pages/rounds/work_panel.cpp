// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/work_panel.h"

#include "ui/paint/glyphs.h"
#include "ui/theme/figures.h"

#include <QApplication>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QListView>
#include <QMouseEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>

namespace littoral::ui {

namespace {

class WorkDelegate final : public QStyledItemDelegate
{
public:
    WorkDelegate(Theme& theme, QObject* parent)
        : QStyledItemDelegate(parent)
        , m_theme(theme)
    {
    }

    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override
    {
        const bool heading = index.data(WorkModel::HeadingRole).toBool();
        return {m_theme.px(120), std::max(heading ? 24 : 32, QFontMetrics(m_theme.font(heading ? 11 : 13)).height() +
                                                                 m_theme.px(heading ? 9 : 13))};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        if (index.data(WorkModel::HeadingRole).toBool()) {
            painter->fillRect(option.rect, m_theme[Token::Sunk]);
            painter->setFont(m_theme.font(11, 600));
            painter->setPen(m_theme[Token::Ink2]);
            painter->drawText(option.rect.adjusted(m_theme.px(12), 0, -m_theme.px(12), 0),
                              Qt::AlignLeft | Qt::AlignVCenter, index.data().toString());
        } else {
            paintTask(painter, option, index);
        }
        painter->setRenderHint(QPainter::Antialiasing, false);
        painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1),
                          m_theme[Token::Rule]);
        painter->restore();
    }

    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem&,
                     const QModelIndex& index) override
    {
        if (!index.flags().testFlag(Qt::ItemIsUserCheckable)) {
            return false;
        }
        const bool click = event->type() == QEvent::MouseButtonRelease;
        const bool space = event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space;
        return (click || space) && model->setData(index, static_cast<int>(Qt::Checked), Qt::CheckStateRole);
    }

private:
    /// The overdue label at the right; how much room it took.
    int paintSide(QPainter* painter, const QRect& row, const QModelIndex& index) const
    {
        const bool overdue = index.data(WorkModel::OverdueRole).toBool();
        const QString text = index.data(WorkModel::SideTextRole).toString();
        const QFont font = m_theme.font(11, overdue ? 600 : 400);
        const int width = static_cast<int>(figuresWidth(font, text)) + m_theme.px(12);
        const int height = QFontMetrics(font).height() + m_theme.px(4);
        const QRect box(row.right() - m_theme.px(10) - width, row.center().y() - height / 2, width, height);
        painter->setFont(font);
        if (overdue) {
            painter->setPen(Qt::NoPen);
            painter->setBrush(m_theme[Token::Overdue]);
            painter->drawRoundedRect(box, 3, 3);
            painter->setPen(m_theme[Token::OnOverdue]);
            drawFigures(*painter, box, Qt::AlignCenter, text);
        } else {
            painter->setPen(m_theme[Token::Ink3]);
            drawFigures(*painter, box, Qt::AlignRight | Qt::AlignVCenter, text);
        }
        return width + m_theme.px(16);
    }

    void paintTask(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
    {
        const bool done = index.data(Qt::CheckStateRole).toInt() == static_cast<int>(Qt::Checked);
        const QRect row = option.rect;
        if (option.state.testFlag(QStyle::State_Selected)) {
            painter->fillRect(row, m_theme[Token::Selection]);
        }
        const int box = m_theme.px(15);
        QStyleOptionButton tick;
        tick.rect = QRect(row.left() + m_theme.px(12), row.center().y() - box / 2, box, box);
        tick.palette = option.palette;
        tick.state = QStyle::State_Enabled | (done ? QStyle::State_On : QStyle::State_Off);
        QApplication::style()->drawPrimitive(QStyle::PE_IndicatorCheckBox, &tick, painter, option.widget);
        const int glyph = m_theme.px(14);
        const QRectF glyphBox(tick.rect.right() + m_theme.px(10), row.center().y() - glyph / 2.0, glyph, glyph);
        drawGlyph(*painter, static_cast<facade::Glyph>(index.data(WorkModel::GlyphRole).toInt()), glyphBox,
                  m_theme[done ? Token::Ink3 : Token::Ink2]);
        const int side = paintSide(painter, row, index);
        QFont font = m_theme.font(13);
        font.setStrikeOut(done);
        const int left = static_cast<int>(glyphBox.right()) + m_theme.px(8);
        const QRect text(left, row.top(), row.right() - side - left, row.height());
        painter->setFont(font);
        painter->setPen(m_theme[done ? Token::Ink3 : Token::Ink]);
        drawFigures(*painter, text, Qt::AlignLeft | Qt::AlignVCenter,
                    elidedFigures(font, index.data().toString(), text.width()));
        if (option.state.testFlag(QStyle::State_HasFocus)) {
            painter->setPen(QPen(m_theme[Token::Accent], 2));
            painter->setBrush(Qt::NoBrush);
            painter->drawRoundedRect(QRectF(row).adjusted(2, 2, -2, -3), 4, 4);
        }
    }

    Theme& m_theme;
};

} // namespace

WorkPanel::WorkPanel(Theme& theme, facade::Keeper& keeper, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_model(new WorkModel(keeper, this))
    , m_list(new QListView)
    , m_count(new Text(theme, TextStyle::Secondary))
    , m_empty(new Text(theme, TextStyle::Body, tr("Nothing is due today. Work appears here on its day, tank by tank.")))
    , m_why(new Text(theme, TextStyle::Secondary))
    , m_caution((new Text(theme, TextStyle::Secondary))->wrapped())
{
    setProperty("card", true);
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Work on this round"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(new WorkDelegate(theme, m_list));
    m_list->setAccessibleName(tr("Work on this round; Space ticks a task"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setMinimumHeight(theme.px(120));
    m_empty->setWordWrap(true);
    m_empty->setToken(Token::Ink2);
    m_empty->setContentsMargins(12, 8, 12, 8);
    m_why->setWordWrap(true);
    m_why->setContentsMargins(12, 6, 12, 6);
    m_caution->setToken(Token::Act);
    m_caution->setContentsMargins(12, 0, 12, 6);
    m_caution->hide();
    auto* head = new QHBoxLayout;
    head->setContentsMargins(12, 10, 12, 8);
    head->addWidget(new Text(theme, TextStyle::Strong, tr("Work on this round")));
    head->addStretch(1);
    head->addWidget(m_count);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(1, 1, 1, 6);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(m_empty);
    column->addWidget(m_caution);
    column->addWidget(m_list, 1);
    column->addWidget(m_why);

    connect(m_model, &WorkModel::writeFailed, this, &WorkPanel::writeFailed);
    connect(m_model, &QAbstractItemModel::modelReset, this, &WorkPanel::refreshCount);
    connect(m_model, &QAbstractItemModel::dataChanged, this, &WorkPanel::refreshCount);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& now) {
        m_why->setText(now.data(WorkModel::WhyRole).toString());
        const QString caution = now.data(WorkModel::CautionRole).toString();
        m_caution->setText(caution);
        m_caution->setVisible(!caution.isEmpty());
    });
    connect(&theme, &Theme::changed, m_list, [this] {
        m_list->doItemsLayout();
        m_list->setMinimumHeight(m_theme.px(120));
    });
    // The task that was ticked moves; the keyboard stays at the same place in the list.
    connect(m_model, &QAbstractItemModel::modelAboutToBeReset, this,
            [this] { setProperty("lastRow", m_list->currentIndex().row()); });
    connect(m_model, &QAbstractItemModel::modelReset, this, [this] {
        const int row = property("lastRow").toInt();
        if (row >= 0 && row < m_model->rowCount()) {
            m_list->setCurrentIndex(m_model->index(row));
        }
    });
    refreshCount();
}

void WorkPanel::refreshCount()
{
    const WorkModel::Progress progress = m_model->progress();
    m_count->setText(progress.all == 0 ? QString()
                                       : tr("%1 of %2 open").arg(progress.all - progress.done).arg(progress.all));
    m_empty->setVisible(progress.all == 0);
    m_list->setVisible(progress.all > 0);
    m_why->setVisible(progress.all > 0);
    emit progressChanged();
}

} // namespace littoral::ui
