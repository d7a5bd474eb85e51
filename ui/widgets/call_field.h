// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

namespace littoral::ui {

/// A field that is there only while it is wanted: call() shows it with the keyboard in it, Enter gives what was typed
/// and Esc takes it away.
class CallField final : public QLineEdit
{
    Q_OBJECT

public:
    explicit CallField(const QString& name, const QString& hint, QWidget* parent = nullptr);

    void call(const QString& text = {});
    void leave();

signals:
    void given(const QString& text);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
};

} // namespace littoral::ui
