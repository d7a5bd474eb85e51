// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/guide/guide_html.h"

#include "ui/paint/marks.h"

#include <QCoreApplication>
#include <QPainter>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Kind = GuideBlock::Kind;

namespace {

const QString kLink = u"guide:"_s;

QString words(const char* text)
{
    return QCoreApplication::translate("Guide", text);
}

class Writer
{
public:
    Writer(const GuideArticle& article, const Theme& theme)
        : m_article(article)
        , m_theme(theme)
    {
    }

    QString write()
    {
        m_html = u"<html><body style=\"color:%1;font-size:%2px\">"_s.arg(colour(Token::Ink)).arg(m_theme.px(13));
        head();
        for (std::size_t i = 0; i < m_article.blocks.size(); ++i) {
            block(m_article.blocks[i], i);
        }
        if (!m_article.source.isEmpty()) {
            paragraph(words("Source: %1").arg(m_article.source), 11, Token::Ink3, 18);
        }
        return m_html + u"</body></html>"_s;
    }

private:
    [[nodiscard]] QString colour(Token token) const { return m_theme[token].name(); }

    void paragraph(const QString& text, int size, Token token, int above, const QString& style = {})
    {
        m_html += u"<p style=\"margin-top:%1px;margin-bottom:0px;font-size:%2px;color:%3;line-height:135%;%4\">%5</p>"_s
                      .arg(m_theme.px(above))
                      .arg(m_theme.px(size))
                      .arg(colour(token), style, text.toHtmlEscaped());
    }

    void heading(const QString& text)
    {
        if (!text.isEmpty()) {
            paragraph(text, 14, Token::Ink, 18, u"font-weight:650;"_s);
        }
    }

    void head()
    {
        paragraph(m_article.kind, 11, Token::Ink3, 0);
        paragraph(m_article.title, 26, Token::Ink, 2, u"font-weight:650;"_s);
        if (!m_article.latin.isEmpty()) {
            paragraph(m_article.latin, 15, Token::Ink2, 0, u"font-style:italic;"_s);
        }
        if (!m_article.urgency.isEmpty()) {
            paragraph((m_article.presses ? u"▲ "_s : u"◆ "_s) + m_article.urgency, 13,
                      m_article.presses ? Token::Act : Token::Watch, 6, u"font-weight:600;"_s);
        }
        if (!m_article.lead.isEmpty()) {
            paragraph(m_article.lead, 15, Token::Ink, 8);
        }
    }

    [[nodiscard]] QString link(const GuideLine& line) const
    {
        return u"<a href=\"%1%2\" style=\"color:%3\">%4</a>"_s.arg(kLink, line.topic, colour(Token::Accent),
                                                                   line.text.toHtmlEscaped());
    }

    [[nodiscard]] QString lineText(const GuideLine& line) const
    {
        return line.topic.isEmpty() ? line.text.toHtmlEscaped() : link(line);
    }

    [[nodiscard]] QString small(const QString& text) const
    {
        return u"<span style=\"font-size:%1px;color:%2\">%3</span>"_s.arg(m_theme.px(11))
            .arg(colour(Token::Ink2), text.toHtmlEscaped());
    }

    void list(const GuideBlock& block, const QString& tag)
    {
        m_html += u"<%1 style=\"margin-top:%2px;margin-bottom:0px;margin-left:%3px;-qt-list-indent:0\">"_s.arg(tag)
                      .arg(m_theme.px(4))
                      .arg(m_theme.px(20));
        for (const GuideLine& line : block.lines) {
            m_html += u"<li style=\"margin-top:%1px;line-height:135%\">"_s.arg(m_theme.px(3)) + lineText(line);
            if (!line.note.isEmpty()) {
                m_html += u"<br>"_s + small(line.note);
            }
            m_html += u"</li>"_s;
        }
        m_html += u"</%1>"_s.arg(tag);
    }

    /// A box with a bar on its left: the caution's own look, told apart by its word as well.
    void caution(const GuideBlock& block)
    {
        m_html +=
            u"<table width=\"100%\" cellspacing=\"0\" cellpadding=\"0\" style=\"margin-top:%1px\"><tr>"
            u"<td width=\"%2\" bgcolor=\"%3\"></td><td bgcolor=\"%4\" style=\"padding:%5px\">"_s.arg(m_theme.px(16))
                .arg(m_theme.px(4))
                .arg(colour(Token::Act), colour(Token::ActTint))
                .arg(m_theme.px(12));
        paragraph(u"▲ "_s + block.heading, 14, Token::Act, 0, u"font-weight:650;"_s);
        for (const GuideLine& line : block.lines) {
            m_html += u"<p style=\"margin-top:%1px;margin-bottom:0px;line-height:135%\">"_s.arg(m_theme.px(6)) +
                      lineText(line) + (line.note.isEmpty() ? QString() : u"<br>"_s + small(line.note)) + u"</p>"_s;
        }
        if (!block.source.isEmpty()) {
            paragraph(block.source, 13, Token::Ink, 8, u"font-weight:600;"_s);
        }
        m_html += u"</td></tr></table>"_s;
    }

