// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/text.h"

#include <QAbstractButton>

class QVBoxLayout;

namespace littoral::ui {

/// A line that opens on what stands behind it: chevron, words, a short value at the right. Click, Enter or Space turns
/// it; Right opens, Left closes.
class DisclosureLine final : public QAbstractButton
{
    Q_OBJECT

public:
    explicit DisclosureLine(Theme& theme, QWidget* parent = nullptr);

    void setWords(const QString& text, const QString& value);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    Theme& m_theme;
    QString m_value;
};

/// A disclosure line with the text it opens on.
class Disclosure final : public QWidget
{
    Q_OBJECT

public:
    explicit Disclosure(Theme& theme, QWidget* parent = nullptr);

    /// `spoken` is the line as a sentence for assistive technology.
    void setWords(const QString& text, const QString& value, const QString& spoken, const QStringList& details);
    [[nodiscard]] bool isOpen() const;
    void setOpen(bool open);
    [[nodiscard]] DisclosureLine* line() { return m_line; }
    [[nodiscard]] QString details() const;

private:
    DisclosureLine* m_line;
    Text* m_details;
};

} // namespace littoral::ui
