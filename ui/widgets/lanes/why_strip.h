// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/lane_model.h"
#include "core/record/moment.h"
#include "ui/theme/theme.h"

#include <QHash>
#include <QWidget>
#include <functional>
#include <optional>

class QBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;

namespace littoral::ui {

/// The foot strip of Lanes: what has the focus and why it is there, with the buttons for it. Snoozing and skipping are
/// asked for in the strip itself; Enter takes, Esc steps back, and what was typed is there again the next time.
class WhyStrip final : public QWidget
{
    Q_OBJECT

public:
    /// Reads a day as people type it ("27 Nov", "2026-11-27"); invalid when it is not understood.
    using DayReader = std::function<QDate(const QString&)>;
    WhyStrip(Theme& theme, const record::Clock& clock, DayReader readDay, QWidget* parent = nullptr);

    /// Work with the focus: title, reason and buttons. `tank` is its tank's name.
    void showWork(const QString& tank, const facade::LaneChip& chip);
    /// Anything else: a sentence, no buttons but Open when `canOpen`.
    void showSentence(facade::Status status, const QString& title, const QString& sentence, bool canOpen);
    void setReadOnly(bool readOnly);
    /// Asks in the strip; the keyboard goes there and back.
    void askSnooze(const facade::LaneChip& chip);
    void askSkip(const facade::LaneChip& chip);
    [[nodiscard]] bool isAsking() const { return m_asked.has_value(); }
    /// The sentence shown, as plain text.
    [[nodiscard]] QString text() const;

signals:
    void doneWanted();
    void snoozeWanted();
    void skipWanted();
    void openWanted();
    void ruleWanted(const QString& templateKey);
    void snoozed(const littoral::facade::LaneChip& chip, const QDate& until);
    void skipped(const littoral::facade::LaneChip& chip, const QString& reason);
    /// The question is over, answered or not; the keyboard belongs to the lanes again.
    void asked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    enum class Question { Snooze, Skip };
    QWidget* makeShown();
    QWidget* makeAsked();
    void ask(Question question, const facade::LaneChip& chip);
    void answer();
    void stepBack();
    void setButtons(bool work, bool open);
    void applyTheme();
    void arrange();
    [[nodiscard]] QString keptKey() const;

    Theme& m_theme;
    const record::Clock& m_clock;
    DayReader m_readDay;
    bool m_readOnly = false;
    bool m_work = false;
    facade::Status m_status = facade::Status::Unknown;
    QString m_title, m_rest;
    QString m_before; ///< cautions of the work, above its buttons; empty for none
    QStackedWidget* m_stack;
    QBoxLayout* m_line = nullptr;
    QLabel* m_label = nullptr;
    QWidget* m_buttons = nullptr;
    QPushButton* m_done = nullptr;
    QPushButton* m_snooze = nullptr;
    QPushButton* m_skip = nullptr;
    QPushButton* m_open = nullptr;
    QPushButton* m_rule = nullptr;
    QString m_templateKey;
    QBoxLayout* m_askLine = nullptr;
    QLabel* m_question = nullptr;
    QLineEdit* m_field = nullptr;
    QPushButton* m_take = nullptr;
    QLabel* m_hint = nullptr;
    Question m_kind = Question::Snooze;
    std::optional<facade::LaneChip> m_asked;
    QHash<QString, QString> m_kept; ///< typing of questions that were stepped back from
};

} // namespace littoral::ui
