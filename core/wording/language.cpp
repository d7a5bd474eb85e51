// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/language.h"

#include "core/record/shown.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLibraryInfo>
#include <QLocale>
#include <algorithm>

namespace littoral::wording {

using namespace Qt::StringLiterals;

namespace {

struct FactFile
{
    const char* name;
    const char* context;
};
constexpr FactFile kFactFiles[]{{"task_templates", "Templates"},
                                {"gates", "Gates"},
                                {"evidence", "Facts"},
                                {"conditions", "Facts"},
                                {"species", "Facts"},
                                {"cautions", "Facts"},
                                {"tasks", "Facts"}};

QByteArray keyOf(const char* context, const QByteArray& source)
{
    return QByteArray(context) + '\n' + source;
}

QJsonValue fileAt(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QJsonValue(QJsonDocument::fromJson(file.readAll()).object()) : QJsonValue();
}

/// What a record is known by in its list.
QString idOf(const QJsonValue& record)
{
    const QJsonObject object = record.toObject();
    return object.contains("id"_L1) ? object.value("id"_L1).toString() : object.value("key"_L1).toString();
}

/// Pairs the texts of two files of the same shape; lists of records go by id, other lists by place.
void pair(const QJsonValue& english, const QJsonValue& other, const char* context, QHash<QByteArray, QString>& texts)
{
    if (english.isString() && other.isString()) {
        texts.insert(keyOf(context, english.toString().toUtf8()), other.toString());
    } else if (english.isObject()) {
        const QJsonObject from = english.toObject();
        const QJsonObject to = other.toObject();
        for (auto it = to.begin(); it != to.end(); ++it) {
            if (it.key() != "id"_L1 && it.key() != "key"_L1) {
                pair(from.value(it.key()), it.value(), context, texts);
            }
        }
    } else if (english.isArray()) {
        const QJsonArray from = english.toArray();
        const QJsonArray to = other.toArray();
        for (qsizetype place = 0; place < to.size(); ++place) {
            const QString id = idOf(to[place]);
            const auto found = id.isEmpty() ? from.begin() + std::min(place, from.size())
                                            : std::find_if(from.begin(), from.end(),
                                                           [&](const QJsonValue& one) { return idOf(one) == id; });
            if (found != from.end()) {
                pair(*found, to[place], context, texts);
            }
        }
    }
}

QChar accented(QChar c)
{
    static const QString plain = u"aceinouyACEINOUY"_s;
    static const QString marked = u"åçéîñöûýÅÇÉÎÑÖÛÝ"_s;
    const qsizetype at = plain.indexOf(c);
    return at < 0 ? c : marked[at];
}

std::unique_ptr<QTranslator> compiled(const QString& tag)
{
    auto made = std::make_unique<QTranslator>();
    return made->load(u":/littoral/translations/littoral_%1.qm"_s.arg(tag)) ? std::move(made) : nullptr;
}

} // namespace

const std::vector<Language>& languages()
{
    static const std::vector<Language> all{{u"en"_s, u"English"_s}, {u"de"_s, u"Deutsch"_s}};
    return all;
}

QString systemLanguage()
{
    for (const QString& wanted : QLocale::system().uiLanguages()) {
        const QString tag = wanted.section(u'-', 0, 0).toLower();
        if (std::ranges::find(languages(), tag, &Language::tag) != languages().end()) {
            return tag;
        }
    }
    return languages().front().tag;
}

FactTranslator::FactTranslator(const QString& tag)
{
    for (const FactFile& file : kFactFiles) {
        const QString name = QLatin1String(file.name);
        pair(fileAt(u":/littoral/facts/%1.json"_s.arg(name)), fileAt(u":/littoral/facts/%1/%2.json"_s.arg(tag, name)),
             file.context, m_texts);
    }
}

QString FactTranslator::translate(const char* context, const char* source, const char*, int) const
{
    return m_texts.value(keyOf(context, source));
}

QString pseudoText(const QString& text)
{
    QString made;
    made.reserve(text.size() * 3 / 2 + 2);
    bool inMarkup = false;
    qsizetype letters = 0;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        inMarkup = c == u'<' ? text.indexOf(u'>', i) > 0 : inMarkup;
        const bool placeholder = i > 0 && text[i - 1] == u'%';
        made += inMarkup || placeholder ? c : accented(c);
        inMarkup = inMarkup && c != u'>';
        letters += c.isLetter() ? 1 : 0;
    }
    const QString more(letters * 2 / 5, u'~');
    return letters == 0 ? made : u'[' + made + more + u']';
}

QString PseudoTranslator::translate(const char*, const char* source, const char*, int n) const
{
    QString text = pseudoText(QString::fromUtf8(source));
    return n < 0 ? text : text.replace(u"%n"_s, QString::number(n));
}

Translation::Translation() = default;

Translation::~Translation()
{
    clear();
}

void Translation::clear()
{
    for (const std::unique_ptr<QTranslator>& one : m_installed) {
        QCoreApplication::removeTranslator(one.get());
    }
    m_installed.clear();
}

void Translation::use(const QString& tag)
{
    clear();
    std::vector<std::unique_ptr<QTranslator>> wanted;
    if (tag == u"pseudo"_s) {
        m_tag = tag;
        wanted.push_back(std::make_unique<PseudoTranslator>());
    } else {
        const auto known = std::ranges::find(languages(), tag, &Language::tag);
        m_tag = known == languages().end() ? languages().front().tag : known->tag;
        auto toolkit = std::make_unique<QTranslator>();
        if (m_tag != u"en"_s &&
            toolkit->load(u"qtbase_"_s + m_tag, QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
            wanted.push_back(std::move(toolkit));
        }
        wanted.push_back(std::make_unique<FactTranslator>(m_tag));
        wanted.push_back(compiled(m_tag));
    }
    for (std::unique_ptr<QTranslator>& one : wanted) {
        if (one != nullptr) {
            QCoreApplication::installTranslator(one.get());
            m_installed.push_back(std::move(one));
        }
    }
    record::showLanguage(m_tag);
}

QLocale localeFor(const QString& tag)
{
    const QLocale system = QLocale::system();
    const QLocale plain(tag == u"de"_s ? QLocale(QLocale::German, QLocale::Germany)
                                       : QLocale(QLocale::English, QLocale::UnitedKingdom));
    return system.language() == plain.language() ? system : plain;
}

} // namespace littoral::wording
