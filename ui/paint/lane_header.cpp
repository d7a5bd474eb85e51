// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/lane_header.h"

#include "ui/theme/figures.h"

#include <algorithm>
#include <cmath>

namespace littoral::ui {

namespace {

class HeaderWriter final
{
public:
    HeaderWriter(const LaneMetrics& metrics, double width, QSizeF outline, double margin)
        : m(metrics)
        , m_left(std::round(metrics.px(14)))
        , m_width(width)
        , m_y(std::round(margin))
        , m_foot(margin)
        , m_outline(outline)
    {
        if (outline.width() > 0) {
            m_box.outline = QRectF(width - outline.width() - m.px(14), m_y, outline.width() + 4, outline.height() + 2);
        }
    }

    void line(HeaderRole role, const QString& text, const QFont& font, double height, bool withGlyph = false)
    {
        if (text.isEmpty()) {
            return;
        }
        const double indent = withGlyph ? m.glyph + m.px(5) : 0.0;
        const double room = freeWidth() - indent;
        bool first = true;
        const QStringList lines = wrapped(font, text, room);
        for (const QString& each : lines) {
            HeaderLine out{role, QRectF(m_left + indent, m_y, room, height), each, {}};
            if (withGlyph && first) {
                out.glyph = QRectF(m_left, m_y + (height - m.glyph) / 2, m.glyph, m.glyph);
            }
            m_box.lines.push_back(out);
            m_y += height;
            first = false;
        }
    }

    void skip(double height) { m_y += std::round(height); }

    void present(const facade::LaneModel& model)
    {
        if (model.present.empty()) {
            return;
        }
        m_y += std::round(m.px(1));
        double x = m_left;
        for (std::size_t i = 0; i < model.present.size(); ++i) {
            const auto& reading = model.present[i];
            const double symbol = figuresWidth(m.small, reading.symbol);
            const double value = figuresWidth(m.strong, reading.text);
            const double whole = m.px(14) + symbol + m.px(5) + value;
            if (x > m_left && x + whole > m_width - m.px(8)) {
                x = m_left;
                m_y += m.bodyLine;
            }
            PresentBox box;
            box.index = i;
            box.mark = QPointF(x + m.px(4), m_y + m.bodyLine / 2);
            box.symbol = QRectF(x + m.px(14), m_y, symbol, m.bodyLine);
            box.value = QRectF(box.symbol.right() + m.px(5), m_y, value, m.bodyLine);
            m_box.present.push_back(box);
            x = box.value.right() + m.px(11);
        }
        m_y += m.bodyLine;
    }

    HeaderBox finish()
    {
        m_box.height = std::ceil(std::max(m_y, m_box.outline.bottom()) + m_foot);
        return m_box;
    }

private:
    double freeWidth() const
    {
        const bool besideOutline = m_outline.width() > 0 && m_y + 1 < m_box.outline.bottom();
        return (besideOutline ? m_box.outline.left() - m.px(6) : m_width - m.px(8)) - m_left;
    }

    const LaneMetrics& m;
    double m_left;
    double m_width;
    double m_y;
    double m_foot;
    QSizeF m_outline;
    HeaderBox m_box;
};

HeaderBox overviewHeader(const facade::LaneModel& model, const LaneMetrics& m, double width, QSizeF outline)
{
    HeaderWriter writer(m, width, outline, m.px(3));
    writer.line(HeaderRole::Name, model.name, m.strong, m.bodyLine);
    writer.line(HeaderRole::Status, model.statusWord.isEmpty() ? model.statusLine : model.statusWord, m.smallStrong,
                m.bodyLine, true);
    return writer.finish();
}

} // namespace

HeaderBox layOutHeader(const facade::LaneModel& model, LaneKind kind, const LaneMetrics& m, double width,
                       QSizeF outline)
{
    if (kind == LaneKind::Overview) {
        return overviewHeader(model, m, width, outline);
    }
    HeaderWriter writer(m, width, outline, m.px(6));
    writer.line(HeaderRole::Name, model.name, m.name, m.nameLine);
    writer.line(HeaderRole::Size, model.litresAndAge, m.body, m.bodyLine);
    writer.skip(m.px(kind == LaneKind::Tall ? 9 : 3));
    writer.line(HeaderRole::Phase, model.phaseLine, m.strong, m.bodyLine);
    writer.line(HeaderRole::Verdict, model.verdict, m.body, m.bodyLine);
    writer.line(HeaderRole::Status, model.statusLine, m.strong, m.bodyLine, true);
    if (kind == LaneKind::Tall) {
        writer.line(HeaderRole::Next, model.nextLine, m.body, m.bodyLine);
    }
    writer.present(model);
    return writer.finish();
}

void settleHeader(HeaderBox& header, double laneHeight, const LaneMetrics& metrics)
{
    const double spare = std::floor(laneHeight - header.height - metrics.px(2));
    if (spare <= 0.0) {
        return;
    }
    for (PresentBox& box : header.present) {
        box.mark.ry() += spare;
        box.symbol.translate(0, spare);
        box.value.translate(0, spare);
    }
}

} // namespace littoral::ui
