// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bench/sheet_card.h"

#include "core/wording/numbers.h"
#include "ui/models/bench_curve.h"
#include "ui/pages/bench/sheet_field.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/disclosure.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/table_twin.h"

#include <QClipboard>
#include <QComboBox>
#include <QGridLayout>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kDaysAhead = 14;
constexpr int kMostTableRows = 10;

void showText(Text* text, const QString& words)
{
    text->setText(words);
    text->setVisible(!words.isEmpty());
}

} // namespace

SheetCard::SheetCard(Theme& theme, QWidget* parent)
    : BenchCard(theme, parent)
{
    makeBody();
    makeActions();
}

void SheetCard::makeBody()
{
    m_fieldBox = new QWidget;
    auto* fields = new QVBoxLayout(m_fieldBox);
    fields->setContentsMargins(0, 0, 0, 0);
    fields->setSpacing(8);
    m_more = new DisclosureLine(theme());
    fields->addWidget(m_more);
    column()->addWidget(m_fieldBox);
    connect(m_more, &DisclosureLine::toggled, this, &SheetCard::fold);
    m_formula = new FormulaPane(theme());
    column()->addWidget(m_formula);
    m_problem = addText(TextStyle::Body, Token::Watch);
    m_result = addText(TextStyle::Result, Token::Ink);
    m_resultNote = addText(TextStyle::Body, Token::Ink2);
    m_ways = new CurveView(theme());
    column()->addWidget(m_ways);
    m_resultBox = new QWidget;
    m_results = new QGridLayout(m_resultBox);
    m_results->setContentsMargins(0, 0, 0, 0);
    m_results->setHorizontalSpacing(12);
    m_results->setVerticalSpacing(4);
    m_results->setColumnStretch(0, 1);
    column()->addWidget(m_resultBox);
    m_curve = new CurveView(theme());
    column()->addWidget(m_curve);
    m_twin = new TableTwin(theme());
    m_twin->hide();
    column()->addWidget(m_twin);
    m_moves = new CardTable(theme());
    m_moves->setAccessibleName(tr("What else moves"));
    m_moves->setMinimumWidth(1); // its lines wrap; it never makes the card wider than its column
    m_moves->setColumns({{tr("What else moves"), false, 1.4},
                         {tr("Before"), true, 0.0},
                         {tr("After"), true, 0.0},
                         {tr("Note"), false, 2.0}});
    column()->addWidget(m_moves);
    m_notes = addText(TextStyle::Body, Token::Ink2);
    m_cautions = new CautionBox(theme());
    column()->addWidget(m_cautions);
    m_source = addText(TextStyle::Secondary, Token::Ink3);
}

void SheetCard::makeActions()
{
    m_actionBox = new QWidget;
    m_actions = new FlowLayout(m_actionBox, 8);
    m_task = new QPushButton(tr("Make it a task"));
    m_task->setProperty("primary", true);
    m_task->setProperty("keyHint", tr("M"));
    m_day = new QComboBox;
    m_day->setAccessibleName(tr("Day of the task"));
    m_copyButton = new QPushButton(tr("Copy"));
    m_copyButton->setAccessibleName(tr("Copy the working and the result"));
    m_clear = new QPushButton(tr("Clear what was typed"));
    m_clear->setProperty("quiet", true);
    m_actions->addWidget(m_task);
    m_actions->addWidget(m_day);
    m_actions->addWidget(m_copyButton);
    m_actions->addWidget(m_clear);
    column()->addWidget(m_actionBox);
    connect(m_task, &QPushButton::clicked, this, [this] { emit taskWanted(taskDays()); });
    connect(m_copyButton, &QPushButton::clicked, this, &SheetCard::copy);
    connect(m_clear, &QPushButton::clicked, this, &SheetCard::clearWanted);
}

void SheetCard::show(const BenchSheet& open, const Surroundings& around)
{
    if (m_sheet != &open.sheet()) {
        m_sheet = &open.sheet();
        makeFields(open.sheet());
    }
    const QString purpose = open.sheet().purpose;
    setHead(open.sheet().title,
            isPinned() && !around.tankName.isEmpty() ? tr("Pinned for %1: %2").arg(around.tankName, purpose) : purpose);
    showFields(open);
    showAnswer(open, around);
    showActions(open, around);
}

