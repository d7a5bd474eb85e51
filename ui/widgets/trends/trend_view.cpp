// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/trends/trend_view.h"

#include "ui/models/trend_words.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace littoral::ui {

using facade::TrendModel;
using facade::TrendSeries;

TrendView::TrendView(const Theme& theme, TimeAxis& axis, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
    , m_axis(axis)
    , m_drawing(std::make_shared<const TrendDrawing>())
    , m_mode(axis.mode())
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Charts of readings"));
    connect(&axis, &TimeAxis::modeChanged, this, &TrendView::axisModeChanged);
    connect(&axis, &TimeAxis::rangeChanged, this, &TrendView::forget);
    connect(&axis, &TimeAxis::nowChanged, this, &TrendView::forget);
    connect(&theme, &Theme::changed, this, [this] {
        m_metrics.reset();
        forget();
        updateGeometry();
    });
}

void TrendView::setDrawing(std::shared_ptr<const TrendDrawing> drawing)
{
    m_drawing = std::move(drawing);
    setSelected(m_tank);
    forget();
    m_part = std::clamp(m_part, 0, std::max(0, partCount() - 1));
    partsChanged();
    updateGeometry();
    describe();
}

void TrendView::setOptions(const TrendOptions& options)
{
    if (options == m_options) {
        return;
    }
    const bool rearranged = options.arrangement != m_options.arrangement;
    const std::size_t parameter = currentParameter();
    m_options = options;
    forget();
    if (rearranged) {
        // The keyboard stays on the same parameter.
        const auto& panels = layoutNow().panels;
        const auto found = std::ranges::find(panels, parameter, &TrendPanelBox::parameter);
        m_part = found == panels.end() ? 0 : static_cast<int>(found - panels.begin());
        partsChanged();
        emit panelChanged();
    }
    updateGeometry();
    describe();
}

void TrendView::setSelected(record::TankId tank)
{
    m_tank = tank;
    // The running layout stands for its tank; an earlier one only where it is alone.
    m_selected = 0;
    bool found = false;
    const auto& tanks = m_drawing->model.tanks;
    for (std::size_t i = 0; i < tanks.size(); ++i) {
        if (tanks[i].tank == tank && (!found || !tanks[i].earlier)) {
            m_selected = i;
            found = true;
        }
    }
    forget();
}

void TrendView::forget()
{
    m_layout.reset();
    m_still.forget();
    update();
}

const TrendLayout& TrendView::layoutNow() const
{
    if (!m_metrics) {
        m_metrics.emplace(m_theme);
    }
    if (!m_layout) {
        m_layout = layOutTrends(*m_drawing, m_options, *m_metrics, m_axis.view(0, width()), QSizeF(size()));
    }
    return *m_layout;
}

qint64 TrendView::floodedOfSelected() const
{
    const auto& tanks = m_drawing->model.tanks;
    return m_selected < tanks.size() ? tanks[m_selected].flooded : 0;
}

void TrendView::axisModeChanged()
{
    // The crosshair stays on the instant it stood on in the selected tank; a stretch means something else now.
    if (m_cursor) {
        m_cursor = ownPlace(m_axis.mode(), instantOf(m_mode, *m_cursor, floodedOfSelected()), floodedOfSelected());
    }
    m_mode = m_axis.mode();
    m_stretch.reset();
    forget();
    describe();
    emit cursorMoved();
    emit stretchChanged();
}

qint64 TrendView::cursor() const
{
    return m_cursor.value_or(ownPlace(m_axis.mode(), m_axis.now(), floodedOfSelected()));
}

void TrendView::setCursor(std::optional<qint64> own)
{
    m_cursor = own;
    describe();
    announcePart();
    update();
    emit cursorMoved();
}

TrendView::Stretch TrendView::stretch() const
{
    if (m_stretch) {
        return *m_stretch;
    }
    const qint64 now = ownPlace(m_axis.mode(), m_axis.now(), floodedOfSelected());
    // At equal age other tanks may be further on than the selected one: what is on show counts.
    const bool age = m_axis.mode() == AxisMode::Age;
    const qint64 from = age ? std::max<qint64>(0, m_axis.from()) : m_axis.from();
    const qint64 to = age ? m_axis.to() : std::min(m_axis.to(), now);
    return {from, std::max(from, to)};
}

