// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/text_recorder.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QPainterPath>
#include <QScreen>
#include <cmath>

namespace littoral::ui::test {

namespace {

constexpr double kWhole = 1e6;
constexpr int kRoundedElements = 17; // of a rounded rectangle's path: a start, four sides, four corners
constexpr double kJoin = 2.0;        // px between runs of one line: digits are drawn one by one

} // namespace

class TextRecorder::Engine final : public QPaintEngine
{
public:
    Engine()
        : QPaintEngine(QPaintEngine::AllFeatures)
    {
    }

    bool begin(QPaintDevice*) override
    {
        setActive(true);
        m_clip = whole();
        m_transform = {};
        return true;
    }
    bool end() override
    {
        setActive(false);
        return true;
    }
    Type type() const override { return QPaintEngine::User; }
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {}
    void drawLines(const QLineF*, int) override {}
    void drawLines(const QLine*, int) override {}
    void drawPoints(const QPointF*, int) override {}
    void drawEllipse(const QRectF&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}

    void drawRects(const QRectF* rects, int count) override
    {
        for (int i = 0; i < count; ++i) {
            cover(rects[i]);
        }
    }
    void drawRects(const QRect* rects, int count) override
    {
        for (int i = 0; i < count; ++i) {
            cover(rects[i]);
        }
    }
    void drawPath(const QPainterPath& path) override
    {
        if (path.elementCount() == 5 || path.elementCount() == kRoundedElements) {
            cover(path.boundingRect());
        }
    }

    void updateState(const QPaintEngineState& now) override
    {
        const DirtyFlags dirty = now.state();
        if (dirty.testFlag(DirtyTransform)) {
            m_transform = now.transform();
        }
        if (dirty.testFlag(DirtyBrush)) {
            m_fill = now.brush();
        }
        if (dirty.testFlag(DirtyOpacity)) {
            m_opacity = now.opacity();
        }
        if (dirty.testFlag(DirtyClipEnabled)) {
            m_clipOn = now.isClipEnabled();
        }
        if (dirty.testFlag(DirtyClipRegion)) {
            clipTo(m_transform.mapRect(QRectF(now.clipRegion().boundingRect())), now.clipOperation());
        }
        if (dirty.testFlag(DirtyClipPath)) {
            clipTo(m_transform.mapRect(now.clipPath().boundingRect()), now.clipOperation());
        }
    }

    void drawTextItem(const QPointF& at, const QTextItem& item) override
    {
        const QString text = item.text();
        if (text.trimmed().isEmpty()) {
            return;
        }
        const QFontMetricsF metrics(item.font());
        RecordedText made;
        made.text = text;
        made.ink = m_transform.mapRect(metrics.tightBoundingRect(text).translated(at));
        made.shown = m_clipOn ? made.ink.intersected(m_clip) : made.ink;
        made.baseline = m_transform.map(at).y();
        made.end = m_transform.map(at + QPointF(item.width(), 0)).x();
        const double start = m_transform.map(at).x();
        // A label around which nothing else stands is one text, however many runs it was drawn in.
        if (!m_texts.empty() && std::abs(m_texts.back().baseline - made.baseline) < 0.01 &&
            std::abs(m_texts.back().end - start) < kJoin) {
            RecordedText& before = m_texts.back();
            before.text += made.text;
            before.ink = before.ink.united(made.ink);
            before.shown = before.shown.united(made.shown);
            before.end = made.end;
            return;
        }
        m_texts.push_back(made);
    }

    std::vector<RecordedText> m_texts;

private:
    static QRectF whole() { return {-kWhole, -kWhole, 2 * kWhole, 2 * kWhole}; }

    void clipTo(const QRectF& rect, Qt::ClipOperation operation)
    {
        if (operation == Qt::NoClip) {
            m_clip = whole();
            m_clipOn = false;
            return;
        }
        m_clip = operation == Qt::ReplaceClip || !m_clipOn ? rect : m_clip.intersected(rect);
        m_clipOn = true;
    }

    /// An opaque rectangle takes away what was written under it.
    void cover(const QRectF& rect)
    {
        if (m_fill.style() != Qt::SolidPattern || m_fill.color().alpha() < 255 || m_opacity < 1.0) {
            return;
        }
        QRectF over = m_transform.mapRect(rect);
        if (m_clipOn) {
            over = over.intersected(m_clip);
        }
        for (RecordedText& text : m_texts) {
            if (!over.intersects(text.shown)) {
                continue;
            }
            if (over.contains(text.shown)) {
                text.shown = {};
            } else if (over.left() <= text.shown.left() && over.right() < text.shown.right()) {
                text.shown.setLeft(over.right());
            } else if (over.right() >= text.shown.right()) {
                text.shown.setRight(over.left());
            } else {
                text.shown.setRight(over.left()); // a hole in the middle: the longer half is no better than none
            }
        }
    }

    QTransform m_transform;
    QRectF m_clip = whole();
    bool m_clipOn = false;
    QBrush m_fill;
    double m_opacity = 1.0;
};

TextRecorder::TextRecorder(QSize size)
    : m_size(size)
    , m_engine(std::make_unique<Engine>())
{
}

TextRecorder::~TextRecorder() = default;

QPaintEngine* TextRecorder::paintEngine() const
{
    return m_engine.get();
}

const std::vector<RecordedText>& TextRecorder::texts() const
{
    return m_engine->m_texts;
}

int TextRecorder::metric(PaintDeviceMetric metric) const
{
    const QScreen* screen = QGuiApplication::primaryScreen();
    const double dpi = screen == nullptr ? 96.0 : screen->logicalDotsPerInch();
    switch (metric) {
    case PdmWidth:
        return m_size.width();
    case PdmHeight:
        return m_size.height();
    case PdmWidthMM:
        return static_cast<int>(m_size.width() * 25.4 / dpi);
    case PdmHeightMM:
        return static_cast<int>(m_size.height() * 25.4 / dpi);
    case PdmNumColors:
        return 1 << 24;
    case PdmDepth:
        return 32;
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
        return static_cast<int>(std::lround(dpi));
    case PdmDevicePixelRatio:
        return 1;
    case PdmDevicePixelRatioScaled:
        return static_cast<int>(devicePixelRatioFScale());
    default:
        return 0;
    }
}

} // namespace littoral::ui::test
