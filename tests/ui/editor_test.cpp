// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/models/day_words.h"
#include "ui/models/number_text.h"
#include "ui/pages/editors/entries_panel.h"
#include "ui/pages/editors/entry_editor.h"
#include "ui/pages/editors/kits_editor.h"
#include "ui/pages/editors/reading_editor.h"
#include "ui/pages/editors/source_editor.h"
#include "ui/pages/editors/tank_editor.h"
#include "ui/pages/editors/targets_editor.h"
#include "ui/pages/first_run/first_tank.h"

#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

class EditorTest : public FrameTest
{
protected:
    EditorTest() { m_tank = addTank(u"Slate Ford"_s, 16); }

    template <typename Widget> [[nodiscard]] static Widget* named(const QWidget& panel, const QString& name)
    {
        for (Widget* widget : panel.findChildren<Widget*>()) {
            if (widget->accessibleName() == name) {
                return widget;
            }
        }
        ADD_FAILURE() << "no field " << name.toStdString();
        return nullptr;
    }
    static void save(QWidget& panel, const QString& button = u"Save"_s) { named<QPushButton>(panel, button)->click(); }
    [[nodiscard]] const std::vector<record::Entry>& entries() const
    {
        return m_keeper.row().layout(layoutOf(m_tank))->entries;
    }

    record::TankId m_tank;
};

TEST_F(EditorTest, WaterChangeInPercentOrLitres)
{
    EntryEditor editor(m_keeper, m_theme);
    editor.begin(m_tank, record::EntryKind::WaterChange);
    EXPECT_FALSE(editor.caution().isEmpty()) << "the caution is above the action";
    auto* part = named<QLineEdit>(editor, u"Part changed, %"_s);
    auto* litres = named<QLineEdit>(editor, u"or L"_s);
    const double net =
        record::netVolume(*m_keeper.row().tank(m_tank), m_keeper.row().layout(layoutOf(m_tank))->layout)->litres;
    QTest::keyClicks(litres, numberText(net / 4.0, 4));
    EXPECT_NEAR(numberFrom(part->text()).value_or(0), 25.0, 0.1);
    part->clear();
    QTest::keyClicks(part, u"40"_s);
    EXPECT_NEAR(numberFrom(litres->text()).value_or(0), 0.4 * net, 0.5);
    save(editor);
    ASSERT_EQ(entries().size(), 1U);
    EXPECT_DOUBLE_EQ(*entries().front().fraction, 0.4);
    EXPECT_EQ(entries().front().at, m_clock.now());
}

TEST_F(EditorTest, EveryKindCanBeWrittenAndReadBack)
{
    for (int kind = 0; kind <= static_cast<int>(record::EntryKind::Note); ++kind) {
        EntryEditor editor(m_keeper, m_theme);
        editor.begin(m_tank, static_cast<record::EntryKind>(kind));
        for (QLineEdit* field : editor.findChildren<QLineEdit*>()) {
            const QString name = field->accessibleName();
            if (!field->isHidden() && !name.isEmpty() && name != u"When"_s && name != u"Unit"_s && field->isEnabled() &&
                name != u"or L"_s) {
                field->setText(u"7"_s);
            }
        }
        named<QPlainTextEdit>(editor, u"Note"_s)->setPlainText(u"a word"_s);
        for (QComboBox* combo : editor.findChildren<QComboBox*>()) {
            if (combo->isEditable() && !combo->isHidden()) {
                combo->setEditText(u"something"_s);
            }
        }
        save(editor);
        EXPECT_EQ(editor.problem().toStdString(), std::string());
        ASSERT_EQ(entries().size(), static_cast<std::size_t>(kind) + 1) << kind;
        EXPECT_EQ(entries().back().kind, static_cast<record::EntryKind>(kind));
        EXPECT_EQ(entries().back().note, u"a word"_s);
        // Opened again and saved untouched, it is the same record.
        const record::Entry before = entries().back();
        EntryEditor again(m_keeper, m_theme);
        again.edit(before.id);
        EXPECT_FALSE(again.hasDraft()) << kind;
        save(again);
        EXPECT_EQ(entries().back(), before) << kind;
    }
}

