// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/bench_sheet.h"
#include "ui/widgets/text.h"

#include <QWidget>

class QComboBox;
class QGridLayout;
class QLineEdit;
class QPushButton;

namespace littoral::ui {

/// One blank of a worksheet: label, field, unit, where the value came from, a way back to it, and what is wrong.
class SheetField final : public QWidget
{
    Q_OBJECT

public:
    SheetField(Theme& theme, const sheets::Input& input, QWidget* parent = nullptr);

    /// Leaves the text alone while it is being typed.
    void show(const BenchBlank& blank);
    [[nodiscard]] const QString& key() const { return m_key; }
    [[nodiscard]] QWidget* editor() const;
    [[nodiscard]] QLineEdit* line() const { return m_line; }   ///< nullptr for a choice
    [[nodiscard]] QComboBox* combo() const { return m_combo; } ///< nullptr for a number
    [[nodiscard]] QPushButton* back() const { return m_back; }
    [[nodiscard]] QString origin() const { return m_origin->text(); }
    [[nodiscard]] QString problem() const { return m_problem->text(); }
    /// What the sheet waits for here.
    enum class Need { Nothing, Filling, Mending };
    [[nodiscard]] Need need() const { return m_needed; }

signals:
    void typed(const QString& key, const QString& text);
    void entered();

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void makeEditor(const sheets::Input& input);
    void arrange();
    void place();
    void placeNarrow();
    void placeBeside(bool originBelow);
    void showText();
    void goBack();

    Theme& m_theme;
    QString m_key;
    QString m_label;
    QString m_wanted; ///< text to show once the keyboard is elsewhere
    QString m_wayBack;
    QLineEdit* m_line = nullptr;
    QComboBox* m_combo = nullptr;
    Text* m_name;
    Text* m_unit;
    Text* m_origin;
    Text* m_problem;
    QPushButton* m_back;
    QGridLayout* m_grid;
    /// Where there is room, all on one line; with less, the origin below the field; with least, the label above it.
    enum class Room { None, Narrow, Medium, Wide };
    Room m_room = Room::None;
    Need m_needed = Need::Nothing;
};

} // namespace littoral::ui
