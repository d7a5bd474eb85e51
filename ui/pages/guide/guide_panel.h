// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/guide_article.h"
#include "ui/widgets/side_panel.h"

#include <QStringList>

namespace littoral::ui {

class GuidePage;
class ReadingPane;

/// The guide beside a page: one article, its links, and the way back, while the page stays as it was. It reads what the
/// Guide page holds, so every shelf is there.
class GuidePanel final : public SidePanel
{
    Q_OBJECT

public:
    /// `guide` outlives the panel.
    GuidePanel(GuidePage& guide, Theme& theme, QWidget* parent = nullptr);

    /// The first of these that the guide has an article on; else what it finds under the first one's words. Empty:
    /// what F1 is for.
    void openAbout(const QStringList& subjects);
    void open(const QString& topic);
    void back();
    [[nodiscard]] QString topic() const { return m_trail.isEmpty() ? QString() : m_trail.back(); }
    [[nodiscard]] ReadingPane* pane() { return m_pane; }
    [[nodiscard]] int wantedWidth() const override { return theme().px(420); }

signals:
    /// The whole page at this topic.
    void pageWanted(const QString& topic);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void present(const GuideArticle& article);
    void refresh();
    [[nodiscard]] GuideArticle foundArticle(const QString& words) const;

    GuidePage& m_guide;
    ReadingPane* m_pane;
    QPushButton* m_back;
    QStringList m_trail; ///< topics read, the one shown last
    QString m_words;     ///< what was searched for where no article fits
};

} // namespace littoral::ui
