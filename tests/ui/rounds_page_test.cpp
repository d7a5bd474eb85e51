// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/pages/rounds/advice_panel.h"
#include "ui/pages/rounds/cell_panel.h"
#include "ui/pages/rounds/rounds_grid.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/pages/rounds/seen_row.h"
#include "ui/widgets/photo_button.h"

#include <QComboBox>
#include <QImage>
#include <QSignalSpy>
#include <QTest>
#include <cstdio>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

class RoundsPageTest : public FrameTest
{
protected:
    void open(int tanks)
    {
        addKits();
        for (int i = 0; i < tanks; ++i) {
            m_tanks.push_back(addTank(u"Tank %1"_s.arg(i + 1), 16));
        }
        m_page = std::make_unique<RoundsPage>(m_keeper, m_forecasts, m_theme, m_ask);
        m_page->resize(1392, 920);
        m_page->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
        m_page->begin();
    }
    [[nodiscard]] QWidget* keyboard() const { return QApplication::focusWidget(); }
    void type(const QString& text)
    {
        for (const QChar letter : text) {
            QTest::keyClick(keyboard(), letter.toLatin1());
            ++m_strokes;
        }
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(keyboard(), key, modifiers);
        ++m_strokes;
    }
    [[nodiscard]] QString typedAt(const QString& parameter, int row = 0) const
    {
        return m_page->model().index(row, m_page->model().columnOf(parameter)).data(RoundsModel::TypedRole).toString();
    }
    void goTo(const QString& parameter, int row = 0)
    {
        m_page->grid()->leaveCell();
        m_page->grid()->setFocus();
        m_page->grid()->setCurrentIndex(m_page->model().index(row, m_page->model().columnOf(parameter)));
    }

    std::vector<record::TankId> m_tanks;
    std::unique_ptr<RoundsPage> m_page;
    int m_strokes = 0;
};

TEST_F(RoundsPageTest, TenTanksThreeParametersByKeysAlone)
{
    open(10);
    QComboBox* order = nullptr;
    for (QComboBox* combo : m_page->findChildren<QComboBox*>()) {
        order = combo->count() == 2 ? combo : order;
    }
    ASSERT_NE(order, nullptr);
    order->setCurrentIndex(1); // by kit
    m_page->begin();
    const QStringList values{u"0.1"_s, u"0.8"_s, u"10"_s};
    for (int reading = 0; reading < 30; ++reading) {
        type(values[reading / 10]);
        press(Qt::Key_Return);
    }
    m_page->settle();
    EXPECT_EQ(readingCount(), 30U);
    for (int row = 0; row < 10; ++row) {
        EXPECT_EQ(typedAt(u"tan"_s, row), values[0]);
        EXPECT_EQ(typedAt(u"no2"_s, row), values[1]);
        EXPECT_EQ(typedAt(u"no3"_s, row), values[2]);
    }
    std::printf("[  KEYS    ] 10 tanks x 3 parameters: %d key strokes, %.1f a reading\n", m_strokes, m_strokes / 30.0);
    // The value's own characters and one key to go on: nothing else is asked for.
    EXPECT_EQ(m_strokes, 10 * (3 + 3 + 2) + 30);
}

