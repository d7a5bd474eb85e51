// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/guide_articles.h"

#include "core/facts/entry_cautions.h"
#include "core/record/shown.h"
#include "core/wording/finding_sentences.h"
#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"
#include "ui/models/guide_shelves.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Kind = GuideBlock::Kind;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Guide", text);
}

QString plural(const char* text, int n)
{
    return QCoreApplication::translate("Guide", text, nullptr, n);
}

QString fact(const QString& text)
{
    return text.isEmpty() ? text : QCoreApplication::translate("Facts", text.toUtf8().constData());
}

QString task(const QString& text)
{
    return text.isEmpty() ? text : QCoreApplication::translate("Templates", text.toUtf8().constData());
}

QStringList factList(const QStringList& texts)
{
    QStringList list;
    for (const QString& text : texts) {
        list << fact(text);
    }
    return list;
}

void addList(GuideArticle& article, Kind kind, const QString& heading, const QStringList& texts)
{
    if (texts.isEmpty()) {
        return;
    }
    GuideBlock block{kind, heading, {}, {}, {}};
    for (const QString& text : texts) {
        block.lines.push_back({fact(text), {}, {}, 0});
    }
    article.blocks.push_back(std::move(block));
}

void append(GuideArticle& article, std::vector<GuideBlock> blocks)
{
    std::ranges::move(blocks, std::back_inserter(article.blocks));
}

QString ageRange(const facts::Condition& condition)
{
    if (!condition.ageHigh) {
        return condition.ageLow <= 0 ? words("at any age of the tank") : words("from day %1 on").arg(condition.ageLow);
    }
    return words("day %1 to %2").arg(condition.ageLow).arg(*condition.ageHigh);
}

QString howCommon(int prior)
{
    return prior >= 3 ? words("common") : prior == 2 ? words("occasional") : words("rare");
}

QString urgencyWords(facts::Urgency urgency)
{
    switch (urgency) {
    case facts::Urgency::Now:
        return words("Act now");
    case facts::Urgency::Today:
        return words("Act today");
    case facts::Urgency::Week:
        return words("Within the week");
    case facts::Urgency::Watch:
        break;
    }
    return words("Watch");
}

GuideBlock evidence(const facts::FactBook& book, const QString& heading, const std::vector<facts::Evidence>& items)
{
    GuideBlock block{Kind::Evidence, heading, {}, {}, {}};
    for (const facts::Evidence& item : items) {
        block.lines.push_back({evidenceText(book, item), weightText(item.weight), {}, item.weight});
    }
    std::ranges::stable_sort(block.lines, std::greater<>(), &GuideLine::weight);
    return block;
}

GuideLine row(const QString& label, const QString& value)
{
    return {label, value, {}, 0};
}

/// `span`, `from` and `to` in the parameter's usual unit; `decimals` as many as that needs.
GuideRange range(const QString& parameter, const facts::Span& span, int decimals, double from, double to)
{
    const record::Parameter& known = *record::findParameter(parameter);
    const auto shown = [&](double value) {
        return known.shown().fromCanonical(record::inUsualUnits(known).shown().toCanonical(value));
    };
    decimals += std::max(0, known.decimals - record::inUsualUnits(known).decimals);
    const QString unit = parameter == u"ph"_s ? QString() : known.shown().label;
    const QString low = wording::numberText(shown(span.low), decimals);
    const QString high = wording::numberText(shown(span.high), decimals);
    const QString text = unit.isEmpty() ? words("%1–%2").arg(low, high) : words("%1–%2 %3").arg(low, high, unit);
    return {parameter, wording::parameterName(parameter), text, span.low, span.high, from, to};
}

QString lightWord(const QString& code)
{
    return code == u"high"_s ? words("much") : code == u"medium"_s ? words("middling") : words("little");
}

QString co2Word(const QString& code)
{
    return code == u"needed"_s     ? words("needed")
           : code == u"helpful"_s  ? words("helps much")
           : code == u"optional"_s ? words("does without")
                                   : words("takes it from the air");
}

