// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/models/trend_words.h"
#include "ui/pages/trends/trends_page.h"
#include "ui/pages/trends/trends_side.h"
#include "ui/widgets/table_twin.h"
#include "ui/widgets/trends/figure_table.h"
#include "ui/widgets/trends/tick_list.h"
#include "ui/widgets/trends/trend_brush.h"
#include "ui/widgets/trends/trend_view.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QFile>
#include <QImage>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

#include <algorithm>

namespace littoral::ui {
namespace {

using namespace Qt::StringLiterals;

/// Answers with a file of the test's own folder.
class TrendAsk final : public Ask
{
public:
    QString storeToOpen(QWidget*, const QString&) override { return {}; }
    QString storeToMake(QWidget*, const QString&) override { return {}; }
    QStringList csvFiles(QWidget*) override { return {}; }
    QString exportFolder(QWidget*) override { return {}; }
    QString backupFile(QWidget*, const QString&) override { return {}; }
    QString photo(QWidget*) override { return {}; }
    QString fileToWrite(QWidget*, const QString&, const QString&, const QString& suffix) override
    {
        return folder.isEmpty() ? QString() : folder + u"/trend."_s + suffix;
    }

    QString folder;
};

class TrendsPageTest : public test::FrameTest
{
protected:
    void SetUp() override
    {
        addKits();
        m_slate = addTank(u"Slate Ford"_s, 16);
        m_alder = addTank(u"Alder Shelf"_s, 12);
        m_mill = addTank(u"Mill Race"_s, 400);
        for (int daysAgo = 15; daysAgo >= 1; daysAgo -= 2) {
            read(m_slate, u"no2"_s, QString::number(0.1 * (16 - daysAgo), 'f', 1), daysAgo);
            read(m_slate, u"tan"_s, QString::number(0.2 * daysAgo, 'f', 1), daysAgo);
        }
        for (const int daysAgo : {10, 7, 4, 1}) {
            read(m_alder, u"no2"_s, u"0.2"_s, daysAgo);
        }
        read(m_mill, u"no3"_s, u"20"_s, 3);
        m_axis.setNow(m_clock.now().utcMs());
        m_axis.setZone(QTimeZone::utc());
        m_axis.showAround(28, 21);
        m_page = std::make_unique<TrendsPage>(m_keeper, m_forecasts, m_theme, m_ask2, m_axis);
        m_page->resize(1392, 900);
        m_page->setSelected(m_slate);
        m_page->show();
        m_page->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
        m_page->begin();
    }
    TrendView& view() { return *&m_page->view(); }
    [[nodiscard]] std::vector<QString> names() const
    {
        std::vector<QString> made;
        for (const facade::TrendTank& tank : m_page->view().model().tanks) {
            made.push_back(tank.name);
        }
        return made;
    }
    void figures() { QTest::qWait(80); }

