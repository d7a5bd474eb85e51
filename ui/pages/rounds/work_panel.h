// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/work_model.h"
#include "ui/widgets/text.h"

#include <QFrame>

class QListView;

namespace littoral::ui {

/// Work on this round, tank by tank, each task with a tick. Space or a click ticks; a ticked task stays, struck
/// through.
class WorkPanel final : public QFrame
{
    Q_OBJECT

public:
    WorkPanel(Theme& theme, facade::Keeper& keeper, QWidget* parent = nullptr);

    [[nodiscard]] WorkModel& model() { return *m_model; }
    [[nodiscard]] QListView* list() { return m_list; }
    [[nodiscard]] const Text* caution() const { return m_caution; }

signals:
    void writeFailed(const littoral::Error& error);
    void progressChanged();

private:
    void refreshCount();

    Theme& m_theme;
    WorkModel* m_model;
    QListView* m_list;
    Text* m_count;
    Text* m_empty;
    Text* m_why;
    Text* m_caution; ///< of the task under the keyboard
};

} // namespace littoral::ui