TEST_F(EditorTest, AnEntryHalfTypedIsThereWhenThePanelComesBack)
{
    EntryEditor editor(m_keeper, m_theme);
    editor.begin(m_tank, record::EntryKind::WaterChange);
    EXPECT_FALSE(editor.hasDraft());
    named<QLineEdit>(editor, u"Part changed, %"_s)->setText(u"35"_s);
    EXPECT_TRUE(editor.hasDraft());
    QSignalSpy closing(&editor, &SidePanel::closeRequested);
    QTest::keyClick(&editor, Qt::Key_Escape);
    EXPECT_EQ(closing.count(), 1);
    editor.begin(m_tank, record::EntryKind::WaterChange);
    EXPECT_EQ(named<QLineEdit>(editor, u"Part changed, %"_s)->text(), u"35"_s);
}

TEST_F(EditorTest, WhatCannotBeReadIsNamedAndKept)
{
    EntryEditor editor(m_keeper, m_theme);
    editor.begin(m_tank, record::EntryKind::WaterChange);
    named<QLineEdit>(editor, u"Part changed, %"_s)->setText(u"140"_s);
    save(editor);
    EXPECT_TRUE(editor.problem().contains(u"140"_s));
    EXPECT_TRUE(entries().empty());
    EXPECT_EQ(named<QLineEdit>(editor, u"Part changed, %"_s)->text(), u"140"_s);
}

TEST_F(EditorTest, ALaterDateIsAPlan)
{
    EntryEditor editor(m_keeper, m_theme);
    editor.begin(m_tank, record::EntryKind::WaterChange);
    named<QLineEdit>(editor, u"When"_s)->setText(u"2026-11-28 18:00"_s);
    named<QLineEdit>(editor, u"Part changed, %"_s)->setText(u"30"_s);
    save(editor);
    ASSERT_EQ(entries().size(), 1U);
    EXPECT_TRUE(entries().front().planned);
    ASSERT_TRUE(entries().front().plannedFor);
    EXPECT_EQ(entries().front().plannedFor->localDate(), QDate(2026, 11, 28));
}

TEST_F(EditorTest, EntriesAreNarrowedEditedAndRemoved)
{
    record::Entry entry;
    entry.tank = m_tank;
    entry.kind = record::EntryKind::Upkeep;
    entry.at = m_clock.now();
    entry.subject = u"trim"_s;
    ASSERT_TRUE(m_keeper.enter(entry));
    read(m_tank, u"no2"_s, u"0.8"_s, 1);
    EntriesPanel panel(m_keeper, m_theme);
    panel.setTank(m_tank);
    panel.show();
    EXPECT_EQ(panel.table()->model()->rowCount(), 2);
    QSignalSpy entryWanted(&panel, &EntriesPanel::entryWanted);
    QSignalSpy readingWanted(&panel, &EntriesPanel::readingWanted);
    named<QLineEdit>(panel, u"Narrow the entries by text"_s)->setText(u"nitrite"_s);
    ASSERT_EQ(panel.table()->model()->rowCount(), 1);
    QTest::keyClick(panel.table(), Qt::Key_Return);
    EXPECT_EQ(readingWanted.count(), 1);
    named<QLineEdit>(panel, u"Narrow the entries by text"_s)->setText(u"trim"_s);
    QTest::keyClick(panel.table(), Qt::Key_Return);
    EXPECT_EQ(entryWanted.count(), 1);
    QTest::keyClick(panel.table(), Qt::Key_Delete);
    EXPECT_TRUE(entries().empty());
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(entries().size(), 1U);
}

TEST_F(EditorTest, AReadingIsMended)
{
    const record::ReadingId id = read(m_tank, u"no2"_s, u"0.8"_s, 1);
    ReadingEditor editor(m_keeper, m_theme);
    editor.edit(id);
    EXPECT_FALSE(editor.hasDraft());
    named<QLineEdit>(editor, u"Value"_s)->setText(u"0,4"_s);
    save(editor);
    ASSERT_EQ(readingCount(), 1U);
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_tank))->readings.front().typed, u"0,4"_s);
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_tank))->readings.front().at, m_clock.now().plusDays(-1));
}

