// SPDX-License-Identifier: GPL-3.0-or-later
// Blends and doses as they are typed, the trials of CO2, and what doses should have come to on Trends.
#include "tests/ui/frame_fixture.h"
#include "ui/models/trend_words.h"
#include "ui/pages/editors/regimens_editor.h"
#include "ui/pages/editors/source_editor.h"
#include "ui/pages/stock/co2_trials_card.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/pages/trends/trends_side.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/table_twin.h"
#include "ui/widgets/trends/trend_view.h"

#include <QComboBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

class WaterDoseTest : public FrameTest
{
protected:
    WaterDoseTest() { m_tank = addTank(u"Slate Ford"_s, 120); }

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
    record::SourceWaterId water(const QString& name, record::SourceKind kind, std::optional<double> alkalinity = {})
    {
        record::SourceWater made;
        made.name = name;
        made.kind = kind;
        made.alkalinity_meq_per_L = alkalinity;
        store::Edit edit(name);
        const auto id = edit.put(made);
        EXPECT_TRUE(m_keeper.commit(edit));
        return id;
    }
    [[nodiscard]] const record::LayoutRecord& record() const { return *m_keeper.row().layout(layoutOf(m_tank)); }
    [[nodiscard]] std::vector<care::DueItem> doses() const
    {
        const record::Moment now = m_keeper.clock().now();
        auto items = care::dueWork(m_keeper.row(), layoutOf(m_tank), now, now.localDate());
        std::erase_if(items, [](const care::DueItem& item) { return item.kind != care::WorkKind::Dose; });
        return items;
    }
    void typeMix(RegimensEditor& editor)
    {
        editor.setLayout(layoutOf(m_tank));
        named<QComboBox>(editor, u"As"_s)->setCurrentIndex(2);
        named<QLineEdit>(editor, u"What is dosed"_s)->setText(u"green mix"_s);
        named<QLineEdit>(editor, u"Nitrate on the label, mg NO₃ in a mL"_s)->setText(u"20"_s);
        named<QLineEdit>(editor, u"One full dose, g of salt or mL"_s)->setText(u"5"_s);
        named<QLineEdit>(editor, u"Days between doses"_s)->setText(u"2"_s);
    }

    record::TankId m_tank;
};

} // namespace

TEST_F(WaterDoseTest, ABlendShowsWhatItComesToWhileItIsTyped)
{
    const auto tap = water(u"tap"_s, record::SourceKind::Tap, 3.0);
    const auto pure = water(u"osmosis"_s, record::SourceKind::ReverseOsmosis);
    SourceEditor editor(m_keeper, m_theme);
    editor.edit({});
    named<QLineEdit>(editor, u"Name"_s)->setText(u"soft"_s);
    named<QComboBox>(editor, u"Kind"_s)->setCurrentIndex(static_cast<int>(record::SourceKind::Blend));
    auto* first = named<QComboBox>(editor, u"First part"_s);
    EXPECT_FALSE(first->isHidden());
    first->setCurrentIndex(first->findData(tap.value));
    auto* second = named<QComboBox>(editor, u"Second part"_s);
    second->setCurrentIndex(second->findData(pure.value));
    EXPECT_TRUE(editor.profile().contains(u"not stated"_s)) << editor.profile().toStdString();
    named<QLineEdit>(editor, u"Share of the first part, %"_s)->setText(u"30"_s);
    // 0.3 × 3 meq/L is 0.9 meq/L, over 0.357 is 2.5 German degrees (DIN 38409-7, from memory).
    EXPECT_TRUE(editor.profile().contains(u"2.5 dKH, reckoned"_s)) << editor.profile().toStdString();
    named<QPushButton>(editor, u"Save"_s)->click();
    const record::SourceWater& made = m_keeper.row().sources.back();
    EXPECT_EQ(made.firstPart, tap);
    EXPECT_EQ(made.secondPart, pure);
    EXPECT_DOUBLE_EQ(*made.firstShare, 0.3);
    // Turned into tap water it has no parts any more.
    const auto id = made.id;
    editor.edit(id);
    named<QComboBox>(editor, u"Kind"_s)->setCurrentIndex(0);
    named<QPushButton>(editor, u"Save"_s)->click();
    EXPECT_FALSE(m_keeper.row().source(id)->firstPart);
}

TEST_F(WaterDoseTest, ADoseIsTypedFallsDueAndIsDone)
{
    RegimensEditor editor(m_keeper, m_theme);
    typeMix(editor);
    EXPECT_TRUE(editor.outcome().contains(u"green mix: 5 mL every 2 days"_s)) << editor.outcome().toStdString();
    EXPECT_TRUE(editor.outcome().contains(u"mg/L NO₃"_s)) << editor.outcome().toStdString();
    named<QPushButton>(editor, u"Save dose"_s)->click();
    EXPECT_TRUE(editor.problem().isEmpty()) << editor.problem().toStdString();
    ASSERT_EQ(record().regimens.size(), 1U);
    ASSERT_EQ(doses().size(), 1U);
    ASSERT_TRUE(m_keeper.markDone(doses().front(), m_clock.now()));
    ASSERT_FALSE(record().entries.empty());
    const record::Entry& done = record().entries.back();
    EXPECT_EQ(done.kind, record::EntryKind::Dose);
    EXPECT_EQ(done.subject, u"green mix"_s);
    EXPECT_EQ(done.amount, 5.0);
    EXPECT_EQ(done.unit, u"mL"_s);
    EXPECT_TRUE(doses().empty());
    // Undo takes the dose back, then the regimen.
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(doses().size(), 1U);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_TRUE(record().regimens.empty());
}

