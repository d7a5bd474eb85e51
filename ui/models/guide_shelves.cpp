// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/guide_shelves.h"

#include "ui/models/guide_articles.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Guide", text);
}

QString fact(const QString& text)
{
    return text.isEmpty() ? text : QCoreApplication::translate("Facts", text.toUtf8().constData());
}

QString task(const QString& text)
{
    return text.isEmpty() ? text : QCoreApplication::translate("Templates", text.toUtf8().constData());
}

template <typename T> void sortByTitle(std::vector<T>& topics)
{
    std::ranges::stable_sort(topics, [](const T& a, const T& b) { return a.title.localeAwareCompare(b.title) < 0; });
}

using Sources = std::shared_ptr<const GuideSources>;

GuideShelf conditions(const Sources& from)
{
    GuideShelf shelf{u"condition"_s, words("Conditions"), {}, {}};
    for (const facts::Condition& condition : from->book.conditions) {
        QStringList found{condition.id, fact(condition.look), fact(condition.kind), fact(condition.check)};
        for (const QString& place : condition.where) {
            found << fact(place);
        }
        for (const QString& action : condition.actions) {
            found << fact(action);
        }
        shelf.topics.push_back(
            {topicId(shelf.key, condition.id), fact(condition.name), fact(condition.look), found.join(u' ')});
    }
    sortByTitle(shelf.topics);
    shelf.article = [from](const QString& topic) -> std::optional<GuideArticle> {
        const facts::Condition* found = from->book.condition(keyOf(topic));
        return found == nullptr ? std::nullopt : std::optional(conditionArticle(from->book, *found));
    };
    return shelf;
}

GuideShelf species(const Sources& from)
{
    GuideShelf shelf{u"species"_s, words("Species"), {}, {}};
    for (const facts::Species& one : from->book.species) {
        shelf.topics.push_back({topicId(shelf.key, one.id), one.scientific,
                                words("%1, %2").arg(fact(one.name), speciesKindWord(one)),
                                QStringList{one.id, one.gate, fact(one.note)}.join(u' ')});
    }
    sortByTitle(shelf.topics);
    shelf.article = [from](const QString& topic) -> std::optional<GuideArticle> {
        const facts::Species* found = from->book.speciesById(keyOf(topic));
        return found == nullptr ? std::nullopt : std::optional(speciesArticle(from->book, *found));
    };
    return shelf;
}

GuideShelf tasks(const Sources& from)
{
    GuideShelf shelf{u"task"_s, words("Tasks"), {}, {}};
    for (const care::WorkTemplate& work : from->work) {
        shelf.topics.push_back({topicId(shelf.key, work.key), task(work.title), task(work.consequence), work.key});
    }
    for (const facts::ReferenceTask& one : from->book.tasks) {
        if (std::ranges::find(from->work, one.key, &care::WorkTemplate::key) == from->work.end()) {
            shelf.topics.push_back({topicId(shelf.key, one.key), fact(one.title), fact(one.when),
                                    QStringList{one.key, fact(one.consequence), fact(one.closes)}.join(u' ')});
        }
    }
    sortByTitle(shelf.topics);
    shelf.article = [from](const QString& topic) -> std::optional<GuideArticle> {
        const auto work = std::ranges::find(from->work, keyOf(topic), &care::WorkTemplate::key);
        if (work != from->work.end()) {
            return workArticle(from->book, *work);
        }
        const auto found = std::ranges::find(from->book.tasks, keyOf(topic), &facts::ReferenceTask::key);
        return found == from->book.tasks.end() ? std::nullopt : std::optional(taskArticle(from->book, *found));
    };
    return shelf;
}

GuideShelf cautions(const Sources& from)
{
    GuideShelf shelf{u"caution"_s, words("Cautions"), {}, {}};
    for (const facts::Caution& caution : from->book.cautions) {
        QStringList found{caution.id};
        for (const facts::CautionPoint& point : caution.points) {
            found << fact(point.text);
        }
        shelf.topics.push_back(
            {topicId(shelf.key, caution.id), fact(caution.title), fact(caution.when), found.join(u' ')});
    }
    sortByTitle(shelf.topics);
    shelf.article = [from](const QString& topic) -> std::optional<GuideArticle> {
        const facts::Caution* found = from->book.caution(keyOf(topic));
        return found == nullptr ? std::nullopt : std::optional(cautionArticle(from->book, *found));
    };
    return shelf;
}

} // namespace

QString shelfOf(const QString& topic)
{
    return topic.section(u':', 0, 0);
}

QString keyOf(const QString& topic)
{
    return topic.section(u':', 1);
}

QString topicId(const QString& shelf, const QString& key)
{
    return shelf + u':' + key;
}

std::shared_ptr<const GuideSources> guideSources(const record::Row& row)
{
    return std::make_shared<const GuideSources>(GuideSources{facts::factsFor(row).book, care::templatesFor(row).all});
}

std::vector<GuideShelf> factShelves(const std::shared_ptr<const GuideSources>& sources)
{
    return {conditions(sources), species(sources), tasks(sources), cautions(sources)};
}

QString topicFor(const GuideSources& sources, const QString& subject)
{
    if (subject.isEmpty()) {
        return {};
    }
    const facts::FactBook& book = sources.book;
    if (book.condition(subject) != nullptr) {
        return topicId(u"condition"_s, subject);
    }
    if (book.caution(subject) != nullptr) {
        return topicId(u"caution"_s, subject);
    }
    if (std::ranges::find(sources.work, subject, &care::WorkTemplate::key) != sources.work.end() ||
        std::ranges::find(book.tasks, subject, &facts::ReferenceTask::key) != book.tasks.end()) {
        return topicId(u"task"_s, subject);
    }
    for (const facts::Species& one : book.species) {
        if (one.id == subject || one.scientific.compare(subject, Qt::CaseInsensitive) == 0 ||
            one.name.compare(subject, Qt::CaseInsensitive) == 0) {
            return topicId(u"species"_s, one.id);
        }
    }
    return {};
}

} // namespace littoral::ui
