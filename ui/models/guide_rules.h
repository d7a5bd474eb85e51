// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facts/own_facts.h"
#include "ui/models/guide_article.h"
#include "ui/models/guide_shelves.h"

#include <optional>
#include <utility>

namespace littoral::ui {

/// What a topic of the guide is to the keeper's own facts: its kind and id; nothing for tasks, terms and worksheets,
/// which are not edited there.
[[nodiscard]] std::optional<std::pair<facts::FactKind, QString>> factOf(const QString& topic);
/// The topic of a fact.
[[nodiscard]] QString topicOfFact(facts::FactKind kind, const QString& id);

/// The same topic as the program ships it, whatever the keeper wrote over it; and the other way round.
[[nodiscard]] QString builtInTopic(const QString& topic);
[[nodiscard]] bool isBuiltInTopic(const QString& topic);
[[nodiscard]] QString currentTopic(const QString& topic);

/// Gates and limits: what the program acts on.
[[nodiscard]] GuideShelf ruleShelf(const std::shared_ptr<const GuideSources>& sources);
/// Words of the trade and of the program, parameters among them.
[[nodiscard]] GuideShelf termShelf(const std::shared_ptr<const GuideSources>& sources);

/// Puts what the keeper has to know of whose version an article is above its blocks: the keeper's, with the program's
/// own one link away, or the program's beneath the keeper's.
void markVersion(GuideArticle& article, const GuideSources& sources);

} // namespace littoral::ui
