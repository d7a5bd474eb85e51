// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/find_model.h"

#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "ui/models/day_words.h"

#include <algorithm>

namespace littoral::ui {

namespace {
constexpr std::size_t kMostEntries = 8;
constexpr std::size_t kMostFound = 24;
} // namespace

bool beginsWords(const QString& text, const QString& wanted)
{
    const QStringList words = text.split(u' ', Qt::SkipEmptyParts);
    const QStringList parts = wanted.split(u' ', Qt::SkipEmptyParts);
    return std::ranges::all_of(parts, [&](const QString& part) {
        return std::ranges::any_of(words,
                                   [&](const QString& word) { return word.startsWith(part, Qt::CaseInsensitive); });
    });
}

FindModel::FindModel(facade::Keeper& keeper, QObject* parent)
    : QAbstractListModel(parent)
    , m_keeper(keeper)
{
}

void FindModel::findTanks(const QString& text)
{
    for (const record::Tank& tank : m_keeper.row().tanks) {
        if (!text.isEmpty() && beginsWords(tank.name, text)) {
            m_found.push_back({tr("Tank"), tank.name, {}, [this, id = tank.id] { emit tankChosen(id); }});
        }
    }
}

void FindModel::findEntries(const QString& text)
{
    if (text.size() < 2) {
        return;
    }
    struct Hit
    {
        const record::Entry* entry;
        QString sentence;
    };
    std::vector<Hit> hits;
    for (const auto& [id, layout] : m_keeper.row().layouts) {
        const record::Tank* tank = m_keeper.row().tank(layout.layout.tank);
        for (const record::Entry& entry : layout.entries) {
            const QString sentence =
                tank == nullptr ? wording::entryText(entry) : tr("%1: %2").arg(tank->name, wording::entryText(entry));
            if (sentence.contains(text, Qt::CaseInsensitive)) {
                hits.push_back({&entry, sentence});
            }
        }
    }
    const std::size_t kept = std::min(kMostEntries, hits.size());
    std::ranges::partial_sort(hits, hits.begin() + static_cast<std::ptrdiff_t>(kept),
                              [](const Hit& a, const Hit& b) { return b.entry->at < a.entry->at; });
    hits.resize(kept);
    const QDate today = m_keeper.clock().today();
    for (const Hit& hit : hits) {
        m_found.push_back({tr("Entry"), hit.sentence, wording::dateText(hit.entry->at.localDate(), today),
                           [this, id = hit.entry->id] { emit entryChosen(id); }});
    }
}

void FindModel::search(const QString& text)
{
    const QString wanted = text.simplified();
    beginResetModel();
    m_found.clear();
    if (m_answers) {
        m_found = m_answers(wanted);
    }
    findTanks(wanted);
    if (m_offers) {
        for (Offer& offer : m_offers()) {
            if (wanted.isEmpty() || beginsWords(offer.text, wanted)) {
                m_found.push_back(std::move(offer));
            }
        }
    }
    findEntries(wanted);
    if (m_found.size() > kMostFound) {
        m_found.resize(kMostFound);
    }
    endResetModel();
}

void FindModel::choose(int row)
{
    if (row >= 0 && row < rowCount()) {
        const std::function<void()> run =
            m_found[static_cast<std::size_t>(row)].run; // the list may change while it runs
        run();
    }
}

int FindModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_found.size());
}

QVariant FindModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    const Offer& offer = m_found[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return offer.text;
    case GroupRole:
        return offer.group;
    case HintRole:
        return offer.hint;
    case Qt::AccessibleTextRole:
        return offer.hint.isEmpty() ? tr("%1: %2").arg(offer.group, offer.text)
                                    : tr("%1: %2, %3").arg(offer.group, offer.text, offer.hint);
    default:
        return {};
    }
}

} // namespace littoral::ui
