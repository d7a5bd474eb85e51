// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPaintDevice>
#include <QPaintEngine>
#include <QRegion>
#include <memory>
#include <vector>

namespace littoral::ui::test {

/// A run of text on a recording device, in its pixels.
struct RecordedText
{
    QString text;
    QRectF ink, shown;
    double baseline = 0.0;
    double end = 0.0; ///< where the next run would begin
};

/// Keeps what text is drawn where, how clips cut it and which opaque rectangles are painted over it.
class TextRecorder final : public QPaintDevice
{
public:
    explicit TextRecorder(QSize size);
    ~TextRecorder() override;
    TextRecorder(const TextRecorder&) = delete;
    TextRecorder& operator=(const TextRecorder&) = delete;
    TextRecorder(TextRecorder&&) = delete;
    TextRecorder& operator=(TextRecorder&&) = delete;

    [[nodiscard]] QPaintEngine* paintEngine() const override;
    [[nodiscard]] const std::vector<RecordedText>& texts() const;

protected:
    [[nodiscard]] int metric(PaintDeviceMetric metric) const override;

private:
    class Engine;
    QSize m_size;
    std::unique_ptr<Engine> m_engine;
};

} // namespace littoral::ui::test
