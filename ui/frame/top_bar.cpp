// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/top_bar.h"

#include "ui/widgets/find_field.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QMenu>
#include <QPainter>
#include <QPainterPath>
#include <QPushButton>
#include <algorithm>

namespace littoral::ui {

namespace {

/// Two strokes: the water line running out, and the bed rising to meet it.
class LogoMark final : public QWidget
{
public:
    explicit LogoMark(Theme& theme)
        : m_theme(theme)
    {
        connect(&theme, &Theme::changed, this, [this] {
            updateGeometry();
            update();
        });
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override { return {m_theme.px(26), m_theme.px(20)}; }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(width() / 26.0, height() / 20.0);
        QPen pen(m_theme[Token::WaterSurface], 2.4);
        pen.setCapStyle(Qt::RoundCap);
        painter.setPen(pen);
        painter.drawLine(QPointF(2, 9), QPointF(15, 9));
        pen.setColor(m_theme[Token::Ink]);
        painter.setPen(pen);
        QPainterPath bed(QPointF(2, 17));
        bed.cubicTo(9, 16.5, 15, 11, 24, 3);
        painter.drawPath(bed);
    }

private:
    Theme& m_theme;
};

/// Three lines, drawn: an icon of the theme's own ink at any text size.
class MenuButton final : public QPushButton
{
public:
    explicit MenuButton(Theme& theme)
        : m_theme(theme)
    {
    }
    QSize sizeHint() const override
    {
        const int side = QPushButton::sizeHint().height();
        return {side + m_theme.px(2), side};
    }

protected:
    void paintEvent(QPaintEvent* event) override
    {
        QPushButton::paintEvent(event);
        QPainter painter(this);
        painter.setPen(QPen(m_theme[Token::Ink], 1.6));
        const double half = m_theme.px(6);
        for (int line = -1; line <= 1; ++line) {
            const double y = rect().center().y() + line * m_theme.px(4) + 0.5;
            painter.drawLine(QPointF(rect().center().x() - half, y), QPointF(rect().center().x() + half, y));
        }
    }

private:
    Theme& m_theme;
};

} // namespace

PageTab::PageTab(Theme& theme, const QString& name, const QString& key, QWidget* parent)
    : QAbstractButton(parent)
    , m_theme(theme)
    , m_key(key)
{
    setText(name);
    setCheckable(true);
    setAutoExclusive(true);
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(tr("Page %1").arg(name));
    setToolTip(tr("%1 (Ctrl+%2)").arg(name, key));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    connect(&theme, &Theme::changed, this, [this] {
        updateGeometry();
        update();
    });
}

int PageTab::side() const
{
    return m_theme.px(m_compact ? 6 : 12);
}

void PageTab::setCompact(bool compact)
{
    if (compact != m_compact) {
        m_compact = compact;
        updateGeometry();
        update();
    }
}

QSize PageTab::sizeHint() const
{
    const int name = QFontMetrics(m_theme.font(13, 650)).horizontalAdvance(this->text());
    const int key = m_compact ? 0 : QFontMetrics(m_theme.font(11)).horizontalAdvance(m_key) + m_theme.px(8);
    return {name + key + 2 * side(), m_theme.px(40)};
}

void PageTab::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const QFont name = m_theme.font(13, isChecked() ? 650 : 500);
    const QFontMetrics metrics(name);
    const int left = side();
    painter.setFont(name);
    painter.setPen(m_theme[isChecked() || underMouse() ? Token::Ink : Token::Ink2]);
    painter.drawText(QRect(left, 0, width(), height()), Qt::AlignLeft | Qt::AlignVCenter, text());
    if (!m_compact) {
        painter.setFont(m_theme.font(11));
        painter.setPen(m_theme[Token::Ink3]);
        painter.drawText(QRect(left + metrics.horizontalAdvance(text()) + m_theme.px(8), 1, width(), height()),
                         Qt::AlignLeft | Qt::AlignVCenter, m_key);
    }
    if (isChecked()) {
        painter.fillRect(QRect(left - m_theme.px(2), height() - 3, width() - 2 * left + m_theme.px(4), 3),
                         m_theme[Token::Accent]);
    }
}

