// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the Rounds page that have to do with time: a sheet typed in afterwards, and the kits' timers.
#include "ui/models/day_words.h"
#include "ui/models/round_timers.h"
#include "ui/pages/rounds/cell_panel.h"
#include "ui/pages/rounds/rounds_grid.h"
#include "ui/pages/rounds/rounds_page.h"
#include "ui/pages/rounds/seen_row.h"
#include "ui/pages/rounds/work_panel.h"
#include "ui/widgets/moment_edit.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSignalBlocker>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

/// "7:35", "7.35", "0735", "7"; invalid when it is no time of day.
QTime timeFrom(const QString& text)
{
    static const QRegularExpression form(u"^(\\d{1,2})(?:[:.h ]?(\\d\\d))?$"_s);
    const QRegularExpressionMatch match = form.match(text.trimmed());
    return match.hasMatch() ? QTime(match.captured(1).toInt(), match.captured(2).toInt()) : QTime();
}

} // namespace

void RoundsPage::makeSheetFields(QWidget* bar)
{
    m_sheet = new QCheckBox(tr("Times on the &sheet"), bar);
    m_sheet->setAccessibleName(tr("Times on the sheet: type in a round that was walked earlier"));
    m_sheet->setToolTip(tr("Type in a printed sheet afterwards: the day of the round, and for each tank the time that "
                           "stands on it"));
    m_sheetBox = new QWidget(bar);
    auto* line = new QHBoxLayout(m_sheetBox);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(8);
    m_sheetDay = new QLineEdit;
    m_sheetDay->setPlaceholderText(u"2026-11-24"_s);
    m_sheetDay->setAccessibleName(tr("Day of the round on the sheet"));
    m_sheetDay->setMaximumWidth(m_theme.px(110));
    m_sheetTime = new QLineEdit;
    m_sheetTime->setPlaceholderText(u"07:35"_s);
    m_sheetTime->setMaximumWidth(m_theme.px(70));
    m_sheetTank = new Text(m_theme, TextStyle::Body);
    auto* day = new Text(m_theme, TextStyle::Body, tr("Walked on"));
    line->addWidget(day);
    line->addWidget(m_sheetDay);
    line->addWidget(m_sheetTank);
    line->addWidget(m_sheetTime);
    m_sheetBox->hide();
    connect(m_sheet, &QCheckBox::toggled, this, [this](bool on) {
        m_grid->leaveCell();
        setSheetDay(on ? std::optional(m_keeper.clock().today()) : std::nullopt);
        (on ? static_cast<QWidget*>(m_sheetDay) : m_grid)->setFocus();
        if (on) {
            m_sheetDay->selectAll();
        }
    });
    connect(m_sheetDay, &QLineEdit::editingFinished, this, &RoundsPage::sheetDayTyped);
    connect(m_sheetTime, &QLineEdit::editingFinished, this, &RoundsPage::sheetTimeTyped);
    // Enter goes on: from the day to the first tank's time, from a time into its tank's cells.
    connect(m_sheetDay, &QLineEdit::returnPressed, this, [this] {
        m_sheetTime->setFocus();
        m_sheetTime->selectAll();
    });
    connect(m_sheetTime, &QLineEdit::returnPressed, this, [this] { m_grid->setFocus(); });
}

void RoundsPage::setSheetDay(const std::optional<QDate>& day)
{
    m_model->setSheetDay(day);
    m_work->model().setSheet(day, [this](record::TankId tank) { return m_model->readAt(tank); });
    const QSignalBlocker quiet(m_sheet);
    m_sheet->setChecked(day.has_value());
    m_sheetBox->setVisible(day.has_value());
    m_readAtBox->setVisible(!day.has_value());
    m_sheetDay->setText(day ? day->toString(Qt::ISODate) : QString());
    refreshTitle();
    // Another day has other rows; its times are typed tank by tank, from the first.
    if (!m_grid->currentIndex().isValid() && m_model->rowCount() > 0) {
        m_grid->setCurrentIndex(m_model->index(0, 0));
    }
    showSheetTime();
}

