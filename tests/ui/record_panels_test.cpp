// SPDX-License-Identifier: GPL-3.0-or-later
// Entries of the whole row, photographs, supplies and task templates: seen, edited, taken back.
#include "core/care/work_template.h"
#include "core/facade/photos.h"
#include "tests/ui/frame_fixture.h"
#include "ui/models/round_timers.h"
#include "ui/pages/editors/bulk_bar.h"
#include "ui/pages/editors/entries_panel.h"
#include "ui/pages/editors/kits_editor.h"
#include "ui/pages/editors/photos_panel.h"
#include "ui/pages/editors/supplies_editor.h"
#include "ui/pages/editors/templates_editor.h"
#include "ui/widgets/camera_time.h"
#include "ui/widgets/photo_adding.h"
#include "ui/widgets/photo_view.h"

#include <QBuffer>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QtEndian>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;
using facade::photosOf;

class RecordPanelTest : public FrameTest
{
protected:
    RecordPanelTest()
    {
        addKits();
        m_a = addTank(u"Slate Ford"_s, 30);
        m_b = addTank(u"Fen Corner"_s, 60);
    }
    template <typename Widget> [[nodiscard]] static Widget* named(const QWidget& panel, const QString& name)
    {
        for (Widget* widget : panel.findChildren<Widget*>()) {
            if (widget->accessibleName() == name) {
                return widget;
            }
        }
        ADD_FAILURE() << "no field " << name.toStdString();
        return nullptr;
    }
    record::EntryId dose(record::TankId tank, const QString& subject, double amount, int daysAgo)
    {
        record::Entry entry;
        entry.tank = tank;
        entry.kind = record::EntryKind::Dose;
        entry.subject = subject;
        entry.amount = amount;
        entry.unit = u"mL"_s;
        entry.at = m_clock.now().plusDays(-daysAgo);
        const auto done = m_keeper.enter(entry);
        EXPECT_TRUE(done);
        return done ? *done : record::EntryId{};
    }
    QString pictureFile(const QString& name, const QByteArray& exif = {})
    {
        QImage image(400, 300, QImage::Format_RGB32);
        image.fill(Qt::darkGreen);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, "JPEG");
        bytes.insert(2, exif); // right after the start-of-image marker
        QFile file(path(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return file.fileName();
    }

    record::TankId m_a, m_b;
};

namespace {

/// An APP1 segment as a camera writes it. Layout: Exif 2.3 (CIPA DC-008-2012 / JEITA CP-3451C), 4.5 and 4.6: the header
/// "Exif\0\0", a TIFF header, IFD0 with a pointer (0x8769) to the Exif IFD, which holds DateTimeOriginal (0x9003) as 20
/// ASCII bytes and OffsetTimeOriginal (0x9011, Exif 2.31) as 7.
QByteArray exifWith(const QByteArray& time, const QByteArray& offset)
{
    QByteArray tiff("II*\0\x08\0\0\0", 8);
    const auto u16 = [&](quint16 v) { tiff.append(static_cast<char>(v & 0xff)).append(static_cast<char>(v >> 8)); };
    const auto u32 = [&](quint32 v) {
        u16(static_cast<quint16>(v & 0xffff));
        u16(static_cast<quint16>(v >> 16));
    };
    const auto entry = [&](quint16 tag, quint16 type, quint32 count, quint32 value) {
        u16(tag);
        u16(type);
        u32(count);
        u32(value);
    };
    const quint16 fields = offset.isEmpty() ? 1 : 2;
    const quint32 exifAt = 8 + 2 + 12 + 4;
    const quint32 dataAt = exifAt + 2 + 12u * fields + 4;
    u16(1);
    entry(0x8769, 4, 1, exifAt);
    u32(0);
    u16(fields);
    entry(0x9003, 2, 20, dataAt);
    if (!offset.isEmpty()) {
        entry(0x9011, 2, 7, dataAt + 20);
    }
    u32(0);
    tiff.append(time.leftJustified(20, '\0')).append(offset.isEmpty() ? QByteArray() : offset.leftJustified(7, '\0'));
    QByteArray segment("\xff\xe1", 2);
    const quint16 size = qToBigEndian(static_cast<quint16>(2 + 6 + tiff.size()));
    segment.append(reinterpret_cast<const char*>(&size), 2).append(QByteArray("Exif\0\0", 6)).append(tiff);
    return segment;
}

} // namespace

TEST_F(RecordPanelTest, TheWholeRowIsListedNarrowedAndSorted)
{
    read(m_a, u"no2"_s, u"0.8"_s, 2);
    read(m_b, u"no2"_s, u"0.1"_s, 1);
    read(m_b, u"tan"_s, u"0.2"_s, 5);
    dose(m_b, u"potassium"_s, 4.0, 3);
    EntriesPanel panel(m_keeper, m_theme);
    panel.setTank({});
    panel.resize(1200, 800);
    panel.show();
    QAbstractItemModel* model = panel.table()->model();
    EXPECT_EQ(model->rowCount(), 4);
    EXPECT_EQ(model->index(0, EntriesModel::TankColumn).data().toString(), u"Fen Corner"_s) << "newest first";
    auto* filter = named<QLineEdit>(panel, u"Narrow the entries by text"_s);
    filter->setText(u"fen nitrite"_s);
    EXPECT_EQ(model->rowCount(), 1) << "every word counts, in any column";
    filter->setText(u"potassium"_s);
    EXPECT_EQ(model->rowCount(), 1);
    filter->setText(u"22 Nov"_s);
    EXPECT_EQ(model->rowCount(), 1);
    filter->clear();
    auto* shown = named<QComboBox>(panel, u"Kind of record on show"_s);
    shown->setCurrentIndex(shown->findData(u"reading:no2"_s));
    EXPECT_EQ(model->rowCount(), 2);
    panel.table()->sortByColumn(EntriesModel::AmountColumn, Qt::AscendingOrder);
    EXPECT_EQ(model->index(0, EntriesModel::AmountColumn).data().toString(), u"0.1 mg/L NO₂"_s);
    QTest::keyClick(panel.table(), Qt::Key_F, Qt::ControlModifier);
    EXPECT_TRUE(filter->hasFocus() || !panel.isActiveWindow());
}

TEST_F(RecordPanelTest, CellsAreEditedInPlaceAndUndoNamesTheChange)
{
    read(m_a, u"no2"_s, u"0.8"_s, 2);
    dose(m_a, u"potassium"_s, 4.0, 3);
    EntriesModel model(m_keeper);
    ASSERT_EQ(model.rowCount(), 2);
    const auto cell = [&](int row, int column) { return model.index(row, column); };
    EXPECT_TRUE(model.setData(cell(0, EntriesModel::AmountColumn), u"0,4"_s));
    EXPECT_EQ(cell(0, EntriesModel::AmountColumn).data(Qt::EditRole).toString(), u"0,4"_s);
    EXPECT_EQ(m_keeper.lastChangeText(), u"Nitrite 0,4 mg/L NO₂, Slate Ford"_s);
    EXPECT_TRUE(model.setData(cell(0, EntriesModel::KitColumn), QString()));
    EXPECT_TRUE(cell(0, EntriesModel::KitColumn).data().toString().isEmpty());
    EXPECT_TRUE(model.setData(cell(1, EntriesModel::AmountColumn), u"6 mL"_s));
    EXPECT_EQ(cell(1, EntriesModel::AmountColumn).data().toString(), u"6 mL"_s);
    EXPECT_TRUE(model.setData(cell(1, EntriesModel::NoteColumn), u"after the lights"_s));
    EXPECT_TRUE(model.setData(cell(1, EntriesModel::WhenColumn), u"2026-11-23 08:15"_s));
    EXPECT_TRUE(model.setData(cell(0, EntriesModel::TankColumn), u"fen corner"_s));
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_b))->readings.size() +
                  m_keeper.row().layout(layoutOf(m_b))->entries.size(),
              1U);
    QSignalSpy refused(&model, &EntriesModel::refused);
    EXPECT_FALSE(model.setData(cell(0, EntriesModel::WhenColumn), u"2027-01-01"_s)) << "done, so not after now";
    EXPECT_FALSE(model.setData(cell(0, EntriesModel::WhenColumn), u"whenever"_s));
    EXPECT_EQ(refused.count(), 2);
    while (m_keeper.journal().undoLabel && m_keeper.journal().undoLabel != u"Dose: potassium, Slate Ford"_s) {
        ASSERT_TRUE(m_keeper.undo());
    }
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_a))->readings.size(), 1U);
}

