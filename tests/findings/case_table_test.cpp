// SPDX-License-Identifier: GPL-3.0-or-later
// How often the engine puts first, or among the first three, what the practice of the trade would. The cases are
// invented and were written by hand from the practice before the engine was run on them. They share their origin with
// the facts the engine reads, so the plain table shows that engine and facts agree with the practice, not how well
// either does on a real tank; the two further tables take looks away and put wrong ones in. The floors were stated
// after measuring and are there to show a later change for the worse.
#include "tests/findings/invented_case.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <gtest/gtest.h>
#include <iostream>
#include <map>

using namespace littoral;
using namespace Qt::StringLiterals;

namespace {

struct Outcome
{
    int place = 0; ///< 1 first; 0 not named at all
    QString first;
    findings::Support support = findings::Support::Weak;
};

Outcome judged(const InventedCase& given)
{
    const findings::Report report = findings::findings(facts::builtInFacts(), given.row, given.record(), given.now);
    Outcome outcome;
    for (std::size_t i = 0; i < report.ranked.size(); ++i) {
        if (report.ranked[i].condition->id == given.intended) {
            outcome.place = static_cast<int>(i) + 1;
            outcome.support = report.ranked[i].support;
        }
    }
    outcome.first = report.ranked.empty() ? u"nothing"_s : report.ranked.front().condition->id;
    return outcome;
}

class Table
{
public:
    void add(const InventedCase& given, bool printed)
    {
        const Outcome outcome = judged(given);
        ++m_total;
        m_first += outcome.place == 1 ? 1 : 0;
        m_three += outcome.place >= 1 && outcome.place <= 3 ? 1 : 0;
        m_backed += outcome.support == findings::Support::Strong || outcome.support == findings::Support::Fair ? 1 : 0;
        if (outcome.place != 1) {
            ++m_confused[given.intended + u" taken for "_s + outcome.first];
        }
        if (printed) {
            std::cout << given.id.leftJustified(6).toStdString() << given.intended.leftJustified(21).toStdString()
                      << QString::number(outcome.place).leftJustified(7).toStdString()
                      << outcome.first.leftJustified(21).toStdString()
                      << findings::supportCode(outcome.support).toStdString() << '\n';
        }
    }

    void print(const char* title, int leastShown) const
    {
        std::cout << title << ": first " << m_first << " of " << m_total << ", among the first three " << m_three
                  << ", support fair or strong " << m_backed << '\n';
        for (const auto& [pair, count] : m_confused) {
            if (count >= leastShown) {
                std::cout << "  " << pair.toStdString() << ": " << count << '\n';
            }
        }
    }

    [[nodiscard]] double firstShare() const { return static_cast<double>(m_first) / m_total; }
    [[nodiscard]] double threeShare() const { return static_cast<double>(m_three) / m_total; }
    [[nodiscard]] double backedShare() const { return static_cast<double>(m_backed) / m_total; }

private:
    int m_total = 0;
    int m_first = 0;
    int m_three = 0;
    int m_backed = 0;
    std::map<QString, int> m_confused;
};

QJsonArray caseObjects()
{
    QFile file(QStringLiteral(LITTORAL_SOURCE_DIR "/tests/data/findings/cases.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QJsonDocument::fromJson(file.readAll())[u"cases"_s].toArray();
}

QJsonObject withLooks(QJsonObject object, const QJsonArray& looks)
{
    object[u"seen"_s] = looks;
    return object;
}

/// Every other value that the look could have been given; for a number none.
QStringList wrongAnswers(const QString& look)
{
    const facts::EvidenceKey* key = facts::builtInFacts().key(look.section(u'=', 0, 0));
    QStringList wrong;
    if (key != nullptr) {
        for (const auto& [code, text] : key->values) {
            if (code != look.section(u'=', 1)) {
                wrong << key->key + u'=' + code;
            }
        }
    }
    return wrong;
}

} // namespace

TEST(CaseTable, PlainAndHardCases)
{
    Table plain;
    Table hard;
    std::cout << "case  intended             place  came first           support\n";
    for (const QJsonValue& value : caseObjects()) {
        const InventedCase given = inventedCase(value.toObject());
        ASSERT_NE(facts::builtInFacts().condition(given.intended), nullptr) << given.intended.toStdString();
        (value[u"hard"_s].toBool() ? hard : plain).add(given, true);
    }
    plain.print("plain cases", 1);
    hard.print("hard cases", 1);
    EXPECT_GE(caseObjects().size(), 60);
    EXPECT_GE(plain.firstShare(), 0.97);
    EXPECT_GE(plain.threeShare(), 1.0);
    EXPECT_GE(plain.backedShare(), 0.94);
    EXPECT_GE(hard.firstShare(), 0.80);
    EXPECT_GE(hard.threeShare(), 0.97);
}

TEST(CaseTable, OneLookTakenAway)
{
    Table table;
    for (const QJsonValue& value : caseObjects()) {
        const QJsonArray looks = value[u"seen"_s].toArray();
        for (qsizetype i = 0; i < looks.size() && looks.size() > 1; ++i) {
            QJsonArray fewer = looks;
            fewer.removeAt(i);
            table.add(inventedCase(withLooks(value.toObject(), fewer)), false);
        }
    }
    table.print("one look taken away", 2);
    EXPECT_GE(table.firstShare(), 0.84);
    EXPECT_GE(table.threeShare(), 0.94);
}

TEST(CaseTable, OneLookWrong)
{
    Table table;
    for (const QJsonValue& value : caseObjects()) {
        const QJsonArray looks = value[u"seen"_s].toArray();
        for (qsizetype i = 0; i < looks.size() && looks.size() > 1; ++i) {
            for (const QString& wrong : wrongAnswers(looks[i].toString())) {
                QJsonArray other = looks;
                other[i] = wrong;
                table.add(inventedCase(withLooks(value.toObject(), other)), false);
            }
        }
    }
    table.print("one look wrong", 6);
    EXPECT_GE(table.firstShare(), 0.71);
    EXPECT_GE(table.threeShare(), 0.88);
}
