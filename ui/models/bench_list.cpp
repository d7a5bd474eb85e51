// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/bench_list.h"

#include "core/sheets/sheet.h"
#include "ui/models/find_model.h"

#include <QMap>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using facade::Glyph;

namespace {

Glyph glyphOf(const QString& sheet)
{
    static const QMap<QString, Glyph> glyphs{
        {u"volume"_s, Glyph::Note},         {u"change"_s, Glyph::WaterChange},
        {u"changes"_s, Glyph::WaterChange}, {u"target"_s, Glyph::WaterChange},
        {u"topup"_s, Glyph::TopUp},         {u"ammonia"_s, Glyph::Test},
        {u"nitrite"_s, Glyph::Test},        {u"co2"_s, Glyph::Co2},
        {u"light"_s, Glyph::Light},         {u"cylinder"_s, Glyph::Cylinder},
        {u"dose"_s, Glyph::Dose},           {u"salt"_s, Glyph::Dose},
        {u"stock"_s, Glyph::Dose},          {u"accumulate"_s, Glyph::Media},
        {u"raise"_s, Glyph::Dose},          {u"acclimate"_s, Glyph::In},
        {u"stocking"_s, Glyph::Feed},       {u"oxygen"_s, Glyph::Observation},
        {u"chlorine"_s, Glyph::TopUp},      {u"dip"_s, Glyph::Upkeep},
        {u"remineralise"_s, Glyph::Dose},   {u"blend"_s, Glyph::WaterChange},
    };
    return glyphs.value(sheet, Glyph::Note);
}

bool answers(const QString& filter, const QString& key, const QString& title, const QString& purpose)
{
    return filter.isEmpty() || beginsWords(u"%1 %2 %3"_s.arg(title, purpose, key), filter);
}

} // namespace

BenchListModel::BenchListModel(QObject* parent)
    : QAbstractListModel(parent)
{
    filter({});
}

void BenchListModel::filter(const QString& text)
{
    const QString wanted = text.simplified();
    beginResetModel();
    m_lines.clear();
    const QString key = QString::fromUtf16(kRowPlanKey);
    const QString title = tr("The coming two weeks");
    const QString purpose = tr("water, conditioner and demineralised water for the whole row");
    if (answers(wanted, key, title, purpose)) {
        m_lines.push_back({{}, tr("Row"), {}, {}});
        m_lines.push_back({key, title, purpose, Glyph::WaterChange});
    }
    // Sheets of one group stand together even where their families do not.
    QStringList groups;
    for (const sheets::Sheet& sheet : sheets::sheets()) {
        if (!groups.contains(sheet.group)) {
            groups << sheet.group;
        }
    }
    for (const QString& group : groups) {
        bool first = true;
        for (const sheets::Sheet& sheet : sheets::sheets()) {
            if (sheet.group != group || !answers(wanted, sheet.key, sheet.title, sheet.purpose)) {
                continue;
            }
            if (first) {
                m_lines.push_back({{}, group, {}, {}});
                first = false;
            }
            m_lines.push_back({sheet.key, sheet.title, sheet.purpose, glyphOf(sheet.key)});
        }
    }
    endResetModel();
}

int BenchListModel::rowOf(const QString& key) const
{
    const auto found = std::ranges::find(m_lines, key, &Line::key);
    return key.isEmpty() || found == m_lines.end() ? -1 : static_cast<int>(found - m_lines.begin());
}

int BenchListModel::firstSheet() const
{
    const auto found = std::ranges::find_if(m_lines, [](const Line& line) { return !line.key.isEmpty(); });
    return found == m_lines.end() ? -1 : static_cast<int>(found - m_lines.begin());
}

int BenchListModel::sheetCount() const
{
    return static_cast<int>(std::ranges::count_if(m_lines, [](const Line& line) { return !line.key.isEmpty(); }));
}

int BenchListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant BenchListModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return line.text;
    case KeyRole:
        return line.key;
    case PurposeRole:
    case Qt::ToolTipRole:
        return line.purpose;
    case GlyphRole:
        return static_cast<int>(line.glyph);
    case Qt::AccessibleTextRole:
        return line.key.isEmpty() ? tr("Group %1").arg(line.text) : tr("%1: %2").arg(line.text, line.purpose);
    default:
        return {};
    }
}

Qt::ItemFlags BenchListModel::flags(const QModelIndex& index) const
{
    const bool sheet = !index.data(KeyRole).toString().isEmpty();
    return sheet ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags;
}

} // namespace littoral::ui
