// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace littoral::ui {

/// A painted chart that assistive technology can walk through: parts in a fixed order, each with a sentence and a
/// place. Derived classes paint and keep the parts; the accessible tree is made from them.
class ChartWidget : public QWidget
{
    Q_OBJECT

public:
    explicit ChartWidget(QWidget* parent = nullptr);

    [[nodiscard]] virtual int partCount() const = 0;
    /// A whole sentence: "Nitrite, 27 Nov: 4.1 mg/L NO₂, 8 in 10 between 2.9 and 5.0".
    [[nodiscard]] virtual QString partSentence(int part) const = 0;
    /// In this widget's coordinates.
    [[nodiscard]] virtual QRect partRect(int part) const = 0;
    /// The part the keyboard is on; -1: none.
    [[nodiscard]] virtual int currentPart() const { return -1; }
    /// Rises whenever parts are made anew.
    [[nodiscard]] int partGeneration() const { return m_generation; }

protected:
    void partsChanged() { ++m_generation; }
    /// Tells assistive technology where the keyboard is now.
    void announcePart();
    /// The 2 px ring of a painted view that has the keyboard.
    void paintFocusRing(QPainter& painter, const QColor& colour) const;

private:
    int m_generation = 0;
};

} // namespace littoral::ui
