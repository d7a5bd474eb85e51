// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace littoral::ui {

/// Two rules for every field of the application, kept by an event filter on it: the wheel never changes a value (it
/// scrolls what lies behind), and undo goes to the record unless the field with the keyboard has typing of its own to
/// undo.
class QuietFields final : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

/// Whether the keyboard is in something that takes letters.
[[nodiscard]] bool isTyping();

} // namespace littoral::ui
