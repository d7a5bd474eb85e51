// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/object_reader.h"

#include "core/exchange/field_reader.h"
#include "core/exchange/name_book.h"

#include <QCoreApplication>

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Exchange", text);
}

} // namespace

ObjectReader::ObjectReader(QJsonObject object, QString fileName, QString path, Problems& problems)
    : m_object(std::move(object))
    , m_fileName(std::move(fileName))
    , m_path(std::move(path))
    , m_problems(&problems)
{
}

QString ObjectReader::placeOf(const QString& key) const
{
    const QString path = m_path.isEmpty() ? key : key.isEmpty() ? m_path : m_path + u'.' + key;
    return words("%1, %2").arg(m_fileName, path);
}

void ObjectReader::complain(const QString& key, const QString& sentence)
{
    m_problems->add(placeOf(key), sentence);
}

void ObjectReader::need(const QString& key)
{
    ask(key);
    complain(key, words("This is needed and is missing."));
}

void ObjectReader::complainChoice(const QString& key, const QString& word, const QStringList& all)
{
    complain(key, words("\"%1\" is not one of %2.").arg(word, all.join(u", "_s)));
}

QJsonValue ObjectReader::value(const QString& key)
{
    ask(key);
    const QJsonValue found = m_object.value(key);
    return found.isNull() ? QJsonValue(QJsonValue::Undefined) : found;
}

QString ObjectReader::text(const QString& key)
{
    const QJsonValue found = value(key);
    if (!found.isUndefined() && !found.isString()) {
        complain(key, words("A text in quotation marks is expected here."));
    }
    return found.toString().trimmed();
}

std::optional<double> ObjectReader::number(const QString& key, double lowest, double highest)
{
    const QJsonValue found = value(key);
    if (found.isUndefined()) {
        return std::nullopt;
    }
    if (!found.isDouble()) {
        complain(key, words("A number is expected here."));
        return std::nullopt;
    }
    const double number = found.toDouble();
    if (!(number >= lowest && number <= highest)) {
        complain(key,
                 words("%1 is outside %2 to %3.").arg(numberText(number), numberText(lowest), numberText(highest)));
        return std::nullopt;
    }
    return number;
}

std::optional<bool> ObjectReader::flag(const QString& key)
{
    const QJsonValue found = value(key);
    if (!found.isUndefined() && !found.isBool()) {
        complain(key, words("This is either true or false."));
    }
    return found.isBool() ? std::optional(found.toBool()) : std::nullopt;
}

QJsonArray ObjectReader::array(const QString& key)
{
    const QJsonValue found = value(key);
    if (!found.isUndefined() && !found.isArray()) {
        complain(key, words("A list in square brackets is expected here."));
    }
    return found.toArray();
}

std::optional<ObjectReader> ObjectReader::object(const QString& key)
{
    const QJsonValue found = value(key);
    if (found.isUndefined()) {
        return std::nullopt;
    }
    if (!found.isObject()) {
        complain(key, words("An object in braces is expected here."));
        return std::nullopt;
    }
    return ObjectReader(found.toObject(), m_fileName, m_path.isEmpty() ? key : m_path + u'.' + key, *m_problems);
}

std::vector<ObjectReader> ObjectReader::objects(const QString& key)
{
    std::vector<ObjectReader> all;
    const QString base = m_path.isEmpty() ? key : m_path + u'.' + key;
    const QJsonArray items = array(key);
    for (qsizetype i = 0; i < items.size(); ++i) {
        const QString path = base + u'[' + QString::number(i) + u']';
        if (items[i].isObject()) {
            all.emplace_back(items[i].toObject(), m_fileName, path, *m_problems);
        } else {
            m_problems->add(words("%1, %2").arg(m_fileName, path), words("An object in braces is expected here."));
        }
    }
    return all;
}

void ObjectReader::refuseOthers()
{
    QStringList known(m_asked.cbegin(), m_asked.cend());
    known.sort();
    const QStringList keys = m_object.keys();
    for (const QString& key : keys) {
        if (m_asked.contains(key)) {
            continue;
        }
        const auto near = nearestName(key, known);
        complain(key, near ? words("This is not known here. Did you mean \"%1\"?").arg(*near)
                           : words("This is not known here."));
    }
}

} // namespace littoral::exchange
