// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/hand_over.h"
#include "core/facade/keeper.h"
#include "ui/widgets/text.h"

#include <QWidget>
#include <vector>

class QCheckBox;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace littoral::ui {

/// What the helper did, typed in on coming home: one group of fields for each round of the sheets that is still open. A
/// round is done on the day given, with the numbers that were read; unticked it was left out, and the words say why.
/// Lines that nobody touched are not written.
class HelperForm final : public QWidget
{
    Q_OBJECT

public:
    HelperForm(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// Shows what is open of this journey; typing survives as long as the same rounds are open.
    void show(const record::Journey& journey);
    [[nodiscard]] bool hasDraft() const;
    [[nodiscard]] int lineCount() const { return static_cast<int>(m_lines.size()); }

signals:
    void written(const QString& sentence);
    void refused(const QString& sentence);

private:
    struct Line
    {
        facade::HandOverTask task;
        QCheckBox* done = nullptr;
        QCheckBox* leftOut = nullptr;
        QLineEdit* day = nullptr;
        QLineEdit* note = nullptr;
        std::vector<std::pair<QString, QLineEdit*>> values;
    };
    void makeLine(const facade::HandOverTask& task);
    void write();

    facade::Keeper& m_keeper;
    Theme& m_theme;
    record::Journey m_journey;
    QVBoxLayout* m_column;
    QWidget* m_list = nullptr;
    Text* m_empty;
    QPushButton* m_write;
    std::vector<Line> m_lines;
};

} // namespace littoral::ui
