// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done with a worksheet by the keyboard: written down, planned, read as a table, explained.
#include "core/sheets/text_input.h"
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/frame/panels.h"
#include "ui/models/guide_sheets.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/bench/sheet_field.h"
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/guide/reading_pane.h"
#include "ui/widgets/table_twin.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

QMap<QString, QString> typedExample(const sheets::Sheet& sheet)
{
    QMap<QString, QString> typed;
    const auto request = sheets::parseLine(sheet.key + u' ' + sheet.example);
    EXPECT_TRUE(request) << sheet.key.toStdString();
    for (auto it = request->values.cbegin(); it != request->values.cend(); ++it) {
        typed.insert(it.key(), it->text);
    }
    return typed;
}

} // namespace

class BenchActions : public FrameTest
{
protected:
    void SetUp() override
    {
        m_tank = addTank(u"Mill Race"_s, 60);
        m_page = std::make_unique<BenchPage>(m_keeper, m_theme, m_ask);
        m_page->setSelected(m_tank);
        m_page->resize(1392, 920);
        m_page->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
        m_page->begin();
    }
    [[nodiscard]] const record::LayoutRecord& layout() const
    {
        return *m_keeper.row().currentLayout(m_tank, m_clock.now());
    }
    [[nodiscard]] std::size_t written() const { return layout().entries.size() + layout().readings.size(); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    }

    record::TankId m_tank;
    std::unique_ptr<BenchPage> m_page;
};

TEST_F(BenchActions, EverySheetCanBeWrittenOrPlanned)
{
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        m_page->open(sheet.key, typedExample(sheet));
        ASSERT_TRUE(m_page->sheet()->answer())
            << sheet.key.toStdString() << ": " << m_page->sheet()->problem().toStdString();
        const auto writes = m_page->sheet()->answer()->writes; // the page reckons anew when something is written
        EXPECT_FALSE(writes.empty()) << sheet.key.toStdString();
        m_page->begin();
        const std::size_t before = written();
        const bool writable = !m_page->front()->actionButtons().empty();
        press(Qt::Key_W);
        EXPECT_EQ(written(), before + (writable ? 1u : 0u)) << sheet.key.toStdString();
        const bool plannable = m_page->front()->taskButton()->isVisible();
        bool wanted = false;
        for (const sheets::Write& write : writes) {
            wanted = wanted || write.task || isPlannable(write);
        }
        EXPECT_EQ(plannable, wanted) << sheet.key.toStdString();
        EXPECT_TRUE(writable || plannable) << sheet.key.toStdString();
        if (plannable) {
            const std::size_t planned = written();
            press(Qt::Key_M);
            EXPECT_GT(written(), planned) << sheet.key.toStdString();
            EXPECT_TRUE(layout().entries.back().planned || layout().entries.front().planned) << sheet.key.toStdString();
        }
    }
}

TEST_F(BenchActions, WhatIsWrittenSaysWhatTheSheetShows)
{
    m_page->open(u"volume"_s, {{u"length"_s, u"60"_s}, {u"depth"_s, u"30"_s}, {u"height"_s, u"36"_s}});
    const QString net = m_page->sheet()->answer()->find(u"net"_s)->text;
    m_page->begin();
    press(Qt::Key_W);
    ASSERT_FALSE(layout().entries.empty());
    EXPECT_TRUE(layout().entries.back().note.contains(u"reckoned as "_s + net + u" L"_s))
        << layout().entries.back().note.toStdString();
    m_page->open(u"co2"_s, {{u"ph"_s, u"6.6"_s}, {u"kh"_s, u"4"_s}});
    const QString co2 = m_page->sheet()->answer()->find(u"co2"_s)->text;
    m_page->begin();
    press(Qt::Key_W);
    ASSERT_FALSE(layout().readings.empty());
    EXPECT_EQ(layout().readings.back().typed, co2) << "as many digits as the sheet shows";
}

/// Three sheets from the list to the record with the keyboard alone.
TEST_F(BenchActions, ThreeSheetsByKeysFromTheListToTheRecord)
{
    struct Script
    {
        QString sheet;
        QStringList blanks;
        record::EntryKind kind;
    };
    const QList<Script> scripts{{u"dose"_s, {u"10"_s}, record::EntryKind::Dose},
                                {u"topup"_s, {u"6"_s, u"0.4"_s}, record::EntryKind::TopUp},
                                {u"dip"_s, {u"5"_s}, record::EntryKind::Upkeep}};
    for (const Script& script : scripts) {
        press(Qt::Key_F, Qt::ControlModifier);
        m_page->filterField()->clear();
        QTest::keyClicks(QApplication::focusWidget(), sheets::findSheet(script.sheet)->title.section(u' ', 0, 1));
        press(Qt::Key_Return);
        ASSERT_EQ(m_page->inFront(), script.sheet);
        for (const QString& figure : script.blanks) {
            // Enter goes to the blank the sheet waits for; the water in the tank is known from the record.
            QTest::keyClicks(QApplication::focusWidget(), figure);
            press(Qt::Key_Return);
        }
        ASSERT_TRUE(m_page->sheet()->answer())
            << script.sheet.toStdString() << ": " << m_page->sheet()->problem().toStdString();
        press(Qt::Key_Escape);
        press(Qt::Key_W);
        ASSERT_FALSE(layout().entries.empty());
        EXPECT_EQ(layout().entries.back().kind, script.kind) << script.sheet.toStdString();
    }
}

