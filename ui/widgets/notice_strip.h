// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "ui/widgets/text.h"

#include <QFrame>

class QPushButton;

namespace littoral::ui {

/// A strip across a page: what failed, what is safe, what to do; its details can be copied. Also used for standing
/// notes (a store opened for reading only). It never covers anything and takes no focus by itself.
class NoticeStrip final : public QFrame
{
    Q_OBJECT

public:
    enum class Tone { Note, Failure };

    explicit NoticeStrip(Theme& theme, QWidget* parent = nullptr);

    /// `safe` says what has not been lost; may be empty.
    void showError(const Error& error, const QString& safe);
    /// A list of problems that belong together, each on its own line of the copied details.
    void showProblems(const QString& what, const QString& safe, const QStringList& problems);
    void showNote(const QString& text);
    /// A standing note cannot be dismissed, only withdrawn by the program.
    void setStanding(bool standing);
    [[nodiscard]] QString details() const { return m_details; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void show(Tone tone, const QString& what, const QString& rest);

    Theme& m_theme;
    Tone m_tone = Tone::Note;
    QString m_details;
    Text* m_what;
    Text* m_rest;
    QPushButton* m_copy;
    QPushButton* m_dismiss;
};

/// The error as one text for people.
[[nodiscard]] QString sentenceOf(const Error& error);
/// Tells assistive technology, once and politely; `source` is the widget it is about.
void announce(QWidget* source, const QString& sentence);

} // namespace littoral::ui
