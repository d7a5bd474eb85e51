// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/first_run/first_tank.h"

#include "core/care/due.h"
#include "core/wording/numbers.h"
#include "ui/models/day_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

struct Choice
{
    const char* words;
    record::StartMethod start;
    record::Bed bed;
};

constexpr std::array kChoices{
    Choice{QT_TRANSLATE_NOOP("FirstTank", "All-new media, ammonia-rich soil"), record::StartMethod::NewMedia,
           record::Bed::RichSoil},
    Choice{QT_TRANSLATE_NOOP("FirstTank", "All-new media, sand or gravel"), record::StartMethod::NewMedia,
           record::Bed::Inert},
    Choice{QT_TRANSLATE_NOOP("FirstTank", "Mature media from a running filter"), record::StartMethod::MatureMedia,
           record::Bed::RichSoil},
    Choice{QT_TRANSLATE_NOOP("FirstTank", "Bottled starter"), record::StartMethod::Starter, record::Bed::RichSoil},
    Choice{QT_TRANSLATE_NOOP("FirstTank", "Dry start, flooded after rooting"), record::StartMethod::DryStart,
           record::Bed::RichSoil},
    Choice{QT_TRANSLATE_NOOP("FirstTank", "Dark start, planted later"), record::StartMethod::DarkStart,
           record::Bed::RichSoil},
    Choice{QT_TRANSLATE_NOOP("FirstTank", "Running already"), record::StartMethod::MatureMedia, record::Bed::SpentSoil},
};

QString words(const char* text)
{
    return QCoreApplication::translate("FirstTank", text);
}

const Choice& choiceOf(int index)
{
    return kChoices[static_cast<std::size_t>(std::clamp(index, 0, static_cast<int>(kChoices.size()) - 1))];
}

} // namespace

QStringList startChoices()
{
    QStringList all;
    for (const Choice& choice : kChoices) {
        all << words(choice.words);
    }
    return all;
}

double proposedBed_cm(double height_cm)
{
    return std::min(5.0, 0.15 * height_cm);
}

record::Tank tankOf(const FirstTank& given)
{
    record::Tank tank;
    tank.name = given.name.trimmed();
    tank.length_cm = given.length_cm;
    tank.depth_cm = given.depth_cm;
    tank.height_cm = given.height_cm;
    return tank;
}

record::Layout layoutOf(const FirstTank& given)
{
    record::Layout layout;
    layout.flooded = given.flooded;
    layout.start = choiceOf(given.start).start;
    layout.bed = choiceOf(given.start).bed;
    const double glass = record::Tank{}.glass_mm / 10.0;
    const double inside = (given.length_cm - 2 * glass) * (given.depth_cm - 2 * glass);
    layout.bed_L = std::round(std::max(0.0, inside) * proposedBed_cm(given.height_cm) / 100.0) / 10.0;
    return layout;
}

QString proposedWork(const record::Tank& tank, const record::Layout& layout, const record::Moment& now)
{
    record::Row row;
    record::Tank copy = tank;
    copy.id = {1};
    record::LayoutRecord record;
    record.layout = layout;
    record.layout.id = {1};
    record.layout.tank = copy.id;
    row.tanks.push_back(copy);
    row.layouts.emplace(record.layout.id, record);
    int changes = 0;
    double fraction = 0.0;
    QDate first;
    std::set<QDate> testDays;
    QStringList tested;
    for (const care::DueItem& item : care::dueWork(row, {1}, now, now.localDate().addDays(6))) {
        if (item.kind == care::WorkKind::WaterChange && item.fraction) {
            ++changes;
            fraction = std::max(fraction, *item.fraction);
            first = first.isValid() ? first : item.due;
        } else if (item.kind == care::WorkKind::Test) {
            testDays.insert(item.due);
            for (const QString& key : item.parameters) {
                const record::Parameter* parameter = record::findParameter(key);
                if (parameter != nullptr && !tested.contains(parameter->symbol)) {
                    tested << parameter->symbol;
                }
            }
        }
    }
    if (changes == 0 && tested.isEmpty()) {
        return {};
    }
    const QString part = wording::percentText(fraction);
    const QString changeText =
        changes == 1 ? words("one water change of %1, on %2").arg(part, wording::dateText(first, now.localDate()))
                     : words("%1 water changes of up to %2, the first on %3")
                           .arg(QString::number(changes), part, wording::dateText(first, now.localDate()));
    const QString what = QLocale().createSeparatedList(tested);
    const QString testText = testDays.size() == 1
                                 ? words("tests of %1 on one day").arg(what)
                                 : words("tests of %1 on %2 days").arg(what, QString::number(testDays.size()));
    if (tested.isEmpty()) {
        return words("Proposed for the first week: %1.").arg(changeText);
    }
    return changes == 0 ? words("Proposed for the first week: %1.").arg(testText)
                        : words("Proposed for the first week: %1; %2.").arg(changeText, testText);
}

} // namespace littoral::ui
