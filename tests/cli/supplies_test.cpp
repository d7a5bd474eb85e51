// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace littoral::test {

using namespace Qt::StringLiterals;

TEST_F(Ctl, suppliesSayWhatIsLeftAndForHowLong)
{
    const QString store = storeWithTank();
    expect(0, {u"import"_s, store, write(u"supplies.json"_s, R"({"format": "littoral-supplies", "version": 1,
        "supplies": [
          {"name": "Conditioner", "kind": "conditioner", "amount": 250, "unit": "mL", "opened": "2026-11-01", "per_litre": 0.1},
          {"name": "Old salt", "kind": "salt", "amount": 1, "unit": "kg", "expires": "2026-11-01"}]})")});
    const QJsonObject json = QJsonDocument::fromJson(expect(0, {u"supplies"_s, store, u"--json"_s})).object();
    EXPECT_EQ(json.value(u"on"_s).toString(), u"2026-11-25"_s);
    QHash<QString, QJsonObject> byName;
    for (const QJsonValue& value : json.value(u"supplies"_s).toArray()) {
        byName.insert(value[u"name"_s].toString(), value.toObject());
        EXPECT_FALSE(value[u"why"_s].toString().isEmpty());
    }
    const QJsonObject conditioner = byName.value(u"Conditioner"_s);
    EXPECT_EQ(conditioner.value(u"basis"_s).toString(), u"doses"_s);
    EXPECT_LT(conditioner.value(u"remaining"_s).toDouble(), 250.0);
    EXPECT_GT(conditioner.value(u"per_day"_s).toDouble(), 0.0);
    EXPECT_EQ(byName.value(u"Old salt"_s).value(u"state"_s).toString(), u"expired"_s);
    EXPECT_EQ(byName.value(u"Old salt"_s).value(u"remaining"_s).toDouble(), 1.0);

    const auto rows = cells(expect(0, {u"supplies"_s, store, u"--csv"_s}));
    EXPECT_EQ(rows[0].join(u','),
              u"name,kind,state,basis,remaining,unit,per_day,days_left,runs_out,expires,wanted_by,why"_s);
    EXPECT_EQ(rows.size(), static_cast<std::size_t>(json.value(u"supplies"_s).toArray().size()) + 1);
    const QByteArray text = expect(0, {u"supplies"_s, store});
    EXPECT_TRUE(text.contains("Old salt")) << text.toStdString();
    EXPECT_TRUE(text.contains("past its date")) << text.toStdString();
}

TEST_F(Ctl, suppliesOfAnEmptyStoreSaySo)
{
    const QString store = path(u"empty.littoral"_s);
    expect(0, {u"init"_s, store});
    EXPECT_TRUE(expect(0, {u"supplies"_s, store}).contains("Nothing is kept in stock"));
    expect(2, {u"supplies"_s, store, u"--on"_s, u"someday"_s});
}

} // namespace littoral::test
