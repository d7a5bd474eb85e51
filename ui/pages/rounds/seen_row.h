// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/widgets/ask.h"
#include "ui/widgets/text.h"

#include <QFrame>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace littoral::ui {

class CameraTimeOffer;
class SegmentedControl;

/// "Seen on <tank>": what, how much, where, a note, a photograph. Enter in any of the fields writes the observation.
class SeenRow final : public QFrame
{
    Q_OBJECT

public:
    SeenRow(Theme& theme, facade::Keeper& keeper, Ask& ask, QWidget* parent = nullptr);

    void setTank(record::TankId tank);
    void setMoment(std::optional<record::Moment> at) { m_at = at; }
    void focusFirst();
    /// What is being noted, as it is kept; severity before it is said.
    [[nodiscard]] QString subject() const;
    /// Typing that has not been written.
    [[nodiscard]] bool hasDraft() const;

signals:
    void written(const QString& sentence);
    void failed(const littoral::Error& error);
    void photosWanted(littoral::record::TankId tank);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void write();
    void addPhoto(const QString& path);
    void refreshWord();
    [[nodiscard]] record::Moment moment() const { return m_at ? *m_at : m_keeper.clock().now(); }

    Theme& m_theme;
    facade::Keeper& m_keeper;
    record::TankId m_tank;
    std::optional<record::Moment> m_at;
    Text* m_title;
    Text* m_word;
    QComboBox* m_what;
    SegmentedControl* m_severity;
    QComboBox* m_where;
    QLineEdit* m_note;
    QPushButton* m_write;
    CameraTimeOffer* m_camera;
};

} // namespace littoral::ui
