// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/guide_model.h"
#include "ui/theme/theme.h"

#include <QListView>

namespace littoral::ui {

/// The topics that were found, one under another, a heading for each shelf.
class TopicList final : public QListView
{
    Q_OBJECT

public:
    TopicList(Theme& theme, GuideModel& model, QWidget* parent = nullptr);

    [[nodiscard]] QString current() const;
    /// Puts the cursor on a topic if it is among those found; emits nothing.
    void showTopic(const QString& topic);

signals:
    void chosen(const QString& topic);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    GuideModel& m_model;
    bool m_quiet = false;
};

} // namespace littoral::ui
