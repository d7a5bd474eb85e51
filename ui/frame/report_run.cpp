// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/report_run.h"

#include "core/facade/ease_desk.h"

#include "core/facade/case_file.h"
#include "ui/pages/history/case_paper.h"
#include "ui/pages/lanes/lane_feed.h"
#include "ui/pages/lanes/row_paper.h"
#include "ui/pages/rounds/round_paper.h"

#include <QCoreApplication>
#include <QTimeZone>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("Report", text);
}

Error refused(const QString& what, const QString& where, const QString& mend)
{
    return {Fault::BadInput, what.toStdString(), where.toStdString(), mend.toStdString()};
}

Result<void> row(const QString& pdf, facade::Keeper& keeper, facade::Forecasts& forecasts)
{
    forecasts.refresh();
    forecasts.wait();
    const facade::EaseDesk ease(keeper, forecasts);
    LaneFeed feed(keeper, forecasts, ease);
    return printPdf(pdf, rowPaper(feed.lanes(feed.runningLayouts()), keeper.row(), keeper.clock().now(),
                                  QTimeZone::systemTimeZone()));
}

Result<void> round(const ReportRequest& request, facade::Keeper& keeper, facade::Forecasts& forecasts)
{
    const RoundsModel readings(keeper, &forecasts);
    WorkModel work(keeper);
    work.refresh();
    return printPdf(request.pdf, roundPaper(readings, work,
                                            request.byKit ? RoundsModel::Order::ByKit : RoundsModel::Order::AlongRow));
}

Result<void> theCase(const ReportRequest& request, const facade::Keeper& keeper)
{
    const record::Tank* tank = keeper.row().tankNamed(request.tank);
    QStringList names;
    for (const record::Tank& known : keeper.row().tanks) {
        names << known.name;
    }
    if (tank == nullptr) {
        return refused(words("There is no tank \"%1\".").arg(request.tank), u"--tank"_s,
                       words("There are: %1.").arg(names.join(u", "_s)));
    }
    const record::Moment now = keeper.clock().now();
    const std::vector<facade::CaseQuestion> questions = facade::caseQuestions(keeper.row(), tank->id, now);
    if (questions.empty()) {
        return refused(words("%1 has no layout to review.").arg(tank->name), u"--tank"_s, {});
    }
    facade::CaseRequest asked;
    asked.question = questions.front();
    const facade::CaseFile file = facade::caseFile(keeper.row(), asked, now);
    TimeAxis axis;
    axis.setNow(now.utcMs());
    axis.showAround(28, 21);
    return printPdf(request.pdf, casePaper(file, nullptr, keeper.row(), axis));
}

} // namespace

QStringList reportKinds()
{
    return {u"row"_s, u"round"_s, u"case"_s};
}

Result<void> runReport(const ReportRequest& request, facade::Keeper& keeper, facade::Forecasts& forecasts)
{
    if (request.kind == u"row"_s) {
        return row(request.pdf, keeper, forecasts);
    }
    if (request.kind == u"round"_s) {
        return round(request, keeper, forecasts);
    }
    if (request.kind == u"case"_s) {
        return theCase(request, keeper);
    }
    return refused(words("There is no report \"%1\".").arg(request.kind), u"--report"_s,
                   words("There are: %1.").arg(reportKinds().join(u", "_s)));
}

} // namespace littoral::ui
