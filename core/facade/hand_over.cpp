// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/hand_over.h"

#include "core/care/age.h"
#include "core/care/events.h"
#include "core/care/limits.h"
#include "core/care/stock.h"
#include "core/facade/hand_split.h"
#include "core/wording/entry_words.h"
#include "core/wording/hand_over_words.h"
#include "core/wording/numbers.h"
#include "core/wording/sentences.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>
#include <tuple>

namespace littoral::facade {

using namespace Qt::StringLiterals;
using record::EntryKind;

namespace {

constexpr int kYoungDays = 28; // common practice: not left alone before
constexpr int kQuietDays = 14; // no additions, no settings changed before a journey
constexpr int kServiceFrom = 7, kServiceTo = 5;
constexpr int kWalkThroughDays = 3;
constexpr double kDosedDays = 60.0; // a tank not dosed for so long is not dosed
constexpr double kTemperatureSlack_C = 1.5;

void addOnce(QStringList& list, const QString& text)
{
    if (!text.isEmpty() && !list.contains(text)) {
        list << text;
    }
}

/// What a layout's record says that the sheet and the preparations need.
class Teller
{
public:
    Teller(const record::Row& row, const record::LayoutRecord& layout, const HandOver& out, const record::Moment& now)
        : m_row(row)
        , m_layout(layout)
        , m_out(out)
        , m_now(now)
        , m_stock(care::stockAt(layout, now))
    {
    }

    [[nodiscard]] bool animals() const { return m_stock.any(); }
    [[nodiscard]] bool gas() const { return m_layout.layout.co2 == record::Co2Mode::Pressurised; }

    [[nodiscard]] bool isDosed() const
    {
        return std::ranges::any_of(m_layout.entries, [&](const record::Entry& entry) {
            return entry.kind == EntryKind::Dose && !entry.planned && entry.subject != u"ammonia"_s &&
                   entry.subject != u"starter"_s && entry.subject != u"medication"_s && entry.at <= m_now &&
                   record::daysBetween(entry.at, m_now) <= kDosedDays;
        });
    }

    [[nodiscard]] HelperSheet sheet(const record::Tank& tank) const
    {
        HelperSheet sheet;
        sheet.tank = tank.id;
        sheet.layout = m_layout.layout.id;
        sheet.name = tank.name;
        sheet.ageDays = care::ageDays(m_layout.layout, m_out.journey.leaves);
        sheet.young = sheet.ageDays < kYoungDays;
        sheet.known = known();
        sheet.daily = wording::dailyTexts(animals(), feed());
        sheet.doNot = wording::doNotTexts(animals(), gas());
        for (const wording::CallSignWords& sign : wording::callSigns(animals(), gas(), care::limitsOf(m_row))) {
            sheet.signs.push_back({sign.sign, sign.steps, sign.caution});
        }
        return sheet;
    }

    /// Entries of a kind on days from `first` to `last`, planned ones among them if asked for.
    [[nodiscard]] std::vector<const record::Entry*> on(care::Event event, const QDate& first, const QDate& last,
                                                       bool planned) const
    {
        std::vector<const record::Entry*> found;
        for (const record::Entry& entry : m_layout.entries) {
            const QDate day = entry.at.localDate();
            if (care::isEvent(entry, event) && (planned || !entry.planned) && day >= first && day <= last) {
                found.push_back(&entry);
            }
        }
        return found;
    }

private:
    [[nodiscard]] QStringList known() const
    {
        QStringList lines;
        QStringList names;
        for (const care::Animals& kind : m_stock.animals) {
            names << u"%1 %2"_s.arg(kind.count).arg(wording::subjectText(kind.subject));
        }
        lines << (names.isEmpty() ? wording::noAnimalsText() : wording::animalsKnownText(names));
        const record::Layout& layout = m_layout.layout;
        const record::Target* target = m_row.target(layout.tank, u"temp"_s);
        const double low = target != nullptr && target->low ? *target->low : layout.temperature_C - kTemperatureSlack_C;
        const double high =
            target != nullptr && target->high ? *target->high : layout.temperature_C + kTemperatureSlack_C;
        lines << wording::temperatureKnownText(low, high);
        const record::Entry* light = m_layout.lastDone(EntryKind::LightChange, m_now);
        const double hours = light != nullptr && light->amount ? *light->amount : layout.lightHours;
        if (hours > 0.0) {
            lines << wording::lightKnownText(hours);
        }
        if (gas() && layout.co2Hours > 0.0) {
            lines << wording::gasKnownText(layout.co2Hours);
        }
        return lines;
    }

