// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/case_file.h"

#include <QAbstractListModel>
#include <set>

namespace littoral::ui {

/// Everything recorded about one layout, by day: headings and lines. Lines of the look-back window and lines that a
/// piece of evidence rests on are told apart, in words for assistive technology as well.
class HistoryRecord final : public QAbstractListModel
{
    Q_OBJECT

public:
    enum class Kind { All, Readings, Changes, Seen, Done };
    Q_ENUM(Kind)
    enum Role { HeadingRole = Qt::UserRole + 1, TimeRole, DetailRole, GlyphRole, WindowRole, MarkedRole, PlannedRole };
    Q_ENUM(Role)

    using QAbstractListModel::QAbstractListModel;

    void setRecord(const record::Row& row, record::LayoutId layout, const QDate& today);
    /// UTC ms; lines between them are of the window.
    void setWindow(qint64 from, qint64 to);
    void setMarked(const std::vector<facade::RecordRef>& marked);
    void setKind(Kind kind);
    void setNewestFirst(bool newest);
    void setFilter(const QString& words);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] facade::RecordRef refAt(int row) const;        ///< empty for a heading
    [[nodiscard]] int rowOf(const facade::RecordRef& ref) const; ///< -1: not shown
    [[nodiscard]] int lineCount() const;                         ///< lines shown, headings left out
    [[nodiscard]] int allLines() const { return static_cast<int>(m_all.size()); }

private:
    struct Line
    {
        facade::RecordRef ref;
        record::Moment at;
        QString text, detail;
        facade::Glyph glyph = facade::Glyph::Note;
        Kind kind = Kind::Done;
        bool planned = false;
    };
    void arrange();
    [[nodiscard]] bool isShown(const Line& line) const;
    [[nodiscard]] const Line* lineAt(int row) const; ///< nullptr for a heading
    [[nodiscard]] bool isMarked(const Line& line) const;
    [[nodiscard]] bool isInWindow(const Line& line) const;

    std::vector<Line> m_all; ///< oldest first
    /// Place in m_all, or the day whose heading it is.
    struct Shown
    {
        std::size_t line = 0;
        bool heading = false;
    };
    std::vector<Shown> m_shown;
    std::vector<facade::RecordRef> m_marked;
    qint64 m_from = 0, m_to = -1;
    Kind m_kind = Kind::All;
    bool m_newest = true;
    QString m_filter;
    QDate m_today;
};

} // namespace littoral::ui
