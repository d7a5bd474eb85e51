// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facts/fact_book.h"

#include <QJsonArray>
#include <QJsonObject>
#include <optional>

namespace littoral::facts {

/// Reads one object of a file of facts and remembers the first thing that is wrong with it, with file, record, field
/// and what to do about it.
class FactReader final
{
public:
    FactReader(QString file, QString record, QJsonObject object);

    [[nodiscard]] bool failed() const { return m_error.has_value(); }
    [[nodiscard]] const Error& error() const { return *m_error; }
    [[nodiscard]] QString place(const QString& field) const;

    void complain(const QString& field, const QString& what, const QString& mend);
    void take(const Error& error); ///< of something read inside
    /// Refuses each field that is not among these.
    void only(const QStringList& known);

    [[nodiscard]] bool has(const QString& field) const { return m_object.contains(field); }
    [[nodiscard]] QString text(const QString& field, bool needed = true);
    [[nodiscard]] QStringList texts(const QString& field, bool needed = false);
    [[nodiscard]] QString oneOf(const QString& field, const QStringList& known, bool needed = true);
    [[nodiscard]] std::optional<double> number(const QString& field, double low, double high, bool needed = true);
    [[nodiscard]] int whole(const QString& field, int low, int high);
    [[nodiscard]] bool flag(const QString& field);
    [[nodiscard]] Span span(const QString& field, double low, double high);
    [[nodiscard]] std::vector<Evidence> evidence(const QString& field);
    [[nodiscard]] const QJsonObject& object() const { return m_object; }

private:
    QString m_file;
    QString m_record;
    QJsonObject m_object;
    std::optional<Error> m_error;
};

/// Records of each kind, without asking whether the ids they name are there.
[[nodiscard]] Result<std::vector<EvidenceKey>> parseKeys(const QByteArray& json);
[[nodiscard]] Result<std::vector<Condition>> parseConditions(const QByteArray& json);
[[nodiscard]] Result<std::vector<Species>> parseSpecies(const QByteArray& json);
[[nodiscard]] Result<std::vector<Caution>> parseCautions(const QByteArray& json, QString& aboveAll);
[[nodiscard]] Result<std::vector<ReferenceTask>> parseTasks(const QByteArray& json);
[[nodiscard]] Result<std::vector<Term>> parseTerms(const QByteArray& json);
[[nodiscard]] Result<Condition> readCondition(const QString& file, const QJsonObject& object);
[[nodiscard]] Result<Species> readSpecies(const QString& file, const QJsonObject& object);
/// A whole caution, or only points to be added to one.
[[nodiscard]] Result<Caution> readCaution(const QString& file, const QJsonObject& object, bool whole);

/// Proves that every id, key, unit, value and gate that is named in the book is there.
[[nodiscard]] Result<void> proveBook(const FactBook& book);
[[nodiscard]] Result<void> proveCondition(const FactBook& book, const Condition& condition, const QString& file);
[[nodiscard]] Result<void> proveSpecies(const Species& species, const QString& file);

} // namespace littoral::facts