    /// "0.4 g/d": what is fed a day, where it was entered by weight.
    [[nodiscard]] QString feed() const
    {
        const record::Entry* feeding = m_layout.lastDone(EntryKind::Feeding, m_now);
        if (feeding == nullptr || !feeding->amount || feeding->unit != u"g/d"_s) {
            return {};
        }
        return u"%1 g"_s.arg(wording::plainNumber(*feeding->amount));
    }

    const record::Row& m_row;
    const record::LayoutRecord& m_layout;
    const HandOver& m_out;
    const record::Moment& m_now;
    care::Stock m_stock;
};

/// What goes wrong most when it is done too near a journey, with what the record shows of it.
class Preparer
{
public:
    explicit Preparer(HandOver& out)
        : m_out(out)
        , m_leaves(out.journey.leaves)
    {
        m_additions = make(u"no-additions"_s, m_leaves.addDays(-kQuietDays), m_leaves);
        m_settings = make(u"no-settings"_s, m_leaves.addDays(-kQuietDays), m_leaves);
        m_service = make(u"service"_s, m_leaves.addDays(-kServiceFrom), m_leaves.addDays(-kServiceTo));
    }

    void look(const Teller& teller, const HelperSheet& sheet)
    {
        const QDate quietFrom = m_leaves.addDays(-kQuietDays);
        for (const auto* entry : teller.on(care::Event::Addition, quietFrom, m_out.journey.returns, true)) {
            breaks(m_additions, sheet.name,
                   wording::additionNearText(wording::subjectText(entry->subject), entry->at.localDate(), m_out.today));
        }
        for (const care::Event event : {care::Event::Co2Change, care::Event::LightChange}) {
            for (const auto* entry : teller.on(event, quietFrom, m_leaves.addDays(-1), false)) {
                breaks(m_settings, sheet.name, wording::settingNearText(entry->at.localDate(), m_out.today));
            }
        }
        const QDate lateService = m_leaves.addDays(1 - kServiceTo);
        for (const auto* entry : teller.on(care::Event::FilterService, lateService, m_leaves, false)) {
            breaks(m_service, sheet.name, wording::serviceNearText(entry->at.localDate(), m_out.today));
        }
        m_animals = m_animals || teller.animals();
        m_gas = m_gas || teller.gas();
        m_dosed = m_dosed || teller.isDosed();
        if (sheet.young) {
            Preparation young = make(u"young"_s, m_leaves, m_leaves);
            young.tank = sheet.name;
            m_out.preparations.push_back(std::move(young));
        }
    }

    void finish()
    {
        m_out.preparations.push_back(m_additions);
        m_out.preparations.push_back(m_settings);
        m_out.preparations.push_back(m_service);
        const QDate walk = m_leaves.addDays(-kWalkThroughDays);
        m_out.preparations.push_back(make(u"walk-through"_s, walk, walk));
        if (m_animals) {
            m_out.preparations.push_back(make(u"packets"_s, walk, m_leaves));
            m_out.call << wording::professionalLine();
        }
        m_out.preparations.push_back(make(u"light"_s, m_leaves, m_leaves));
        if (m_gas) {
            m_out.preparations.push_back(make(u"gas"_s, m_leaves, m_leaves));
            m_out.preparations.back().caution = u"C-CO2"_s;
        }
        if (m_dosed) {
            m_out.preparations.push_back(make(u"dose"_s, m_leaves, m_leaves));
        }
        std::ranges::stable_sort(m_out.preparations, [](const Preparation& a, const Preparation& b) {
            return std::tie(a.from, a.until) < std::tie(b.from, b.until);
        });
    }

private:
    static Preparation make(const QString& key, const QDate& from, const QDate& until)
    {
        return {key, {}, from, until, wording::preparationText(key), false, {}, {}};
    }

    static void breaks(Preparation& preparation, const QString& tank, const QString& what)
    {
        preparation.broken = true;
        const QString line = u"%1: %2"_s.arg(tank, what);
        preparation.remark += preparation.remark.isEmpty() ? line : u' ' + line;
    }

