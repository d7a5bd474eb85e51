// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/guide/reading_pane.h"

#include "ui/pages/guide/guide_html.h"

#include <QScrollBar>

namespace littoral::ui {

namespace {
constexpr int kLongestLine = 760;
} // namespace

ReadingPane::ReadingPane(Theme& theme, QWidget* parent)
    : QTextBrowser(parent)
    , m_theme(theme)
{
    setFrameShape(QFrame::NoFrame);
    setOpenLinks(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setAccessibleName(tr("Article"));
    connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl& address) {
        if (const QString topic = topicOfLink(address.toString()); !topic.isEmpty()) {
            emit topicWanted(topic);
        }
    });
    connect(&theme, &Theme::changed, this, [this] {
        const int at = verticalScrollBar()->value();
        render();
        setMargins();
        verticalScrollBar()->setValue(at);
    });
    setMargins();
}

void ReadingPane::showArticle(const GuideArticle& article)
{
    m_article = article;
    render();
    verticalScrollBar()->setValue(0);
    setAccessibleDescription(tr("%1. %2").arg(article.title, article.lead));
}

void ReadingPane::render()
{
    setFont(m_theme.font(13));
    document()->setDocumentMargin(0);
    setHtml(articleHtml(m_article, m_theme));
}

QVariant ReadingPane::loadResource(int type, const QUrl& name)
{
    const QString address = name.toString();
    for (std::size_t i = 0; i < m_article.blocks.size(); ++i) {
        for (std::size_t j = 0; j < m_article.blocks[i].ranges.size(); ++j) {
            if (address == rangeUrl(i, j)) {
                return rangeImage(m_article.blocks[i].ranges[j], m_theme, devicePixelRatioF());
            }
        }
    }
    return QTextBrowser::loadResource(type, name);
}

void ReadingPane::setMargins()
{
    const int side = m_theme.px(22);
    const int spare = width() - m_theme.px(kLongestLine) - side;
    setViewportMargins(side, m_theme.px(16), std::max(m_theme.px(12), spare), m_theme.px(8));
}

void ReadingPane::resizeEvent(QResizeEvent* event)
{
    setMargins();
    QTextBrowser::resizeEvent(event);
}

} // namespace littoral::ui
