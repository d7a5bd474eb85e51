// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QWidget>

namespace littoral::ui {

/// A column of wrapped texts and tables in a scroll area, on the ground of panels. Scroll areas go by least heights and
/// wrapped texts have none of their own: the column asks its layout for the height at its width.
class SideColumn : public QWidget
{
    Q_OBJECT

public:
    explicit SideColumn(const Theme& theme, QWidget* parent = nullptr);

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void settleHeight();

    const Theme& m_theme;
};

} // namespace littoral::ui
