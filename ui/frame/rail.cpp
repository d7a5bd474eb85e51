// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/rail.h"

#include "core/wording/numbers.h"
#include "ui/models/day_words.h"
#include "ui/widgets/tank_delegate.h"

#include <QBoxLayout>
#include <QListView>
#include <QPainter>
#include <QPushButton>

namespace littoral::ui {

Rail::Rail(Theme& theme, facade::Keeper& keeper, facade::Forecasts& forecasts, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_keeper(keeper)
    , m_model(new TanksModel(keeper, forecasts, this))
    , m_delegate(new TankDelegate(theme, *m_model, this))
    , m_list(new QListView)
    , m_today(new Text(theme, TextStyle::Secondary))
    , m_due(new Text(theme, TextStyle::Body))
    , m_overdue(new Text(theme, TextStyle::Body))
    , m_snoozed(new Text(theme, TextStyle::Body))
    , m_add(new QPushButton)
    , m_counts(new QBoxLayout(QBoxLayout::LeftToRight))
{
    setAccessibleName(tr("Row of tanks"));
    m_list->setModel(m_model);
    m_list->setItemDelegate(m_delegate);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setAccessibleName(tr("Tanks; Space shows or hides a tank in Lanes, Enter opens it"));
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->viewport()->setAutoFillBackground(false);
    m_add->setAccessibleName(tr("Add a tank"));
    m_overdue->setToken(Token::Act);
    m_counts->setSpacing(8);
    m_counts->addWidget(m_due);
    m_counts->addWidget(m_overdue);
    m_counts->addWidget(m_snoozed);
    m_counts->addStretch(1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(10, 10, 10, 12);
    foot->setSpacing(6);
    foot->addWidget(m_today);
    foot->addLayout(m_counts);
    foot->addWidget(m_add);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 1, 0);
    column->setSpacing(0);
    column->addWidget(m_list, 1);
    column->addLayout(foot);

    connect(m_add, &QPushButton::clicked, this, &Rail::addWanted);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& now) {
        const record::TankId tank = m_model->tankAt(now.row());
        if (tank && tank != m_selected) {
            m_selected = tank;
            emit selectedChanged(tank);
        }
    });
    connect(m_list, &QListView::activated, this, [this](const QModelIndex& index) {
        if (const record::LayoutId layout{index.data(TanksModel::LayoutRole).toLongLong()}) {
            emit opened(layout);
        }
    });
    connect(m_model, &TanksModel::refreshed, this, [this] {
        if (!m_list->currentIndex().isValid() || m_model->tankAt(m_list->currentIndex().row()) != m_selected) {
            select(m_selected);
        }
        refreshCounts();
    });
    connect(&theme, &Theme::changed, this, &Rail::apply);
    apply();
    refreshCounts();
}

record::TankId Rail::selected() const
{
    return m_selected;
}

void Rail::select(record::TankId tank)
{
    int row = m_model->rowOf(tank);
    if (row < 0) {
        row = m_model->rowCount() > 1 ? 1 : -1;
    }
    if (row >= 0 && row != m_list->currentIndex().row()) {
        m_list->setCurrentIndex(m_model->index(row));
    } else if (row < 0) {
        m_selected = {};
    }
}

void Rail::setFolded(bool folded)
{
    if (folded != m_folded) {
        m_folded = folded;
        apply();
        refreshCounts();
    }
}

void Rail::apply()
{
    setFixedWidth(m_theme.px(m_folded ? 72 : 208));
    m_delegate->setFolded(m_folded);
    m_add->setText(m_folded ? tr("Add") : tr("Add a tank..."));
    m_counts->setDirection(m_folded ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_counts->setSpacing(m_folded ? 1 : 8);
    m_list->doItemsLayout();
    update();
}

void Rail::refreshCounts()
{
    const TanksModel::Counts counts = m_model->counts();
    const QDate today = m_keeper.clock().today();
    m_today->setText(m_folded ? wording::dateText(today, today)
                              : tr("Today, %1").arg(wording::weekdayText(today, today)));
    m_due->setText(tr("%1 due").arg(counts.due));
    m_overdue->setText(m_folded ? tr("%1 over").arg(counts.overdue) : tr("%1 overdue").arg(counts.overdue));
    m_snoozed->setText(tr("%1 snoozed").arg(counts.snoozed));
    m_overdue->setVisible(counts.overdue > 0);
    m_snoozed->setVisible(counts.snoozed > 0 && !m_folded);
    for (Text* text : {m_due, m_overdue, m_snoozed}) {
        text->setFont(m_theme.font(12, 550));
    }
}

void Rail::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Sunk]);
    painter.fillRect(QRect(width() - 1, 0, 1, height()), m_theme[Token::Rule]);
    painter.fillRect(QRect(0, m_list->geometry().bottom() + 1, width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
