// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing names a medicine or an illness without saying who decides; everything names its source.
#include "core/facts/fact_book.h"
#include "core/wording/finding_sentences.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

using namespace littoral;
using namespace Qt::StringLiterals;

TEST(Deferral, ActionsThatNameAMedicineDeferAndCarryTheCaution)
{
    static const QRegularExpression medicine(
        u"\\b(medic|antibiot|wormer|formalin|malachite|praziquantel|salt dip|salt bath|copper is|treat in|be treated)"_s,
        QRegularExpression::CaseInsensitiveOption);
    int named = 0;
    for (const facts::Condition& condition : facts::builtInFacts().conditions) {
        const QString all = (condition.actions + QStringList{condition.check}).join(u' ');
        if (medicine.match(all).hasMatch()) {
            ++named;
            EXPECT_FALSE(wording::healthDeferral(condition).isEmpty()) << condition.id.toStdString();
            EXPECT_TRUE(condition.cautions.contains(u"C-MED"_s))
                << condition.id.toStdString() << ": " << all.toStdString();
        }
    }
    EXPECT_GE(named, 4) << "the words looked for do occur";
}

TEST(Deferral, WhateverAilsAnimalsDefersToAProfessional)
{
    for (const facts::Condition& condition : facts::builtInFacts().conditions) {
        const QString deferral = wording::healthDeferral(condition);
        const bool animal = QStringList{u"animal"_s, u"disease"_s, u"shrimp"_s, u"snail"_s}.contains(condition.kind);
        EXPECT_TRUE(!animal || deferral.contains(u"veterinarian"_s)) << condition.id.toStdString();
        EXPECT_TRUE(condition.kind != u"disease"_s || condition.cautions.contains(u"C-MED"_s))
            << condition.id.toStdString();
        EXPECT_FALSE(condition.source.isEmpty()) << condition.id.toStdString();
        EXPECT_FALSE(condition.supporting.empty()) << condition.id.toStdString();
    }
    facts::Condition own;
    own.kind = u"algae"_s;
    EXPECT_TRUE(wording::healthDeferral(own).isEmpty());
    own.cautions << u"C-MED"_s;
    EXPECT_FALSE(wording::healthDeferral(own).isEmpty()) << "the keeper's own conditions as well";
}
