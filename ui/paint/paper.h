// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "ui/theme/theme.h"

#include <QFont>
#include <QPageLayout>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <functional>
#include <vector>

class QPagedPaintDevice;
class QPainter;

namespace littoral::ui {

/// What stands on every page: whose it is, what it is, and of when.
struct PaperHead
{
    QString subject; ///< a tank, or the row
    QString title;
    QString when;
};

struct PaperColumn
{
    QString title;
    double share = 1.0; ///< of the width
    bool right = false;
};

/// A piece as it was put on paper, for proving that nothing is cut.
struct PaperPiece
{
    int page = 1;
    QRectF box;   ///< what was reserved, below the head of the page
    QRectF ink;   ///< what its text takes at that width
    QString text; ///< empty for pictures
};

/// Writes downwards on A4 in the light look and turns the page where the next piece does not fit. One unit is a pixel
/// of the screen at text size 1, so that the painters of the pages draw here unchanged.
class Paper final
{
public:
    /// Room on a page and the way to the next one.
    struct Sheet
    {
        double width = 0.0;
        double height = 0.0;
        std::function<void()> turn;
    };
    /// `pages`: how many there will be; 0 while they are counted.
    Paper(QPainter& painter, Sheet sheet, const Theme& theme, PaperHead head, int pages);

    [[nodiscard]] double width() const { return m_sheet.width; }
    [[nodiscard]] int page() const { return m_page; }
    [[nodiscard]] const Theme& theme() const { return m_theme; }
    /// Room for the pieces of one page, below its head and above its foot.
    [[nodiscard]] double pageRoom() const;

    void gap(double pixels) { m_y += pixels; }
    void heading(const QString& text);
    void text(const QString& text, const QFont& font, Token token, double left = 0.0);
    void text(const QString& text) { this->text(text, m_theme.font(13), Token::Ink); }
    void bullets(const QString& title, const QStringList& lines);
    /// Name, value and where it came from, in three columns.
    void line(const QString& name, const QString& value, const QString& note);
    /// Rows of a table; the titles stand again on a new page.
    void table(const std::vector<PaperColumn>& columns, const std::vector<QStringList>& rows);
    /// Cautions, boxed: a title and what it says.
    void caution(const QString& title, const QStringList& lines);
    void formula(const QString& text);
    /// Empty lines to write on.
    void ruled(int lines);
    /// Height that `text` takes at the page's width less `left`.
    [[nodiscard]] double heightOf(const QString& text, const QFont& font, double left = 0.0) const;
    template <typename Draw> void picture(double height, const Draw& draw)
    {
        draw(m_painter, place(height));
        m_y += 6;
    }
    /// The next `height` pixels stand on one page.
    void keep(double height);
    /// A new page, unless nothing stands on this one yet.
    void newPage();

    [[nodiscard]] const std::vector<PaperPiece>& pieces() const { return m_pieces; }

private:
    [[nodiscard]] QRectF place(double height);
    void drawHead();
    void drawText(const QRectF& box, const QFont& font, Token token, int flags, const QString& text);
    void tableHead(const std::vector<PaperColumn>& columns, const std::vector<double>& lefts);

    QPainter& m_painter;
    Sheet m_sheet;
    const Theme& m_theme;
    PaperHead m_head;
    int m_pages;
    int m_page = 1;
    double m_top = 0.0;
    double m_bottom = 0.0;
    double m_y = 0.0;
    std::vector<PaperPiece> m_pieces;
};

/// Something to be printed. `body` is run twice: once to count the pages.
struct PaperJob
{
    PaperHead head;
    QPageLayout::Orientation orientation = QPageLayout::Portrait;
    std::function<void(Paper&)> body;
};

/// A4 with the margins of every paper here.
[[nodiscard]] QPageLayout paperLayout(QPageLayout::Orientation orientation);
/// Onto a printer or any other paged device, whose page layout is set from the job. False when the device refused.
[[nodiscard]] bool printOn(QPagedPaintDevice& device, const PaperJob& job);
/// As a PDF file. Faults: Storage when it cannot be written; a file that was there before stays.
[[nodiscard]] Result<void> printPdf(const QString& path, const PaperJob& job);
/// Where everything would stand, without printing.
[[nodiscard]] std::vector<PaperPiece> paperPieces(const PaperJob& job);

} // namespace littoral::ui
