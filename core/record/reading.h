// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/ids.h"
#include "core/record/moment.h"
#include "core/record/parameter.h"

#include "core/base/result.h"

#include <QDate>
#include <QString>
#include <vector>

namespace littoral::record {

enum class KitKind { Card, Drops, Strip, Digital };

/// The thing that took a reading, with its steps in the unit it prints.
struct TestKit
{
    KitId id;
    QString name;
    QString parameter; ///< key
    QString unit;      ///< code: the printed unit and its chemical basis
    KitKind kind = KitKind::Card;
    std::vector<double> steps; ///< ascending from 0; empty for digital and for whole drops
    bool readsNitriteToo = false;
    int waitMinutes = 0; ///< until the colour is read
    QString lot;
    QDate opened;
    QDate expires;
    QString note;
    bool retired = false;

    bool operator==(const TestKit&) const = default;
};

enum class Censoring { None, Below, Above, Between };

/// One measured value. `typed` is what the keeper wrote and is never lost; value, low and high are canonical units.
struct Reading
{
    ReadingId id;
    TankId tank;
    LayoutId layout;
    QString parameter; ///< key
    Moment at;
    QString typed; ///< "0.25", "<0.05", "5–10"
    QString unit;  ///< code as typed
    Censoring censoring = Censoring::None;
    /// The value; half the bound when Below (pH and temperature, where half means nothing: the bound); the bound when
    /// Above; the middle when Between.
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
    KitId kit;
    QString note;
    Moment enteredAt;

    bool operator==(const Reading&) const = default;
};

/// The meaning of what was typed, in the unit it was typed in.
struct TypedValue
{
    Censoring censoring = Censoring::None;
    double low = 0.0;
    double high = 0.0; ///< == low for None; the bound for Below (low 0) and Above (high == low)

    bool operator==(const TypedValue&) const = default;
};

/// Reads "0.25", "0,25", "<0.05", ">8", "5-10", "5–10", "5/10" (between two steps); spaces allowed. The error says what
/// was not understood. A comma is a decimal mark, but "1,250" is refused: it may be meant as a thousand.
[[nodiscard]] Result<TypedValue> parseTypedValue(const QString& text);

/// Fills typed, unit, censoring, value, low and high of `reading` from what was typed. Refuses a value that its
/// parameter cannot have, naming the unit (a wrong place of the decimal mark, a wrong basis).
[[nodiscard]] Result<void> setTypedValue(Reading& reading, const QString& typed, const QString& unitCode);

/// The value as people read it, in the parameter's shown unit, with '<' or a range where it was censored; no unit.
[[nodiscard]] QString valueText(const Reading& reading);

} // namespace littoral::record