void SheetCard::makeFields(const sheets::Sheet& sheet)
{
    for (SheetField* field : m_fields) {
        field->hide();
        field->deleteLater();
    }
    m_fields.clear();
    auto* fields = static_cast<QVBoxLayout*>(m_fieldBox->layout());
    for (const sheets::Input& input : sheet.inputs) {
        auto* field = new SheetField(theme(), input);
        connect(field, &SheetField::typed, this, &SheetCard::typed);
        connect(field, &SheetField::entered, this, [this] {
            if (QWidget* wanting = wantingField()) {
                wanting->setFocus(Qt::TabFocusReason);
            }
        });
        m_fields.push_back(field);
    }
    m_folded.clear();
    fields->removeWidget(m_more);
    m_more->setChecked(false);
    for (SheetField* field : m_fields) {
        fields->addWidget(field);
    }
    fields->addWidget(m_more);
}

void SheetCard::showFields(const BenchSheet& open)
{
    std::vector<bool> folded;
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const BenchBlank& blank = open.blanks()[i];
        m_fields[i]->show(blank);
        // A blank that has come out stays out while the sheet is open: fields do not move under the hand.
        folded.push_back(blank.folded && (m_folded.empty() || m_folded[i]));
    }
    if (folded != m_folded) {
        const bool first = m_folded.empty();
        m_folded = folded;
        auto* fields = static_cast<QVBoxLayout*>(m_fieldBox->layout());
        if (first) {
            // Central blanks first, then the line, then what it opens on.
            for (SheetField* field : m_fields) {
                fields->removeWidget(field);
            }
            fields->removeWidget(m_more);
            for (const bool behind : {false, true}) {
                for (std::size_t i = 0; i < m_fields.size(); ++i) {
                    if (m_folded[i] == behind) {
                        fields->addWidget(m_fields[i]);
                    }
                }
                if (!behind) {
                    fields->addWidget(m_more);
                }
            }
            QWidget* before = pinButton();
            for (int i = 0; i < fields->count(); ++i) {
                QWidget* widget = fields->itemAt(i)->widget();
                auto* field = qobject_cast<SheetField*>(widget);
                QWidget* stop = field == nullptr ? widget : field->editor();
                QWidget::setTabOrder(before, stop);
                if (field != nullptr) {
                    QWidget::setTabOrder(stop, field->back());
                    stop = field->back();
                }
                before = stop;
            }
        }
        fold();
    }
}

void SheetCard::fold()
{
    int behind = 0;
    int filled = 0;
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const bool folded = i < m_folded.size() && m_folded[i];
        m_fields[i]->setVisible(!folded || m_more->isChecked());
        behind += folded ? 1 : 0;
        filled += folded && m_fields[i]->line() != nullptr && !m_fields[i]->line()->text().isEmpty() ? 1 : 0;
    }
    m_more->setVisible(behind > 0);
    const QString text = tr("Assumptions and more: %n blank(s)", nullptr, behind);
    m_more->setWords(text, filled > 0 ? tr("%1 filled").arg(filled) : QString());
    m_more->setAccessibleName(text);
}

void SheetCard::showAnswer(const BenchSheet& open, const Surroundings& around)
{
    const auto& answer = open.answer();
    const bool there = answer.has_value();
    const QString problem = open.mend().isEmpty() ? open.problem() : tr("%1 %2").arg(open.problem(), open.mend());
    showText(m_problem, problem);
    m_problem->setToken(open.isWaiting() ? Token::Watch : Token::Act);
    m_formula->setVisible(there && around.working);
    m_resultBox->setVisible(there);
    m_moves->setVisible(there && !answer->moves.empty());
    m_source->setText(tr("Source: %1").arg(open.sheet().source));
    if (!there) {
        showText(m_result, {});
        showText(m_resultNote, {});
        showText(m_notes, {});
        m_cautions->setCautions({});
        m_ways->setMeasures({});
        m_curve->setCurve({});
        m_twin->hide();
        return;
    }
    m_formula->setText(answer->formula, answer->figures);
    showResults(*answer);
    showMoves(*answer);
    showCharts(open, around);
    showText(m_notes, answer->notes.join(u'\n'));
    m_cautions->setCautions(answer->cautions);
    QStringList copy{tr("%1, %2").arg(open.sheet().title, around.tankName), answer->formula, answer->figures,
                     m_result->text(), m_resultNote->text()};
    copy << answer->origins << answer->notes << m_cautions->text() << m_source->text();
    copy.removeAll(QString());
    m_copy = copy.join(u'\n');
}

