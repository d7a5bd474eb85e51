// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/limits.h"
#include "core/care/own_gates.h"
#include "core/care/work_template.h"
#include "core/facts/fact_book.h"
#include "ui/models/guide_article.h"

#include <memory>

namespace littoral::ui {

/// What the guide is made from: the program's facts with the keeper's own put over them.
struct GuideSources
{
    facts::FactBook book;
    std::vector<care::WorkTemplate> work;
    care::GateSet gates;
    care::LimitSet limits;
    QStringList own;             ///< settings that hold records of the keeper's
    std::vector<Error> problems; ///< the keeper's records that could not be used
};
[[nodiscard]] std::shared_ptr<const GuideSources> guideSources(const record::Row& row);

/// Conditions, species, tasks, cautions, rules and terms, in this order.
[[nodiscard]] std::vector<GuideShelf> factShelves(const std::shared_ptr<const GuideSources>& sources);

/// The topic an observation's subject, a caution's id, a task template's key, a gate's or a limit's key, a parameter's
/// key or name, or a species' name stands for; empty when the guide has none.
[[nodiscard]] QString topicFor(const GuideSources& sources, const QString& subject);

/// The term or task an entry without a subject of its own is about.
[[nodiscard]] QString entryTopic(record::EntryKind kind);

/// What a topic is called; its key when it is none of these.
[[nodiscard]] QString titleOf(const GuideSources& sources, const QString& topic);

/// An item of evidence in words: "Total ammonia at least 0.1 mg/L N", "What colour is it? brown".
[[nodiscard]] QString evidenceText(const facts::FactBook& book, const facts::Evidence& evidence);
/// "weak", "moderate", "strong".
[[nodiscard]] QString weightText(int weight);

/// A block for each of these cautions, whole: none of their points is left out.
[[nodiscard]] std::vector<GuideBlock> cautionBlocks(const facts::FactBook& book, const QStringList& cautions);

} // namespace littoral::ui
