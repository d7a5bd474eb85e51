// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

class QButtonGroup;

namespace littoral::ui {

/// Two to six choices side by side, one of them taken; arrow keys move the choice, as in a radio group.
class SegmentedControl final : public QWidget
{
    Q_OBJECT

public:
    SegmentedControl(const QString& accessibleName, const QStringList& choices, QWidget* parent = nullptr);

    [[nodiscard]] int current() const;
    /// Does not emit chosen().
    void setCurrent(int index);

signals:
    void chosen(int index);

private:
    QButtonGroup* m_group;
};

} // namespace littoral::ui
