// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/bulk_edit.h"
#include "ui/widgets/text.h"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace littoral::ui {

/// What can be done to all selected records at once: move in time, another tank, kit or subject. Each button is one
/// change; nothing happens by choosing alone.
class BulkBar final : public QWidget
{
    Q_OBJECT

public:
    BulkBar(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void setSelected(int count);
    void fillChoices();

signals:
    void wanted(const littoral::facade::BulkChange& change);
    void notUnderstood(const QString& sentence);

private:
    QPushButton* addButton(const QString& text, const QString& name);
    void move();
    void takeSubject();

    facade::Keeper& m_keeper;
    Text* m_count;
    QLineEdit *m_shift, *m_subject;
    QComboBox *m_tank, *m_kit;
    QList<QPushButton*> m_buttons;
};

} // namespace littoral::ui