TEST_F(RoundsPageTest, ArrowsTakeKitSteps)
{
    open(1);
    read(m_tanks[0], u"no2"_s, u"0.4"_s, 1);
    goTo(u"no2"_s);
    press(Qt::Key_F2);
    press(Qt::Key_Up);
    EXPECT_EQ(m_page->grid()->openCell()->text(), u"0.8"_s) << "one step up from the last reading";
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    EXPECT_EQ(m_page->grid()->openCell()->text(), u"0.2"_s);
    type(u"/"_s);
    EXPECT_EQ(m_page->grid()->openCell()->text(), u"0.2–0.4"_s);
    type(u"<"_s);
    EXPECT_EQ(m_page->grid()->openCell()->text(), u"<0.05"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(typedAt(u"no2"_s), u"<0.05"_s);
}

TEST_F(RoundsPageTest, TypingOpensTheCellAndEitherDecimalMarkIsTaken)
{
    open(1);
    goTo(u"ph"_s);
    type(u"6,8"_s);
    press(Qt::Key_Tab);
    EXPECT_EQ(typedAt(u"ph"_s), u"6,8"_s);
    EXPECT_DOUBLE_EQ(m_keeper.row().layout(layoutOf(m_tanks[0]))->newest(u"ph"_s, m_clock.now())->value, 6.8);
    EXPECT_EQ(m_page->grid()->currentIndex().column(), m_page->model().columnOf(u"kh"_s));
}

TEST_F(RoundsPageTest, EscLeavesTheCellAndKeepsWhatWasTyped)
{
    open(1);
    goTo(u"ph"_s);
    type(u"6.8"_s);
    press(Qt::Key_Escape);
    EXPECT_EQ(m_page->grid()->openCell(), nullptr);
    EXPECT_EQ(typedAt(u"ph"_s), u"6.8"_s);
    EXPECT_EQ(m_page->grid()->currentIndex().column(), m_page->model().columnOf(u"ph"_s));
}

TEST_F(RoundsPageTest, NoWayOutOfACellLosesTyping)
{
    open(2);
    goTo(u"ph"_s);
    type(u"6.8"_s);
    m_page->seen()->focusFirst(); // the keyboard goes elsewhere
    QTest::qWait(1);
    EXPECT_EQ(typedAt(u"ph"_s), u"6.8"_s);
    goTo(u"kh"_s);
    type(u"4."_s);
    read(m_tanks[1], u"gh"_s, u"7"_s, 0); // the record changes under the open cell
    ASSERT_NE(m_page->grid()->openCell(), nullptr);
    EXPECT_EQ(m_page->grid()->openCell()->text(), u"4."_s);
    addTank(u"Mill Race"_s, 3); // even its shape
    EXPECT_EQ(typedAt(u"kh"_s), u"4."_s);
    goTo(u"gh"_s);
    type(u"x"_s); // no digit: does not open the cell
    EXPECT_EQ(m_page->grid()->openCell(), nullptr);
}

TEST_F(RoundsPageTest, DraftsThatAreNoReadingSurviveFinishing)
{
    open(1);
    goTo(u"ph"_s);
    type(u"68"_s);
    EXPECT_TRUE(m_page->cellPanel()->advice()->headline().contains(u"68"_s));
    press(Qt::Key_Return);
    QSignalSpy finished(m_page.get(), &RoundsPage::finished);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(finished.count(), 1);
    EXPECT_EQ(typedAt(u"ph"_s), u"68"_s);
}

TEST_F(RoundsPageTest, EnterGoesOnWhenNothingIsDueSoThatNoReadingIsTypedOver)
{
    open(2);
    RoundsModel& model = m_page->model();
    m_page->grid()->leaveCell();
    for (QModelIndex due = model.nextDue({}, RoundsModel::Order::AlongRow); due.isValid();
         due = model.nextDue({}, RoundsModel::Order::AlongRow)) {
        ASSERT_TRUE(model.setData(due, u"7"_s, Qt::EditRole));
    }
    goTo(u"cond"_s);
    type(u"250"_s);
    press(Qt::Key_Return);
    type(u"300"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(typedAt(u"cond"_s), u"250"_s);
}

TEST_F(RoundsPageTest, TabLeavesTheGridAtItsEnd)
{
    open(1);
    goTo(u"ph"_s);
    m_page->grid()->setCurrentIndex(m_page->model().index(0, m_page->model().columnCount() - 1));
    press(Qt::Key_Tab);
    EXPECT_FALSE(m_page->grid()->hasFocus());
    EXPECT_FALSE(m_page->grid()->isAncestorOf(keyboard()));
}

TEST_F(RoundsPageTest, SeenIsWrittenAsAnObservation)
{
    open(1);
    goTo(u"ph"_s);
    m_page->seen()->focusFirst();
    type(u"melt"_s);
    press(Qt::Key_Return);
    const auto& entries = m_keeper.row().layout(layoutOf(m_tanks[0]))->entries;
    ASSERT_EQ(entries.size(), 1U);
    EXPECT_EQ(entries.front().kind, record::EntryKind::Observation);
    EXPECT_EQ(entries.front().subject, u"melt"_s);
    EXPECT_EQ(entries.front().severity, 2);
    EXPECT_FALSE(m_page->seen()->hasDraft());
}

TEST_F(RoundsPageTest, APhotoIsKeptAsABoundedCopy)
{
    open(1);
    goTo(u"ph"_s);
    QImage large(3200, 1800, QImage::Format_RGB32);
    large.fill(Qt::darkGreen);
    m_ask.picture = path(u"large.png"_s);
    ASSERT_TRUE(large.save(m_ask.picture));
    m_page->seen()->findChild<PhotoButton*>()->click();
    const auto photos = m_keeper.store()->photos(layoutOf(m_tanks[0]));
    ASSERT_TRUE(photos);
    ASSERT_EQ(photos->size(), 1U);
    EXPECT_EQ(photos->front().width, 1600);
    EXPECT_EQ(photos->front().height, 900);
    const auto bytes = m_keeper.store()->photoBytes(photos->front().id);
    ASSERT_TRUE(bytes);
    EXPECT_EQ(QImage::fromData(*bytes, "JPEG").size(), QSize(1600, 900));
    m_ask.picture = path(u"none.png"_s);
    QSignalSpy failed(m_page.get(), &RoundsPage::failed);
    m_page->seen()->findChild<PhotoButton*>()->click();
    EXPECT_EQ(failed.count(), 1);
}

} // namespace littoral::ui::test
