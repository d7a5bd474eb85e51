// SPDX-License-Identifier: GPL-3.0-or-later
// Reports on paper: pages, what is found again in them, and that nothing is cut.
#include "core/facade/ease_desk.h"
#include "tests/ui/frame_fixture.h"
#include "ui/frame/main_window.h"
#include "ui/frame/report_run.h"
#include "ui/pages/bench/bench_page.h"
#include "ui/pages/lanes/lane_feed.h"
#include "ui/pages/lanes/lanes_page.h"
#include "ui/pages/lanes/row_paper.h"
#include "ui/pages/rounds/round_paper.h"
#include "ui/pages/rounds/rounds_page.h"

#include <QAction>
#include <QFile>
#include <QPdfWriter>
#include <QProcess>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QStandardPaths>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

/// Answers with a file, and with a "printer" that prints into another one.
class PaperAsk final : public Ask
{
public:
    QString storeToOpen(QWidget*, const QString&) override { return {}; }
    QString storeToMake(QWidget*, const QString&) override { return {}; }
    QStringList csvFiles(QWidget*) override { return {}; }
    QString exportFolder(QWidget*) override { return {}; }
    QString backupFile(QWidget*, const QString&) override { return {}; }
    QString photo(QWidget*) override { return {}; }
    QString fileToWrite(QWidget*, const QString&, const QString& name, const QString&) override
    {
        proposed = name;
        return path;
    }
    std::unique_ptr<QPagedPaintDevice> printer(QWidget*, const QString&) override
    {
        if (spool.isEmpty()) {
            return nullptr;
        }
        auto writer = std::make_unique<QPdfWriter>(spool);
        writer->setResolution(600); // a printer has its own dots
        return writer;
    }
    QString path, spool, proposed;
};

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Leaf pages of the page tree (ISO 32000-1, 7.7.3.3: a page object has the type Page).
int pageCount(const QByteArray& pdf)
{
    static const QRegularExpression leaf(u"/Type\\s*/Page[^s]"_s);
    int pages = 0;
    for (auto it = leaf.globalMatch(QString::fromLatin1(pdf)); it.hasNext(); it.next()) {
        ++pages;
    }
    return pages;
}

/// The text of a PDF as another program reads it (pdftotext of the Debian package poppler-utils), page by page.
QStringList textOf(const QString& path)
{
    QProcess reader;
    reader.start(u"pdftotext"_s, {u"-layout"_s, path, u"-"_s});
    if (!reader.waitForFinished(20'000) || reader.exitCode() != 0) {
        return {};
    }
    QStringList pages = QString::fromUtf8(reader.readAllStandardOutput()).split(u'\f');
    if (!pages.isEmpty() && pages.back().trimmed().isEmpty()) {
        pages.removeLast();
    }
    return pages;
}

bool canReadBack()
{
    return !QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty();
}

void expectInsideItsBox(const PaperJob& job, double width, double height)
{
    const std::vector<PaperPiece> pieces = paperPieces(job);
    EXPECT_FALSE(pieces.empty());
    for (const PaperPiece& piece : pieces) {
        const std::string what = piece.text.toStdString();
        EXPECT_LE(piece.ink.height(), piece.box.height() + 1.0) << what;
        EXPECT_LE(piece.ink.width(), piece.box.width() + 1.0) << what;
        EXPECT_GE(piece.box.left(), -0.5) << what;
        EXPECT_LE(piece.box.right(), width + 0.5) << what;
        EXPECT_LE(piece.box.bottom(), height - 20.0) << what << " runs into the foot of page " << piece.page;
    }
}

constexpr double kWidth = (210.0 - 32.0) / 25.4 * 104.0;
constexpr double kHeight = (297.0 - 32.0) / 25.4 * 104.0;

} // namespace

class PaperTest : public FrameTest
{
protected:
    /// Some tanks with readings and work due.
    void fillRow(int tanks)
    {
        addKits();
        for (int i = 0; i < tanks; ++i) {
            const record::TankId tank = addTank(u"Tank %1"_s.arg(i + 1), 9 + 14 * i);
            read(tank, u"tan"_s, u"0.4"_s, 2);
            read(tank, u"no2"_s, u"0.8"_s, 2);
            read(tank, u"no3"_s, u"20"_s, 3);
        }
    }
    [[nodiscard]] PaperJob row()
    {
        const facade::EaseDesk ease(m_keeper, m_forecasts);
        LaneFeed feed(m_keeper, m_forecasts, ease);
        return rowPaper(feed.lanes(feed.runningLayouts()), m_keeper.row(), m_clock.now(), QTimeZone::utc());
    }
};