int decimalsOf(double value)
{
    return std::abs(value - std::round(value)) < 1e-9             ? 0
           : std::abs(value * 10 - std::round(value * 10)) < 1e-9 ? 1
                                                                  : 2;
}

QString number(double value)
{
    return wording::numberText(value, decimalsOf(value));
}

void addAnimalFacts(GuideBlock& block, const facts::Species& one)
{
    block.lines.push_back(row(words("Length when grown"), wording::lengthText(one.size_cm)));
    if (one.group) {
        block.lines.push_back(*one.group > 1 ? row(words("Least group"), words("%1 together").arg(*one.group))
                                             : row(words("Least group"), words("may live alone")));
    }
    if (one.tank_L) {
        block.lines.push_back(row(words("Least water"), words("%1 net").arg(wording::litresText(*one.tank_L))));
    }
    if (one.mass_g) {
        block.lines.push_back(
            row(words("Mass, for the load of feeding"), words("about %1 g").arg(number(*one.mass_g))));
    }
}

void addPlantFacts(GuideBlock& block, const facts::Species& one)
{
    block.lines.push_back(row(words("Light"), lightWord(one.light)));
    block.lines.push_back(row(words("CO₂"), co2Word(one.co2)));
    if (!one.form.isEmpty()) {
        block.lines.push_back(row(words("Form"), factList(one.form).join(u", "_s)));
    }
    if (!one.growth.isEmpty()) {
        block.lines.push_back(row(words("Growth"), fact(one.growth)));
    }
    block.lines.push_back(row(words("Height"), words("to %1").arg(wording::lengthText(one.size_cm))));
}

/// "every 2 days, day 8 to 14, 50 %".
QString roundText(const care::Round& one)
{
    QString text;
    if (one.once) {
        text = words("once, on day %1").arg(*one.once);
    } else if (!one.days.empty()) {
        QStringList days;
        for (const int day : one.days) {
            days << QString::number(day);
        }
        text = words("%1 days after it happened").arg(days.join(u", "_s));
    } else if (one.to) {
        text = words("%1, from day %2 to %3").arg(wording::intervalText(one.every)).arg(one.from).arg(*one.to);
    } else {
        text = one.from > 0 ? words("%1, from day %2 on").arg(wording::intervalText(one.every)).arg(one.from)
                            : wording::intervalText(one.every);
    }
    return one.fraction ? words("%1: %2").arg(text, wording::percentText(*one.fraction)) : text;
}

/// The row of the table as people say it: "new-media" is "new media".
QString variantText(const QString& key)
{
    QString text = key;
    return text.replace(u'-', u' ');
}

} // namespace

std::vector<GuideBlock> cautionBlocks(const facts::FactBook& book, const QStringList& cautions)
{
    std::vector<GuideBlock> blocks;
    for (const QString& id : cautions) {
        const facts::Caution* caution = book.caution(id);
        if (caution == nullptr) {
            continue;
        }
        GuideBlock block{Kind::Caution, words("Caution: %1").arg(fact(caution->title)), {}, {}, {}};
        for (const facts::CautionPoint& point : caution->points) {
            block.lines.push_back({fact(point.text), {}, {}, 0});
        }
        block.lines.push_back({words("Where this comes from"), {}, topicId(u"caution"_s, id), 0});
        blocks.push_back(std::move(block));
    }
    if (!blocks.empty()) {
        blocks.back().source = fact(book.aboveAll);
    }
    return blocks;
}

