// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/curve.h"
#include "ui/widgets/text.h"

#include <QFrame>

class QPushButton;
class QVBoxLayout;

namespace littoral::ui {

/// A card on the bench: title, what it is for, a button that pins it or puts it away.
class BenchCard : public QFrame
{
    Q_OBJECT

public:
    explicit BenchCard(Theme& theme, QWidget* parent = nullptr);

    void setHead(const QString& title, const QString& note);
    /// A pinned card says so and can be unpinned; the one in front can be pinned.
    void setPinned(bool pinned);
    [[nodiscard]] bool isPinned() const { return m_pinned; }
    [[nodiscard]] QString title() const { return m_title->text(); }
    [[nodiscard]] QPushButton* pinButton() { return m_pin; }
    /// Where the keyboard goes when the card is opened.
    [[nodiscard]] virtual QWidget* firstField();

signals:
    void pinWanted();

protected:
    [[nodiscard]] Theme& theme() const { return m_theme; }
    [[nodiscard]] QVBoxLayout* column() { return m_column; }
    Text* addText(TextStyle style, Token token);

private:
    Theme& m_theme;
    Text* m_title;
    Text* m_note;
    QPushButton* m_pin;
    QVBoxLayout* m_column;
    bool m_pinned = false;
};

/// The formula in symbols and with the figures put in, on a sunk ground.
class FormulaPane final : public QWidget
{
    Q_OBJECT

public:
    explicit FormulaPane(Theme& theme, QWidget* parent = nullptr);

    void setText(const QString& formula, const QString& figures);
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Theme& m_theme;
    QString m_formula;
    QString m_figures;
};

/// How the result answers to one input, or several measures of the same thing on one scale.
class CurveView final : public QWidget
{
    Q_OBJECT

public:
    explicit CurveView(Theme& theme, QWidget* parent = nullptr);

    void setCurve(std::optional<Curve> curve);
    void setMeasures(std::optional<Measures> measures);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void refresh();

    Theme& m_theme;
    std::optional<Curve> m_curve;
    std::optional<Measures> m_measures;
};

} // namespace littoral::ui
