// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/cell_edit.h"

#include "core/record/reading.h"
#include "ui/models/number_text.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

CellEdit::CellEdit(Theme& theme, QWidget* parent)
    : QLineEdit(parent)
    , m_theme(theme)
{
    setFrame(false);
    setFont(theme.font(14, 600));
    setAlignment(Qt::AlignRight);
    setAutoFillBackground(true);
    setTextMargins(theme.px(4), 0, theme.px(2), 0);
}

void CellEdit::setSteps(std::vector<double> steps, std::optional<double> from)
{
    m_steps = std::move(steps);
    m_from = from;
}

void CellEdit::fill(const QString& text)
{
    m_filled = true;
    setText(text);
    selectAll();
}

std::optional<std::size_t> CellEdit::nearestStep() const
{
    std::optional<double> at = m_from;
    if (const auto typed = record::parseTypedValue(text())) {
        at = typed->high;
    } else if (!text().trimmed().isEmpty()) {
        at = numberFrom(text());
    }
    if (!at || m_steps.empty()) {
        return std::nullopt;
    }
    const auto nearest = std::ranges::min_element(m_steps, {}, [&](double step) { return std::abs(step - *at); });
    return static_cast<std::size_t>(nearest - m_steps.begin());
}

void CellEdit::takeStep(int by)
{
    if (m_steps.empty()) {
        return;
    }
    const auto near = nearestStep();
    const bool untouched = text().trimmed().isEmpty();
    std::ptrdiff_t wanted = near ? static_cast<std::ptrdiff_t>(*near) : 0;
    // With nothing to move from, the first press takes the lowest step.
    if (near || !untouched) {
        wanted += by;
    }
    wanted = std::clamp<std::ptrdiff_t>(wanted, 0, static_cast<std::ptrdiff_t>(m_steps.size()) - 1);
    setText(numberText(m_steps[static_cast<std::size_t>(wanted)]));
    selectAll();
}

void CellEdit::takeBelowLowest()
{
    const auto lowest = std::ranges::find_if(m_steps, [](double step) { return step > 0.0; });
    if (lowest == m_steps.end()) {
        insert(QStringLiteral("<"));
        return;
    }
    setText(QStringLiteral("<") + numberText(*lowest));
    // Typing a number over the proposed one keeps the sign.
    setSelection(1, static_cast<int>(text().size()) - 1);
}

void CellEdit::takeBetween()
{
    const auto typed = numberFrom(text());
    const auto near = nearestStep();
    const bool onStep = near && (!typed || std::abs(m_steps[*near] - *typed) < 1e-9);
    if (!onStep || (text().trimmed().isEmpty() && !m_from) || *near + 1 >= m_steps.size()) {
        insert(QStringLiteral("/"));
        return;
    }
    const QString low = numberText(m_steps[*near]);
    const QString high = numberText(m_steps[*near + 1]);
    setText(low + QChar(0x2013) + high);
    setSelection(static_cast<int>(low.size()) + 1, static_cast<int>(high.size()));
}

bool CellEdit::event(QEvent* event)
{
    // Tab would otherwise move the focus before the grid hears of it.
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if ((key->key() == Qt::Key_Tab || key->key() == Qt::Key_Backtab) && leaveBy(*key)) {
            return true;
        }
    }
    return QLineEdit::event(event);
}

bool CellEdit::leaveBy(const QKeyEvent& event)
{
    const bool plain = !event.modifiers().testFlag(Qt::ControlModifier);
    switch (event.key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!plain) {
            return false;
        }
        emit leaving(Leave::NextDue);
        return true;
    case Qt::Key_Tab:
        emit leaving(event.modifiers().testFlag(Qt::ShiftModifier) ? Leave::PreviousColumn : Leave::NextColumn);
        return true;
    case Qt::Key_Backtab:
        emit leaving(Leave::PreviousColumn);
        return true;
    case Qt::Key_Escape:
        emit leaving(Leave::Stay);
        return true;
    case Qt::Key_Left:
        if (!text().isEmpty()) {
            return false;
        }
        emit leaving(Leave::Left);
        return true;
    case Qt::Key_Right:
        if (!text().isEmpty()) {
            return false;
        }
        emit leaving(Leave::Right);
        return true;
    default:
        return false;
    }
}

void CellEdit::keyPressEvent(QKeyEvent* event)
{
    if (leaveBy(*event)) {
        return;
    }
    const bool up = event->key() == Qt::Key_Up;
    if (up || event->key() == Qt::Key_Down) {
        if (m_steps.empty()) {
            emit leaving(up ? Leave::Up : Leave::Down);
        } else {
            takeStep(up ? 1 : -1);
        }
        return;
    }
    if (event->text() == QStringLiteral("<")) {
        takeBelowLowest();
        return;
    }
    if (event->text() == QStringLiteral("/")) {
        takeBetween();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void CellEdit::paintEvent(QPaintEvent* event)
{
    QLineEdit::paintEvent(event);
    QPainter painter(this);
    painter.setPen(QPen(m_theme[Token::Accent], 3));
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

} // namespace littoral::ui
