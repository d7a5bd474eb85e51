// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/work_template.h"
#include "core/facts/fact_book.h"
#include "ui/models/guide_article.h"

/// How each kind of fact reads as an article. Cautions always stand above what is to be done.
namespace littoral::ui {

[[nodiscard]] GuideArticle conditionArticle(const facts::FactBook& book, const facts::Condition& condition);
[[nodiscard]] GuideArticle speciesArticle(const facts::FactBook& book, const facts::Species& species);
[[nodiscard]] GuideArticle workArticle(const facts::FactBook& book, const care::WorkTemplate& work);
[[nodiscard]] GuideArticle taskArticle(const facts::FactBook& book, const facts::ReferenceTask& task);
[[nodiscard]] GuideArticle cautionArticle(const facts::FactBook& book, const facts::Caution& caution);

/// "plant", "fish" ...
[[nodiscard]] QString speciesKindWord(const facts::Species& species);
/// What a flag of a species says, as a sentence; the flag itself when it is the keeper's own.
[[nodiscard]] QString flagText(const QString& flag);
/// "G2: hardy fish and shrimp"; plants: when they may go in.
[[nodiscard]] QString gateOfSpecies(const facts::Species& species);

} // namespace littoral::ui
