// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_import.h"

#include "core/base/random.h"
#include "core/exchange/csv_export.h"
#include "core/water/nitrogen.h"
#include "tests/exchange/small_row.h"

#include <gtest/gtest.h>

namespace littoral::exchange {

using namespace Qt::StringLiterals;
using record::EntryKind;

namespace {

const record::Moment kNow = record::Moment::fromIso(u"2026-11-25T08:00:00Z"_s);

CsvImport imported(const record::Row& row, const QByteArray& bytes)
{
    CsvImport import(row, kNow);
    import.read(bytes, u"x.csv"_s);
    return import;
}

QString onlyProblem(const QByteArray& bytes)
{
    const record::Row row = test::smallRow();
    const CsvImport import = imported(row, bytes);
    EXPECT_EQ(import.problems().count(), 1) << import.problems().sentences().join(u'\n').toStdString();
    EXPECT_TRUE(import.readings().empty());
    EXPECT_TRUE(import.entries().empty());
    return import.problems().sentences().value(0);
}

/// Puts what was imported into the row, as the facade does.
record::Row withImported(record::Row row, const CsvImport& import)
{
    qint64 id = 1000;
    for (record::Reading reading : import.readings()) {
        reading.id.value = ++id;
        row.layouts.at(reading.layout).readings.push_back(reading);
    }
    for (record::Entry entry : import.entries()) {
        entry.id.value = ++id;
        row.layouts.at(entry.layout).entries.push_back(entry);
    }
    record::sortRow(row);
    return row;
}

constexpr auto kEveryKind =
    "tank,date,time,kind,parameter,value,unit,kit,subject,fraction,percent,litres,amount,count,load,severity,coverage,"
    "where,source,other tank,planned,protein,hours,par,target,note\n"
    "Slate Ford,2026-11-10,07:40,reading,no2,0.25,,drop box,,,,,,,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-10,07:41,,ph,6.8,,,,,,,,,,,,,,,,,,,,\n"
    "slate ford,2026-11-10,08:00,water-change,,,,,,0.5,,,,,,,,,tap,,,,,,,\n"
    "Slate Ford,2026-11-11,08:00,water-change,,,,,,,30,,,,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-12,08:00,water-change,,,,,,,,25,,,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-12,09:00,top-up,,,,,,,,3.5,,,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-12,10:00,dose,,,mg/L NH3,,ammonia,,,,2,,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-12,10:00,dose,,,,,starter,,,,1,,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-12,10:00,dose,,,mL,,iron,,,,1.5,,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-12,11:00,feeding,,,g/d,,,,,,0.4,,,,,,,,,45 %,,,,\n"
    "Slate Ford,2026-11-12,12:00,upkeep,,,,,trim,,,,,,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-12,12:30,observation,,,,,melt,,,,,,,2,30 %,left corner,,,,,,,,old leaves\n"
    "Slate Ford,2026-11-13,12:30,addition,,,,,shrimp,,,,,10,0.02,,,,,,,,,,,\n"
    "Slate Ford,2026-11-14,12:30,loss,,,,,shrimp,,,,,1,,,,,,,,,,,,\n"
    "Slate Ford,2026-11-14,13:00,media-transfer,,,,,media,0.25,,,,,,,,,,Fen Corner,,,,,,\n"
    "Slate Ford,2026-11-14,14:00,light-change,,,,,,,,,,,,,,,,,,,7,60,,\n"
    "Slate Ford,2026-11-14,15:00,co2-change,,,,,,,,,,,,,,,,,,,8,,25,\n"
    "Slate Ford,2026-11-14,16:00,note,,,,,,,,,,,,,,,,,,,,,,\"turned, at last\"\n"
    "Slate Ford,2026-12-01,08:00,water-change,,,,,,40%,,,,,,,,,,,yes,,,,,\n";

} // namespace

TEST(CsvImport, readsEveryKind)
{
    const record::Row row = test::smallRow();
    const CsvImport import = imported(row, kEveryKind);
    ASSERT_TRUE(import.problems().isEmpty()) << import.problems().sentences().join(u'\n').toStdString();
    ASSERT_EQ(import.readings().size(), 2u);
    ASSERT_EQ(import.entries().size(), 17u);
    const record::Reading& nitrite = import.readings()[0];
    EXPECT_EQ(nitrite.unit, u"mg/L NO2"_s);
    EXPECT_EQ(nitrite.kit.value, 7);
    EXPECT_NEAR(nitrite.value, 0.25 / water::kNitritePerN, 1e-12);
    EXPECT_EQ(nitrite.at, record::Moment::fromIso(u"2026-11-10T07:40:00Z"_s));
    EXPECT_EQ(nitrite.layout.value, 10);
    EXPECT_EQ(nitrite.enteredAt, kNow);
    const auto& entries = import.entries();
    EXPECT_EQ(entries[0].source.value, 5);
    EXPECT_DOUBLE_EQ(*entries[1].fraction, 0.30);
    EXPECT_DOUBLE_EQ(*entries[2].fraction, 0.25); // 25 of 100 L
    EXPECT_DOUBLE_EQ(*entries[3].amount, 3.5);
    // 2 mg/L as NH3 is 2 * 14.007 / 17.031 = 1.645 mg/L N (IUPAC standard atomic weights, 2021 abridged).
    EXPECT_NEAR(*entries[4].amount, 1.645, 0.001);
    EXPECT_EQ(entries[4].unit, u"mg/L N"_s);
    EXPECT_EQ(entries[5].unit, u"doses"_s);
    EXPECT_DOUBLE_EQ(*entries[7].proteinShare, 0.45);
    EXPECT_EQ(entries[9].severity, 2);
    EXPECT_DOUBLE_EQ(*entries[9].coverage, 0.30);
    EXPECT_EQ(entries[10].count, 10);
    EXPECT_DOUBLE_EQ(*entries[10].load_mgN_per_L_d, 0.02);
    EXPECT_EQ(entries[12].otherTank.value, 2);
    EXPECT_DOUBLE_EQ(*entries[13].second, 60.0);
    EXPECT_DOUBLE_EQ(*entries[14].amount, 25.0);
    EXPECT_EQ(entries[15].note, u"turned, at last"_s);
    EXPECT_TRUE(entries[16].planned);
    EXPECT_EQ(entries[16].plannedFor, entries[16].at);
}

TEST(CsvImport, aDayAloneIsNoonAndAnOffsetIsKept)
{
    const record::Row row = test::smallRow();
    const CsvImport import =
        imported(row, "tank,at,parameter,value\nFen Corner,2026-11-10,ph,7\nFen Corner,2026-11-10T21:00+02:00,ph,7\n");
    ASSERT_EQ(import.readings().size(), 2u);
    EXPECT_EQ(import.readings()[0].at, record::Moment::fromLocal(QDate(2026, 11, 10), QTime(12, 0)));
    EXPECT_EQ(import.readings()[1].at, record::Moment::fromIso(u"2026-11-10T19:00:00Z"_s));
    EXPECT_EQ(import.readings()[1].at.offsetSeconds(), 7200);
}

TEST(CsvImport, takesDecimalCommasAndCensoredValues)
{
    const record::Row row = test::smallRow();
    const CsvImport import =
        imported(row, "Tank;Date;Parameter;Value;Unit\nFen Corner;2026-11-10;Nitrite;0,25;ppm NO2\n"
                      "Fen Corner;2026-11-11;NO₂;<0,05;mg/l NO₂\nFen Corner;2026-11-12;no3;5–10;mg/L NO3-N\n");
    ASSERT_TRUE(import.problems().isEmpty()) << import.problems().sentences().join(u'\n').toStdString();
    ASSERT_EQ(import.readings().size(), 3u);
    EXPECT_EQ(import.readings()[0].typed, u"0,25"_s);
    EXPECT_EQ(import.readings()[0].unit, u"mg/L NO2"_s);
    EXPECT_EQ(import.readings()[1].censoring, record::Censoring::Below);
    EXPECT_EQ(import.readings()[2].censoring, record::Censoring::Between);
    EXPECT_DOUBLE_EQ(import.readings()[2].high, 10.0); // as nitrogen: nothing to convert
}

TEST(CsvImport, saysRowAndColumnOfEachProblem)
{
    const QString head =
        u"tank,date,kind,parameter,value,unit,kit,subject,fraction,percent,severity,planned,other_tank,amount\n"_s;
    struct Case
    {
        QString row;
        QString start;
    };
    const std::vector<Case> cases{
        {u"Fen Corner,2026-11-10,,ph,abc"_s, u"x.csv, row 2, column value: \"abc\""_s},
        {u"Fen Croner,2026-11-10,,ph,7"_s,
         u"x.csv, row 2, column tank: There is no tank \"Fen Croner\". Did you mean \"Fen Corner\"?"_s},
        {u",2026-11-10,,ph,7"_s, u"x.csv, row 2, column tank: "_s},
        {u"Fen Corner,10.11.2026,,ph,7"_s, u"x.csv, row 2, column date: \"10.11.2026\" is not a date"_s},
        {u"Fen Corner,2026-02-30,,ph,7"_s, u"x.csv, row 2, column date: "_s},
        {u"Fen Corner,,,ph,7"_s, u"x.csv, row 2, column date: "_s},
        {u"Fen Corner,2026-11-10,,no2,0.5"_s, u"x.csv, row 2, column unit: Nitrite needs its unit"_s},
        {u"Fen Corner,2026-11-10,,no2,0.5,mg/L"_s, u"x.csv, row 2, column unit: "_s},
        {u"Fen Corner,2026-11-10,,temp,24"_s, u"x.csv, row 2, column unit: "_s},
        {u"Fen Corner,2026-11-10,,ph,68"_s, u"x.csv, row 2, column value: "_s},
        {u"Fen Corner,2026-11-10,,zinc,1"_s, u"x.csv, row 2, column parameter: "_s},
        {u"Fen Corner,2026-11-10,,no2,1,,drop bocks"_s,
         u"x.csv, row 2, column kit: There is no kit \"drop bocks\" for Nitrite. Did you mean \"drop box\"?"_s},
        {u"Fen Corner,2026-11-10,party"_s, u"x.csv, row 2, column kind: "_s},
        {u"Fen Corner,2026-11-10,"_s, u"x.csv, row 2, column kind: "_s},
        {u"Fen Corner,2026-11-10,water-change"_s, u"x.csv, row 2, column fraction: A water change needs one of"_s},
        {u"Fen Corner,2026-11-10,water-change,,,,,,40"_s, u"x.csv, row 2, column fraction: 40 is not a share"_s},
        {u"Fen Corner,2026-11-10,water-change,,,,,,0.4,40"_s, u"x.csv, row 2, column fraction: Give only one"_s},
        {u"Fen Corner,2026-11-10,water-change,,,,,,0.4,,3"_s, u"x.csv, row 2, column severity: This does not belong"_s},
        {u"Fen Corner,2026-11-10,observation,,,,,melt,,,5"_s, u"x.csv, row 2, column severity: 5 is outside 0 to 4"_s},
        {u"Fen Corner,2026-11-10,observation,,,,,melt,,,1.5"_s, u"x.csv, row 2, column severity: 1.5 is not a whole"_s},
        {u"Fen Corner,2026-11-10,upkeep"_s, u"x.csv, row 2, column subject: "_s},
        {u"Fen Corner,2026-11-10,note,,,,,,,,,perhaps"_s, u"x.csv, row 2, column planned: "_s},
        {u"Fen Corner,2026-11-10,media-transfer,,,,,media,0.5,,,,Fen"_s,
         u"x.csv, row 2, column other_tank: There is no tank \"Fen\""_s},
        {u"Fen Corner,2026-11-10,dose,,,mL,,ammonia,,,,,,2"_s, u"x.csv, row 2, column unit: An ammonia dose"_s},
        {u"Fen Corner,2026-11-10,,ph,7,,,,,,,,,,,,9"_s, u"x.csv, row 2: There are 17 cells under 14 columns"_s},
    };
    for (const Case& example : cases) {
        SCOPED_TRACE(example.row.toStdString());
        const record::Row row = test::smallRow();
        const CsvImport import = imported(row, (head + example.row + u'\n').toUtf8());
        ASSERT_GE(import.problems().count(), 1);
        const QString first = import.problems().sentences().front();
        EXPECT_EQ(first.left(example.start.size()), example.start);
        EXPECT_TRUE(import.readings().empty() && import.entries().empty());
    }
}

TEST(CsvImport, refusesColumnsItDoesNotKnow)
{
    EXPECT_EQ(onlyProblem("tank,date,parameter,vlaue\nFen Corner,2026-11-10,ph,7\n"),
              u"x.csv, row 1: There is no column \"vlaue\". Did you mean \"value\"?"_s);
    EXPECT_EQ(onlyProblem("tank,date,parameter,value,value\n"),
              u"x.csv, row 1: The column \"value\" is there twice."_s);
    EXPECT_EQ(onlyProblem("date,parameter,value\n"), u"x.csv, row 1: There is no column \"tank\"."_s);
    EXPECT_EQ(onlyProblem("tank,parameter,value\n"), u"x.csv, row 1: There is no column \"date\"."_s);
    const record::Row row = test::smallRow();
    const CsvImport aside = imported(row, "tank,date,parameter,value,# mood\nFen Corner,2026-11-10,ph,7,good\n");
    EXPECT_TRUE(aside.problems().isEmpty());
    EXPECT_EQ(aside.readings().size(), 1u);
    ASSERT_EQ(aside.remarks().size(), 1);
}

TEST(CsvImport, collectsAllProblemsAndShowsFifty)
{
    QByteArray bytes = "tank,date,parameter,value\n";
    for (int i = 0; i < 70; ++i) {
        bytes += "Fen Corner,2026-11-10,ph,x\n";
    }
    const record::Row row = test::smallRow();
    const CsvImport import = imported(row, bytes);
    EXPECT_EQ(import.problems().count(), 70);
    ASSERT_EQ(import.problems().sentences().size(), 51);
    EXPECT_TRUE(import.problems().sentences().last().contains(u"20"_s));
}

TEST(CsvImport, bringsNothingInTwice)
{
    const record::Row row = test::smallRow();
    const CsvImport first = imported(row, kEveryKind);
    record::Row after = withImported(row, first);
    const CsvImport second = imported(after, kEveryKind);
    EXPECT_TRUE(second.problems().isEmpty());
    EXPECT_TRUE(second.readings().empty());
    EXPECT_TRUE(second.entries().empty());
    EXPECT_EQ(second.skipped(), 19);

    // The planned change has since been done, a day late and smaller: the plan is still known.
    for (record::Entry& entry : after.layouts.at(record::LayoutId{10}).entries) {
        if (entry.planned) {
            entry.planned = false;
            entry.at = entry.at.plusDays(1.0);
            entry.fraction = 0.3;
        }
    }
    const CsvImport third = imported(after, kEveryKind);
    EXPECT_TRUE(third.entries().empty());
    EXPECT_EQ(third.skipped(), 19);
}

TEST(CsvImport, skipsALineThatIsTwiceInTheFiles)
{
    const record::Row row = test::smallRow();
    CsvImport import(row, kNow);
    import.read("tank,date,parameter,value\nFen Corner,2026-11-10,ph,7\nFen Corner,2026-11-10,ph,7\n", u"a.csv"_s);
    import.read("tank,date,parameter,value\nFen Corner,2026-11-10,ph,7\nFen Corner,2026-11-10,ph,7.1\n", u"b.csv"_s);
    EXPECT_EQ(import.readings().size(), 2u);
    EXPECT_EQ(import.skipped(), 2);
}

TEST(CsvImport, readsBackWhatTheExportWrites)
{
    const record::Row row = test::smallRow();
    const record::Row full = withImported(row, imported(row, kEveryKind));
    CsvImport again(row, record::Moment::fromIso(u"2027-01-01T00:00:00Z"_s));
    again.read(readingsCsv(full), u"readings.csv"_s);
    again.read(entriesCsv(full), u"entries.csv"_s);
    ASSERT_TRUE(again.problems().isEmpty()) << again.problems().sentences().join(u'\n').toStdString();
    const record::Row round = withImported(row, again);
    for (const auto& [id, layout] : full.layouts) {
        const auto sameButId = [](auto a, const auto& b) {
            a.id = b.id;
            return a == b;
        };
        EXPECT_TRUE(std::ranges::equal(layout.readings, round.layouts.at(id).readings, sameButId));
        EXPECT_TRUE(std::ranges::equal(layout.entries, round.layouts.at(id).entries, sameButId));
    }
    EXPECT_EQ(full.layouts.at(record::LayoutId{10}).entries.size(), 17u);
}

TEST(CsvImport, takesBackWhatAStoreKeptWithoutItsNumbers)
{
    const record::Row row = test::smallRow();
    const QByteArray head = "tank,at,kind,subject,unit,amount,fraction,entered\n";
    const QByteArray kept = head + "Fen Corner,2026-11-10,water-change,,,,,2026-11-10\n"
                                   "Fen Corner,2026-11-10,light-change,,,,,2026-11-10\n"
                                   "Fen Corner,2026-11-10,feeding,,pinch,1,,2026-11-10\n"
                                   "Fen Corner,2026-11-10,dose,ammonia,mg/L NH3,2,,2026-11-10\n";
    const CsvImport import = imported(row, kept);
    EXPECT_TRUE(import.problems().isEmpty()) << import.problems().sentences().join(u'\n').toStdString();
    ASSERT_EQ(import.entries().size(), 4u);
    EXPECT_EQ(import.entries()[2].unit, u"pinch"_s);
    // As NH3 2 mg/L is 1.645 mg/L N (IUPAC standard atomic weights, 2021 abridged).
    EXPECT_NEAR(*import.entries()[3].amount, 1.645, 0.001);
    // The same typed by hand is asked for what is missing.
    QByteArray typed = kept;
    typed.replace(",2026-11-10\n", ",\n");
    EXPECT_EQ(imported(row, typed).problems().count(), 3);
}

TEST(CsvImport, survivesTornFiles)
{
    const record::Row row = test::smallRow();
    Random random(7);
    const QByteArray whole = kEveryKind;
    for (int round = 0; round < 400; ++round) {
        QByteArray torn = whole;
        for (auto n = random.bits() % 30; n > 0; --n) {
            torn[static_cast<qsizetype>(random.bits() % static_cast<quint64>(torn.size()))] =
                static_cast<char>(random.bits() & 0x7f);
        }
        torn.truncate(static_cast<qsizetype>(random.bits() % static_cast<quint64>(torn.size())));
        const CsvImport import = imported(row, torn);
        for (const record::Reading& reading : import.readings()) {
            EXPECT_TRUE(reading.at.isValid() && reading.layout);
        }
    }
}

} // namespace littoral::exchange
