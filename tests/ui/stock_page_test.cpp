// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/models/stock_words.h"
#include "ui/pages/stock/lineage_view.h"
#include "ui/pages/stock/stock_cards.h"
#include "ui/pages/stock/stock_page.h"
#include "ui/pages/stock/stock_tables.h"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <algorithm>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;
using record::EntryKind;

namespace {

class StockPageTest : public FrameTest
{
protected:
    StockPageTest()
        : m_tank(addTank(u"Heron Sill"_s, 61))
        , m_page(m_keeper, m_forecasts, m_theme)
    {
        put(u"cherry shrimp"_s, 12, {}, 18);
        put(u"zebra danio"_s, 8, {}, 12);
        put(u"Rotala rotundifolia"_s, 40, u"stems"_s, 61);
        read(m_tank, u"ph"_s, u"6.7"_s, 2);
        read(m_tank, u"temp"_s, u"24"_s, 2);
        m_page.resize(1390, 860);
        m_page.show();
        m_page.setSelected(m_tank);
    }
    record::EntryId put(const QString& subject, int count, const QString& unit, int daysAgo)
    {
        record::Entry entry;
        entry.tank = m_tank;
        entry.layout = layoutOf(m_tank);
        entry.kind = EntryKind::Addition;
        entry.subject = subject;
        entry.count = count;
        entry.unit = unit;
        entry.at = m_clock.now().plusDays(-daysAgo);
        const auto done = m_keeper.enter(entry);
        EXPECT_TRUE(done);
        return done ? *done : record::EntryId{};
    }
    [[nodiscard]] std::size_t entryCount() const { return m_keeper.row().layout(layoutOf(m_tank))->entries.size(); }

    record::TankId m_tank;
    StockPage m_page;
};

} // namespace

