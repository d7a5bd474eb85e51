// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bench/sheet_field.h"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTimer>

namespace littoral::ui {

SheetField::SheetField(Theme& theme, const sheets::Input& input, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_key(input.key)
    , m_label(input.label)
    , m_name((new Text(theme, TextStyle::Body, input.label))->wrapped())
    , m_unit(new Text(theme, TextStyle::Body))
    , m_origin((new Text(theme, TextStyle::Secondary))->wrapped())
    , m_problem((new Text(theme, TextStyle::Secondary))->wrapped())
    , m_back(new QPushButton)
    , m_grid(new QGridLayout(this))
{
    m_name->setToken(Token::Ink2);
    m_unit->setToken(Token::Ink2);
    m_problem->setToken(Token::Act);
    m_problem->hide();
    m_back->setProperty("quiet", true);
    m_back->setAccessibleName(tr("%1: back to the record").arg(m_label));
    m_back->hide();
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(8);
    m_grid->setVerticalSpacing(2);
    makeEditor(input);
    m_name->setBuddy(editor());
    connect(m_back, &QPushButton::clicked, this, &SheetField::goBack);
    connect(&theme, &Theme::changed, this, [this] {
        m_room = Room::None;
        arrange();
    });
    arrange();
}

void SheetField::makeEditor(const sheets::Input& input)
{
    if (input.kind == sheets::InputKind::Choice) {
        m_combo = new QComboBox(this);
        for (const sheets::Choice& choice : input.choices) {
            m_combo->addItem(choice.label, choice.code);
        }
        m_combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        m_combo->setMinimumContentsLength(8);
        m_combo->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        connect(m_combo, &QComboBox::activated, this,
                [this](int index) { emit typed(m_key, m_combo->itemData(index).toString()); });
        return;
    }
    m_line = new QLineEdit(this);
    m_line->setAlignment(Qt::AlignRight);
    m_line->installEventFilter(this);
    if (input.kind == sheets::InputKind::Series) {
        m_line->setPlaceholderText(tr("50/20/30"));
    }
    connect(m_line, &QLineEdit::textEdited, this, [this](const QString& text) { emit typed(m_key, text); });
    connect(m_line, &QLineEdit::returnPressed, this, &SheetField::entered);
}

QWidget* SheetField::editor() const
{
    return m_line != nullptr ? static_cast<QWidget*>(m_line) : m_combo;
}

void SheetField::show(const BenchBlank& blank)
{
    m_wanted = blank.text;
    m_wayBack = blank.wayBack;
    m_unit->setText(blank.unit);
    m_origin->setText(blank.origin);
    m_origin->setToken(blank.from == BenchBlank::From::Typed ? Token::Info
                       : blank.missing                       ? Token::Watch
                                                             : Token::Ink3);
    m_back->setText(tr("Back to %1").arg(blank.wayBack));
    m_back->setAccessibleName(tr("%1: back to %2 from the record").arg(m_label, blank.wayBack));
    m_origin->setVisible(!blank.origin.isEmpty());
    m_back->setVisible(!blank.wayBack.isEmpty());
    const QString problem = blank.mend.isEmpty() ? blank.problem : tr("%1 %2").arg(blank.problem, blank.mend);
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    QWidget* field = editor();
    field->setAccessibleName(blank.unit.isEmpty() ? m_label : tr("%1, %2", "label, unit").arg(m_label, blank.unit));
    field->setAccessibleDescription(problem.isEmpty() ? blank.origin : problem);
    m_needed = !problem.isEmpty() ? Need::Mending : blank.missing ? Need::Filling : Need::Nothing;
    if (field->property("fault").toBool() != !problem.isEmpty()) {
        field->setProperty("fault", !problem.isEmpty());
        field->update();
    }
    showText();
}

void SheetField::showText()
{
    if (m_combo != nullptr) {
        const QSignalBlocker quiet(m_combo);
        m_combo->setCurrentIndex(std::max(0, m_combo->findData(m_wanted)));
        return;
    }
    if (!m_line->hasFocus() && m_line->text() != m_wanted) {
        m_line->setText(m_wanted);
        m_line->setCursorPosition(0);
    }
}

void SheetField::goBack()
{
    emit typed(m_key, {});
    if (m_line != nullptr) {
        m_line->setText(m_wanted);
        m_line->setFocus(Qt::OtherFocusReason);
        m_line->selectAll();
    }
}

bool SheetField::eventFilter(QObject* watched, QEvent* event)
{
    // An emptied field shows what stands in for it as soon as the keyboard has left it.
    if (watched == m_line && event->type() == QEvent::FocusOut) {
        if (m_line->text().trimmed().isEmpty() || m_line->text().trimmed() == m_wanted) {
            m_line->setText(m_wanted);
        }
    }
    return QWidget::eventFilter(watched, event);
}

void SheetField::arrange()
{
    const Room room = width() < m_theme.px(440) ? Room::Narrow : width() < m_theme.px(540) ? Room::Medium : Room::Wide;
    if (m_room != room) {
        m_room = room;
        place();
        // Asked for from within a resize: the layouts above count as settled until this turn of the event loop is over.
        QTimer::singleShot(0, this, [this] {
            for (QWidget* up = this; up != nullptr && !up->isWindow(); up = up->parentWidget()) {
                if (up->layout() != nullptr) {
                    up->layout()->invalidate();
                }
                up->updateGeometry();
            }
        });
    }
}

void SheetField::place()
{
    for (QWidget* part : std::initializer_list<QWidget*>{m_name, editor(), m_unit, m_origin, m_back, m_problem}) {
        m_grid->removeWidget(part);
    }
    for (int column = 0; column < 5; ++column) {
        m_grid->setColumnMinimumWidth(column, 0);
        m_grid->setColumnStretch(column, 0);
    }
    // Its own least width, not that of the arrangement it happens to have: else it could never become narrow.
    setMinimumWidth(m_theme.px(200));
    if (m_line != nullptr) {
        m_line->setFixedWidth(m_theme.px(104));
        m_line->setMinimumHeight(m_line->sizeHint().height()); // a crowded column may not squeeze it
    } else {
        m_combo->setMaximumWidth(m_theme.px(300));
    }
    if (m_room == Room::Narrow) {
        placeNarrow();
    } else {
        placeBeside(m_room == Room::Medium);
    }
}

void SheetField::placeNarrow()
{
    m_name->setMinimumWidth(0);
    m_name->setMaximumWidth(QWIDGETSIZE_MAX);
    m_grid->addWidget(m_name, 0, 0, 1, 4);
    if (m_combo != nullptr) {
        m_grid->addWidget(editor(), 1, 0, 1, 4);
    } else {
        m_grid->addWidget(editor(), 1, 0);
        m_grid->addWidget(m_unit, 1, 1);
    }
    m_grid->addWidget(m_back, 1, 3, Qt::AlignLeft);
    m_grid->setColumnStretch(3, 1);
    m_grid->addWidget(m_origin, 2, 0, 1, 4);
    m_grid->addWidget(m_problem, 3, 0, 1, 4);
}

void SheetField::placeBeside(bool originBelow)
{
    m_name->setFixedWidth(m_theme.px(originBelow ? 124 : 150));
    m_grid->addWidget(m_name, 0, 0, Qt::AlignVCenter);
    if (m_combo != nullptr) {
        m_grid->addWidget(editor(), 0, 1, 1, 4);
    } else {
        m_grid->addWidget(editor(), 0, 1);
        m_grid->addWidget(m_unit, 0, 2, Qt::AlignVCenter);
        m_grid->setColumnMinimumWidth(2, m_theme.px(originBelow ? 40 : 66));
    }
    m_grid->setColumnStretch(3, 1);
    m_grid->addWidget(m_back, 0, 4, Qt::AlignRight | Qt::AlignVCenter);
    if (originBelow || m_combo != nullptr) {
        m_grid->addWidget(m_origin, 1, 1, 1, 4);
    } else {
        m_grid->addWidget(m_origin, 0, 3, Qt::AlignVCenter);
    }
    m_grid->addWidget(m_problem, 2, 1, 1, 4);
}

void SheetField::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

} // namespace littoral::ui
