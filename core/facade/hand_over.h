// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/care/due.h"
#include "core/record/row.h"

#include <QDate>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

/// What a journey asks for: the work of its days split between before, the helper and after; a sheet for each tank; and
/// what was done meanwhile, written down on coming home. Texts are whole sentences, translated.
namespace littoral::facade {

class Keeper;

/// Who does a round that falls into the journey.
enum class Hand {
    Before, ///< the keeper, not after the day of leaving
    Helper, ///< safe and simple enough for somebody who has been shown it once
    After,  ///< it waits until the keeper is back
};

/// One round of the journey and whose it is.
struct HandOverTask
{
    care::DueItem item; ///< as due work tells it on the day of leaving
    Hand hand = Hand::After;
    QString tank; ///< name; empty: work for the whole row
    QDate day;    ///< on which this hand is to do it
    QString what; ///< "Water change 30 %"
    QString why;  ///< why it is in this list
    // Of the helper's alone:
    QString how;          ///< for somebody who does it for the first time
    QString howMuch;      ///< "18 L out, 18 L of \"Tap\" in"; may be empty
    QStringList cautions; ///< ids in the order in which they count: "C-ELEC", "C-HANDS"
};

/// Something that is no round but belongs to a journey: no new animals, a shorter day of light ...
struct Preparation
{
    QString
        key; ///< "no-additions", "no-settings", "service", "packets", "walk-through", "light", "gas", "dose", "young"
    QString tank; ///< name; empty: the whole row
    QDate from;
    QDate until; ///< the same as `from` for a single day
    QString text;
    bool broken = false; ///< the record shows that it was not kept: see `remark`
    QString remark;
    QString caution; ///< id; may be empty
};

/// What the helper may see, and what to do then. The steps come in order.
struct CallSign
{
    QString sign;
    QStringList steps;
    QString caution; ///< id; may be empty
};

/// One tank on the helper's sheet.
struct HelperSheet
{
    record::TankId tank;
    record::LayoutId layout;
    QString name;
    int ageDays = 0;    ///< on the day of leaving
    bool young = false; ///< under four weeks: better not left alone
    QStringList known;  ///< what the tank is like when all is well: animals, temperature, hours of light and gas
    QStringList daily;  ///< looks and feeding of every day
    std::vector<HandOverTask> tasks; ///< oldest first
    QStringList doNot;
    std::vector<CallSign> signs;
    QStringList cautions; ///< ids, each once: those of the tasks and signs
};

/// What one day asks of the helper, over all tanks.
struct HelperDay
{
    QDate day;
    int minutes = 0; ///< of its tasks, daily looks not counted
    double litres = 0.0;
};

struct HandOver
{
    record::Journey journey;
    QDate today;
    QStringList call;                      ///< whom to call, in order, as far as the record tells
    std::vector<Preparation> preparations; ///< by day
    std::vector<HandOverTask> before;      ///< by day, then tank
    std::vector<HelperSheet> sheets;       ///< in row order; every running tank has one
    std::vector<HandOverTask> after;       ///< by day, then tank
    std::vector<HelperDay> days;           ///< every day of the helper's
    QStringList onReturn;                  ///< what the full round of the day of return looks at
    QString source;                        ///< what the split rests on
    QString deferral;                      ///< who decides instead of this sheet

    [[nodiscard]] int helperMinutes() const;
    [[nodiscard]] double helperLitres() const;
};

/// The hand-over of a journey as the record tells at `now`. Rounds fall where they would if all that is due until the
/// day of leaving is done on time. BadInput when the days are missing or turned round.
[[nodiscard]] Result<HandOver> handOver(const record::Row& row, const record::Journey& journey,
                                        const record::Moment& now);

/// The journey that counts on a day: the one that is running, else the next to come, else the last one that ended
/// within 30 days; nullptr when there is none.
[[nodiscard]] const record::Journey* journeyAround(const record::Row& row, const QDate& today);

/// One line of what the helper did, as typed on coming home.
struct HelperDone
{
    care::DueItem item;
    bool done = true;               ///< false: it was left out; `note` says why
    QDate day;                      ///< on which it was done
    QString note;                   ///< what the helper wrote; the reason when it was left out
    std::optional<double> fraction; ///< of a water change, 0..1, if not as asked
    struct Value
    {
        QString parameter;
        QString typed; ///< as written on the sheet; empty: not read
        QString unit;  ///< empty: the kit's, else the parameter's shown unit
    };
    std::vector<Value> values; ///< of a test
};

/// The helper's rounds that are still open: what the hand-over gave them, as the record told on the day of leaving,
/// less what was written down since. Only days up to today.
[[nodiscard]] std::vector<HandOverTask> openHelperTasks(const record::Row& row, const record::Journey& journey,
                                                        const record::Moment& now);

/// Writes the list in one change that undo takes back: entries and readings dated to the day they were done (at noon),
/// rounds closed by them. Nothing is written when a line cannot be (a value that is no number, a day outside the
/// journey or after today, left out without a reason): the error names it. Returns how many rounds were closed.
[[nodiscard]] Result<int> writeHelperWork(Keeper& keeper, const record::Journey& journey,
                                          const std::vector<HelperDone>& lines);

/// Adds or changes a journey (its id decides) and fills its entered time; removes one. Undoable.
[[nodiscard]] Result<record::JourneyId> keepJourney(Keeper& keeper, record::Journey journey);
[[nodiscard]] Result<void> dropJourney(Keeper& keeper, record::JourneyId id);

} // namespace littoral::facade
