// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"
#include "ui/pages/history/history_card.h"

namespace littoral::ui {

class AskLine;

/// Keep or start afresh: nine questions to talk over, what comes first on each way, and what counts for more. It never
/// decides.
class TalkCard final : public HistoryCard
{
    Q_OBJECT

public:
    explicit TalkCard(Theme& theme, QWidget* parent = nullptr);
    void setTalk(const facade::Talk& talk, bool writable);
    [[nodiscard]] QList<AskLine*> lines() const;
    [[nodiscard]] QString headline() const { return m_headline->text(); }

signals:
    void answered(const QString& subject);

private:
    Text *m_headline, *m_leaning;
    QWidget* m_inside = nullptr;
};

} // namespace littoral::ui
