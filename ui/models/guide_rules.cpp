// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/guide_rules.h"

#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using facts::FactKind;
using Kind = GuideBlock::Kind;

namespace {

const QString kBuiltIn = u"@builtin"_s;

QString words(const char* text)
{
    return QCoreApplication::translate("Guide", text);
}

QString in(const char* context, const QString& text)
{
    return text.isEmpty() ? text : QCoreApplication::translate(context, text.toUtf8().constData());
}

GuideLine row(const QString& label, const QString& value)
{
    return {label, value, {}, 0};
}

const care::GateDefinition* gateIn(const care::GateBook& book, const QString& key)
{
    const auto found = std::ranges::find(book.gates, key, &care::GateDefinition::key);
    return found == book.gates.end() ? nullptr : &*found;
}

QString gateName(const care::GateDefinition& gate)
{
    return words("Gate %1: %2").arg(gate.key, in("Gates", gate.title));
}

QString gateLimit(const QString& parameter, const care::GateLimit& limit)
{
    return limit.mgN_per_L ? words("at most %1").arg(wording::valueWithUnit(parameter, *limit.mgN_per_L))
                           : words("below the first step of the kit in use");
}

QString startName(record::StartMethod start)
{
    switch (start) {
    case record::StartMethod::NewMedia:
        return words("new media");
    case record::StartMethod::MatureMedia:
        return words("mature media");
    case record::StartMethod::Starter:
        return words("starter");
    case record::StartMethod::DryStart:
        return words("dry start");
    case record::StartMethod::DarkStart:
        break;
    }
    return words("dark start");
}

QString days(double value)
{
    return QCoreApplication::translate("Guide", "%n days", nullptr, static_cast<int>(std::lround(value)));
}

void addReadings(GuideBlock& block, const care::GateDefinition& gate)
{
    block.lines.push_back(row(words("Clear readings in a row"), QString::number(gate.readings)));
    block.lines.push_back(
        row(words("Between two of them"), words("at least %1 h").arg(wording::numberText(gate.apartHours, 0))));
    if (gate.withinDays) {
        block.lines.push_back(row(words("All of them within"), days(*gate.withinDays)));
    }
    if (gate.spanDays) {
        block.lines.push_back(row(words("From the first to the last"), words("at least %1").arg(days(*gate.spanDays))));
    }
}

GuideArticle gateArticle(const care::GateDefinition& gate)
{
    GuideArticle article;
    article.topic = topicId(u"rule"_s, gate.key);
    article.kind = words("Gate");
    article.title = gateName(gate);
    article.lead = words("For %1. All conditions must hold together; what nobody looked at keeps it unknown.")
                       .arg(in("Gates", gate.who));
    GuideBlock water{Kind::Facts, words("Water"), {}, {}, {}};
    water.lines.push_back(row(wording::parameterName(u"tan"_s), gateLimit(u"tan"_s, gate.tan)));
    water.lines.push_back(row(wording::parameterName(u"nh3"_s),
                              words("at most %1").arg(wording::valueWithUnit(u"nh3"_s, gate.nh3_mgN_per_L))));
    water.lines.push_back(row(wording::parameterName(u"no2"_s), gateLimit(u"no2"_s, gate.no2)));
    addReadings(water, gate);
    article.blocks.push_back(std::move(water));
    GuideBlock age{Kind::Facts, words("Least age by start method"), {}, {}, {}};
    for (const auto& [start, least] : gate.minAge) {
        age.lines.push_back(row(startName(start), wording::ageText(least)));
    }
    article.blocks.push_back(std::move(age));
    GuideBlock also{Kind::Lines, words("Besides"), {}, {}, {}};
    for (const QString& key : gate.also) {
        care::GateCondition condition;
        condition.key = key;
        condition.state = care::Known::Met;
        also.lines.push_back({wording::gateConditionText(condition, {}), {}, {}, 0});
    }
    if (!also.lines.empty()) {
        article.blocks.push_back(std::move(also));
    }
    article.source = wording::sourceText(in("Gates", gate.source));
    return article;
}

QString limitText(const care::LimitFact& fact, double value)
{
    return fact.parameter.isEmpty() ? words("%1 %2").arg(wording::numberText(value, 0), fact.unit)
                                    : wording::valueWithUnit(fact.parameter, value);
}

QString limitSource(const GuideSources& sources, const care::LimitFact& fact)
{
    const auto own = sources.limits.limits.ownSources.find(fact.key);
    return own == sources.limits.limits.ownSources.end() ? in("Limits", fact.source) : own->second;
}

GuideArticle limitArticle(const care::LimitFact& fact, double value, const QString& source)
{
    GuideArticle article;
    article.topic = topicId(u"rule"_s, fact.key);
    article.kind = fact.practice ? words("Limit, common practice or judgement") : words("Limit, published");
    article.title = in("Limits", fact.name);
    article.lead = in("Limits", fact.use);
    GuideBlock facts{Kind::Facts, {}, {}, {}, {}};
    facts.lines.push_back(row(words("Stands at"), limitText(fact, value)));
    facts.lines.push_back(
        row(words("Can be set"), fact.practice
                                     ? words("from %1 to %2").arg(limitText(fact, fact.low), limitText(fact, fact.high))
                                     : words("no: it is published; a gate or a target band can be stricter")));
    article.blocks.push_back(std::move(facts));
    article.source = wording::sourceText(source);
    return article;
}

std::optional<GuideArticle> ruleArticle(const GuideSources& from, const QString& key, bool builtIn)
{
    const care::GateBook& gates = builtIn ? care::builtInGates() : from.gates.book;
    if (const care::GateDefinition* gate = gateIn(gates, key)) {
        return gateArticle(*gate);
    }
    const care::LimitFact* fact = care::limitFact(key);
    if (fact == nullptr) {
        return std::nullopt;
    }
    return builtIn ? limitArticle(*fact, care::Limits{}.*(fact->value), in("Limits", fact->source))
                   : limitArticle(*fact, from.limits.limits.*(fact->value), limitSource(from, *fact));
}

bool isOwn(const GuideSources& sources, const QString& topic)
{
    const auto fact = factOf(topic);
    return fact && sources.own.contains(facts::factSetting(fact->first, fact->second));
}

} // namespace

