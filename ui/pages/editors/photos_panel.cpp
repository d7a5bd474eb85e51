// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/photos_panel.h"

#include "ui/models/day_words.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/photo_adding.h"
#include "ui/widgets/photo_button.h"
#include "ui/widgets/photo_view.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QListView>
#include <QShortcut>
#include <QSignalBlocker>
#include <algorithm>

namespace littoral::ui {

PhotosPanel::PhotosPanel(facade::Keeper& keeper, Theme& theme, Ask& ask, QWidget* parent)
    : SidePanel(theme, tr("Photographs"), parent)
    , m_keeper(keeper)
    , m_model(new PhotosModel(keeper, this))
    , m_tanks(new QComboBox)
    , m_count(new Text(theme, TextStyle::Secondary))
    , m_list(new QListView)
    , m_view(new PhotoView(theme))
    , m_columns(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_at(new MomentEdit(keeper.clock(), false))
    , m_note(nullptr)
    , m_camera(new CameraTimeOffer(keeper))
{
    makeHead(ask);
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Photographs by date; left and right step, C compares, Delete removes"));
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setUniformItemSizes(false);
    m_list->setWordWrap(true);
    m_list->installEventFilter(this);
    m_columns->setSpacing(12);
    m_columns->addWidget(m_list);
    m_columns->addWidget(m_view, 1);
    body()->addLayout(m_columns, 1);
    makeFields();
    setFirstField(m_list);
    m_save = addFootButton(tr("Save"), tr("Enter"), true);
    m_compare = addFootButton(tr("Compare"), QStringLiteral("C"), false);
    m_remove = addFootButton(tr("Remove"), tr("Del"), false);
    connectAll();
    const auto size = [this] {
        const int side = this->theme().px(88);
        m_model->setSmallSide(side);
        m_list->setIconSize(QSize(side, side));
    };
    connect(&theme, &Theme::changed, this, size);
    size();
    refresh();
}

void PhotosPanel::makeHead(Ask& ask)
{
    m_tanks->setAccessibleName(tr("Tank whose photographs are on show"));
    m_count->setToken(Token::Ink2);
    auto* photo = new PhotoButton(ask);
    photo->setText(tr("Add a photo"));
    auto* bar = new QWidget;
    auto* flow = new FlowLayout(bar, 10);
    flow->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : std::initializer_list<QWidget*>{m_tanks, photo, m_camera, m_count}) {
        flow->addWidget(part);
    }
    body()->addWidget(bar);
    connect(photo, &PhotoButton::photoTaken, this, &PhotosPanel::add);
}

void PhotosPanel::makeFields()
{
    QFormLayout* form = addForm();
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addRow(form, tr("Taken at"), m_at);
    m_note = addField(form, tr("Note"));
}

void PhotosPanel::connectAll()
{
    connect(m_tanks, &QComboBox::activated, this,
            [this] { setTank(record::TankId{m_tanks->currentData().toLongLong()}); });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
        showPhotos();
        showFields();
    });
    connect(m_model, &QAbstractItemModel::modelReset, this, &PhotosPanel::refresh);
    connect(m_view, &PhotoView::stepped, this, &PhotosPanel::step);
    connect(m_save, &QPushButton::clicked, this, &PhotosPanel::save);
    connect(m_compare, &QPushButton::clicked, this, &PhotosPanel::toggleCompare);
    connect(m_remove, &QPushButton::clicked, this, &PhotosPanel::removeCurrent);
    connect(m_camera, &CameraTimeOffer::taken, this, &PhotosPanel::saved);
    connect(m_camera, &CameraTimeOffer::failed, this,
            [this](const Error& error) { showProblem(QString::fromStdString(error.sentence())); });
    auto* compare = new QShortcut(Qt::Key_C, this);
    compare->setContext(Qt::WidgetWithChildrenShortcut);
    connect(compare, &QShortcut::activated, this, &PhotosPanel::toggleCompare);
}

void PhotosPanel::fillTanks()
{
    m_tanks->clear();
    for (const record::Tank& tank : m_keeper.row().tanks) {
        m_tanks->addItem(tank.name, tank.id.value);
    }
    m_tanks->setCurrentIndex(std::max(0, m_tanks->findData(m_tank.value)));
}

void PhotosPanel::setTank(record::TankId tank, record::PhotoId photo)
{
    const record::Tank* known = m_keeper.row().tank(tank);
    if (tank != m_tank) {
        m_pinned = {};
        m_shown = {};
        m_camera->hide();
    }
    m_tank = tank;
    fillTanks();
    setTitle(known == nullptr ? tr("Photographs") : tr("Photographs of %1").arg(known->name));
    m_model->setTank(tank);
    if (photo) {
        select(photo);
    } else if (!m_list->currentIndex().isValid() && m_model->rowCount() > 0) {
        m_list->setCurrentIndex(m_model->index(m_model->rowCount() - 1));
    }
    refresh();
}

const record::Photo* PhotosPanel::current() const
{
    return m_model->photo(m_list->currentIndex().row());
}

void PhotosPanel::select(record::PhotoId photo)
{
    if (const int row = m_model->rowOf(photo); row >= 0) {
        m_list->setCurrentIndex(m_model->index(row));
    }
}

/// After the record changed: the same photograph stays on show, or its neighbour where it is gone.
void PhotosPanel::refresh()
{
    const int rows = m_model->rowCount();
    if (!m_list->currentIndex().isValid() && rows > 0) {
        const int row = m_model->rowOf(m_shown.id);
        m_list->setCurrentIndex(m_model->index(row >= 0 ? row : rows - 1));
    }
    if (m_model->rowOf(m_pinned) < 0) {
        m_pinned = {};
    }
    m_count->setText(tr("%n photograph(s)", nullptr, rows));
    m_list->setVisible(rows > 0);
    showPhotos();
    showFields();
}