TEST_F(RecordPanelTest, TheSelectedAreChangedTogetherAndStaySelected)
{
    for (int day = 1; day <= 4; ++day) {
        read(m_a, u"no2"_s, u"0.8"_s, day);
    }
    EntriesPanel panel(m_keeper, m_theme);
    panel.setTank({});
    panel.show();
    panel.table()->selectAll();
    named<QLineEdit>(panel, u"Later by; minus for earlier"_s)->setText(u"-3 h"_s);
    named<QPushButton>(panel, u"Move the selected records in time"_s)->click();
    EXPECT_EQ(panel.problem().toStdString(), "");
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_a))->readings.back().at,
              m_clock.now().plusDays(-1).plusMs(-3 * 3600000));
    EXPECT_EQ(panel.table()->selectionModel()->selectedRows().size(), 4) << "the next change is to the same";
    auto* tank = named<QComboBox>(panel, u"Tank for the selected records"_s);
    tank->setCurrentIndex(tank->findData(m_b.value));
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_b))->readings.size(), 0U) << "choosing alone changes nothing";
    named<QPushButton>(panel, u"Put the selected records into that tank"_s)->click();
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_b))->readings.size(), 4U);
    QTest::keyClick(panel.table(), Qt::Key_Delete);
    EXPECT_EQ(readingCount(), 0U);
    ASSERT_TRUE(m_keeper.undo());
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(m_keeper.row().layout(layoutOf(m_a))->readings.size(), 4U);
    named<QLineEdit>(panel, u"Later by; minus for earlier"_s)->setText(u"a while"_s);
    named<QPushButton>(panel, u"Move the selected records in time"_s)->click();
    EXPECT_FALSE(panel.problem().isEmpty());
}

