// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/text.h"

#include <QFrame>

class QVBoxLayout;

namespace littoral::ui {

/// A card of the History page: a heading, a note under or beside it, and a column.
class HistoryCard : public QFrame
{
    Q_OBJECT

public:
    HistoryCard(Theme& theme, const QString& heading, QWidget* parent = nullptr);
    void setHeading(const QString& heading);
    void setNote(const QString& note);

protected:
    [[nodiscard]] QVBoxLayout* column() const { return m_column; }
    [[nodiscard]] Theme& theme() const { return m_theme; }
    /// A paragraph with the card's margins; hidden while it is empty.
    Text* addText(TextStyle style, Token token);
    static void say(Text* text, const QString& words);

private:
    Theme& m_theme;
    Text *m_heading, *m_note;
    QVBoxLayout* m_column;
};

} // namespace littoral::ui
