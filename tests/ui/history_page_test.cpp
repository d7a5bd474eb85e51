// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/pages/history/ask_line.h"
#include "ui/pages/history/findings_card.h"
#include "ui/pages/history/history_page.h"
#include "ui/pages/history/record_card.h"
#include "ui/pages/history/side_cards.h"
#include "ui/pages/history/strip_view.h"
#include "ui/pages/history/talk_card.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/table_twin.h"

#include <QAccessible>
#include <QComboBox>
#include <QFile>
#include <QListView>
#include <QPushButton>
#include <QSignalSpy>
#include <QtTest/QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

class PaperAsk final : public Ask
{
public:
    QString storeToOpen(QWidget*, const QString&) override { return {}; }
    QString storeToMake(QWidget*, const QString&) override { return {}; }
    QStringList csvFiles(QWidget*) override { return {}; }
    QString exportFolder(QWidget*) override { return {}; }
    QString backupFile(QWidget*, const QString&) override { return {}; }
    QString photo(QWidget*) override { return {}; }
    QString fileToWrite(QWidget*, const QString&, const QString& name, const QString&) override
    {
        proposed = name;
        return path;
    }
    QString path, proposed;
};

} // namespace

class HistoryPageTest : public FrameTest
{
protected:
    HistoryPageTest()
        : m_page(m_keeper, m_theme, m_paper, m_axis)
    {
        m_axis.setZone(QTimeZone::utc());
        m_axis.setNow(m_clock.now().utcMs());
        m_axis.showAround(28, 21);
        m_tank = addTank(u"Fen Corner"_s, 20);
        m_page.resize(1300, 900);
    }

    void see(const QString& subject, int severity, int daysAgo, std::optional<double> coverage = {})
    {
        record::Entry entry;
        entry.tank = m_tank;
        entry.layout = layoutOf(m_tank);
        entry.kind = record::EntryKind::Observation;
        entry.subject = subject;
        entry.severity = severity;
        entry.coverage = coverage;
        entry.at = m_clock.now().plusDays(-daysAgo);
        const auto done = m_keeper.enter(entry);
        ASSERT_TRUE(done) << done.error().sentence();
    }
    void open()
    {
        m_page.show();
        m_page.setSelected(m_tank);
        m_page.wait();
        QTest::qWait(20);
    }
    [[nodiscard]] std::size_t entryCount() const { return m_keeper.row().layout(layoutOf(m_tank))->entries.size(); }
    [[nodiscard]] AskLine* unknownLine(const QString& key)
    {
        for (AskLine* one : m_page.findings().lines()) {
            if (one->property("spot").toString().endsWith(u"/2/"_s + key)) {
                return one;
            }
        }
        return nullptr;
    }

    PaperAsk m_paper;
    TimeAxis m_axis;
    record::TankId m_tank;
    HistoryPage m_page;
};

TEST_F(HistoryPageTest, AnUnknownIsAnsweredByKeyboardWrittenDownAndTakenBack)
{
    see(u"alg_diatom"_s, 2, 3);
    open();
    ASSERT_FALSE(m_page.file().findings.empty());
    ASSERT_EQ(m_page.file().findings.front().id, u"alg_diatom"_s);
    const double bar = m_page.file().findings.front().bar;
    AskLine* asked = unknownLine(u"wipes_off"_s);
    ASSERT_NE(asked, nullptr);
    const std::size_t before = entryCount();
    asked->setFocus();
    QTest::keyClick(asked, Qt::Key_Return);
    auto* answers = m_page.findings().findChildren<AnswerRow*>().value(0);
    for (AnswerRow* row : m_page.findings().findChildren<AnswerRow*>()) {
        if (row->property("spot") == asked->property("spot")) {
            answers = row;
        }
    }
    ASSERT_TRUE(answers->isVisible());
    QPushButton* easy = nullptr;
    for (QPushButton* button : answers->findChildren<QPushButton*>()) {
        if (button->property("answer").toString() == u"wipes_off=easy"_s) {
            easy = button;
        }
    }
    ASSERT_NE(easy, nullptr);
    QTest::mouseClick(easy, Qt::LeftButton);
    EXPECT_EQ(entryCount(), before + 1);
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_tank))->entries.back().subject, u"wipes_off=easy"_s);
    m_page.wait();
    QTest::qWait(20);
    m_page.wait();
    EXPECT_GT(m_page.file().findings.front().bar, bar);
    EXPECT_EQ(unknownLine(u"wipes_off"_s), nullptr);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(entryCount(), before);
    QTest::qWait(20);
    m_page.wait();
    EXPECT_NE(unknownLine(u"wipes_off"_s), nullptr);
}

