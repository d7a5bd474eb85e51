// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/text.h"

#include <QWidget>

class QFormLayout;
class QHBoxLayout;
class QLineEdit;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace littoral::ui {

/// A panel beside the page: title, a body that scrolls, a foot with actions. Never a dialog: the page stays usable, and
/// what was typed is still there when the panel comes back.
class SidePanel : public QWidget
{
    Q_OBJECT

public:
    SidePanel(Theme& theme, const QString& title, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    [[nodiscard]] QString title() const;
    /// Where the keyboard goes when the panel opens.
    [[nodiscard]] QWidget* firstField() const { return m_first; }
    /// Typing that has not been saved yet.
    [[nodiscard]] virtual bool hasDraft() const { return false; }

    /// Width the panel asks for beside a page; it takes the page's place where both do not fit.
    [[nodiscard]] virtual int wantedWidth() const { return m_theme.px(380); }
    /// Too wide to stand beside a page: it takes the page's place until it is closed.
    [[nodiscard]] virtual bool takesPage() const { return false; }

    void showProblem(const QString& sentence);
    void clearProblem();
    [[nodiscard]] QString problem() const;

signals:
    void closeRequested();
    /// Something was written; a sentence for the status bar.
    void saved(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

    [[nodiscard]] Theme& theme() const { return m_theme; }
    [[nodiscard]] QVBoxLayout* body() const { return m_body; }
    /// One widget that scrolls by itself in place of the body.
    void fillWith(QWidget* content);
    /// A form whose labels stand above their fields, so that nothing clips at any text size.
    [[nodiscard]] QFormLayout* addForm(const QString& heading = {});
    QPushButton* addFootButton(const QString& text, const QString& key, bool primary);
    void setFirstField(QWidget* field) { m_first = field; }
    /// A line edit with its accessible name, added to `form`.
    QLineEdit* addField(QFormLayout* form, const QString& label, const QString& hint = {});
    void addRow(QFormLayout* form, const QString& label, QWidget* field);

private:
    Theme& m_theme;
    Text* m_title;
    Text* m_problem;
    QVBoxLayout* m_body;
    QScrollArea* m_scroll;
    QVBoxLayout* m_column;
    QHBoxLayout* m_foot;
    QPushButton* m_primary = nullptr;
    QWidget* m_first = nullptr;
};

} // namespace littoral::ui
