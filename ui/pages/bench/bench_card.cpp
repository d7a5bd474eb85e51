// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bench/bench_card.h"

#include "ui/paint/formula.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

namespace {
constexpr int kMargin = 14;
constexpr int kInset = 12;
} // namespace

BenchCard::BenchCard(Theme& theme, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_title((new Text(theme, TextStyle::Name))->wrapped())
    , m_note((new Text(theme, TextStyle::Secondary))->wrapped())
    , m_pin(new QPushButton(tr("Pin this sheet")))
    , m_column(new QVBoxLayout(this))
{
    setProperty("card", true);
    setFrameShape(QFrame::StyledPanel);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_title);
    words->addWidget(m_note);
    auto* head = new QHBoxLayout;
    head->setSpacing(10);
    head->addLayout(words, 1);
    head->addWidget(m_pin, 0, Qt::AlignTop);
    m_column->setContentsMargins(kMargin, 12, kMargin, 14);
    m_column->setSpacing(12);
    m_column->addLayout(head);
    connect(m_pin, &QPushButton::clicked, this, &BenchCard::pinWanted);
    setPinned(false);
}

void BenchCard::setHead(const QString& title, const QString& note)
{
    m_title->setText(title);
    m_note->setText(note);
    m_note->setVisible(!note.isEmpty());
    setAccessibleName(title);
    m_pin->setAccessibleName(m_pinned ? tr("Unpin %1").arg(title) : tr("Pin %1 beside the others").arg(title));
}

void BenchCard::setPinned(bool pinned)
{
    m_pinned = pinned;
    m_pin->setText(pinned ? tr("Unpin") : tr("Pin this sheet"));
    m_pin->setProperty("keyHint", pinned ? QString() : tr("P"));
    m_pin->setProperty("quiet", pinned);
    m_pin->updateGeometry();
}

QWidget* BenchCard::firstField()
{
    return m_pin;
}

Text* BenchCard::addText(TextStyle style, Token token)
{
    auto* text = (new Text(m_theme, style))->wrapped();
    text->setToken(token);
    m_column->addWidget(text);
    return text;
}

FormulaPane::FormulaPane(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void FormulaPane::setText(const QString& formula, const QString& figures)
{
    m_formula = formula;
    m_figures = figures;
    setAccessibleName(tr("Working"));
    setAccessibleDescription(tr("%1. With the figures put in: %2").arg(formula, figures));
    updateGeometry();
    update();
}

int FormulaPane::heightForWidth(int width) const
{
    const double inner = std::max(40, width - 2 * kInset);
    return static_cast<int>(formulaHeight(m_theme, m_formula, inner) + formulaHeight(m_theme, m_figures, inner)) +
           2 * kInset + m_theme.px(8);
}

QSize FormulaPane::sizeHint() const
{
    return {m_theme.px(280), heightForWidth(std::max(width(), m_theme.px(280)))};
}

void FormulaPane::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_theme[Token::Rule], 1));
    painter.setBrush(m_theme[Token::Sunk]);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    QRectF inner = QRectF(rect()).adjusted(kInset, kInset, -kInset, -kInset);
    paintFormula(painter, inner, m_theme, m_formula, m_theme[Token::Ink2]);
    inner.setTop(inner.top() + formulaHeight(m_theme, m_formula, inner.width()) + m_theme.px(8));
    paintFormula(painter, inner, m_theme, m_figures, m_theme[Token::Ink]);
}

CurveView::CurveView(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, &CurveView::refresh);
}

void CurveView::setCurve(std::optional<Curve> curve)
{
    m_curve = std::move(curve);
    refresh();
}

void CurveView::setMeasures(std::optional<Measures> measures)
{
    m_measures = std::move(measures);
    refresh();
}

void CurveView::refresh()
{
    setVisible(m_curve.has_value() || m_measures.has_value());
    if (m_curve) {
        setAccessibleName(tr("Chart of %1 against %2").arg(m_curve->title, m_curve->xTitle));
        setAccessibleDescription(m_curve->hereText);
    } else if (m_measures) {
        QStringList all;
        for (const Measures::Row& row : m_measures->rows) {
            all << tr("%1: %2").arg(row.name, row.value);
        }
        setAccessibleName(tr("The ways side by side"));
        setAccessibleDescription(all.join(QStringLiteral("; ")));
    }
    updateGeometry();
    update();
}

QSize CurveView::sizeHint() const
{
    return {m_theme.px(260), m_measures ? measuresHeight(m_theme, *m_measures) : curveHeight(m_theme)};
}

void CurveView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (m_curve) {
        paintCurve(painter, rect(), m_theme, *m_curve);
    } else if (m_measures) {
        paintMeasures(painter, rect(), m_theme, *m_measures);
    }
}

} // namespace littoral::ui