GuideArticle conditionArticle(const facts::FactBook& book, const facts::Condition& condition)
{
    GuideArticle article;
    article.topic = topicId(u"condition"_s, condition.id);
    article.kind = words("Condition: %1").arg(fact(condition.kind));
    article.title = fact(condition.name);
    article.lead = fact(condition.look);
    article.urgency = urgencyWords(condition.urgency);
    article.presses = condition.urgency == facts::Urgency::Now || condition.urgency == facts::Urgency::Today;
    GuideBlock where{Kind::Facts, {}, {}, {}, {}};
    where.lines.push_back(row(words("Where"), factList(condition.where).join(u", "_s)));
    where.lines.push_back(row(words("Usual"), ageRange(condition)));
    where.lines.push_back(row(words("How often"), howCommon(condition.prior)));
    article.blocks.push_back(std::move(where));
    append(article, cautionBlocks(book, condition.cautions));
    if (const QString deferral = wording::healthDeferral(condition); !deferral.isEmpty()) {
        article.blocks.push_back({Kind::Lines, words("Who decides"), {{deferral, {}, {}, 0}}, {}, {}});
    }
    addList(article, Kind::Steps, words("First actions"), condition.actions);
    addList(article, Kind::Lines, words("Avoid"), condition.avoid);
    addList(article, Kind::Lines, words("Check next"), {condition.check});
    article.blocks.push_back(evidence(book, words("What speaks for it"), condition.supporting));
    if (!condition.against.empty()) {
        article.blocks.push_back(evidence(book, words("What speaks against it"), condition.against));
    }
    GuideBlock alike{Kind::Links, words("Easily taken for"), {}, {}, {}};
    for (const QString& id : condition.lookalikes) {
        if (const facts::Condition* other = book.condition(id)) {
            alike.lines.push_back({fact(other->name), fact(other->look), topicId(u"condition"_s, id), 0});
        }
    }
    if (!alike.lines.empty()) {
        article.blocks.push_back(std::move(alike));
    }
    article.source = wording::sourceText(fact(condition.source));
    return article;
}

QString speciesKindWord(const facts::Species& species)
{
    return species.isPlant()             ? words("plant")
           : species.kind == u"shrimp"_s ? words("shrimp")
           : species.kind == u"snail"_s  ? words("snail")
                                         : words("fish");
}

QString flagText(const QString& flag)
{
    static const std::map<QString, const char*> known{
        {u"jumper"_s, QT_TRANSLATE_NOOP("Guide", "It jumps: keep the lid on.")},
        {u"escapes"_s, QT_TRANSLATE_NOOP("Guide", "It climbs out: close the gaps.")},
        {u"breeds"_s, QT_TRANSLATE_NOOP("Guide", "It breeds freely: have somewhere for the young to go.")},
        {u"regulated"_s,
         QT_TRANSLATE_NOOP("Guide", "It is banned or listed in some places: look up the local rules first.")},
        {u"invader"_s,
         QT_TRANSLATE_NOOP("Guide", "It overgrows its neighbours, and waters outdoors if it gets there.")},
        {u"wild_often"_s,
         QT_TRANSLATE_NOOP("Guide", "It is often caught in the wild: expect a weak start, and quarantine it.")},
        {u"heat_limited"_s, QT_TRANSLATE_NOOP("Guide", "It bears no warm summers.")},
        {u"warm_only"_s, QT_TRANSLATE_NOOP("Guide", "It needs warm water.")},
        {u"shell_dissolves_soft"_s, QT_TRANSLATE_NOOP("Guide", "Soft, acid water eats its shell.")},
        {u"needs_biofilm"_s, QT_TRANSLATE_NOOP("Guide", "It starves in clean tanks: there must be a film to graze.")},
        {u"grazer"_s, QT_TRANSLATE_NOOP("Guide", "It grazes: look at its belly every day in the first weeks.")},
        {u"shy"_s, QT_TRANSLATE_NOOP("Guide", "It is shy: give it cover and quiet company.")},
        {u"nips"_s, QT_TRANSLATE_NOOP("Guide", "It nips fins, less in a full group.")},
        {u"tiny_mouth"_s, QT_TRANSLATE_NOOP("Guide", "Its mouth is tiny: feed dust or very small live food.")},
        {u"fine_sand"_s, QT_TRANSLATE_NOOP("Guide", "It sifts the bed: sharp gravel wears its barbels off.")},
        {u"high_oxygen"_s, QT_TRANSLATE_NOOP("Guide", "It needs fast water with much oxygen.")},
        {u"male_fights"_s, QT_TRANSLATE_NOOP("Guide", "Males fight: keep one to a tank.")},
        {u"eats_shrimp_young"_s, QT_TRANSLATE_NOOP("Guide", "It eats young shrimp.")},
        {u"eats_shrimp"_s, QT_TRANSLATE_NOOP("Guide", "It eats shrimp.")},
        {u"eats_small_fish"_s, QT_TRANSLATE_NOOP("Guide", "It eats fish that fit its mouth.")},
        {u"eats_snails"_s, QT_TRANSLATE_NOOP("Guide", "It eats snails.")},
        {u"eats_plants"_s, QT_TRANSLATE_NOOP("Guide", "It eats plants.")},
        {u"eats_plants_soft"_s, QT_TRANSLATE_NOOP("Guide", "It rasps soft leaves.")},
        {u"territorial"_s, QT_TRANSLATE_NOOP("Guide", "It holds a territory, most of all when it breeds.")},
        {u"burrows"_s, QT_TRANSLATE_NOOP("Guide", "It burrows in the bed.")},
    };
    const auto found = known.find(flag);
    return found == known.end() ? variantText(flag) : words(found->second);
}

