// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/care/template_text.h"
#include "ui/theme/theme.h"

#include <QWidget>
#include <vector>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLineEdit;
class QPlainTextEdit;
class QTableWidget;

namespace littoral::ui {

/// A form in two columns, each label above its field, so that nothing clips at any text size.
class FieldGrid final : public QWidget
{
    Q_OBJECT

public:
    struct Choice
    {
        QString text;
        QString value;
    };

    explicit FieldGrid(Theme& theme, QWidget* parent = nullptr);

    QLineEdit* addLine(const QString& label, const QString& hint = {});
    QComboBox* addChoice(const QString& label, const std::vector<Choice>& choices);
    QCheckBox* addTick(const QString& label);
    QPlainTextEdit* addText(const QString& label);

private:
    void add(const QString& label, QWidget* field);

    Theme& m_theme;
    QGridLayout* m_grid;
    int m_count = 0;
};

/// The cautions there are, and none.
[[nodiscard]] std::vector<FieldGrid::Choice> cautionChoices();

void fillCases(QTableWidget& table, const std::vector<care::VariantText>& cases);
[[nodiscard]] std::vector<care::VariantText> casesOf(const QTableWidget& table);
void fillRounds(QTableWidget& table, const std::vector<care::RoundText>& rounds);
[[nodiscard]] std::vector<care::RoundText> roundsOf(const QTableWidget& table);
/// As high as its rows: the panel scrolls, never a table in it. A table without rows is hidden.
void fitHeight(QTableWidget& table, const Theme& theme);

} // namespace littoral::ui
