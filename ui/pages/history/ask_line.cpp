// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/ask_line.h"

#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "ui/style/style_paint.h"
#include "ui/theme/figures.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/text.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

AskLine::AskLine(Theme& theme, const QString& tag, Token token, const QString& text, QWidget* parent)
    : QAbstractButton(parent)
    , m_theme(theme)
    , m_tag(tag)
    , m_token(token)
{
    setText(text);
    setAccessibleName(tr("%1: %2", "for or against, the evidence").arg(tag, text));
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void AskLine::setOpens(bool opens)
{
    m_opens = opens;
    setCheckable(opens);
    updateGeometry();
}

int AskLine::tagWidth() const
{
    const int own = static_cast<int>(std::ceil(figuresWidth(m_theme.font(11, 650), m_tag)));
    return std::max(m_theme.px(58), own + m_theme.px(8));
}

QRect AskLine::textRect(int width) const
{
    const int left = tagWidth() + m_theme.px(4);
    const int right = m_opens ? m_theme.px(22) : m_theme.px(4);
    return {left, m_theme.px(3), std::max(m_theme.px(60), width - left - right), 1 << 20};
}

int AskLine::heightForWidth(int width) const
{
    const QRect room = textRect(width);
    const int text = QFontMetrics(m_theme.font(12.5)).boundingRect(room, Qt::TextWordWrap, this->text()).height();
    return std::max(24, text + m_theme.px(7));
}

QSize AskLine::sizeHint() const
{
    const int wide = std::max(width(), m_theme.px(200));
    return {m_theme.px(300), heightForWidth(wide)};
}

QSize AskLine::minimumSizeHint() const
{
    return {m_theme.px(150), std::max(24, QFontMetrics(m_theme.font(12.5)).height() + m_theme.px(7))};
}

void AskLine::resizeEvent(QResizeEvent* event)
{
    QAbstractButton::resizeEvent(event);
    setMinimumHeight(heightForWidth(width()));
}

void AskLine::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (underMouse() || hasFocus()) {
        painter.fillRect(rect(), m_theme[underMouse() ? Token::Sunk : Token::Selection]);
    }
    const QFont tag = m_theme.font(11, 650);
    const QRect room = textRect(width());
    painter.setFont(tag);
    painter.setPen(m_theme[m_token]);
    drawFigures(painter, QRectF(m_theme.px(4), room.top(), tagWidth(), QFontMetrics(m_theme.font(12.5)).height()),
                Qt::AlignVCenter | Qt::AlignLeft, m_tag);
    painter.setFont(m_theme.font(12.5));
    painter.setPen(m_theme[Token::Ink]);
    painter.drawText(QRect(room.left(), room.top(), room.width(), height()), Qt::TextWordWrap, text());
    if (m_opens) {
        const double side = m_theme.px(14);
        stylepaint::chevron({painter, m_theme}, QRectF(width() - side - m_theme.px(4), room.top(), side, side),
                            isChecked() ? Qt::DownArrow : Qt::RightArrow, m_theme[Token::Ink2]);
    }
}

void AskLine::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    emit pointed(m_rests);
}

void AskLine::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    emit left();
}

void AskLine::focusInEvent(QFocusEvent* event)
{
    QAbstractButton::focusInEvent(event);
    emit pointed(m_rests);
    update();
}

void AskLine::focusOutEvent(QFocusEvent* event)
{
    QAbstractButton::focusOutEvent(event);
    emit left();
    update();
}

void AskLine::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Right:
        if (m_opens) {
            setChecked(true);
        } else {
            emit showWanted(m_rests);
        }
        return;
    case Qt::Key_Left:
        if (m_opens) {
            setChecked(false);
            return;
        }
        break;
    case Qt::Key_Down:
        focusNextChild();
        return;
    case Qt::Key_Up:
        focusPreviousChild();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        click();
        return;
    default:
        break;
    }
    QAbstractButton::keyPressEvent(event);
}

AnswerRow::AnswerRow(Theme& theme, const facade::CaseEvidence& ask, QWidget* parent)
    : QWidget(parent)
{
    auto* flow = new FlowLayout(this, 6);
    flow->setContentsMargins(theme.px(62), 2, 4, 6);
    for (const facade::CaseAnswer& answer : ask.answers) {
        auto* button = new QPushButton(answer.words);
        button->setAccessibleName(tr("%1 Answer: %2.").arg(ask.text, answer.words));
        button->setProperty("answer", answer.subject);
        connect(button, &QPushButton::clicked, this, [this, subject = answer.subject] { emit answered(subject); });
        flow->addWidget(button);
    }
    if (ask.number) {
        auto* field = new QLineEdit;
        field->setFixedWidth(theme.px(90));
        field->setAccessibleName(ask.text);
        field->setPlaceholderText(ask.unit);
        auto* keep = new QPushButton(tr("Write down"));
        const auto take = [this, field, ask] {
            bool read = false;
            const double value = QString(field->text()).replace(u',', u'.').trimmed().toDouble(&read);
            if (!read || value < ask.low || value > ask.high) {
                emit misunderstood(tr("A number from %1 to %2 is needed.")
                                       .arg(wording::plainNumber(ask.low), wording::plainNumber(ask.high)));
                field->setFocus();
                field->selectAll();
                return;
            }
            emit answered(u"%1=%2"_s.arg(ask.key, QString::number(value, 'g', 6)));
        };
        connect(field, &QLineEdit::returnPressed, this, take);
        connect(keep, &QPushButton::clicked, this, take);
        flow->addWidget(field);
        if (!ask.unit.isEmpty()) {
            flow->addWidget(new Text(theme, TextStyle::Body, ask.unit));
        }
        flow->addWidget(keep);
    }
    if (!ask.parameter.isEmpty()) {
        auto* go = new QPushButton(tr("Type a reading of %1").arg(wording::parameterName(ask.parameter)));
        go->setAccessibleDescription(tr("Goes to Rounds"));
        connect(go, &QPushButton::clicked, this, [this, key = ask.parameter] { emit readingWanted(key); });
        flow->addWidget(go);
    }
}

void AnswerRow::begin()
{
    for (QWidget* child : findChildren<QWidget*>()) {
        if ((child->focusPolicy() & Qt::TabFocus) != 0) {
            child->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
}

} // namespace littoral::ui
