// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"

#include <QAbstractListModel>
#include <functional>

namespace littoral::ui {

/// What the find-or-do field offers for a text: tanks, pages and commands by the beginning of any of their words,
/// entries by any text in them. Nothing typed offers the commands given first.
class FindModel final : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role {
        GroupRole = Qt::UserRole + 1, ///< "Tank", "Page", "Command", "Entry"
        HintRole,                     ///< keys, or a date
    };
    Q_ENUM(Role)

    /// Something that can be found by name: a page or a command. `run` is called when it is chosen.
    struct Offer
    {
        QString group;
        QString text;
        QString hint;
        std::function<void()> run;
    };

    FindModel(facade::Keeper& keeper, QObject* parent = nullptr);

    /// Offers besides tanks and entries, asked for anew at each search so that disabled commands stay out.
    void setOffers(std::function<std::vector<Offer>()> offers) { m_offers = std::move(offers); }
    /// Answers to the text as a whole (a worksheet with its values), shown first; they choose themselves what matches.
    void setAnswers(std::function<std::vector<Offer>(const QString& text)> answers) { m_answers = std::move(answers); }
    void search(const QString& text);
    void choose(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

signals:
    void tankChosen(littoral::record::TankId tank);
    void entryChosen(littoral::record::EntryId entry);

private:
    void findTanks(const QString& text);
    void findEntries(const QString& text);

    facade::Keeper& m_keeper;
    std::function<std::vector<Offer>()> m_offers;
    std::function<std::vector<Offer>(const QString&)> m_answers;
    std::vector<Offer> m_found;
};

/// Whether every word of `wanted` begins a word of `text`, in any case and order.
[[nodiscard]] bool beginsWords(const QString& text, const QString& wanted);

} // namespace littoral::ui
