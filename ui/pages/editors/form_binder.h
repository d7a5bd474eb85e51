// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/shown.h"
#include "ui/models/number_text.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <algorithm>
#include <functional>
#include <optional>
#include <vector>

namespace littoral::ui {

/// Ties the fields of a form to the members of one record: fill() shows a record, read() takes what was typed into a
/// copy of it. Members without a field keep the value they had.
template <typename Record> class FormBinder
{
public:
    void text(QLineEdit* field, QString Record::*member)
    {
        m_fields.push_back({[=](const Record& r) { field->setText(r.*member); },
                            [=](Record& r) {
                                r.*member = field->text().trimmed();
                                return QString();
                            }});
    }
    void text(QPlainTextEdit* field, QString Record::*member)
    {
        m_fields.push_back({[=](const Record& r) { field->setPlainText(r.*member); },
                            [=](Record& r) {
                                r.*member = field->toPlainText().trimmed();
                                return QString();
                            }});
    }
    /// Empty stands for zero, "not given"; limits are canonical. What was not retyped keeps the digits the store has.
    void number(QLineEdit* field, double Record::*member, double lowest, double highest,
                const record::Measure& measure = {})
    {
        const auto shown = [=](double kept) {
            return kept == 0.0 || measure.isCanonical() ? numberOrEmpty(kept) : numberText(measure.shown(kept), 4);
        };
        m_fields.push_back({[=](const Record& r) { field->setText(shown(r.*member)); },
                            [=](Record& r) {
                                if (field->text().trimmed().isEmpty()) {
                                    r.*member = 0.0;
                                    return QString();
                                }
                                const auto value = numberFrom(field->text());
                                const double kept = value ? measure.canonical(*value) : 0.0;
                                if (!value || kept < lowest || kept > highest) {
                                    return outside(field, measure.shown(lowest), measure.shown(highest));
                                }
                                if (field->text().trimmed() != shown(r.*member)) {
                                    r.*member = kept;
                                }
                                return QString();
                            }});
    }
    /// `factor` turns what is typed into what is kept.
    void optional(QLineEdit* field, std::optional<double> Record::*member, double lowest, double highest,
                  double factor = 1.0)
    {
        m_fields.push_back(
            {[=](const Record& r) { field->setText(r.*member ? numberText(*(r.*member) / factor, 4) : QString()); },
             [=](Record& r) {
                 if (field->text().trimmed().isEmpty()) {
                     r.*member = std::nullopt;
                     return QString();
                 }
                 const auto value = numberFrom(field->text());
                 if (!value || *value < lowest || *value > highest) {
                     return outside(field, lowest, highest);
                 }
                 // What was not retyped keeps the digits the store has.
                 if (!(r.*member) || numberText(*(r.*member) / factor, 4) != field->text().trimmed()) {
                     r.*member = *value * factor;
                 }
                 return QString();
             }});
    }
    /// The combo's rows are the enumerators in order.
    template <typename Choice> void choice(QComboBox* field, Choice Record::*member)
    {
        m_fields.push_back({[=](const Record& r) { field->setCurrentIndex(static_cast<int>(r.*member)); },
                            [=](Record& r) {
                                r.*member = static_cast<Choice>(std::max(0, field->currentIndex()));
                                return QString();
                            }});
    }
    void flag(QCheckBox* field, bool Record::*member)
    {
        m_fields.push_back({[=](const Record& r) { field->setChecked(r.*member); },
                            [=](Record& r) {
                                r.*member = field->isChecked();
                                return QString();
                            }});
    }

    void fill(const Record& record) const
    {
        for (const Field& field : m_fields) {
            field.show(record);
        }
    }
    /// The first field that cannot be read says so in a sentence; empty when all could.
    [[nodiscard]] QString read(Record& record) const
    {
        QString problem;
        for (const Field& field : m_fields) {
            const QString said = field.take(record);
            problem = problem.isEmpty() ? said : problem;
        }
        return problem;
    }

private:
    static QString outside(const QLineEdit* field, double lowest, double highest)
    {
        return QCoreApplication::translate("FormBinder", "%1: \"%2\" is not a number from %3 to %4.")
            .arg(field->accessibleName(), field->text(), numberText(lowest), numberText(highest));
    }

    struct Field
    {
        std::function<void(const Record&)> show;
        std::function<QString(Record&)> take;
    };
    std::vector<Field> m_fields;
};

} // namespace littoral::ui
