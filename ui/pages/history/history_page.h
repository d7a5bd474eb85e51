// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_desk.h"
#include "core/facade/keeper.h"
#include "ui/widgets/motion.h"
#include "ui/widgets/paper_out.h"
#include "ui/widgets/text.h"

#include <QTimer>
#include <QWidget>

class QComboBox;
class QPushButton;
class QScrollArea;

namespace littoral::ui {

class ChangesCard;
class CompareCard;
class ExposureCard;
class FindingsCard;
class RecordCard;
class ResetCard;
class SegmentedControl;
class StripView;
class TalkCard;

/// The review of one layout: a question, the weeks before it, what the record points to and what would decide.
class HistoryPage final : public QWidget
{
    Q_OBJECT

public:
    /// All outlive the page.
    HistoryPage(facade::Keeper& keeper, Theme& theme, Ask& ask, TimeAxis& axis, QWidget* parent = nullptr);
    ~HistoryPage() override;

    void setSelected(record::TankId tank);
    /// Puts the keyboard on the findings.
    void begin();
    void openFind();
    void print(PaperTo to);
    /// Tasks of the first finding's actions.
    void makeTasks();
    /// Parts of the page for F6, in order.
    [[nodiscard]] QList<QWidget*> regions() const;
    /// Blocks until what is shown is of the record as it is (tests, pictures).
    void wait();
    /// The same for the comparison with a fresh start.
    void waitForReset();

    [[nodiscard]] const facade::CaseFile& file() const { return m_file; }
    [[nodiscard]] StripView& strip() { return *m_strip; }
    [[nodiscard]] RecordCard& record() { return *m_record; }
    [[nodiscard]] FindingsCard& findings() { return *m_findings; }
    [[nodiscard]] TalkCard& talk() { return *m_talk; }
    [[nodiscard]] ResetCard& reset() { return *m_reset; }
    [[nodiscard]] ChangesCard& changes() { return *m_changes; }
    [[nodiscard]] CompareCard& compare() { return *m_compare; }
    [[nodiscard]] QComboBox* question() { return m_question; }
    [[nodiscard]] QComboBox* lookBack() { return m_lookBack; }
    /// Id of the first finding, for the guide; empty when there is none.
    [[nodiscard]] QString focusedTopic() const;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    void entryOpenWanted(littoral::record::EntryId entry);
    void readingOpenWanted(littoral::record::ReadingId reading);
    void roundsWanted();
    void guideWanted(const QString& topic);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QWidget* makeBar();
    void connectAll();
    void arrange();
    void refresh();
    void fillQuestions();
    void ask();
    void weigh();
    void take(const facade::CaseFile& file);
    void orderTabs();
    void point(const std::vector<facade::RecordRef>& refs);
    void open(const facade::RecordRef& ref);
    void answer(const QString& subject);
    void tasksOf(const QStringList& actions);
    [[nodiscard]] bool isWritable() const;

    facade::Keeper& m_keeper;
    Theme& m_theme;
    Ask& m_ask;
    TimeAxis& m_axis;
    facade::CaseDesk m_desk;
    Motion m_glide;
    record::TankId m_tank;
    std::vector<facade::CaseQuestion> m_questions;
    facade::CaseQuestion m_chosen;
    record::LayoutId m_reference;
    QString m_compared;
    facade::CaseFile m_file;
    bool m_stale = true;
    bool m_newQuestion = true;
    QTimer m_soon;

    Text *m_title, *m_heading, *m_message;
    QComboBox *m_question, *m_lookBack;
    QPushButton* m_export;
    SegmentedControl* m_side;
    QWidget* m_bar;
    QWidget* m_body;
    StripView* m_strip;
    RecordCard* m_record;
    FindingsCard* m_findings;
    TalkCard* m_talk;
    ResetCard* m_reset;
    ChangesCard* m_changes;
    ExposureCard* m_exposure;
    CompareCard* m_compare;
    QScrollArea *m_middle, *m_right;
};

} // namespace littoral::ui
