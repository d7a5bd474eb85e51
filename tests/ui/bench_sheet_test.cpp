// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/models/bench_curve.h"
#include "ui/models/bench_list.h"
#include "ui/models/bench_memory.h"
#include "ui/models/bench_offers.h"
#include "ui/paint/formula.h"

#include <QAbstractItemModelTester>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

class BenchSheetTest : public FrameTest
{
protected:
    [[nodiscard]] BenchSheet open(const QString& key, record::TankId tank = {})
    {
        const sheets::Sheet* sheet = sheets::findSheet(key);
        EXPECT_NE(sheet, nullptr) << key.toStdString();
        BenchSheet opened(*sheet, tank);
        refresh(opened);
        return opened;
    }
    void refresh(BenchSheet& sheet) { sheet.refresh(m_keeper.row(), m_clock.now()); }
};

TEST_F(BenchSheetTest, BlanksAreFilledFromTheNewestReadingAndSaySo)
{
    const record::TankId tank = addTank(u"Mill Race"_s, 60);
    read(tank, u"ph"_s, u"6.9"_s, 5);
    read(tank, u"ph"_s, u"6.6"_s, 1);
    const BenchSheet sheet = open(u"co2"_s, tank);
    const BenchBlank* ph = sheet.blank(u"ph"_s);
    ASSERT_NE(ph, nullptr);
    EXPECT_EQ(ph->from, BenchBlank::From::Record);
    EXPECT_EQ(ph->text.toDouble(), 6.6);
    EXPECT_TRUE(ph->origin.contains(u"24 Nov"_s)) << ph->origin.toStdString();
    EXPECT_TRUE(sheet.isWaiting()); // nobody has read the KH
    EXPECT_TRUE(sheet.problem().contains(sheet.blank(u"kh"_s)->input->label));
}

TEST_F(BenchSheetTest, TypedStandsOverTheRecordAndHasAWayBack)
{
    const record::TankId tank = addTank(u"Mill Race"_s, 60);
    read(tank, u"ph"_s, u"6.6"_s, 1);
    BenchSheet sheet = open(u"co2"_s, tank);
    sheet.type(u"ph"_s, u"6.8"_s);
    sheet.type(u"kh"_s, u"4"_s);
    refresh(sheet);
    EXPECT_EQ(sheet.blank(u"ph"_s)->from, BenchBlank::From::Typed);
    EXPECT_EQ(sheet.blank(u"ph"_s)->origin, u"typed"_s);
    EXPECT_EQ(sheet.blank(u"ph"_s)->wayBack.toDouble(), 6.6);
    ASSERT_TRUE(sheet.answer().has_value());
    const double typed = sheet.answer()->find(u"co2"_s)->value;
    sheet.type(u"ph"_s, {});
    refresh(sheet);
    EXPECT_EQ(sheet.blank(u"ph"_s)->from, BenchBlank::From::Record);
    // CO2 goes with ten to the pH drop: 0.2 units are a factor of 1.58, whatever the constants are.
    EXPECT_NEAR(sheet.answer()->find(u"co2"_s)->value / typed, std::pow(10.0, 0.2), 0.01);
}

TEST_F(BenchSheetTest, WrongInputStaysAndIsBlamedAtItsBlank)
{
    BenchSheet sheet = open(u"co2"_s);
    sheet.type(u"ph"_s, u"six"_s);
    sheet.type(u"kh"_s, u"4"_s);
    refresh(sheet);
    EXPECT_FALSE(sheet.answer().has_value());
    EXPECT_EQ(sheet.blank(u"ph"_s)->text, u"six"_s);
    EXPECT_FALSE(sheet.blank(u"ph"_s)->problem.isEmpty());
    EXPECT_FALSE(sheet.blank(u"ph"_s)->mend.isEmpty());
    EXPECT_TRUE(sheet.blank(u"kh"_s)->problem.isEmpty());
    sheet.type(u"ph"_s, u"66"_s); // a lost decimal mark
    refresh(sheet);
    EXPECT_FALSE(sheet.answer().has_value());
    EXPECT_FALSE(sheet.blank(u"ph"_s)->problem.isEmpty());
    EXPECT_EQ(sheet.blank(u"ph"_s)->text, u"66"_s);
}