TEST_F(HistoryPageTest, PointingAtEvidenceMarksItInStripAndRecord)
{
    see(u"alg_diatom"_s, 2, 3);
    open();
    AskLine* held = nullptr;
    for (AskLine* one : m_page.findings().lines()) {
        if (held == nullptr && !one->rests().empty()) {
            held = one;
        }
    }
    ASSERT_NE(held, nullptr);
    emit held->pointed(held->rests());
    EXPECT_EQ(m_page.strip().marked(), held->rests());
    const int row = m_page.record().model().rowOf(held->rests().front());
    ASSERT_GE(row, 0);
    const QModelIndex index = m_page.record().model().index(row);
    EXPECT_TRUE(index.data(HistoryRecord::MarkedRole).toBool());
    EXPECT_TRUE(index.data(Qt::AccessibleTextRole).toString().contains(u"rests on it"_s));
    QTest::keyClick(held, Qt::Key_Right);
    EXPECT_EQ(m_page.record().list()->currentIndex().row(), row);
    emit held->left();
    EXPECT_TRUE(m_page.strip().marked().empty());
}

TEST_F(HistoryPageTest, ALineIsRemovedFoundAndOpened)
{
    see(u"melt"_s, 2, 3);
    read(m_tank, u"no3"_s, u"10"_s, 2);
    open();
    EXPECT_EQ(m_page.record().model().lineCount(), 2);
    m_page.record().model().setKind(HistoryRecord::Kind::Readings);
    EXPECT_EQ(m_page.record().model().lineCount(), 1);
    m_page.record().model().setKind(HistoryRecord::Kind::All);
    m_page.record().model().setFilter(u"melt"_s);
    EXPECT_EQ(m_page.record().model().lineCount(), 1);
    QSignalSpy opened(&m_page, &HistoryPage::entryOpenWanted);
    m_page.record().list()->setCurrentIndex(m_page.record().model().index(1));
    QTest::keyClick(m_page.record().list(), Qt::Key_Return);
    EXPECT_EQ(opened.count(), 1);
    QTest::keyClick(m_page.record().list(), Qt::Key_Delete);
    EXPECT_EQ(entryCount(), 0U);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(entryCount(), 1U);
}

TEST_F(HistoryPageTest, ADiscussionPointIsAnsweredAndCounted)
{
    open();
    const QString before = m_page.talk().headline();
    auto* answers = m_page.talk().findChildren<AnswerRow*>().value(0);
    ASSERT_NE(answers, nullptr);
    emit answers->answered(u"review_plants=2"_s);
    QTest::qWait(20);
    m_page.wait();
    EXPECT_NE(m_page.talk().headline(), before);
    EXPECT_EQ(m_page.file().talk.points.front().points, 2);
}

TEST_F(HistoryPageTest, TasksAreMadeOfTheFirstActionsAndUndoneTogether)
{
    see(u"alg_diatom"_s, 2, 3);
    open();
    const qsizetype actions = m_page.file().findings.front().actions.size();
    ASSERT_GT(actions, 0);
    QSignalSpy told(&m_page, &HistoryPage::told);
    m_page.makeTasks();
    EXPECT_EQ(told.count(), 1);
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_tank))->tasks.size(), static_cast<std::size_t>(actions));
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_TRUE(m_keeper.row().layout(layoutOf(m_tank))->tasks.empty());
}

TEST_F(HistoryPageTest, ReadOnlyShowsTheCaseAndOffersNoAnswers)
{
    see(u"alg_diatom"_s, 2, 3);
    const QString file = m_keeper.path();
    m_keeper.close();
    ASSERT_TRUE(m_keeper.open(file, store::Access::ReadOnly));
    open();
    EXPECT_FALSE(m_page.file().findings.empty());
    EXPECT_TRUE(m_page.findings().findChildren<AnswerRow*>().isEmpty());
    EXPECT_EQ(m_page.findings().findChild<QPushButton*>(u"tasks"_s), nullptr);
    m_page.record().removeCurrent();
    EXPECT_EQ(entryCount(), 1U);
}

TEST_F(HistoryPageTest, EmptyStatesSayWhatWillBeHere)
{
    open();
    EXPECT_TRUE(m_page.file().silent);
    EXPECT_FALSE(m_page.record().list()->isVisible());
    record::Tank bare;
    bare.name = u"Bare"_s;
    store::Edit edit(u"bare"_s);
    const record::TankId id = edit.put(bare);
    ASSERT_TRUE(m_keeper.commit(edit));
    m_page.setSelected(id);
    m_page.wait();
    EXPECT_FALSE(m_page.strip().isVisible());
    EXPECT_TRUE(m_page.file().tankName.isEmpty());
}

