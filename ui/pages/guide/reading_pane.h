// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/models/guide_article.h"
#include "ui/theme/theme.h"

#include <QTextBrowser>

namespace littoral::ui {

/// One article to read: text can be selected and copied, Tab goes from link to link, Enter follows. The lines stay
/// short enough to read however wide the window is.
class ReadingPane final : public QTextBrowser
{
    Q_OBJECT

public:
    explicit ReadingPane(Theme& theme, QWidget* parent = nullptr);

    void showArticle(const GuideArticle& article);
    [[nodiscard]] const GuideArticle& article() const { return m_article; }

signals:
    void topicWanted(const QString& topic);

protected:
    void resizeEvent(QResizeEvent* event) override;
    [[nodiscard]] QVariant loadResource(int type, const QUrl& name) override;

private:
    void render();
    void setMargins();

    Theme& m_theme;
    GuideArticle m_article;
};

} // namespace littoral::ui
