// SPDX-License-Identifier: GPL-3.0-or-later
// People's words go through tr() or translate(): a literal handed straight to what shows text is found here.
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QStringList>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;

/// What shows its argument to people, or speaks it.
const QRegularExpression kShown(
    u"\\b(?:setText|setToolTip|setStatusTip|setWhatsThis|setPlaceholderText|setAccessibleName|"
    u"setAccessibleDescription|setWindowTitle|setTitle|setHead|addAction|addMenu|addItem|addTab|setSuffix|setPrefix|"
    u"setHeaderData|setHorizontalHeaderLabels|announce|showNote|addText|QPushButton|QLabel|QCheckBox|"
    u"QRadioButton|QGroupBox|Text)\\s*\\((?:[^()\"]*,)?\\s*(?:u|QStringLiteral\\(\\s*u?|QLatin1String\\(|u8)?\"((?:[^\"\\\\]|\\\\.)*)\""_s);

/// Two letters in a row are a word; signs, units and single keys are not.
bool isWords(const QString& text)
{
    static const QRegularExpression escape(u"\\\\[nt\"\\\\]|<[^>]*>"_s); // and markup
    static const QRegularExpression word(u"[\\p{L}]{2,}"_s);
    return QString(text).remove(escape).contains(word);
}

QStringList suspicious(const QString& folder)
{
    QStringList found;
    const QString root = QStringLiteral(LITTORAL_SOURCE_DIR);
    QDirIterator files(root + u'/' + folder, {u"*.h"_s, u"*.cpp"_s}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly | QIODevice::Text));
        const QString text = QString::fromUtf8(file.readAll());
        for (auto it = kShown.globalMatch(text); it.hasNext();) {
            const auto match = it.next();
            if (isWords(match.captured(1)) && !match.captured().contains(u"tr("_s)) {
                found << u"%1:%2: \"%3\""_s.arg(file.fileName().mid(root.size() + 1))
                             .arg(text.left(match.capturedStart()).count(u'\n') + 1)
                             .arg(match.captured(1));
            }
        }
    }
    return found;
}

} // namespace

TEST(Literals, WhatPeopleReadIsTranslatable)
{
    for (const QString& folder : {u"ui"_s, u"core"_s, u"app"_s}) {
        const QStringList found = suspicious(folder);
        EXPECT_TRUE(found.isEmpty()) << found.join(u'\n').toStdString();
    }
}

TEST(Literals, TheSearchFindsWhatItLooksFor)
{
    EXPECT_TRUE(kShown.match(u"label->setText(u\"Water change\"_s);"_s).hasMatch());
    EXPECT_TRUE(kShown.match(u"new Text(theme, TextStyle::Body, QStringLiteral(\"Water change\"))"_s).hasMatch());
    EXPECT_TRUE(kShown.match(u"menu->addAction(QLatin1String(\"Quit\"))"_s).hasMatch());
    EXPECT_FALSE(kShown.match(u"label->setText(tr(\"Water change\"));"_s).hasMatch());
    EXPECT_TRUE(isWords(u"Water"_s));
    EXPECT_FALSE(isWords(u"×"_s));
    EXPECT_FALSE(isWords(u"+"_s));
}