TEST_F(HistoryPageTest, TheNewestQuestionWins)
{
    see(u"alg_diatom"_s, 2, 3);
    see(u"melt"_s, 1, 2);
    open();
    ASSERT_EQ(m_page.question()->count(), 3);
    m_page.question()->setCurrentIndex(1);
    m_page.question()->setCurrentIndex(2);
    m_page.wait();
    EXPECT_TRUE(m_page.file().request.question.subject.isEmpty());
    m_page.lookBack()->setCurrentIndex(0);
    m_page.wait();
    EXPECT_EQ(m_page.file().request.lookBackDays, 7);
}

TEST_F(HistoryPageTest, TheCaseIsWrittenAsAPdf)
{
    see(u"alg_diatom"_s, 2, 3, 0.2);
    see(u"alg_diatom"_s, 3, 1, 0.4);
    read(m_tank, u"no3"_s, u"10"_s, 5);
    open();
    m_paper.path = path(u"case.pdf"_s);
    QSignalSpy told(&m_page, &HistoryPage::told);
    m_page.print(PaperTo::File);
    EXPECT_EQ(told.count(), 1);
    EXPECT_TRUE(m_paper.proposed.startsWith(u"Fen Corner"_s));
    QFile file(m_paper.path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    // ISO 32000-1, 7.5.2 and 7.5.5: the first line names the version, the last one ends the file.
    EXPECT_TRUE(bytes.startsWith("%PDF-1."));
    EXPECT_TRUE(bytes.trimmed().endsWith("%%EOF"));
    QSignalSpy failed(&m_page, &HistoryPage::failed);
    m_paper.path = path(u"no/such/folder/case.pdf"_s);
    m_page.print(PaperTo::File);
    EXPECT_EQ(failed.count(), 1);
}

TEST_F(HistoryPageTest, EveryLineIsNamedReachableAndWholeAtTwiceTheTextSize)
{
    see(u"alg_diatom"_s, 2, 3);
    m_theme.setTextScale(2.0);
    m_page.resize(1024 - 64, 600);
    open();
    for (AskLine* one : m_page.findings().lines() + m_page.talk().lines()) {
        EXPECT_FALSE(one->accessibleName().isEmpty());
        EXPECT_NE(one->focusPolicy(), Qt::NoFocus);
        if (one->isVisible()) {
            EXPECT_GE(one->height(), one->heightForWidth(one->width())) << one->text().toStdString();
            EXPECT_GE(one->height(), 24);
        }
    }
    for (QWidget* region : m_page.regions()) {
        EXPECT_FALSE(region->accessibleName().isEmpty());
    }
    QAccessibleInterface* strip = QAccessible::queryAccessibleInterface(&m_page.strip());
    ASSERT_NE(strip, nullptr);
    EXPECT_EQ(strip->childCount(), m_page.strip().partCount());
    ASSERT_GT(strip->childCount(), 0);
    EXPECT_FALSE(strip->child(0)->text(QAccessible::Name).isEmpty());
}

TEST_F(HistoryPageTest, TheComparisonHasATableOfTheSameValues)
{
    const record::TankId other = addTank(u"Low Weir"_s, 60);
    for (const int day : {2, 9, 16}) {
        read(m_tank, u"no3"_s, QString::number(10 + day), day);
        read(other, u"no3"_s, QString::number(5 + day), 41 + day);
    }
    open();
    ASSERT_TRUE(m_page.file().comparison.any());
    const PlainTable& table = m_page.compare().twin().table();
    EXPECT_EQ(table.rows.size(),
              m_page.file().comparison.own.points.size() + m_page.file().comparison.other.points.size());
    EXPECT_EQ(table.header.size(), 3);
    m_page.compare().toggleTable();
    EXPECT_TRUE(m_page.compare().twin().isVisible());
    m_page.compare().toggleTable();
    EXPECT_FALSE(m_page.compare().twin().isVisible());
}

TEST_F(HistoryPageTest, TheStripWalksInTimeAndOpensWhatItStandsOn)
{
    see(u"melt"_s, 2, 6);
    read(m_tank, u"no3"_s, u"10"_s, 5);
    read(m_tank, u"no3"_s, u"20"_s, 2);
    open();
    StripView& strip = m_page.strip();
    ASSERT_EQ(strip.partCount(), 3);
    strip.setFocus();
    QTest::keyClick(&strip, Qt::Key_Home);
    QSignalSpy entries(&m_page, &HistoryPage::entryOpenWanted);
    QSignalSpy readings(&m_page, &HistoryPage::readingOpenWanted);
    QTest::keyClick(&strip, Qt::Key_Return);
    EXPECT_EQ(entries.count(), 1);
    QTest::keyClick(&strip, Qt::Key_Right);
    QTest::keyClick(&strip, Qt::Key_Return);
    EXPECT_EQ(readings.count(), 1);
}

} // namespace littoral::ui::test