TEST_F(PaperTest, TheRowHasABlockForEachTankAndAHeadOnEveryPage)
{
    fillRow(7);
    m_forecasts.refresh();
    m_forecasts.wait();
    const PaperJob job = row();
    expectInsideItsBox(job, kWidth, kHeight);
    const QString pdf = path(u"row.pdf"_s);
    ASSERT_TRUE(printPdf(pdf, job));
    const QByteArray bytes = bytesOf(pdf);
    EXPECT_TRUE(bytes.startsWith("%PDF-1."));
    EXPECT_GE(pageCount(bytes), 2);
    if (!canReadBack()) {
        GTEST_SKIP() << "pdftotext is not here";
    }
    const QStringList pages = textOf(pdf);
    ASSERT_EQ(pages.size(), pageCount(bytes));
    for (qsizetype i = 0; i < pages.size(); ++i) {
        EXPECT_TRUE(pages[i].contains(u"The whole row"_s)) << i;
        EXPECT_TRUE(pages[i].contains(u"25 Nov 2026"_s)) << i;
        EXPECT_TRUE(pages[i].contains(u"Page %1 of %2"_s.arg(i + 1).arg(pages.size()))) << pages[i].toStdString();
    }
    const QString all = pages.join(u' ');
    for (int i = 1; i <= 7; ++i) {
        EXPECT_TRUE(all.contains(u"Tank %1"_s.arg(i))) << i;
    }
    EXPECT_EQ(all.count(u"Newest readings"_s), 7);
    EXPECT_EQ(all.count(u"Next work"_s), 7);
    EXPECT_TRUE(all.contains(u"23 Nov"_s)) << "the day of the newest reading";
}

TEST_F(PaperTest, TheRoundSheetHasABoxForEveryDueReadingInBothOrders)
{
    fillRow(5);
    RoundsModel readings(m_keeper, &m_forecasts);
    WorkModel work(m_keeper);
    work.refresh();
    int due = 0;
    for (int row = 0; row < readings.rowCount(); ++row) {
        for (int column = 0; column < readings.columnCount(); ++column) {
            due += readings.index(row, column).data(RoundsModel::DueRole).toBool() ? 1 : 0;
        }
    }
    ASSERT_GE(due, 5);
    for (const auto order : {RoundsModel::Order::AlongRow, RoundsModel::Order::ByKit}) {
        const PaperJob job = roundPaper(readings, work, order);
        expectInsideItsBox(job, kWidth, kHeight);
        const QString pdf = path(u"round.pdf"_s);
        ASSERT_TRUE(printPdf(pdf, job));
        if (!canReadBack()) {
            GTEST_SKIP() << "pdftotext is not here";
        }
        const QString all = textOf(pdf).join(u' ');
        EXPECT_EQ(all.count(QRegularExpression(u"\\btime\\b"_s)), due);
        EXPECT_TRUE(all.contains(u"last 0.38 mg/L"_s)) << all.toStdString();
        EXPECT_TRUE(all.contains(u"Drops"_s));
        EXPECT_TRUE(all.contains(u"Before hands go in"_s));
        EXPECT_TRUE(all.contains(u"seen"_s, Qt::CaseInsensitive));
        EXPECT_LT(all.indexOf(u"Before hands go in"_s), all.indexOf(u"last 0.38 mg/L"_s));
        for (int i = 1; i <= 5; ++i) {
            EXPECT_TRUE(all.contains(u"Tank %1"_s.arg(i)));
        }
    }
}

/// Long words, long tables and a table's titles on each page.
TEST_F(PaperTest, TablesTurnThePageWithTheirTitles)
{
    PaperJob job;
    job.head = {u"Slate Ford"_s, u"A table"_s, u"25 Nov 2026"_s};
    job.body = [](Paper& paper) {
        std::vector<QStringList> rows;
        for (int i = 0; i < 120; ++i) {
            rows.push_back({u"Row %1"_s.arg(i), u"a cell with rather more words than its column is wide"_s, u"12.5"_s});
        }
        paper.heading(u"Readings"_s);
        paper.table({{u"What stands here"_s, 1.0, false}, {u"Why"_s, 2.0, false}, {u"Value"_s, 0.6, true}}, rows);
        paper.bullets(u"And a list"_s, {u"one"_s, u"two"_s});
        paper.caution(u"Caution"_s, {u"First."_s, u"Second."_s});
        paper.ruled(3);
    };
    expectInsideItsBox(job, kWidth, kHeight);
    const QString pdf = path(u"table.pdf"_s);
    ASSERT_TRUE(printPdf(pdf, job));
    const int pages = pageCount(bytesOf(pdf));
    EXPECT_GE(pages, 3);
    if (!canReadBack()) {
        GTEST_SKIP() << "pdftotext is not here";
    }
    EXPECT_EQ(textOf(pdf).join(u' ').count(u"What stands here"_s), pages);
}

