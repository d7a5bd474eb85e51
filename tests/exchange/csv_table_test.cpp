// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_table.h"

#include "core/base/random.h"

#include <gtest/gtest.h>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

struct Case
{
    const char* name;
    QByteArray bytes;
    QStringList columns;
    std::vector<CsvRecord> records;
};

std::vector<Case> cases()
{
    return {
        // RFC 4180 (2005), section 2, items 1-7, each with the example it gives.
        {"rfc1_crlf",
         "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
         {u"aaa"_s, u"bbb"_s, u"ccc"_s},
         {{2, {u"zzz"_s, u"yyy"_s, u"xxx"_s}}}},
        {"rfc2_no_last_break",
         "aaa,bbb,ccc\r\nzzz,yyy,xxx",
         {u"aaa"_s, u"bbb"_s, u"ccc"_s},
         {{2, {u"zzz"_s, u"yyy"_s, u"xxx"_s}}}},
        {"rfc5_quoted",
         "\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx",
         {u"aaa"_s, u"bbb"_s, u"ccc"_s},
         {{2, {u"zzz"_s, u"yyy"_s, u"xxx"_s}}}},
        {"rfc6_break_inside",
         "a,b,c\r\n\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx",
         {u"a"_s, u"b"_s, u"c"_s},
         {{2, {u"aaa"_s, u"b\r\nbb"_s, u"ccc"_s}}, {3, {u"zzz"_s, u"yyy"_s, u"xxx"_s}}}},
        {"rfc7_doubled_quote",
         "a,b,c\r\n\"aaa\",\"b\"\"bb\",\"ccc\"",
         {u"a"_s, u"b"_s, u"c"_s},
         {{2, {u"aaa"_s, u"b\"bb"_s, u"ccc"_s}}}},
        // Beyond the RFC.
        {"lf", "a,b\n1,2\n3,4\n", {u"a"_s, u"b"_s}, {{2, {u"1"_s, u"2"_s}}, {3, {u"3"_s, u"4"_s}}}},
        {"cr", "a,b\r1,2\r", {u"a"_s, u"b"_s}, {{2, {u"1"_s, u"2"_s}}}},
        {"mark",
         "\xEF\xBB\xBF"
         "a,b\n1,2\n",
         {u"a"_s, u"b"_s},
         {{2, {u"1"_s, u"2"_s}}}},
        {"semicolon", "a;b,c\n1,5;2\n", {u"a;b"_s, u"c"_s}, {{2, {u"1"_s, u"5;2"_s}}}},
        {"semicolons", "a;b;c\n1,5;2;3\n", {u"a"_s, u"b"_s, u"c"_s}, {{2, {u"1,5"_s, u"2"_s, u"3"_s}}}},
        {"tab", "a\tb\n1,5\t2\n", {u"a"_s, u"b"_s}, {{2, {u"1,5"_s, u"2"_s}}}},
        {"separator_in_quotes_not_counted",
         "\"a,,,,\";b;c\n1;2;3\n",
         {u"a,,,,"_s, u"b"_s, u"c"_s},
         {{2, {u"1"_s, u"2"_s, u"3"_s}}}},
        {"blank_rows_count", "a,b\n\n,\n1,2\n", {u"a"_s, u"b"_s}, {{4, {u"1"_s, u"2"_s}}}},
        {"empty_cells", "a,b,c\n,,x\n", {u"a"_s, u"b"_s, u"c"_s}, {{2, {QString(), QString(), u"x"_s}}}},
        {"trailing_separator", "a,b\n1,\n", {u"a"_s, u"b"_s}, {{2, {u"1"_s, QString()}}}},
        {"quote_inside_bare", "a,b\n3\" of sand,2\n", {u"a"_s, u"b"_s}, {{2, {u"3\" of sand"_s, u"2"_s}}}},
        {"empty_quotes", "a,b\n\"\",\"\"\"\"\n", {u"a"_s, u"b"_s}, {{2, {QString(), u"\""_s}}}},
        {"header_only", "a,b", {u"a"_s, u"b"_s}, {}},
        {"header_trimmed", " a , b \n 1 ,2\n", {u"a"_s, u"b"_s}, {{2, {u" 1 "_s, u"2"_s}}}},
    };
}

} // namespace