TEST_F(BenchActions, TheBlankAtFaultIsMarkedAndEnterGoesThere)
{
    m_page->open(u"target"_s, {{u"now"_s, u"80"_s}, {u"target"_s, u"4"_s}, {u"source"_s, u"5"_s}});
    SheetField* target = m_page->front()->field(u"target"_s);
    ASSERT_FALSE(m_page->sheet()->answer());
    EXPECT_FALSE(target->problem().isEmpty());
    EXPECT_TRUE(target->editor()->property("fault").toBool());
    EXPECT_EQ(target->need(), SheetField::Need::Mending);
    EXPECT_FALSE(m_page->front()->field(u"now"_s)->editor()->property("fault").toBool());
    EXPECT_EQ(QApplication::focusWidget(), target->editor()) << "opened at the blank at fault";
    m_page->front()->field(u"now"_s)->editor()->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), target->editor());
    target->line()->selectAll();
    QTest::keyClicks(target->line(), u"20"_s);
    EXPECT_TRUE(m_page->sheet()->answer());
    EXPECT_FALSE(target->editor()->property("fault").toBool());
}

TEST_F(BenchActions, TheCurveIsATableAsWell)
{
    m_page->open(u"change"_s, {{u"now"_s, u"80"_s}, {u"share"_s, u"30"_s}});
    ASSERT_TRUE(m_page->front()->curve()->isVisible());
    m_page->begin();
    press(Qt::Key_T);
    TableTwin* twin = m_page->front()->twin();
    ASSERT_TRUE(twin->isVisible());
    EXPECT_FALSE(m_page->front()->curve()->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), twin);
    const PlainTable& table = twin->table();
    EXPECT_EQ(table.header.size(), 4);
    EXPECT_EQ(table.rows.size(), 41u);
    // Mass balance: 80 x (1 - share), no doubt but that of "80".
    ASSERT_GE(table.currentRow, 0);
    EXPECT_NEAR(table.rows[static_cast<std::size_t>(table.currentRow)][0].toDouble(), 30.0, 1.2);
    EXPECT_NEAR(table.rows.front()[1].toDouble(), 80.0, 0.5);
    EXPECT_NEAR(table.rows.back()[1].toDouble(), 8.0, 0.5);
    press(Qt::Key_T);
    EXPECT_FALSE(twin->isVisible());
    EXPECT_TRUE(m_page->front()->curve()->isVisible());
    m_page->open(u"co2"_s, {{u"ph"_s, u"6.6"_s}, {u"kh"_s, u"4"_s}});
    m_page->begin();
    press(Qt::Key_T);
    EXPECT_TRUE(m_page->front()->twin()->isVisible());
}

TEST_F(BenchActions, F1ExplainsTheSheetInTheGuide)
{
    MainWindow window(m_keeper, m_forecasts, m_theme, m_ask);
    window.resize(1600, 1000);
    window.show();
    window.showPage(MainWindow::Page::Bench);
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        window.showPage(MainWindow::Page::Bench);
        window.bench()->open(sheet.key, {});
        window.actions().action(u"guide.open"_s)->trigger();
        ASSERT_EQ(window.panels()->guide()->topic(), sheetTopic(sheet.key));
        const GuideArticle& article = window.panels()->guide()->pane()->article();
        EXPECT_EQ(article.title, sheet.title);
        EXPECT_EQ(article.source, sheet.source);
        EXPECT_TRUE(article.lead.contains(sheet.purpose));
        bool formula = false;
        std::size_t inputs = 0;
        qsizetype cautions = 0;
        for (const GuideBlock& block : article.blocks) {
            cautions += block.kind == GuideBlock::Kind::Caution ? 1 : 0;
            for (const GuideLine& line : block.lines) {
                formula = formula || line.note == sheets::exampleOf(sheet).formula;
                inputs += line.note.contains(u" to "_s) ? 1 : 0;
            }
        }
        EXPECT_TRUE(formula) << sheet.key.toStdString();
        EXPECT_GE(inputs, 1u) << sheet.key.toStdString();
        EXPECT_EQ(cautions, sheets::exampleOf(sheet).cautions.size()) << sheet.key.toStdString();
    }
}

} // namespace littoral::ui::test
