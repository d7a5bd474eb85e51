// SPDX-License-Identifier: GPL-3.0-or-later
// Every sheet at, below and above the validity of each of its inputs, and with coarse inputs.
#include "core/sheets/reckoner.h"
#include "tests/sheets/reckon_line.h"

#include <cmath>

namespace littoral::test {

using namespace Qt::StringLiterals;
using sheets::InputKind;

namespace {

sheets::Values exampleValues(const sheets::Sheet& sheet)
{
    const auto request = sheets::parseLine(sheet.key + u' ' + sheet.example);
    EXPECT_TRUE(request) << sheet.key.toStdString();
    return request ? request->values : sheets::Values{};
}

sheets::Value valueOf(const sheets::Input& input, double number)
{
    sheets::Value value;
    value.number = number;
    value.text = QString::number(number, 'g', 12);
    if (input.kind == InputKind::Series) {
        value.series = {number};
    }
    return value;
}

/// A refusal names a blank of the sheet, says what and how to mend it.
void expectHelpful(const sheets::Sheet& sheet, const Error& error, const std::string& when)
{
    EXPECT_NE(sheet.input(QString::fromStdString(error.where)), nullptr)
        << when << ": \"" << error.where << "\" is no blank; " << error.what;
    EXPECT_FALSE(error.what.empty()) << when;
}

/// Unit of the last digit shown: 0.1 for "12.5", 10 for "120".
double lastUnit(QString text)
{
    text.remove(u'-').remove(QChar(0x2212)).remove(QChar(0x202F)).remove(u',');
    const qsizetype mark = text.indexOf(u'.');
    if (mark >= 0) {
        return std::pow(10.0, -static_cast<double>(text.size() - mark - 1));
    }
    double unit = 1.0;
    while (text.size() > 1 && text.endsWith(u'0')) {
        text.chop(1);
        unit *= 10.0;
    }
    return unit;
}

/// Figures from the first that is not zero on.
int figuresIn(const QString& text)
{
    int count = 0;
    for (const QChar c : text) {
        if (c.isDigit() && (count > 0 || c != u'0')) {
            ++count;
        }
    }
    return count;
}

} // namespace

class EachSheet : public testing::TestWithParam<std::size_t>
{
protected:
    [[nodiscard]] const sheets::Sheet& sheet() const { return sheets::sheets()[GetParam()]; }
};

TEST_P(EachSheet, ItsExampleHasAnAnswer)
{
    EXPECT_FALSE(sheets::exampleOf(sheet()).figures.isEmpty()) << sheet().key.toStdString();
}

TEST_P(EachSheet, RefusesEachInputBelowAndAboveItsBoundsByName)
{
    for (const sheets::Input& input : sheet().inputs) {
        if (input.kind == InputKind::Choice) {
            continue;
        }
        const double step = 1e-6 * std::max(1.0, input.highest - input.lowest);
        for (const double outside : {input.lowest - step, input.highest + step, std::nan("")}) {
            sheets::Values values = exampleValues(sheet());
            values.insert(input.key, valueOf(input, outside));
            const auto answer = sheets::evaluate(sheet(), values);
            const std::string when = (sheet().key + u' ' + input.key).toStdString() + "=" + std::to_string(outside);
            ASSERT_FALSE(answer) << when << " was reckoned with";
            EXPECT_EQ(answer.error().where, input.key.toStdString()) << when;
            EXPECT_NE(answer.error().what.find("must lie from"), std::string::npos) << when;
            EXPECT_FALSE(answer.error().mend.empty()) << when;
        }
    }
}

/// On its very bounds an input is reckoned with, or refused with the blank at fault; never without a figure.
TEST_P(EachSheet, ReckonsOrRefusesOnTheBoundsThemselves)
{
    for (const sheets::Input& input : sheet().inputs) {
        std::vector<sheets::Value> tried;
        if (input.kind == InputKind::Choice) {
            for (const sheets::Choice& choice : input.choices) {
                sheets::Value value;
                value.text = choice.code;
                tried.push_back(value);
            }
        } else {
            tried = {valueOf(input, input.lowest), valueOf(input, input.highest)};
        }
        for (const sheets::Value& value : tried) {
            sheets::Values values = exampleValues(sheet());
            values.insert(input.key, value);
            const auto answer = sheets::evaluate(sheet(), values);
            const std::string when = (sheet().key + u' ' + input.key + u'=' + value.text).toStdString();
            if (!answer) {
                expectHelpful(sheet(), answer.error(), when);
                continue;
            }
            for (const sheets::Figure& figure : answer->results) {
                EXPECT_TRUE(figure.isWords || std::isfinite(figure.value)) << when << ' ' << figure.key.toStdString();
                EXPECT_FALSE(figure.text.contains(u'{')) << when << ": " << figure.text.toStdString();
            }
            for (const QString& note : answer->notes) {
                EXPECT_FALSE(note.contains(u'{')) << when << ": " << note.toStdString();
            }
            for (const sheets::Write& write : answer->writes) {
                EXPECT_FALSE(write.entry && write.entry->note.contains(u'{')) << when;
            }
        }
    }
}

/// A result has no digit beyond a thirtieth of its doubt (the doubt's first digit, or one more where that is 1 or 2:
/// JCGM 100:2008, 7.2.6), and three figures at most.
TEST_P(EachSheet, ShowsNoMoreDigitsThanItsInputsDeserve)
{
    int checked = 0;
    for (const sheets::Input& input : sheet().inputs) {
        if (input.kind != InputKind::Number) {
            continue;
        }
        for (const double share : {0.02, 0.1, 0.3}) {
            sheets::Values values = exampleValues(sheet());
            if (!values.contains(input.key)) {
                continue;
            }
            sheets::Value& coarse = values[input.key];
            coarse.error = share * std::max(1e-3, std::abs(coarse.number));
            const auto answer = sheets::evaluate(sheet(), values);
            if (!answer) {
                expectHelpful(sheet(), answer.error(), (sheet().key + u' ' + input.key).toStdString());
                continue;
            }
            for (const sheets::Figure& figure : answer->results) {
                if (figure.isWords || !figure.low || !figure.high || figure.value == 0.0) {
                    continue;
                }
                ++checked;
                const double doubt = std::max(*figure.high - figure.value, figure.value - *figure.low);
                // One figure stands however large the doubt; the range beside it says the rest.
                const bool one = lastUnit(figure.text) * 10.0 > std::abs(figure.value);
                EXPECT_TRUE(one || lastUnit(figure.text) * 30.0 >= doubt * 0.999)
                    << sheet().key.toStdString() << ' ' << figure.key.toStdString() << ": " << figure.text.toStdString()
                    << " with a doubt of " << doubt;
                const bool roundNumber = std::abs(figure.value) >= 1000.0; // its noughts are no figures
                EXPECT_TRUE(roundNumber || figuresIn(figure.text) <= 3)
                    << sheet().key.toStdString() << ' ' << figure.key.toStdString() << ": "
                    << figure.text.toStdString();
            }
        }
    }
    EXPECT_GT(checked, 0) << sheet().key.toStdString();
}

/// The same figure typed with one digit and with three: the coarse one never gives the finer result.
TEST_P(EachSheet, CoarseTypingGivesNoFinerResult)
{
    for (const sheets::Input& input : sheet().inputs) {
        const sheets::Values example = exampleValues(sheet());
        if (input.kind != InputKind::Number || input.exact || input.usualError > 0.0 || !example.contains(input.key)) {
            continue;
        }
        const double number = example.value(input.key).number;
        const auto answerTo = [&](double step) {
            sheets::Values values = example;
            values[input.key].number = number;
            values[input.key].step = step;
            return sheets::evaluate(sheet(), values);
        };
        const auto fine = answerTo(0.001 * std::abs(number));
        const auto coarse = answerTo(0.1 * std::abs(number));
        ASSERT_TRUE(fine && coarse) << sheet().key.toStdString() << ' ' << input.key.toStdString();
        for (const sheets::Figure& figure : coarse->results) {
            const sheets::Figure* finer = fine->find(figure.key);
            if (figure.isWords || finer == nullptr || figure.value == 0.0 ||
                std::abs(figure.value - std::round(figure.value)) < 1e-9) {
                continue;
            }
            EXPECT_GE(lastUnit(figure.text) * 1.001, lastUnit(finer->text))
                << sheet().key.toStdString() << ' ' << figure.key.toStdString() << ": " << figure.text.toStdString()
                << " against " << finer->text.toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(All, EachSheet, testing::Range(std::size_t{0}, sheets::sheets().size()),
                         [](const testing::TestParamInfo<std::size_t>& info) {
                             return sheets::sheets()[info.param].key.toStdString();
                         });

/// What the command line prints and the bench marks: the blank, what is wrong, how to mend it.
TEST(Refusals, NameTheBlankAtFault)
{
    const std::vector<std::pair<const char*, const char*>> lines{{"co2 66 4", "ph: "},
                                                                 {"co2 6.6 0", "kh: "},
                                                                 {"co2 6.6", "kh: "},
                                                                 {"co2 ph=acid", "ph: "},
                                                                 {"target 80 4 5", "target: "},
                                                                 {"blend 14 0 16", "tgh: "},
                                                                 {"blend 14 0 6 tkh=4", "kh: "},
                                                                 {"dose 10 50 now=20", "target: "},
                                                                 {"raise gh 4 6 100 khco3", "salt: "},
                                                                 {"accumulate 15 0", "share: "},
                                                                 {"cylinder 2100 2121 7 1600", "later: "},
                                                                 {"cylinder 2100 2000 7 2050", "empty: "},
                                                                 {"volume 60 30 36 bed=200", "bed: "},
                                                                 {"volume 60 30 36 shape=bow bow=40", "bow: "},
                                                                 {"heater 20 25 60 30 36 60", "room: "},
                                                                 {"light 5 8 target=20", "target: "},
                                                                 {"co2 6.6 4 phh=7", "phh: "}};
    for (const auto& [line, beginning] : lines) {
        EXPECT_EQ(refusal(line).rfind(beginning, 0), 0u) << line << ": " << refusal(line);
    }
}

} // namespace littoral::test
