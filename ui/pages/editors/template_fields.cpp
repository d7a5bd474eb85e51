// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/template_fields.h"

#include "core/facts/fact_book.h"
#include "ui/widgets/text.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFontMetrics>
#include <QGridLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTableWidget>
#include <algorithm>
#include <array>

namespace littoral::ui {

namespace {

constexpr int kColumns = 2;

QString cellText(const QTableWidget& table, int row, int column)
{
    const QTableWidgetItem* item = table.item(row, column);
    return item == nullptr ? QString() : item->text().trimmed();
}

void setCell(QTableWidget& table, int row, int column, const QString& text)
{
    table.setItem(row, column, new QTableWidgetItem(text));
}

/// The columns of the table of rounds, in order.
constexpr std::array kRoundFields{&care::RoundText::variant, &care::RoundText::every,    &care::RoundText::from,
                                  &care::RoundText::to,      &care::RoundText::once,     &care::RoundText::after,
                                  &care::RoundText::days,    &care::RoundText::share,    &care::RoundText::range,
                                  &care::RoundText::when,    &care::RoundText::ifRaised, &care::RoundText::leaves,
                                  &care::RoundText::returns};

} // namespace

FieldGrid::FieldGrid(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(14);
    m_grid->setVerticalSpacing(4);
    for (int column = 0; column < kColumns; ++column) {
        m_grid->setColumnStretch(column, 1);
    }
}

void FieldGrid::add(const QString& label, QWidget* field)
{
    const int row = m_count / kColumns * 2;
    const int column = m_count % kColumns;
    ++m_count;
    field->setAccessibleName(label);
    auto* name = new Text(m_theme, TextStyle::SecondaryStrong, label);
    name->setWordWrap(true);
    name->setBuddy(field);
    m_grid->addWidget(name, row, column, Qt::AlignBottom);
    m_grid->addWidget(field, row + 1, column);
}

QLineEdit* FieldGrid::addLine(const QString& label, const QString& hint)
{
    auto* field = new QLineEdit;
    field->setPlaceholderText(hint);
    add(label, field);
    return field;
}

QComboBox* FieldGrid::addChoice(const QString& label, const std::vector<Choice>& choices)
{
    auto* field = new QComboBox;
    for (const Choice& choice : choices) {
        field->addItem(choice.text, choice.value);
    }
    field->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    field->setMinimumContentsLength(10);
    add(label, field);
    return field;
}

QCheckBox* FieldGrid::addTick(const QString& label)
{
    auto* field = new QCheckBox(label);
    field->setAccessibleName(label);
    const int row = m_count / kColumns * 2;
    m_grid->addWidget(field, row, m_count % kColumns, 2, 1, Qt::AlignVCenter);
    ++m_count;
    return field;
}

QPlainTextEdit* FieldGrid::addText(const QString& label)
{
    auto* field = new QPlainTextEdit;
    field->setTabChangesFocus(true);
    field->setMaximumHeight(QFontMetrics(m_theme.font(13)).height() * 3 + m_theme.px(14));
    add(label, field);
    return field;
}

std::vector<FieldGrid::Choice> cautionChoices()
{
    std::vector<FieldGrid::Choice> choices{{FieldGrid::tr("none"), {}}};
    for (const facts::Caution& caution : facts::builtInFacts().cautions) {
        choices.push_back({caution.title, caution.id});
    }
    return choices;
}

void fillCases(QTableWidget& table, const std::vector<care::VariantText>& cases)
{
    table.setRowCount(static_cast<int>(cases.size()));
    for (int row = 0; row < table.rowCount(); ++row) {
        const care::VariantText& it = cases[static_cast<std::size_t>(row)];
        setCell(table, row, 0, it.key);
        setCell(table, row, 1, it.when);
    }
}

std::vector<care::VariantText> casesOf(const QTableWidget& table)
{
    std::vector<care::VariantText> cases;
    for (int row = 0; row < table.rowCount(); ++row) {
        cases.push_back({cellText(table, row, 0), cellText(table, row, 1)});
    }
    return cases;
}

void fillRounds(QTableWidget& table, const std::vector<care::RoundText>& rounds)
{
    table.setRowCount(static_cast<int>(rounds.size()));
    for (int row = 0; row < table.rowCount(); ++row) {
        for (std::size_t field = 0; field < kRoundFields.size(); ++field) {
            setCell(table, row, static_cast<int>(field), rounds[static_cast<std::size_t>(row)].*kRoundFields[field]);
        }
    }
}

std::vector<care::RoundText> roundsOf(const QTableWidget& table)
{
    std::vector<care::RoundText> rounds;
    for (int row = 0; row < table.rowCount(); ++row) {
        care::RoundText round;
        for (std::size_t field = 0; field < kRoundFields.size(); ++field) {
            round.*kRoundFields[field] = cellText(table, row, static_cast<int>(field));
        }
        rounds.push_back(std::move(round));
    }
    return rounds;
}

void fitHeight(QTableWidget& table, const Theme& theme)
{
    const QFontMetrics text(theme.font(13));
    table.verticalHeader()->setDefaultSectionSize(std::max(28, text.height() + theme.px(10)));
    for (int column = 0; column + 1 < table.columnCount(); ++column) {
        int width = text.horizontalAdvance(table.horizontalHeaderItem(column)->text());
        for (int row = 0; row < table.rowCount(); ++row) {
            width = std::max(width, text.horizontalAdvance(cellText(table, row, column)));
        }
        table.setColumnWidth(column, width + theme.px(24));
    }
    const int rows = table.rowCount() * table.verticalHeader()->defaultSectionSize();
    table.setFixedHeight(rows + std::max(28, text.height() + theme.px(12)) + theme.px(22));
    table.setVisible(table.rowCount() > 0);
}

} // namespace littoral::ui