TopBar::TopBar(Theme& theme, FindModel& find, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_name(new Text(theme, TextStyle::Name, tr("Littoral")))
    , m_nameBox(new QWidget)
    , m_pages(new QHBoxLayout)
    , m_more(new QPushButton(tr("More")))
    , m_find(new FindField(theme, find))
    , m_entry(new QPushButton(tr("New entry")))
    , m_menu(new MenuButton(theme))
{
    setAccessibleName(tr("Top bar"));
    auto* name = new QHBoxLayout(m_nameBox);
    name->setContentsMargins(0, 0, 0, 0);
    name->setSpacing(9);
    name->addWidget(new LogoMark(theme));
    name->addWidget(m_name);
    name->addStretch(1);
    m_entry->setProperty("keyHint", tr("E"));
    m_entry->setAccessibleName(tr("New entry"));
    m_menu->setAccessibleName(tr("Menu"));
    m_menu->setToolTip(tr("Menu (F10)"));
    m_pages->setSpacing(0);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(16, 0, 14, 0);
    line->setSpacing(10);
    line->addWidget(m_nameBox);
    line->addLayout(m_pages);
    m_more->setAccessibleName(tr("Further pages"));
    m_more->hide();
    line->addWidget(m_more);
    connect(m_more, &QPushButton::clicked, this, &TopBar::showMore);
    line->addStretch(1);
    line->addWidget(m_find, 4);
    line->addWidget(m_entry);
    line->addWidget(m_menu);
    connect(m_entry, &QPushButton::clicked, this, &TopBar::newEntry);
    connect(m_menu, &QPushButton::clicked, this, &TopBar::menuWanted);
    connect(&theme, &Theme::changed, this, &TopBar::arrange);
    arrange();
}

QSize TopBar::sizeHint() const
{
    return {m_theme.px(900), std::max(m_theme.px(48), m_entry->sizeHint().height() + 10)};
}

QSize TopBar::minimumSizeHint() const
{
    return {0, sizeHint().height()};
}

void TopBar::addPage(const QString& name, const QString& key)
{
    auto* tab = new PageTab(m_theme, name, key);
    const int page = static_cast<int>(m_tabs.size());
    connect(tab, &PageTab::clicked, this, [this, page] { emit pageChosen(page); });
    m_tabs << tab;
    m_pages->addWidget(tab);
}

void TopBar::setPage(int page)
{
    if (page >= 0 && page < m_tabs.size()) {
        m_page = page;
        m_tabs[page]->setChecked(true);
        arrangeTabs();
    }
}

/// Whole names first, then names without keys, then as many as fit; the page shown always among them.
void TopBar::arrangeTabs()
{
    const int fixed = m_nameBox->width() + m_find->minimumWidth() + m_entry->sizeHint().width() +
                      m_menu->sizeHint().width() + 2 * m_theme.px(16) + 6 * 10;
    int room = width() - fixed;
    const auto wanted = [this] {
        int sum = 0;
        for (const PageTab* tab : m_tabs) {
            sum += tab->sizeHint().width();
        }
        return sum;
    };
    const auto setCompact = [this](bool compact) {
        for (PageTab* tab : m_tabs) {
            tab->setCompact(compact);
        }
    };
    setCompact(false);
    if (wanted() > room) {
        setCompact(true);
    }
    const bool all = wanted() <= room;
    m_more->setVisible(!all);
    room -= all ? 0 : m_more->sizeHint().width() + 10;
    if (m_page < m_tabs.size()) {
        room -= m_tabs[m_page]->sizeHint().width();
    }
    for (int i = 0; i < m_tabs.size(); ++i) {
        room -= i == m_page ? 0 : m_tabs[i]->sizeHint().width();
        m_tabs[i]->setVisible(all || i == m_page || room >= 0);
    }
}

void TopBar::showMore()
{
    QMenu menu(this);
    menu.setAccessibleName(tr("Further pages"));
    for (int i = 0; i < m_tabs.size(); ++i) {
        if (m_tabs[i]->isHidden()) {
            connect(menu.addAction(m_tabs[i]->text()), &QAction::triggered, this, [this, i] { emit pageChosen(i); });
        }
    }
    menu.exec(m_more->mapToGlobal(QPoint(0, m_more->height() + 2)));
}

void TopBar::arrange()
{
    const bool roomy = width() >= m_theme.px(860);
    m_name->setVisible(roomy);
    m_nameBox->setFixedWidth(roomy ? m_theme.px(192) : m_theme.px(30));
    m_find->setMinimumWidth(m_theme.px(96));
    m_find->setMaximumWidth(m_theme.px(300));
    m_entry->setProperty("keyHint", roomy ? tr("E") : QString());
    m_entry->updateGeometry();
    arrangeTabs();
    updateGeometry();
}

void TopBar::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void TopBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    painter.fillRect(QRect(0, height() - 1, width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
