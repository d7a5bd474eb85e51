// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/guide_article.h"

#include <QAbstractListModel>

namespace littoral::ui {

/// The topics of the guide that fit a text and a shelf, under a heading for each shelf. Every word typed must begin a
/// word of the topic; topics that have them in their title stand first.
class GuideModel final : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role {
        TopicRole = Qt::UserRole + 1, ///< id; empty for a heading
        DetailRole,
        HeadingRole, ///< bool
        ShelfRole,
    };
    Q_ENUM(Role)

    explicit GuideModel(QObject* parent = nullptr);

    void setShelves(std::vector<GuideShelf> shelves);
    [[nodiscard]] const std::vector<GuideShelf>& shelves() const { return m_shelves; }
    void search(const QString& text);
    /// Empty: all shelves.
    void setShelf(const QString& key);
    [[nodiscard]] const QString& text() const { return m_text; }
    [[nodiscard]] const QString& shelf() const { return m_shelf; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

    [[nodiscard]] int topicCount() const { return m_topics; }
    /// Row of a topic; -1 when it is not among those found.
    [[nodiscard]] int rowOf(const QString& topic) const;
    /// First row that is a topic; -1 when nothing was found.
    [[nodiscard]] int firstTopic() const;
    /// Whether the guide has it, found or not.
    [[nodiscard]] bool has(const QString& topic) const;
    [[nodiscard]] std::optional<GuideArticle> article(const QString& topic) const;

private:
    struct Line
    {
        const GuideShelf* shelf = nullptr;
        const GuideTopic* topic = nullptr; ///< nullptr: a heading
    };
    void find();

    std::vector<GuideShelf> m_shelves;
    std::vector<Line> m_lines;
    QString m_text;
    QString m_shelf;
    int m_topics = 0;
};

/// Whether every word of `wanted` begins a word of `text`, whatever case, accents and punctuation.
[[nodiscard]] bool hasAllWords(const QString& text, const QString& wanted);

} // namespace littoral::ui
