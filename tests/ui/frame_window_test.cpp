// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/frame/rail.h"
#include "ui/frame/regions.h"
#include "ui/frame/status_line.h"
#include "ui/frame/store_desk.h"
#include "ui/frame/top_bar.h"
#include "ui/pages/first_run/first_run_page.h"
#include "ui/pages/rounds/rounds_grid.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/style/littoral_style.h"
#include "ui/widgets/find_field.h"
#include "ui/widgets/notice_strip.h"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

class MainWindowTest : public FrameTest
{
protected:
    void open()
    {
        m_window = std::make_unique<MainWindow>(m_keeper, m_forecasts, m_theme, m_ask);
        m_window->resize(1600, 1000);
        m_window->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus == nullptr ? m_window.get() : focus, key, modifiers);
    }
    [[nodiscard]] QAction* action(const char* id) { return m_window->actions().action(QString::fromLatin1(id)); }

    std::unique_ptr<MainWindow> m_window;
};

TEST_F(MainWindowTest, PagesSwitchByKeysAndTypingIsNotLost)
{
    addKits();
    addTank(u"Slate Ford"_s, 16);
    open();
    EXPECT_EQ(m_window->page(), MainWindow::Page::Lanes);
    press(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(MainWindow::Page::Rounds)), Qt::ControlModifier);
    EXPECT_EQ(m_window->page(), MainWindow::Page::Rounds);
    ASSERT_NE(m_window->rounds()->grid()->openCell(), nullptr) << "Rounds opens on the first due cell";
    const QModelIndex cell = m_window->rounds()->grid()->currentIndex();
    QTest::keyClicks(QApplication::focusWidget(), u"0.2"_s);
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(m_window->page(), MainWindow::Page::Lanes);
    EXPECT_EQ(cell.data(RoundsModel::TypedRole).toString(), u"0.2"_s);
    EXPECT_EQ(readingCount(), 1U);
}

TEST_F(MainWindowTest, UndoNamesWhatItTakesBack)
{
    addKits();
    const record::TankId tank = addTank(u"Slate Ford"_s, 16);
    open();
    read(tank, u"no2"_s, u"0.8"_s, 0);
    EXPECT_TRUE(action("undo")->isEnabled());
    EXPECT_TRUE(action("undo")->text().contains(u"0.8"_s)) << action("undo")->text().toStdString();
    EXPECT_FALSE(action("redo")->isEnabled());
    EXPECT_TRUE(m_window->statusLine()->lastText().contains(u"0.8"_s));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(readingCount(), 0U);
    EXPECT_TRUE(action("redo")->text().contains(u"0.8"_s));
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(readingCount(), 1U);
}

TEST_F(MainWindowTest, UndoStaysInAFieldThatHasTypingOfItsOwn)
{
    addKits();
    const record::TankId tank = addTank(u"Slate Ford"_s, 16);
    open();
    read(tank, u"no2"_s, u"0.8"_s, 0);
    press(Qt::Key_K, Qt::ControlModifier);
    QTest::keyClicks(m_window->topBar()->find(), u"ford"_s);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(readingCount(), 1U) << "the field's typing was undone, not the reading";
    m_window->topBar()->find()->clear();
    press(Qt::Key_Z, Qt::ControlModifier);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(readingCount(), 0U) << "with nothing typed, the record is undone";
}

TEST_F(MainWindowTest, LettersAreCommandsOnlyOutsideTextFields)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    m_window->rail()->list()->setFocus();
    press(Qt::Key_E);
    ASSERT_NE(m_window->panels()->host()->current(), nullptr);
    press(Qt::Key_Escape);
    EXPECT_EQ(m_window->panels()->host()->current(), nullptr);
    EXPECT_TRUE(m_window->rail()->list()->hasFocus()) << "the keyboard goes back where it was";
    press(Qt::Key_K, Qt::ControlModifier);
    press(Qt::Key_E);
    EXPECT_EQ(m_window->topBar()->find()->text(), u"e"_s);
    EXPECT_EQ(m_window->panels()->host()->current(), nullptr);
}

