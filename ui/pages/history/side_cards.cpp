// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/side_cards.h"

#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/table_twin.h"

#include <QComboBox>
#include <QKeyEvent>
#include <QPainter>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <map>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString hoursText(double hours)
{
    return wording::plainNumber(hours < 10.0 ? std::round(hours * 10.0) / 10.0 : std::round(hours), 6);
}

/// The points of both lines by age; a cell is empty where a line has none.
PlainTable agesTable(const facade::Comparison& made)
{
    PlainTable table;
    table.caption = made.name;
    table.header = {CompareCard::tr("Age"), made.own.name, made.other.name};
    std::map<double, QStringList> rows;
    const auto put = [&](const facade::AgeLine& line, qsizetype column) {
        for (const auto& [age, value] : line.points) {
            QStringList& row = rows[age];
            row.resize(3);
            row[0] = wording::ageText(static_cast<int>(std::floor(age)));
            row[column] = CompareCard::tr("%1 %2", "number, unit")
                              .arg(wording::numberText(value, made.decimals), made.unitLabel)
                              .trimmed();
        }
    };
    put(made.own, 1);
    put(made.other, 2);
    for (auto& [age, row] : rows) {
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace

ChangesCard::ChangesCard(Theme& theme, QWidget* parent)
    : HistoryCard(theme, tr("What changed before it"), parent)
    , m_table(new CardTable(theme))
    , m_none(addText(TextStyle::Body, Token::Ink2))
{
    setNote(tr("Largest first, against this layout's own 120 days before the window"));
    m_table->setAccessibleName(tr("What changed; Up and Down mark what a change rests on"));
    m_table->setColumns({{tr("Change"), false, 1.0},
                         {tr("Before"), true, 0.0},
                         {tr("After"), true, 0.0},
                         {tr("Days before"), true, 0.0}});
    column()->addWidget(m_table);
    m_statistic = addText(TextStyle::Secondary, Token::Ink3);
    m_steps = addText(TextStyle::Body, Token::Ink2);
    connect(m_table, &CardTable::chosen, this, [this](int row) {
        if (row >= 0 && row < static_cast<int>(m_changes.size())) {
            emit pointed(m_changes[static_cast<std::size_t>(row)].rests);
        }
    });
}

void ChangesCard::setCase(const facade::CaseFile& file)
{
    m_changes = file.changes;
    std::vector<CardRow> rows;
    for (const facade::CaseChange& change : m_changes) {
        CardRow row;
        row.cells = {{change.name, {change.size}, {}, false, false},
                     {change.before, {}, {}, false, false},
                     {change.after, {}, {}, true, false},
                     {QString::number(change.daysBefore), {}, {}, false, false}};
        row.sentence = change.sentence;
        rows.push_back(std::move(row));
    }
    m_table->setRows(std::move(rows));
    m_table->setVisible(!m_changes.empty());
    say(m_none,
        m_changes.empty() ? tr("Nothing in the window stands apart from this layout's own record.") : QString());
    say(m_statistic, m_changes.empty()
                         ? QString()
                         : tr("Statistic: distance from the earlier median over 1.4826 times the median absolute "
                              "deviation; 1 and more is listed. Coming before is not causing."));
    QStringList steps;
    for (const facade::CaseStep& step : file.steps) {
        steps << (step.inWindow ? tr("In the window: %1").arg(step.text) : step.text);
    }
    say(m_steps, steps.isEmpty()
                     ? QString()
                     : tr("Steps in the readings (Pettitt's test, p at most 0.05):\n%1").arg(steps.join(u'\n')));
}

ExposureCard::ExposureCard(Theme& theme, QWidget* parent)
    : HistoryCard(theme, tr("Exposure"), parent)
    , m_table(new CardTable(theme))
    , m_none(addText(TextStyle::Body, Token::Ink2))
{
    setProperty("topic", u"exposure"_s);
    m_table->setAccessibleName(tr("Hours beyond each limit"));
    m_table->setColumns({{tr("Limit"), false, 1.0}, {tr("Hours"), true, 0.0}, {tr("Furthest"), true, 0.0}});
    column()->addWidget(m_table);
    m_note = addText(TextStyle::Secondary, Token::Ink3);
}

void ExposureCard::setCase(const facade::CaseFile& file)
{
    const QDate from =
        QDateTime::fromMSecsSinceEpoch(file.strip.from, Qt::OffsetFromUTC, file.request.question.onset.offsetSeconds())
            .date();
    setHeading(tr("Exposure since %1").arg(wording::dateText(from, file.today)));
    std::vector<CardRow> rows;
    for (const facade::CaseExposure& exposure : file.exposures) {
        CardRow row;
        QStringList details;
        if (exposure.high > 0.0) {
            details << tr("%1–%2 by the kit").arg(hoursText(exposure.low), hoursText(exposure.high));
        }
        row.cells = {{exposure.limit,
                      {tr("%1 days not read").arg(wording::plainNumber(std::round(exposure.notRead / 24.0), 4))},
                      {},
                      false,
                      false},
                     {hoursText(exposure.hours), details, {}, exposure.hours > 0.0, false},
                     {exposure.furthest, {}, {}, false, false}};
        row.sentence = exposure.sentence;
        rows.push_back(std::move(row));
    }
    m_table->setRows(std::move(rows));
    m_table->setVisible(!file.exposures.empty());
    say(m_none, file.exposures.empty()
                    ? tr("No reading since then can be held against a limit. Readings on Rounds fill this.")
                    : QString());
    say(m_note, file.exposures.empty()
                    ? QString()
                    : tr("Straight between readings; stretches of over ten days count as not read."));
}

AgeChartView::AgeChartView(Theme& theme, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(tr("Comparison at equal age"));
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void AgeChartView::setComparison(const facade::Comparison& made)
{
    m_made = made;
    m_current = -1;
    setAccessibleName(tr("%1 at the same age: %2").arg(made.name, made.sentences.join(u' ')));
    partsChanged();
    update();
}

std::vector<AgeChart::Point> AgeChartView::points() const
{
    const LaneMetrics metrics(m_theme);
    return AgeChart(m_theme, metrics, m_made, QRectF(rect())).points();
}

int AgeChartView::partCount() const
{
    return static_cast<int>(m_made.own.points.size() + m_made.other.points.size());
}

QString AgeChartView::partSentence(int part) const
{
    const auto all = points();
    return part >= 0 && part < static_cast<int>(all.size()) ? all[static_cast<std::size_t>(part)].sentence : QString();
}

QRect AgeChartView::partRect(int part) const
{
    const auto all = points();
    return part >= 0 && part < static_cast<int>(all.size())
               ? QRect(all[static_cast<std::size_t>(part)].at.toPoint() - QPoint(8, 8), QSize(16, 16))
               : QRect();
}

QSize AgeChartView::sizeHint() const
{
    return {m_theme.px(300), static_cast<int>(AgeChart::height(LaneMetrics(m_theme)))};
}

QSize AgeChartView::minimumSizeHint() const
{
    return {m_theme.px(180), sizeHint().height()};
}

void AgeChartView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const LaneMetrics metrics(m_theme);
    AgeChart(m_theme, metrics, m_made, QRectF(rect())).paint(painter);
    if (hasFocus() && m_current >= 0) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(m_theme[Token::Accent], 2));
        painter.drawEllipse(partRect(m_current));
    }
    paintFocusRing(painter, m_theme[Token::Accent]);
}

