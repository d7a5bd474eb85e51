// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/shown.h"
#include "core/sheets/families.h"
#include "core/sheets/text_input.h"

#include <algorithm>
#include <iterator>

namespace littoral::sheets {

const std::vector<Sheet>& sheets()
{
    static record::PerLanguage<std::vector<Sheet>> all([] {
        std::vector<Sheet> made;
        for (const auto& family :
             {volumeSheets, changeSheets, sourceSheets, evaporationSheets, nitrogenSheets, co2Sheets, dosingSheets,
              mineralSheets, rockSheets, energySheets, animalSheets, oxygenSheets, hygieneSheets}) {
            std::ranges::move(family(), std::back_inserter(made));
        }
        return made;
    });
    return all.get();
}

const Sheet* findSheet(const QString& key)
{
    const auto found =
        std::ranges::find_if(sheets(), [&](const Sheet& s) { return s.key.compare(key, Qt::CaseInsensitive) == 0; });
    return found == sheets().end() ? nullptr : &*found;
}

Answer exampleOf(const Sheet& sheet)
{
    const auto request = parseLine(sheet.key + u' ' + sheet.example);
    const auto answer = request ? evaluate(sheet, request->values) : Result<Answer>(request.error());
    return answer ? *answer : Answer{};
}

} // namespace littoral::sheets