    record::TankId m_slate, m_alder, m_mill;
    TimeAxis m_axis;
    TrendAsk m_ask2;
    std::unique_ptr<TrendsPage> m_page;
};

TEST_F(TrendsPageTest, OpensOnTheSelectedTankAndTheOneNearestInAge)
{
    EXPECT_EQ(names(), (std::vector{u"Slate Ford"_s, u"Alder Shelf"_s}));
    QStringList keys;
    for (const auto& parameter : view().model().parameters) {
        keys << parameter.key;
    }
    EXPECT_EQ(keys, (QStringList{u"tan"_s, u"no2"_s})) << "what has readings";
    EXPECT_TRUE(view().hasFocus());
}

TEST_F(TrendsPageTest, ArrowsMoveTheCrosshairByADayAndTheReadoutFollows)
{
    const qint64 now = view().cursor();
    QTest::keyClick(&view(), Qt::Key_Left);
    EXPECT_EQ(view().cursor(), now - kDayMs);
    QTest::keyClick(&view(), Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(view().cursor(), now - 8 * kDayMs);
    const auto& rows = m_page->side().readout().rows();
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[1].title, u"NO₂"_s);
    // 16 - 8 days ago falls between the readings of 9 and 7 days ago: the older within reach, else with its age.
    EXPECT_EQ(rows[1].cells[0].value, u"0.7"_s);
    EXPECT_EQ(rows[1].cells[0].notes, QStringList{u"1 d old"_s});
}

TEST_F(TrendsPageTest, StopAndCommaGoFromReadingToReading)
{
    QTest::keyClick(&view(), Qt::Key_Comma);
    const auto& points = view().model().find(0, 0)->points;
    EXPECT_EQ(view().cursor(), points.back().at);
    QTest::keyClick(&view(), Qt::Key_Comma);
    EXPECT_EQ(view().cursor(), points[points.size() - 2].at);
    QTest::keyClick(&view(), Qt::Key_Period);
    EXPECT_EQ(view().cursor(), points.back().at);
    QTest::keyClick(&view(), Qt::Key_Period);
    EXPECT_EQ(view().cursor(), points.back().at) << "there is none after the last";
    QTest::keyClick(&view(), Qt::Key_Home);
    EXPECT_EQ(view().cursor(), points.front().at);
    EXPECT_LE(m_axis.from(), view().cursor()) << "brought into view";
}

TEST_F(TrendsPageTest, BracketsSetTheStretchOfTheStatistics)
{
    QTest::keyClick(&view(), Qt::Key_Down);
    EXPECT_EQ(view().currentParameter(), 1u);
    figures();
    EXPECT_EQ(m_page->side().statistics().rows().front().cells[0].value, u"8"_s);
    const auto& points = view().model().find(1, 0)->points;
    view().setCursor(points[2].at);
    QTest::keyClick(&view(), Qt::Key_BracketLeft);
    view().setCursor(points[5].at);
    QTest::keyClick(&view(), Qt::Key_BracketRight);
    EXPECT_TRUE(view().hasStretch());
    figures();
    EXPECT_EQ(m_page->side().statistics().rows().front().cells[0].value, u"4"_s);
    // 0.2 every 2 days: 0.7 a week, without scatter.
    const auto& rows = m_page->side().statistics().rows();
    const auto slope = std::ranges::find(rows, u"Slope, a week"_s, &FigureRow::title);
    ASSERT_NE(slope, rows.end());
    EXPECT_TRUE(slope->cells[0].value.startsWith(u"+0.7"_s)) << slope->cells[0].value.toStdString();
    QTest::keyClick(&view(), Qt::Key_Backspace);
    EXPECT_FALSE(view().hasStretch());
}

TEST_F(TrendsPageTest, EscapeStepsBackOneLevelAtATime)
{
    view().setCursor(m_axis.now());
    QTest::keyClick(&view(), Qt::Key_BracketLeft);
    QTest::keyClick(&view(), Qt::Key_Escape);
    EXPECT_FALSE(view().hasStretch());
    EXPECT_TRUE(view().hasCursor());
    QTest::keyClick(&view(), Qt::Key_Escape);
    EXPECT_FALSE(view().hasCursor());
}

TEST_F(TrendsPageTest, TheTableTwinHasEveryValueOfTheCharts)
{
    QTest::keyClick(&view(), Qt::Key_T);
    ASSERT_TRUE(m_page->isTable());
    EXPECT_TRUE(m_page->twin().hasFocus());
    const PlainTable& table = m_page->twin().table();
    ASSERT_EQ(table.header.size(), static_cast<qsizetype>(view().model().series.size()) + 1);
    std::size_t cells = 0;
    for (const QStringList& row : table.rows) {
        for (qsizetype i = 1; i < row.size(); ++i) {
            cells += row[i].isEmpty() ? 0 : 1;
        }
    }
    EXPECT_EQ(cells, view().model().pointCount()) << "one reading a day and series here";
    QTest::keyClick(&m_page->twin(), Qt::Key_T);
    EXPECT_FALSE(m_page->isTable());
    EXPECT_TRUE(view().hasFocus());
}

TEST_F(TrendsPageTest, AtEqualAgeItSaysOnHowFewTanksItRests)
{
    QTest::keyClick(&view(), Qt::Key_Down);
    figures();
    EXPECT_TRUE(m_page->side().comparison().contains(u"equal age"_s));
    view().setCursor(m_clock.now().plusDays(-4).utcMs());
    QTest::keyClick(&view(), Qt::Key_A);
    EXPECT_EQ(m_axis.mode(), AxisMode::Age);
    EXPECT_EQ(view().cursor(), 12 * kDayMs) << "the crosshair stays on its instant in the selected tank";
    figures();
    const QString text = m_page->side().comparison();
    EXPECT_TRUE(text.contains(u"This rests on 2 tanks: too few"_s)) << text.toStdString();
    EXPECT_TRUE(text.contains(u"Alder Shelf: highest 0.2"_s)) << text.toStdString();
}

TEST_F(TrendsPageTest, TickingATankPutsItOnShow)
{
    TickList& list = m_page->tanks();
    list.setFocus();
    for (int row = 0; row < list.model()->rowCount(); ++row) {
        if (list.model()->index(row, 0).data().toString() == u"Mill Race"_s) {
            list.setCurrentIndex(list.model()->index(row, 0));
        }
    }
    QTest::keyClick(&list, Qt::Key_Space);
    EXPECT_EQ(names(), (std::vector{u"Slate Ford"_s, u"Alder Shelf"_s, u"Mill Race"_s}));
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualRect(list.currentIndex()).center());
    EXPECT_EQ(names().size(), 2u);
}

TEST_F(TrendsPageTest, ParametersAreReorderedByKeys)
{
    TickList& list = m_page->parameters();
    list.setFocus();
    for (int row = 0; row < list.model()->rowCount(); ++row) {
        if (list.model()->index(row, 0).data().toString() == u"Nitrite"_s) {
            list.setCurrentIndex(list.model()->index(row, 0));
        }
    }
    QTest::keyClick(&list, Qt::Key_Up, Qt::ControlModifier);
    QTest::keyClick(&list, Qt::Key_Up, Qt::ControlModifier);
    EXPECT_EQ(view().model().parameters.front().key, u"no2"_s);
    EXPECT_EQ(list.currentKey(), u"no2"_s);
}

TEST_F(TrendsPageTest, ExportsAPictureADrawingAndTheValues)
{
    m_ask2.folder = m_folder.path();
    QSignalSpy told(m_page.get(), &TrendsPage::told);
    m_page->exportTo(TrendFile::Png);
    m_page->exportTo(TrendFile::Svg);
    m_page->exportTo(TrendFile::Csv);
    EXPECT_EQ(told.count(), 3);
    const QImage picture(path(u"trend.png"_s));
    EXPECT_GE(picture.width(), 2 * 640);
    QFile drawing(path(u"trend.svg"_s));
    ASSERT_TRUE(drawing.open(QIODevice::ReadOnly));
    const QByteArray svg = drawing.readAll();
    EXPECT_TRUE(svg.contains("<svg"));
    EXPECT_TRUE(svg.contains("<text")) << "text stays text";
    QFile values(path(u"trend.csv"_s));
    ASSERT_TRUE(values.open(QIODevice::ReadOnly));
    const auto lines = values.readAll().split('\n');
    EXPECT_EQ(static_cast<std::size_t>(lines.size()), view().model().pointCount() + 2) << "header, readings, last end";
}

TEST_F(TrendsPageTest, AFileThatCannotBeWrittenIsTold)
{
    m_ask2.folder = path(u"no such folder"_s);
    QSignalSpy failed(m_page.get(), &TrendsPage::failed);
    m_page->exportTo(TrendFile::Csv);
    ASSERT_EQ(failed.count(), 1);
    EXPECT_FALSE(QFile::exists(m_ask2.folder + u"/trend.csv"_s));
}

TEST_F(TrendsPageTest, ExportOpensByKeyWithThreeChoices)
{
    QTest::keyClick(&view(), Qt::Key_X);
    QMenu* menu = m_page->bar().exportMenu();
    ASSERT_TRUE(menu->isVisible());
    EXPECT_EQ(menu->actions().size(), 3);
    menu->close();
}

TEST_F(TrendsPageTest, AnEmptyPageSaysWhatWillBeHereAndHowItFills)
{
    m_page->choose({layoutOf(m_mill)}, {u"gh"_s});
    EXPECT_TRUE(m_page->message().contains(u"none of these parameters"_s));
    EXPECT_EQ(view().partCount(), 1) << "the axes stay";
    QSignalSpy rounds(m_page.get(), &TrendsPage::roundsWanted);
    for (QAbstractButton* button : m_page->findChildren<QAbstractButton*>()) {
        if (button->text() == u"Type readings"_s) {
            EXPECT_TRUE(button->isVisible());
            button->click();
        }
    }
    EXPECT_EQ(rounds.count(), 1);
    m_page->choose({}, {u"gh"_s});
    EXPECT_TRUE(m_page->message().contains(u"Tick a tank"_s));
    m_page->choose({layoutOf(m_mill)}, {});
    EXPECT_TRUE(m_page->message().contains(u"Tick a parameter"_s));
    EXPECT_EQ(view().partCount(), 0);
    m_page->choose({layoutOf(m_slate)}, {u"no2"_s});
    EXPECT_TRUE(m_page->message().isEmpty());
}

TEST_F(TrendsPageTest, TooLittleDataSaysHowMuchIsNeeded)
{
    m_page->choose({layoutOf(m_mill)}, {u"no3"_s});
    figures();
    const auto& rows = m_page->side().statistics().rows();
    const auto slope = std::ranges::find(rows, u"Slope, a week"_s, &FigureRow::title);
    ASSERT_NE(slope, rows.end());
    EXPECT_EQ(slope->cells[0].notes, QStringList{u"needs 3"_s});
}

TEST_F(TrendsPageTest, ReadOnlyStoresCanBeLookedAtAndExported)
{
    const QString store = m_keeper.path();
    m_keeper.close();
    ASSERT_TRUE(m_keeper.open(store, store::Access::ReadOnly));
    QCoreApplication::processEvents();
    EXPECT_GT(view().model().pointCount(), 0u);
    m_page->choose({layoutOf(m_mill)}, {u"gh"_s});
    for (QAbstractButton* button : m_page->findChildren<QAbstractButton*>()) {
        EXPECT_FALSE(button->text() == u"Type readings"_s && button->isVisible());
    }
}

TEST_F(TrendsPageTest, ANewReadingAppearsAtOnce)
{
    const std::size_t before = view().model().pointCount();
    read(m_slate, u"no2"_s, u"0.4"_s, 0);
    QCoreApplication::processEvents();
    EXPECT_EQ(view().model().pointCount(), before + 1);
}

TEST_F(TrendsPageTest, PanelsAreReadAloudAsSentences)
{
    auto* chart = QAccessible::queryAccessibleInterface(&view());
    ASSERT_NE(chart, nullptr);
    ASSERT_EQ(chart->childCount(), 2);
    view().setCursor(view().model().find(1, 0)->points.front().at);
    const QString sentence = chart->child(1)->text(QAccessible::Name);
    EXPECT_TRUE(sentence.startsWith(u"Nitrite, mg/L NO₂, "_s)) << sentence.toStdString();
    EXPECT_TRUE(sentence.contains(u"Slate Ford 0.1"_s)) << sentence.toStdString();
    auto* table = QAccessible::queryAccessibleInterface(&m_page->side().statistics());
    ASSERT_NE(table, nullptr);
    EXPECT_GT(table->childCount(), 5);
    EXPECT_FALSE(m_page->brush().accessibleDescription().isEmpty());
    for (QWidget* region : m_page->regions()) {
        EXPECT_NE(region, nullptr);
    }
}

TEST_F(TrendsPageTest, TheBrushMovesTheAxisByKeys)
{
    m_page->brush().setFocus();
    const qint64 from = m_axis.from();
    const qint64 span = m_axis.to() - from;
    QTest::keyClick(&m_page->brush(), Qt::Key_Left);
    EXPECT_EQ(m_axis.from(), from - span / 10);
    QTest::keyClick(&m_page->brush(), Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(m_axis.to() - m_axis.from(), span + span / 10);
}

TEST_F(TrendsPageTest, NothingIsCutOffAtTwiceTheTextSize)
{
    for (const double scale : {1.0, 2.0}) {
        m_theme.setTextScale(scale);
        for (const QSize size : {QSize(1392, 900), QSize(1184, 860), QSize(952, 606)}) {
            m_page->resize(size);
            QTest::qWait(60);
            for (const QWidget* child : m_page->findChildren<QWidget*>()) {
                const QWidget* parent = child->parentWidget();
                // What a scroll area holds may be longer than the area; it is never wider.
                const bool scrolled = parent->objectName() == u"qt_scrollarea_viewport"_s;
                if (!child->isVisible() || child->metaObject() == &QWidget::staticMetaObject ||
                    child->inherits("QScrollBar") || child->inherits("QHeaderView") || scrolled) {
                    continue;
                }
                EXPECT_TRUE(parent->rect().contains(child->geometry()))
                    << child->metaObject()->className() << ' ' << child->accessibleName().toStdString() << " at "
                    << size.width() << ", scale " << scale;
            }
        }
    }
}

TEST(TrendWords, DerivedFiguresHaveTwoSignificantPlaces)
{
    EXPECT_EQ(derivedNumber(0.03333, 2), u"0.033"_s);
    EXPECT_EQ(derivedNumber(1.5333, 2), u"1.5"_s);
    EXPECT_EQ(derivedNumber(23.7, 0), u"24"_s);
    EXPECT_EQ(derivedNumber(0.0, 2), u"0"_s);
    EXPECT_EQ(trendNumber(0.5, 2), u"0.5"_s);
    EXPECT_EQ(trendNumber(2.0, 2), u"2"_s);
}

} // namespace
} // namespace littoral::ui
