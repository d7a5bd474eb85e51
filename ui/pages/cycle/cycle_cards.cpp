// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/cycle/cycle_cards.h"

#include "ui/paint/glyphs.h"
#include "ui/theme/figures.h"
#include "ui/widgets/card_table.h"
#include "ui/widgets/disclosure.h"

#include <QCheckBox>
#include <QFontMetrics>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace littoral::ui {

namespace {

constexpr int kMargin = 14;
constexpr std::size_t kTestLines = 3;

void makeCard(QFrame& frame)
{
    frame.setProperty("card", true);
    frame.setFrameShape(QFrame::StyledPanel);
    frame.setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void showText(Text* text, const QString& words)
{
    text->setText(words);
    text->setVisible(!words.isEmpty());
}

} // namespace

CycleCard::CycleCard(Theme& theme, const QString& heading, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_heading((new Text(theme, TextStyle::Strong, heading))->wrapped())
    , m_note(new Text(theme, TextStyle::Secondary))
    , m_column(new QVBoxLayout(this))
{
    makeCard(*this);
    setAccessibleName(heading);
    m_column->setContentsMargins(1, 10, 1, 12);
    m_column->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(kMargin, 0, kMargin, 0);
    head->addWidget(m_heading, 1);
    head->addWidget(m_note);
    m_column->addLayout(head);
}

void CycleCard::setHeading(const QString& heading, const QString& note)
{
    m_heading->setText(heading);
    m_note->setText(note);
    setAccessibleName(heading);
}

Text* CycleCard::addText(TextStyle style, Token token)
{
    auto* text = (new Text(m_theme, style))->wrapped();
    text->setToken(token);
    text->setContentsMargins(kMargin, 0, kMargin, 0);
    m_column->addWidget(text);
    return text;
}

VerdictCard::VerdictCard(Theme& theme, QWidget* parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_headline((new Text(theme, TextStyle::Name))->wrapped())
    , m_warnings((new Text(theme, TextStyle::Body))->wrapped())
    , m_known((new Text(theme, TextStyle::Body))->wrapped())
    , m_next((new Text(theme, TextStyle::Strong))->wrapped())
    , m_remarks((new Text(theme, TextStyle::Secondary))->wrapped())
    , m_open(new QPushButton(tr("Open the reading at odds")))
{
    makeCard(*this);
    setAccessibleName(tr("Verdict"));
    m_headline->setIndent(theme.px(24));
    m_warnings->setToken(Token::Act);
    m_known->setToken(Token::Ink2);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kMargin, 12, kMargin, 12);
    column->setSpacing(6);
    column->addWidget(m_headline);
    column->addWidget(m_warnings);
    column->addWidget(m_open, 0, Qt::AlignLeft);
    column->addWidget(m_known);
    column->addWidget(m_next);
    for (std::size_t i = 0; i < kTestLines; ++i) {
        auto* test = new Disclosure(theme);
        column->addWidget(test);
        m_tests.push_back(test);
    }
    column->addWidget(m_remarks);
    m_open->hide();
    connect(m_open, &QPushButton::clicked, this, [this] { emit readingOpenWanted(m_atOdds); });
    connect(&theme, &Theme::changed, this, [this] {
        m_headline->setIndent(m_theme.px(24));
        update();
    });
}

void VerdictCard::setModel(const CycleModel& model)
{
    m_status = model.status;
    showText(m_headline, model.headline);
    showText(m_warnings, model.warnings.join(u'\n'));
    showText(m_known, model.known.join(u' '));
    showText(m_next, model.nextTest);
    showText(m_remarks, model.remarks.join(u' '));
    m_atOdds = model.atOdds.empty() ? record::ReadingId{} : model.atOdds.front();
    m_open->setVisible(!model.atOdds.empty());
    for (std::size_t i = 0; i < m_tests.size(); ++i) {
        const bool there = i < model.tests.size();
        if (there) {
            const CycleTest& test = model.tests[i];
            m_tests[i]->setWords(test.title, test.gain, test.sentence, test.outcomes);
        }
        m_tests[i]->setVisible(there);
    }
    setAccessibleDescription(text());
    update();
}

QString VerdictCard::text() const
{
    QStringList all;
    for (const Text* part : {m_headline, m_warnings, m_known, m_next}) {
        if (!part->text().isEmpty()) {
            all << part->text();
        }
    }
    return all.join(u' ');
}

void VerdictCard::paintEvent(QPaintEvent* event)
{
    QFrame::paintEvent(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = m_theme.px(16);
    const QRect place = m_headline->geometry();
    const double line = QFontMetrics(m_headline->font()).height();
    drawStatus(painter, m_status, QRectF(place.left(), place.top() + (line - side) / 2, side, side),
               m_theme.tokens().status(m_status), m_theme[Token::Panel]);
}

CycleGatesCard::CycleGatesCard(Theme& theme, QWidget* parent)
    : CycleCard(theme, tr("Gates: who may go in, and when"), parent)
    , m_table(new CardTable(theme))
{
    setHeading(tr("Gates: who may go in, and when"), tr("limits as common practice"));
    m_table->setAccessibleName(tr("Gates"));
    m_table->setColumns({{tr("Class"), false, 2.0},
                         {tr("Must hold"), false, 1.4},
                         {tr("Readings open it"), false, 1.2},
                         {tr("Still needed"), false, 1.0}});
    column()->addWidget(m_table);
    m_capacity = addText(TextStyle::Secondary, Token::Ink2);
    m_conditions = new Disclosure(theme);
    m_conditions->setContentsMargins(kMargin - 4, 0, kMargin, 0);
    column()->addWidget(m_conditions);
    // Queued: the answer fills the table anew, which a view does not bear inside its own signal.
    connect(
        m_table, &CardTable::chosen, this,
        [this](int row) {
            if (row >= 0 && row < m_keys.size()) {
                emit gateChosen(m_keys[row]);
            }
        },
        Qt::QueuedConnection);
}

QString CycleGatesCard::chosenGate() const
{
    return m_keys.value(m_table->chosenRow());
}

void CycleGatesCard::setModel(const CycleModel& model)
{
    m_keys.clear();
    std::vector<CardRow> rows;
    int chosen = -1;
    for (const CycleGate& gate : model.gates) {
        if (gate.key == model.gate) {
            chosen = static_cast<int>(rows.size());
            m_conditions->setWords(tr("Every condition of %1").arg(gate.title), {},
                                   tr("Every condition of %1").arg(gate.title), gate.conditions);
        }
        m_keys << gate.key;
        CardRow row;
        row.sentence = gate.sentence;
        row.cells = {
            {gate.title, {gate.who}, {}, true, false},
            {gate.mustHold.value(0), gate.mustHold.mid(1), {}, false, false},
            {gate.opens, {}, {}, true, false},
            {gate.needed.value(0), gate.needed.mid(1), gate.status, false, gate.status == facade::Status::Waiting}};
        for (const QString& detail : {gate.odds, gate.capacity}) {
            if (!detail.isEmpty()) {
                row.cells[2].details << detail;
            }
        }
        rows.push_back(std::move(row));
    }
    m_table->setRows(std::move(rows));
    m_table->setChosenRow(chosen);
    m_conditions->setVisible(chosen >= 0);
    showText(m_capacity, model.capacityNote);
    setVisible(!model.gates.empty());
}

TenthsStrip::TenthsStrip(const Theme& theme, QWidget* parent)
    : ChartWidget(parent)
    , m_theme(theme)
{
    setAccessibleName(tr("Where readings fell in the forecast, in tenths"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&theme, &Theme::changed, this, [this] { updateGeometry(); });
}

void TenthsStrip::setRecord(const CycleRecord& record)
{
    m_record = record;
    partsChanged();
    update();
}

QString TenthsStrip::partSentence(int part) const
{
    return tr("%1 to %2 tenths: %3 of %4 readings")
        .arg(part)
        .arg(part + 1)
        .arg(m_record.tenths[static_cast<std::size_t>(part)])
        .arg(m_record.readings);
}

QRect TenthsStrip::partRect(int part) const
{
    const int each = width() / partCount();
    return {part * each, 0, each, height()};
}

QSize TenthsStrip::sizeHint() const
{
    return {m_theme.px(220), m_theme.px(44)};
}

void TenthsStrip::paintEvent(QPaintEvent*)
{
    if (m_record.readings == 0) {
        return;
    }
    QPainter painter(this);
    const int most = std::max(1, *std::ranges::max_element(m_record.tenths));
    const double even = m_record.readings / 10.0;
    const double top = std::max(even * 1.6, static_cast<double>(most));
    const double base = height() - 1.0;
    for (int i = 0; i < partCount(); ++i) {
        const QRectF cell = partRect(i);
        const double tall = m_record.tenths[static_cast<std::size_t>(i)] / top * (base - 2);
        painter.fillRect(QRectF(cell.left() + 1, base - tall, cell.width() - 3, tall), m_theme[Token::WaterSurface]);
    }
    painter.fillRect(QRectF(0, base, width(), 1), m_theme[Token::Rule2]);
    QPen dashes(m_theme[Token::Ink2], 1);
    dashes.setDashPattern({4, 3});
    painter.setPen(dashes);
    const double level = std::round(base - even / top * (base - 2));
    painter.drawLine(QPointF(0, level), QPointF(width(), level));
}

CycleRecordCard::CycleRecordCard(Theme& theme, QWidget* parent)
    : CycleCard(theme, tr("How earlier forecasts held"), parent)
    , m_held(addText(TextStyle::Body, Token::Ink2))
    , m_strip(new TenthsStrip(theme))
    , m_learn(new QCheckBox(tr("Learn from the row's other layouts")))
{
    auto* strip = new QHBoxLayout;
    strip->setContentsMargins(kMargin, 0, kMargin, 0);
    strip->addWidget(m_strip);
    column()->addLayout(strip);
    m_stripNote = addText(TextStyle::Secondary, Token::Ink3);
    m_stripNote->setText(
        tr("Bars: readings by the tenth of the forecast they fell in. Dashes: all tenths alike, as honest "
           "bands would have it."));
    auto* learn = new QHBoxLayout;
    learn->setContentsMargins(kMargin, 0, kMargin, 0);
    learn->addWidget(m_learn);
    learn->addStretch(1);
    column()->addLayout(learn);
    m_learned = addText(TextStyle::Secondary, Token::Ink2);
    m_facts = new Disclosure(theme);
    m_facts->setContentsMargins(kMargin - 4, 0, kMargin, 0);
    column()->addWidget(m_facts);
    m_learn->setAccessibleName(m_learn->text());
    connect(m_learn, &QCheckBox::toggled, this, &CycleRecordCard::learnChosen);
}

void CycleRecordCard::setModel(const CycleModel& model, bool writable)
{
    m_held->setText(model.record.sentences.join(u' '));
    m_strip->setRecord(model.record);
    m_strip->setVisible(model.record.readings > 0);
    m_stripNote->setVisible(model.record.readings > 0);
    const QSignalBlocker quiet(m_learn);
    m_learn->setChecked(model.learnOn);
    m_learn->setEnabled(writable);
    const QString nothing = model.learnOn
                                ? tr("No other layout of the row has enough readings in common with this one to "
                                     "teach it anything.")
                                : tr("Switched off: this forecast rests on the plain starting ranges.");
    m_learned->setText(model.learned.isEmpty() ? nothing : model.learned.front());
    m_facts->setWords(tr("All that was learned"), QString::number(model.learned.size()),
                      tr("All that was learned from other layouts"), model.learned);
    m_facts->setVisible(model.learned.size() > 1);
}

} // namespace littoral::ui