TEST_F(MainWindowTest, FindDoesWhatIsChosen)
{
    addTank(u"Slate Ford"_s, 16);
    const record::TankId second = addTank(u"Alder Shelf"_s, 12);
    open();
    press(Qt::Key_K, Qt::ControlModifier);
    QTest::keyClicks(m_window->topBar()->find(), u"alder"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(m_window->rail()->selected(), second);
    press(Qt::Key_K, Qt::ControlModifier);
    QTest::keyClicks(m_window->topBar()->find(), u"rounds"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(m_window->page(), MainWindow::Page::Rounds);
}

TEST_F(MainWindowTest, F6GoesRoundTheRegionsAndBack)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    m_window->rail()->list()->setFocus();
    QList<QWidget*> seen;
    for (int i = 0; i < 12; ++i) {
        press(Qt::Key_F6);
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        seen << QApplication::focusWidget();
    }
    EXPECT_TRUE(seen.contains(m_window->rail()->list())) << "it comes back";
    QWidget* const before = QApplication::focusWidget();
    press(Qt::Key_F6);
    EXPECT_NE(QApplication::focusWidget(), before);
    press(Qt::Key_F6, Qt::ShiftModifier);
    EXPECT_EQ(QApplication::focusWidget(), before);
}

TEST_F(MainWindowTest, EveryActionHasWordsAndIsInTheKeyPanelWhenItHasKeys)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    // A page's own commands work on that page alone, so a letter may mean one thing on each of them; together with the
    // commands of the whole window each set must be free of doubles.
    using Group = ActionRegistry::Group;
    for (const Group page : {Group::Trends, Group::Cycle}) {
        QSet<QString> texts;
        QSet<QString> keys;
        const QList<QAction*> others =
            m_window->actions().actions(page == Group::Trends ? Group::Cycle : Group::Trends);
        for (QAction* each : m_window->actions().actions()) {
            if (others.contains(each)) {
                continue;
            }
            EXPECT_FALSE(plainText(*each).isEmpty()) << each->objectName().toStdString();
            EXPECT_FALSE(texts.contains(plainText(*each))) << plainText(*each).toStdString();
            texts << plainText(*each);
            for (const QKeySequence& sequence : each->shortcuts()) {
                EXPECT_FALSE(keys.contains(sequence.toString()))
                    << "two commands on " << sequence.toString().toStdString();
                keys << sequence.toString();
            }
        }
    }
    QTest::keyClick(m_window->rail()->list(), Qt::Key_Question);
    QStringList shown;
    for (const QLabel* label : m_window->panels()->host()->findChildren<QLabel*>()) {
        shown << label->text();
    }
    for (const QAction* each : m_window->actions().actions()) {
        if (!each->shortcuts().isEmpty() && each->isEnabled()) {
            EXPECT_TRUE(shown.contains(plainText(*each))) << plainText(*each).toStdString();
        }
    }
}

TEST_F(MainWindowTest, TheFirstTankMakesTheStoreAndSaysWhere)
{
    m_keeper.close();
    open();
    m_window->openAtStart(std::nullopt, false);
    ASSERT_TRUE(m_window->firstRun()->isVisible());
    QList<QLineEdit*> fields = m_window->firstRun()->findChildren<QLineEdit*>();
    const auto field = [&](const QString& name) {
        for (QLineEdit* each : fields) {
            if (each->accessibleName() == name) {
                return each;
            }
        }
        return fields.front();
    };
    EXPECT_EQ(QApplication::focusWidget(), field(u"Name"_s));
    press(Qt::Key_Return);
    EXPECT_FALSE(m_keeper.hasStore()) << "nothing is made of an empty name";
    field(u"Name"_s)->setText(u"Long Reach"_s);
    field(u"Length, cm"_s)->setText(u"90"_s);
    field(u"Depth, cm"_s)->setText(u"45"_s);
    field(u"Height, cm"_s)->setText(u"45"_s);
    field(u"Name"_s)->setFocus();
    press(Qt::Key_Return);
    ASSERT_TRUE(m_keeper.hasStore());
    EXPECT_EQ(m_keeper.path(), Session::defaultStore());
    ASSERT_EQ(m_keeper.row().tanks.size(), 1U);
    EXPECT_EQ(m_keeper.row().tanks.front().length_cm, 90.0);
    EXPECT_TRUE(m_window->statusLine()->lastText().contains(u"row.littoral"_s));
    EXPECT_FALSE(m_window->firstRun()->isVisible());
}