TEST(ShiftFrom, ReadsSpans)
{
    EXPECT_EQ(shiftFrom(u"2 h"_s), 7'200'000);
    EXPECT_EQ(shiftFrom(u"-90 min"_s), -5'400'000);
    EXPECT_EQ(shiftFrom(u"−1d"_s), -86'400'000);
    EXPECT_EQ(shiftFrom(u"0,5 d"_s), 43'200'000);
    EXPECT_FALSE(shiftFrom(u"2"_s));
    EXPECT_FALSE(shiftFrom(u"h"_s));
    EXPECT_FALSE(shiftFrom(QString()));
}

TEST_F(RecordPanelTest, TheCamerasTimeIsReadFromThePicture)
{
    EXPECT_FALSE(cameraTimeOf(pictureFile(u"plain.jpg"_s)));
    const auto withZone = cameraTimeOf(pictureFile(u"zone.jpg"_s, exifWith("2026:11:20 18:03:07", "+01:00")));
    ASSERT_TRUE(withZone);
    EXPECT_EQ(withZone->toIso(), u"2026-11-20T18:03:07+01:00"_s);
    const auto local = cameraTimeOf(pictureFile(u"local.jpg"_s, exifWith("2026:11:20 18:03:07", {})));
    ASSERT_TRUE(local);
    EXPECT_EQ(local->toDateTime().time(), QTime(18, 3, 7));
    EXPECT_FALSE(cameraTimeOf(pictureFile(u"unset.jpg"_s, exifWith("0000:00:00 00:00:00", {}))));
    EXPECT_FALSE(cameraTime(exifWith("2026:11:20 18:03:07", {}).left(20))) << "cut off";
}