void TrendView::setStretch(std::optional<Stretch> stretch)
{
    m_stretch = stretch;
    update();
    emit stretchChanged();
}

std::size_t TrendView::currentParameter() const
{
    const auto& panels = layoutNow().panels;
    const auto part = static_cast<std::size_t>(std::max(0, m_part));
    return part < panels.size() ? panels[part].parameter : 0;
}

int TrendView::partCount() const
{
    return static_cast<int>(layoutNow().panels.size());
}

QString TrendView::partSentence(int part) const
{
    if (part < 0 || part >= partCount()) {
        return {};
    }
    const TrendPanelBox& box = layoutNow().panels[static_cast<std::size_t>(part)];
    const TrendModel& model = m_drawing->model;
    const facade::TrendParameter& parameter = model.parameters[box.parameter];
    const TrendTable table = readoutTable(model, m_axis.view(0, 1), cursor());
    const TrendRow& row = table.rows[box.parameter];
    QStringList parts;
    for (std::size_t tank = 0; tank < row.cells.size(); ++tank) {
        if (!box.tank || *box.tank == tank) {
            const TrendCell& cell = row.cells[tank];
            parts << (cell.notes.isEmpty()
                          ? tr("%1 %2", "tank, value").arg(model.tanks[tank].name, cell.value)
                          : tr("%1 %2, %3", "tank, value, note")
                                .arg(model.tanks[tank].name, cell.value, cell.notes.join(QStringLiteral(", "))));
        }
    }
    return tr("%1, %2, %3: %4", "parameter, unit, day, values")
        .arg(parameter.name, parameter.unitLabel, table.caption, parts.join(QStringLiteral("; ")));
}

QRect TrendView::partRect(int part) const
{
    if (part < 0 || part >= partCount()) {
        return {};
    }
    const TrendPanelBox& box = layoutNow().panels[static_cast<std::size_t>(part)];
    return box.title.united(box.plot).toAlignedRect();
}

void TrendView::describe()
{
    setAccessibleDescription(partSentence(m_part));
}

QSize TrendView::sizeHint() const
{
    return {m_theme.px(700), std::max(minimumSizeHint().height(), m_theme.px(760))};
}

QSize TrendView::minimumSizeHint() const
{
    if (!m_metrics) {
        m_metrics.emplace(m_theme);
    }
    const bool grid = m_options.arrangement == TrendArrangement::Grid;
    const auto columns = grid ? std::max<std::size_t>(1, m_drawing->model.tanks.size()) : 1;
    const int width = static_cast<int>(columns) * m_theme.px(grid ? 170 : 280);
    return {width, static_cast<int>(leastTrendHeight(m_drawing->model, m_options, *m_metrics))};
}

void TrendView::render(QPainter& painter, QSizeF size, const Theme& theme) const
{
    const LaneMetrics metrics(theme);
    const TrendLayout layout = layOutTrends(*m_drawing, m_options, metrics, m_axis.view(0, size.width()), size);
    painter.fillRect(QRectF(QPointF(0, 0), size), theme[Token::Panel]);
    TrendPainter(theme, metrics, *m_drawing, m_options, layout, m_selected).paint(painter, m_axis);
}

void TrendView::paintEvent(QPaintEvent*)
{
    const TrendLayout& layout = layoutNow();
    const TrendPainter trends(m_theme, *m_metrics, *m_drawing, m_options, layout, m_selected);
    QPainter painter(this);
    m_still.paint(painter, size(), m_theme[Token::Panel], [&](QPainter& still) { trends.paint(still, m_axis); });
    if (m_stretch) {
        trends.paintSpan(painter, m_stretch->from, m_stretch->to);
    }
    if (m_cursor) {
        trends.paintCursor(painter, *m_cursor);
    }
    trends.paintCurrent(painter, static_cast<std::size_t>(std::max(0, m_part)));
    paintFocusRing(painter, m_theme[Token::Accent]);
}

void TrendView::resizeEvent(QResizeEvent*)
{
    forget();
}

} // namespace littoral::ui