TEST_F(MainWindowTest, TheStoreOfLastTimeOpensAgainWithoutADialog)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    m_window->openAtStart(m_keeper.path(), false);
    const QString place = m_keeper.path();
    m_window->close();
    m_window.reset();
    m_keeper.close();
    open();
    m_window->openAtStart(std::nullopt, false);
    EXPECT_EQ(m_keeper.path(), place);
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
    EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
}

TEST_F(MainWindowTest, ABadStoreTellsWhatIsSafe)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    QFile other(path(u"other.littoral"_s));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("this is no store");
    other.close();
    m_ask.open = other.fileName();
    action("store.open")->trigger();
    EXPECT_TRUE(m_window->errorStrip()->isVisible());
    EXPECT_FALSE(m_window->errorStrip()->details().isEmpty());
    EXPECT_EQ(m_keeper.row().tanks.size(), 1U) << "what was open stays open";
}

TEST_F(MainWindowTest, AReadOnlyStoreSaysSoAndOffersNoWriting)
{
    const record::TankId tank = addTank(u"Slate Ford"_s, 16);
    const QString place = m_keeper.path();
    m_keeper.close();
    ASSERT_TRUE(m_keeper.open(place, store::Access::ReadOnly));
    open();
    EXPECT_TRUE(m_window->banner()->isVisible());
    EXPECT_FALSE(action("entry.new")->isEnabled());
    EXPECT_TRUE(action("entries")->isEnabled());
    EXPECT_FALSE(m_window->rounds()->model().index(0, 0).flags().testFlag(Qt::ItemIsEditable));
    EXPECT_EQ(m_window->rail()->selected(), tank);
}

TEST_F(MainWindowTest, ImportTellsItsProblemsAndWritesNothing)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    QFile csv(path(u"bad.csv"_s));
    ASSERT_TRUE(csv.open(QIODevice::WriteOnly));
    csv.write("tank,time,parameter,value,unit\nSlate Ford,2026-11-24T07:30:00Z,nitrite,much,mg/L NO2\n");
    csv.close();
    m_ask.csv = {csv.fileName()};
    action("store.import")->trigger();
    EXPECT_TRUE(m_window->errorStrip()->isVisible());
    EXPECT_EQ(readingCount(), 0U);
    EXPECT_EQ(QApplication::overrideCursor(), nullptr) << "the wait cursor is put back";
}

TEST_F(MainWindowTest, ABackupCanBeOpened)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    m_ask.backup = path(u"copy.littoral"_s);
    action("store.backup")->trigger();
    facade::Keeper copy(m_clock);
    ASSERT_TRUE(copy.open(m_ask.backup));
    EXPECT_EQ(copy.row().tanks.size(), 1U);
}

TEST_F(MainWindowTest, TheWheelChangesNoValue)
{
    addTank(u"Slate Ford"_s, 16);
    open();
    action("tank.edit")->trigger();
    for (QComboBox* combo : m_window->panels()->host()->findChildren<QComboBox*>()) {
        const int before = combo->currentIndex();
        QWheelEvent wheel(QPointF(5, 5), combo->mapToGlobal(QPointF(5, 5)), QPoint(), QPoint(0, -120), Qt::NoButton,
                          Qt::NoModifier, Qt::NoScrollPhase, false);
        QApplication::sendEvent(combo, &wheel);
        EXPECT_EQ(combo->currentIndex(), before) << combo->accessibleName().toStdString();
    }
}

} // namespace littoral::ui::test
