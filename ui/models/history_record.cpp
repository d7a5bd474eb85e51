// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/history_record.h"

#include "core/facade/lane_parts.h"
#include "core/wording/entry_words.h"
#include "core/wording/numbers.h"
#include "ui/models/entries_model.h"

#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

HistoryRecord::Kind kindOf(const record::Entry& entry)
{
    switch (entry.kind) {
    case record::EntryKind::WaterChange:
    case record::EntryKind::TopUp:
        return HistoryRecord::Kind::Changes;
    case record::EntryKind::Observation:
    case record::EntryKind::Loss:
    case record::EntryKind::Note:
        return HistoryRecord::Kind::Seen;
    default:
        return HistoryRecord::Kind::Done;
    }
}

} // namespace

void HistoryRecord::setRecord(const record::Row& row, record::LayoutId layout, const QDate& today)
{
    std::vector<Line> lines;
    m_today = today;
    if (const record::LayoutRecord* found = row.layout(layout)) {
        for (const record::Entry& entry : found->entries) {
            lines.push_back({{entry.id, {}, entry.at.utcMs()},
                             entry.at,
                             wording::entryText(entry),
                             entry.note,
                             facade::glyphOf(entry),
                             kindOf(entry),
                             entry.planned});
        }
        for (const record::Reading& reading : found->readings) {
            const record::TestKit* kit = row.kit(reading.kit);
            const QString with = kit == nullptr ? QString() : kit->name;
            lines.push_back({{{}, reading.id, reading.at.utcMs()},
                             reading.at,
                             readingText(reading),
                             reading.note.isEmpty() ? with : reading.note,
                             facade::Glyph::Test,
                             Kind::Readings,
                             false});
        }
    }
    std::ranges::stable_sort(lines, [](const Line& a, const Line& b) { return a.at < b.at; });
    m_all = std::move(lines);
    arrange();
}

void HistoryRecord::setWindow(qint64 from, qint64 to)
{
    m_from = from;
    m_to = to;
    if (!m_shown.empty()) {
        emit dataChanged(index(0), index(rowCount() - 1));
    }
}

void HistoryRecord::setMarked(const std::vector<facade::RecordRef>& marked)
{
    m_marked = marked;
    if (!m_shown.empty()) {
        emit dataChanged(index(0), index(rowCount() - 1), {MarkedRole, Qt::AccessibleTextRole});
    }
}

void HistoryRecord::setKind(Kind kind)
{
    m_kind = kind;
    arrange();
}

void HistoryRecord::setNewestFirst(bool newest)
{
    m_newest = newest;
    arrange();
}

void HistoryRecord::setFilter(const QString& words)
{
    m_filter = words.simplified();
    arrange();
}

bool HistoryRecord::isShown(const Line& line) const
{
    const bool kind = m_kind == Kind::All || line.kind == m_kind;
    return kind && (m_filter.isEmpty() || line.text.contains(m_filter, Qt::CaseInsensitive) ||
                    line.detail.contains(m_filter, Qt::CaseInsensitive));
}

void HistoryRecord::arrange()
{
    beginResetModel();
    m_shown.clear();
    QDate day;
    for (std::size_t i = 0; i < m_all.size(); ++i) {
        const std::size_t at = m_newest ? m_all.size() - 1 - i : i;
        if (!isShown(m_all[at])) {
            continue;
        }
        if (m_all[at].at.localDate() != day) {
            day = m_all[at].at.localDate();
            m_shown.push_back({at, true});
        }
        m_shown.push_back({at, false});
    }
    endResetModel();
}

int HistoryRecord::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int HistoryRecord::lineCount() const
{
    return static_cast<int>(std::ranges::count(m_shown, false, &Shown::heading));
}

const HistoryRecord::Line* HistoryRecord::lineAt(int row) const
{
    if (row < 0 || row >= rowCount()) {
        return nullptr;
    }
    const Shown& shown = m_shown[static_cast<std::size_t>(row)];
    return shown.heading ? nullptr : &m_all[shown.line];
}

facade::RecordRef HistoryRecord::refAt(int row) const
{
    const Line* line = lineAt(row);
    return line == nullptr ? facade::RecordRef{} : line->ref;
}

int HistoryRecord::rowOf(const facade::RecordRef& ref) const
{
    for (int row = 0; row < rowCount(); ++row) {
        const Line* line = lineAt(row);
        if (line != nullptr && line->ref == ref) {
            return row;
        }
    }
    return -1;
}

bool HistoryRecord::isMarked(const Line& line) const
{
    return std::ranges::find(m_marked, line.ref) != m_marked.end();
}

bool HistoryRecord::isInWindow(const Line& line) const
{
    return line.at.utcMs() >= m_from && line.at.utcMs() <= m_to;
}

QVariant HistoryRecord::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    const Line* line = lineAt(index.row());
    if (line == nullptr) {
        const Line& first = m_all[m_shown[static_cast<std::size_t>(index.row())].line];
        const QString day = wording::weekdayText(first.at.localDate(), m_today);
        return role == HeadingRole                                         ? QVariant(true)
               : role == Qt::DisplayRole || role == Qt::AccessibleTextRole ? QVariant(day)
                                                                           : QVariant();
    }
    const QString time = line->at.toDateTime().toString(u"HH:mm"_s);
    switch (role) {
    case HeadingRole:
        return false;
    case Qt::DisplayRole:
        return line->planned ? tr("Planned: %1").arg(line->text) : line->text;
    case TimeRole:
        return time;
    case DetailRole:
        return line->detail;
    case GlyphRole:
        return static_cast<int>(line->glyph);
    case WindowRole:
        return isInWindow(*line);
    case MarkedRole:
        return isMarked(*line);
    case PlannedRole:
        return line->planned;
    case Qt::AccessibleTextRole: {
        const QString base = tr("%1 %2, %3").arg(wording::weekdayText(line->at.localDate(), m_today), time, line->text);
        return isMarked(*line)     ? tr("%1; the evidence pointed at rests on it").arg(base)
               : isInWindow(*line) ? tr("%1; in the window looked back on").arg(base)
                                   : base;
    }
    default:
        return {};
    }
}

Qt::ItemFlags HistoryRecord::flags(const QModelIndex& index) const
{
    return lineAt(index.row()) == nullptr ? Qt::NoItemFlags
                                          : Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace littoral::ui
