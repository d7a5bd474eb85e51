// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/history/case_paper.h"

#include "core/wording/numbers.h"
#include "ui/models/history_record.h"
#include "ui/models/reset_fans.h"
#include "ui/paint/age_chart.h"
#include "ui/paint/fan_painter.h"
#include "ui/paint/history_strip.h"
#include "ui/theme/figures.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QTimeZone>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

// Logical pixels of the theme to the inch on paper: body text of 13 px comes out at about 9 points.
constexpr int kDotsPerInch = 104;
constexpr double kMargin_mm = 16.0;

QString words(const char* text)
{
    return QCoreApplication::translate("CasePaper", text);
}

/// Writes downwards and turns the page where the next piece does not fit.
class CasePaper
{
public:
    CasePaper(QPdfWriter& writer, const Theme& theme, const facade::CaseFile& file)
        : m_writer(writer)
        , m_painter(&writer)
        , m_theme(theme)
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
    [[nodiscard]] bool end() { return m_painter.end(); }

private:
    [[nodiscard]] double width() const { return m_writer.width(); }

    void reserve(double height)
    {
        if (m_y > 0.0 && m_y + height > m_writer.height()) {
            m_writer.newPage();
            m_y = 0.0;
        }
    }

    void text(const QString& words, const QFont& font, Token token, double left = 0.0)
    {
        if (words.isEmpty()) {
            return;
        }
        const QRectF room(left, 0, width() - left, 1e6);
        const double height = QFontMetricsF(font, &m_writer).boundingRect(room, Qt::TextWordWrap, words).height();
        reserve(height);
        m_painter.setFont(font);
        m_painter.setPen(m_theme[token]);
        m_painter.drawText(QRectF(left, m_y, width() - left, height + 2), Qt::TextWordWrap, words);
        m_y += height + 3;
    }

    void heading(const QString& words)
    {
        m_y += 10;
        reserve(60);
        text(words, m_theme.font(15, 650), Token::Ink);
    }

    void bullets(const QString& title, const QStringList& lines)
    {
        if (lines.isEmpty()) {
            return;
        }
        text(title, m_theme.font(13, 600), Token::Ink, 14);
        for (const QString& line : lines) {
            text(u"• "_s + line, m_theme.font(13), Token::Ink, 22);
        }
    }

    void strip(const TimeAxis& axis)
    {
        const LaneMetrics metrics(m_theme);
        const StripLayout layout = layOutStrip(m_file.strip, metrics, axis.view(0, 1), width());
        reserve(layout.height);
        m_painter.save();
        m_painter.translate(0, m_y);
        StripPainter(m_theme, metrics, m_file.strip, layout).paint(m_painter, axis);
        m_painter.restore();
        m_y += layout.height + 6;
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
        reserve(18);
        const QRectF whole(0.5, std::round(m_y) + 4.5, 98, 7);
        m_painter.setPen(QPen(m_theme[Token::Rule2], 1));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(whole);
        m_painter.fillRect(QRectF(whole.left(), whole.top(), whole.width() * share, whole.height()),
                           m_theme[Token::Accent]);
        m_painter.setFont(m_theme.font(12, 600));
        m_painter.setPen(m_theme[Token::Ink2]);
        drawFigures(m_painter, QRectF(108, m_y, width() - 108, 16), Qt::AlignVCenter | Qt::AlignLeft, word);
        m_y += 19;
    }

    void findings()
    {
        heading(words("Findings, most supported first"));
        if (m_file.findings.empty()) {
            text(words("Nothing that was seen points to a condition."), m_theme.font(13), Token::Ink2);
        }
        int place = 0;
        for (const facade::CaseFinding& finding : m_file.findings) {
            reserve(60);
            text(words("%1 · %2").arg(++place).arg(finding.name), m_theme.font(13, 650), Token::Ink);
            bar(finding.bar, finding.supportWord);
            for (const facade::CaseEvidence& evidence : finding.evidence) {
                const QString side = evidence.side == facade::EvidenceSide::For       ? words("+ for")
                                     : evidence.side == facade::EvidenceSide::Against ? words("− against")
                                                                                      : words("unknown");
                text(words("%1: %2").arg(side, evidence.text), m_theme.font(13), Token::Ink, 14);
            }
            text(finding.deferral, m_theme.font(13, 600), Token::Watch, 14);
            for (const facade::CautionText& caution : finding.cautions) {
                text(words("Caution, %1: %2").arg(caution.title, caution.points.join(u' ')), m_theme.font(12),
                     Token::Watch, 14);
            }
            bullets(words("First"), finding.actions);
            bullets(words("Avoid"), finding.avoid);
            text(words("Source: %1").arg(finding.source), m_theme.font(11), Token::Ink3, 14);
            m_y += 6;
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
            bullets(words("%1 (%2)").arg(way.name, way.when), way.first);
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
        reserve(height);
        const FanStackLayout layout = layOutFans(fans, metrics, axis.view(0, width()), QSizeF(width(), height));
        m_painter.save();
        m_painter.translate(0, m_y);
        FanPainter(m_theme, metrics, fans, layout).paint(m_painter, axis);
        m_painter.restore();
        m_y += height + 6;
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
        const double height = AgeChart::height(metrics);
        reserve(height);
        AgeChart(m_theme, metrics, m_file.comparison, QRectF(0, m_y, width(), height)).paint(m_painter);
        m_y += height + 4;
        text(m_file.comparison.sentences.join(u' '), m_theme.font(12), Token::Ink2);
    }

    QPdfWriter& m_writer;
    QPainter m_painter;
    const Theme& m_theme;
    const facade::CaseFile& m_file;
    double m_y = 0.0;
};

} // namespace

Result<void> printCase(const QString& path, const facade::CaseFile& file,
                       const std::shared_ptr<const facade::ResetForecast>& reset, const record::Row& row,
                       const TimeAxis& axis)
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
        writer.setTitle(words("%1: %2").arg(file.tankName, file.request.question.text));
        writer.setCreator(u"Littoral"_s);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins(QMarginsF(kMargin_mm, kMargin_mm, kMargin_mm, kMargin_mm), QPageLayout::Millimeter);
        writer.setResolution(kDotsPerInch);
        const Theme theme(Scheme::Light);
        CasePaper paper(writer, theme, file);
        paper.print(row, reset, axis);
        if (!paper.end()) {
            return refused();
        }
    }
    QSaveFile target(path);
    if (!target.open(QIODevice::WriteOnly) || target.write(buffer.data()) != buffer.data().size() || !target.commit()) {
        return refused();
    }
    return {};
}

} // namespace littoral::ui
