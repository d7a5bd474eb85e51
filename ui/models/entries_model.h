// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/bulk_edit.h"
#include "core/facade/keeper.h"

#include <QAbstractTableModel>
#include <QHash>
#include <QSet>

namespace littoral::ui {

/// What of the record is on show.
struct EntriesFilter
{
    enum class Show { Everything, Readings, Entries, Photos };
    Show show = Show::Everything;
    record::TankId tank;                        ///< none: every tank
    QString parameter;                          ///< readings of this key only
    std::optional<record::EntryKind> entryKind; ///< entries of this kind only
    QString text;                               ///< every word of it is somewhere in the line

    bool operator==(const EntriesFilter&) const = default;
};

/// Readings, entries and photographs of one tank or of the whole row, all its layouts. A line is two pointers until it
/// is looked at: words are made for the lines on screen only, so that a hundred thousand scroll as ten do. Cells are
/// edited in place; each is one change, undone by its name.
class EntriesModel final : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column { WhenColumn, TankColumn, KindColumn, WhatColumn, AmountColumn, KitColumn, NoteColumn, ColumnCount };
    enum Role {
        SortRole = Qt::UserRole + 1, ///< the instant, UTC milliseconds
        PlannedRole,
    };
    Q_ENUM(Role)

    explicit EntriesModel(facade::Keeper& keeper, QObject* parent = nullptr);

    void setFilter(const EntriesFilter& filter);
    [[nodiscard]] const EntriesFilter& filter() const { return m_filter; }
    /// A model nobody looks at holds no lines and does not follow the record.
    void setActive(bool active);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    void sort(int column, Qt::SortOrder order) override;

    [[nodiscard]] record::EntryId entryAt(int row) const;     ///< none for anything else
    [[nodiscard]] record::ReadingId readingAt(int row) const; ///< none for anything else
    [[nodiscard]] record::PhotoId photoAt(int row) const;     ///< none for anything else
    [[nodiscard]] record::TankId tankAt(int row) const;
    [[nodiscard]] facade::DatedRef refAt(int row) const; ///< row must be valid
    /// Rows on show of the records with these ids, downwards.
    [[nodiscard]] std::vector<int> rowsOf(const QSet<qint64>& ids) const;
    /// The whole line in words: "Nitrite 0.8 mg/L NO₂".
    [[nodiscard]] QString textAt(int row) const;
    [[nodiscard]] int allCount() const { return m_all; } ///< without the filter by text
    void refresh();

signals:
    /// A cell could not be changed; the sentence says why. Nothing was written.
    void refused(const QString& sentence);

private:
    /// Exactly one of the three is there.
    struct Line
    {
        const record::Reading* reading = nullptr;
        const record::Entry* entry = nullptr;
        const record::Photo* photo = nullptr;

        [[nodiscard]] const record::Moment& at() const
        {
            return reading != nullptr ? reading->at : entry != nullptr ? entry->at : photo->at;
        }
        [[nodiscard]] record::TankId tank() const
        {
            return reading != nullptr ? reading->tank : entry != nullptr ? entry->tank : photo->tank;
        }
        [[nodiscard]] const QString& note() const
        {
            return reading != nullptr ? reading->note : entry != nullptr ? entry->note : photo->note;
        }
        [[nodiscard]] qint64 id() const
        {
            return reading != nullptr ? reading->id.value : entry != nullptr ? entry->id.value : photo->id.value;
        }
    };

    [[nodiscard]] const Line* lineAt(int row) const;
    [[nodiscard]] std::vector<Line> gather();
    void addLayout(std::vector<Line>& lines, const record::LayoutRecord& layout);
    void narrow(std::vector<Line>& lines);
    void order(std::vector<Line>& lines) const;
    [[nodiscard]] bool matches(const Line& line, const QString& word);
    [[nodiscard]] QString cellText(const Line& line, int column) const;
    [[nodiscard]] QString kindText(const Line& line) const;
    [[nodiscard]] QString whatText(const Line& line) const;
    [[nodiscard]] QString kitText(const Line& line) const;
    [[nodiscard]] QString editText(const Line& line, int column) const;
    [[nodiscard]] QString lineText(const Line& line) const;
    [[nodiscard]] QString tankName(record::TankId tank) const;
    [[nodiscard]] bool isEditable(const Line& line, int column) const;
    [[nodiscard]] Result<void> editReading(record::Reading reading, int column, const QString& typed);
    [[nodiscard]] Result<void> editEntry(record::Entry entry, int column, const QString& typed);
    [[nodiscard]] Result<void> editPhoto(record::Photo photo, int column, const QString& typed);
    [[nodiscard]] Result<void> putIntoTank(const facade::DatedRef& record, const QString& name);
    [[nodiscard]] Result<void> changeOne(const facade::DatedRef& record, const facade::BulkChange& change);

    facade::Keeper& m_keeper;
    EntriesFilter m_filter;
    bool m_active = true;
    bool m_stale = false;
    int m_sortColumn = WhenColumn;
    Qt::SortOrder m_sortOrder = Qt::DescendingOrder;
    std::vector<record::Photo> m_photos;
    std::vector<Line> m_lines;
    int m_all = 0;
    quint64 m_revision = 0; ///< of the row the lines point into
    QHash<qint64, QString> m_tankNames;
    QHash<qint64, QString> m_dayWords; ///< by Julian day, for the find field
};

/// A parameter's name inside a sentence: "nitrite", but "pH" and "CO₂ cylinder weight".
[[nodiscard]] QString nameInText(const record::Parameter& parameter);
/// "Nitrite 0.8 mg/L NO₂".
[[nodiscard]] QString readingText(const record::Reading& reading);
/// The one number an entry is about, with its unit: "40 %", "5 mL", "12"; empty when it has none.
[[nodiscard]] QString entryAmountText(const record::Entry& entry);
/// "2 h", "-90 min", "1 d", "1 w": how far records are moved in time, in milliseconds; nothing when not understood.
[[nodiscard]] std::optional<qint64> shiftFrom(const QString& text);

} // namespace littoral::ui
