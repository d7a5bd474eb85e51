// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/bench_offers.h"

#include "core/sheets/text_input.h"
#include "ui/models/bench_list.h"
#include "ui/models/bench_sheet.h"

#include <QCoreApplication>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

QString words(const char* text)
{
    return QCoreApplication::translate("BenchOffers", text);
}

/// "32 mg/L (24–41)"; the problem when there is no result.
QString outcome(const BenchSheet& open)
{
    if (!open.answer()) {
        return open.problem();
    }
    const auto& results = open.answer()->results;
    const auto main = std::ranges::find_if(results, &sheets::Figure::main);
    if (main == results.end()) {
        return {};
    }
    const QString value = main->unit.isEmpty() ? main->text : words("%1 %2").arg(main->text, main->unit);
    return main->range.isEmpty() ? value : words("%1 (%2)").arg(value, main->range);
}

} // namespace

FindModel::Offer BenchOffers::withValues(const sheets::Sheet& sheet, const QString& text, const record::Row& row,
                                         record::TankId tank, const record::Moment& now) const
{
    const auto request = sheets::parseLine(text);
    if (!request) {
        return {words("Worksheet"), words("%1: %2").arg(sheet.title, QString::fromStdString(request.error().what)),
                QString::fromStdString(request.error().mend), [open = m_open, key = sheet.key] { open(key, {}); }};
    }
    BenchSheet filled(sheet, tank);
    QMap<QString, QString> typed;
    for (auto it = request->values.cbegin(); it != request->values.cend(); ++it) {
        typed.insert(it.key(), typedText(it.value()));
        filled.type(it.key(), typedText(it.value()));
    }
    filled.refresh(row, now);
    return {words("Worksheet"), words("%1: %2").arg(sheet.title, outcome(filled)), sheet.key,
            [open = m_open, key = sheet.key, typed] { open(key, typed); }};
}

std::vector<FindModel::Offer> BenchOffers::offers(const QString& text, const record::Row& row, record::TankId tank,
                                                  const record::Moment& now) const
{
    std::vector<FindModel::Offer> found;
    const QString wanted = text.simplified();
    if (wanted.isEmpty()) {
        return found;
    }
    const sheets::Sheet* named = sheets::findSheet(wanted.section(u' ', 0, 0));
    if (named != nullptr) {
        found.push_back(withValues(*named, wanted, row, tank, now));
    }
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        if (&sheet != named && beginsWords(u"%1 %2"_s.arg(sheet.title, sheet.key), wanted)) {
            found.push_back(
                {words("Worksheet"), sheet.title, sheet.key, [open = m_open, key = sheet.key] { open(key, {}); }});
        }
    }
    const QString plan = QCoreApplication::translate("littoral::ui::BenchListModel", "The coming two weeks");
    if (beginsWords(plan, wanted)) {
        found.push_back({words("Worksheet"), plan, {}, [open = m_open] { open(QString::fromUtf16(kRowPlanKey), {}); }});
    }
    return found;
}

} // namespace littoral::ui
