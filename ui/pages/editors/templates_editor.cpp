// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/editors/templates_editor.h"

#include "core/care/work_template.h"
#include "core/facade/template_preview.h"
#include "core/wording/sentences.h"
#include "ui/pages/editors/template_fields.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;

namespace {
constexpr int kPreviewMs = 250; // typing asks for one preview, not for one a key
}

TemplatesEditor::TemplatesEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Task templates"), parent)
    , m_keeper(keeper)
    , m_list(new QListWidget)
    , m_columns(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_state(new Text(theme, TextStyle::Secondary))
    , m_preview(new Text(theme, TextStyle::Body))
{
    m_list->setAccessibleName(tr("Task templates"));
    m_list->setWordWrap(true);
    m_list->setSpacing(3);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_state->setWordWrap(true);
    m_preview->setWordWrap(true);
    m_preview->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* form = new QVBoxLayout;
    form->setSpacing(8);
    form->addWidget(m_state);
    makeForm(form);
    makeRounds(form);
    makeClosing(form);
    form->addStretch(1);
    auto* beside = new QVBoxLayout;
    beside->setSpacing(6);
    beside->addWidget(new Text(theme, TextStyle::Strong, tr("What it asks for next")));
    beside->addWidget(m_preview);
    beside->addStretch(1);
    m_columns->setSpacing(16);
    m_columns->addWidget(m_list);
    m_columns->addLayout(form, 3);
    m_columns->addLayout(beside, 2);
    body()->addLayout(m_columns, 1);
    m_save = addFootButton(tr("Save template"), tr("Enter"), true);
    auto* fresh = addFootButton(tr("New template"), {}, false);
    m_back = addFootButton(tr("Back to the built-in"), {}, false);
    m_off = addFootButton(tr("Switch off"), {}, false);
    connect(m_save, &QPushButton::clicked, this, &TemplatesEditor::save);
    connect(fresh, &QPushButton::clicked, this, &TemplatesEditor::startNew);
    connect(m_back, &QPushButton::clicked, this, &TemplatesEditor::backToBuiltIn);
    connect(m_off, &QPushButton::clicked, this, &TemplatesEditor::switchOff);
    connect(m_list, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0) {
            showTemplate(m_list->item(row)->data(Qt::UserRole).toString());
        }
    });
    connect(&keeper, &facade::Keeper::changed, this, [this] {
        refreshList();
        preview();
    });
    connect(&keeper, &facade::Keeper::storeOpened, this, [this] { m_key.clear(); });
    setFirstField(m_list);
    m_soon.setSingleShot(true);
    m_soon.setInterval(kPreviewMs);
    connect(&m_soon, &QTimer::timeout, this, &TemplatesEditor::preview);
    watchEdits();
}

void TemplatesEditor::makeForm(QBoxLayout* column)
{
    auto* form = new FieldGrid(theme());
    m_title = form->addLine(tr("Title"));
    m_keyField = form->addLine(tr("Key, its short name in the store"));
    m_kind = form->addChoice(tr("Kind"), {{tr("Water change"), u"water-change"_s},
                                          {tr("Test, closed by readings"), u"test"_s},
                                          {tr("Upkeep"), u"upkeep"_s},
                                          {tr("A look, closed by your word"), u"look"_s},
                                          {tr("A decision"), u"decide"_s}});
    m_applies = form->addLine(tr("Applies when (empty: always)"), tr("plants, no shrimp, bed rich|mild, tan < 0.5"));
    m_wholeRow = form->addTick(tr("Asked once for the whole row"));
    m_rolls = form->addTick(tr("A missed round gives way to the next"));
    column->addWidget(form);
}

void TemplatesEditor::makeRounds(QBoxLayout* column)
{
    column->addWidget(new Text(theme(), TextStyle::Strong, tr("Rounds")));
    auto* help =
        new Text(theme(), TextStyle::Secondary,
                 tr("One way each: every so many days from one tank age to another, once at an age, or on days "
                    "after an event. Cases are tried from above; the first that holds is taken."));
    help->setWordWrap(true);
    column->addWidget(help);
    m_cases = makeTable(tr("Cases"), {tr("Case"), tr("Holds when")});
    m_rounds = makeTable(tr("Rounds of the template"),
                         {tr("Case"), tr("Every, days"), tr("From day"), tr("To day"), tr("Once on day"), tr("After"),
                          tr("Days after"), tr("Change %"), tr("Range %"), tr("Only when"), tr("Only if raised"),
                          tr("Days from leaving"), tr("Days from return")});
    for (QTableWidget* table : {m_cases, m_rounds}) {
        auto* line = new QHBoxLayout;
        auto* more = new QPushButton(table == m_cases ? tr("Add a case") : tr("Add a round"));
        auto* less = new QPushButton(table == m_cases ? tr("Take the case out") : tr("Take the round out"));
        for (QPushButton* button : {more, less}) {
            button->setAccessibleName(button->text());
            line->addWidget(button);
        }
        line->addStretch(1);
        column->addWidget(table);
        column->addLayout(line);
        connect(more, &QPushButton::clicked, this, [this, table] {
            const int row = table->rowCount();
            table->insertRow(row);
            fitHeight(*table, theme());
            table->setCurrentCell(row, 0);
            table->setFocus();
            m_soon.start();
        });
        connect(less, &QPushButton::clicked, this, [this, table] {
            table->removeRow(table->currentRow());
            fitHeight(*table, theme());
            m_soon.start();
        });
    }
}

