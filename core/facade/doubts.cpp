// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/facade/doubts.h"

#include "core/record/parameter.h"
#include "core/wording/forecast_sentences.h"

#include <algorithm>
#include <array>

namespace littoral::facade {

using namespace Qt::StringLiterals;

namespace {

QString kitName(const ForecastCase& inputs, int kit)
{
    const auto place = static_cast<std::size_t>(std::max(kit, 0));
    if (place < inputs.kits.size() && !inputs.kits[place].name.isEmpty()) {
        return inputs.kits[place].name;
    }
    static const std::array<QString, 3> keys{u"tan"_s, u"no2"_s, u"no3"_s};
    const auto substance = static_cast<std::size_t>(inputs.request.tank.kits[place].substance);
    const record::Parameter* parameter = record::findParameter(keys[std::min(substance, keys.size() - 1)]);
    return parameter == nullptr ? QString() : parameter->name;
}

} // namespace

QStringList causeSentences(const ForecastCase& inputs, const std::vector<forecast::Explanation>& causes,
                           const QDate& today)
{
    QStringList sentences;
    for (const forecast::Explanation& cause : causes) {
        const QString kit = cause.cause == forecast::Cause::UnloggedChange ? QString() : kitName(inputs, cause.kit);
        sentences << wording::causeText(cause, kit, inputs.flooded, today);
    }
    return sentences;
}

} // namespace littoral::facade