void SheetCard::showCharts(const BenchSheet& open, const Surroundings& around)
{
    const auto measures = benchMeasures(open);
    const auto curve = around.row == nullptr ? std::nullopt : benchCurve(open, *around.row);
    const PlainTable table = around.table ? benchTable(curve, measures) : PlainTable{};
    m_twin->setVisible(!table.rows.empty());
    if (table.rows.empty()) {
        m_ways->setMeasures(measures);
        m_curve->setCurve(curve);
        return;
    }
    m_ways->setMeasures({});
    m_curve->setCurve({});
    const bool opened = m_twin->table().rows.empty();
    m_twin->setTable(table);
    const int rows = std::min(kMostTableRows, static_cast<int>(table.rows.size()));
    m_twin->setFixedHeight(m_twin->horizontalHeader()->sizeHint().height() +
                           rows * m_twin->verticalHeader()->defaultSectionSize() + 2);
    if (opened) {
        m_twin->showCurrent();
    }
}

void SheetCard::showResults(const sheets::Answer& answer)
{
    while (QLayoutItem* item = m_results->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    m_result->setText({});
    m_resultNote->setText({});
    int line = 0;
    for (const sheets::Figure& figure : answer.results) {
        const QString value = figure.unit.isEmpty() ? figure.text : tr("%1 %2").arg(figure.text, figure.unit);
        if (figure.main && m_result->text().isEmpty()) {
            m_result->setText(value);
            m_resultNote->setText(figure.range.isEmpty()
                                      ? figure.label
                                      : tr("%1; %2 with the doubt of what went in").arg(figure.label, figure.range));
            continue;
        }
        auto* name = (new Text(theme(), TextStyle::Body, figure.label))->wrapped();
        name->setToken(Token::Ink2);
        m_results->addWidget(name, line, 0, Qt::AlignTop);
        auto* what = new Text(theme(), TextStyle::Strong, value);
        if (figure.isWords) {
            what->setWordWrap(true);
            m_results->addWidget(what, line, 1, 1, 2, Qt::AlignTop);
        } else {
            what->setAlignment(Qt::AlignRight);
            m_results->addWidget(what, line, 1, Qt::AlignTop | Qt::AlignRight);
            m_results->addWidget(new Text(theme(), TextStyle::Secondary, figure.range), line, 2,
                                 Qt::AlignVCenter | Qt::AlignLeft);
        }
        ++line;
    }
    const bool sentences = std::ranges::any_of(answer.results, &sheets::Figure::isWords);
    m_results->setColumnStretch(1, sentences ? 1 : 0);
    m_resultBox->setVisible(line > 0);
    m_result->setVisible(!m_result->text().isEmpty());
    m_resultNote->setVisible(!m_resultNote->text().isEmpty());
}

void SheetCard::showMoves(const sheets::Answer& answer)
{
    std::vector<CardRow> rows;
    for (const sheets::Move& move : answer.moves) {
        const QString name = move.unit.isEmpty() ? move.label : tr("%1, %2", "name, unit").arg(move.label, move.unit);
        CardRow row;
        row.cells = {{name, {}, {}, false, false},
                     {move.before, {}, {}, false, false},
                     {move.after, {}, {}, true, false},
                     {move.note, {}, {}, false, false}};
        if (!move.note.isEmpty()) {
            row.cells[3].status = care::Status::Watch;
        }
        row.sentence = tr("%1 goes from %2 to %3. %4").arg(name, move.before, move.after, move.note);
        rows.push_back(std::move(row));
    }
    m_moves->setRows(std::move(rows));
}

void SheetCard::showWrites(const std::vector<sheets::Write>& writes)
{
    m_buttons.clear();
    for (std::size_t i = 0; i < writes.size(); ++i) {
        if (writes[i].task) {
            continue; // "Make it a task" plans these, all at once
        }
        // Buttons are kept: the one that was pressed keeps the keyboard when the record has changed.
        if (m_buttons.size() == m_pool.size()) {
            auto* button = new QPushButton(tr("Write to the record"));
            m_actions->addWidget(button);
            QWidget::setTabOrder(m_pool.empty() ? static_cast<QWidget*>(m_day) : m_pool.back(), button);
            connect(button, &QPushButton::clicked, this,
                    [this, button] { emit writeWanted(button->property("write").toInt()); });
            m_pool.push_back(button);
        }
        QPushButton* button = m_pool[m_buttons.size()];
        button->setProperty("write", static_cast<int>(i));
        button->setProperty("keyHint", m_buttons.empty() ? tr("W") : QString());
        button->setAccessibleName(writes[i].label);
        button->setToolTip(writes[i].label);
        m_buttons.push_back(button);
    }
    for (std::size_t i = 0; i < m_pool.size(); ++i) {
        m_pool[i]->setVisible(i < m_buttons.size());
    }
}

void SheetCard::showActions(const BenchSheet& open, const Surroundings& around)
{
    const bool may = open.answer() && around.writable;
    const std::vector<sheets::Write> writes = may ? open.answer()->writes : std::vector<sheets::Write>{};
    showWrites(writes);
    const bool plannable =
        std::ranges::any_of(writes, [](const sheets::Write& write) { return write.task || isPlannable(write); });
    const std::vector<double> shares = proposedChanges(open);
    const bool alike = !shares.empty() && std::ranges::all_of(shares, [&](double s) { return s == shares.front(); });
    const int count = static_cast<int>(shares.size());
    m_task->setText(count > 1 && alike ? tr("Make %1 tasks, %2 each")
                                             .arg(count)
                                             .arg(wording::percentText(std::round(shares.front() * 100.0) / 100.0))
                    : count > 1 ? tr("Make %1 tasks").arg(count)
                                : tr("Make it a task"));
    m_task->setVisible(plannable);
    m_day->setVisible(plannable);
    m_copyButton->setVisible(open.answer().has_value());
    m_clear->setVisible(!open.typed().isEmpty());
    showDays(around.now);
    // Buttons made later come last in the layout; copy and clear follow them.
    for (QWidget* last : std::initializer_list<QWidget*>{m_copyButton, m_clear}) {
        m_actions->removeWidget(last);
        m_actions->addWidget(last);
    }
    m_actionBox->setVisible(open.answer().has_value() || !open.typed().isEmpty());
    m_actionBox->updateGeometry();
}

void SheetCard::showDays(const record::Moment& now)
{
    const QDate today = now.localDate();
    if (m_daysFrom == today) {
        return;
    }
    m_daysFrom = today;
    const int chosen = std::max(0, m_day->currentIndex());
    m_day->clear();
    for (int days = 0; days <= kDaysAhead; ++days) {
        m_day->addItem(days == 0   ? tr("for today")
                       : days == 1 ? tr("for tomorrow")
                                   : tr("for %1").arg(wording::weekdayText(today.addDays(days), today)),
                       days);
    }
    m_day->setCurrentIndex(chosen);
}

int SheetCard::taskDays() const
{
    return std::max(0, m_day->currentIndex());
}

void SheetCard::copy()
{
    QGuiApplication::clipboard()->setText(m_copy);
    emit copied(tr("%1: working and result copied").arg(title()));
}

QWidget* SheetCard::firstField()
{
    if (QWidget* wanting = wantingField()) {
        return wanting;
    }
    const auto first = std::ranges::find_if(
        m_fields, [](const SheetField* field) { return !field->isHidden() && field->line() != nullptr; });
    return first == m_fields.end() ? pinButton() : (*first)->editor();
}

/// The blank whose figure is at fault, else the first that is still empty; nullptr when the sheet waits for none.
QWidget* SheetCard::wantingField() const
{
    for (const SheetField::Need need : {SheetField::Need::Mending, SheetField::Need::Filling}) {
        const auto found = std::ranges::find_if(
            m_fields, [&](const SheetField* field) { return field->need() == need && !field->isHidden(); });
        if (found != m_fields.end()) {
            return (*found)->editor();
        }
    }
    return nullptr;
}

SheetField* SheetCard::field(const QString& key) const
{
    const auto found = std::ranges::find(m_fields, key, &SheetField::key);
    return found == m_fields.end() ? nullptr : *found;
}

QString SheetCard::resultText() const
{
    return m_result->isHidden() ? QString() : m_result->text();
}

} // namespace littoral::ui