TEST_F(BenchSheetTest, ThreeWaysStandSideBySide)
{
    BenchSheet sheet = open(u"co2"_s);
    sheet.type(u"ph"_s, u"6.6"_s);
    sheet.type(u"kh"_s, u"4"_s);
    refresh(sheet);
    auto measures = benchMeasures(sheet);
    ASSERT_TRUE(measures.has_value());
    ASSERT_EQ(measures->rows.size(), 3U);
    EXPECT_TRUE(measures->rows[0].middle.has_value());
    EXPECT_FALSE(measures->rows[1].middle.has_value());
    EXPECT_FALSE(measures->rows[1].value.isEmpty()); // says what it needs
    sheet.type(u"phbase"_s, u"7.5"_s);
    sheet.type(u"indicator"_s, u"6.6"_s);
    refresh(sheet);
    measures = benchMeasures(sheet);
    for (const Measures::Row& row : measures->rows) {
        ASSERT_TRUE(row.middle && row.low && row.high) << row.name.toStdString();
        EXPECT_LT(*row.low, *row.middle);
        EXPECT_GT(*row.high, *row.middle);
    }
}

TEST_F(BenchSheetTest, TheCurveStandsWhereTheSheetStands)
{
    BenchSheet sheet = open(u"target"_s);
    sheet.type(u"now"_s, u"33"_s);
    sheet.type(u"target"_s, u"20"_s);
    sheet.type(u"source"_s, u"8"_s);
    refresh(sheet);
    ASSERT_TRUE(sheet.answer().has_value()) << sheet.problem().toStdString();
    // Mass balance by hand: (33 - 20) / (33 - 8) = 52 %.
    EXPECT_NEAR(sheet.answer()->find(u"share"_s)->value, 52.0, 1e-9);
    const auto curve = benchCurve(sheet, m_keeper.row());
    ASSERT_TRUE(curve.has_value());
    EXPECT_GT(curve->points.size(), 20U);
    ASSERT_TRUE(curve->here.has_value());
    EXPECT_NEAR(curve->here->x, 52.0, 1e-9);
    EXPECT_NEAR(curve->here->y, 20.0, 1e-9);
    EXPECT_NEAR(curve->points.front().y, 33.0, 1e-9);
    for (std::size_t i = 1; i < curve->points.size(); ++i) {
        EXPECT_LT(curve->points[i].y, curve->points[i - 1].y);
    }
    // More than half at once is proposed as two: (1 - 0.31)^2 is about 1 - 0.52.
    const auto proposed = proposedChanges(sheet);
    ASSERT_EQ(proposed.size(), 2U);
    EXPECT_NEAR((1.0 - proposed[0]) * (1.0 - proposed[1]), 0.48, 1e-6);
}

TEST_F(BenchSheetTest, TheCylinderIsFilledFromItsWeighings)
{
    const record::TankId tank = addTank(u"Heron Sill"_s, 90);
    read(tank, u"cylinder"_s, u"4000"_s, 30);
    read(tank, u"cylinder"_s, u"3800"_s, 10);
    read(tank, u"cylinder"_s, u"3700"_s, 0);
    BenchSheet sheet = open(u"cylinder"_s, tank);
    sheet.type(u"empty"_s, u"3100"_s);
    refresh(sheet);
    ASSERT_TRUE(sheet.answer().has_value()) << sheet.problem().toStdString();
    // By hand: 300 g in 30 days is 10 g a day; 600 g left last 60 days.
    EXPECT_NEAR(sheet.answer()->find(u"left"_s)->value, 60.0, 1e-6);
    EXPECT_TRUE(sheet.blank(u"earlier"_s)->origin.contains(u"26 Oct"_s));
}

TEST_F(BenchSheetTest, WhatLiesOnTheBenchIsThereAgain)
{
    const record::TankId tank = addTank(u"Mill Race"_s, 60);
    const sheets::Sheet& co2 = *sheets::findSheet(u"co2"_s);
    {
        BenchMemory memory;
        memory.load(m_keeper.path());
        EXPECT_TRUE(memory.hasRowPlanPinned()); // a bench nobody has used yet
        memory.open(co2, tank).type(u"kh"_s, u"4±0.5"_s);
        memory.pin(memory.open(co2, tank));
        memory.unpin(memory.pins().front().number);
        memory.inFront = u"dip"_s;
        memory.conditioner_mL_per_100L = 5.0;
        memory.showsWorking = false;
        memory.save();
    }
    BenchMemory memory;
    memory.load(m_keeper.path());
    EXPECT_EQ(memory.inFront, u"dip"_s);
    EXPECT_EQ(memory.conditioner_mL_per_100L, 5.0);
    EXPECT_FALSE(memory.showsWorking);
    EXPECT_EQ(memory.open(co2, tank).typed().value(u"kh"_s), u"4±0.5"_s);
    EXPECT_TRUE(memory.open(co2, record::TankId{1}).typed().isEmpty()); // another tank's is its own
    ASSERT_EQ(memory.pins().size(), 1U);
    EXPECT_EQ(memory.pins().front().sheet->typed().value(u"kh"_s), u"4±0.5"_s);
    memory.load(path(u"other.littoral"_s));
    EXPECT_TRUE(memory.open(co2, tank).typed().isEmpty());
}

