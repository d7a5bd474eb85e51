// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/theme.h"

#include <QImage>
#include <QWidget>
#include <vector>

namespace littoral::ui {

/// One photograph, or two side by side, each as large as it fits, its caption under it. Left and right step.
class PhotoView final : public QWidget
{
    Q_OBJECT

public:
    struct Shown
    {
        QImage image;
        QString caption;
    };

    explicit PhotoView(Theme& theme, QWidget* parent = nullptr);

    void show(std::vector<Shown> photos, const QString& whenEmpty);
    [[nodiscard]] const std::vector<Shown>& shown() const { return m_photos; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// -1 or 1; `other`: the left one of two (Shift held).
    void stepped(int by, bool other);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void paintPhoto(QPainter& painter, const Shown& photo, const QRect& box) const;

    Theme& m_theme;
    std::vector<Shown> m_photos;
    QString m_empty;
};

} // namespace littoral::ui