TEST(CsvTable, readsEachCase)
{
    for (const Case& example : cases()) {
        SCOPED_TRACE(example.name);
        const auto table = readCsv(example.bytes, u"x.csv"_s);
        ASSERT_TRUE(table);
        EXPECT_EQ(table->columns, example.columns);
        EXPECT_EQ(table->records, example.records);
    }
}

TEST(CsvTable, readsUtf16WithAMark)
{
    const QString text = u"a\tb\nü\t2\n"_s;
    QByteArray bytes("\xFF\xFE", 2);
    bytes.append(reinterpret_cast<const char*>(text.utf16()), text.size() * 2);
    const auto table = readCsv(bytes, u"x.csv"_s);
    ASSERT_TRUE(table);
    EXPECT_EQ(table->records.front().cells, (QStringList{u"ü"_s, u"2"_s}));
}

TEST(CsvTable, namesTheRowOfWhatItRefuses)
{
    const auto open = readCsv("a,b\n1,2\n3,\"4\n5,6\n", u"x.csv"_s);
    ASSERT_FALSE(open);
    EXPECT_EQ(open.error().where, "x.csv, row 3");
    const auto after = readCsv("a,b\n\"1\"2,3\n", u"x.csv"_s);
    ASSERT_FALSE(after);
    EXPECT_EQ(after.error().where, "x.csv, row 2");
}

TEST(CsvTable, refusesWhatIsNotATable)
{
    for (const QByteArray& bytes :
         {QByteArray(), QByteArray("\n1,2"), QByteArray("a,b\n\xC3\x28,1\n"), QByteArray("\xEF\xBB\xBF")}) {
        const auto table = readCsv(bytes, u"x.csv"_s);
        ASSERT_FALSE(table);
        EXPECT_EQ(table.error().fault, Fault::BadInput);
        EXPECT_EQ(table.error().where, "x.csv");
    }
}

TEST(CsvTable, readsBackWhatItWrites)
{
    Random random(4180);
    const QString alphabet = u"ab ,;\t\"\r\n<é–1"_s;
    for (int round = 0; round < 300; ++round) {
        // A first column that is never blank: blank records are not kept.
        QStringList header, cells;
        for (int i = 0; i < 5; ++i) {
            header << u"c%1"_s.arg(i);
            QString cell = i == 0 ? u"x"_s : QString();
            for (auto n = random.bits() % 8; n > 0; --n) {
                cell += alphabet[static_cast<qsizetype>(random.bits() % static_cast<quint64>(alphabet.size()))];
            }
            cells << cell;
        }
        const auto table = readCsv((csvLine(header) + csvLine(cells)).toUtf8(), u"x.csv"_s);
        ASSERT_TRUE(table);
        ASSERT_EQ(table->records.size(), 1u);
        EXPECT_EQ(table->records.front().cells, cells);
    }
}

TEST(CsvTable, survivesRandomBytes)
{
    Random random(99);
    const QByteArray likely = "\",;\r\n\t a1\xC3\xA9\xFF\xFE\x00";
    int read = 0;
    for (int round = 0; round < 3000; ++round) {
        QByteArray bytes;
        for (auto n = random.bits() % 24; n > 0; --n) {
            const bool any = random.uniform() < 0.1;
            bytes.append(any ? static_cast<char>(random.bits() & 0xff)
                             : likely[static_cast<qsizetype>(random.bits() % 11)]);
        }
        const auto table = readCsv(bytes, u"x.csv"_s);
        if (!table) {
            EXPECT_FALSE(table.error().what.empty());
            continue;
        }
        ++read;
        int last = 1;
        for (const CsvRecord& record : table->records) {
            EXPECT_GT(record.row, last);
            last = record.row;
        }
    }
    EXPECT_GT(read, 100);
}

} // namespace littoral::exchange
