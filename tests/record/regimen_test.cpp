// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/regimen.h"

#include <gtest/gtest.h>

namespace littoral::record {
namespace {

using namespace Qt::StringLiterals;

DoseRegimen stock(const QString& salt, double grams, double millilitres)
{
    DoseRegimen regimen;
    regimen.name = u"stock"_s;
    regimen.form = DoseForm::Stock;
    regimen.salt = salt;
    regimen.stock_g = grams;
    regimen.stock_mL = millilitres;
    regimen.amount = 1.0;
    regimen.from = QDate(2026, 11, 25);
    return regimen;
}

TEST(Regimen, ContentsFollowFromTheFormula)
{
    // Potassium nitrate 101.10 g/mol holds 62.00 of nitrate and 39.10 of potassium (IUPAC abridged atomic weights): a
    // gram brings 613.3 mg NO3 and 386.7 mg K.
    DoseRegimen salt = stock(u"kno3"_s, 0.0, 0.0);
    salt.form = DoseForm::Salt;
    EXPECT_NEAR(milligramsPerUnit(salt, u"no3"_s), 613.3, 0.1);
    EXPECT_NEAR(milligramsPerUnit(salt, u"k"_s), 386.7, 0.1);
    EXPECT_EQ(milligramsPerUnit(salt, u"po4"_s), 0.0);
    EXPECT_EQ(salt.unit(), u"g"_s);
    const DoseRegimen dissolved = stock(u"kno3"_s, 50.0, 500.0); // a tenth of a gram in a mL
    EXPECT_NEAR(milligramsPerUnit(dissolved, u"no3"_s), 61.33, 0.01);
    EXPECT_EQ(dissolved.unit(), u"mL"_s);
    EXPECT_TRUE(bringsNitrogenOrPhosphorus(dissolved));
    EXPECT_FALSE(bringsNitrogenOrPhosphorus(stock(u"k2so4"_s, 50.0, 500.0)));
}

TEST(Regimen, UreaCountsAsNitrogenAndNotAsNitrate)
{
    const DoseRegimen urea = stock(u"urea"_s, 10.0, 500.0);
    EXPECT_EQ(milligramsPerUnit(urea, u"no3"_s), 0.0);
    EXPECT_TRUE(bringsNitrogenOrPhosphorus(urea));
}

TEST(Regimen, SaysWhatIsMissing)
{
    DoseRegimen regimen = stock(u"kno3"_s, 50.0, 500.0);
    EXPECT_TRUE(regimenProblem(regimen).isEmpty());
    const auto broken = [&](auto change) {
        DoseRegimen copy = regimen;
        change(copy);
        return !regimenProblem(copy).isEmpty();
    };
    EXPECT_TRUE(broken([](DoseRegimen& r) { r.name = u" "_s; }));
    EXPECT_TRUE(broken([](DoseRegimen& r) { r.amount = 0.0; }));
    EXPECT_TRUE(broken([](DoseRegimen& r) { r.stock_mL = 0.0; }));
    EXPECT_TRUE(broken([](DoseRegimen& r) { r.salt = u"nothing"_s; }));
    EXPECT_TRUE(broken([](DoseRegimen& r) { r.everyDays = 0; }));
    EXPECT_TRUE(broken([](DoseRegimen& r) { r.from = {}; }));
    EXPECT_TRUE(broken([](DoseRegimen& r) { r.until = r.from.addDays(-1); }));
    EXPECT_TRUE(broken([](DoseRegimen& r) { r.form = DoseForm::Fertiliser; })) << "nothing on its label";
}

} // namespace
} // namespace littoral::record