TEST_F(EditorTest, TheTankEditorChangesOnlyWhatWasTyped)
{
    const record::Tank tank = *m_keeper.row().tank(m_tank);
    const record::Layout layout = m_keeper.row().layout(layoutOf(m_tank))->layout;
    TankEditor editor(m_keeper, m_theme);
    editor.editTank(m_tank);
    EXPECT_FALSE(editor.hasDraft());
    save(editor);
    EXPECT_EQ(*m_keeper.row().tank(m_tank), tank);
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_tank))->layout, layout);
    editor.editTank(m_tank);
    named<QLineEdit>(editor, u"Rock, kg"_s)->setText(u"4,5"_s);
    EXPECT_TRUE(editor.hasDraft());
    save(editor);
    record::Layout expected = layout;
    expected.rock_kg = 4.5;
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_tank))->layout, expected);
}

TEST_F(EditorTest, ANewLayoutEndsTheOneBefore)
{
    TankEditor editor(m_keeper, m_theme);
    const record::LayoutId first = layoutOf(m_tank);
    editor.addLayout(m_tank);
    named<QLineEdit>(editor, u"Name of the layout"_s)->setText(u"stones"_s);
    save(editor);
    EXPECT_EQ(editor.problem().toStdString(), std::string());
    ASSERT_EQ(m_keeper.row().layoutsOf(m_tank).size(), 2U);
    EXPECT_TRUE(m_keeper.row().layout(first)->layout.ended.has_value());
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_tank))->layout.number, 2);
}

TEST_F(EditorTest, ATankIsAddedOnceAndNamesAreTold)
{
    TankEditor editor(m_keeper, m_theme);
    editor.addTank();
    named<QLineEdit>(editor, u"Name"_s)->setText(u"slate ford"_s);
    save(editor, u"Add this tank"_s);
    EXPECT_TRUE(editor.problem().contains(u"Slate Ford"_s));
    named<QLineEdit>(editor, u"Name"_s)->setText(u"Mill Race"_s);
    save(editor, u"Add this tank"_s);
    EXPECT_EQ(m_keeper.row().tanks.size(), 2U);
}

TEST_F(EditorTest, SourceWaterIsKeptInItsCanonicalUnits)
{
    SourceEditor editor(m_keeper, m_theme);
    editor.edit({});
    named<QLineEdit>(editor, u"Name"_s)->setText(u"Tap"_s);
    named<QLineEdit>(editor, u"Nitrate, mg/L NO₃"_s)->setText(u"44.27"_s);
    named<QLineEdit>(editor, u"KH, dKH"_s)->setText(u"2.8"_s);
    save(editor);
    ASSERT_EQ(m_keeper.row().sources.size(), 1U);
    // 44.27 mg/L of nitrate ion hold 10 mg/L of nitrogen (molar masses 62.005 and 14.007, IUPAC); 2.8 German degrees of
    // carbonate hardness are 1 mmol/L of acid capacity (DIN 38409-7: 1 degree is 0.357 mmol/L), from memory.
    EXPECT_NEAR(*m_keeper.row().sources.front().nitrate_mgN_per_L, 10.0, 0.005);
    EXPECT_NEAR(*m_keeper.row().sources.front().alkalinity_meq_per_L, 1.0, 0.002);
    const record::SourceWater before = m_keeper.row().sources.front();
    editor.edit(before.id);
    save(editor);
    EXPECT_EQ(m_keeper.row().sources.front(), before) << "saving untouched keeps every digit";
}

TEST_F(EditorTest, TargetsMayStayOpenAtOneEnd)
{
    TargetsEditor editor(m_keeper, m_theme);
    editor.setTank(m_tank);
    named<QLineEdit>(editor, u"Nitrate, lowest wanted"_s)->setText(u"10"_s);
    named<QLineEdit>(editor, u"Nitrate, highest wanted"_s)->setText(u"25"_s);
    named<QLineEdit>(editor, u"pH, highest wanted"_s)->setText(u"7,2"_s);
    save(editor);
    const record::Target* nitrate = m_keeper.row().target(m_tank, u"no3"_s);
    ASSERT_NE(nitrate, nullptr);
    EXPECT_NEAR(record::findParameter(u"no3"_s)->shown().fromCanonical(*nitrate->high), 25.0, 1e-9);
    EXPECT_FALSE(m_keeper.row().target(m_tank, u"ph"_s)->low.has_value());
    named<QLineEdit>(editor, u"Nitrate, lowest wanted"_s)->setText(u"30"_s);
    save(editor);
    EXPECT_FALSE(editor.problem().isEmpty()) << "lower end above the upper";
    named<QLineEdit>(editor, u"Nitrate, lowest wanted"_s)->clear();
    named<QLineEdit>(editor, u"Nitrate, highest wanted"_s)->clear();
    save(editor);
    EXPECT_EQ(m_keeper.row().target(m_tank, u"no3"_s), nullptr);
}

