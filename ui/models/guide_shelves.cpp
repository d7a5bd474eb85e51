// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/guide_shelves.h"

#include "ui/models/guide_articles.h"
#include "ui/models/guide_rules.h"

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

QString marked(const QString& title, bool own)
{
    return own ? words("%1 (yours)").arg(title) : title;
}

template <typename T> void sortByTitle(std::vector<T>& topics)
{
    std::ranges::stable_sort(topics, [](const T& a, const T& b) { return a.title.localeAwareCompare(b.title) < 0; });
}

using Sources = std::shared_ptr<const GuideSources>;

/// The keeper's facts, or the program's where a topic asks for them.
const facts::FactBook& bookFor(const GuideSources& sources, const QString& topic)
{
    return isBuiltInTopic(topic) ? facts::builtInFacts() : sources.book;
}

std::optional<GuideArticle> versioned(const GuideSources& sources, const QString& topic, GuideArticle article)
{
    article.topic = topic;
    markVersion(article, sources);
    return article;
}

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
        shelf.topics.push_back({topicId(shelf.key, condition.id), marked(fact(condition.name), condition.own),
                                fact(condition.look), found.join(u' ')});
    }
    sortByTitle(shelf.topics);
    shelf.article = [from](const QString& topic) -> std::optional<GuideArticle> {
        const facts::FactBook& book = bookFor(*from, topic);
        const facts::Condition* found = book.condition(keyOf(currentTopic(topic)));
        return found == nullptr ? std::nullopt : versioned(*from, topic, conditionArticle(book, *found));
    };
    return shelf;
}

GuideShelf species(const Sources& from)
{
    GuideShelf shelf{u"species"_s, words("Species"), {}, {}};
    for (const facts::Species& one : from->book.species) {
        shelf.topics.push_back({topicId(shelf.key, one.id), marked(one.scientific, one.own),
                                words("%1, %2").arg(fact(one.name), speciesKindWord(one)),
                                QStringList{one.id, one.gate, fact(one.note)}.join(u' ')});
    }
    sortByTitle(shelf.topics);
    shelf.article = [from](const QString& topic) -> std::optional<GuideArticle> {
        const facts::FactBook& book = bookFor(*from, topic);
        const facts::Species* found = book.speciesById(keyOf(currentTopic(topic)));
        return found == nullptr ? std::nullopt : versioned(*from, topic, speciesArticle(book, *found));
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
        shelf.topics.push_back({topicId(shelf.key, caution.id), marked(fact(caution.title), caution.own),
                                fact(caution.when), found.join(u' ')});
    }
    sortByTitle(shelf.topics);
    shelf.article = [from](const QString& topic) -> std::optional<GuideArticle> {
        const facts::FactBook& book = bookFor(*from, topic);
        const facts::Caution* found = book.caution(keyOf(currentTopic(topic)));
        return found == nullptr ? std::nullopt : versioned(*from, topic, cautionArticle(book, *found));
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
    auto sources = std::make_shared<GuideSources>();
    facts::FactSet set = facts::factsFor(row);
    sources->book = std::move(set.book);
    sources->work = care::templatesFor(row).all;
    sources->gates = care::gateSet(row);
    sources->limits = care::limitSet(row);
    for (const auto* problems : {&set.problems, &sources->gates.problems, &sources->limits.problems}) {
        sources->problems.insert(sources->problems.end(), problems->begin(), problems->end());
    }
    const QString prefix = u"fact."_s;
    for (auto it = row.settings.lowerBound(prefix); it != row.settings.end() && it.key().startsWith(prefix); ++it) {
        sources->own << it.key();
    }
    return sources;
}

std::vector<GuideShelf> factShelves(const std::shared_ptr<const GuideSources>& sources)
{
    GuideShelf rules = ruleShelf(sources);
    rules.article = [sources, plain = rules.article](const QString& topic) -> std::optional<GuideArticle> {
        auto article = plain(topic);
        return article ? versioned(*sources, topic, std::move(*article)) : std::nullopt;
    };
    return {conditions(sources), species(sources), tasks(sources), cautions(sources), rules, termShelf(sources)};
}

QString entryTopic(record::EntryKind kind)
{
    using record::EntryKind;
    switch (kind) {
    case EntryKind::WaterChange:
        return u"task:water-change"_s;
    case EntryKind::TopUp:
        return u"task:topup"_s;
    case EntryKind::Dose:
        return u"term:dose"_s;
    case EntryKind::Feeding:
        return u"task:feed"_s;
    case EntryKind::Observation:
        return u"term:severity"_s;
    case EntryKind::Addition:
    case EntryKind::Loss:
        return u"term:quarantine"_s;
    case EntryKind::MediaTransfer:
        return u"term:media"_s;
    case EntryKind::LightChange:
        return u"term:light-sum"_s;
    case EntryKind::Co2Change:
        return u"term:co2"_s;
    case EntryKind::Upkeep:
    case EntryKind::Note:
        break;
    }
    return {};
}

QString titleOf(const GuideSources& sources, const QString& topic)
{
    const facts::FactBook& book = sources.book;
    const QString shelf = shelfOf(topic);
    const QString key = keyOf(topic);
    const auto work = std::ranges::find(sources.work, key, &care::WorkTemplate::key);
    const auto reference = std::ranges::find(book.tasks, key, &facts::ReferenceTask::key);
    const auto gate = std::ranges::find(sources.gates.book.gates, key, &care::GateDefinition::key);
    if (shelf == u"condition"_s && book.condition(key) != nullptr) {
        return fact(book.condition(key)->name);
    }
    if (shelf == u"caution"_s && book.caution(key) != nullptr) {
        return words("Caution: %1").arg(fact(book.caution(key)->title));
    }
    if (shelf == u"term"_s && book.term(key) != nullptr) {
        return fact(book.term(key)->name);
    }
    if (shelf == u"species"_s && book.speciesById(key) != nullptr) {
        return book.speciesById(key)->scientific;
    }
    if (shelf == u"task"_s && (work != sources.work.end() || reference != book.tasks.end())) {
        return words("Task: %1").arg(work != sources.work.end() ? task(work->title) : fact(reference->title));
    }
    if (shelf == u"rule"_s && gate != sources.gates.book.gates.end()) {
        return words("Gate %1: %2")
            .arg(gate->key, QCoreApplication::translate("Gates", gate->title.toUtf8().constData()));
    }
    const care::LimitFact* limit = shelf == u"rule"_s ? care::limitFact(key) : nullptr;
    return limit == nullptr
               ? key
               : words("Limit: %1").arg(QCoreApplication::translate("Limits", limit->name.toUtf8().constData()));
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
    if (care::limitFact(subject) != nullptr ||
        std::ranges::find(sources.gates.book.gates, subject, &care::GateDefinition::key) !=
            sources.gates.book.gates.end()) {
        return topicId(u"rule"_s, subject);
    }
    const record::Parameter* parameter = record::findParameter(subject);
    if (const QString key = parameter == nullptr ? subject : parameter->key; book.term(key) != nullptr) {
        return topicId(u"term"_s, key);
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