TEST_F(WaterDoseTest, ADoseThatSaysNothingIsNotSaved)
{
    RegimensEditor editor(m_keeper, m_theme);
    typeMix(editor);
    named<QLineEdit>(editor, u"Nitrate on the label, mg NO₃ in a mL"_s)->clear();
    named<QPushButton>(editor, u"Save dose"_s)->click();
    EXPECT_FALSE(editor.problem().isEmpty());
    EXPECT_TRUE(record().regimens.empty());
    EXPECT_TRUE(editor.hasDraft()) << "what was typed is kept";
}

TEST_F(WaterDoseTest, WeekdaysAreReadAndShownAgain)
{
    RegimensEditor editor(m_keeper, m_theme);
    typeMix(editor);
    named<QLineEdit>(editor, u"Days between doses"_s)->clear();
    named<QCheckBox>(editor, u"Dose on Monday"_s)->setChecked(true);
    named<QCheckBox>(editor, u"Dose on Thursday"_s)->setChecked(true);
    named<QPushButton>(editor, u"Save dose"_s)->click();
    ASSERT_EQ(record().regimens.size(), 1U);
    EXPECT_EQ(record().regimens.front().weekdays, 0b0001001);
    EXPECT_FALSE(editor.hasDraft());
    named<QPushButton>(editor, u"Remove"_s)->click();
    EXPECT_TRUE(record().regimens.empty());
}

TEST_F(WaterDoseTest, TheIndicatorIsNotedWithOnePress)
{
    record::Entry set;
    set.tank = m_tank;
    set.kind = record::EntryKind::Co2Change;
    set.at = m_clock.now().plusDays(-0.5);
    set.amount = 25.0;
    ASSERT_TRUE(m_keeper.enter(set));
    Co2TrialsCard card(m_keeper, m_theme);
    const facts::FactBook book = facts::factsFor(m_keeper.row()).book;
    card.setLayout(layoutOf(m_tank), book);
    ASSERT_EQ(card.table()->rows().size(), 1U);
    EXPECT_EQ(card.table()->rows().front().cells[1].text, u"not looked at"_s);
    named<QPushButton>(card, u"Indicator green now"_s)->click();
    card.setLayout(layoutOf(m_tank), book);
    EXPECT_EQ(card.table()->rows().front().cells[1].text, u"green"_s);
    QSignalSpy opened(&card, &Co2TrialsCard::entryOpenWanted);
    emit card.table()->activatedRow(0);
    EXPECT_EQ(opened.size(), 1);
}

TEST_F(WaterDoseTest, TrendsShowWhatDosesShouldHaveComeTo)
{
    RegimensEditor editor(m_keeper, m_theme);
    typeMix(editor);
    named<QPushButton>(editor, u"Save dose"_s)->click();
    read(m_tank, u"no3"_s, u"20"_s, 10);
    read(m_tank, u"no3"_s, u"5"_s, 1);
    record::Entry dose;
    dose.tank = m_tank;
    dose.kind = record::EntryKind::Dose;
    dose.subject = u"green mix"_s;
    dose.amount = 50.0;
    dose.unit = u"mL"_s;
    dose.at = m_clock.now().plusDays(-9);
    ASSERT_TRUE(m_keeper.enter(dose));
    TimeAxis axis;
    axis.setNow(m_clock.now().utcMs());
    axis.setRange(m_clock.now().plusDays(-20).utcMs(), m_clock.now().plusDays(15).utcMs());
    TrendsPage page(m_keeper, m_forecasts, m_theme, m_ask, axis);
    page.resize(1200, 700);
    page.show();
    page.setSelected(m_tank);
    page.choose({layoutOf(m_tank)}, {u"no3"_s});
    const facade::TrendSeries& series = page.view().model().series.front();
    ASSERT_FALSE(series.expected.points.empty());
    EXPECT_TRUE(page.side().comparison().contains(u"take up more"_s)) << page.side().comparison().toStdString();
    const PlainTable table = valuesTable(page.view().model(), axis.view(0, 1));
    EXPECT_TRUE(table.header.join(u';').contains(u"expected"_s));
    EXPECT_TRUE(QString::fromUtf8(trendCsv(page.view().model(), axis.view(0, 1))).contains(u",expected"_s));
    // Switched off, the picture changes.
    const QImage with = page.view().grab().toImage();
    const auto boxes = page.findChildren<QCheckBox*>();
    const auto expected =
        std::ranges::find_if(boxes, [](const QCheckBox* box) { return box->text() == u"Expected"_s; });
    ASSERT_NE(expected, boxes.end());
    (*expected)->click();
    EXPECT_FALSE(page.bar().options().expected);
    EXPECT_NE(page.view().grab().toImage(), with);
}

} // namespace littoral::ui::test
