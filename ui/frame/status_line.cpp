// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/status_line.h"

#include "core/wording/measures.h"
#include "core/wording/numbers.h"
#include "ui/models/day_words.h"
#include "ui/theme/figures.h"
#include "ui/widgets/notice_strip.h"

#include <QFileInfo>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {
constexpr int kMessageMs = 8000;
}

StatusLine::StatusLine(Theme& theme, facade::Keeper& keeper, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_keeper(keeper)
    , m_saved(new Text(theme, TextStyle::Secondary))
    , m_last(new Text(theme, TextStyle::Secondary))
    , m_store(new Text(theme, TextStyle::Secondary))
    , m_backupText(new Text(theme, TextStyle::Secondary))
    , m_timers(new QPushButton)
    , m_undo(new QPushButton(tr("Undo")))
    , m_units(new QPushButton)
{
    setAccessibleName(tr("Status line"));
    m_undo->setProperty("quiet", true);
    m_undo->setProperty("keyHint", tr("Ctrl Z"));
    m_undo->setAccessibleName(tr("Undo the last change"));
    m_units->setProperty("quiet", true);
    m_units->setToolTip(tr("Units of this store; opens the choice"));
    m_last->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_last->setToken(Token::Ink2);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(16, 0, 16, 0);
    line->setSpacing(20);
    line->addWidget(m_saved);
    line->addWidget(m_last, 1);
    line->addWidget(m_timers);
    line->addWidget(m_undo);
    line->addWidget(m_units);
    line->addWidget(m_store);
    line->addWidget(m_backupText);
    m_messageTime.setSingleShot(true);
    connect(&m_messageTime, &QTimer::timeout, this, [this] {
        m_message.clear();
        refresh();
    });
    m_timers->setProperty("quiet", true);
    m_timers->setAccessibleName(tr("Timers"));
    m_timers->hide();
    connect(m_timers, &QPushButton::clicked, this, &StatusLine::timersWanted);
    connect(m_undo, &QPushButton::clicked, this, &StatusLine::undoWanted);
    connect(m_units, &QPushButton::clicked, this, &StatusLine::unitsWanted);
    connect(&keeper, &facade::Keeper::changed, this, [this] {
        m_savedAt = m_keeper.clock().now().toDateTime();
        refresh();
    });
    connect(&keeper, &facade::Keeper::storeOpened, this, [this] {
        m_savedAt = {};
        refresh();
    });
    connect(&keeper, &facade::Keeper::storeClosed, this, &StatusLine::refresh);
    connect(&theme, &Theme::changed, this, &StatusLine::arrange);
    refresh();
}

QSize StatusLine::sizeHint() const
{
    return {m_theme.px(600), std::max(26, QFontMetrics(m_theme.font(11)).height() + m_theme.px(11))};
}

QSize StatusLine::minimumSizeHint() const
{
    return {0, sizeHint().height()};
}

void StatusLine::tell(const QString& sentence)
{
    m_message = sentence;
    m_messageTime.start(kMessageMs);
    refresh();
    announce(m_last, sentence);
}

void StatusLine::setLastBackup(const QDateTime& at)
{
    m_backup = at;
    refresh();
}

void StatusLine::setTimers(const QString& text)
{
    m_timers->setText(text);
    m_timers->setAccessibleName(tr("Timers: %1. Goes to the cell of the first.").arg(text));
    m_timers->setVisible(!text.isEmpty());
    arrange();
}

void StatusLine::refresh()
{
    const bool open = m_keeper.hasStore();
    const QDate today = m_keeper.clock().today();
    m_saved->setText(!open                   ? tr("No store open")
                     : m_keeper.isReadOnly() ? tr("Reading only")
                     : m_savedAt.isValid()   ? tr("Saved %1").arg(m_savedAt.time().toString(u"HH:mm:ss"_s))
                                             : tr("Everything saved"));
    const QString change = m_keeper.lastChangeText();
    m_lastText = !m_message.isEmpty() ? m_message : change.isEmpty() ? QString() : tr("Last: %1").arg(change);
    m_undo->setVisible(open && !change.isEmpty() && !m_keeper.isReadOnly());
    m_units->setText(wording::unitsText(record::shownUnits()));
    m_units->setAccessibleName(tr("Units: %1").arg(m_units->text()));
    m_store->setText(open ? tr("%1 · %n entries", nullptr, static_cast<int>(m_keeper.row().recordCount()))
                                .arg(QFileInfo(m_keeper.path()).fileName())
                          : QString());
    m_store->setToolTip(m_keeper.path());
    m_backupText->setText(
        !open                ? QString()
        : m_backup.isValid() ? tr("Backup %1 %2", "day, time")
                                   .arg(wording::dateText(m_backup.date(), today), m_backup.time().toString(u"HH:mm"_s))
                             : tr("No backup yet"));
    arrange();
}

void StatusLine::arrange()
{
    const bool open = m_keeper.hasStore();
    m_units->setVisible(open && width() >= m_theme.px(980));
    m_backupText->setVisible(open && width() >= m_theme.px(760));
    m_store->setVisible(open && width() >= m_theme.px(520));
    for (QPushButton* button : {m_timers, m_undo, m_units}) {
        button->setFixedHeight(std::max(24, sizeHint().height() - 2));
    }
    layout()->activate();
    m_last->setText(elidedFigures(m_last->font(), m_lastText, std::max(0, m_last->width() - 4)));
    m_last->setToolTip(m_lastText);
    m_last->setAccessibleName(m_lastText.isEmpty() ? tr("Nothing to undo") : m_lastText);
    update();
}

void StatusLine::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void StatusLine::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme[Token::Panel]);
    painter.fillRect(QRect(0, 0, width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
