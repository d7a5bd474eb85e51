// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/case_paper.h"

#include "core/wording/numbers.h"
#include "ui/models/history_record.h"
#include "ui/models/reset_fans.h"
#include "ui/paint/age_chart.h"
#include "ui/paint/fan_painter.h"
#include "ui/paint/history_strip.h"
#include "ui/theme/figures.h"

#include <QCoreApplication>
#include <QPainter>
#include <QTimeZone>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("CasePaper", text);
}

/// The parts of the review, in the order of the page.
class CasePaper
{
public:
    CasePaper(Paper& paper, const facade::CaseFile& file)
        : m_paper(paper)
        , m_theme(paper.theme())
        , m_file(file)
    {
    }

    void print(const record::Row& row, const std::shared_ptr<const facade::ResetForecast>& made, const TimeAxis& axis)
    {
        text(m_file.tankName, m_theme.font(20, 650), Token::Ink);
        text(m_file.heading, m_theme.font(13), Token::Ink2);
        text(m_file.request.question.text, m_theme.font(15, 650), Token::Ink);
        text(m_file.opening, m_theme.font(13), Token::Ink2);
        strip(axis);
        record(row);
        findings();
        talk();
        if (made != nullptr) {
            reset(*made);
        }
        changes();
        exposures();
        comparison();
    }

private:
    void text(const QString& words, const QFont& font, Token token, double left = 0.0)
    {
        m_paper.text(words, font, token, left);
    }
    void heading(const QString& words) { m_paper.heading(words); }

    void strip(const TimeAxis& axis)
    {
        const LaneMetrics metrics(m_theme);
        const StripLayout layout = layOutStrip(m_file.strip, metrics, axis.view(0, 1), m_paper.width());
        m_paper.picture(layout.height, [&](QPainter& painter, const QRectF& box) {
            painter.save();
            painter.translate(box.topLeft());
            StripPainter(m_theme, metrics, m_file.strip, layout).paint(painter, axis);
            painter.restore();
        });
    }

    void record(const record::Row& row)
    {
        heading(words("Record of the window"));
        HistoryRecord lines;
        lines.setNewestFirst(false);
        lines.setRecord(row, m_file.request.question.layout, m_file.today);
        lines.setWindow(m_file.strip.from, m_file.strip.onset);
        QString day;
        for (int i = 0; i < lines.rowCount(); ++i) {
            const QModelIndex at = lines.index(i);
            if (at.data(HistoryRecord::HeadingRole).toBool()) {
                day = at.data().toString();
            } else if (at.data(HistoryRecord::WindowRole).toBool()) {
                text(words("%1 %2  %3").arg(day, at.data(HistoryRecord::TimeRole).toString(), at.data().toString()),
                     m_theme.font(12), Token::Ink2);
            }
        }
    }

    void bar(double share, const QString& word)
    {
        m_paper.picture(13, [&](QPainter& painter, const QRectF& box) {
            const QRectF whole(0.5, std::round(box.top()) + 4.5, 98, 7);
            painter.setPen(QPen(m_theme[Token::Rule2], 1));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(whole);
            painter.fillRect(QRectF(whole.left(), whole.top(), whole.width() * share, whole.height()),
                             m_theme[Token::Accent]);
            painter.setFont(m_theme.font(12, 600));
            painter.setPen(m_theme[Token::Ink2]);
            drawFigures(painter, QRectF(108, box.top(), box.width() - 108, 16), Qt::AlignVCenter | Qt::AlignLeft, word);
        });
    }

    void findings()
    {
        heading(words("Findings, most supported first"));
        if (m_file.findings.empty()) {
            text(words("Nothing that was seen points to a condition."), m_theme.font(13), Token::Ink2);
        }
        int place = 0;
        for (const facade::CaseFinding& finding : m_file.findings) {
            m_paper.keep(60);
            text(words("%1 · %2").arg(++place).arg(finding.name), m_theme.font(13, 650), Token::Ink);
            bar(finding.bar, finding.supportWord);
            for (const facade::CaseEvidence& evidence : finding.evidence) {
                const QString side = evidence.side == facade::EvidenceSide::For       ? words("+ for")
                                     : evidence.side == facade::EvidenceSide::Against ? words("− against")
                                                                                      : words("unknown");
                text(words("%1: %2").arg(side, evidence.text), m_theme.font(13), Token::Ink, 14);
            }
            text(finding.deferral, m_theme.font(13, 600), Token::Watch, 14);
            for (const wording::CautionText& caution : finding.cautions) {
                m_paper.caution(words("Caution: %1").arg(caution.title), caution.points);
            }
            m_paper.bullets(words("First"), finding.actions);
            m_paper.bullets(words("Avoid"), finding.avoid);
            text(words("Source: %1").arg(finding.source), m_theme.font(11), Token::Ink3, 14);
            m_paper.gap(6);
        }
        if (m_file.check) {
            text(m_file.check->text, m_theme.font(13, 600), Token::Info);
            text(m_file.check->outcomes.join(u'\n'), m_theme.font(12), Token::Ink2);
        }
        text(m_file.aboveAll, m_theme.font(12), Token::Ink2);
    }