void RoundsPage::sheetDayTyped()
{
    const record::Moment at = momentFrom(m_sheetDay->text(), m_keeper.clock().now());
    const QDate day = at.isValid() ? at.localDate() : QDate();
    if (!m_model->isSheet() || day == m_model->day()) {
        return;
    }
    if (!day.isValid() || day > m_keeper.clock().today()) {
        emit failed(
            {Fault::BadInput,
             tr("\"%1\" is not a day on which a round was walked.").arg(m_sheetDay->text().trimmed()).toStdString(),
             {},
             tr("Type it as 2026-11-24, today at the latest.").toStdString()},
            tr("The day of the sheet is as it was."));
        m_sheetDay->setText(m_model->day().toString(Qt::ISODate));
        return;
    }
    setSheetDay(day);
}

void RoundsPage::sheetTimeTyped()
{
    const record::TankId tank = m_model->tank(m_grid->currentIndex().row());
    const QTime time = timeFrom(m_sheetTime->text());
    if (!m_model->isSheet() || !tank || time == m_model->sheetTime(tank)) {
        return;
    }
    const bool future = time.isValid() && record::Moment::fromLocal(m_model->day(), time) > m_keeper.clock().now();
    if (!time.isValid() || future) {
        emit failed(
            {Fault::BadInput,
             tr("\"%1\" is not a time at which this tank was read.").arg(m_sheetTime->text().trimmed()).toStdString(),
             {},
             tr("Type it as 7:35, not later than now.").toStdString()},
            tr("The time of the tank is as it was."));
        showSheetTime();
        return;
    }
    m_model->setSheetTime(tank, time);
    showSheetTime();
}

/// The time field is about the tank the keyboard is on; what is noted as seen there counts from the same time.
void RoundsPage::showSheetTime()
{
    const record::TankId tank = m_model->tank(m_grid->currentIndex().row());
    const record::Tank* known = m_keeper.row().tank(tank);
    m_sheetTank->setText(known == nullptr ? tr("Time") : tr("Time for %1").arg(known->name));
    m_sheetTime->setAccessibleName(m_sheetTank->text());
    m_sheetTime->setEnabled(known != nullptr);
    m_sheetTime->setText(m_model->sheetTime(tank).toString(u"HH:mm"_s));
    const bool fixed = m_model->isSheet() || !m_readAt->isNow();
    m_seen->setMoment(fixed ? std::optional(m_model->readAt(tank)) : std::nullopt);
}

void RoundsPage::showTimerButton()
{
    const QModelIndex cell = m_grid->currentIndex();
    const record::TestKit* kit = cell.isValid() ? m_model->kit(cell) : nullptr;
    const double shake = kit == nullptr ? 0.0 : shakeMinutes(m_keeper.row(), kit->id);
    const record::Parameter* parameter = m_model->parameter(cell.column());
    const RoundTimers::Timer* running =
        parameter == nullptr ? nullptr : m_timers->of(m_model->tank(cell.row()), parameter->key);
    m_cell->showTimer(kit == nullptr ? 0.0 : shake + kit->waitMinutes,
                      running == nullptr ? QString() : m_timers->stateText(*running));
}

void RoundsPage::startTimer()
{
    const QModelIndex cell = m_grid->currentIndex();
    const record::TestKit* kit = cell.isValid() ? m_model->kit(cell) : nullptr;
    if (kit == nullptr || m_timers->start(m_model->tank(cell.row()), m_model->parameter(cell.column())->key,
                                          shakeMinutes(m_keeper.row(), kit->id), kit->waitMinutes) == 0) {
        emit told(tr("This kit has no waiting time. Test kits (menu) is where it is set."));
    }
}

void RoundsPage::goToCell(record::TankId tank, const QString& parameter)
{
    m_grid->leaveCell();
    const QModelIndex cell = m_model->index(m_model->rowOf(tank), m_model->columnOf(parameter));
    if (const RoundTimers::Timer* timer = m_timers->of(tank, parameter); timer != nullptr && timer->ready) {
        m_timers->stop(timer->id);
    }
    if (cell.isValid()) {
        m_grid->setCurrentIndex(cell);
        m_grid->setFocus();
    }
}

} // namespace littoral::ui
