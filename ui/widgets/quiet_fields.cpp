// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/quiet_fields.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSlider>
#include <QTextDocument>

namespace littoral::ui {

namespace {

bool hasOwnUndo(QObject* field, bool redo)
{
    if (const auto* line = qobject_cast<QLineEdit*>(field)) {
        return redo ? line->isRedoAvailable() : line->isUndoAvailable();
    }
    if (const auto* page = qobject_cast<QPlainTextEdit*>(field)) {
        return redo ? page->document()->isRedoAvailable() : page->document()->isUndoAvailable();
    }
    return false;
}

bool isTextField(QObject* object)
{
    return qobject_cast<QLineEdit*>(object) != nullptr || qobject_cast<QPlainTextEdit*>(object) != nullptr ||
           qobject_cast<QAbstractSpinBox*>(object) != nullptr;
}

} // namespace

bool isTyping()
{
    QWidget* focus = QApplication::focusWidget();
    const auto* combo = qobject_cast<QComboBox*>(focus);
    return isTextField(focus) || (combo != nullptr && combo->isEditable());
}

bool QuietFields::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Wheel) {
        if (qobject_cast<QComboBox*>(watched) != nullptr || qobject_cast<QAbstractSpinBox*>(watched) != nullptr ||
            qobject_cast<QSlider*>(watched) != nullptr) {
            event->ignore();
            return true;
        }
        return false;
    }
    if (event->type() == QEvent::ShortcutOverride && isTextField(watched)) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool undo = key->matches(QKeySequence::Undo);
        const bool redo = key->matches(QKeySequence::Redo);
        if ((undo || redo) && !hasOwnUndo(watched, redo)) {
            event->ignore();
            return true;
        }
    }
    return false;
}

} // namespace littoral::ui
