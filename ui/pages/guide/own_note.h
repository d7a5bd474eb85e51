// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/widgets/text.h"

#include <QPlainTextEdit>

namespace littoral::ui {

/// What the keeper has to add to a topic. Kept in the store as the setting "guide.note.TOPIC", written as the field is
/// left and undone like any other change.
class OwnNote final : public QFrame
{
    Q_OBJECT

public:
    OwnNote(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void setTopic(const QString& topic, const QString& title);
    /// Writes what was typed; before another topic or page is shown.
    void settle();
    [[nodiscard]] QPlainTextEdit* field() { return m_field; }

signals:
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QString kept() const;
    void refresh();

    facade::Keeper& m_keeper;
    Theme& m_theme;
    QPlainTextEdit* m_field;
    Text* m_hint;
    QString m_topic;
    QString m_title;
};

/// Name of the setting that holds the note on a topic.
[[nodiscard]] QString noteSetting(const QString& topic);

} // namespace littoral::ui
