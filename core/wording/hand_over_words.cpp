// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/wording/hand_over_words.h"

#include "core/care/limits.h"
#include "core/wording/numbers.h"

#include <QCoreApplication>
#include <array>

namespace littoral::wording {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("HandOver", text);
}

struct Said
{
    QLatin1String key;
    const char* text;
};

constexpr std::array kPreparations{
    Said{QLatin1String("no-additions"),
         QT_TRANSLATE_NOOP("HandOver",
                           "No new animals: what they bring shows in the days after, when nobody is there.")},
    Said{QLatin1String("no-settings"),
         QT_TRANSLATE_NOOP("HandOver", "CO₂ and light stay as they are, but for the small cut on the day of leaving.")},
    Said{QLatin1String("service"),
         QT_TRANSLATE_NOOP("HandOver", "Filters that need it are serviced now and not later: the readings of the days "
                                       "after tell whether it went well.")},
    Said{QLatin1String("packets"),
         QT_TRANSLATE_NOOP("HandOver", "Weigh the food out into packets with the date on them. Grown fish in good "
                                       "condition go without for two to five days.")},
    Said{QLatin1String("walk-through"),
         QT_TRANSLATE_NOOP("HandOver",
                           "Walk through every sheet with the helper at the tanks, mark water lines, valves "
                           "and switches, and let the air pump run once.")},
    Said{QLatin1String("light"), QT_TRANSLATE_NOOP("HandOver", "Shorten the light by an hour.")},
    Said{QLatin1String("gas"),
         QT_TRANSLATE_NOOP("HandOver",
                           "Lower the CO₂ by a tenth, and see that the cylinder lasts well past the return.")},
    Said{QLatin1String("dose"),
         QT_TRANSLATE_NOOP("HandOver", "Halve the fertiliser of the last dose; nobody doses while you are away.")},
    Said{QLatin1String("young"),
         QT_TRANSLATE_NOOP("HandOver",
                           "Younger than four weeks: better not left. If it must be, one named person makes "
                           "exactly the changes of the sheet.")},
};

QString line(const QStringList& names)
{
    return names.join(words(", "));
}

} // namespace

QString journeyTitle(const record::Journey& journey, const QDate& today)
{
    const QString days = dateRangeText(journey.leaves, journey.returns, today);
    return journey.helper.isEmpty() ? days : words("%1, %2").arg(days, journey.helper);
}

QString handOpenNowText()
{
    return words("It is open now.");
}

QString handOnLeavingText()
{
    return words("It falls on the day of leaving.");
}

QString handBroughtForwardText(const QDate& due, const QDate& today)
{
    return words("It falls on %1, is no work for a helper and cannot wait.").arg(weekdayText(due, today));
}

QString handServiceText(const QDate& due, const QDate& today)
{
    return words("It falls on %1. Done now there is time to see that the filter has taken it well.")
        .arg(weekdayText(due, today));
}

QString handChangeFirstText(const QDate& due, const QDate& today)
{
    return words("It falls on %1; changed on the day of leaving the tank stands longest without one.")
        .arg(weekdayText(due, today));
}

QString handHelperText(const QDate& overdueFrom, const QDate& today)
{
    return words("It cannot wait: overdue from %1.").arg(weekdayText(overdueFrom, today));
}

QString handWaitsText(const QDate& mayWaitUntil, const QDate& today)
{
    return words("It may wait until %1.").arg(weekdayText(mayWaitUntil, today));
}

QString handNotEnteredText()
{
    return words("It was not entered for this tank so far; it can wait.");
}

QString handGivesWayText()
{
    return words("A round left out gives way to the next one.");
}

QString handLateText(int daysOver)
{
    return words("No work for a helper and not to be brought forward: %1 on the return.").arg(overText(daysOver));
}

QString changeAmountText(double litres, const QString& source)
{
    const QString amount = litresText(litres);
    return source.isEmpty() ? words("%1 out, %1 in.").arg(amount)
                            : words("%1 out, %1 of \"%2\" in.").arg(amount, source);
}

QString changeShareText(double fraction)
{
    return words("%1 of the water; the litres of this tank are not known, so mark the line on the glass.")
        .arg(percentText(fraction));
}

QString readingsAmountText(const QStringList& parameters)
{
    QStringList names;
    for (const QString& key : parameters) {
        names << parameterName(key);
    }
    return words("To write down: %1.").arg(line(names));
}

QString preparationText(const QString& key)
{
    for (const Said& said : kPreparations) {
        if (key == said.key) {
            return words(said.text);
        }
    }
    return {};
}

QString additionNearText(const QString& subject, const QDate& day, const QDate& today)
{
    return words("%1: in on %2.").arg(subject, weekdayText(day, today));
}

QString serviceNearText(const QDate& day, const QDate& today)
{
    return words("Serviced on %1, too near the journey to see how the filter took it.").arg(weekdayText(day, today));
}

QString settingNearText(const QDate& day, const QDate& today)
{
    return words("Changed on %1.").arg(weekdayText(day, today));
}

QString animalsKnownText(const QStringList& animals)
{
    return words("Animals: %1.").arg(line(animals));
}

QString noAnimalsText()
{
    return words("No animals are in it.");
}

