// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/advice_panel.h"

#include "ui/paint/glyphs.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace littoral::ui {

AdvicePanel::AdvicePanel(Theme& theme, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_headline(new Text(theme, TextStyle::Strong))
    , m_body(new Text(theme, TextStyle::Body))
    , m_often(new Text(theme, TextStyle::Body))
    , m_keep(new QPushButton(tr("Keep")))
{
    setAccessibleName(tr("Advice on the value"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 10, 12, 10);
    column->setSpacing(5);
    m_headline->setWordWrap(true);
    m_body->setWordWrap(true);
    m_often->setWordWrap(true);
    m_often->setToken(Token::Ink2);
    column->addWidget(m_headline);
    column->addWidget(m_body);
    column->addWidget(m_often);
    column->addStretch(1);
    column->addWidget(m_keep, 0, Qt::AlignLeft);
    m_keep->setProperty("keyHint", tr("Enter"));
    m_keep->setFocusPolicy(Qt::NoFocus); // the keyboard stays in the cell; Enter there does the same
    m_keep->setAccessibleName(tr("Keep the value and go on"));
    connect(m_keep, &QPushButton::clicked, this, &AdvicePanel::keep);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
    showQuiet({});
}

void AdvicePanel::show(const Advice& advice, const QString& typed)
{
    if (advice.level == Advice::Level::None) {
        showQuiet(m_level == Advice::Level::None ? m_body->text() : QString());
        return;
    }
    m_level = advice.level;
    const bool impossible = advice.level == Advice::Level::Impossible;
    m_headline->setText(advice.headline);
    m_headline->setToken(impossible ? Token::Act : Token::Watch);
    m_headline->setIndent(m_theme.px(22));
    m_headline->show();
    m_body->setText(advice.body);
    m_body->setVisible(!advice.body.isEmpty());
    m_often->setText(advice.often);
    m_often->setVisible(!advice.often.isEmpty());
    m_keep->setText(impossible ? tr("Leave it as typed") : tr("Keep %1").arg(typed));
    m_keep->show();
    setAccessibleDescription(tr("%1. %2").arg(advice.headline, advice.body));
    update();
}

void AdvicePanel::showQuiet(const QString& sentence)
{
    m_level = Advice::Level::None;
    m_headline->hide();
    m_headline->clear();
    m_body->setText(sentence);
    m_body->setVisible(!sentence.isEmpty());
    m_often->hide();
    m_keep->hide();
    setAccessibleDescription(sentence);
    update();
}

void AdvicePanel::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool quiet = m_level == Advice::Level::None;
    const bool impossible = m_level == Advice::Level::Impossible;
    const QColor ground = m_theme[quiet ? Token::Sunk : impossible ? Token::ActTint : Token::WatchTint];
    painter.setPen(quiet ? QPen(m_theme[Token::Rule]) : QPen(Qt::NoPen));
    painter.setBrush(ground);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    if (quiet) {
        return;
    }
    const int side = m_theme.px(15);
    const QPoint at = m_headline->geometry().topLeft();
    const int first = QFontMetrics(m_headline->font()).height();
    drawStatus(painter, impossible ? facade::Status::Act : facade::Status::Watch,
               QRectF(at.x(), at.y() + (first - side) / 2.0, side, side),
               m_theme[impossible ? Token::Act : Token::Watch], ground);
}

} // namespace littoral::ui