TEST_F(RecordPanelTest, PhotographsAreSteppedComparedMendedAndRemoved)
{
    for (int day : {20, 10, 1}) {
        const auto added = addPhoto(m_keeper, m_a, pictureFile(u"p%1.jpg"_s.arg(day)), m_clock.now().plusDays(-day),
                                    u"day %1"_s.arg(day));
        ASSERT_TRUE(added);
        EXPECT_FALSE(added->camera);
    }
    PhotosPanel panel(m_keeper, m_theme, m_ask);
    panel.resize(1200, 800);
    panel.show();
    panel.setTank(m_a);
    ASSERT_EQ(panel.model().rowCount(), 3);
    ASSERT_EQ(panel.view().shown().size(), 1U);
    EXPECT_TRUE(panel.view().shown()[0].caption.contains(u"day 29"_s)) << panel.view().shown()[0].caption.toStdString();
    QTest::keyClick(&panel.view(), Qt::Key_Left);
    EXPECT_TRUE(panel.view().shown()[0].caption.contains(u"day 20"_s));
    panel.toggleCompare();
    ASSERT_EQ(panel.view().shown().size(), 2U);
    EXPECT_TRUE(panel.view().shown()[0].caption.contains(u"day 20"_s)) << "the older one stands to the left";
    EXPECT_TRUE(panel.view().shown()[1].caption.contains(u"day 29"_s));
    QTest::keyClick(&panel.view(), Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_TRUE(panel.view().shown()[0].caption.contains(u"day 10"_s));
    panel.toggleCompare();
    EXPECT_EQ(panel.view().shown().size(), 1U);

    named<QLineEdit>(panel, u"Note"_s)->setText(u"carpet closing"_s);
    EXPECT_TRUE(panel.hasDraft());
    named<QPushButton>(panel, u"Save"_s)->click();
    EXPECT_FALSE(panel.hasDraft());
    EXPECT_EQ(photosOf(m_keeper, m_a).back().note, u"carpet closing"_s);
    panel.removeCurrent();
    EXPECT_EQ(photosOf(m_keeper, m_a).size(), 2U);
    EXPECT_TRUE(m_keeper.lastChangeText().contains(u"remove photograph"_s));
    ASSERT_TRUE(m_keeper.undo());
    ASSERT_EQ(photosOf(m_keeper, m_a).size(), 3U);
    EXPECT_FALSE(panel.model().picture(photosOf(m_keeper, m_a).back().id).isNull()) << "with its picture";
}

TEST_F(RecordPanelTest, TheCamerasTimeIsOfferedWhenAPhotoIsAdded)
{
    PhotosPanel panel(m_keeper, m_theme, m_ask);
    panel.resize(1200, 800);
    panel.show();
    panel.setTank(m_a);
    m_ask.picture = pictureFile(u"camera.jpg"_s, exifWith("2026:11:20 18:03:00", "+00:00"));
    named<QPushButton>(panel, u"Add a photo: choose a file or drop one here"_s)->click();
    ASSERT_EQ(photosOf(m_keeper, m_a).size(), 1U);
    EXPECT_EQ(photosOf(m_keeper, m_a)[0].at, m_clock.now());
    auto* offer = panel.findChild<CameraTimeOffer*>();
    ASSERT_TRUE(offer->isVisible());
    offer->click();
    EXPECT_EQ(photosOf(m_keeper, m_a)[0].at.toIso(), u"2026-11-20T18:03:00Z"_s);
    EXPECT_FALSE(offer->isVisible());
}

TEST_F(RecordPanelTest, ASupplyIsKeptReckonedAndRemoved)
{
    dose(m_a, u"Green drops"_s, 5.0, 2);
    SuppliesEditor panel(m_keeper, m_theme);
    panel.setVisible(true);
    panel.open();
    named<QLineEdit>(panel, u"Name, as doses of it are entered"_s)->setText(u"green drops"_s);
    named<QLineEdit>(panel, u"Amount when opened or last counted"_s)->setText(u"250"_s);
    named<QLineEdit>(panel, u"Opened or counted on"_s)->setText(u"2026-11-01"_s);
    EXPECT_TRUE(panel.hasDraft());
    named<QPushButton>(panel, u"Save supply"_s)->click();
    EXPECT_EQ(panel.problem().toStdString(), "");
    EXPECT_FALSE(panel.hasDraft());
    ASSERT_EQ(m_keeper.row().supplies.size(), 1U);
    EXPECT_TRUE(panel.standingText().contains(u"245 mL"_s)) << panel.standingText().toStdString();
    EXPECT_EQ(m_keeper.lastChangeText(), u"supply green drops"_s);
    dose(m_a, u"green drops"_s, 45.0, 1);
    EXPECT_TRUE(panel.standingText().contains(u"200 mL"_s)) << "follows the record";
    named<QLineEdit>(panel, u"Good until"_s)->setText(u"soon"_s);
    named<QPushButton>(panel, u"Save supply"_s)->click();
    EXPECT_TRUE(panel.problem().contains(u"\"soon\""_s));
    named<QPushButton>(panel, u"Remove"_s)->click();
    EXPECT_TRUE(m_keeper.row().supplies.empty());
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(m_keeper.row().supplies.size(), 1U);
}

TEST_F(RecordPanelTest, ACylinderIsWeighedBehindItsCaution)
{
    SuppliesEditor panel(m_keeper, m_theme);
    panel.setVisible(true);
    panel.open();
    auto* kind = named<QComboBox>(panel, u"Kind"_s);
    kind->setCurrentIndex(kind->findData(u"co2"_s));
    bool caution = false;
    for (const Text* text : panel.findChildren<Text*>()) {
        caution = caution || (text->isVisible() && text->text().contains(u"Never refill"_s));
    }
    EXPECT_TRUE(caution) << "above the actions";
    named<QLineEdit>(panel, u"Name, as doses of it are entered"_s)->setText(u"Steel bottle"_s);
    auto* tank = named<QComboBox>(panel, u"The cylinder hangs at"_s);
    tank->setCurrentIndex(tank->findData(m_a.value));
    named<QLineEdit>(panel, u"Weight when empty, with what is weighed with it, g"_s)->setText(u"5400"_s);
    named<QPushButton>(panel, u"Save supply"_s)->click();
    ASSERT_EQ(panel.problem().toStdString(), "");
    named<QLineEdit>(panel, u"Weight now, closed, g"_s)->setText(u"6900"_s);
    named<QPushButton>(panel, u"Enter the weighing"_s)->click();
    EXPECT_EQ(panel.problem().toStdString(), "");
    EXPECT_TRUE(panel.standingText().contains(u"of gas left"_s)) << panel.standingText().toStdString();
}

TEST_F(RecordPanelTest, ATemplateIsChangedPreviewedAndGivenBack)
{
    TemplatesEditor panel(m_keeper, m_theme);
    panel.resize(1300, 900);
    panel.show();
    panel.open(u"test-temperature"_s);
    care::TemplateText text = panel.typed();
    EXPECT_EQ(text.key, u"test-temperature"_s);
    EXPECT_FALSE(panel.hasDraft());
    EXPECT_TRUE(panel.previewText().contains(u"Slate Ford"_s)) << panel.previewText().toStdString();
    text.rounds[0].every = u"3"_s;
    panel.setTyped(text);
    EXPECT_TRUE(panel.hasDraft());
    named<QPushButton>(panel, u"Save template"_s)->click();
    EXPECT_EQ(panel.problem().toStdString(), "");
    EXPECT_EQ(care::templatesFor(m_keeper.row()).find(u"test-temperature"_s)->variants[0].rounds[0].every, 3.0);
    EXPECT_TRUE(m_keeper.lastChangeText().startsWith(u"task template"_s));
    // What is wrong is refused with its place, and nothing is written.
    text.rounds[0].every = u"3.25"_s;
    panel.setTyped(text);
    named<QPushButton>(panel, u"Save template"_s)->click();
    EXPECT_TRUE(panel.problem().contains(u"half days"_s)) << panel.problem().toStdString();
    EXPECT_EQ(care::templatesFor(m_keeper.row()).find(u"test-temperature"_s)->variants[0].rounds[0].every, 3.0);
    named<QPushButton>(panel, u"Back to the built-in"_s)->click();
    EXPECT_TRUE(m_keeper.row().templates.empty());
    EXPECT_EQ(panel.typed().rounds[0].every, u"7"_s);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(m_keeper.row().templates.size(), 1U);
}

TEST_F(RecordPanelTest, AnOwnTemplateAsksForItsWorkAndIsSwitchedOff)
{
    TemplatesEditor panel(m_keeper, m_theme);
    panel.show();
    panel.open();
    named<QPushButton>(panel, u"New template"_s)->click();
    care::TemplateText text = panel.typed();
    text.title = u"Wipe the lamps"_s;
    text.key = u"wipe-lamps"_s;
    text.consequence = u"Less light reaches the plants."_s;
    panel.setTyped(text);
    named<QPushButton>(panel, u"Save template"_s)->click();
    ASSERT_EQ(panel.problem().toStdString(), "");
    const auto asked = [&] {
        const auto items = care::dueWork(m_keeper.row(), layoutOf(m_a), m_clock.now(), m_clock.today().addDays(10));
        return std::ranges::any_of(items, [](const care::DueItem& it) { return it.templateKey == u"wipe-lamps"_s; });
    };
    EXPECT_TRUE(asked());
    named<QPushButton>(panel, u"Switch off"_s)->click();
    EXPECT_FALSE(asked());
    named<QPushButton>(panel, u"New template"_s)->click();
    text.key = u"water-change"_s;
    panel.setTyped(text);
    named<QPushButton>(panel, u"Save template"_s)->click();
    EXPECT_TRUE(panel.problem().contains(u"already"_s)) << "a built-in key is not taken over by accident";
}

TEST_F(RecordPanelTest, TimersRunSideBySideAndSayWhenToRead)
{
    RoundTimers timers(m_keeper);
    QSignalSpy ready(&timers, &RoundTimers::ready);
    EXPECT_EQ(timers.start(m_a, u"no2"_s, 0.0, 0.0), 0) << "nothing to wait for";
    timers.start(m_a, u"no2"_s, 1.0, 5.0);
    timers.start(m_b, u"tan"_s, 0.0, 2.0);
    ASSERT_EQ(timers.timers().size(), 2U);
    EXPECT_EQ(timers.timers()[0].parameter, u"tan"_s) << "soonest first";
    EXPECT_EQ(timers.stateText(timers.timers()[1]), u"shake 1:00"_s);
    m_clock.set(m_clock.now().plusMs(2 * 60'000));
    timers.tick();
    EXPECT_EQ(ready.count(), 1);
    EXPECT_EQ(timers.stateText(timers.timers()[0]), u"read it now"_s);
    EXPECT_EQ(timers.stateText(timers.timers()[1]), u"4:00"_s);
    timers.tick();
    EXPECT_EQ(ready.count(), 1) << "said once";
    timers.stop(timers.timers()[0].id);
    EXPECT_TRUE(timers.summary().contains(u"Nitrite, Slate Ford: 4:00"_s)) << timers.summary().toStdString();
}

TEST_F(RecordPanelTest, AKitKeepsHowLongItIsShaken)
{
    KitsEditor panel(m_keeper, m_theme);
    panel.setVisible(true);
    panel.open();
    panel.findChild<QListWidget*>()->setCurrentRow(0);
    named<QLineEdit>(panel, u"Minutes to shake, before the waiting time"_s)->setText(u"0.5"_s);
    EXPECT_TRUE(panel.hasDraft());
    named<QPushButton>(panel, u"Save kit"_s)->click();
    EXPECT_DOUBLE_EQ(shakeMinutes(m_keeper.row(), m_keeper.row().kits[0].id), 0.5);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_DOUBLE_EQ(shakeMinutes(m_keeper.row(), m_keeper.row().kits[0].id), 0.0);
}

} // namespace littoral::ui::test