void AgeChartView::keyPressEvent(QKeyEvent* event)
{
    const int step = event->key() == Qt::Key_Right ? 1 : event->key() == Qt::Key_Left ? -1 : 0;
    if (step == 0 || partCount() == 0) {
        ChartWidget::keyPressEvent(event);
        return;
    }
    m_current = std::clamp(m_current + step, 0, partCount() - 1);
    emit reached(partSentence(m_current));
    announcePart();
    update();
}

void AgeChartView::focusInEvent(QFocusEvent* event)
{
    ChartWidget::focusInEvent(event);
    update();
}

void AgeChartView::focusOutEvent(QFocusEvent* event)
{
    ChartWidget::focusOutEvent(event);
    update();
}

CompareCard::CompareCard(Theme& theme, QWidget* parent)
    : HistoryCard(theme, tr("At the same age"), parent)
    , m_what(new QComboBox)
    , m_reference(new QComboBox)
    , m_bar(new QWidget)
    , m_chart(new AgeChartView(theme))
    , m_twin(new TableTwin(theme))
{
    setProperty("topic", u"reference"_s);
    m_what->setAccessibleName(tr("What is compared"));
    m_reference->setAccessibleName(tr("Reference tank or layout"));
    for (QComboBox* box : {m_what, m_reference}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(14);
        connect(box, &QComboBox::activated, this, &CompareCard::choose);
    }
    auto* flow = new FlowLayout(m_bar, 8);
    flow->setContentsMargins(12, 0, 12, 2);
    flow->addWidget(m_what);
    flow->addWidget(m_reference);
    column()->addWidget(m_bar);
    auto* room = new QWidget;
    auto* inner = new QVBoxLayout(room);
    inner->setContentsMargins(8, 0, 8, 0);
    inner->addWidget(m_chart);
    inner->addWidget(m_twin);
    m_twin->setMinimumHeight(m_chart->sizeHint().height());
    m_twin->hide();
    column()->addWidget(room);
    m_said = addText(TextStyle::Body, Token::Ink2);
    connect(m_chart, &AgeChartView::reached, this, [this](const QString& sentence) { setNote(sentence); });
}

void CompareCard::setComparison(const facade::Comparison& made)
{
    m_made = made;
    const QSignalBlocker quietWhat(m_what);
    const QSignalBlocker quietReference(m_reference);
    m_what->clear();
    m_reference->clear();
    for (const auto& [key, name] : made.offers) {
        m_what->addItem(name, key);
    }
    for (const auto& [id, name] : made.references) {
        m_reference->addItem(tr("Reference: %1").arg(name), id.value);
    }
    m_what->setCurrentIndex(m_what->findData(made.key));
    m_reference->setCurrentIndex(m_reference->findData(made.reference.value));
    m_bar->setVisible(!made.offers.empty());
    m_chart->setComparison(made);
    m_twin->setTable(agesTable(made));
    m_twin->setAccessibleName(tr("%1 at the same age, as a table").arg(made.name));
    arrange();
    setNote(made.unitLabel.isEmpty() || !made.any() ? QString() : tr("%1, %2").arg(made.name, made.unitLabel));
    say(m_said, made.any() ? made.sentences.join(u' ')
                           : tr("Another tank or an earlier layout with two readings of the same kind can be compared "
                                "here."));
}

void CompareCard::arrange()
{
    m_chart->setVisible(m_made.any() && !m_table);
    m_twin->setVisible(m_made.any() && m_table);
}

void CompareCard::toggleTable()
{
    m_table = !m_table;
    arrange();
    if (m_made.any()) {
        (m_table ? static_cast<QWidget*>(m_twin) : m_chart)->setFocus(Qt::OtherFocusReason);
    }
}

void CompareCard::choose()
{
    emit wanted(m_what->currentData().toString(), record::LayoutId{m_reference->currentData().toLongLong()});
}

} // namespace littoral::ui