    void table(const std::vector<QStringList>& cells)
    {
        m_html += u"<table cellspacing=\"0\" cellpadding=\"0\" style=\"margin-top:%1px\">"_s.arg(m_theme.px(4));
        for (const QStringList& row : cells) {
            m_html += u"<tr>"_s;
            for (const QString& cell : row) {
                m_html += u"<td style=\"padding-top:%1px;padding-bottom:%1px;padding-right:%2px\" valign=\"middle\">"
                          u"%3</td>"_s.arg(m_theme.px(3))
                              .arg(m_theme.px(18))
                              .arg(cell);
            }
            m_html += u"</tr>"_s;
        }
        m_html += u"</table>"_s;
    }

    void facts(const GuideBlock& block)
    {
        std::vector<QStringList> cells;
        for (const GuideLine& line : block.lines) {
            cells.push_back(
                {u"<span style=\"color:%1\">%2</span>"_s.arg(colour(Token::Ink2), line.text.toHtmlEscaped()),
                 line.note.toHtmlEscaped()});
        }
        table(cells);
    }

    void evidence(const GuideBlock& block)
    {
        std::vector<QStringList> cells;
        for (const GuideLine& line : block.lines) {
            const QString dots = QString(line.weight, u'●') + QString(3 - line.weight, u'○');
            cells.push_back({u"<span style=\"font-size:%1px;color:%2\">%3</span>&nbsp;&nbsp;"_s.arg(m_theme.px(10))
                                     .arg(colour(Token::Accent), dots) +
                                 small(line.note),
                             line.text.toHtmlEscaped()});
        }
        table(cells);
    }

    void ranges(const GuideBlock& block, std::size_t index)
    {
        std::vector<QStringList> cells;
        for (std::size_t i = 0; i < block.ranges.size(); ++i) {
            const GuideRange& range = block.ranges[i];
            cells.push_back({range.name.toHtmlEscaped(), u"<img src=\"%1\">"_s.arg(rangeUrl(index, i)),
                             u"<b>%1</b>"_s.arg(range.text.toHtmlEscaped())});
        }
        table(cells);
    }

    void block(const GuideBlock& block, std::size_t index)
    {
        if (block.kind == Kind::Caution) {
            caution(block);
            return;
        }
        heading(block.heading);
        switch (block.kind) {
        case Kind::Steps:
            list(block, u"ol"_s);
            break;
        case Kind::Facts:
            facts(block);
            break;
        case Kind::Evidence:
            evidence(block);
            break;
        case Kind::Ranges:
            ranges(block, index);
            break;
        case Kind::Caution:
        case Kind::Lines:
        case Kind::Links:
            list(block, u"ul"_s);
            break;
        }
    }

    const GuideArticle& m_article;
    const Theme& m_theme;
    QString m_html;
};

constexpr int kRangeWidth = 240;
constexpr int kRangeHeight = 22;

} // namespace

QString articleHtml(const GuideArticle& article, const Theme& theme)
{
    return Writer(article, theme).write();
}

QString rangeUrl(std::size_t block, std::size_t range)
{
    return u"range:%1-%2"_s.arg(block).arg(range);
}

QImage rangeImage(const GuideRange& range, const Theme& theme, double pixelRatio)
{
    const QSize size(theme.px(kRangeWidth), theme.px(kRangeHeight));
    QImage image(size * pixelRatio, QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(pixelRatio);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const double left = size.height();
    const double width = size.width() - left - 2.0;
    const double middle = size.height() / 2.0;
    const auto x = [&](double value) {
        return left + width * std::clamp((value - range.from) / (range.to - range.from), 0.0, 1.0);
    };
    drawParameterMark(painter, theme, range.parameter, QPointF(left / 2.0, middle), theme.px(kMarkSize),
                      theme[Token::Panel]);
    painter.setPen(QPen(theme[Token::Rule2], 1));
    painter.drawLine(QPointF(left, middle), QPointF(left + width, middle));
    QColor fill = theme.tokens().parameter(range.parameter);
    const QColor edge = fill;
    fill.setAlphaF(0.30F);
    const QRectF bar(QPointF(x(range.low), middle - theme.px(6)), QPointF(x(range.high), middle + theme.px(6)));
    painter.fillRect(bar, fill);
    painter.setPen(QPen(edge, 2));
    painter.drawLine(bar.topLeft(), bar.bottomLeft());
    painter.drawLine(bar.topRight(), bar.bottomRight());
    return image;
}

QString topicOfLink(const QString& address)
{
    return address.startsWith(kLink) ? address.mid(kLink.size()) : QString();
}

} // namespace littoral::ui
