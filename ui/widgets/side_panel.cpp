// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/side_panel.h"

#include "ui/widgets/notice_strip.h"

#include <QFormLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>

namespace littoral::ui {

SidePanel::SidePanel(Theme& theme, const QString& title, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_title(new Text(theme, TextStyle::Name, title))
    , m_problem(new Text(theme, TextStyle::Body))
    , m_foot(new QHBoxLayout)
{
    setAccessibleName(title);
    auto* close = new QPushButton(tr("Close"));
    close->setProperty("keyHint", tr("Esc"));
    close->setProperty("quiet", true);
    close->setAccessibleName(tr("Close this panel"));
    connect(close, &QPushButton::clicked, this, &SidePanel::closeRequested);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(14, 8, 8, 8);
    m_title->setWordWrap(true);
    head->addWidget(m_title, 1);
    head->addWidget(close);

    auto* inside = new QWidget;
    m_body = new QVBoxLayout(inside);
    m_body->setContentsMargins(14, 8, 14, 14);
    m_body->setSpacing(12);
    m_scroll = new QScrollArea;
    m_scroll->setWidget(inside);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->viewport()->setAutoFillBackground(false);
    inside->setAutoFillBackground(false);

    m_problem->setWordWrap(true);
    m_problem->setToken(Token::Act);
    m_problem->setContentsMargins(14, 4, 14, 4);
    m_problem->hide();
    m_foot->setContentsMargins(14, 10, 14, 10);
    m_foot->setSpacing(8);

    m_column = new QVBoxLayout(this);
    m_column->setContentsMargins(1, 0, 0, 0);
    m_column->setSpacing(0);
    m_column->addLayout(head);
    m_column->addWidget(m_scroll, 1);
    m_column->addWidget(m_problem);
    m_column->addLayout(m_foot);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

void SidePanel::fillWith(QWidget* content)
{
    m_scroll->hide();
    m_column->insertWidget(1, content, 1);
}

void SidePanel::setTitle(const QString& title)
{
    m_title->setText(title);
    setAccessibleName(title);
}

QString SidePanel::title() const
{
    return m_title->text();
}

void SidePanel::showProblem(const QString& sentence)
{
    m_problem->setText(sentence);
    m_problem->show();
    announce(m_problem, sentence);
}

void SidePanel::clearProblem()
{
    m_problem->hide();
    m_problem->clear();
}

QString SidePanel::problem() const
{
    return m_problem->text();
}

QFormLayout* SidePanel::addForm(const QString& heading)
{
    if (!heading.isEmpty()) {
        m_body->addWidget(new Text(m_theme, TextStyle::Strong, heading));
    }
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    form->setVerticalSpacing(6);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_body->addLayout(form);
    return form;
}

QPushButton* SidePanel::addFootButton(const QString& text, const QString& key, bool primary)
{
    auto* button = new QPushButton(text);
    button->setAccessibleName(text);
    if (!key.isEmpty()) {
        button->setProperty("keyHint", key);
    }
    button->setProperty("primary", primary);
    if (primary) {
        m_primary = button;
        m_foot->insertWidget(0, button);
    } else {
        m_foot->addWidget(button);
    }
    if (m_foot->count() == 1) {
        m_foot->addStretch(1);
    }
    return button;
}

void SidePanel::addRow(QFormLayout* form, const QString& label, QWidget* field)
{
    auto* name = new Text(m_theme, TextStyle::SecondaryStrong, label);
    name->setWordWrap(true);
    name->setBuddy(field);
    field->setAccessibleName(label);
    form->addRow(name, field);
}

QLineEdit* SidePanel::addField(QFormLayout* form, const QString& label, const QString& hint)
{
    auto* field = new QLineEdit;
    field->setPlaceholderText(hint);
    addRow(form, label, field);
    return field;
}

void SidePanel::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape) {
        emit closeRequested();
    } else if (enter && m_primary != nullptr && m_primary->isEnabled()) {
        m_primary->click();
    } else {
        QWidget::keyPressEvent(event);
        return;
    }
    event->accept();
}

void SidePanel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    painter.fillRect(QRect(0, 0, 1, height()), m_theme[Token::Rule]);
}

} // namespace littoral::ui