std::optional<std::pair<FactKind, QString>> factOf(const QString& topic)
{
    const QString shelf = shelfOf(topic);
    const QString key = keyOf(currentTopic(topic));
    if (shelf == u"rule"_s) {
        if (gateIn(care::builtInGates(), key) != nullptr) {
            return std::pair(FactKind::Gate, key);
        }
        const care::LimitFact* limit = care::limitFact(key);
        return limit != nullptr && limit->practice ? std::optional(std::pair(FactKind::Limit, key)) : std::nullopt;
    }
    const auto kind = facts::factKindFromCode(shelf);
    return kind ? std::optional(std::pair(*kind, key)) : std::nullopt;
}

QString topicOfFact(FactKind kind, const QString& id)
{
    const bool rule = kind == FactKind::Gate || kind == FactKind::Limit;
    return topicId(rule ? u"rule"_s : facts::factKindCode(kind), id);
}

QString builtInTopic(const QString& topic)
{
    return topic + kBuiltIn;
}

bool isBuiltInTopic(const QString& topic)
{
    return topic.endsWith(kBuiltIn);
}

QString currentTopic(const QString& topic)
{
    return isBuiltInTopic(topic) ? topic.chopped(kBuiltIn.size()) : topic;
}

GuideShelf ruleShelf(const std::shared_ptr<const GuideSources>& sources)
{
    GuideShelf shelf{u"rule"_s, words("Rules"), {}, {}};
    for (const care::GateDefinition& gate : sources->gates.book.gates) {
        const bool own = sources->gates.own.contains(gate.key);
        shelf.topics.push_back({topicId(shelf.key, gate.key),
                                own ? words("%1 (yours)").arg(gateName(gate)) : gateName(gate), in("Gates", gate.who),
                                gate.key});
    }
    for (const care::LimitFact& fact : care::limitFacts()) {
        const QString name = in("Limits", fact.name);
        const bool own = sources->limits.limits.ownSources.contains(fact.key);
        shelf.topics.push_back({topicId(shelf.key, fact.key), own ? words("%1 (yours)").arg(name) : name,
                                limitText(fact, sources->limits.limits.*(fact.value)), in("Limits", fact.use)});
    }
    shelf.article = [sources](const QString& topic) {
        return ruleArticle(*sources, keyOf(currentTopic(topic)), isBuiltInTopic(topic));
    };
    return shelf;
}

GuideShelf termShelf(const std::shared_ptr<const GuideSources>& sources)
{
    GuideShelf shelf{u"term"_s, words("Terms"), {}, {}};
    for (const facts::Term& term : sources->book.terms) {
        shelf.topics.push_back({topicId(shelf.key, term.id), in("Facts", term.name), in("Facts", term.text), term.id});
    }
    shelf.article = [sources](const QString& topic) -> std::optional<GuideArticle> {
        const facts::Term* term = sources->book.term(keyOf(topic));
        if (term == nullptr) {
            return std::nullopt;
        }
        GuideArticle article;
        article.topic = topic;
        article.kind = words("Term");
        article.title = in("Facts", term->name);
        article.lead = in("Facts", term->text);
        GuideBlock see{Kind::Links, words("See"), {}, {}, {}};
        for (const QString& other : term->see) {
            see.lines.push_back({titleOf(*sources, other), {}, other, 0});
        }
        article.blocks.push_back(std::move(see));
        article.source = wording::sourceText(in("Facts", term->source));
        return article;
    };
    return shelf;
}

void markVersion(GuideArticle& article, const GuideSources& sources)
{
    if (!isOwn(sources, article.topic)) {
        return;
    }
    const auto fact = factOf(article.topic);
    const bool hasOriginal = facts::builtInObject(fact->first, fact->second).has_value();
    GuideBlock block{Kind::Links, {}, {}, {}, {}};
    if (isBuiltInTopic(article.topic)) {
        article.kind = words("%1, as the program ships it").arg(article.kind);
        block.lines.push_back({words("Your version, which counts"), {}, currentTopic(article.topic), 0});
    } else {
        article.kind = words("%1, yours").arg(article.kind);
        if (hasOriginal) {
            block.lines.push_back({words("As the program ships it"),
                                   fact->first == FactKind::Caution
                                       ? words("Its points stay; yours are added below them.")
                                       : words("Findings, stock and gates go by your version."),
                                   builtInTopic(article.topic), 0});
        }
    }
    if (!block.lines.empty()) {
        article.blocks.insert(article.blocks.begin(), std::move(block));
    }
}

} // namespace littoral::ui