QTableWidget* TemplatesEditor::makeTable(const QString& name, const QStringList& heads)
{
    auto* table = new QTableWidget(0, static_cast<int>(heads.size()));
    table->setAccessibleName(name);
    table->setHorizontalHeaderLabels(heads);
    table->verticalHeader()->hide();
    table->setTabKeyNavigation(false);
    table->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                           QAbstractItemView::DoubleClicked);
    table->horizontalHeader()->setStretchLastSection(true);
    table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(table, &QTableWidget::itemChanged, this, [this] {
        if (!m_filling) {
            m_soon.start();
        }
    });
    return table;
}

void TemplatesEditor::makeClosing(QBoxLayout* column)
{
    auto* form = new FieldGrid(theme());
    std::vector<FieldGrid::Choice> kinds{{tr("nothing but your tick"), {}}};
    for (int kind = 0; kind <= static_cast<int>(record::EntryKind::Note); ++kind) {
        const auto it = static_cast<record::EntryKind>(kind);
        kinds.push_back({record::entryKindName(it), record::entryKindCode(it)});
    }
    m_entry = form->addChoice(tr("Closed by an entry"), kinds);
    m_subject = form->addLine(tr("with the subject"));
    m_readings = form->addLine(tr("or by readings of"), u"tan no2, cond|tds"_s);
    m_minutes = form->addLine(tr("Minutes it takes"));
    m_grace = form->addLine(tr("Days of grace before it is overdue"));
    m_lapse = form->addLine(tr("Days after which it is not asked for any more"));
    m_priority =
        form->addChoice(tr("Priority"), {{tr("1, first"), u"1"_s}, {tr("2"), u"2"_s}, {tr("3, last"), u"3"_s}});
    m_caution = form->addChoice(tr("Caution shown before the work"), cautionChoices());
    m_consequence = form->addText(tr("What follows if it is left undone"));
    m_source = form->addLine(tr("Where the rule comes from"), tr("common practice"));
    column->addWidget(form);
}

void TemplatesEditor::watchEdits()
{
    const auto soon = [this] {
        if (!m_filling) {
            m_soon.start();
        }
    };
    for (QLineEdit* field :
         {m_keyField, m_title, m_applies, m_subject, m_readings, m_minutes, m_grace, m_lapse, m_source}) {
        connect(field, &QLineEdit::textChanged, this, soon);
    }
    for (QComboBox* field : {m_kind, m_entry, m_priority, m_caution}) {
        connect(field, &QComboBox::currentIndexChanged, this, soon);
    }
    for (QCheckBox* field : {m_wholeRow, m_rolls}) {
        connect(field, &QCheckBox::toggled, this, soon);
    }
    connect(m_consequence, &QPlainTextEdit::textChanged, this, soon);
}

const record::TaskTemplate* TemplatesEditor::own(const QString& key) const
{
    const auto& all = m_keeper.row().templates;
    const auto found = std::ranges::find(all, key, &record::TaskTemplate::key);
    return found == all.end() ? nullptr : &*found;
}

QByteArray TemplatesEditor::definitionOf(const QString& key) const
{
    const record::TaskTemplate* mine = own(key);
    const bool given = mine != nullptr && !care::templateText(mine->definition).title.isEmpty();
    return given ? mine->definition : care::builtInDefinition(key);
}

QString TemplatesEditor::titleOf(const QString& key) const
{
    return wording::sourceText(care::templateText(definitionOf(key)).title);
}

void TemplatesEditor::refreshList()
{
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    QStringList keys;
    for (const care::WorkTemplate& work : care::builtInTemplates()) {
        keys << work.key;
    }
    for (const record::TaskTemplate& it : m_keeper.row().templates) {
        if (!keys.contains(it.key)) {
            keys << it.key;
        }
    }
    for (const QString& key : std::as_const(keys)) {
        const record::TaskTemplate* mine = own(key);
        const bool builtIn = !care::builtInDefinition(key).isEmpty();
        const QString title = titleOf(key);
        const QString text = mine == nullptr  ? title
                             : mine->disabled ? tr("%1, switched off").arg(title)
                             : builtIn        ? tr("%1, changed by you").arg(title)
                                              : tr("%1, your own").arg(title);
        auto* item = new QListWidgetItem(text, m_list);
        item->setData(Qt::UserRole, key);
        if (key == m_key) {
            m_list->setCurrentItem(item);
        }
    }
    arrangeButtons();
}