QString gateOfSpecies(const facts::Species& species)
{
    // The title is the program's even where the keeper set other limits: it names the class of animals.
    if (species.isPlant()) {
        return species.gate == u"P1"_s ? words("once total ammonia has been under %1 for three days")
                                             .arg(wording::valueWithUnit(u"tan"_s, 1.0))
                                       : words("from flood day");
    }
    for (const care::GateDefinition& gate : care::builtInGates().gates) {
        if (gate.key == species.gate) {
            const QString title = QCoreApplication::translate("Gates", gate.title.toUtf8().constData());
            return words("with the gate %1, %2").arg(gate.key, title);
        }
    }
    return species.gate;
}

GuideArticle speciesArticle(const facts::FactBook& book, const facts::Species& species)
{
    GuideArticle article;
    article.topic = topicId(u"species"_s, species.id);
    article.kind = words("Species: %1").arg(speciesKindWord(species));
    article.title = fact(species.name);
    article.title[0] = article.title[0].toUpper();
    article.latin = species.scientific;
    article.lead = fact(species.note);
    if (!species.isPlant() || species.flags.contains(u"regulated"_s) || species.flags.contains(u"invader"_s)) {
        append(article, cautionBlocks(book, {u"C-RELEASE"_s}));
    }
    GuideBlock ranges{Kind::Ranges, words("Bears (not: likes best)"), {}, {}, {}};
    ranges.ranges = {range(u"temp"_s, species.temperature_C, 0, 14, 34), range(u"ph"_s, species.ph, 1, 4.5, 9),
                     range(u"gh"_s, species.gh_deg, 0, 0, 30), range(u"kh"_s, species.kh_deg, 0, 0, 25)};
    article.blocks.push_back(std::move(ranges));
    GuideBlock facts{Kind::Facts, words("In short"), {}, {}, {}};
    facts.lines.push_back(row(words("Goes in"), gateOfSpecies(species)));
    facts.lines.push_back(row(words("Touchiness"), words("%1 of 4").arg(species.sensitivity)));
    if (species.isPlant()) {
        addPlantFacts(facts, species);
    } else {
        addAnimalFacts(facts, species);
    }
    if (!species.position.isEmpty()) {
        facts.lines.push_back(row(words("Place"), factList(species.position).join(u", "_s)));
    }
    article.blocks.push_back(std::move(facts));
    GuideBlock notes{Kind::Lines, words("To know before buying"), {}, {}, {}};
    for (const QString& flag : species.flags) {
        notes.lines.push_back({flagText(flag), {}, {}, 0});
    }
    if (!notes.lines.empty()) {
        article.blocks.push_back(std::move(notes));
    }
    article.source = wording::sourceText(fact(species.source));
    return article;
}