    void talk()
    {
        const facade::Talk& talk = m_file.talk;
        heading(words("Keep it, or start afresh: to talk over"));
        text(talk.headline, m_theme.font(13, 600), Token::Ink);
        text(talk.leaning, m_theme.font(13), Token::Ink2);
        for (const facade::TalkPoint& point : talk.points) {
            const QString mark = point.points ? QString::number(*point.points) : words("open");
            text(words("%1: %2. %3").arg(mark, point.title, point.why), m_theme.font(12), Token::Ink, 14);
        }
        text(talk.overriding.join(u'\n'), m_theme.font(12), Token::Ink);
        for (const facade::TalkWay& way : talk.ways) {
            m_paper.bullets(words("%1 (%2)").arg(way.name, way.when), way.first);
        }
        text(talk.judgeOn, m_theme.font(12), Token::Ink2);
        text(words("The points are judgement, common practice; they decide nothing."), m_theme.font(11), Token::Ink3);
    }

    void reset(const facade::ResetForecast& made)
    {
        const facade::ResetTable table = facade::resetTable(made);
        heading(words("Carry on, or start afresh: both forecast"));
        text(table.headline, m_theme.font(13, 600), Token::Ink);
        const FanStackModel fans = resetFans(made);
        const LaneMetrics metrics(m_theme);
        TimeAxis axis;
        axis.setNow(made.now.utcMs());
        axis.setZone(QTimeZone(made.now.offsetSeconds()));
        axis.setRange(made.now.utcMs(), resetEnd(made));
        const double height = std::max(leastFanHeight(fans, metrics), 300.0);
        const double width = m_paper.width();
        const FanStackLayout layout = layOutFans(fans, metrics, axis.view(0, width), QSizeF(width, height));
        m_paper.picture(height, [&](QPainter& painter, const QRectF& box) {
            painter.save();
            painter.translate(box.topLeft());
            FanPainter(m_theme, metrics, fans, layout).paint(painter, axis);
            painter.restore();
        });
        for (const QStringList& row : table.rows) {
            text(words("%1: carrying on %2, changes until then %3; starting afresh %4, changes until then %5")
                     .arg(row.value(0), row.value(1), row.value(2), row.value(3), row.value(4)),
                 m_theme.font(12), Token::Ink, 14);
        }
        text(table.sentences.join(u'\n'), m_theme.font(12), Token::Ink2);
    }

    void changes()
    {
        heading(words("What changed before it"));
        for (const facade::CaseChange& change : m_file.changes) {
            text(change.sentence, m_theme.font(12), Token::Ink);
        }
        if (m_file.changes.empty()) {
            text(words("Nothing in the window stands apart from this layout's own record."), m_theme.font(12),
                 Token::Ink2);
        }
        for (const facade::CaseStep& step : m_file.steps) {
            text(words("Step in the readings (Pettitt's test): %1").arg(step.text), m_theme.font(12), Token::Ink2);
        }
        text(words("Coming before is not causing."), m_theme.font(11), Token::Ink3);
    }

    void exposures()
    {
        heading(words("Exposure since the window opened"));
        for (const facade::CaseExposure& exposure : m_file.exposures) {
            text(exposure.sentence, m_theme.font(12), Token::Ink);
        }
        if (m_file.exposures.empty()) {
            text(words("No reading can be held against a limit."), m_theme.font(12), Token::Ink2);
        }
    }

    void comparison()
    {
        if (!m_file.comparison.any()) {
            return;
        }
        heading(words("%1 at the same age").arg(m_file.comparison.name));
        const LaneMetrics metrics(m_theme);
        m_paper.picture(AgeChart::height(metrics), [&](QPainter& painter, const QRectF& box) {
            AgeChart(m_theme, metrics, m_file.comparison, box).paint(painter);
        });
        text(m_file.comparison.sentences.join(u' '), m_theme.font(12), Token::Ink2);
    }

    Paper& m_paper;
    const Theme& m_theme;
    const facade::CaseFile& m_file;
};

} // namespace

PaperJob casePaper(const facade::CaseFile& file, const std::shared_ptr<const facade::ResetForecast>& reset,
                   const record::Row& row, const TimeAxis& axis)
{
    PaperJob job;
    job.head = {file.tankName, file.request.question.text, wording::dateText(file.today, QDate())};
    job.body = [&file, reset, &row, &axis](Paper& paper) { CasePaper(paper, file).print(row, reset, axis); };
    return job;
}

} // namespace littoral::ui
