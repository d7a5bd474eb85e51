// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bench/sheet_paper.h"

#include "core/wording/numbers.h"
#include "ui/models/bench_curve.h"
#include "ui/models/day_words.h"
#include "ui/paint/formula.h"
#include "ui/theme/figures.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

// Logical pixels of the theme to the inch on paper: body text of 13 px comes out at about 9 points.
constexpr int kDotsPerInch = 104;
constexpr double kMargin_mm = 16.0;

QString words(const char* text)
{
    return QCoreApplication::translate("SheetPaper", text);
}

/// Writes downwards and turns the page where the next piece does not fit.
class Paper
{
public:
    Paper(QPdfWriter& writer, const Theme& theme)
        : m_writer(writer)
        , m_painter(&writer)
        , m_theme(theme)
    {
    }

    [[nodiscard]] double width() const { return m_writer.width(); }

    void gap(double pixels) { m_y += pixels; }

    void text(const QString& text, const QFont& font, Token token, double left = 0.0)
    {
        if (text.isEmpty()) {
            return;
        }
        const QRectF room(left, 0, width() - left, 1e6);
        const int flags = Qt::AlignLeft | Qt::TextWordWrap;
        const double height = QFontMetricsF(font).boundingRect(room, flags, text).height();
        reserve(height);
        m_painter.setFont(font);
        m_painter.setPen(m_theme[token]);
        m_painter.drawText(QRectF(left, m_y, width() - left, height + 2), flags, text);
        m_y += height + 3;
    }

    /// Name, value and where it came from, in three columns.
    void line(const QString& name, const QString& value, const QString& note)
    {
        const QFont body = m_theme.font(13);
        const QFont strong = m_theme.font(13, 600);
        const double third = width() * 0.42;
        const QRectF nameRoom(0, 0, third - 8, 1e6);
        const QRectF noteRoom(0, 0, width() - third - 170, 1e6);
        const double height =
            std::max(QFontMetricsF(body).boundingRect(nameRoom, Qt::TextWordWrap, name).height(),
                     QFontMetricsF(m_theme.font(11)).boundingRect(noteRoom, Qt::TextWordWrap, note).height());
        reserve(height);
        m_painter.setFont(body);
        m_painter.setPen(m_theme[Token::Ink2]);
        m_painter.drawText(QRectF(0, m_y, third - 8, height + 2), Qt::TextWordWrap, name);
        m_painter.setFont(strong);
        m_painter.setPen(m_theme[Token::Ink]);
        drawFigures(m_painter, QRectF(third, m_y, 150, QFontMetricsF(strong).height()), Qt::AlignLeft, value);
        m_painter.setFont(m_theme.font(11));
        m_painter.setPen(m_theme[Token::Ink3]);
        m_painter.drawText(QRectF(third + 160, m_y + 1, noteRoom.width(), height + 2), Qt::TextWordWrap, note);
        m_y += height + 5;
    }

    void formula(const QString& text)
    {
        const double height = formulaHeight(m_theme, text, width());
        reserve(height);
        paintFormula(m_painter, QRectF(0, m_y, width(), height), m_theme, text, m_theme[Token::Ink]);
        m_y += height + 6;
    }

    template <typename Draw> void picture(double height, const Draw& draw)
    {
        reserve(height);
        draw(m_painter, QRectF(0, m_y, width(), height));
        m_y += height + 6;
    }

    /// A new page, unless nothing stands on this one yet.
    void page()
    {
        if (m_y > 0.0) {
            m_writer.newPage();
            m_y = 0.0;
        }
    }

    [[nodiscard]] bool end() { return m_painter.end(); }

private:
    void reserve(double height)
    {
        if (m_y > 0.0 && m_y + height > m_writer.height()) {
            page();
        }
    }

    QPdfWriter& m_writer;
    QPainter m_painter;
    const Theme& m_theme;
    double m_y = 0.0;
};

QString withUnit(const QString& text, const QString& unit)
{
    return unit.isEmpty() ? text : words("%1 %2").arg(text, unit);
}

QString choiceLabel(const BenchBlank& blank)
{
    for (const sheets::Choice& choice : blank.input->choices) {
        if (choice.code == blank.text) {
            return choice.label;
        }
    }
    return blank.text;
}