GuideArticle workArticle(const facts::FactBook& book, const care::WorkTemplate& work)
{
    GuideArticle article;
    article.topic = topicId(u"task"_s, work.key);
    article.kind = words("Task with a cadence");
    article.title = task(work.title);
    article.lead = work.consequence.isEmpty() ? QString() : words("Left undone: %1").arg(task(work.consequence));
    append(article, cautionBlocks(book, facts::cautionsFor(book, work)));
    GuideBlock facts{Kind::Facts, words("In short"), {}, {}, {}};
    if (work.minutes > 0) {
        facts.lines.push_back(row(words("Takes"), words("about %1 min").arg(work.minutes)));
    }
    facts.lines.push_back(row(words("Overdue after"), plural("%n day(s) of grace", work.grace)));
    article.blocks.push_back(std::move(facts));
    for (const care::Variant& variant : work.variants) {
        GuideBlock cadence{Kind::Lines,
                           work.variants.size() > 1 ? words("How often: %1").arg(variantText(variant.key))
                                                    : words("How often"),
                           {},
                           {},
                           {}};
        for (const care::Round& one : variant.rounds) {
            cadence.lines.push_back({roundText(one), {}, {}, 0});
        }
        article.blocks.push_back(std::move(cadence));
    }
    article.source = wording::sourceText(task(work.source));
    return article;
}

GuideArticle taskArticle(const facts::FactBook& book, const facts::ReferenceTask& one)
{
    GuideArticle article;
    article.topic = topicId(u"task"_s, one.key);
    article.kind = words("Task without a cadence");
    article.title = fact(one.title);
    article.lead = one.consequence.isEmpty() ? QString() : words("Left undone: %1").arg(fact(one.consequence));
    append(article, cautionBlocks(book, one.cautions));
    GuideBlock facts{Kind::Facts, words("In short"), {}, {}, {}};
    facts.lines.push_back(row(words("When"), fact(one.when)));
    facts.lines.push_back(row(words("Done when there is"), fact(one.closes)));
    facts.lines.push_back(row(words("Takes"), words("about %1 min").arg(one.minutes)));
    facts.lines.push_back(row(words("Somebody else may do it"), one.helper ? words("yes, with a sheet") : words("no")));
    article.blocks.push_back(std::move(facts));
    article.source = wording::sourceText(fact(one.source));
    return article;
}

GuideArticle cautionArticle(const facts::FactBook& book, const facts::Caution& caution)
{
    GuideArticle article;
    article.topic = topicId(u"caution"_s, caution.id);
    article.kind = words("Caution");
    article.title = fact(caution.title);
    article.lead = words("It counts for: %1").arg(fact(caution.when));
    GuideBlock points{Kind::Caution, words("Keep to this"), {}, {}, fact(book.aboveAll)};
    for (const facts::CautionPoint& point : caution.points) {
        const QString source = wording::sourceText(fact(point.source));
        points.lines.push_back({fact(point.text), point.own ? words("Yours: %1").arg(source) : source, {}, 0});
    }
    article.blocks.push_back(std::move(points));
    GuideBlock used{Kind::Links, words("Named by"), {}, {}, {}};
    for (const facts::Condition& condition : book.conditions) {
        if (condition.cautions.contains(caution.id)) {
            used.lines.push_back({fact(condition.name), {}, topicId(u"condition"_s, condition.id), 0});
        }
    }
    for (const facts::ReferenceTask& one : book.tasks) {
        if (one.cautions.contains(caution.id)) {
            used.lines.push_back({fact(one.title), {}, topicId(u"task"_s, one.key), 0});
        }
    }
    if (!used.lines.empty()) {
        article.blocks.push_back(std::move(used));
    }
    article.source = words("Named point by point above.");
    return article;
}

} // namespace littoral::ui