void TemplatesEditor::open(const QString& key)
{
    const bool keep = hasDraft() && (key.isEmpty() || key == m_key);
    refreshList();
    if (keep) {
        return;
    }
    int row = 0;
    for (int i = 0; i < m_list->count(); ++i) {
        row = m_list->item(i)->data(Qt::UserRole).toString() == (key.isEmpty() ? m_key : key) ? i : row;
    }
    m_list->setCurrentRow(row);
    if (m_list->currentItem() != nullptr) {
        showTemplate(m_list->currentItem()->data(Qt::UserRole).toString());
    }
}

void TemplatesEditor::showTemplate(const QString& key)
{
    m_key = key;
    clearProblem();
    setTyped(care::templateText(definitionOf(key)));
    m_base = typed();
    preview();
}

void TemplatesEditor::startNew()
{
    m_key.clear();
    {
        const QSignalBlocker quiet(m_list);
        m_list->setCurrentRow(-1);
    }
    clearProblem();
    care::TemplateText fresh;
    fresh.kind = u"upkeep"_s;
    fresh.minutes = u"10"_s;
    fresh.grace = u"2"_s;
    fresh.priority = u"3"_s;
    fresh.source = tr("my own practice");
    care::RoundText weekly;
    weekly.every = u"7"_s;
    fresh.rounds.push_back(weekly);
    setTyped(fresh);
    m_base = typed();
    preview();
    m_title->setFocus();
}

void TemplatesEditor::setTyped(const care::TemplateText& text)
{
    m_filling = true;
    m_keyField->setText(text.key);
    m_keyField->setEnabled(m_key.isEmpty());
    m_title->setText(text.title);
    m_kind->setCurrentIndex(std::max(0, m_kind->findData(text.kind)));
    m_applies->setText(text.applies);
    m_wholeRow->setChecked(text.wholeRow);
    m_rolls->setChecked(text.rolls);
    m_entry->setCurrentIndex(std::max(0, m_entry->findData(text.closesEntry)));
    m_subject->setText(text.closesSubject);
    m_readings->setText(text.closesReadings);
    m_minutes->setText(text.minutes);
    m_grace->setText(text.grace);
    m_lapse->setText(text.lapse);
    m_priority->setCurrentIndex(std::max(0, m_priority->findData(text.priority.isEmpty() ? u"3"_s : text.priority)));
    m_caution->setCurrentIndex(std::max(0, m_caution->findData(text.caution)));
    m_consequence->setPlainText(text.consequence);
    m_source->setText(text.source);
    fillCases(*m_cases, text.variants);
    fillRounds(*m_rounds, text.rounds);
    fitHeight(*m_cases, theme());
    fitHeight(*m_rounds, theme());
    m_filling = false;
}

care::TemplateText TemplatesEditor::typed() const
{
    care::TemplateText text;
    text.key = m_keyField->text().trimmed();
    text.title = m_title->text().trimmed();
    text.kind = m_kind->currentData().toString();
    text.applies = m_applies->text().trimmed();
    text.wholeRow = m_wholeRow->isChecked();
    text.rolls = m_rolls->isChecked();
    text.variants = casesOf(*m_cases);
    text.rounds = roundsOf(*m_rounds);
    text.closesEntry = m_entry->currentData().toString();
    text.closesSubject = m_subject->text().trimmed();
    text.closesReadings = m_readings->text().trimmed();
    text.minutes = m_minutes->text().trimmed();
    text.grace = m_grace->text().trimmed();
    text.lapse = m_lapse->text().trimmed();
    text.priority = m_priority->currentData().toString();
    text.consequence = m_consequence->toPlainText().trimmed();
    text.caution = m_caution->currentData().toString();
    text.helper = m_base.helper;
    text.source = m_source->text().trimmed();
    return text;
}

bool TemplatesEditor::hasDraft() const
{
    return !m_title->text().trimmed().isEmpty() && !(typed() == m_base);
}

