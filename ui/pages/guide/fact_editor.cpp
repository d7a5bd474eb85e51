// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pages/guide/fact_editor.h"

#include "ui/models/guide_rules.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <algorithm>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using facts::FactKind;
using Shape = FactField::Shape;

FactEditor::FactEditor(facade::Keeper& keeper, Theme& theme, QWidget* parent)
    : SidePanel(theme, tr("Your version"), parent)
    , m_keeper(keeper)
    , m_about((new Text(theme, TextStyle::Secondary))->wrapped())
    , m_save(addFootButton(tr("Save"), tr("Ctrl+Enter"), true))
    , m_back(addFootButton(tr("Back to the built-in"), {}, false))
{
    body()->addWidget(m_about);
    connect(m_save, &QPushButton::clicked, this, &FactEditor::save);
    connect(m_back, &QPushButton::clicked, this, &FactEditor::goBack);
    add(FactKind::Condition);
}

QString FactEditor::place() const
{
    return facts::factSetting(m_kind, m_id);
}

void FactEditor::edit(FactKind kind, const QString& id)
{
    keepDraft();
    m_kind = kind;
    m_id = id;
    const auto own = facts::ownObject(m_keeper.row(), kind, id);
    // Of a caution only the keeper's points are edited: the program's stay.
    const auto builtIn = kind == FactKind::Caution ? std::nullopt : facts::builtInObject(kind, id);
    present(own ? *own : builtIn.value_or(QJsonObject{{u"id"_s, id}}));
}

void FactEditor::add(FactKind kind)
{
    keepDraft();
    m_kind = kind;
    m_id.clear();
    present(newFact(kind));
}

void FactEditor::present(const QJsonObject& begun)
{
    clearProblem();
    m_book = facts::factsFor(m_keeper.row()).book;
    m_begun = begun;
    m_shown = m_drafts.contains(place()) ? m_drafts.take(place()) : begun;
    const bool writable = m_keeper.hasStore() && !m_keeper.isReadOnly();
    const auto builtIn = facts::builtInObject(m_kind, m_id);
    const bool own = !m_id.isEmpty() && facts::isOwn(m_keeper.row(), m_kind, m_id);
    const QString name = factName(m_kind, builtIn ? *builtIn : m_shown);
    setTitle(m_id.isEmpty()                ? m_kind == FactKind::Species   ? tr("New species")
                                             : m_kind == FactKind::Caution ? tr("New caution")
                                                                           : tr("New condition")
                            : m_kind == FactKind::Caution ? tr("Your points: %1").arg(name)
                                           : tr("Your version: %1").arg(name));
    const QString source = builtIn ? (*builtIn)[u"source"_s].toString() : QString();
    m_about->setText(!builtIn                      ? tr("Only in this store. It counts at once where the program "
                                                                             "weighs findings, stock and gates.")
                     : m_kind == FactKind::Caution ? tr("Your points are shown below the program's own, which stay.")
                     : source.isEmpty()            ? tr("The program's own stays beneath it.")
                                        : tr("The program's own stays beneath it; its source: %1.").arg(source));
    m_save->setEnabled(writable);
    m_back->setVisible(own);
    m_back->setEnabled(writable);
    m_back->setText(builtIn ? tr("Back to the built-in") : tr("Remove"));
    build();
}

/// A new set of fields each time: which there are depends on the record.
void FactEditor::build()
{
    delete m_inside;
    m_rows.clear();
    m_inside = new QWidget;
    auto* form = new QFormLayout(m_inside);
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    form->setVerticalSpacing(6);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    const bool hasBuiltIn = facts::builtInObject(m_kind, m_id).has_value();
    for (const FactField& field : factFields(m_kind, m_shown, hasBuiltIn)) {
        addField(form, field);
    }
    body()->addWidget(m_inside);
    setFirstField(m_rows.front().widget);
    // What the fields make of the record is what typing is compared with.
    for (const Row& row : m_rows) {
        setFieldText(m_begun, row.field, fieldText(m_begun, row.field, m_book), m_book);
    }
}

