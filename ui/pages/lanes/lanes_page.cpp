// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/lanes/lanes_page.h"

#include "core/facade/row_load.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"
#include "ui/models/day_words.h"
#include "ui/models/guide_shelves.h"
#include "ui/pages/lanes/lanes_bar.h"
#include "ui/pages/lanes/row_paper.h"
#include "ui/widgets/lanes/lane_access.h"
#include "ui/widgets/lanes/lane_view.h"
#include "ui/widgets/lanes/why_strip.h"

#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr int kMinuteMs = 60'000;
constexpr int kLoadDays = 7;
constexpr int kLinesForLoad = 28; // height of the page in lines of text below which the line of loads gives way

} // namespace

LanesPage::LanesPage(facade::Keeper& keeper, facade::Forecasts& forecasts, Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_keeper(keeper)
    , m_forecasts(forecasts)
    , m_ease(keeper, forecasts)
    , m_feed(keeper, forecasts, m_ease)
    , m_bar(new LanesBar(theme, m_axis))
    , m_load((new Text(theme, TextStyle::Secondary))->wrapped())
    , m_view(new LaneView(theme, m_axis))
    , m_why(new WhyStrip(theme, keeper.clock(), [this](const QString& text) {
        const record::Moment day = momentFrom(text, m_keeper.clock().now());
        return day.isValid() ? day.localDate() : QDate();
    }))
{
    setAccessibleName(tr("Lanes"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_bar);
    column->addWidget(m_load);
    column->addWidget(m_view, 1);
    column->addWidget(m_why);
    m_load->setAccessibleName(tr("Work of today and of seven days"));
    const auto inset = [this, &theme] {
        m_load->setContentsMargins(theme.px(14), theme.px(4), theme.px(14), theme.px(4));
    };
    connect(&theme, &Theme::changed, this, inset);
    inset();
    setFocusProxy(m_view);
    updateNow();
    m_axis.showAround(28, 21);
    m_soon.setSingleShot(true);
    m_soon.setInterval(0);
    m_minute.setInterval(kMinuteMs);
    connect(&m_soon, &QTimer::timeout, this, &LanesPage::refresh);
    connect(&m_minute, &QTimer::timeout, this, [this] {
        updateNow();
        refresh();
    });
    connect(&m_keeper, &facade::Keeper::changed, this, &LanesPage::refresh);
    // A fresh store is looked at from its own now, whatever was panned to before.
    connect(&m_keeper, &facade::Keeper::storeOpened, this, [this] {
        updateNow();
        m_axis.showAround(28, 21);
        refresh();
    });
    connect(&m_keeper, &facade::Keeper::storeClosed, this, &LanesPage::refresh);
    // Forecasts arrive one by one; those of one turn of the event loop are drawn together.
    connect(&m_forecasts, &facade::Forecasts::ready, &m_soon, qOverload<>(&QTimer::start));
    connect(&m_ease, &facade::EaseDesk::weighed, &m_soon, qOverload<>(&QTimer::start));
    connectView();
    connectWork();
    m_minute.start();
    refresh();
}

void LanesPage::connectView()
{
    connect(m_bar, &LanesBar::optionsChanged, this, [this] {
        m_view->setOptions(m_bar->options());
        updateLegend();
    });
    connect(m_bar, &LanesBar::nowWanted, this, &LanesPage::showNow);
    connect(m_bar, &LanesBar::filterChanged, this, [this](const QString& text) {
        m_filter = text.trimmed();
        refresh();
    });
    connect(m_bar, &LanesBar::filterClosed, m_view, qOverload<>(&QWidget::setFocus));
    auto* find = new QShortcut(QKeySequence::Find, this);
    find->setContext(Qt::WidgetWithChildrenShortcut);
    connect(find, &QShortcut::activated, this, &LanesPage::openFilter);
    connect(m_view, &LaneView::selectionChanged, this, &LanesPage::updateWhy);
    connect(m_view, &LaneView::laneSelected, this, [this](record::TankId tank) { emit selected(tank); });
    connect(m_view, &LaneView::entryOpenRequested, this, &LanesPage::entryOpenWanted);
    connect(m_view, &LaneView::readingOpenRequested, this, &LanesPage::readingOpenWanted);
    connect(m_view, &LaneView::laneOpenRequested, this, &LanesPage::layoutOpenWanted);
    connect(m_view, &LaneView::waterChangeRequested, this, &LanesPage::waterChangeWanted);
    connect(m_view, &LaneView::openRequested, this,
            [this](const facade::LaneChip& chip) { emit workOpenWanted(chip.item); });
}

void LanesPage::connectWork()
{
    const auto markDone = [this](const facade::LaneChip& chip) {
        if (!m_keeper.isReadOnly()) {
            const bool question = chip.item.reason.loosening.has_value();
            const QString sentence =
                question ? tr("Water changes eased: %1").arg(wording::easeProposal(*chip.item.reason.loosening))
                         : tr("%1: done today.").arg(chip.title);
            writeWork(m_keeper.markDone(chip.item, m_keeper.clock().now()), sentence);
        }
    };
    connect(m_view, &LaneView::doneRequested, this, markDone);
    connect(m_view, &LaneView::snoozeRequested, m_why, &WhyStrip::askSnooze);
    connect(m_view, &LaneView::skipRequested, m_why, &WhyStrip::askSkip);
    connect(m_view, &LaneView::moveRequested, this, [this](const facade::LaneChip& chip, const QDate& day) {
        if (!m_keeper.isReadOnly()) {
            writeWork(
                m_keeper.moveTo(chip.item, day),
                tr("%1: moved by hand to %2.").arg(chip.title, wording::weekdayText(day, m_keeper.clock().today())));
        }
    });
    connect(m_why, &WhyStrip::doneWanted, this, [this, markDone] {
        if (const auto* chip = m_view->selectedChip()) {
            markDone(facade::LaneChip(*chip));
        }
        m_view->setFocus();
    });
    connect(m_why, &WhyStrip::snoozeWanted, this, [this] {
        if (const auto* chip = m_view->selectedChip()) {
            m_why->askSnooze(*chip);
        }
    });
    connect(m_why, &WhyStrip::skipWanted, this, [this] {
        if (const auto* chip = m_view->selectedChip()) {
            m_why->askSkip(*chip);
        }
    });
    connect(m_why, &WhyStrip::openWanted, this, [this] { m_view->activate(); });
    connect(m_why, &WhyStrip::snoozed, this, [this](const facade::LaneChip& chip, const QDate& until) {
        writeWork(m_keeper.snooze(chip.item, until),
                  tr("%1: snoozed until %2.").arg(chip.title, wording::weekdayText(until, m_keeper.clock().today())));
    });
    connect(m_why, &WhyStrip::skipped, this, [this](const facade::LaneChip& chip, const QString& reason) {
        writeWork(m_keeper.skip(chip.item, reason), tr("%1: skipped.").arg(chip.title));
    });
    connect(m_why, &WhyStrip::ruleWanted, this, &LanesPage::ruleWanted);
    connect(m_why, &WhyStrip::asked, m_view, qOverload<>(&QWidget::setFocus));
}

void LanesPage::writeWork(const Result<void>& outcome, const QString& sentence)
{
    if (outcome) {
        emit told(sentence);
    } else {
        emit failed(outcome.error(), tr("Nothing was changed in the store."));
    }
}

void LanesPage::setShown(const std::vector<record::LayoutId>& layouts)
{
    m_shown = layouts;
    refresh();
}

QStringList LanesPage::focusedTopics() const
{
    const facade::LaneModel* lane = m_view->selectedLane();
    const std::optional<LaneItem>& item = m_view->cursor().item();
    if (lane == nullptr || !item) {
        return {u"phase"_s};
    }
    const std::size_t index = item->index;
    if (item->row == LaneRow::Due) {
        return index < lane->chips.size() ? QStringList{lane->chips[index].item.templateKey, u"cadence"_s}
                                          : QStringList{u"cadence"_s};
    }
    if (item->row == LaneRow::Events) {
        const record::LayoutRecord* layout = m_keeper.row().layout(lane->layout);
        if (layout == nullptr || index >= lane->events.size()) {
            return {};
        }
        const auto entry = std::ranges::find(layout->entries, lane->events[index].entry, &record::Entry::id);
        QStringList topics;
        if (entry != layout->entries.end()) {
            topics << entry->subject << entryTopic(entry->kind);
        }
        return topics;
    }
    if (item->row == LaneRow::Notices) {
        const bool alert = index < lane->alerts.size();
        return {alert && !lane->series.empty() ? lane->series.front().parameter : u"gate"_s};
    }
    std::size_t before = 0; // readings count through all series
    for (const facade::LaneSeries& series : lane->series) {
        if (index < before + series.marks.size()) {
            return {series.parameter};
        }
        before += series.marks.size();
    }
    return {};
}

void LanesPage::setSelected(record::TankId tank)
{
    m_view->selectTank(tank);
}

void LanesPage::showNow()
{
    m_view->showNow();
}

void LanesPage::openFilter()
{
    m_bar->openFilter();
}

void LanesPage::refresh()
{
    std::vector<LanePtr> lanes = m_feed.lanes(m_shown.value_or(m_feed.runningLayouts()));
    if (!m_filter.isEmpty()) {
        std::erase_if(lanes,
                      [this](const LanePtr& lane) { return !lane->name.contains(m_filter, Qt::CaseInsensitive); });
    }
    std::vector<TankShape> shapes;
    for (const record::Tank& tank : m_keeper.row().tanks) {
        shapes.push_back({tank.length_cm, tank.height_cm, 0.15});
    }
    m_view->setRowShapes(std::move(shapes));
    if (lanes != m_view->lanes()) {
        m_view->setLanes(std::move(lanes));
    }
    m_why->setReadOnly(m_keeper.hasStore() && m_keeper.isReadOnly());
    updateLoad();
    updateExtent();
    updateLegend();
    updateWhy();
    const bool empty = m_keeper.row().tanks.empty();
    if (empty != m_empty) {
        m_empty = empty;
        emit emptyChanged(empty);
    }
}

/// On a low page the lanes and the reason for the chosen work come first.
void LanesPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_load->setVisible(!m_keeper.row().tanks.empty() && height() >= m_load->fontMetrics().height() * kLinesForLoad);
}

/// The row's work, not only that of the lanes on show. Reckoned anew when the record or the day has changed.
void LanesPage::updateLoad()
{
    const record::Moment now = m_keeper.clock().now();
    const QDate today = now.localDate();
    if (m_loadDay == today && m_loadRevision == m_keeper.revision()) {
        return;
    }
    m_loadDay = today;
    m_loadRevision = m_keeper.revision();
    m_load->setVisible(!m_keeper.row().tanks.empty() && height() >= m_load->fontMetrics().height() * kLinesForLoad);
    const facade::RowLoad load = facade::rowLoad(m_keeper.row(), now, kLoadDays);
    QString text =
        wording::rowLoadText(load.minutes(1), load.litres(1), load.minutes(kLoadDays), load.litres(kLoadDays));
    if (const facade::LoadDay* meeting = load.firstCollision()) {
        text += QLatin1Char(' ') + tr("%1: %2", "day, which large changes meet")
                                       .arg(wording::weekdayText(meeting->day, today),
                                            wording::collisionText(meeting->large, meeting->freerDay, today));
    }
    m_load->setText(text);
}

PaperJob LanesPage::paper()
{
    LaneFeed feed(m_keeper, m_forecasts, m_ease);
    return rowPaper(feed.lanes(feed.runningLayouts()), m_keeper.row(), m_keeper.clock().now(), m_axis.zone());
}

void LanesPage::updateNow()
{
    m_axis.setNow(m_keeper.clock().now().utcMs());
}

void LanesPage::updateExtent()
{
    const qint64 now = m_axis.now();
    qint64 first = now - 28 * kDayMs;
    qint64 oldest = 63 * kDayMs;
    for (const LanePtr& lane : m_view->lanes()) {
        first = std::min(first, lane->flooded);
        oldest = std::max(oldest, lane->ended.value_or(now) - lane->flooded);
    }
    m_bar->setExtent(first, now + 28 * kDayMs, static_cast<double>(oldest) / static_cast<double>(kDayMs));
}

void LanesPage::updateLegend()
{
    std::vector<MarkLegend::Entry> entries;
    for (const LanePtr& lane : m_view->lanes()) {
        for (const facade::LaneSeries* series : shownSeries(*lane, m_view->options())) {
            const MarkLegend::Entry entry{series->parameter, series->name};
            if (std::ranges::find(entries, entry) == entries.end()) {
                entries.push_back(entry);
            }
        }
    }
    m_bar->setLegend(std::move(entries));
}

void LanesPage::updateWhy()
{
    const facade::LaneModel* lane = m_view->selectedLane();
    if (lane == nullptr) {
        const QString advice = m_filter.isEmpty() ? tr("Tick a tank in the list on the left to give it a lane.")
                                                  : tr("No tank on show has \"%1\" in its name.").arg(m_filter);
        m_why->showSentence(facade::Status::Unknown, tr("No lane on show"), advice, false);
        return;
    }
    if (m_view->isMoving()) {
        m_why->showSentence(
            facade::Status::Waiting, tr("Moving work to another day"),
            tr("Left and right go by a day, with Shift by a week. Enter moves it there, Esc leaves it where it is."),
            false);
        return;
    }
    if (const auto* chip = m_view->selectedChip()) {
        m_why->showWork(lane->name, *chip);
        return;
    }
    const auto& item = m_view->cursor().item();
    if (!item) {
        m_why->showSentence(lane->status, lane->name,
                            lane->statusLine.isEmpty() ? tr("No work is due in this lane.") : lane->statusLine, true);
        return;
    }
    m_why->showSentence(lane->status, lane->name, item->sentence, true);
}

} // namespace littoral::ui
