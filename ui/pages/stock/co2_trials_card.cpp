// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/stock/co2_trials_card.h"

#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/flow_layout.h"

#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using facade::Co2Trial;
using facade::TrialPh;

namespace {

constexpr std::size_t kMostShown = 12;

QString colourName(const QString& colour)
{
    return colour == u"blue"_s     ? Co2TrialsCard::tr("blue")
           : colour == u"green"_s  ? Co2TrialsCard::tr("green")
           : colour == u"yellow"_s ? Co2TrialsCard::tr("yellow")
           : colour.isEmpty()      ? Co2TrialsCard::tr("not looked at")
                                   : colour;
}

QString phText(const TrialPh& reading)
{
    const QString ph = wording::numberText(reading.ph, 2);
    const double hours = std::round(reading.hours);
    return hours < 0.0 ? Co2TrialsCard::tr("%1, %2 h before").arg(ph, wording::numberText(-hours, 0))
                       : Co2TrialsCard::tr("%1 after %2 h").arg(ph, wording::numberText(hours, 0));
}

QString co2Text(const TrialPh& reading)
{
    if (!reading.co2) {
        return Co2TrialsCard::tr("unknown: no KH");
    }
    const QString range = reading.co2Low && reading.co2High
                              ? Co2TrialsCard::tr("%1–%2").arg(wording::numberText(*reading.co2Low, 0),
                                                               wording::numberText(*reading.co2High, 0))
                              : QString();
    const QString middle = wording::numberText(*reading.co2, 0);
    return range.isEmpty() ? middle : Co2TrialsCard::tr("%1 (%2)").arg(middle, range);
}

CardCell setCell(const Co2Trial& trial, const QDate& today)
{
    CardCell cell;
    cell.text = wording::dateText(trial.at.localDate(), today);
    cell.strong = true;
    if (trial.target_mg_per_L) {
        cell.details << Co2TrialsCard::tr("%1 mg/L").arg(wording::numberText(*trial.target_mg_per_L, 0));
    }
    if (trial.hoursADay) {
        cell.details << Co2TrialsCard::tr("%1 h a day").arg(wording::numberText(*trial.hoursADay, 1));
    }
    if (!trial.set.isEmpty()) {
        cell.details << wording::subjectText(trial.set);
    }
    return cell;
}

/// pH and CO2 in two columns, line by line.
void addReadings(const Co2Trial& trial, CardCell& ph, CardCell& co2)
{
    QStringList left;
    QStringList right;
    const auto add = [&](const TrialPh& reading) {
        left << phText(reading);
        right << co2Text(reading);
    };
    if (trial.before) {
        add(*trial.before);
    }
    for (const TrialPh& reading : trial.after) {
        add(reading);
    }
    if (left.isEmpty()) {
        ph.text = Co2TrialsCard::tr("not read");
        co2.text = Co2TrialsCard::tr("unknown");
        return;
    }
    ph.text = left.takeFirst();
    ph.details = left;
    co2.text = right.takeFirst();
    co2.details = right;
}

CardCell animalsCell(const Co2Trial& trial)
{
    CardCell cell;
    if (trial.signs.empty()) {
        cell.text = trial.looked ? Co2TrialsCard::tr("nothing amiss") : Co2TrialsCard::tr("nothing noted");
        if (trial.looked) {
            cell.status = care::Status::Ok;
        }
        return cell;
    }
    QStringList lines;
    for (const facade::TrialSign& sign : trial.signs) {
        const QString what = wording::subjectText(sign.subject);
        lines << (sign.loss ? Co2TrialsCard::tr("lost: %1").arg(what)
                            : Co2TrialsCard::tr("%1, %2").arg(what, wording::severityWord(sign.severity)));
    }
    cell.status = care::Status::Act;
    cell.strong = true;
    cell.text = lines.takeFirst();
    cell.details = lines;
    return cell;
}

CardRow rowOf(const Co2Trial& trial, const QDate& today)
{
    CardRow row;
    CardCell ph;
    CardCell co2;
    addReadings(trial, ph, co2);
    row.cells = {setCell(trial, today), {colourName(trial.colour), {}, {}, false, false}, ph, co2, animalsCell(trial)};
    const auto whole = [](const CardCell& cell) { return (QStringList{cell.text} + cell.details).join(u", "_s); };
    row.sentence =
        Co2TrialsCard::tr("CO₂ set %1. Indicator: %2. pH: %3. CO₂ in mg/L: %4. Animals: %5.")
            .arg(whole(row.cells[0]), row.cells[1].text, whole(row.cells[2]), whole(row.cells[3]), whole(row.cells[4]));
    return row;
}

} // namespace

