// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <functional>
#include <optional>
#include <vector>

/// What the guide holds, as plain values: topics on shelves, and an article for each. A new kind of topic is a new
/// shelf; list, search, reading pane and links need to know nothing of it.
namespace littoral::ui {

/// One line of a block: its words, what is said in smaller print beside it, and where it leads.
struct GuideLine
{
    QString text;
    QString note;
    QString topic;  ///< id of the topic it links to; empty: no link
    int weight = 0; ///< evidence: 1 weak, 2 moderate, 3 strong; else 0
};

/// A range a species bears, for a small picture beside its words.
struct GuideRange
{
    QString parameter; ///< key: hue and mark follow it
    QString name;
    QString text; ///< "22–28 °C"
    double low = 0.0, high = 0.0;
    double from = 0.0, to = 0.0; ///< of the scale all species share
};

struct GuideBlock
{
    enum class Kind {
        Caution, ///< boxed, always in sight above what is to be done
        Lines,   ///< a list
        Steps,   ///< a numbered list: one after another
        Evidence,
        Facts, ///< text is the label, note the value
        Ranges,
        Links,
    };
    Kind kind = Kind::Lines;
    QString heading;
    std::vector<GuideLine> lines;
    std::vector<GuideRange> ranges;
    QString source; ///< of this block, where it differs from the article's
};

struct GuideArticle
{
    QString topic;
    QString kind;    ///< "Condition, algae"
    QString title;   ///< "Diatom film"
    QString latin;   ///< scientific name; empty where there is none
    QString lead;    ///< the first paragraph
    QString urgency; ///< words; empty where nothing presses
    bool presses = false;
    std::vector<GuideBlock> blocks;
    QString source;
};

struct GuideTopic
{
    QString id; ///< "condition:alg_diatom": shelf and id
    QString title;
    QString detail; ///< second line in the list
    QString words;  ///< searched besides title and detail
};

struct GuideShelf
{
    QString key;  ///< "condition"; the part of a topic's id before the colon
    QString name; ///< "Conditions"
    std::vector<GuideTopic> topics;
    std::function<std::optional<GuideArticle>(const QString& topic)> article;
};

/// "condition" of "condition:alg_diatom".
[[nodiscard]] QString shelfOf(const QString& topic);
/// "alg_diatom" of the same.
[[nodiscard]] QString keyOf(const QString& topic);
[[nodiscard]] QString topicId(const QString& shelf, const QString& key);

} // namespace littoral::ui