TEST_F(EditorTest, KitStepsAreReadEitherWay)
{
    for (const QString& text : {u"0 0.25 0.5 1 2"_s, u"0; 0,25; 0,5; 1; 2"_s, u"0, 0.25, 0.5, 1, 2"_s}) {
        const auto steps = stepsFrom(text);
        ASSERT_TRUE(steps) << text.toStdString();
        EXPECT_EQ(*steps, (std::vector<double>{0, 0.25, 0.5, 1, 2})) << text.toStdString();
    }
    EXPECT_FALSE(stepsFrom(u"0 1 0.5"_s));
    EXPECT_FALSE(stepsFrom(u"0 a"_s));
    EXPECT_TRUE(stepsFrom(QString())->empty());
    KitsEditor editor(m_keeper, m_theme);
    named<QLineEdit>(editor, u"Name"_s)->setText(u"Drops D"_s);
    named<QLineEdit>(editor, u"Steps, from 0 upwards"_s)->setText(u"0 1 2"_s);
    named<QLineEdit>(editor, u"Good until"_s)->setText(u"30.4.2027"_s);
    save(editor, u"Save kit"_s);
    ASSERT_EQ(m_keeper.row().kits.size(), 1U);
    EXPECT_EQ(m_keeper.row().kits.front().expires, QDate(2027, 4, 30));
    EXPECT_EQ(m_keeper.row().kits.front().steps.size(), 3U);
    EXPECT_FALSE(editor.hasDraft());
}

TEST(EditorWords, DaysAndNumbersAreReadAsTyped)
{
    const record::Moment now = record::Moment::fromIso(u"2026-11-25T07:30:00Z"_s);
    EXPECT_EQ(momentFrom(u"2026-11-02"_s, now).localDate(), QDate(2026, 11, 2));
    EXPECT_EQ(momentFrom(u"2.11.2026"_s, now).localDate(), QDate(2026, 11, 2));
    EXPECT_EQ(momentFrom(u"2 Nov"_s, now).localDate(), QDate(2026, 11, 2));
    EXPECT_EQ(momentFrom(u"06:15"_s, now).toDateTime().time(), QTime(6, 15));
    EXPECT_EQ(momentFrom(momentEditText(now), now).localDate(), QDate(2026, 11, 25));
    EXPECT_FALSE(momentFrom(u"2026-13-02"_s, now).isValid());
    EXPECT_FALSE(momentFrom(u"tomorrow-ish"_s, now).isValid());
    EXPECT_EQ(numberFrom(u" 0,25 "_s), 0.25);
    EXPECT_EQ(numberFrom(u"−3"_s), -3.0);
    EXPECT_FALSE(numberFrom(u"1.2.3"_s));
    EXPECT_FALSE(numberFrom(u"nan"_s));
}

TEST(EditorWords, TheFirstTanksWaterIsLessThanItsGlass)
{
    FirstTank given;
    given.name = u"Long Reach"_s;
    given.length_cm = 90;
    given.depth_cm = 45;
    given.height_cm = 45;
    given.flooded = record::Moment::fromIso(u"2026-11-25T07:30:00Z"_s);
    const record::Tank tank = tankOf(given);
    // 90 x 45 x 45 cm is 182.25 L by arithmetic.
    EXPECT_NEAR(record::glassVolume_L(tank), 182.25, 1e-9);
    const auto net = record::netVolume(tank, layoutOf(given));
    ASSERT_TRUE(net);
    EXPECT_GT(net->litres, 0.75 * 182.25);
    EXPECT_LT(net->litres, 0.95 * 182.25);
    EXPECT_TRUE(proposedWork(tank, layoutOf(given), given.flooded).contains(u"water change"_s));
}

} // namespace littoral::ui::test