void PhotosPanel::showPhotos()
{
    std::vector<PhotoView::Shown> shown;
    const record::Photo* now = current();
    const record::Photo* then = m_model->photo(m_model->rowOf(m_pinned));
    for (const record::Photo* photo : {then, now}) {
        if (photo != nullptr) {
            shown.push_back({m_model->picture(photo->id), m_model->caption(*photo)});
        }
    }
    m_view->show(std::move(shown),
                 tr("No photograph of this tank yet. Add one here, or on Rounds beside what was seen."));
    m_compare->setEnabled(m_model->rowCount() > 1);
    m_compare->setText(m_pinned ? tr("One only") : tr("Compare"));
    m_compare->setAccessibleName(m_pinned ? tr("Show one photograph only")
                                          : tr("Put this photograph beside another one"));
}

void PhotosPanel::showFields()
{
    const record::Photo* photo = current();
    if (photo != nullptr && photo->id == m_shown.id && hasDraft()) {
        return; // what is half typed stays
    }
    m_shown = photo == nullptr ? record::Photo{} : *photo;
    clearProblem();
    m_at->setText(photo == nullptr ? QString() : momentEditText(photo->at));
    m_note->setText(m_shown.note);
    const bool writable = photo != nullptr && !m_keeper.isReadOnly();
    for (QWidget* part : std::initializer_list<QWidget*>{m_at, m_note, m_save, m_remove}) {
        part->setEnabled(writable);
    }
}

bool PhotosPanel::hasDraft() const
{
    return m_shown.id && (m_note->text().trimmed() != m_shown.note || m_at->text() != momentEditText(m_shown.at));
}

void PhotosPanel::add(const QString& path)
{
    const auto added = addPhoto(m_keeper, m_tank, path, m_keeper.clock().now(), {});
    if (!added) {
        showProblem(QString::fromStdString(added.error().sentence()));
        return;
    }
    select(added->photo.id);
    m_camera->offer(*added);
    emit saved(tr("Photo kept"));
}

void PhotosPanel::save()
{
    if (!hasDraft()) {
        return;
    }
    record::Photo photo = m_shown;
    photo.note = m_note->text().trimmed();
    const record::Moment at = m_at->text() == momentEditText(photo.at) ? photo.at : m_at->moment();
    if (!at.isValid() || at > m_keeper.clock().now()) {
        showProblem(at.isValid() ? tr("That is after now, and the photograph was taken.")
                                 : tr("The time is not understood. Type it as 2026-11-25 07:30."));
        return;
    }
    m_shown = photo; // no longer a draft when the change comes back
    m_shown.at = at;
    if (const auto done = setPhotoTime(m_keeper, photo, at); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    emit saved(tr("Photograph saved"));
}

void PhotosPanel::removeCurrent()
{
    const record::Photo* photo = current();
    if (photo == nullptr || m_keeper.isReadOnly()) {
        return;
    }
    const int row = m_list->currentIndex().row();
    const record::Tank* tank = m_keeper.row().tank(photo->tank);
    const QString when = momentText(photo->at, m_keeper.clock().today());
    store::Edit edit(tr("remove photograph of %1, %2").arg(when, tank == nullptr ? QString() : tank->name));
    edit.remove(photo->id);
    // Its neighbour comes on show; the keyboard stays in the list.
    const record::Photo* next = m_model->photo(row + 1 < m_model->rowCount() ? row + 1 : row - 1);
    m_shown = next == nullptr ? record::Photo{} : *next;
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    m_list->setFocus();
    emit saved(tr("Removed: photograph of %1").arg(when));
}

void PhotosPanel::toggleCompare()
{
    if (m_pinned) {
        m_pinned = {};
        showPhotos();
        return;
    }
    const record::Photo* photo = current();
    if (photo == nullptr || m_model->rowCount() < 2) {
        return;
    }
    // The older one stands to the left: the one on show, and beside it the newest, or the oldest beside the newest.
    const int row = m_list->currentIndex().row();
    const int last = m_model->rowCount() - 1;
    m_pinned = row == last ? m_model->photo(0)->id : photo->id;
    if (row != last) {
        m_list->setCurrentIndex(m_model->index(last));
    }
    showPhotos();
}

void PhotosPanel::step(int by, bool other)
{
    const bool left = other && m_pinned;
    const int row = std::clamp((left ? m_model->rowOf(m_pinned) : m_list->currentIndex().row()) + by, 0,
                               std::max(0, m_model->rowCount() - 1));
    if (left) {
        m_pinned = m_model->photo(row)->id;
        showPhotos();
    } else {
        m_list->setCurrentIndex(m_model->index(row));
    }
}

bool PhotosPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_list && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Left || key->key() == Qt::Key_Right) {
            step(key->key() == Qt::Key_Left ? -1 : 1, key->modifiers().testFlag(Qt::ShiftModifier));
            return true;
        }
        if (key->key() == Qt::Key_Delete || key->key() == Qt::Key_Backspace) {
            removeCurrent();
            return true;
        }
    }
    return SidePanel::eventFilter(watched, event);
}

void PhotosPanel::resizeEvent(QResizeEvent* event)
{
    SidePanel::resizeEvent(event);
    const bool wide = width() >= theme().px(760);
    m_columns->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_list->setMinimumWidth(wide ? theme().px(230) : 0);
    m_list->setMaximumWidth(wide ? theme().px(260) : QWIDGETSIZE_MAX);
    m_list->setMaximumHeight(wide ? QWIDGETSIZE_MAX : theme().px(180));
}

} // namespace littoral::ui
