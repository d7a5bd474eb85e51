// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "ui/models/bench_list.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/bench/sheet_field.h"
#include "ui/pages/bench/sheet_list.h"
#include "ui/widgets/card_table.h"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

/// Figures that make sense together for every sheet's required blanks.
QString figureFor(const QString& sheet, const sheets::Input& input)
{
    static const QMap<QString, QString> special{
        {u"target.now"_s, u"33"_s},       {u"target.target"_s, u"20"_s},    {u"changes.shares"_s, u"50/20/30"_s},
        {u"raise.now"_s, u"3"_s},         {u"raise.target"_s, u"6"_s},      {u"cylinder.earlier"_s, u"4000"_s},
        {u"cylinder.later"_s, u"3800"_s}, {u"cylinder.empty"_s, u"3100"_s}, {u"cylinder.days"_s, u"20"_s},
        {u"dip.percent"_s, u"5"_s},       {u"topup.lost"_s, u"1"_s},        {u"heater.room"_s, u"16"_s},
        {u"heater.tank"_s, u"24"_s},
    };
    if (const auto found = special.constFind(sheet + u'.' + input.key); found != special.constEnd()) {
        return *found;
    }
    if (input.key.contains(u"ph"_s)) {
        return u"7"_s;
    }
    if (input.key == u"now"_s) {
        return u"3"_s;
    }
    if (input.kind == sheets::InputKind::Series) {
        return u"20/20"_s;
    }
    // Hard water is harder than the soft it is blended with, and the wanted one lies between.
    if (input.key.startsWith(u's') && input.key != u"share"_s) {
        return QString::number(std::max(input.lowest, 1.0));
    }
    const double middle =
        std::clamp(input.key == u"target"_s || input.key.startsWith(u'w') ? 5.0 : 10.0, input.lowest, input.highest);
    return QString::number(middle);
}

/// Answers only where the PDF goes.
class PdfAsk final : public Ask
{
public:
    QString storeToOpen(QWidget*, const QString&) override { return {}; }
    QString storeToMake(QWidget*, const QString&) override { return {}; }
    QStringList csvFiles(QWidget*) override { return {}; }
    QString exportFolder(QWidget*) override { return {}; }
    QString backupFile(QWidget*, const QString&) override { return {}; }
    QString photo(QWidget*) override { return {}; }
    QString fileToWrite(QWidget*, const QString&, const QString&, const QString&) override { return pdf; }

    QString pdf;
};

} // namespace

class BenchPageTest : public FrameTest
{
protected:
    void openPage(QSize size = {1392, 920})
    {
        if (m_keeper.row().tanks.empty()) {
            m_tank = addTank(u"Mill Race"_s, 60);
        }
        m_page = std::make_unique<BenchPage>(m_keeper, m_theme, m_ask);
        m_page->setSelected(m_tank);
        m_page->resize(size);
        m_page->show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
        m_page->begin();
    }
    [[nodiscard]] QWidget* keyboard() const { return QApplication::focusWidget(); }
    void type(const QString& text)
    {
        for (const QChar letter : text) {
            QTest::keyClick(keyboard(), letter.toLatin1());
        }
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(keyboard(), key, modifiers);
    }
    /// Tabs on until the keyboard is in the blank.
    bool tabTo(const SheetField* field)
    {
        for (int i = 0; i < 60; ++i) {
            if (keyboard() == field->editor()) {
                return true;
            }
            press(Qt::Key_Tab);
        }
        return false;
    }
    [[nodiscard]] const record::LayoutRecord& layout() const
    {
        return *m_keeper.row().currentLayout(m_tank, m_clock.now());
    }

    record::TankId m_tank;
    std::unique_ptr<BenchPage> m_page;
};

