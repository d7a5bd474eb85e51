// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/entry_kinds.h"

#include "core/record/shown.h"

#include <QCoreApplication>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("EntryForm", text);
}

EntryForm feeding()
{
    EntryForm form;
    form.amount = words("Fed from now on, a day");
    form.unit = words("Unit");
    form.unitProposed = u"g/d"_s;
    form.protein = true;
    return form;
}

EntryForm animals(bool in)
{
    EntryForm form;
    form.subject = in ? words("What went in") : words("What was lost");
    form.count = true;
    form.load = in;
    return form;
}

EntryForm gas()
{
    EntryForm form;
    form.subject = words("What was set, and what the indicator shows");
    form.amount = words("CO₂ held, %1").arg(record::findParameter(u"co2"_s)->shown().label);
    form.second = words("Hours a day");
    return form;
}

} // namespace

EntryForm entryForm(record::EntryKind kind)
{
    EntryForm form;
    switch (kind) {
    case record::EntryKind::WaterChange:
        form.fraction = form.litres = form.source = true;
        break;
    case record::EntryKind::TopUp:
        form.amount = words("Topped up, %1").arg(record::volumeMeasure(record::shownUnits()).label);
        form.source = true;
        break;
    case record::EntryKind::Dose:
        form.subject = words("What was dosed");
        form.amount = words("Amount");
        form.unit = words("Unit");
        form.unitProposed = u"mL"_s;
        break;
    case record::EntryKind::Feeding:
        return feeding();
    case record::EntryKind::Upkeep:
        form.subject = words("What was done");
        break;
    case record::EntryKind::Observation:
        form.subject = words("What was seen");
        form.severity = form.coverage = form.where = true;
        break;
    case record::EntryKind::Addition:
        return animals(true);
    case record::EntryKind::Loss:
        return animals(false);
    case record::EntryKind::MediaTransfer:
        form.subject = words("Media or squeezings");
        form.fraction = form.otherTank = true;
        break;
    case record::EntryKind::LightChange:
        form.subject = words("What was set");
        form.amount = words("Light, hours a day");
        form.second = words("At the bed, µmol/m²/s");
        break;
    case record::EntryKind::Co2Change:
        return gas();
    case record::EntryKind::Note:
        form.subject = words("Title");
        break;
    }
    return form;
}

} // namespace littoral::ui
