// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/cycle_model.h"
#include "ui/paint/time_axis.h"
#include "ui/widgets/text.h"

#include <QWidget>

class QCheckBox;
class QPushButton;

namespace littoral::ui {

class SegmentedControl;

/// The page bar of Cycle: which tank, dates or ages, an earlier layout for comparison, table or charts, refit.
class CycleBar final : public QWidget
{
    Q_OBJECT

public:
    /// Both outlive the bar; the mode is set on the axis directly.
    CycleBar(Theme& theme, TimeAxis& axis, QWidget* parent = nullptr);

    void setModel(const CycleModel& model);
    void setTable(bool table);
    [[nodiscard]] bool withReference() const;

signals:
    void referenceChanged();
    void tableWanted(bool table);
    void refitWanted();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    Theme& m_theme;
    TimeAxis& m_axis;
    Text* m_name;
    Text* m_facts;
    SegmentedControl* m_mode;
    QCheckBox* m_reference;
    Text* m_fit;
    QPushButton* m_table;
    QPushButton* m_refit;
};

} // namespace littoral::ui
