// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/knowledge.h"

#include "core/care/limits.h"
#include "core/care/own_gates.h"
#include "core/care/work_template.h"
#include "core/facts/fact_book.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <set>
#include <string>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

const QString kFormat = u"littoral-knowledge"_s;
const QString kFacts = u"fact."_s;
const QString kNotes = u"guide.note."_s;

QString words(const char* text)
{
    return QCoreApplication::translate("Import", text);
}

std::vector<Error> problemsOf(const record::Row& row)
{
    std::vector<Error> all = facts::factsFor(row).problems;
    for (const auto& more :
         {care::gateSet(row).problems, care::limitSet(row).problems, care::templatesFor(row).problems}) {
        all.insert(all.end(), more.begin(), more.end());
    }
    return all;
}

/// An object stands as itself, "none" as a text.
QJsonValue factValue(const QString& setting)
{
    const QJsonDocument document = QJsonDocument::fromJson(setting.toUtf8());
    return document.isObject() ? QJsonValue(document.object()) : QJsonValue(setting);
}

QString factSettingOf(const QJsonValue& value)
{
    return value.isObject() ? QString::fromUtf8(QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact))
                            : value.toString();
}

class KnowledgeReader
{
public:
    KnowledgeReader(const QString& fileName, const record::Row& row, store::Edit& edit)
        : m_file(fileName)
        , m_row(row)
        , m_edit(edit)
    {
        m_tried.settings = row.settings;
        m_tried.templates = row.templates;
    }

    KnowledgeImport read(const QJsonObject& top)
    {
        if (top[u"version"_s].toInt() != 1) {
            complain(words("Its version is not 1."));
        }
        for (const QString& key : top.keys()) {
            if (!QStringList{u"format"_s, u"version"_s, u"facts"_s, u"notes"_s, u"templates"_s}.contains(key)) {
                complain(words("There is no such key: \"%1\".").arg(key));
            }
        }
        settings(top[u"facts"_s].toObject(), kFacts);
        settings(top[u"notes"_s].toObject(), kNotes);
        for (const QJsonValue& value : top[u"templates"_s].toArray()) {
            workTemplate(value.toObject());
        }
        std::set<std::string> before;
        for (const Error& problem : problemsOf(m_row)) {
            before.insert(problem.sentence());
        }
        for (const Error& problem : problemsOf(m_tried)) {
            if (!before.contains(problem.sentence())) {
                complain(QString::fromStdString(problem.sentence()));
            }
        }
        return std::move(m_made);
    }

private:
    void complain(const QString& sentence) { m_made.problems << words("%1: %2").arg(m_file, sentence); }

    void settings(const QJsonObject& object, const QString& prefix)
    {
        for (const QString& key : object.keys()) {
            const QString text = factSettingOf(object[key]);
            if (text.isEmpty()) {
                complain(words("\"%1\" is empty.").arg(prefix + key));
            } else if (m_row.settings.value(prefix + key) == text) {
                ++m_made.skipped;
            } else {
                m_edit.set(prefix + key, text);
                m_tried.settings.insert(prefix + key, text);
                ++m_made.records;
            }
        }
    }

    void workTemplate(const QJsonObject& object)
    {
        record::TaskTemplate made;
        made.key = object[u"key"_s].toString();
        made.disabled = object[u"disabled"_s].toBool();
        made.definition = QJsonDocument(object[u"definition"_s].toObject()).toJson(QJsonDocument::Compact);
        if (made.key.isEmpty()) {
            complain(words("A template has no key."));
            return;
        }
        const auto known = std::ranges::find(m_tried.templates, made.key, &record::TaskTemplate::key);
        if (known != m_tried.templates.end()) {
            made.id = known->id;
            if (*known == made) {
                ++m_made.skipped;
                return;
            }
            m_tried.templates.erase(known);
        }
        made.id = m_edit.put(made);
        m_tried.templates.push_back(std::move(made));
        ++m_made.records;
    }

    const QString& m_file;
    const record::Row& m_row;
    store::Edit& m_edit;
    record::Row m_tried; ///< settings and templates as they would be
    KnowledgeImport m_made;
};

} // namespace

QByteArray knowledgeJson(const record::Row& row)
{
    QJsonObject facts, notes;
    for (auto it = row.settings.begin(); it != row.settings.end(); ++it) {
        if (it.key().startsWith(kFacts)) {
            facts[it.key().mid(kFacts.size())] = factValue(it.value());
        } else if (it.key().startsWith(kNotes)) {
            notes[it.key().mid(kNotes.size())] = it.value();
        }
    }
    QJsonArray templates;
    for (const record::TaskTemplate& own : row.templates) {
        templates.append(QJsonObject{{u"key"_s, own.key},
                                     {u"disabled"_s, own.disabled},
                                     {u"definition"_s, QJsonDocument::fromJson(own.definition).object()}});
    }
    if (facts.isEmpty() && notes.isEmpty() && templates.isEmpty()) {
        return {};
    }
    return QJsonDocument(QJsonObject{{u"format"_s, kFormat},
                                     {u"version"_s, 1},
                                     {u"facts"_s, facts},
                                     {u"notes"_s, notes},
                                     {u"templates"_s, templates}})
        .toJson();
}

bool isKnowledgeJson(const QByteArray& json)
{
    return QJsonDocument::fromJson(json).object()[u"format"_s].toString() == kFormat;
}

KnowledgeImport readKnowledge(const QByteArray& json, const QString& fileName, const record::Row& row,
                              store::Edit& edit)
{
    return KnowledgeReader(fileName, row, edit).read(QJsonDocument::fromJson(json).object());
}

} // namespace littoral::facade
