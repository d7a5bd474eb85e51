// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QWidget>

namespace littoral::ui {

/// A small drawing of what the sample row looks like in Lanes: an impression, not data.
class SamplePreview final : public QWidget
{
    Q_OBJECT

public:
    explicit SamplePreview(Theme& theme, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Theme& m_theme;
};

} // namespace littoral::ui
