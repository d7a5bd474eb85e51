// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/notice_strip.h"

#include <QAccessible>
#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>

namespace littoral::ui {

QString sentenceOf(const Error& error)
{
    return QString::fromStdString(error.sentence());
}

void announce(QWidget* source, const QString& sentence)
{
    // Qt 6.4 has no announcement event: a name change on a live label is what screen readers speak without moving the
    // focus.
    source->setAccessibleDescription(sentence);
    QAccessibleEvent event(source, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
}

NoticeStrip::NoticeStrip(Theme& theme, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_what(new Text(theme, TextStyle::Strong))
    , m_rest(new Text(theme, TextStyle::Body))
    , m_copy(new QPushButton(tr("Copy details")))
    , m_dismiss(new QPushButton(tr("Dismiss")))
{
    setAccessibleName(tr("Notice"));
    m_what->setWordWrap(true);
    m_rest->setWordWrap(true);
    m_rest->setToken(Token::Ink2);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_what);
    words->addWidget(m_rest);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(16, 8, 16, 8);
    line->setSpacing(10);
    line->addLayout(words, 1);
    line->addWidget(m_copy, 0, Qt::AlignTop);
    line->addWidget(m_dismiss, 0, Qt::AlignTop);
    m_copy->setAccessibleName(tr("Copy the details of this notice"));
    m_dismiss->setAccessibleName(tr("Dismiss this notice"));
    connect(m_copy, &QPushButton::clicked, this, [this] { QGuiApplication::clipboard()->setText(m_details); });
    connect(m_dismiss, &QPushButton::clicked, this, &QWidget::hide);
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
    hide();
}

void NoticeStrip::show(Tone tone, const QString& what, const QString& rest)
{
    m_tone = tone;
    m_what->setText(what);
    m_what->setToken(tone == Tone::Failure ? Token::Act : Token::Info);
    m_rest->setText(rest);
    m_rest->setVisible(!rest.isEmpty());
    m_copy->setVisible(tone == Tone::Failure);
    update();
    QWidget::show();
    announce(this, rest.isEmpty() ? what : tr("%1 %2").arg(what, rest));
}

void NoticeStrip::showError(const Error& error, const QString& safe)
{
    const QString mend = QString::fromStdString(error.mend);
    const QString where = QString::fromStdString(error.where);
    m_details = where.isEmpty() ? sentenceOf(error) : tr("%1\n%2").arg(sentenceOf(error), where);
    show(Tone::Failure, QString::fromStdString(error.what),
         safe.isEmpty()   ? mend
         : mend.isEmpty() ? safe
                          : tr("%1 %2").arg(safe, mend));
}

void NoticeStrip::showProblems(const QString& what, const QString& safe, const QStringList& problems)
{
    constexpr qsizetype kShown = 3;
    m_details = what + u'\n' + problems.join(u'\n');
    QString rest = safe + u'\n' + problems.mid(0, kShown).join(u'\n');
    if (problems.size() > kShown) {
        rest += u'\n' + tr("%1 more; copy the details to read all.").arg(problems.size() - kShown);
    }
    show(Tone::Failure, what, rest.trimmed());
}

void NoticeStrip::showNote(const QString& text)
{
    m_details = text;
    show(Tone::Note, text, {});
}

void NoticeStrip::setStanding(bool standing)
{
    m_dismiss->setVisible(!standing);
}

void NoticeStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const bool failure = m_tone == Tone::Failure;
    painter.fillRect(rect(), m_theme[failure ? Token::ActTint : Token::InfoTint]);
    painter.fillRect(QRect(0, 0, 3, height()), m_theme[failure ? Token::Act : Token::Info]);
    painter.fillRect(QRect(0, height() - 1, width(), 1), m_theme[Token::Rule]);
}

} // namespace littoral::ui
