// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <QTranslator>
#include <gtest/gtest.h>

int main(int argc, char** argv)
{
    ::testing::InitGoogleTest(&argc, argv);
    QCoreApplication app(argc, argv);
    // Plural forms of English, where the code under test brings them.
    QTranslator plurals;
    if (plurals.load(QStringLiteral(":/littoral/translations/littoral_en.qm"))) {
        QCoreApplication::installTranslator(&plurals);
    }
    return RUN_ALL_TESTS();
}