    HandOver& m_out;
    QDate m_leaves;
    Preparation m_additions, m_settings, m_service;
    bool m_animals = false, m_gas = false, m_dosed = false;
};

/// The sheet of a task's layout takes it, with the cautions it brings.
void giveToHelper(HelperSheet& sheet, HandOverTask task)
{
    for (const QString& caution : task.cautions) {
        addOnce(sheet.cautions, caution);
    }
    sheet.tasks.push_back(std::move(task));
}

void sumDays(HandOver& out)
{
    for (QDate day = out.journey.leaves.addDays(1); day < out.journey.returns; day = day.addDays(1)) {
        HelperDay sum{day, 0, 0.0};
        for (const HelperSheet& sheet : out.sheets) {
            for (const HandOverTask& task : sheet.tasks) {
                if (task.day == day) {
                    sum.minutes += task.item.minutes;
                    sum.litres += task.item.kind == care::WorkKind::WaterChange ? task.item.litres.value_or(0.0) : 0.0;
                }
            }
        }
        out.days.push_back(sum);
    }
}

QStringList callList(const QString& phone)
{
    QStringList lines;
    static const QRegularExpression kBreak(u"[\\n;]+"_s);
    for (const QString& part : phone.split(kBreak, Qt::SkipEmptyParts)) {
        if (!part.trimmed().isEmpty()) {
            lines << wording::callLine(part.trimmed());
        }
    }
    return lines.isEmpty() ? QStringList{wording::noPhoneLine()} : lines;
}

void byDay(std::vector<HandOverTask>& tasks)
{
    std::ranges::stable_sort(tasks, {}, &HandOverTask::day);
}

} // namespace

int HandOver::helperMinutes() const
{
    int sum = 0;
    for (const HelperDay& day : days) {
        sum += day.minutes;
    }
    return sum;
}

double HandOver::helperLitres() const
{
    double sum = 0.0;
    for (const HelperDay& day : days) {
        sum += day.litres;
    }
    return sum;
}

Result<HandOver> handOver(const record::Row& row, const record::Journey& journey, const record::Moment& now)
{
    if (!journey.leaves.isValid() || !journey.returns.isValid() || journey.returns <= journey.leaves) {
        return Error{Fault::BadInput,
                     QCoreApplication::translate("HandOver", "The journey needs a day of leaving and a later day of "
                                                             "return.")
                         .toStdString(),
                     {},
                     QCoreApplication::translate("HandOver", "Give both days.").toStdString()};
    }
    HandOver out;
    out.journey = journey;
    out.today = now.localDate();
    out.call = callList(journey.phone);
    out.source = wording::handOverSource();
    out.deferral = wording::handOverDeferral();
    out.onReturn = wording::onReturnTexts();
    Preparer preparer(out);
    HandSplit split(row, journey, now);
    for (const record::Tank& tank : row.tanks) {
        const record::LayoutRecord* layout = split.layoutOf(tank.id);
        if (layout == nullptr) {
            continue;
        }
        const Teller teller(row, *layout, out, split.moment());
        HelperSheet sheet = teller.sheet(tank);
        preparer.look(teller, sheet);
        for (HandOverTask& task : split.tasksOf(*layout)) {
            task.tank = tank.name;
            if (task.hand == Hand::Helper) {
                giveToHelper(sheet, std::move(task));
            } else {
                (task.hand == Hand::Before ? out.before : out.after).push_back(std::move(task));
            }
        }
        for (const CallSign& sign : sheet.signs) {
            addOnce(sheet.cautions, sign.caution);
        }
        byDay(sheet.tasks);
        out.sheets.push_back(std::move(sheet));
    }
    for (HandOverTask& task : split.rowTasks()) {
        (task.hand == Hand::Before ? out.before : out.after).push_back(std::move(task));
    }
    preparer.finish();
    byDay(out.before);
    byDay(out.after);
    sumDays(out);
    return out;
}

const record::Journey* journeyAround(const record::Row& row, const QDate& today)
{
    constexpr int kLongPast = 30;
    const record::Journey* running = nullptr;
    const record::Journey* next = nullptr;
    const record::Journey* last = nullptr;
    for (const record::Journey& journey : row.journeys) {
        if (journey.leaves <= today && journey.returns >= today) {
            running = &journey;
        } else if (journey.leaves > today && (next == nullptr || journey.leaves < next->leaves)) {
            next = &journey;
        } else if (journey.returns < today && journey.returns.daysTo(today) <= kLongPast &&
                   (last == nullptr || journey.returns > last->returns)) {
            last = &journey;
        }
    }
    return running != nullptr ? running : next != nullptr ? next : last;
}

} // namespace littoral::facade
