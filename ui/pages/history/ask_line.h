// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "ui/theme/theme.h"

#include <QAbstractButton>

namespace littoral::ui {

/// One line of evidence: a short word in its own column, then the sentence, wrapped. Pointing at it or reaching it with
/// the keyboard tells what it rests on; Right asks for it to be brought into view.
class AskLine final : public QAbstractButton
{
    Q_OBJECT

public:
    AskLine(Theme& theme, const QString& tag, Token token, const QString& text, QWidget* parent = nullptr);

    void setRests(std::vector<facade::RecordRef> rests) { m_rests = std::move(rests); }
    [[nodiscard]] const std::vector<facade::RecordRef>& rests() const { return m_rests; }
    /// A chevron says that it opens on something.
    void setOpens(bool opens);
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void pointed(const std::vector<littoral::facade::RecordRef>& rests);
    void left();
    void showWanted(const std::vector<littoral::facade::RecordRef>& rests);

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] int tagWidth() const;
    [[nodiscard]] QRect textRect(int width) const;

    Theme& m_theme;
    QString m_tag;
    Token m_token;
    bool m_opens = false;
    std::vector<facade::RecordRef> m_rests;
};

/// The ways to answer what is not known: a button for each answer, a field for a number, or the way to a reading.
class AnswerRow final : public QWidget
{
    Q_OBJECT

public:
    AnswerRow(Theme& theme, const facade::CaseEvidence& ask, QWidget* parent = nullptr);

    /// Puts the keyboard on the first answer.
    void begin();

signals:
    /// The subject of the observation that the answer is: "wipes_off=easy", "dli=4".
    void answered(const QString& subject);
    void readingWanted(const QString& parameter);
    void misunderstood(const QString& sentence);
};

} // namespace littoral::ui
