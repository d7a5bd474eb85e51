// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facts/own_facts.h"

#include <QJsonObject>
#include <QString>
#include <utility>
#include <vector>

/// A record of facts as fields to type into: which there are, what stands in them, and the object they make. Nothing
/// is judged here: core/facts says what is wrong with the object, by the same checks as for the program's own files.
namespace littoral::ui {

struct FactField
{
    enum class Shape {
        Text,
        Paragraph,
        Lines, ///< a list of texts, one a line
        Names, ///< as Lines: ids in the record, names on screen
        Choice,
        Number,
        Span, ///< two numbers
        Days, ///< one number, or two: "from" or "from to"
        Limit ///< a number, or "first step"
    };
    QString path; ///< field of the record; "min-age/starter" is one inside another
    QString label;
    Shape shape = Shape::Text;
    QString hint = {};                                     ///< shown while it is empty
    std::vector<std::pair<QString, QString>> choices = {}; ///< code and words
};

/// Fields of a kind of record. Of a species they depend on its "kind", of a caution on whether the program has it.
[[nodiscard]] std::vector<FactField> factFields(facts::FactKind kind, const QJsonObject& object, bool hasBuiltIn);

/// What stands in a field, as people type it: the locale's decimal mark, names instead of ids.
[[nodiscard]] QString fieldText(const QJsonObject& object, const FactField& field, const facts::FactBook& book);
/// Puts what was typed into the object; text that is not what the field wants goes in as it is, to be refused with the
/// field's name.
void setFieldText(QJsonObject& object, const FactField& field, const QString& text, const facts::FactBook& book);

/// A record to begin with, with what has to be there filled in.
[[nodiscard]] QJsonObject newFact(facts::FactKind kind);

/// The name of a record in its fields: title, scientific or common name.
[[nodiscard]] QString factName(facts::FactKind kind, const QJsonObject& object);

} // namespace littoral::ui
