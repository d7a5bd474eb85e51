// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/reset_card.h"

#include "ui/models/reset_fans.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/fan_stack.h"
#include "ui/widgets/flow_layout.h"

#include <QComboBox>
#include <QTimeZone>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {
constexpr int kChartHeight = 330;
} // namespace

ResetCard::ResetCard(Theme& theme, QWidget* parent)
    : HistoryCard(theme, tr("Carry on, or start afresh: both forecast"), parent)
    , m_start(new QComboBox)
    , m_headline(addText(TextStyle::Strong, Token::Ink))
    , m_state(addText(TextStyle::Secondary, Token::Ink2))
    , m_charts(new FanStack(theme, m_axis))
    , m_table(new CardTable(theme))
    , m_sentences(nullptr)
{
    setProperty("topic", u"recover-or-reset"_s);
    setNote(tr("From today on, by the same model. The fan before the other is the fresh start's; the paler one carries "
               "on as planned."));
    for (const auto start :
         {record::StartMethod::NewMedia, record::StartMethod::MatureMedia, record::StartMethod::Starter}) {
        m_start->addItem(facade::startWords(start), static_cast<int>(start));
    }
    m_start->setAccessibleName(tr("How the new layout would begin"));
    m_start->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_start->setMinimumContentsLength(20);
    auto* choice = new QWidget;
    auto* flow = new FlowLayout(choice, 8);
    flow->setContentsMargins(12, 2, 12, 4);
    flow->addWidget(new Text(theme, TextStyle::Body, tr("A fresh start with")));
    flow->addWidget(m_start);
    column()->addWidget(choice);
    auto* room = new QWidget;
    auto* inner = new QVBoxLayout(room);
    inner->setContentsMargins(8, 0, 8, 0);
    inner->setSpacing(6);
    inner->addWidget(m_charts);
    inner->addWidget(m_table);
    column()->addWidget(room);
    m_sentences = addText(TextStyle::Secondary, Token::Ink2);
    m_charts->setAccessibleName(tr("Total ammonia and nitrite on both ways"));
    // The column scrolls under the pointer; the keyboard moves the cursor of the charts.
    m_charts->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_table->setAccessibleName(tr("Gates on both ways: when readings clear, and the changes until then"));
    m_table->setColumns({{tr("Readings\nclear for"), false, 1.0},
                         {tr("Carry on"), false, 1.0},
                         {tr("changes\nuntil then"), true, 0.0},
                         {tr("Start afresh"), false, 1.0},
                         {tr("changes\nuntil then"), true, 0.0}});
    connect(&theme, &Theme::changed, this, &ResetCard::sizeChart);
    sizeChart();
    connect(m_start, &QComboBox::activated, this, &ResetCard::startChosen);
    showParts(false);
}

/// As high as its panels need: the column scrolls, never a chart in it.
void ResetCard::sizeChart()
{
    m_charts->setFixedHeight(std::max(theme().px(kChartHeight), m_charts->minimumSizeHint().height()));
}

record::StartMethod ResetCard::start() const
{
    return static_cast<record::StartMethod>(m_start->currentData().toInt());
}

void ResetCard::showParts(bool any)
{
    m_charts->setVisible(any);
    m_table->setVisible(any);
}

void ResetCard::setWaiting()
{
    say(m_state, m_made == nullptr ? tr("Both ways are being forecast.")
                                   : tr("Being forecast again; what is shown is the one before."));
}

void ResetCard::setFailure(const QString& sentence)
{
    m_made.reset();
    say(m_headline, {});
    say(m_sentences, {});
    say(m_state, sentence);
    showParts(false);
}

void ResetCard::setForecast(std::shared_ptr<const facade::ResetForecast> made)
{
    m_made = std::move(made);
    if (m_made == nullptr) {
        return;
    }
    const facade::ResetTable table = facade::resetTable(*m_made);
    say(m_headline, table.headline);
    say(m_state, {});
    m_axis.setNow(m_made->now.utcMs());
    m_axis.setZone(QTimeZone(m_made->now.offsetSeconds()));
    m_axis.setRange(m_made->now.utcMs(), resetEnd(*m_made));
    m_charts->setModel(resetFans(*m_made));
    sizeChart();
    std::vector<CardRow> rows;
    for (const QStringList& texts : table.rows) {
        CardRow row;
        for (const QString& text : texts) {
            row.cells.push_back({text, {}, {}, row.cells.empty(), false});
        }
        row.sentence = tr("%1: carrying on %2, changes until then %3; starting afresh %4, changes until then %5")
                           .arg(texts.value(0), texts.value(1), texts.value(2), texts.value(3), texts.value(4));
        rows.push_back(std::move(row));
    }
    m_table->setRows(std::move(rows));
    say(m_sentences, table.sentences.join(u'\n'));
    showParts(true);
}

} // namespace littoral::ui