TEST_F(BenchPageTest, EverySheetIsOpenedAndFilledByKeysAloneAndShowsAResult)
{
    openPage();
    press(Qt::Key_Home);
    EXPECT_EQ(m_page->list()->current(), QString::fromUtf16(kRowPlanKey));
    QStringList seen;
    while (true) {
        press(Qt::Key_Down);
        const QString key = m_page->list()->current();
        if (seen.contains(key)) {
            break; // the end of the list
        }
        seen << key;
        SCOPED_TRACE(key.toStdString());
        ASSERT_NE(sheets::findSheet(key), nullptr);
        const sheets::Sheet& sheet = *sheets::findSheet(key);
        EXPECT_EQ(m_page->inFront(), key);
        press(Qt::Key_Return);
        const std::vector<BenchBlank> blanks = m_page->sheet()->blanks();
        for (const BenchBlank& blank : blanks) {
            if (!blank.missing) {
                continue;
            }
            SheetField* field = m_page->front()->field(blank.input->key);
            ASSERT_NE(field, nullptr);
            ASSERT_TRUE(tabTo(field)) << blank.input->key.toStdString();
            type(figureFor(sheet.key, *blank.input));
        }
        EXPECT_FALSE(m_page->front()->resultText().isEmpty())
            << m_page->front()->problemText().toStdString() << ' ' << m_page->front()->title().toStdString();
        EXPECT_TRUE(m_page->sheet()->answer().has_value());
        press(Qt::Key_Escape);
        EXPECT_EQ(keyboard(), m_page->list());
    }
    EXPECT_EQ(seen.size(), static_cast<qsizetype>(sheets::sheets().size()));
}

TEST_F(BenchPageTest, EveryBlankHasANameForTheEar)
{
    openPage();
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        m_page->open(sheet.key);
        for (const sheets::Input& input : sheet.inputs) {
            const SheetField* field = m_page->front()->field(input.key);
            ASSERT_NE(field, nullptr);
            EXPECT_TRUE(field->editor()->accessibleName().startsWith(input.label)) << input.key.toStdString();
            if (!input.unit.isEmpty() && field->line() != nullptr) {
                EXPECT_TRUE(field->editor()->accessibleName().contains(input.unit)) << input.key.toStdString();
            }
        }
    }
}

TEST_F(BenchPageTest, FilledValuesSayTheirReadingAndTypedOnesHaveAWayBack)
{
    m_tank = addTank(u"Mill Race"_s, 60);
    read(m_tank, u"no3"_s, u"33"_s, 1);
    openPage();
    m_page->open(u"target"_s);
    SheetField* now = m_page->front()->field(u"now"_s);
    EXPECT_TRUE(now->origin().contains(u"24 Nov"_s)) << now->origin().toStdString();
    EXPECT_EQ(now->line()->text().toDouble(), 33.0);
    now->line()->setFocus();
    now->line()->selectAll();
    type(u"40"_s);
    EXPECT_EQ(now->origin(), u"typed"_s);
    EXPECT_TRUE(now->back()->isVisible());
    QTest::mouseClick(now->back(), Qt::LeftButton);
    EXPECT_EQ(now->line()->text().toDouble(), 33.0);
    EXPECT_TRUE(now->origin().contains(u"24 Nov"_s));
    EXPECT_FALSE(now->back()->isVisible());
}

TEST_F(BenchPageTest, WrongInputIsToldAtTheFieldAndNothingIsLost)
{
    openPage();
    m_page->open(u"co2"_s);
    type(u"6,6"_s);
    EXPECT_TRUE(m_page->front()->field(u"ph"_s)->problem().isEmpty());
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"6.6.6"_s);
    SheetField* ph = m_page->front()->field(u"ph"_s);
    EXPECT_FALSE(ph->problem().isEmpty());
    EXPECT_FALSE(m_page->front()->problemText().isEmpty());
    press(Qt::Key_Escape);
    m_page->open(u"dip"_s);
    m_page->open(u"co2"_s);
    EXPECT_EQ(m_page->front()->field(u"ph"_s)->line()->text(), u"6.6.6"_s);
    EXPECT_FALSE(m_page->front()->field(u"ph"_s)->problem().isEmpty());
}