TEST_F(StockPageTest, TheTablesHoldTheStockAndKeepToTheModelsRules)
{
    const QAbstractItemModelTester animals(&m_page.animalsModel(),
                                           QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QAbstractItemModelTester plants(&m_page.plantsModel(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(m_page.animalsModel().rowCount(), 3) << "a heading and two species";
    EXPECT_EQ(m_page.plantsModel().rowCount(), 1);
    const QModelIndex verdict = m_page.animalsModel().index(1, m_page.animalsModel().verdictColumn());
    EXPECT_EQ(verdict.data().toString(), animalVerdict(m_page.stock(), m_page.stock().animals.front()));
    EXPECT_FALSE(m_page.animalsModel().index(0, 0).flags().testFlag(Qt::ItemIsSelectable));
    EXPECT_EQ(m_page.animals()->height(), m_page.animals()->fullHeight());
}

TEST_F(StockPageTest, FilterAndOrderAreKeptWhenTheRecordChanges)
{
    m_page.animalsModel().setFilter(u"danio"_s);
    ASSERT_EQ(m_page.animalsModel().rowCount(), 2);
    put(u"zebra danio"_s, 2, {}, 1);
    ASSERT_EQ(m_page.animalsModel().rowCount(), 2);
    EXPECT_EQ(m_page.animalsModel().animal(1)->count, 10);
    m_page.animalsModel().setFilter({});
    m_page.animalsModel().setOrder(StockOrder::Name);
    EXPECT_EQ(m_page.animalsModel().animal(1)->subject, u"cherry shrimp"_s);
}

TEST_F(StockPageTest, AnAnimalIsConsideredPlannedAndTakenBack)
{
    const std::size_t before = entryCount();
    m_page.addition()->choose(u"A019"_s, 6);
    EXPECT_EQ(m_page.animalsModel().animal(m_page.animalsModel().rowCount() - 1)->place,
              facade::StockPlace::Considered);
    QSignalSpy told(&m_page, &StockPage::told);
    QTest::mouseClick(m_page.addition()->planButton(), Qt::LeftButton);
    EXPECT_EQ(told.count(), 1);
    EXPECT_EQ(entryCount(), before + 1);
    EXPECT_EQ(m_page.animalsModel().animal(m_page.animalsModel().rowCount() - 1)->place, facade::StockPlace::Planned);
    EXPECT_FALSE(m_page.addition()->wish());
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(entryCount(), before);
}

TEST_F(StockPageTest, ARecordAgainstAGateNeedsAReason)
{
    m_page.addition()->choose(u"A049"_s, 1); // discus: large, warm, sensitive
    EXPECT_TRUE(m_page.addition()->reason()->isVisible());
    EXPECT_FALSE(m_page.addition()->recordButton()->isEnabled());
    m_page.addition()->reason()->setText(u"rescued from a flooded cellar"_s);
    ASSERT_TRUE(m_page.addition()->recordButton()->isEnabled());
    QTest::mouseClick(m_page.addition()->recordButton(), Qt::LeftButton);
    const auto& entries = m_keeper.row().layout(layoutOf(m_tank))->entries;
    const auto made = std::ranges::find(entries, u"discus"_s, &record::Entry::subject);
    ASSERT_NE(made, entries.end());
    EXPECT_EQ(made->note, u"rescued from a flooded cellar"_s);
    EXPECT_FALSE(made->planned);
}

TEST_F(StockPageTest, TheTrialSpeaksInOdds)
{
    m_forecasts.refresh();
    m_forecasts.wait();
    m_page.addition()->choose(u"A024"_s, 18);
    m_page.desk().wait();
    ASSERT_NE(m_page.desk().trial(), nullptr);
    EXPECT_TRUE(m_page.addition()->verdict().contains(u" in "_s)) << m_page.addition()->verdict().toStdString();
    for (const QString& sentence : trialVerdict(*m_page.desk().trial())) {
        EXPECT_TRUE(sentence.endsWith(u'.')) << sentence.toStdString();
    }
}

TEST_F(StockPageTest, TheKeyboardOpensTheEntryAndTheGuide)
{
    QSignalSpy open(&m_page, &StockPage::entryOpenWanted);
    m_page.begin();
    QTest::keyClick(m_page.animals(), Qt::Key_Return);
    EXPECT_EQ(open.count(), 1);
    QTest::keyClick(m_page.animals(), Qt::Key_Down);
    EXPECT_EQ(m_page.animals()->currentIndex().row(), 2);
    EXPECT_EQ(m_page.focusedSpecies().isEmpty(), !m_page.animals()->hasFocus());
}

TEST_F(StockPageTest, EverythingHasANameAndATarget)
{
    for (QWidget* widget : m_page.findChildren<QWidget*>()) {
        if (widget->isVisible() && (widget->focusPolicy() & Qt::TabFocus) != 0 && !widget->focusProxy()) {
            QAccessibleInterface* node = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(node, nullptr);
            EXPECT_FALSE(node->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
            EXPECT_GE(widget->height(), 24) << widget->accessibleName().toStdString();
        }
    }
}

TEST_F(StockPageTest, NothingClipsAtTwiceTheSizeInTheSmallestWindow)
{
    m_theme.setTextScale(2.0);
    m_page.resize(960, 600);
    QTest::qWait(1);
    EXPECT_EQ(m_page.width(), 960);
    const AnimalsTable& table = *m_page.animals();
    int width = 0;
    for (int column = 0; column < m_page.animalsModel().columnCount(); ++column) {
        width += table.isColumnHidden(column) ? 0 : table.columnWidth(column);
    }
    EXPECT_LE(width, table.viewport()->width() + 1);
    for (const QWidget* widget : m_page.findChildren<QWidget*>()) {
        if (widget->isVisible() && widget->minimumSizeHint().width() > 900) {
            ADD_FAILURE() << widget->metaObject()->className() << " " << widget->accessibleName().toStdString()
                          << " asks for " << widget->minimumSizeHint().width();
        }
    }
    EXPECT_LE(table.mapTo(&m_page, QPoint(table.width(), 0)).x(), m_page.width());
}

TEST_F(StockPageTest, TheClockOfQuarantineIsEnded)
{
    auto* button = m_page.findChild<QPushButton*>(u"quarantine"_s);
    ASSERT_NE(button, nullptr);
    ASSERT_TRUE(button->isVisible());
    button->click();
    EXPECT_TRUE(m_page.stock().clock->done);
    EXPECT_FALSE(button->isVisible());
}

} // namespace littoral::ui::test
