// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/text.h"

namespace littoral::ui {

QFont fontOf(const Theme& theme, TextStyle style)
{
    switch (style) {
    case TextStyle::Result:
        return theme.font(26, 650);
    case TextStyle::Heading:
        return theme.font(18, 650);
    case TextStyle::Name:
        return theme.font(15, 650);
    case TextStyle::Body:
        return theme.font(13);
    case TextStyle::Strong:
        return theme.font(13, 600);
    case TextStyle::Secondary:
        return theme.font(11);
    case TextStyle::SecondaryStrong:
        return theme.font(11, 600);
    }
    return theme.font(13);
}

Text::Text(Theme& theme, TextStyle style, const QString& text, QWidget* parent)
    : QLabel(text, parent)
    , m_theme(theme)
    , m_style(style)
    , m_token(style == TextStyle::Secondary         ? Token::Ink3
              : style == TextStyle::SecondaryStrong ? Token::Ink2
                                                    : Token::Ink)
{
    setTextFormat(Qt::PlainText);
    setTextInteractionFlags(Qt::NoTextInteraction);
    connect(&theme, &Theme::changed, this, &Text::apply);
    apply();
}

void Text::setToken(Token token)
{
    m_token = token;
    apply();
}

Text* Text::wrapped()
{
    setWordWrap(true);
    return this;
}

void Text::apply()
{
    setFont(fontOf(m_theme, m_style));
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText, m_theme[m_token]);
    setPalette(colours);
}

} // namespace littoral::ui
