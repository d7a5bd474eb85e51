// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/widgets/text.h"

#include <QDateTime>
#include <QTimer>
#include <QWidget>

class QPushButton;

namespace littoral::ui {

/// The line at the foot of the window: when it was last saved, what was typed last and the way to undo it, units,
/// store, backup. A message of the program takes the place of the last change for a while.
class StatusLine final : public QWidget
{
    Q_OBJECT

public:
    StatusLine(Theme& theme, facade::Keeper& keeper, QWidget* parent = nullptr);

    void tell(const QString& sentence);
    void setLastBackup(const QDateTime& at);
    /// How the timers stand; empty takes the button away.
    void setTimers(const QString& text);
    [[nodiscard]] QPushButton* timersButton() { return m_timers; }
    void refresh();
    [[nodiscard]] QPushButton* unitsButton() const { return m_units; }
    [[nodiscard]] QString lastText() const { return m_lastText; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void undoWanted();
    void unitsWanted();
    void timersWanted();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();

    Theme& m_theme;
    facade::Keeper& m_keeper;
    QDateTime m_savedAt;
    QDateTime m_backup;
    QString m_message;
    QString m_lastText;
    QTimer m_messageTime;
    Text *m_saved, *m_last, *m_store, *m_backupText;
    QPushButton *m_timers, *m_undo, *m_units;
};

} // namespace littoral::ui
