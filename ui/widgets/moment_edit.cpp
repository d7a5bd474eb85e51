// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/moment_edit.h"

#include "ui/models/day_words.h"

#include <QKeyEvent>

namespace littoral::ui {

MomentEdit::MomentEdit(const record::Clock& clock, bool emptyIsNow, QWidget* parent)
    : QLineEdit(parent)
    , m_clock(clock)
    , m_emptyIsNow(emptyIsNow)
{
    setPlaceholderText(emptyIsNow ? tr("now") : tr("2026-11-25 07:30"));
    setToolTip(tr("A date and time such as 2026-11-25 07:30, a date such as 25 Nov, or a time of today; up and down "
                  "move by a day, with Shift by an hour"));
    connect(this, &QLineEdit::textChanged, this, &MomentEdit::momentChanged);
}

void MomentEdit::setMoment(const record::Moment& at)
{
    setText(momentEditText(at));
}

bool MomentEdit::isNow() const
{
    return m_emptyIsNow && text().trimmed().isEmpty();
}

record::Moment MomentEdit::moment() const
{
    return isNow() ? m_clock.now() : momentFrom(text(), m_clock.now());
}

void MomentEdit::keyPressEvent(QKeyEvent* event)
{
    const bool up = event->key() == Qt::Key_Up;
    if (!up && event->key() != Qt::Key_Down) {
        QLineEdit::keyPressEvent(event);
        return;
    }
    const record::Moment at = moment();
    if (at.isValid()) {
        const bool byHour = event->modifiers().testFlag(Qt::ShiftModifier);
        const QDateTime time = at.toDateTime();
        setMoment(record::Moment::fromDateTime(byHour ? time.addSecs(up ? 3600 : -3600) : time.addDays(up ? 1 : -1)));
    }
    event->accept();
}

} // namespace littoral::ui
