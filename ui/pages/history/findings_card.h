// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "ui/pages/history/history_card.h"

namespace littoral::ui {

class AskLine;

/// Length of support as a bar; the word stands beside it, never a number.
class SupportBar final : public QWidget
{
    Q_OBJECT

public:
    SupportBar(Theme& theme, double share, const QString& word, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Theme& m_theme;
    double m_share;
    QString m_word;
};

/// What the record points to, best supported first: for, against, unknown; the look that decides; cautions above the
/// actions.
class FindingsCard final : public HistoryCard
{
    Q_OBJECT

public:
    explicit FindingsCard(Theme& theme, QWidget* parent = nullptr);
    ~FindingsCard() override;

    /// `writable`: answers may be written down and tasks made.
    void setCase(const facade::CaseFile& file, bool writable);
    [[nodiscard]] QList<AskLine*> lines() const;
    /// Puts the keyboard on the first line.
    void begin();

signals:
    void pointed(const std::vector<littoral::facade::RecordRef>& rests);
    void showWanted(const std::vector<littoral::facade::RecordRef>& rests);
    void answered(const QString& subject);
    void readingWanted(const QString& parameter);
    void misunderstood(const QString& sentence);
    void tasksWanted(const QStringList& actions);
    void guideWanted(const QString& topic);

private:
    [[nodiscard]] QWidget* makeFinding(const facade::CaseFinding& finding, int place, bool open,
                                       const std::optional<facade::CaseCheck>& check);
    [[nodiscard]] QWidget* makeActions(const facade::CaseFinding& finding);
    [[nodiscard]] QWidget* makeCheck(const facade::CaseCheck& check);
    [[nodiscard]] QWidget* makeWeak(const std::vector<facade::CaseFinding>& weak);
    void addLine(QWidget* into, const facade::CaseEvidence& evidence, const QString& spot);
    void addAnswers(AskLine* line, QWidget* into, const facade::CaseEvidence& evidence);

    QWidget* m_inside = nullptr;
    QStringList m_open; ///< findings the keeper opened by hand
    QStringList m_shut;
    bool m_writable = false;
};

} // namespace littoral::ui
