// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/models/fact_form.h"
#include "ui/widgets/side_panel.h"

#include <QMap>

class QFormLayout;

namespace littoral::ui {

/// One record of the guide in the keeper's own version: a condition, a species, points of a caution, a gate, a limit.
/// The program's record stays beneath it and comes back with one button. Written as a setting of the store, so it is
/// undone like any other change. What is half typed about one record is there when it is opened again.
class FactEditor final : public SidePanel
{
    Q_OBJECT

public:
    FactEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void edit(facts::FactKind kind, const QString& id);
    void add(facts::FactKind kind);
    [[nodiscard]] bool hasDraft() const override;
    /// The widget of a field; nullptr when the record has none of that path.
    [[nodiscard]] QWidget* field(const QString& path) const;
    [[nodiscard]] QPushButton* saveButton() { return m_save; }
    [[nodiscard]] QPushButton* backButton() { return m_back; }

signals:
    /// Written: the topic that has changed.
    void kept(const QString& topic);

private:
    struct Row
    {
        FactField field;
        QWidget* widget = nullptr;
    };
    [[nodiscard]] QString place() const;
    void present(const QJsonObject& begun);
    void build();
    [[nodiscard]] QWidget* makeField(const FactField& field);
    void addField(QFormLayout* form, const FactField& field);
    [[nodiscard]] QString textIn(const Row& row) const;
    [[nodiscard]] QJsonObject typed() const;
    void keepDraft();
    void save();
    void goBack();
    void tellProblem(const Error& error);
    [[nodiscard]] bool write(const QString& id, const QString& text, const QString& label, const QString& sentence);

    facade::Keeper& m_keeper;
    facts::FactKind m_kind = facts::FactKind::Condition;
    QString m_id; ///< empty: a new record
    facts::FactBook m_book;
    QJsonObject m_begun; ///< as it was opened
    QJsonObject m_shown; ///< as it was put into the fields
    QMap<QString, QJsonObject> m_drafts;
    std::vector<Row> m_rows;
    Text* m_about;
    QWidget* m_inside = nullptr;
    QPushButton *m_save, *m_back;
};

} // namespace littoral::ui