void TemplatesEditor::arrangeButtons()
{
    const record::TaskTemplate* mine = own(m_key);
    const bool builtIn = !care::builtInDefinition(m_key).isEmpty();
    const bool writable = !m_keeper.isReadOnly();
    m_save->setEnabled(writable);
    m_back->setText(builtIn || m_key.isEmpty() ? tr("Back to the built-in") : tr("Remove"));
    m_back->setAccessibleName(m_back->text());
    m_back->setEnabled(writable && mine != nullptr);
    m_off->setEnabled(writable && !m_key.isEmpty() && (mine == nullptr || !mine->disabled));
    m_state->setText(m_key.isEmpty()   ? tr("A new template of your own.")
                     : mine == nullptr ? tr("Built in. Saving a change puts your own in its place.")
                     : mine->disabled  ? tr("Switched off: it asks for nothing. Saving switches it on again.")
                     : builtIn         ? tr("Changed by you; the built-in one is kept.")
                                       : tr("Your own."));
}

void TemplatesEditor::preview()
{
    m_soon.stop();
    arrangeButtons();
    const auto definition = care::definitionFrom(typed());
    const auto work = definition ? care::parseTemplate(*definition) : Result<care::WorkTemplate>(definition.error());
    if (!work) {
        m_preview->setText(QString::fromStdString(work.error().sentence()));
        m_preview->setToken(Token::Act);
        return;
    }
    m_preview->setToken(Token::Ink);
    const record::Moment now = m_keeper.clock().now();
    const QDate today = now.localDate();
    QStringList lines;
    for (const facade::TemplatePreview& line : facade::previewTemplate(m_keeper.row(), *work, now)) {
        const QString name = line.tank ? line.name : tr("The whole row");
        if (line.next) {
            lines << tr("%1: %2. %3", "tank, day, why")
                         .arg(name, wording::dueWhen(*line.next, today),
                              wording::dueReasons(*line.next, today).value(1));
        } else {
            lines << (line.applies ? tr("%1: nothing in the next 120 days.").arg(name)
                                   : tr("%1: does not apply to this layout.").arg(name));
        }
    }
    m_preview->setText(lines.isEmpty() ? tr("No tank is running.") : lines.join(u"\n\n"_s));
}

QString TemplatesEditor::previewText() const
{
    return m_preview->text();
}

void TemplatesEditor::commit(const store::Edit& edit, const QString& sentence)
{
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return;
    }
    clearProblem();
    refreshList();
    emit saved(sentence);
}

void TemplatesEditor::save()
{
    const care::TemplateText text = typed();
    const auto definition = care::definitionFrom(text);
    if (!definition) {
        showProblem(QString::fromStdString(definition.error().sentence()));
        return;
    }
    if (m_key.isEmpty() && !definitionOf(text.key).isEmpty()) {
        showProblem(tr("There is a template with the key \"%1\" already. Choose another key.").arg(text.key));
        m_keyField->setFocus();
        return;
    }
    record::TaskTemplate mine = own(text.key) == nullptr ? record::TaskTemplate{} : *own(text.key);
    mine.key = text.key;
    mine.definition = *definition;
    mine.disabled = false;
    store::Edit edit(tr("task template %1").arg(text.title));
    edit.put(std::move(mine));
    m_key = text.key;
    m_base = text;
    commit(edit, tr("Task template saved: %1").arg(text.title));
    m_keyField->setEnabled(false);
}

void TemplatesEditor::backToBuiltIn()
{
    const record::TaskTemplate* mine = own(m_key);
    if (mine == nullptr) {
        return;
    }
    const bool builtIn = !care::builtInDefinition(m_key).isEmpty();
    const QString title = titleOf(m_key);
    store::Edit edit(builtIn ? tr("back to the built-in: %1").arg(title) : tr("remove task template %1").arg(title));
    edit.remove(mine->id);
    const QString key = m_key;
    m_base = typed(); // what is on show is given up knowingly
    commit(edit, builtIn ? tr("Back to the built-in: %1").arg(title) : tr("Removed: %1").arg(title));
    builtIn ? showTemplate(key) : startNew();
    m_list->setFocus();
}

void TemplatesEditor::switchOff()
{
    record::TaskTemplate mine = own(m_key) == nullptr ? record::TaskTemplate{} : *own(m_key);
    mine.key = m_key;
    mine.definition = definitionOf(m_key);
    mine.disabled = true;
    const QString title = titleOf(m_key);
    store::Edit edit(tr("switch off: %1").arg(title));
    edit.put(std::move(mine));
    commit(edit, tr("Switched off: %1").arg(title));
}

void TemplatesEditor::resizeEvent(QResizeEvent* event)
{
    SidePanel::resizeEvent(event);
    const bool wide = width() >= theme().px(900);
    m_columns->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_list->setMinimumWidth(wide ? theme().px(240) : 0);
    m_list->setMaximumWidth(wide ? theme().px(270) : QWIDGETSIZE_MAX);
    m_list->setMinimumHeight(theme().px(160));
    m_list->setMaximumHeight(wide ? QWIDGETSIZE_MAX : theme().px(180));
}

} // namespace littoral::ui
