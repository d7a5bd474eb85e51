// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/moment.h"

#include <QLineEdit>

namespace littoral::ui {

/// A date and time as text: "2026-11-25 07:30", "25 Nov", "07:30" for today. Up and down move it by a day, with Shift
/// by an hour. Empty stands for "now" where that is allowed.
class MomentEdit final : public QLineEdit
{
    Q_OBJECT

public:
    /// `clock` outlives the field.
    MomentEdit(const record::Clock& clock, bool emptyIsNow, QWidget* parent = nullptr);

    void setMoment(const record::Moment& at);
    /// Not valid when what is typed is not understood.
    [[nodiscard]] record::Moment moment() const;
    /// Whether the field stands for whatever time it is.
    [[nodiscard]] bool isNow() const;

signals:
    void momentChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    const record::Clock& m_clock;
    bool m_emptyIsNow;
};

} // namespace littoral::ui
