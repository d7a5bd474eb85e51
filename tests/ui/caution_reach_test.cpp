// SPDX-License-Identifier: GPL-3.0-or-later
// Every caution of the file of facts is reached from an action it belongs to and stands above that action.
#include "core/care/work_template.h"
#include "core/facts/entry_cautions.h"
#include "core/sheets/text_input.h"
#include "core/wording/caution_words.h"
#include "tests/ui/frame_fixture.h"
#include "ui/models/guide_shelves.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/editors/entry_editor.h"
#include "ui/pages/rounds/work_panel.h"
#include "ui/widgets/caution_box.h"
#include "ui/widgets/lanes/why_strip.h"

#include <QApplication>
#include <QListView>
#include <QPushButton>
#include <QScrollArea>
#include <map>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

/// What names each caution: "sheet dip", "entry dose", "task diffuser", "condition alg_hair".
std::map<QString, QStringList> namedBy()
{
    std::map<QString, QStringList> named;
    const auto note = [&](const QString& who, const QStringList& ids) {
        for (const QString& id : ids) {
            named[id] << who;
        }
    };
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        note(u"sheet "_s + sheet.key, sheets::exampleOf(sheet).cautions);
    }
    const facts::FactBook& book = facts::builtInFacts();
    for (int kind = 0; kind <= static_cast<int>(record::EntryKind::Note); ++kind) {
        note(u"entry %1"_s.arg(kind), facts::cautionsFor(book, static_cast<record::EntryKind>(kind), {}));
    }
    for (const care::WorkTemplate& work : care::builtInTemplates()) {
        note(u"task "_s + work.key, facts::cautionsFor(book, work));
    }
    for (const facts::Condition& condition : book.conditions) {
        note(u"condition "_s + condition.id, condition.cautions);
    }
    return named;
}

int topIn(const QWidget* widget, const QWidget& panel)
{
    return widget->mapTo(&panel, QPoint(0, 0)).y();
}

} // namespace

TEST(CautionReach, EveryCautionBelongsToAnAction)
{
    const std::map<QString, QStringList> named = namedBy();
    for (const facts::Caution& caution : facts::builtInFacts().cautions) {
        EXPECT_TRUE(named.contains(caution.id)) << caution.id.toStdString() << " is reached from no action";
        EXPECT_TRUE(caution.points.front().before) << caution.id.toStdString();
    }
    for (const auto& [id, who] : named) {
        EXPECT_NE(facts::builtInFacts().caution(id), nullptr)
            << id.toStdString() << " is named by " << who.join(u", "_s).toStdString();
    }
}

/// Dangers that the record's own words betray: what is written into the subject counts as well as the kind.
TEST(CautionReach, TheSubjectOfAnEntryCounts)
{
    const facts::FactBook& book = facts::builtInFacts();
    const auto ids = [&](record::EntryKind kind, const QString& subject) {
        return facts::cautionsFor(book, kind, subject);
    };
    EXPECT_TRUE(ids(record::EntryKind::Dose, u"hydrogen peroxide 3 %"_s).contains(u"C-H2O2"_s));
    EXPECT_TRUE(ids(record::EntryKind::Dose, u"Glutaraldehyde"_s).contains(u"C-GLUT"_s));
    EXPECT_TRUE(ids(record::EntryKind::Dose, u"medicine against worms"_s).contains(u"C-MED"_s));
    EXPECT_TRUE(ids(record::EntryKind::Upkeep, u"bleach dip of the stems"_s).contains(u"C-BLEACH"_s));
    EXPECT_TRUE(ids(record::EntryKind::Upkeep, u"diffuser"_s).contains(u"C-BLEACH"_s)) << "by the work it closes";
    EXPECT_TRUE(ids(record::EntryKind::Upkeep, u"trim-stems"_s).contains(u"C-RELEASE"_s));
    EXPECT_TRUE(ids(record::EntryKind::Upkeep, u"old soil stirred"_s).contains(u"C-H2S"_s));
    EXPECT_TRUE(ids(record::EntryKind::Upkeep, u"cyanobacteria siphoned"_s).contains(u"C-CYANO"_s));
    EXPECT_FALSE(ids(record::EntryKind::Dose, u"iron"_s).contains(u"C-H2O2"_s));
    EXPECT_TRUE(ids(record::EntryKind::Observation, u"bleach smell"_s).isEmpty()) << "looking is no work";
}

class CautionSurface : public FrameTest
{
};

