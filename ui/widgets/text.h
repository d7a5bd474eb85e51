// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QLabel>

namespace littoral::ui {

/// The few sizes text comes in.
enum class TextStyle { Result, Heading, Name, Body, Strong, Secondary, SecondaryStrong };

[[nodiscard]] QFont fontOf(const Theme& theme, TextStyle style);

/// A label that follows the theme: size, weight and colour again whenever the look changes.
class Text final : public QLabel
{
    Q_OBJECT

public:
    Text(Theme& theme, TextStyle style, const QString& text = {}, QWidget* parent = nullptr);

    void setToken(Token token);
    /// Wraps to the width it is given.
    Text* wrapped();

private:
    void apply();

    Theme& m_theme;
    TextStyle m_style;
    Token m_token;
};

} // namespace littoral::ui
