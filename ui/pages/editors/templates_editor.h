// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/template_text.h"
#include "core/facade/keeper.h"
#include "ui/widgets/side_panel.h"

#include <QTimer>

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QListWidget;
class QPlainTextEdit;
class QTableWidget;

namespace littoral::ui {

/// The task templates: how often each work comes round, on what conditions, what closes it, and why. The keeper's own
/// stand over the program's, which are one step away. Beside the form: what it would ask for next, tank by tank.
class TemplatesEditor final : public SidePanel
{
    Q_OBJECT

public:
    TemplatesEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// At the template of that key; at the first when there is none.
    void open(const QString& key = {});
    [[nodiscard]] bool hasDraft() const override;
    [[nodiscard]] bool takesPage() const override { return true; }
    [[nodiscard]] QString previewText() const;
    /// What the form holds now.
    [[nodiscard]] care::TemplateText typed() const;
    void setTyped(const care::TemplateText& text);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void makeForm(QBoxLayout* column);
    void makeClosing(QBoxLayout* column);
    void makeRounds(QBoxLayout* column);
    QTableWidget* makeTable(const QString& name, const QStringList& heads);
    void watchEdits();
    void refreshList();
    void showTemplate(const QString& key);
    void startNew();
    void save();
    void backToBuiltIn();
    void switchOff();
    void preview();
    void arrangeButtons();
    void commit(const store::Edit& edit, const QString& sentence);
    [[nodiscard]] const record::TaskTemplate* own(const QString& key) const;
    [[nodiscard]] QByteArray definitionOf(const QString& key) const;
    [[nodiscard]] QString titleOf(const QString& key) const;

    facade::Keeper& m_keeper;
    QString m_key; ///< of the template shown; empty for a new one
    care::TemplateText m_base;
    bool m_filling = false;
    QListWidget* m_list;
    QBoxLayout* m_columns;
    QLineEdit *m_keyField, *m_title, *m_applies, *m_subject, *m_readings, *m_minutes, *m_grace, *m_lapse, *m_source;
    QComboBox *m_kind, *m_entry, *m_priority, *m_caution;
    QCheckBox *m_wholeRow, *m_rolls;
    QPlainTextEdit* m_consequence;
    QTableWidget *m_cases, *m_rounds;
    Text* m_state;
    Text* m_preview;
    QTimer m_soon;
    QPushButton *m_save, *m_back, *m_off;
};

} // namespace littoral::ui
