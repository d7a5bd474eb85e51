// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cli/ctl_runner.h"

#include <QFile>

namespace littoral::test {

using namespace Qt::StringLiterals;

using CtlLanguage = Ctl;

TEST_F(CtlLanguage, EnglishUnlessAskedFor)
{
    const QString store = storeWithTank();
    const QByteArray english = expect(0, {u"due"_s, store});
    const QByteArray german = expect(0, {u"due"_s, store, u"--language"_s, u"de"_s});
    EXPECT_TRUE(german.contains("Wasserwechsel")) << german.toStdString();
    EXPECT_FALSE(english.contains("Wasserwechsel"));
    EXPECT_EQ(expect(0, {u"--language=de"_s, u"due"_s, store}), german) << "anywhere on the line";
    EXPECT_TRUE(expect(0, {u"--language"_s, u"de"_s, u"--help"_s}).contains("Aufruf: littoralctl"));
}

TEST_F(CtlLanguage, DataKeepTheirForm)
{
    const QString store = storeWithTank();
    EXPECT_EQ(expect(0, {u"tank"_s, u"list"_s, store, u"--csv"_s, u"--language"_s, u"de"_s}),
              expect(0, {u"tank"_s, u"list"_s, store, u"--csv"_s}));
    EXPECT_EQ(expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s, u"--json"_s, u"--language"_s, u"de"_s}),
              expect(0, {u"tank"_s, u"show"_s, store, u"Heron Reach"_s, u"--json"_s}));
}

TEST_F(CtlLanguage, AnUnknownLanguageIsSaidAndNothingRuns)
{
    const QByteArray said = expect(2, {u"init"_s, path(u"new.littoral"_s), u"--language"_s, u"xx"_s});
    EXPECT_TRUE(said.contains("xx") && said.contains("de")) << said.toStdString();
    EXPECT_FALSE(QFile::exists(path(u"new.littoral"_s)));
    EXPECT_FALSE(expect(2, {u"due"_s, u"--language"_s}).isEmpty());
}

/// Files in English are read whatever is spoken.
TEST_F(CtlLanguage, ImportUnderstandsEnglishNamesInGerman)
{
    const QString store = storeWithTank();
    const QString csv =
        write(u"r.csv"_s, "tank,date,parameter,value,unit\nHeron Reach,2026-11-24,Nitrate,10,mg/L NO3\n");
    const QByteArray said = expect(0, {u"import"_s, store, csv, u"--language"_s, u"de"_s});
    EXPECT_TRUE(said.contains("Messwerte 1")) << said.toStdString();
}

} // namespace littoral::test
