// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/caution_box.h"

#include "core/wording/caution_words.h"
#include "ui/paint/glyphs.h"

#include <QPainter>
#include <QVBoxLayout>

namespace littoral::ui {

CautionBox::CautionBox(Theme& theme, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_head(new Text(theme, TextStyle::Strong, tr("Read before you begin")))
    , m_body((new Text(theme, TextStyle::Body))->wrapped())
{
    m_head->setToken(Token::Act);
    m_head->setIndent(theme.px(22));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 10, 12, 10);
    column->setSpacing(4);
    column->addWidget(m_head);
    column->addWidget(m_body);
    setAccessibleName(m_head->text());
    hide();
    connect(&theme, &Theme::changed, this, [this] {
        m_head->setIndent(m_theme.px(22));
        update();
    });
}

void CautionBox::setCautions(const QStringList& ids, Extent extent)
{
    m_ids = ids;
    QStringList paragraphs;
    for (wording::CautionText caution : wording::cautionsBefore(facts::builtInFacts(), ids)) {
        if (extent == Extent::Line) {
            caution.points = {caution.points.front()};
        }
        paragraphs << wording::cautionText(caution);
    }
    m_body->setText(paragraphs.join(extent == Extent::Line ? u"\n" : u"\n\n"));
    setAccessibleDescription(m_body->text());
    setVisible(!paragraphs.isEmpty());
}

QString CautionBox::text() const
{
    return m_body->text();
}

void CautionBox::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_theme[Token::Act], 1));
    painter.setBrush(m_theme[Token::ActTint]);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
    const double side = m_theme.px(15);
    const QRect head = m_head->geometry();
    drawStatus(painter, facade::Status::Act, QRectF(head.left(), head.center().y() - side / 2, side, side),
               m_theme[Token::Act], m_theme[Token::ActTint]);
}

} // namespace littoral::ui
