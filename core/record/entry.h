// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/ids.h"
#include "core/record/moment.h"

#include <QByteArray>
#include <QDate>
#include <QString>
#include <optional>

namespace littoral::record {

enum class EntryKind {
    WaterChange,   ///< fraction of the net volume; source
    TopUp,         ///< amount in litres; not a change
    Dose,          ///< subject: "ammonia" (amount mg/L N), "starter" (amount label doses) or a supply; amount + unit
    Feeding,       ///< the daily feed from now on: amount + unit ("g/d", with proteinShare, or "mg/L/d N")
    Upkeep,        ///< subject: what was done (trim, filter-service, glass, prefilter ...)
    Observation,   ///< subject: what was seen; severity 0-4, coverage, where
    Addition,      ///< animals or plants in: subject, count, load
    Loss,          ///< subject, count
    MediaTransfer, ///< subject "media" or "squeezings"; fraction of a whole filter; otherTank
    LightChange,   ///< amount: hours; second: PAR
    Co2Change,     ///< amount: target mg/L; second: hours a day
    Note,
};

/// One dated thing that was done, seen or is planned. Which fields count depends on the kind.
struct Entry
{
    EntryId id;
    TankId tank;
    LayoutId layout;
    EntryKind kind = EntryKind::Note;
    Moment at;
    bool planned = false;                  ///< meant for later, not done
    std::optional<Moment> plannedFor;      ///< when it was planned for, kept after it is done
    std::optional<double> plannedFraction; ///< what fraction was planned, kept after it is done
    QString subject;
    std::optional<double> fraction; ///< 0..1: water change, media share
    std::optional<double> amount;
    QString unit;
    std::optional<double> second;       ///< the kind's second number (PAR, hours)
    std::optional<double> proteinShare; ///< of the feed, 0..1
    std::optional<int> count;
    std::optional<double> load_mgN_per_L_d; ///< what added animals excrete, if known
    std::optional<int> severity;            ///< 0 gone, 1 trace, 2 clear, 3 heavy, 4 out of hand
    std::optional<double> coverage;         ///< 0..1
    QString where;
    SourceWaterId source;
    TankId otherTank;
    QString note;
    Moment enteredAt;

    bool operator==(const Entry&) const = default;
};

/// A photograph as a bounded copy: JPEG, no side over kPhotoSide pixels.
struct Photo
{
    static constexpr int kPhotoSide = 1600;
    PhotoId id;
    TankId tank;
    LayoutId layout;
    Moment at;
    QByteArray jpeg;
    int width = 0;
    int height = 0;
    QString note;

    bool operator==(const Photo&) const = default;
};

/// Something kept in stock.
struct Supply
{
    SupplyId id;
    QString name;
    QString kind; ///< conditioner, salt, starter, fertiliser, co2, kit, other
    std::optional<double> amount;
    QString unit;
    QDate opened;
    QDate expires;
    QString lot;
    QString note;

    bool operator==(const Supply&) const = default;
};

[[nodiscard]] QString entryKindCode(EntryKind kind); ///< as in files: "water-change" ...
[[nodiscard]] std::optional<EntryKind> entryKindFromCode(const QString& code);
[[nodiscard]] QString entryKindName(EntryKind kind); ///< for people, translated

} // namespace littoral::record
