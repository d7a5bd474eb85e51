// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/rounds/seen_row.h"

#include "core/wording/entry_words.h"
#include "ui/models/entry_words.h"
#include "ui/style/segmented.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/photo_adding.h"
#include "ui/widgets/photo_button.h"

#include <QComboBox>
#include <QCompleter>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {
constexpr int kClear = 2; // "clear" is what is usually meant when something is worth noting
}

SeenRow::SeenRow(Theme& theme, facade::Keeper& keeper, Ask& ask, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_keeper(keeper)
    , m_title(new Text(theme, TextStyle::Strong))
    , m_word(new Text(theme, TextStyle::Secondary))
    , m_what(new QComboBox)
    , m_severity(new SegmentedControl(tr("Severity"), {u"0"_s, u"1"_s, u"2"_s, u"3"_s, u"4"_s}))
    , m_where(new QComboBox)
    , m_note(new QLineEdit)
    , m_write(new QPushButton(tr("Note it")))
{
    setProperty("card", true);
    setFrameShape(QFrame::StyledPanel);
    m_what->setEditable(true);
    m_what->addItems(commonSubjects(record::EntryKind::Observation));
    m_what->setCurrentIndex(-1);
    m_what->lineEdit()->setPlaceholderText(tr("what was seen"));
    m_what->setAccessibleName(tr("What was seen"));
    m_what->setMinimumContentsLength(18);
    m_where->setEditable(true);
    m_where->addItems({tr("front left"), tr("front right"), tr("middle"), tr("back left"), tr("back right"),
                       tr("on the glass"), tr("on wood"), tr("everywhere")});
    m_where->setCurrentIndex(-1);
    m_where->lineEdit()->setPlaceholderText(tr("where"));
    m_where->setAccessibleName(tr("Where"));
    m_where->setMinimumContentsLength(9);
    m_severity->setCurrent(kClear);
    m_note->setPlaceholderText(tr("a few words"));
    m_note->setAccessibleName(tr("Note on what was seen"));
    m_note->setMinimumWidth(theme.px(150));
    m_write->setAccessibleName(tr("Note what was seen"));
    m_write->setProperty("keyHint", tr("Enter"));
    auto* photo = new PhotoButton(ask);
    m_camera = new CameraTimeOffer(keeper);
    auto* album = new QPushButton(tr("Photographs"));
    album->setAccessibleName(tr("See the photographs of this tank"));

    auto* head = new QHBoxLayout;
    head->addWidget(m_title);
    head->addWidget(m_word);
    head->addStretch(1);
    head->addWidget(new Text(theme, TextStyle::Secondary, tr("F6 moves here")));
    auto* fields = new QWidget;
    auto* flow = new FlowLayout(fields, 8);
    for (QWidget* field :
         std::initializer_list<QWidget*>{m_what, m_severity, m_where, m_note, m_write, photo, m_camera, album}) {
        flow->addWidget(field);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 10, 14, 12);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(fields);

    connect(m_severity, &SegmentedControl::chosen, this, &SeenRow::refreshWord);
    connect(m_write, &QPushButton::clicked, this, &SeenRow::write);
    connect(photo, &PhotoButton::photoTaken, this, &SeenRow::addPhoto);
    connect(m_camera, &CameraTimeOffer::taken, this, &SeenRow::written);
    connect(m_camera, &CameraTimeOffer::failed, this, &SeenRow::failed);
    connect(album, &QPushButton::clicked, this, [this] { emit photosWanted(m_tank); });
    connect(&theme, &Theme::changed, this, [this] { m_note->setMinimumWidth(m_theme.px(150)); });
    refreshWord();
    setTank({});
}

void SeenRow::refreshWord()
{
    m_word->setText(tr("severity %1: %2").arg(m_severity->current()).arg(wording::severityWord(m_severity->current())));
}

void SeenRow::setTank(record::TankId tank)
{
    m_tank = tank;
    const record::Tank* known = m_keeper.row().tank(tank);
    const QString title = known == nullptr ? tr("Seen") : tr("Seen on %1").arg(known->name);
    m_title->setText(title);
    setAccessibleName(title);
    setEnabled(known != nullptr && !m_keeper.isReadOnly());
}

void SeenRow::focusFirst()
{
    m_what->setFocus();
}

QString SeenRow::subject() const
{
    const QString what = m_what->currentText().trimmed();
    return what.isEmpty() ? u"severity"_s : subjectFrom(record::EntryKind::Observation, what);
}

bool SeenRow::hasDraft() const
{
    return !m_what->currentText().trimmed().isEmpty() || !m_note->text().trimmed().isEmpty();
}

void SeenRow::keyPressEvent(QKeyEvent* event)
{
    const bool plain = !event->modifiers().testFlag(Qt::ControlModifier);
    if (plain && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)) {
        write();
        event->accept();
        return;
    }
    QFrame::keyPressEvent(event);
}

void SeenRow::write()
{
    const QString what = m_what->currentText().trimmed();
    if (what.isEmpty()) {
        emit failed({Fault::BadInput,
                     tr("Nothing was named as seen.").toStdString(),
                     {},
                     tr("Type or pick what it was, then note it.").toStdString()});
        m_what->setFocus();
        return;
    }
    record::Entry entry;
    entry.tank = m_tank;
    entry.kind = record::EntryKind::Observation;
    entry.at = moment();
    entry.subject = subject();
    entry.severity = m_severity->current();
    entry.where = m_where->currentText().trimmed();
    entry.note = m_note->text().trimmed();
    if (const auto written = m_keeper.enter(entry); !written) {
        emit failed(written.error());
        return;
    }
    m_what->setCurrentIndex(-1);
    m_what->clearEditText();
    m_where->setCurrentIndex(-1);
    m_where->clearEditText();
    m_note->clear();
    m_severity->setCurrent(kClear);
    refreshWord();
    emit SeenRow::written(tr("%1: %2 noted").arg(m_keeper.row().tank(m_tank)->name, what));
}

void SeenRow::addPhoto(const QString& path)
{
    const auto added = ui::addPhoto(m_keeper, m_tank, path, moment(), m_note->text().trimmed());
    if (!added) {
        emit failed(added.error());
        return;
    }
    m_camera->offer(*added);
    emit written(tr("%1: photo kept").arg(m_keeper.row().tank(m_tank)->name));
}

} // namespace littoral::ui