TEST_F(BenchSheetTest, TheListIsASoundModelAndFilters)
{
    BenchListModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.sheetCount(), static_cast<int>(sheets::sheets().size()) + 1);
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        EXPECT_GE(model.rowOf(sheet.key), 0) << sheet.key.toStdString();
    }
    model.filter(u"disinf"_s);
    EXPECT_EQ(model.sheetCount(), 1);
    EXPECT_EQ(model.index(model.firstSheet()).data(BenchListModel::KeyRole).toString(), u"dip"_s);
    model.filter(u"qqq"_s);
    EXPECT_EQ(model.rowCount(), 0);
    EXPECT_EQ(model.firstSheet(), -1);
}

TEST_F(BenchSheetTest, TheFindFieldOffersAWorksheetWithItsResult)
{
    QString opened;
    QMap<QString, QString> typed;
    const BenchOffers offers([&](const QString& sheet, const QMap<QString, QString>& blanks) {
        opened = sheet;
        typed = blanks;
    });
    const auto ask = [&](const QString& text) { return offers.offers(text, m_keeper.row(), {}, m_clock.now()); };
    const auto found = ask(u"co2 6.6 4"_s);
    ASSERT_FALSE(found.empty());
    EXPECT_TRUE(found.front().text.contains(u"mg/L"_s)) << found.front().text.toStdString();
    found.front().run();
    EXPECT_EQ(opened, u"co2"_s);
    EXPECT_EQ(typed, (QMap<QString, QString>{{u"ph"_s, u"6.6"_s}, {u"kh"_s, u"4"_s}}));
    const auto doubt = ask(u"co2 6.6±0.2 4"_s);
    ASSERT_FALSE(doubt.empty());
    doubt.front().run();
    EXPECT_EQ(typed.value(u"ph"_s), u"6.6±0.2"_s);
    EXPECT_FALSE(ask(u"co2 x"_s).empty()); // says what is wrong and opens the sheet all the same
    EXPECT_FALSE(ask(u"disinf"_s).empty());
    EXPECT_TRUE(ask({}).empty());
    EXPECT_TRUE(ask(u"mill race"_s).empty());
}

TEST_F(BenchSheetTest, FindModelShowsAnswersFirst)
{
    FindModel model(m_keeper);
    const BenchOffers offers([](const QString&, const QMap<QString, QString>&) {});
    model.setAnswers([&](const QString& text) { return offers.offers(text, m_keeper.row(), {}, m_clock.now()); });
    model.search(u"co2 6.6 4"_s);
    ASSERT_GT(model.rowCount(), 0);
    EXPECT_TRUE(model.index(0).data().toString().contains(u"mg/L"_s));
    model.search({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(BenchSheetTest, AQuotientStandsHigherThanALine)
{
    const double line = formulaHeight(m_theme, u"after = source + rest"_s, 600);
    const double quotient = formulaHeight(m_theme, u"share = (33 − 20) / (33 − 8) = 52 %"_s, 600);
    const double power = formulaHeight(m_theme, u"1 / (1 + 10^(pKa − pH))"_s, 600);
    EXPECT_GT(quotient, 1.7 * line);
    EXPECT_GT(power, line);
    // Where the width runs out it breaks, and nothing is lost beyond the edge.
    EXPECT_GT(formulaHeight(m_theme, u"share = (33 − 20) / (33 − 8) = 52 %"_s, 110), 1.5 * quotient);
    // Brackets that never close are drawn as they stand.
    EXPECT_GT(formulaHeight(m_theme, u"x^(2 / (3"_s, 600), 0.0);
}

} // namespace littoral::ui::test