QString temperatureKnownText(double low_C, double high_C)
{
    return words("Water between %1 and %2 °C.").arg(numberText(low_C, 0), numberText(high_C, 0));
}

QString lightKnownText(double hours)
{
    return words("Light %1 hours a day, by its timer.")
        .arg(numberText(hours, hours == static_cast<int>(hours) ? 0 : 1));
}

QString gasKnownText(double hours)
{
    return words("CO₂ %1 hours a day, by its timer; small bubbles rise while it is on.")
        .arg(numberText(hours, hours == static_cast<int>(hours) ? 0 : 1));
}

QStringList dailyTexts(bool animals, const QString& feed)
{
    QStringList lines{
        words("Look for a minute before anything is touched: the filter runs, the floor is dry, the water "
              "stands at its mark, the thermometer shows what it should.")};
    if (animals) {
        lines << words("Animals: are they there, do they breathe calmly, do they come to food?")
              << (feed.isEmpty() ? words("Feed the packet of the day. No packet, no food.")
                                 : words("Feed the packet of the day (%1). No packet, no food.").arg(feed));
    }
    return lines;
}

QStringList doNotTexts(bool animals, bool gas)
{
    QStringList lines;
    if (animals) {
        lines << words("No food beyond the packets, also when they beg.");
    }
    lines << words("No fertiliser, no medicine, nothing out of a bottle that this sheet does not name.")
          << words("Do not open or clean the filter.")
          << words("No new animals or plants, and none from one tank into another.")
          << words("Do not turn heater, lamp or timers.");
    if (gas) {
        lines << words("Do not turn the CO₂ up. Close its valve only where this sheet says so.");
    }
    lines << words("No hand in the water while plugs are in their sockets.")
          << words("Net, bucket and pad stay with their tank.")
          << words("Nothing out of a tank goes into drains, ponds or streams.");
    return lines;
}

QStringList onReturnTexts()
{
    return {words("Count the animals and watch them feed."),
            words("Read ammonia, nitrite, pH and temperature in every tank before the first change."),
            words("Look at flow, gas, water lines, hoses and the floor under them."),
            words("Hold the readings against what was forecast for the days away."),
            words("Type in what the helper did, on the days it was done."),
            words("Bring light, CO₂ and dose back in steps, not on the first evening.")};
}

std::vector<CallSignWords> callSigns(bool animals, bool gas, const care::Limits& limits)
{
    const QString call = words("Call.");
    std::vector<CallSignWords> signs;
    if (animals) {
        QStringList steps;
        if (gas) {
            steps << words("Close the valve of the CO₂ cylinder.");
        }
        steps << words("Switch on the air pump, or lift the outlet until the surface moves.") << call;
        signs.push_back({words("Fish hang at the surface or breathe fast, shrimp climb to the water line."), steps,
                         gas ? u"C-CO2"_s : u"C-O2"_s});
    }
    signs.push_back({words("Water on the floor, or a water line that falls."),
                     {words("Touch no wet plug or strip. Cut the power at the board, with dry hands on a dry floor."),
                      words("Close the valves that are marked on the hoses."), call},
                     u"C-ELEC"_s});
    signs.push_back({words("Water or metal tingles."),
                     {words("Hand away, touch nothing more; cut the power at the board."), call},
                     u"C-ELEC"_s});
    signs.push_back({words("The filter is silent or its outlet stands still."),
                     {words("Switch on the air pump."),
                      words("After an hour or more do not start it again: what stands in it has gone foul."), call},
                     u"C-O2"_s});
    QStringList cut{words("Battery air pump into the tank with most animals first.")};
    if (gas) {
        cut << words("Close the valve of the CO₂ cylinder.");
    }
    cut << words("No food.") << words("After an hour: call.");
    signs.push_back({words("The power is out."), cut, u"C-O2"_s});
    signs.push_back(
        {words("The water is over %1 or under %2 °C.").arg(numberText(limits.warm_C, 0), numberText(limits.cool_C, 0)),
         {words("Add neither ice nor hot water."), call},
         u"C-ELEC"_s});
    if (animals) {
        signs.push_back({words("An animal lies dead, or is missing for two days."),
                         {words("Take it out with the net of this tank, gloves on; wrap it and keep it cold."),
                          words("Count the others and take a picture of them."), call},
                         u"C-HANDS"_s});
    }
    signs.push_back({words("The water is white, or smells of rot or of bad eggs."),
                     {words("No food. Switch on the air pump."), words("Take a picture."), call},
                     u"C-H2S"_s});
    if (gas) {
        signs.push_back({words("The gas alarm sounds, or you feel dizzy in the room."),
                         {words("Go out at once and leave the door open; nobody goes in after you without air."),
                          words("Call the emergency number of the place, then the keeper.")},
                         u"C-CO2"_s});
    }
    return signs;
}

QString callLine(const QString& phone)
{
    return words("Call %1.").arg(phone);
}

QString noPhoneLine()
{
    return words("No number has been entered.");
}

QString professionalLine()
{
    return words("Sick animals are for a veterinarian or a fish-health professional: no medicine before their word.");
}

QString handOverSource()
{
    return words("Common practice, to be judged by the keeper.");
}

QString handOverDeferral()
{
    return words(
        "Where a label, a local rule or somebody licensed for the work says otherwise, that counts and not this "
        "sheet.");
}

} // namespace littoral::wording
