// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/bench/sheet_paper.h"

#include "core/wording/caution_words.h"
#include "core/wording/numbers.h"
#include "ui/models/bench_curve.h"
#include "ui/models/day_words.h"

#include <QCoreApplication>
#include <QPainter>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("SheetPaper", text);
}

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

void printAnswer(Paper& paper, const BenchSheet& open, const record::Row& row)
{
    const Theme& theme = paper.theme();
    const sheets::Answer& answer = *open.answer();
    for (const wording::CautionText& caution : wording::wholeCautions(facts::builtInFacts(), answer.cautions)) {
        paper.caution(words("Caution: %1").arg(caution.title), caution.points);
    }
    paper.gap(6);
    paper.formula(answer.formula);
    paper.formula(answer.figures);
    paper.gap(4);
    for (const sheets::Figure& figure : answer.results) {
        const QString value = withUnit(figure.text, figure.unit);
        if (figure.isWords) {
            paper.text(words("%1: %2").arg(figure.label, value), theme.font(13), Token::Ink);
        } else {
            paper.line(figure.label, value, figure.range);
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
}

void printSheet(Paper& paper, const PaperSheet& sheet, const record::Row& row)
{
    const Theme& theme = paper.theme();
    const BenchSheet& open = sheet.sheet;
    paper.text(open.sheet().title, theme.font(18, 650), Token::Ink);
    paper.text(sheet.tankName.isEmpty() ? open.sheet().purpose
                                        : words("%1: %2").arg(sheet.tankName, open.sheet().purpose),
               theme.font(12), Token::Ink2);
    paper.gap(8);
    for (const BenchBlank& blank : open.blanks()) {
        if (!blank.text.isEmpty()) {
            paper.line(blank.input->label, withUnit(choiceLabel(blank), blank.unit), blank.origin);
        }
    }
    if (open.answer()) {
        printAnswer(paper, open, row);
    } else {
        paper.text(open.problem(), theme.font(13), Token::Act);
    }
    paper.text(words("Source: %1").arg(open.sheet().source), theme.font(11), Token::Ink3);
}

void printPlan(Paper& paper, const facade::RowPlan& plan)
{
    const QDate today = plan.days.front().day;
    paper.text(words("The coming two weeks"), paper.theme().font(18, 650), Token::Ink);
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

PaperJob sheetPaper(std::vector<PaperSheet> sheets, std::optional<facade::RowPlan> plan, const record::Row& row,
                    const record::Moment& now)
{
    QStringList tanks;
    for (const PaperSheet& sheet : sheets) {
        tanks << sheet.tankName;
    }
    tanks.removeAll(QString());
    tanks.removeDuplicates();
    PaperJob job;
    job.head = {tanks.isEmpty() ? words("The whole row") : tanks.join(u", "_s), words("Worksheets"),
                momentText(now, QDate())};
    job.body = [sheets = std::move(sheets), plan = std::move(plan), &row](Paper& paper) {
        for (const PaperSheet& sheet : sheets) {
            paper.newPage();
            printSheet(paper, sheet, row);
        }
        if (plan) {
            paper.newPage();
            printPlan(paper, *plan);
        }
    };
    return job;
}

} // namespace littoral::ui
