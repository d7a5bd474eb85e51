// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/round_advice.h"
#include "ui/widgets/text.h"

#include <QFrame>

class QPushButton;

namespace littoral::ui {

/// What there is to say about the value in the cell: shape, headline, what it was compared with, what it often turns
/// out to be. It only advises; Keep (or Enter in the cell) takes the value as it is.
class AdvicePanel final : public QFrame
{
    Q_OBJECT

public:
    explicit AdvicePanel(Theme& theme, QWidget* parent = nullptr);

    void show(const Advice& advice, const QString& typed);
    /// Nothing to advise: the cell's last reading in words.
    void showQuiet(const QString& sentence);
    [[nodiscard]] QString headline() const { return m_headline->text(); }

signals:
    void keep();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Theme& m_theme;
    Advice::Level m_level = Advice::Level::None;
    Text* m_headline;
    Text* m_body;
    Text* m_often;
    QPushButton* m_keep;
};

} // namespace littoral::ui