Co2TrialsCard::Co2TrialsCard(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : StockCard(theme, tr("CO₂: what each change came to"), parent)
    , m_keeper(keeper)
    , m_table(new CardTable(theme))
{
    Text* caution = addText(TextStyle::Strong, tr("Animals gasping at the surface: gas off, air on, first. Then change "
                                                  "some water and look for the cause."));
    caution->setToken(Token::Act);
    addText(TextStyle::Secondary,
            tr("One step at a time, with somebody there for the next hours. A cylinder stands upright and fixed, in a "
               "room with fresh air; leave valves and refills to licensed practice."));
    m_table->setAccessibleName(tr("Changes of CO₂ and what came of them"));
    m_table->setColumns({{tr("Set"), false, 1.0},
                         {tr("Indicator"), false, 0.0},
                         {tr("pH"), false, 1.0},
                         {tr("CO₂, mg/L"), false, 1.0},
                         {tr("Animals, 48 h"), false, 1.4}});
    body()->addWidget(m_table);
    m_none =
        addText(TextStyle::Body, tr("No change of the CO₂ is recorded. \"CO₂ set\" records one; pH read before and "
                                    "some hours after it, and the indicator's colour, tell what came of it."));
    addText(TextStyle::Secondary,
            tr("CO₂ by pH and KH, in brackets what the steps of both leave open; other acids make it read too high. "
               "The indicator lags by one to three hours."));
    makeButtons();
    connect(m_table, &CardTable::activatedRow, this, [this](int row) {
        if (row >= 0 && row < static_cast<int>(m_trials.size())) {
            emit entryOpenWanted(m_trials[static_cast<std::size_t>(row)].entry);
        }
    });
}

void Co2TrialsCard::makeButtons()
{
    m_buttons = new QWidget;
    auto* flow = new FlowLayout(m_buttons, 8);
    flow->setContentsMargins(0, 0, 0, 0);
    const auto button = [&](const QString& text, const QString& name, auto run) {
        auto* made = new QPushButton(text);
        made->setAccessibleName(name);
        connect(made, &QPushButton::clicked, this, run);
        flow->addWidget(made);
    };
    button(tr("CO₂ set..."), tr("Record a change of the CO₂"), [this] {
        record::Entry entry;
        entry.layout = m_layout;
        if (const record::LayoutRecord* layout = m_keeper.row().layout(m_layout)) {
            entry.tank = layout->layout.tank;
        }
        entry.kind = record::EntryKind::Co2Change;
        entry.at = m_keeper.clock().now();
        emit newEntryWanted(entry);
    });
    for (const auto& [colour, text] :
         {std::pair{u"blue"_s, tr("Indicator blue")}, std::pair{u"green"_s, tr("Indicator green")},
          std::pair{u"yellow"_s, tr("Indicator yellow")}}) {
        button(text, tr("%1 now").arg(text), [this, colour = colour] { noteColour(colour); });
    }
    body()->addWidget(m_buttons);
}

void Co2TrialsCard::setLayout(record::LayoutId layout, const facts::FactBook& book)
{
    m_layout = layout;
    const record::LayoutRecord* found = m_keeper.row().layout(layout);
    const record::Moment now = m_keeper.clock().now();
    m_trials = found == nullptr ? std::vector<Co2Trial>{} : facade::co2Trials(m_keeper.row(), *found, book, now);
    if (m_trials.size() > kMostShown) {
        m_trials.resize(kMostShown);
    }
    std::vector<CardRow> rows;
    for (const Co2Trial& trial : m_trials) {
        rows.push_back(rowOf(trial, now.localDate()));
    }
    m_table->setRows(std::move(rows));
    m_table->setVisible(!m_trials.empty());
    m_none->setVisible(m_trials.empty());
    m_buttons->setEnabled(m_keeper.hasStore() && !m_keeper.isReadOnly());
    setVisible(found != nullptr && (found->layout.co2 != record::Co2Mode::None || !m_trials.empty()));
}

void Co2TrialsCard::noteColour(const QString& colour)
{
    const record::LayoutRecord* layout = m_keeper.row().layout(m_layout);
    if (layout == nullptr) {
        return;
    }
    record::Entry entry;
    entry.tank = layout->layout.tank;
    entry.layout = m_layout;
    entry.kind = record::EntryKind::Observation;
    entry.subject = u"indicator="_s + colour;
    entry.at = m_keeper.clock().now();
    if (const auto done = m_keeper.enter(entry); !done) {
        emit failed(done.error(), tr("Nothing was written."));
        return;
    }
    emit told(tr("Indicator noted as %1").arg(colourName(colour)));
}

} // namespace littoral::ui
