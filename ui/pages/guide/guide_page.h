// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/facade/keeper.h"
#include "ui/models/guide_model.h"
#include "ui/models/guide_rules.h"
#include "ui/models/guide_shelves.h"
#include "ui/widgets/text.h"

#include <QStringList>

class QBoxLayout;
class QComboBox;
class QLineEdit;
class QPushButton;

namespace littoral::ui {

class OwnNote;
class ReadingPane;
class TopicList;

/// Conditions, species, tasks and cautions to read: a list with a search on the left, the article beside it, the
/// keeper's own note. Everything is in the program; nothing is fetched.
class GuidePage final : public QWidget
{
    Q_OBJECT

public:
    /// Both outlive the page.
    GuidePage(facade::Keeper& keeper, Theme& theme, QWidget* parent = nullptr);

    /// Shows a topic and remembers it for Back; an unknown or empty one shows the start.
    void open(const QString& topic);
    /// What a page's focus stands for: a topic's id, or a subject, template key, caution or species name; else the text
    /// is searched for. Empty: the start, or whatever was read last.
    void openAbout(const QString& subject);
    void search(const QString& text);
    void back();
    void forward();
    /// Puts the keyboard on the search field.
    void begin();
    /// Writes a note half typed; before the page is left.
    void settle();

    /// The topic a subject stands for; empty when the guide has none.
    [[nodiscard]] QString topicAbout(const QString& subject) const;
    /// Topics that have all of these words, at most so many.
    [[nodiscard]] std::vector<GuideTopic> hits(const QString& words, int most) const;

    /// Further shelves (worksheets ...) after those made from the facts.
    void addShelf(GuideShelf shelf);

    [[nodiscard]] QString topic() const;
    [[nodiscard]] GuideModel& model() { return *m_model; }
    [[nodiscard]] TopicList* list() { return m_list; }
    [[nodiscard]] ReadingPane* pane() { return m_pane; }
    [[nodiscard]] OwnNote* note() { return m_note; }
    [[nodiscard]] QLineEdit* field() { return m_field; }
    [[nodiscard]] QPushButton* backButton() { return m_back; }
    [[nodiscard]] QPushButton* forwardButton() { return m_forward; }
    [[nodiscard]] QPushButton* editButton() { return m_edit; }
    [[nodiscard]] QPushButton* takeBackButton() { return m_takeBack; }
    /// Parts of the page for F6, in order.
    [[nodiscard]] QList<QWidget*> regions() const;

signals:
    void editWanted(littoral::facts::FactKind kind, const QString& id);
    void addWanted(littoral::facts::FactKind kind);
    void told(const QString& sentence);
    void failed(const littoral::Error& error, const QString& safe);
    /// Articles may read differently now.
    void factsChanged();
    /// Escape with nothing left to step back from on this page.
    void leaveWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QWidget* makeBar();
    [[nodiscard]] QWidget* makeList();
    void makeKinds();
    void makeKeys();
    void display(const QString& topic);
    void refreshFound();
    void addOwnButtons(QBoxLayout* box);
    void refreshOwn();
    void edit();
    void takeBack();
    void refreshFacts();
    void chooseShelf(int index);
    void arrange();
    [[nodiscard]] GuideArticle startArticle() const;

    facade::Keeper& m_keeper;
    Theme& m_theme;
    GuideModel* m_model;
    std::shared_ptr<const GuideSources> m_sources;
    std::vector<GuideShelf> m_further;
    TopicList* m_list;
    ReadingPane* m_pane;
    OwnNote* m_note;
    QLineEdit* m_field;
    Text* m_found;
    QComboBox* m_kinds;
    QPushButton* m_back;
    QPushButton* m_forward;
    QPushButton* m_edit;
    QPushButton* m_takeBack;
    QPushButton* m_add;
    QWidget* m_bar = nullptr;
    QWidget* m_listCard;
    QBoxLayout* m_reading;
    QStringList m_trail;   ///< topics read, oldest first; empty text: the start
    qsizetype m_place = 0; ///< in the trail
    QMap<QString, QString> m_ownFacts;
};

} // namespace littoral::ui