TEST_F(BenchPageTest, WritesToTheRecordAndUndoes)
{
    openPage();
    QSignalSpy told(m_page.get(), &BenchPage::told);
    m_page->open(u"change"_s, {{u"now"_s, u"33"_s}, {u"share"_s, u"40"_s}});
    ASSERT_TRUE(m_page->sheet()->answer().has_value()) << m_page->sheet()->problem().toStdString();
    const std::size_t before = layout().entries.size();
    m_page->begin();
    press(Qt::Key_W);
    ASSERT_EQ(layout().entries.size(), before + 1);
    const record::Entry& entry = layout().entries.back();
    EXPECT_EQ(entry.kind, record::EntryKind::WaterChange);
    EXPECT_NEAR(entry.fraction.value_or(0), 0.4, 1e-9);
    EXPECT_FALSE(entry.planned);
    EXPECT_EQ(entry.at, m_clock.now());
    EXPECT_TRUE(entry.note.contains(u"33"_s)); // the working goes along
    EXPECT_EQ(told.count(), 1);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(layout().entries.size(), before);
    EXPECT_EQ(m_page->front()->field(u"share"_s)->line()->text(), u"40"_s); // the sheet stays as it was
}

TEST_F(BenchPageTest, MakesTwoPlannedChangesOfALargeOneAndUndoesBothAtOnce)
{
    openPage();
    m_page->open(u"target"_s, {{u"now"_s, u"33"_s}, {u"target"_s, u"20"_s}, {u"source"_s, u"8"_s}});
    m_page->begin();
    press(Qt::Key_M);
    std::vector<record::Entry> planned;
    for (const record::Entry& entry : layout().entries) {
        if (entry.planned) {
            planned.push_back(entry);
        }
    }
    ASSERT_EQ(planned.size(), 2U);
    EXPECT_NEAR((1 - *planned[0].fraction) * (1 - *planned[1].fraction), 0.48, 1e-3);
    EXPECT_EQ(planned[0].at.localDate(), m_clock.today());
    EXPECT_EQ(planned[1].at.localDate(), m_clock.today().addDays(3));
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_TRUE(std::ranges::none_of(layout().entries, &record::Entry::planned));
}

TEST_F(BenchPageTest, AResultBecomesAReading)
{
    openPage();
    m_page->open(u"co2"_s, {{u"ph"_s, u"6.6"_s}, {u"kh"_s, u"4"_s}});
    ASSERT_FALSE(m_page->front()->actionButtons().empty());
    const std::size_t before = readingCount();
    m_page->front()->actionButtons().front()->click();
    ASSERT_EQ(readingCount(), before + 1);
    EXPECT_EQ(layout().readings.back().parameter, u"co2"_s);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(readingCount(), before);
}

TEST_F(BenchPageTest, PinnedSheetsKeepTheirOwnFiguresAndComeBack)
{
    openPage();
    m_page->open(u"co2"_s, {{u"ph"_s, u"6.6"_s}, {u"kh"_s, u"4"_s}});
    const QString result = m_page->front()->resultText();
    m_page->begin();
    press(Qt::Key_P);
    ASSERT_EQ(m_page->pinned().size(), 2); // the row's plan lay there already
    auto* pinned = qobject_cast<SheetCard*>(m_page->pinned().back());
    ASSERT_NE(pinned, nullptr);
    EXPECT_EQ(pinned->resultText(), result);
    m_page->open(u"co2"_s, {{u"ph"_s, u"7.0"_s}});
    EXPECT_NE(m_page->front()->resultText(), result);
    EXPECT_EQ(pinned->resultText(), result);
    m_page->settle();
    m_page.reset();
    openPage();
    EXPECT_EQ(m_page->inFront(), u"co2"_s);
    EXPECT_EQ(m_page->front()->field(u"ph"_s)->line()->text(), u"7.0"_s);
    ASSERT_EQ(m_page->pinned().size(), 2);
    EXPECT_EQ(qobject_cast<SheetCard*>(m_page->pinned().back())->resultText(), result);
    QTest::mouseClick(m_page->pinned().back()->pinButton(), Qt::LeftButton);
    EXPECT_EQ(m_page->pinned().size(), 1);
}

