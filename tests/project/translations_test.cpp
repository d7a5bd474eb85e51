// SPDX-License-Identifier: GPL-3.0-or-later
// The files of resources/translations: nothing unfinished, nothing lost on the way into the other language.
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

namespace {

using namespace Qt::StringLiterals;

struct Message
{
    QString context;
    QString source;
    QStringList forms; ///< one, or one for each plural form
    bool plural = false;
    bool unfinished = false;
};

QString pathOf(const QString& tag)
{
    return QStringLiteral(LITTORAL_SOURCE_DIR) + u"/resources/translations/littoral_%1.ts"_s.arg(tag);
}

void readTranslation(QXmlStreamReader& xml, Message& message)
{
    message.unfinished = xml.attributes().hasAttribute(u"type"_s);
    QString text;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isEndElement() && xml.name() == u"translation"_s) {
            break;
        }
        if (xml.isStartElement() && xml.name() == u"numerusform"_s) {
            message.forms << xml.readElementText();
        } else if (xml.isCharacters()) {
            text += xml.text();
        }
    }
    if (!message.plural) {
        message.forms = {text};
    }
}

std::vector<Message> messages(const QString& tag)
{
    QFile file(pathOf(tag));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
    QXmlStreamReader xml(&file);
    std::vector<Message> all;
    QString context;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement()) {
            continue;
        }
        if (xml.name() == u"name"_s) {
            context = xml.readElementText();
        } else if (xml.name() == u"message"_s) {
            all.push_back({context, {}, {}, xml.attributes().value(u"numerus"_s) == u"yes"_s, false});
        } else if (xml.name() == u"source"_s) {
            all.back().source = xml.readElementText();
        } else if (xml.name() == u"translation"_s) {
            readTranslation(xml, all.back());
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return all;
}

/// %1, %n, {key}: all of a kind, each as often as it stands there once.
QSet<QString> placeholders(const QString& text)
{
    static const QRegularExpression pattern(u"%(?:L?\\d|n)|\\{[a-z0-9-]+\\}"_s);
    QSet<QString> found;
    for (auto it = pattern.globalMatch(text); it.hasNext();) {
        found.insert(it.next().captured());
    }
    return found;
}

/// '&' that underlines a letter, not one that stands for itself.
qsizetype mnemonics(const QString& text)
{
    static const QRegularExpression pattern(u"&[^\\s&]"_s);
    return QString(text).remove(u"&&"_s).count(pattern);
}

std::string about(const Message& message)
{
    return u"%1: \"%2\" -> \"%3\""_s.arg(message.context, message.source, message.forms.join(u"\" / \""_s))
        .toStdString();
}

} // namespace

TEST(Translations, GermanIsComplete)
{
    const std::vector<Message> all = messages(u"de"_s);
    EXPECT_GT(all.size(), 3000U);
    for (const Message& message : all) {
        EXPECT_FALSE(message.unfinished) << about(message)
                                         << "\nresources/translations/update --list says what is missing";
        EXPECT_EQ(message.forms.size(), message.plural ? 2 : 1) << about(message);
        for (const QString& form : message.forms) {
            EXPECT_FALSE(form.trimmed().isEmpty() && !message.source.trimmed().isEmpty()) << about(message);
        }
    }
}

TEST(Translations, NothingIsLostOnTheWay)
{
    for (const Message& message : messages(u"de"_s)) {
        for (const QString& form : message.forms) {
            EXPECT_EQ(placeholders(form), placeholders(message.source)) << about(message);
            EXPECT_EQ(mnemonics(form), mnemonics(message.source)) << about(message);
            EXPECT_EQ(form.count(u'\n'), message.source.count(u'\n')) << about(message);
            EXPECT_EQ(form.startsWith(u' '), message.source.startsWith(u' ')) << about(message);
            EXPECT_EQ(form.endsWith(u' '), message.source.endsWith(u' ')) << about(message);
            EXPECT_FALSE(form.contains(u'!')) << about(message);
        }
    }
}

/// English is the source; only its plurals need forms, and every one of them has both.
TEST(Translations, EnglishPluralsAreSpelledOut)
{
    std::set<QString> german;
    for (const Message& message : messages(u"de"_s)) {
        if (message.plural) {
            german.insert(message.context + u'|' + message.source);
        }
    }
    std::set<QString> english;
    for (const Message& message : messages(u"en"_s)) {
        ASSERT_TRUE(message.plural) << about(message);
        english.insert(message.context + u'|' + message.source);
        ASSERT_EQ(message.forms.size(), 2) << about(message);
        EXPECT_FALSE(message.unfinished) << about(message);
        for (const QString& form : message.forms) {
            EXPECT_TRUE(form.contains(u"%n"_s) && !form.contains(u"(s)"_s)) << about(message);
            EXPECT_EQ(placeholders(form), placeholders(message.source)) << about(message);
        }
        EXPECT_NE(message.forms[0], message.forms[1]) << about(message);
    }
    EXPECT_EQ(english, german);
    EXPECT_FALSE(english.empty());
}

/// A word for one thing: what the vocabulary calls a thing is called the same throughout.
TEST(Translations, PagesHaveOneName)
{
    QMap<QString, QSet<QString>> names;
    for (const Message& message : messages(u"de"_s)) {
        QString source = message.source;
        source.remove(u'&');
        for (const QString& page :
             {u"Lanes"_s, u"Trends"_s, u"Cycle"_s, u"History"_s, u"Rounds"_s, u"Stock"_s, u"Bench"_s, u"Guide"_s}) {
            if (source == page) {
                names[page].insert(QString(message.forms.front()).remove(u'&'));
            }
        }
    }
    EXPECT_EQ(names.size(), 8);
    for (auto it = names.begin(); it != names.end(); ++it) {
        EXPECT_EQ(it->size(), 1) << it.key().toStdString() << ": "
                                 << QStringList(it->begin(), it->end()).join(u", "_s).toStdString();
    }
}
