// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/photos_model.h"
#include "ui/widgets/ask.h"
#include "ui/widgets/side_panel.h"

class QBoxLayout;
class QComboBox;
class QListView;

namespace littoral::ui {

class CameraTimeOffer;
class MomentEdit;
class PhotoView;

/// The photographs of a tank by date: step through them, put two beside each other, mend time and note, add, remove.
class PhotosPanel final : public SidePanel
{
    Q_OBJECT

public:
    PhotosPanel(facade::Keeper& keeper, Theme& theme, Ask& ask, QWidget* parent = nullptr);

    /// The tank's newest photograph, or the one given.
    void setTank(record::TankId tank, record::PhotoId photo = {});
    [[nodiscard]] PhotosModel& model() { return *m_model; }
    [[nodiscard]] PhotoView& view() { return *m_view; }
    [[nodiscard]] bool hasDraft() const override;
    [[nodiscard]] bool takesPage() const override { return true; }
    /// Puts the one on show to the left and another to the right, or takes them apart again.
    void toggleCompare();
    void removeCurrent();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void makeHead(Ask& ask);
    void makeFields();
    void connectAll();
    void fillTanks();
    void add(const QString& path);
    void save();
    void refresh();
    void showPhotos();
    void showFields();
    void step(int by, bool other);
    [[nodiscard]] const record::Photo* current() const;
    void select(record::PhotoId photo);

    facade::Keeper& m_keeper;
    record::TankId m_tank;
    record::Photo m_shown;    ///< whose time and note are in the fields
    record::PhotoId m_pinned; ///< the left one of two; none: one is on show
    PhotosModel* m_model;
    QComboBox* m_tanks;
    Text* m_count;
    QListView* m_list;
    PhotoView* m_view;
    QBoxLayout* m_columns;
    MomentEdit* m_at;
    QLineEdit* m_note;
    CameraTimeOffer* m_camera;
    QPushButton *m_save, *m_compare, *m_remove;
};

} // namespace littoral::ui