void printAnswer(Paper& paper, const Theme& theme, const BenchSheet& open, const record::Row& row)
{
    const sheets::Answer& answer = *open.answer();
    paper.gap(6);
    paper.formula(answer.formula);
    paper.formula(answer.figures);
    paper.gap(4);
    for (const sheets::Figure& figure : answer.results) {
        const QString value = withUnit(figure.text, figure.unit);
        if (figure.isWords) {
            paper.text(words("%1: %2").arg(figure.label, value), theme.font(13), Token::Ink);
        } else {
            paper.line(figure.label, value, figure.range.isEmpty() ? QString() : words("%1").arg(figure.range));
        }
    }
    if (const auto measures = benchMeasures(open)) {
        paper.picture(measuresHeight(theme, *measures),
                      [&](QPainter& painter, const QRectF& box) { paintMeasures(painter, box, theme, *measures); });
    }
    if (const auto curve = benchCurve(open, row)) {
        paper.picture(curveHeight(theme),
                      [&](QPainter& painter, const QRectF& box) { paintCurve(painter, box, theme, *curve); });
    }
    for (const sheets::Move& move : answer.moves) {
        paper.line(withUnit(move.label, move.unit), words("%1 → %2").arg(move.before, move.after), move.note);
    }
    for (const QString& note : answer.notes) {
        paper.text(note, theme.font(12), Token::Ink2);
    }
    for (const sheets::Caution& caution : answer.cautions) {
        paper.text(words("Caution. %1").arg(caution.text), theme.font(12, 600), Token::Act);
    }
}

void printSheet(Paper& paper, const Theme& theme, const PaperSheet& sheet, const record::Row& row,
                const record::Moment& now)
{
    const BenchSheet& open = sheet.sheet;
    paper.text(open.sheet().title, theme.font(18, 650), Token::Ink);
    const QString when = momentText(now, now.localDate());
    paper.text(sheet.tankName.isEmpty() ? when : words("%1, %2").arg(sheet.tankName, when), theme.font(12),
               Token::Ink2);
    paper.gap(8);
    for (const BenchBlank& blank : open.blanks()) {
        if (!blank.text.isEmpty()) {
            paper.line(blank.input->label, withUnit(choiceLabel(blank), blank.unit), blank.origin);
        }
    }
    if (open.answer()) {
        printAnswer(paper, theme, open, row);
    } else {
        paper.text(open.problem(), theme.font(13), Token::Act);
    }
    paper.text(words("Source: %1").arg(open.sheet().source), theme.font(11), Token::Ink3);
}

void printPlan(Paper& paper, const Theme& theme, const facade::RowPlan& plan)
{
    const QDate today = plan.days.front().day;
    paper.text(words("The coming two weeks"), theme.font(18, 650), Token::Ink);
    paper.gap(8);
    for (const facade::WaterDay& day : plan.days) {
        if (day.changes.empty()) {
            continue;
        }
        QStringList tanks;
        for (const facade::PlannedWater& change : day.changes) {
            tanks << (change.litres ? words("%1 %2").arg(change.tankName, wording::litresText(*change.litres))
                                    : change.tankName);
        }
        if (day.collides) {
            tanks << words("large changes collide");
        }
        paper.line(wording::weekdayText(day.day, today), wording::litresText(day.litres), tanks.join(u", "_s));
    }
}

} // namespace

Result<void> printSheets(const QString& path, const std::vector<PaperSheet>& sheets,
                         const std::optional<facade::RowPlan>& plan, const record::Row& row, const record::Moment& now)
{
    const auto refused = [&] {
        return Error{Fault::Storage, words("The PDF could not be written.").toStdString(), path.toStdString(),
                     words("Choose a folder that may be written to.").toStdString()};
    };
    // Into memory first: a file that cannot be written is told by the file, not by the painter.
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setTitle(words("Worksheets"));
        writer.setCreator(u"Littoral"_s);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins(QMarginsF(kMargin_mm, kMargin_mm, kMargin_mm, kMargin_mm), QPageLayout::Millimeter);
        writer.setResolution(kDotsPerInch);
        const Theme theme(Scheme::Light);
        Paper paper(writer, theme);
        for (const PaperSheet& sheet : sheets) {
            paper.page();
            printSheet(paper, theme, sheet, row, now);
        }
        if (plan) {
            paper.page();
            printPlan(paper, theme, *plan);
        }
        if (!paper.end()) {
            return refused();
        }
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(buffer.data()) != buffer.data().size() || !file.commit()) {
        return refused();
    }
    return {};
}

} // namespace littoral::ui
