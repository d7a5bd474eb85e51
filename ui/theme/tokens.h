// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/lane_model.h"

#include <QColor>
#include <QString>

namespace littoral::ui {

enum class Scheme { Light, Dark, HighContrast };

/// Every colour of the workbench. Text on its own ground reaches 4.5 : 1 and marks and control edges 3 : 1; a test
/// computes it.
enum class Token {
    Window,
    Panel,
    Sunk,
    Future,
    Ink,
    Ink2,
    Ink3, ///< text; Ink3 is the least text may be
    Rule,
    Rule2, ///< decoration; edge of controls
    Accent,
    OnAccent,
    Selection,
    Ok,
    OkTint,
    Watch,
    WatchTint,
    Act,
    ActTint,
    Info,
    InfoTint,
    Overdue,
    OnOverdue,
    Water,
    WaterSurface,
    Soil,
    Glass,
    Count
};

/// The mark a parameter is drawn with: never told by hue alone.
enum class Mark {
    Circle,
    OpenCircle,
    TriangleUp,
    Square,
    OpenSquare,
    Diamond,
    OpenDiamond,
    TriangleDown,
    Hexagon,
    Plus,
    Cross,
    Bar,
    Pentagon,
    Dot
};

class Tokens final
{
public:
    explicit Tokens(Scheme scheme = Scheme::Light)
        : m_scheme(scheme)
    {
    }
    [[nodiscard]] Scheme scheme() const { return m_scheme; }
    [[nodiscard]] QColor operator[](Token token) const;
    /// Hue of a parameter's marks, lines and fills. After Okabe and Ito's palette for all kinds of colour vision (base
    /// values from memory), darkened or lifted until marks reach 3 : 1.
    [[nodiscard]] QColor parameter(const QString& key) const;
    [[nodiscard]] static Mark mark(const QString& parameterKey);
    [[nodiscard]] QColor status(facade::Status status) const;
    [[nodiscard]] QColor statusTint(facade::Status status) const;

private:
    Scheme m_scheme;
};

/// WCAG 2 contrast ratio of two opaque colours, 1..21.
[[nodiscard]] double contrastRatio(const QColor& a, const QColor& b);

} // namespace littoral::ui
