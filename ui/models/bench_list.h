// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/lane_model.h"

#include <QAbstractListModel>
#include <QString>
#include <vector>

namespace littoral::ui {

/// Key of the row's water plan, which stands among the worksheets.
inline constexpr char16_t kRowPlanKey[] = u"two-weeks";

/// The worksheets under their headings, those that answer to a filter: the beginnings of words of their title, purpose
/// or key.
class BenchListModel final : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role {
        KeyRole = Qt::UserRole + 1, ///< empty for a heading
        PurposeRole,
        GlyphRole, ///< facade::Glyph as int
    };
    Q_ENUM(Role)

    explicit BenchListModel(QObject* parent = nullptr);

    void filter(const QString& text);
    [[nodiscard]] int rowOf(const QString& key) const; ///< -1 when it is not listed
    [[nodiscard]] int firstSheet() const;              ///< row of the first sheet listed; -1 when there is none
    [[nodiscard]] int sheetCount() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Line
    {
        QString key; ///< empty: a heading
        QString text;
        QString purpose;
        facade::Glyph glyph = facade::Glyph::Note;
    };
    std::vector<Line> m_lines;
};

} // namespace littoral::ui