QWidget* FactEditor::makeField(const FactField& field)
{
    const QString text = fieldText(m_shown, field, m_book);
    if (field.shape == Shape::Choice) {
        auto* box = new QComboBox;
        for (const auto& [code, words] : field.choices) {
            box->addItem(words, code);
        }
        box->setCurrentIndex(std::max(0, box->findData(text)));
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        if (m_kind == FactKind::Species && field.path == u"kind"_s) {
            // A plant has other fields than an animal. Later, as the box that tells it goes with the old ones.
            connect(box, &QComboBox::activated, this, [this] {
                m_drafts.insert(place(), typed());
                QMetaObject::invokeMethod(
                    this, [this] { present(m_begun); }, Qt::QueuedConnection);
            });
        }
        return box;
    }
    if (field.shape == Shape::Lines || field.shape == Shape::Names || field.shape == Shape::Paragraph) {
        auto* area = new QPlainTextEdit(text);
        area->setTabChangesFocus(true);
        area->setPlaceholderText(field.hint);
        area->setFixedHeight(theme().px(field.shape == Shape::Paragraph ? 64 : 84));
        return area;
    }
    auto* line = new QLineEdit(text);
    line->setPlaceholderText(field.hint);
    line->setCursorPosition(0);
    return line;
}

void FactEditor::addField(QFormLayout* form, const FactField& field)
{
    QWidget* widget = makeField(field);
    addRow(form, field.label, widget);
    m_rows.push_back({field, widget});
}

QString FactEditor::textIn(const Row& row) const
{
    if (const auto* box = qobject_cast<const QComboBox*>(row.widget)) {
        return box->currentData().toString();
    }
    if (const auto* area = qobject_cast<const QPlainTextEdit*>(row.widget)) {
        return area->toPlainText();
    }
    return static_cast<const QLineEdit*>(row.widget)->text();
}

QJsonObject FactEditor::typed() const
{
    QJsonObject object = m_shown;
    for (const Row& row : m_rows) {
        setFieldText(object, row.field, textIn(row), m_book);
    }
    return object;
}

bool FactEditor::hasDraft() const
{
    return !m_rows.empty() && typed() != m_begun;
}

void FactEditor::keepDraft()
{
    if (hasDraft()) {
        m_drafts.insert(place(), typed());
    }
}

QWidget* FactEditor::field(const QString& path) const
{
    const auto found = std::ranges::find_if(m_rows, [&](const Row& row) { return row.field.path == path; });
    return found == m_rows.end() ? nullptr : found->widget;
}

bool FactEditor::write(const QString& id, const QString& text, const QString& label, const QString& sentence)
{
    store::Edit edit(label);
    edit.set(facts::factSetting(m_kind, id), text);
    if (const auto done = m_keeper.commit(edit); !done) {
        showProblem(QString::fromStdString(done.error().sentence()));
        return false;
    }
    m_drafts.remove(place());
    m_begun = typed();
    emit saved(sentence);
    emit kept(topicOfFact(m_kind, id));
    emit closeRequested();
    return true;
}

void FactEditor::save()
{
    if (!m_id.isEmpty() && !hasDraft()) {
        emit closeRequested(); // nothing was changed
        return;
    }
    clearProblem();
    QJsonObject object = typed();
    const QString name = factName(m_kind, object);
    const QString id = m_id.isEmpty() ? facts::freshId(m_keeper.row(), m_kind, name) : m_id;
    object[u"id"_s] = id;
    if (const auto checked = facts::checkFact(m_keeper.row(), m_kind, id, object); !checked) {
        tellProblem(checked.error());
        return;
    }
    const bool asBefore = facts::builtInObject(m_kind, id) == std::optional(object);
    const QString shown = name.isEmpty() ? title() : name;
    if (write(id, asBefore ? QString() : facts::settingText(object), tr("your version of %1").arg(shown),
              asBefore ? tr("%1 is as the program ships it").arg(shown)
                       : tr("%1 saved; it counts at once").arg(shown))) {
        m_id = id;
    }
}

void FactEditor::goBack()
{
    const auto builtIn = facts::builtInObject(m_kind, m_id);
    const QString name = factName(m_kind, builtIn ? *builtIn : m_shown);
    const bool done = write(m_id, {}, builtIn ? tr("built-in %1 again").arg(name) : tr("%1 removed").arg(name),
                            builtIn ? tr("%1 is as the program ships it; Ctrl+Z brings yours back").arg(name)
                                    : tr("%1 removed; Ctrl+Z brings it back").arg(name));
    if (done) {
        add(m_kind);
    }
}

/// By the label of the field that the error names; the keyboard goes there.
void FactEditor::tellProblem(const Error& error)
{
    const QString where = QString::fromStdString(error.where);
    const auto found = std::ranges::find_if(
        m_rows, [&](const Row& row) { return where.endsWith(u"\"%1\""_s.arg(row.field.path.section(u'/', 0, 0))); });
    if (found == m_rows.end()) {
        showProblem(QString::fromStdString(error.sentence()));
        return;
    }
    Error told = error;
    told.where = found->field.label.toStdString();
    showProblem(QString::fromStdString(told.sentence()));
    found->widget->setFocus(Qt::OtherFocusReason);
}

} // namespace littoral::ui
