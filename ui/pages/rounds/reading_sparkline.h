// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/forecasts.h"
#include "core/record/row.h"
#include "ui/models/round_advice.h"
#include "ui/theme/theme.h"

#include <QWidget>

namespace littoral::ui {

/// One parameter of one tank over its last weeks: marks and line, the forecast's 8-in-10 band where there is one, and
/// the value being typed as an open mark on the now-line.
class ReadingSparkline final : public QWidget
{
    Q_OBJECT

public:
    explicit ReadingSparkline(Theme& theme, QWidget* parent = nullptr);

    /// `forecast` may be null.
    void show(const record::LayoutRecord& layout, const record::Parameter& parameter, const record::Moment& now,
              const facade::ForecastResult* forecast);
    void clear();
    /// The value being typed, in the parameter's shown unit.
    void setTyped(std::optional<double> value, bool odd);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Point
    {
        qint64 at = 0;
        double value = 0.0;
        record::Censoring censoring = record::Censoring::None;
    };
    struct Frame
    {
        QRectF area;
        qint64 from = 0, to = 1;
        double low = 0.0, high = 1.0;
        [[nodiscard]] double x(qint64 at) const;
        [[nodiscard]] double y(double value) const;
    };
    [[nodiscard]] Frame frame() const;
    void paintAxes(QPainter& painter, const Frame& f) const;
    void paintBand(QPainter& painter, const Frame& f) const;
    void paintReadings(QPainter& painter, const Frame& f) const;

    Theme& m_theme;
    QString m_parameter;
    qint64 m_now = 0;
    int m_offset = 0; ///< seconds from UTC, for the day labels
    std::vector<Point> m_points;
    std::vector<TrendBand> m_band;
    std::optional<double> m_typed;
    bool m_odd = false;
};

} // namespace littoral::ui
