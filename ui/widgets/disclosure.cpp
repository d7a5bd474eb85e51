// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/disclosure.h"

#include "ui/style/style_paint.h"
#include "ui/theme/figures.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

DisclosureLine::DisclosureLine(Theme& theme, QWidget* parent)
    : QAbstractButton(parent)
    , m_theme(theme)
{
    setCheckable(true);
    setAccessibleName(tr("Details")); // until it has words of its own
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void DisclosureLine::setWords(const QString& text, const QString& value)
{
    setText(text);
    setAccessibleName(value.isEmpty() ? text : tr("%1, %2", "what it opens on, its figure").arg(text, value));
    m_value = value;
    update();
}

QSize DisclosureLine::sizeHint() const
{
    return {m_theme.px(240), std::max(24, QFontMetrics(m_theme.font(13)).height() + m_theme.px(8))};
}

QSize DisclosureLine::minimumSizeHint() const
{
    return {m_theme.px(120), sizeHint().height()};
}

void DisclosureLine::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (underMouse()) {
        painter.fillRect(rect(), m_theme[Token::Sunk]);
    }
    const double side = m_theme.px(14);
    stylepaint::chevron({painter, m_theme}, QRectF(0, (height() - side) / 2, side, side),
                        isChecked() ? Qt::DownArrow : Qt::RightArrow, m_theme[Token::Ink2]);
    const double value = figuresWidth(m_theme.font(12, 600), m_value);
    const QRectF words(side + m_theme.px(6), 0, width() - side - value - m_theme.px(16), height());
    painter.setFont(m_theme.font(12.5));
    painter.setPen(m_theme[Token::Ink]);
    drawFigures(painter, words, Qt::AlignVCenter | Qt::AlignLeft,
                elidedFigures(m_theme.font(12.5), text(), words.width()));
    painter.setFont(m_theme.font(12, 600));
    drawFigures(painter, QRectF(width() - value - m_theme.px(2), 0, value, height()), Qt::AlignVCenter | Qt::AlignRight,
                m_value);
}

void DisclosureLine::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Right:
        setChecked(true);
        return;
    case Qt::Key_Left:
        setChecked(false);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        toggle();
        return;
    default:
        QAbstractButton::keyPressEvent(event);
    }
}

Disclosure::Disclosure(Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_line(new DisclosureLine(theme))
    , m_details((new Text(theme, TextStyle::Secondary))->wrapped())
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(m_line);
    column->addWidget(m_details);
    m_details->setToken(Token::Ink2);
    m_details->setIndent(theme.px(20));
    connect(&theme, &Theme::changed, this, [this, &theme] { m_details->setIndent(theme.px(20)); });
    m_details->hide();
    connect(m_line, &QAbstractButton::toggled, m_details, &QWidget::setVisible);
}

void Disclosure::setWords(const QString& text, const QString& value, const QString& spoken, const QStringList& details)
{
    m_line->setWords(text, value);
    m_line->setAccessibleName(spoken);
    m_details->setText(details.join(u'\n'));
    m_line->setAccessibleDescription(m_details->text());
}

bool Disclosure::isOpen() const
{
    return m_line->isChecked();
}

void Disclosure::setOpen(bool open)
{
    m_line->setChecked(open);
}

QString Disclosure::details() const
{
    return m_details->text();
}

} // namespace littoral::ui
