// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/call_field.h"

#include <QKeyEvent>

namespace littoral::ui {

CallField::CallField(const QString& name, const QString& hint, QWidget* parent)
    : QLineEdit(parent)
{
    setAccessibleName(name);
    setPlaceholderText(hint);
    setClearButtonEnabled(true);
    hide();
}

void CallField::call(const QString& text)
{
    if (!text.isEmpty()) {
        setText(text);
    }
    show();
    setFocus(Qt::ShortcutFocusReason);
    selectAll();
}

void CallField::leave()
{
    clear();
    hide();
    emit left();
}

void CallField::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Escape:
        leave();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit given(text());
        return;
    default:
        QLineEdit::keyPressEvent(event);
    }
}

} // namespace littoral::ui
