// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/pages/first_run/first_tank.h"
#include "ui/widgets/text.h"

#include <QWidget>

class QBoxLayout;
class QComboBox;
class QLineEdit;
class QPushButton;

namespace littoral::ui {

class MomentEdit;
class OutlineView;

/// An empty row: what will be here, and the two ways to fill it. Also what is shown when an open store holds no tank.
class FirstRunPage final : public QWidget
{
    Q_OBJECT

public:
    FirstRunPage(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    void focusFirst();
    /// Where the store will lie that adding a tank makes; empty when one is open.
    void setStorePlace(const QString& path);
    void clearFields();

signals:
    void sampleWanted();
    void csvWanted();
    void tankGiven(const littoral::record::Tank& tank, const littoral::record::Layout& layout);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QWidget* makeSampleCard();
    [[nodiscard]] QWidget* makeTankCard();
    [[nodiscard]] QWidget* makeFields();
    [[nodiscard]] QWidget* makeOutcome();
    [[nodiscard]] FirstTank given() const;
    void refresh();
    void add();
    void arrange();

    facade::Keeper& m_keeper;
    Theme& m_theme;
    QLineEdit* m_name;
    QLineEdit* m_length;
    QLineEdit* m_depth;
    QLineEdit* m_height;
    MomentEdit* m_flooded;
    QComboBox* m_start;
    OutlineView* m_outline;
    Text* m_litres;
    Text* m_less;
    Text* m_proposal;
    Text* m_place;
    Text* m_problem;
    QWidget* m_sampleCard = nullptr;
    QWidget* m_tankCard = nullptr;
    QBoxLayout* m_head;
    QBoxLayout* m_cards;
    QBoxLayout* m_inCard;
};

} // namespace littoral::ui