TEST_F(PaperTest, APrinterGetsTheSamePagesAsAFile)
{
    fillRow(3);
    const PaperJob job = row();
    const QString pdf = path(u"row.pdf"_s);
    ASSERT_TRUE(printPdf(pdf, job));
    const QString spool = path(u"spool.pdf"_s);
    {
        QPdfWriter printer(spool);
        printer.setResolution(600);
        ASSERT_TRUE(printOn(printer, job));
    }
    EXPECT_EQ(pageCount(bytesOf(spool)), pageCount(bytesOf(pdf)));
    if (!canReadBack()) {
        GTEST_SKIP() << "pdftotext is not here";
    }
    const auto plain = [](const QString& file) { return textOf(file).join(u' ').simplified().remove(u' '); };
    EXPECT_EQ(plain(spool), plain(pdf));
}

TEST_F(PaperTest, AFileThatCannotBeWrittenIsSaidAndTheOldOneStays)
{
    const PaperJob job = row();
    const auto refused = printPdf(path(u"no/such/folder/row.pdf"_s), job);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().fault, Fault::Storage);
    EXPECT_FALSE(refused.error().mend.empty());
    EXPECT_FALSE(refused.error().where.empty());
}

TEST_F(PaperTest, TheWindowPrintsByKeyAndByMenu)
{
    fillRow(2);
    PaperAsk ask;
    MainWindow window(m_keeper, m_forecasts, m_theme, ask);
    window.resize(1600, 1000);
    window.show();
    const auto enabled = [&](const QString& id) { return window.actions().action(id)->isEnabled(); };
    window.showPage(MainWindow::Page::Lanes);
    ask.path = path(u"lanes.pdf"_s);
    EXPECT_EQ(window.actions().action(u"paper.page"_s)->shortcut(), QKeySequence(Qt::CTRL | Qt::Key_P));
    window.actions().action(u"paper.page"_s)->trigger();
    EXPECT_GT(bytesOf(ask.path).size(), 1000);
    EXPECT_TRUE(ask.proposed.contains(u"2026-11-25"_s));
    window.showPage(MainWindow::Page::Rounds);
    ask.path = path(u"rounds.pdf"_s);
    window.actions().action(u"paper.page"_s)->trigger();
    EXPECT_GT(bytesOf(ask.path).size(), 1000);
    window.showPage(MainWindow::Page::Bench);
    EXPECT_FALSE(enabled(u"paper.page"_s)) << "the page has the key itself";
    ask.spool = path(u"spool.pdf"_s);
    window.actions().action(u"paper.printer"_s)->trigger();
    EXPECT_GT(bytesOf(ask.spool).size(), 1000) << "the sheet went to the printer";
    ask.path = path(u"case.pdf"_s);
    window.actions().action(u"paper.case"_s)->trigger();
    EXPECT_GT(bytesOf(ask.path).size(), 1000);
    ask.path = path(u"elsewhere.pdf"_s);
    window.showPage(MainWindow::Page::Trends);
    window.actions().action(u"paper.row"_s)->trigger();
    EXPECT_GT(bytesOf(ask.path).size(), 1000);
    window.actions().action(u"paper.round"_s)->trigger();
    EXPECT_TRUE(ask.proposed.contains(u"round sheet"_s));
}

TEST_F(PaperTest, ReportsAreMadeWithoutAWindow)
{
    fillRow(2);
    for (const QString& kind : reportKinds()) {
        const ReportRequest request{kind, u"tank 1"_s, path(kind + u".pdf"_s), kind == u"round"_s};
        const auto done = runReport(request, m_keeper, m_forecasts);
        ASSERT_TRUE(done) << kind.toStdString() << ": " << (done ? std::string() : done.error().sentence());
        EXPECT_GE(pageCount(bytesOf(request.pdf)), 1) << kind.toStdString();
    }
    const auto unknown = runReport({u"poem"_s, {}, path(u"poem.pdf"_s), false}, m_keeper, m_forecasts);
    ASSERT_FALSE(unknown);
    EXPECT_NE(unknown.error().mend.find("row"), std::string::npos);
    const auto nowhere = runReport({u"case"_s, u"Nowhere"_s, path(u"case.pdf"_s), false}, m_keeper, m_forecasts);
    ASSERT_FALSE(nowhere);
    EXPECT_NE(nowhere.error().mend.find("Tank 1"), std::string::npos);
}

} // namespace littoral::ui::test