TEST_F(BenchPageTest, CautionsStandAboveTheActions)
{
    openPage();
    m_page->open(u"dip"_s, {{u"percent"_s, u"5"_s}});
    EXPECT_TRUE(m_page->front()->cautionText().contains(u"acid"_s));
    const auto* box = m_page->front()->findChild<CautionBox*>();
    ASSERT_NE(box, nullptr);
    ASSERT_TRUE(box->isVisible());
    ASSERT_FALSE(m_page->front()->actionButtons().empty());
    QTest::qWait(20); // the layout settles
    const auto topOf = [&](const QWidget* widget) { return widget->mapTo(m_page->front(), QPoint(0, 0)).y(); };
    EXPECT_LT(topOf(box) + box->height(), topOf(m_page->front()->actionButtons().front()) + 1);
}

TEST_F(BenchPageTest, TheRowsPlanTakesTheConditionerOfTheLabel)
{
    openPage();
    m_page->open(u"two-weeks"_s);
    ASSERT_TRUE(m_page->rowPlan()->isVisible());
    EXPECT_FALSE(m_page->rowPlan()->table()->rows().empty());
    type(u"5"_s);
    EXPECT_EQ(m_page->memory().conditioner_mL_per_100L, 5.0);
    EXPECT_TRUE(m_page->rowPlan()->totals().contains(u"mL"_s)) << m_page->rowPlan()->totals().toStdString();
    type(u"x"_s);
    EXPECT_FALSE(m_page->rowPlan()->problem().isEmpty());
    EXPECT_EQ(m_page->memory().conditioner_mL_per_100L, 5.0);
}

TEST_F(BenchPageTest, TheFilterFindsAndEnterOpens)
{
    openPage();
    press(Qt::Key_F, Qt::ControlModifier);
    ASSERT_EQ(keyboard(), m_page->filterField());
    type(u"disinf"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(m_page->inFront(), u"dip"_s);
    EXPECT_TRUE(m_page->front()->isAncestorOf(keyboard()));
}

TEST_F(BenchPageTest, PrintsWhatIsShown)
{
    PdfAsk ask;
    m_tank = addTank(u"Mill Race"_s, 60);
    ask.pdf = path(u"sheets.pdf"_s);
    BenchPage page(m_keeper, m_theme, ask);
    page.setSelected(m_tank);
    page.open(u"co2"_s, {{u"ph"_s, u"6.6"_s}, {u"kh"_s, u"4"_s}});
    QSignalSpy told(&page, &BenchPage::told);
    page.print();
    EXPECT_EQ(told.count(), 1);
    QFile file(ask.pdf);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_TRUE(bytes.startsWith("%PDF-"));
    EXPECT_GE(bytes.count("/Type /Page\n"), 2); // the sheet in front, then the row's plan
    QSignalSpy failed(&page, &BenchPage::failed);
    ask.pdf = path(u"no such folder/sheets.pdf"_s);
    page.print();
    EXPECT_EQ(failed.count(), 1);
}

TEST_F(BenchPageTest, ReadOnlyStoresAreReckonedOnButNotWrittenTo)
{
    m_tank = addTank(u"Mill Race"_s, 60);
    const QString store = m_keeper.path();
    m_keeper.close();
    ASSERT_TRUE(m_keeper.open(store, store::Access::ReadOnly));
    openPage();
    m_page->open(u"change"_s, {{u"now"_s, u"33"_s}, {u"share"_s, u"40"_s}});
    EXPECT_FALSE(m_page->front()->resultText().isEmpty());
    EXPECT_TRUE(m_page->front()->actionButtons().empty());
    EXPECT_FALSE(m_page->front()->taskButton()->isVisible());
}

TEST_F(BenchPageTest, NothingIsCutAtTwiceTheTextSize)
{
    m_theme.setTextScale(2.0);
    openPage({1184, 900});
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        m_page->open(sheet.key);
        QTest::qWait(1);
        for (const sheets::Input& input : sheet.inputs) {
            const SheetField* field = m_page->front()->field(input.key);
            if (field->isVisible() && field->line() != nullptr) {
                EXPECT_GE(field->line()->height(), QFontMetrics(field->line()->font()).height())
                    << input.key.toStdString();
                EXPECT_LE(field->geometry().right(), m_page->front()->width()) << input.key.toStdString();
            }
        }
    }
}

} // namespace littoral::ui::test
