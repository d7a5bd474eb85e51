// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/text.h"

#include <QFrame>
#include <QStringList>

namespace littoral::ui {

/// Cautions about people and animals, tinted, with the sign of what must be acted on. Stands above the action and is
/// never folded away; hidden while there is nothing to say. The guide has each caution whole.
class CautionBox final : public QFrame
{
    Q_OBJECT

public:
    /// How much of each is said: what must be read before the action, or its most telling point alone.
    enum class Extent { Before, Line };

    explicit CautionBox(Theme& theme, QWidget* parent = nullptr);

    /// By id; see core/facts.
    void setCautions(const QStringList& ids, Extent extent = Extent::Before);
    [[nodiscard]] const QStringList& cautions() const { return m_ids; }
    [[nodiscard]] QString text() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Theme& m_theme;
    QStringList m_ids;
    Text* m_head;
    Text* m_body;
};

} // namespace littoral::ui
