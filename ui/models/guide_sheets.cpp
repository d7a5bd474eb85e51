// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/guide_sheets.h"

#include "core/sheets/sheet.h"
#include "ui/models/guide_shelves.h"

#include <QCoreApplication>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Kind = GuideBlock::Kind;

namespace {

const QString kShelf = u"sheet"_s;

QString words(const char* text)
{
    return QCoreApplication::translate("GuideSheets", text);
}

QString withUnit(const QString& text, const QString& unit)
{
    return unit.isEmpty() ? text : words("%1 %2").arg(text, unit);
}

/// "4 to 10", "rectangle, bow front"; and what stands there until something is typed.
QString bounds(const sheets::Input& input)
{
    if (input.kind == sheets::InputKind::Choice) {
        QStringList labels;
        for (const sheets::Choice& choice : input.choices) {
            labels << choice.label;
        }
        constexpr qsizetype kMostNamed = 6; // a table of salts is read on the sheet itself
        return labels.size() > kMostNamed ? words("one of %1").arg(labels.size()) : labels.join(u", "_s);
    }
    const QString text =
        withUnit(words("%1 to %2").arg(QString::number(input.lowest, 'g', 6), QString::number(input.highest, 'g', 6)),
                 input.unit);
    if (!input.preset.isEmpty()) {
        return words("%1; %2 if nothing is given").arg(text, input.preset);
    }
    return input.optional ? words("%1; may stay empty").arg(text) : text;
}

GuideArticle articleOf(const sheets::Sheet& sheet)
{
    const sheets::Answer example = sheets::exampleOf(sheet);
    GuideArticle article;
    article.topic = sheetTopic(sheet.key);
    article.kind = words("Worksheet: %1").arg(sheet.group);
    article.title = sheet.title;
    article.lead = words("What it is for: %1.").arg(sheet.purpose);
    for (GuideBlock& block : cautionBlocks(facts::builtInFacts(), example.cautions)) {
        article.blocks.push_back(std::move(block));
    }
    GuideBlock formula{Kind::Facts, words("Formula"), {}, {}, {}};
    formula.lines.push_back({words("In words"), example.formula, {}, 0});
    formula.lines.push_back({words("An example"), example.figures, {}, 0});
    formula.lines.push_back({words("Typed into the find field"), sheet.key + u' ' + sheet.example, {}, 0});
    article.blocks.push_back(std::move(formula));
    GuideBlock inputs{Kind::Facts, words("What goes in, and within which bounds"), {}, {}, {}};
    for (const sheets::Input& input : sheet.inputs) {
        inputs.lines.push_back({input.label, bounds(input), {}, 0});
    }
    article.blocks.push_back(std::move(inputs));
    GuideBlock doubts{Kind::Lines, words("Doubt and digits"), {}, {}, {}};
    for (const sheets::Input& input : sheet.inputs) {
        if (input.usualError > 0.0) {
            doubts.lines.push_back({words("%1: %2 either way is taken where no doubt is given.")
                                        .arg(input.label, withUnit(QString::number(input.usualError), input.unit)),
                                    {},
                                    {},
                                    0});
        }
    }
    doubts.lines.push_back(
        {words("The result has as many digits as what went in deserves; a doubt that is known stands "
               "beside it as a range."),
         {},
         {},
         0});
    article.blocks.push_back(std::move(doubts));
    if (!example.notes.isEmpty()) {
        GuideBlock pitfalls{Kind::Lines, words("What to watch"), {}, {}, {}};
        for (const QString& note : example.notes) {
            pitfalls.lines.push_back({note, {}, {}, 0});
        }
        article.blocks.push_back(std::move(pitfalls));
    }
    article.source = sheet.source;
    return article;
}

} // namespace

QString sheetTopic(const QString& sheet)
{
    return topicId(kShelf, sheet);
}

GuideShelf sheetShelf()
{
    GuideShelf shelf{kShelf, words("Worksheets"), {}, {}};
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        QStringList found{sheet.key, sheet.group};
        for (const sheets::Input& input : sheet.inputs) {
            found << input.label;
        }
        shelf.topics.push_back({sheetTopic(sheet.key), sheet.title, sheet.purpose, found.join(u' ')});
    }
    shelf.article = [](const QString& topic) -> std::optional<GuideArticle> {
        const sheets::Sheet* sheet = sheets::findSheet(keyOf(topic));
        return sheet == nullptr ? std::nullopt : std::optional(articleOf(*sheet));
    };
    return shelf;
}

} // namespace littoral::ui
