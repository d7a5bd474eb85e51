// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/tokens.h"

#include <QObject>

class QFont;

namespace littoral::ui {

/// The look in force: tokens, text scale, reduced motion. One object, made in main and passed down; pages repaint on
/// changed().
class Theme final : public QObject
{
    Q_OBJECT

public:
    explicit Theme(Scheme scheme, double textScale = 1.0, QObject* parent = nullptr);

    [[nodiscard]] const Tokens& tokens() const { return m_tokens; }
    [[nodiscard]] QColor operator[](Token token) const { return m_tokens[token]; }
    /// 1.0 .. 2.0; every size in text and around text goes through px().
    [[nodiscard]] double textScale() const { return m_textScale; }
    [[nodiscard]] int px(double atOne) const;
    /// The interface face (Inter, else DejaVu Sans) at a pixel size given for scale 1.
    [[nodiscard]] QFont font(double pixelsAtOne, int weight = 400) const;

    void setScheme(Scheme scheme);
    void setTextScale(double scale);

signals:
    void changed();

private:
    Tokens m_tokens;
    double m_textScale;
};

} // namespace littoral::ui
