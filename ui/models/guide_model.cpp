// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/guide_model.h"

#include <QRegularExpression>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {

/// Small letters without accents; subscripts as plain digits ("CO₂" is found by "co2").
QString plain(const QString& text)
{
    QString folded = text.normalized(QString::NormalizationForm_KD).toCaseFolded();
    folded.removeIf([](QChar c) { return c.category() == QChar::Mark_NonSpacing; });
    return folded;
}

QStringList wordsOf(const QString& text)
{
    static const QRegularExpression between(u"[^\\p{L}\\p{N}]+"_s);
    return plain(text).split(between, Qt::SkipEmptyParts);
}

} // namespace

bool hasAllWords(const QString& text, const QString& wanted)
{
    const QStringList words = wordsOf(text);
    const QStringList parts = wordsOf(wanted);
    return std::ranges::all_of(parts, [&](const QString& part) {
        return std::ranges::any_of(words, [&](const QString& word) { return word.startsWith(part); });
    });
}

GuideModel::GuideModel(QObject* parent)
    : QAbstractListModel(parent)
{
}

void GuideModel::setShelves(std::vector<GuideShelf> shelves)
{
    beginResetModel();
    m_shelves = std::move(shelves);
    find();
    endResetModel();
}

void GuideModel::search(const QString& text)
{
    if (text == m_text) {
        return;
    }
    beginResetModel();
    m_text = text;
    find();
    endResetModel();
}

void GuideModel::setShelf(const QString& key)
{
    if (key == m_shelf) {
        return;
    }
    beginResetModel();
    m_shelf = key;
    find();
    endResetModel();
}

void GuideModel::find()
{
    m_lines.clear();
    m_topics = 0;
    for (const GuideShelf& shelf : m_shelves) {
        if (!m_shelf.isEmpty() && shelf.key != m_shelf) {
            continue;
        }
        std::vector<Line> byTitle, byWords;
        for (const GuideTopic& topic : shelf.topics) {
            if (hasAllWords(topic.title, m_text)) {
                byTitle.push_back({&shelf, &topic});
            } else if (hasAllWords(topic.title + u' ' + topic.detail + u' ' + topic.words, m_text)) {
                byWords.push_back({&shelf, &topic});
            }
        }
        if (!byTitle.empty() || !byWords.empty()) {
            m_lines.push_back({&shelf, nullptr});
            m_lines.insert(m_lines.end(), byTitle.begin(), byTitle.end());
            m_lines.insert(m_lines.end(), byWords.begin(), byWords.end());
            m_topics += static_cast<int>(byTitle.size() + byWords.size());
        }
    }
}

int GuideModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant GuideModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return line.topic == nullptr ? line.shelf->name : line.topic->title;
    case Qt::AccessibleTextRole:
        return line.topic == nullptr ? line.shelf->name : tr("%1: %2").arg(line.topic->title, line.topic->detail);
    case TopicRole:
        return line.topic == nullptr ? QString() : line.topic->id;
    case DetailRole:
        return line.topic == nullptr ? QString() : line.topic->detail;
    case HeadingRole:
        return line.topic == nullptr;
    case ShelfRole:
        return line.shelf->key;
    default:
        return {};
    }
}

Qt::ItemFlags GuideModel::flags(const QModelIndex& index) const
{
    const bool heading = !index.isValid() || index.data(HeadingRole).toBool();
    return heading ? Qt::NoItemFlags : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

int GuideModel::rowOf(const QString& topic) const
{
    const auto found = std::ranges::find_if(
        m_lines, [&](const Line& line) { return line.topic != nullptr && line.topic->id == topic; });
    return found == m_lines.end() ? -1 : static_cast<int>(found - m_lines.begin());
}

int GuideModel::firstTopic() const
{
    const auto found = std::ranges::find_if(m_lines, [](const Line& line) { return line.topic != nullptr; });
    return found == m_lines.end() ? -1 : static_cast<int>(found - m_lines.begin());
}

bool GuideModel::has(const QString& topic) const
{
    return article(topic).has_value();
}

std::optional<GuideArticle> GuideModel::article(const QString& topic) const
{
    const auto shelf = std::ranges::find(m_shelves, shelfOf(topic), &GuideShelf::key);
    return shelf == m_shelves.end() ? std::nullopt : shelf->article(topic);
}

} // namespace littoral::ui
