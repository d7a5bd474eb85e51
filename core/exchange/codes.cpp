// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/codes.h"

namespace littoral::exchange {

using namespace Qt::StringLiterals;

namespace {

/// In the order of the enumerations, which the tests hold them to.
template <typename T> const QStringList& table();

template <> const QStringList& table<record::StartMethod>()
{
    static const QStringList words{u"new-media"_s, u"mature-media"_s, u"starter"_s, u"dry-start"_s, u"dark-start"_s};
    return words;
}

template <> const QStringList& table<record::Bed>()
{
    static const QStringList words{u"rich-soil"_s, u"mild-soil"_s, u"spent-soil"_s, u"inert"_s};
    return words;
}

template <> const QStringList& table<record::PlantDensity>()
{
    static const QStringList words{u"none"_s, u"sparse"_s, u"medium"_s, u"dense"_s};
    return words;
}

template <> const QStringList& table<record::Co2Mode>()
{
    static const QStringList words{u"none"_s, u"pressurised"_s, u"other"_s};
    return words;
}

template <> const QStringList& table<record::YesNoUnknown>()
{
    static const QStringList words{u"no"_s, u"unknown"_s, u"yes"_s};
    return words;
}

template <> const QStringList& table<record::SourceKind>()
{
    static const QStringList words{u"tap"_s, u"reverse-osmosis"_s, u"blend"_s, u"rain"_s};
    return words;
}

template <> const QStringList& table<record::KitKind>()
{
    static const QStringList words{u"card"_s, u"drops"_s, u"strip"_s, u"digital"_s};
    return words;
}

template <> const QStringList& table<record::TaskState>()
{
    static const QStringList words{u"open"_s, u"done"_s, u"skipped"_s};
    return words;
}

template <> const QStringList& table<record::DoseForm>()
{
    static const QStringList words{u"salt"_s, u"stock"_s, u"fertiliser"_s};
    return words;
}

template <typename T> QString wordOf(T value)
{
    return table<T>().value(static_cast<qsizetype>(value));
}

} // namespace

QString code(record::StartMethod value)
{
    return wordOf(value);
}

QString code(record::Bed value)
{
    return wordOf(value);
}

QString code(record::PlantDensity value)
{
    return wordOf(value);
}

QString code(record::Co2Mode value)
{
    return wordOf(value);
}

QString code(record::YesNoUnknown value)
{
    return wordOf(value);
}

QString code(record::SourceKind value)
{
    return wordOf(value);
}

QString code(record::KitKind value)
{
    return wordOf(value);
}

QString code(record::TaskState value)
{
    return wordOf(value);
}

QString code(record::DoseForm value)
{
    return wordOf(value);
}

namespace {

const QStringList& weekdayWords()
{
    static const QStringList words{u"mon"_s, u"tue"_s, u"wed"_s, u"thu"_s, u"fri"_s, u"sat"_s, u"sun"_s};
    return words;
}

} // namespace

QStringList weekdayCodes(int days)
{
    QStringList set;
    for (int i = 0; i < static_cast<int>(weekdayWords().size()); ++i) {
        if ((days & (1 << i)) != 0) {
            set << weekdayWords()[i];
        }
    }
    return set;
}

std::optional<int> weekdayFromCode(const QString& word)
{
    const auto place = weekdayWords().indexOf(word.toLower());
    return place < 0 ? std::nullopt : std::optional(1 << static_cast<int>(place));
}

template <typename T> std::optional<T> fromCode(const QString& word)
{
    const qsizetype index = table<T>().indexOf(word.trimmed().toLower());
    return index < 0 ? std::nullopt : std::optional(static_cast<T>(index));
}

template <typename T> QStringList codes()
{
    return table<T>();
}

template std::optional<record::StartMethod> fromCode(const QString&);
template std::optional<record::Bed> fromCode(const QString&);
template std::optional<record::PlantDensity> fromCode(const QString&);
template std::optional<record::Co2Mode> fromCode(const QString&);
template std::optional<record::YesNoUnknown> fromCode(const QString&);
template std::optional<record::SourceKind> fromCode(const QString&);
template std::optional<record::KitKind> fromCode(const QString&);
template std::optional<record::TaskState> fromCode(const QString&);
template std::optional<record::DoseForm> fromCode(const QString&);
template QStringList codes<record::StartMethod>();
template QStringList codes<record::Bed>();
template QStringList codes<record::PlantDensity>();
template QStringList codes<record::Co2Mode>();
template QStringList codes<record::YesNoUnknown>();
template QStringList codes<record::SourceKind>();
template QStringList codes<record::KitKind>();
template QStringList codes<record::TaskState>();
template QStringList codes<record::DoseForm>();

} // namespace littoral::exchange