TEST_F(CautionSurface, TheSheetSaysItAboveItsButtons)
{
    const record::TankId tank = addTank(u"Mill Race"_s, 60);
    BenchPage page(m_keeper, m_theme, m_ask);
    page.setSelected(tank);
    page.resize(1392, 920);
    page.show();
    int shown = 0;
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        const QString line = sheet.key + u' ' + sheet.example;
        const auto request = sheets::parseLine(line);
        ASSERT_TRUE(request) << line.toStdString();
        QMap<QString, QString> typed;
        for (auto it = request->values.cbegin(); it != request->values.cend(); ++it) {
            typed.insert(it.key(), it->text);
        }
        page.open(request->sheet->key, typed);
        QCoreApplication::processEvents();
        const QStringList ids = page.sheet()->answer() ? page.sheet()->answer()->cautions : QStringList();
        const auto* box = page.front()->findChild<CautionBox*>();
        ASSERT_NE(box, nullptr);
        EXPECT_EQ(box->isVisible(), !ids.isEmpty()) << line.toStdString();
        for (const wording::CautionText& caution : wording::cautionsBefore(facts::builtInFacts(), ids)) {
            ++shown;
            for (const QString& point : caution.points) {
                EXPECT_TRUE(box->text().contains(point)) << line.toStdString() << ": " << point.toStdString();
            }
        }
        for (const QPushButton* button : page.front()->actionButtons()) {
            EXPECT_LT(topIn(box, *page.front()), topIn(button, *page.front())) << line.toStdString();
        }
    }
    EXPECT_GE(shown, 30);
}

TEST_F(CautionSurface, TheFormOfAnEntrySaysItAboveSave)
{
    const record::TankId tank = addTank(u"Mill Race"_s, 60);
    for (int kind = 0; kind <= static_cast<int>(record::EntryKind::Note); ++kind) {
        const auto which = static_cast<record::EntryKind>(kind);
        EntryEditor editor(m_keeper, m_theme);
        editor.resize(380, 900);
        editor.begin(tank, which);
        static_cast<QWidget&>(editor).show(); // the form has a show() of its own
        QCoreApplication::processEvents();
        const auto* box = editor.findChild<CautionBox*>();
        ASSERT_NE(box, nullptr);
        const QStringList ids = facts::cautionsFor(facts::builtInFacts(), which, {});
        EXPECT_EQ(box->cautions(), ids) << kind;
        EXPECT_EQ(box->isVisible(), !ids.isEmpty()) << kind;
        for (const wording::CautionText& caution : wording::cautionsBefore(facts::builtInFacts(), ids)) {
            EXPECT_TRUE(editor.caution().contains(caution.points.front())) << kind;
        }
        for (const QPushButton* button : editor.findChildren<QPushButton*>()) {
            if (button->text() == u"Save"_s && !ids.isEmpty()) {
                EXPECT_LT(topIn(box, editor) + box->height(), topIn(button, editor)) << kind;
                EXPECT_GE(topIn(box, editor), 0) << kind << ": in sight without scrolling";
            }
        }
    }
}

TEST_F(CautionSurface, DueWorkSaysItBeforeItIsTicked)
{
    (void)addTank(u"Mill Race"_s, 60);
    WorkPanel panel(m_theme, m_keeper);
    panel.resize(340, 700);
    panel.show();
    WhyStrip strip(m_theme, m_keeper.clock(), [](const QString&) { return QDate(); });
    strip.resize(1300, 90);
    strip.show();
    int told = 0;
    for (int row = 0; row < panel.model().rowCount(); ++row) {
        const QModelIndex index = panel.model().index(row);
        const care::DueItem* item = panel.model().item(index);
        const QStringList ids = item == nullptr ? QStringList() : facts::cautionsFor(facts::builtInFacts(), *item);
        if (ids.isEmpty()) {
            continue;
        }
        panel.list()->setCurrentIndex(index);
        QCoreApplication::processEvents();
        facade::LaneChip chip;
        chip.item = *item;
        strip.showWork(u"Mill Race"_s, chip);
        for (const wording::CautionText& caution : wording::cautionsBefore(facts::builtInFacts(), ids)) {
            ++told;
            EXPECT_TRUE(panel.caution()->text().contains(caution.points.front())) << caution.id.toStdString();
            EXPECT_TRUE(strip.text().contains(caution.points.front())) << caution.id.toStdString();
        }
        EXPECT_TRUE(panel.caution()->isVisible());
        EXPECT_LT(topIn(panel.caution(), panel), topIn(panel.list(), panel));
    }
    EXPECT_GE(told, 5) << "a tank of 60 days has work with cautions";
}

/// A finding's actions and the guide's articles of work; the findings card itself is tested with the History page.
TEST(CautionSurfaces, TheGuideHasEachWholeAboveWhatIsToBeDone)
{
    const auto sources = guideSources(record::Row{});
    for (const GuideShelf& shelf : factShelves(sources)) {
        if (shelf.key != u"task"_s && shelf.key != u"condition"_s) {
            continue;
        }
        for (const GuideTopic& topic : shelf.topics) {
            const auto article = shelf.article(topic.id);
            ASSERT_TRUE(article) << topic.id.toStdString();
            bool doing = false;
            for (const GuideBlock& block : article->blocks) {
                doing = doing || block.kind == GuideBlock::Kind::Steps;
                EXPECT_FALSE(doing && block.kind == GuideBlock::Kind::Caution) << topic.id.toStdString();
            }
        }
    }
}

} // namespace littoral::ui::test
