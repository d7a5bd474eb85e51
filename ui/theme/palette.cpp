// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/palette.h"

#include <array>
#include <utility>

namespace littoral::ui {

namespace {

using Pair = std::pair<QPalette::ColorRole, Token>;

constexpr std::array kRoles{
    Pair{QPalette::Window, Token::Window},
    Pair{QPalette::WindowText, Token::Ink},
    Pair{QPalette::Base, Token::Panel},
    Pair{QPalette::AlternateBase, Token::Sunk},
    Pair{QPalette::Text, Token::Ink},
    Pair{QPalette::Button, Token::Panel},
    Pair{QPalette::ButtonText, Token::Ink},
    Pair{QPalette::BrightText, Token::Act},
    Pair{QPalette::Highlight, Token::Accent},
    Pair{QPalette::HighlightedText, Token::OnAccent},
    Pair{QPalette::Link, Token::Accent},
    Pair{QPalette::LinkVisited, Token::Accent},
    Pair{QPalette::ToolTipBase, Token::Ink},
    Pair{QPalette::ToolTipText, Token::Panel},
    Pair{QPalette::PlaceholderText, Token::Ink3},
    Pair{QPalette::Light, Token::Panel},
    Pair{QPalette::Midlight, Token::Sunk},
    Pair{QPalette::Mid, Token::Rule},
    Pair{QPalette::Dark, Token::Rule2},
    Pair{QPalette::Shadow, Token::Rule2},
};

} // namespace

QPalette paletteOf(const Tokens& tokens)
{
    QPalette palette;
    for (const auto& [role, token] : kRoles) {
        palette.setColor(QPalette::All, role, tokens[token]);
    }
    // Dead text stays readable: never lighter than Ink3.
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, tokens[Token::Ink3]);
    }
    palette.setColor(QPalette::Disabled, QPalette::Base, tokens[Token::Sunk]);
    palette.setColor(QPalette::Disabled, QPalette::Button, tokens[Token::Sunk]);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, tokens[Token::Rule]);
    palette.setColor(QPalette::Disabled, QPalette::HighlightedText, tokens[Token::Ink2]);
    // A selection in a view that has lost focus keeps the accent's tint and dark text.
    palette.setColor(QPalette::Inactive, QPalette::Highlight, tokens[Token::Selection]);
    palette.setColor(QPalette::Inactive, QPalette::HighlightedText, tokens[Token::Ink]);
    return palette;
}

} // namespace littoral::ui
