// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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
};
[[nodiscard]] std::shared_ptr<const GuideSources> guideSources(const record::Row& row);

/// Conditions, species, tasks and cautions, in this order.
[[nodiscard]] std::vector<GuideShelf> factShelves(const std::shared_ptr<const GuideSources>& sources);

/// The topic an observation's subject, a caution's id, a task template's key or a species' name stands for; empty when
/// the guide has none.
[[nodiscard]] QString topicFor(const GuideSources& sources, const QString& subject);

/// An item of evidence in words: "Total ammonia at least 0.1 mg/L N", "What colour is it? brown".
[[nodiscard]] QString evidenceText(const facts::FactBook& book, const facts::Evidence& evidence);
/// "weak", "moderate", "strong".
[[nodiscard]] QString weightText(int weight);

/// A block for each of these cautions, whole: none of their points is left out.
[[nodiscard]] std::vector<GuideBlock> cautionBlocks(const facts::FactBook& book, const QStringList& cautions);

} // namespace littoral::ui
