// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/hand_over.h"
#include "core/facade/keeper.h"
#include "ui/pages/journey/helper_form.h"
#include "ui/widgets/disclosure.h"
#include "ui/widgets/side_panel.h"

namespace littoral::ui {

/// Days away: who helps, how the work of these days is split, and what was done typed in afterwards.
class JourneyPanel final : public SidePanel
{
    Q_OBJECT

public:
    JourneyPanel(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// The journey that counts today, or a new one when there is none.
    void open();
    [[nodiscard]] bool hasDraft() const override;
    [[nodiscard]] HelperForm* helperForm() { return m_helper; }

private:
    void makeFields();
    void makeParts();
    void fill(const record::Journey& journey);
    void refreshSplit();
    void save();
    void remove();
    void begin();
    [[nodiscard]] std::optional<record::Journey> typed();

    facade::Keeper& m_keeper;
    record::Journey m_shown; ///< as last filled in
    QLineEdit* m_leaves = nullptr;
    QLineEdit* m_returns = nullptr;
    QLineEdit* m_who = nullptr;
    QLineEdit* m_phone = nullptr;
    QLineEdit* m_note = nullptr;
    Text* m_sums;
    Disclosure* m_prepare;
    Disclosure* m_before;
    Disclosure* m_helps;
    Disclosure* m_after;
    Disclosure* m_return;
    Text* m_afterwards;
    HelperForm* m_helper;
    QPushButton* m_save = nullptr;
    QPushButton* m_remove = nullptr;
    QPushButton* m_new = nullptr;
};

} // namespace littoral::ui
