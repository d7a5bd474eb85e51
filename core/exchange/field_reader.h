// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/moment.h"

#include <QHash>
#include <QSet>
#include <QString>
#include <functional>
#include <optional>

namespace littoral::exchange {

/// The named fields of one reading or entry, whether they came from a CSV row or a JSON object, as text. Each getter
/// takes note that its field was asked for, and complains about a field that does not parse or is out of range; an
/// absent field is nothing and no complaint.
class FieldReader final
{
public:
    /// field, sentence
    using Complain = std::function<void(const QString&, const QString&)>;

    FieldReader(QHash<QString, QString> fields, Complain complain);

    [[nodiscard]] bool has(const QString& field) const { return m_fields.contains(field); }
    [[nodiscard]] bool failed() const { return m_failed; }
    void complain(const QString& field, const QString& sentence);

    [[nodiscard]] QString text(const QString& field);
    /// Complains when it is absent.
    [[nodiscard]] QString requiredText(const QString& field);
    /// Decimal point or comma; no thousands marks.
    [[nodiscard]] std::optional<double> number(const QString& field, double lowest, double highest);
    /// 0..1 as "0.4" or "40 %".
    [[nodiscard]] std::optional<double> share(const QString& field);
    [[nodiscard]] std::optional<int> whole(const QString& field, int lowest, int highest);
    /// yes/no, true/false, 1/0.
    [[nodiscard]] std::optional<bool> yesNo(const QString& field);
    [[nodiscard]] std::optional<record::Moment> instant(const QString& field);
    void need(const QString& field); ///< complains that it is missing
    void ignore(const QString& field) { m_asked.insert(field); }

    /// Complains about each field nobody asked for: it was meant for another kind, or the columns are shifted.
    void refuseOthers(const QString& kindCode);

private:
    QHash<QString, QString> m_fields;
    QSet<QString> m_asked;
    Complain m_complain;
    bool m_failed = false;
};

/// A number with '.' or ',' as its decimal mark and nothing else; nothing when it is not one.
[[nodiscard]] std::optional<double> parseNumber(const QString& text);
/// Shortest text that reads back as the same number.
[[nodiscard]] QString numberText(double value);

} // namespace littoral::exchange
