// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/find_model.h"
#include "ui/theme/theme.h"

#include <QLineEdit>

class QListView;

namespace littoral::ui {

/// The find-or-do field: type, choose with the arrow keys, Enter does it. The list hangs below the field inside the
/// window, so that the keyboard never leaves the field.
class FindField final : public QLineEdit
{
    Q_OBJECT

public:
    FindField(Theme& theme, FindModel& model, QWidget* parent = nullptr);
    ~FindField() override;

    [[nodiscard]] const QListView* list() const { return m_list; }
    void open();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void showList();
    void choose();

    Theme& m_theme;
    FindModel& m_model;
    QListView* m_list;
};

} // namespace littoral::ui
