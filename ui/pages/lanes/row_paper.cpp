// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/lanes/row_paper.h"

#include "core/record/parameter.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"
#include "ui/models/day_words.h"
#include "ui/paint/lane_painter.h"
#include "ui/paint/time_header.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

constexpr double kDaysBack = 30.0;
constexpr double kDaysAhead = 21.0;
constexpr std::size_t kMostWork = 5;

QString words(const char* text, const char* meaning = nullptr)
{
    return QCoreApplication::translate("RowPaper", text, meaning);
}

/// "Nitrite 0.8 mg/L NO₂, 24 Nov · Nitrate ...": the newest of each parameter that was ever read.
QString lastReadings(const record::LayoutRecord& layout, const record::Moment& now)
{
    QStringList all;
    for (const record::Parameter& parameter : record::parameters()) {
        if (const record::Reading* reading = layout.newest(parameter.key, now)) {
            all << words("%1 %2, %3", "symbol, value, day")
                       .arg(parameter.symbol, wording::readingWithUnit(*reading),
                            wording::dateText(reading->at.localDate(), now.localDate()));
        }
    }
    return all.join(u" · "_s);
}

QString nextWork(const facade::LaneModel& lane, const QDate& today)
{
    QStringList all;
    for (const facade::LaneChip& chip : lane.chips) {
        if (all.size() == static_cast<qsizetype>(kMostWork)) {
            break;
        }
        all << words("%1: %2").arg(chip.title, wording::dueWhen(chip.item, today));
    }
    return all.join(u" · "_s);
}

class RowPaper
{
public:
    RowPaper(Paper& paper, const std::vector<LanePtr>& lanes, const record::Row& row, const record::Moment& now,
             const QTimeZone& zone)
        : m_paper(paper)
        , m_lanes(lanes)
        , m_row(row)
        , m_now(now)
        , m_metrics(paper.theme())
        , m_header(paper.theme(), m_metrics)
    {
        m_axis.setZone(zone);
        m_axis.setNow(now.utcMs());
        m_axis.showAround(kDaysBack, kDaysAhead);
        std::vector<TankShape> shapes;
        for (const LanePtr& lane : lanes) {
            shapes.push_back(shapeOf(*lane));
        }
        m_frame.width = paper.width();
        const double header = m_metrics.headerWidth(m_frame.width);
        m_frame.axis = m_axis.view(header, m_frame.width - header);
        m_frame.outlineScale = outlineScale(shapes, {std::min(108.0, header * 0.42), 36.0});
    }

    void print()
    {
        if (m_lanes.empty()) {
            m_paper.text(words("No tank of the row is running."));
        }
        for (const LanePtr& lane : m_lanes) {
            block(*lane);
        }
    }

private:
    [[nodiscard]] std::vector<std::pair<QString, QString>> linesOf(const facade::LaneModel& lane) const
    {
        std::vector<std::pair<QString, QString>> lines;
        if (const record::LayoutRecord* layout = m_row.layout(lane.layout)) {
            lines.emplace_back(words("Newest readings"), lastReadings(*layout, m_now));
        }
        lines.emplace_back(words("Next work"), nextWork(lane, m_now.localDate()));
        lines.emplace_back(words("Forecast"), lane.forecastNote);
        std::erase_if(lines, [](const auto& line) { return line.second.isEmpty(); });
        return lines;
    }

    void block(const facade::LaneModel& lane)
    {
        const LaneBox box = layOutLane(lane, LaneKind::Tall, m_metrics, m_frame);
        const QFont font = m_paper.theme().font(12);
        QStringList lines;
        for (const auto& [name, text] : linesOf(lane)) {
            lines << words("%1: %2").arg(name, text);
        }
        double needed = m_header.height() + box.height + 20;
        for (const QString& line : lines) {
            needed += m_paper.heightOf(line, font);
        }
        m_paper.keep(needed);
        if (m_paper.page() != m_headed) { // dates stand once on each page
            m_headed = m_paper.page();
            m_paper.picture(m_header.height(), [&](QPainter& painter, const QRectF& at) {
                painter.save();
                painter.translate(at.topLeft());
                m_header.paint(painter, m_axis, m_frame.axis, m_frame.width);
                painter.restore();
            });
            m_paper.gap(-6);
        }
        m_paper.picture(box.height, [&](QPainter& painter, const QRectF& at) {
            const LanePainter draw(m_paper.theme(), m_metrics);
            painter.save();
            painter.translate(at.topLeft());
            draw.paintLane(painter, lane, box, m_frame, m_header.gridLines(m_axis, m_frame.axis), false);
            draw.paintNow(painter, lane, box);
            painter.restore();
        });
        for (const QString& line : lines) {
            m_paper.text(line, font, Token::Ink2);
        }
        m_paper.gap(14);
    }

    Paper& m_paper;
    const std::vector<LanePtr>& m_lanes;
    const record::Row& m_row;
    record::Moment m_now;
    LaneMetrics m_metrics;
    TimeHeader m_header;
    TimeAxis m_axis;
    LaneFrame m_frame;
    int m_headed = 0;
};

} // namespace

PaperJob rowPaper(std::vector<LanePtr> lanes, const record::Row& row, const record::Moment& now, const QTimeZone& zone)
{
    PaperJob job;
    job.head = {words("The whole row"), words("Summary, tank by tank"), momentText(now, QDate())};
    job.body = [lanes = std::move(lanes), &row, now, zone](Paper& paper) {
        RowPaper(paper, lanes, row, now, zone).print();
    };
    return job;
}

} // namespace littoral::ui
