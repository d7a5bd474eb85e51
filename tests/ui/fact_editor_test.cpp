// SPDX-License-Identifier: GPL-3.0-or-later
// The keeper's versions of what the guide holds: typed, checked, counted at once, and taken back.
#include "core/care/own_gates.h"
#include "tests/ui/frame_fixture.h"
#include "ui/models/guide_rules.h"
#include "ui/pages/guide/fact_editor.h"
#include "ui/pages/guide/guide_page.h"
#include "ui/pages/guide/reading_pane.h"

#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;
using facts::FactKind;

namespace {

class FactEditorTest : public FrameTest
{
protected:
    FactEditorTest()
        : m_editor(m_keeper, m_theme)
    {
        m_editor.resize(420, 900);
        m_editor.show();
    }
    void type(const QString& path, const QString& text)
    {
        QWidget* field = m_editor.field(path);
        ASSERT_NE(field, nullptr) << path.toStdString();
        if (auto* line = qobject_cast<QLineEdit*>(field)) {
            line->setText(text);
        } else if (auto* area = qobject_cast<QPlainTextEdit*>(field)) {
            area->setPlainText(text);
        } else {
            auto* box = qobject_cast<QComboBox*>(field);
            box->setCurrentIndex(box->findData(text));
        }
    }
    [[nodiscard]] QString shown(const QString& path) const
    {
        QWidget* field = m_editor.field(path);
        const auto* line = qobject_cast<QLineEdit*>(field);
        return line != nullptr ? line->text() : qobject_cast<QPlainTextEdit*>(field)->toPlainText();
    }
    [[nodiscard]] facts::FactBook book() const { return facts::factsFor(m_keeper.row()).book; }

    FactEditor m_editor;
};

} // namespace

TEST_F(FactEditorTest, EveryRecordOpensAndSavesUnchangedAsTheProgramsOwn)
{
    std::vector<std::pair<FactKind, QString>> all{{FactKind::Gate, u"G3"_s}, {FactKind::Limit, u"warm"_s}};
    for (const facts::Condition& one : facts::builtInFacts().conditions) {
        all.emplace_back(FactKind::Condition, one.id);
    }
    for (const facts::Species& one : facts::builtInFacts().species) {
        all.emplace_back(FactKind::Species, one.id);
    }
    for (const auto& [kind, id] : all) {
        m_editor.edit(kind, id);
        EXPECT_FALSE(m_editor.hasDraft()) << id.toStdString();
        m_editor.saveButton()->click();
        EXPECT_TRUE(m_editor.problem().isEmpty()) << id.toStdString() << m_editor.problem().toStdString();
        EXPECT_FALSE(facts::isOwn(m_keeper.row(), kind, id))
            << id.toStdString()
            << " came back changed: " << m_keeper.row().settings.value(facts::factSetting(kind, id)).toStdString();
    }
}

TEST_F(FactEditorTest, AVersionCountsAtOnceUndoesAndGoesBack)
{
    m_editor.edit(FactKind::Condition, u"alg_dust"_s);
    type(u"name"_s, u"Dust of my own"_s);
    type(u"age"_s, u"10 – 40"_s);
    type(u"for"_s, u"no3<2,5 ::2\ncolour=green ::1"_s);
    EXPECT_TRUE(m_editor.hasDraft());
    m_editor.saveButton()->click();
    EXPECT_FALSE(m_editor.problem().isEmpty()) << "a comma is no decimal mark in evidence";
    EXPECT_EQ(m_editor.focusWidget(), m_editor.field(u"for"_s));
    type(u"for"_s, u"no3<2.5 ::2\ncolour=green ::1"_s);
    m_editor.saveButton()->click();
    EXPECT_TRUE(m_editor.problem().isEmpty()) << m_editor.problem().toStdString();
    const facts::FactBook kept = book();
    const facts::Condition* own = kept.condition(u"alg_dust"_s);
    EXPECT_TRUE(own->own);
    EXPECT_EQ(own->name, u"Dust of my own"_s);
    EXPECT_EQ(own->ageHigh, 40);
    EXPECT_EQ(own->supporting.size(), 2u);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_FALSE(book().condition(u"alg_dust"_s)->own);
    ASSERT_TRUE(m_keeper.redo());
    m_editor.edit(FactKind::Condition, u"alg_dust"_s);
    EXPECT_FALSE(m_editor.backButton()->isHidden());
    m_editor.backButton()->click();
    EXPECT_FALSE(facts::isOwn(m_keeper.row(), FactKind::Condition, u"alg_dust"_s));
}

TEST_F(FactEditorTest, ANewSpeciesIsAskedForWhatItsKindNeeds)
{
    QSignalSpy kept(&m_editor, &FactEditor::kept);
    m_editor.add(FactKind::Species);
    EXPECT_NE(m_editor.field(u"group"_s), nullptr);
    m_editor.saveButton()->click();
    EXPECT_FALSE(m_editor.problem().isEmpty());
    EXPECT_EQ(kept.count(), 0);
    type(u"scientific"_s, u"Invented piscis"_s);
    type(u"name"_s, u"made-up fish"_s);
    type(u"position"_s, u"middle"_s);
    type(u"temp"_s, u"20–26"_s);
    type(u"ph"_s, u"6 7,5"_s);
    type(u"gh"_s, u"2 to 12"_s);
    type(u"kh"_s, u"1 - 8"_s);
    type(u"size_cm"_s, u"4"_s);
    type(u"mass_g"_s, u"0,5"_s);
    type(u"group"_s, u"6"_s);
    type(u"tank_l"_s, u"60"_s);
    type(u"gate"_s, u"G2"_s);
    type(u"source"_s, u"own experience"_s);
    m_editor.saveButton()->click();
    EXPECT_TRUE(m_editor.problem().isEmpty()) << m_editor.problem().toStdString();
    ASSERT_EQ(kept.count(), 1);
    EXPECT_EQ(kept.front().front().toString(), u"species:own_invented_piscis"_s);
    const facts::FactBook now = book();
    const facts::Species* made = now.speciesById(u"own_invented_piscis"_s);
    ASSERT_NE(made, nullptr);
    EXPECT_DOUBLE_EQ(made->ph.high, 7.5);
    EXPECT_DOUBLE_EQ(made->gh_deg.high, 12.0);
    EXPECT_EQ(made->gate, u"G2"_s);
    // A plant is asked for light instead of a group.
    m_editor.add(FactKind::Species);
    auto* kind = qobject_cast<QComboBox*>(m_editor.field(u"kind"_s));
    kind->setCurrentIndex(kind->findData(u"plant"_s));
    emit kind->activated(kind->currentIndex());
    QTest::qWait(1);
    EXPECT_NE(m_editor.field(u"light"_s), nullptr);
    EXPECT_EQ(m_editor.field(u"group"_s), nullptr);
}

TEST_F(FactEditorTest, GatesLimitsAndPointsOfCautions)
{
    m_editor.edit(FactKind::Gate, u"G4"_s);
    EXPECT_EQ(shown(u"tan"_s), u"first step"_s);
    type(u"tan"_s, u"0.05"_s);
    type(u"min-age/new-media"_s, u"60"_s);
    m_editor.saveButton()->click();
    EXPECT_TRUE(m_editor.problem().isEmpty()) << m_editor.problem().toStdString();
    const care::GateDefinition gate = care::gatesOf(m_keeper.row()).gates.back();
    EXPECT_EQ(gate.minAge.at(record::StartMethod::NewMedia), 60);
    EXPECT_EQ(gate.tan.mgN_per_L, 0.05);
    EXPECT_FALSE(gate.no2.mgN_per_L) << "still the first step";
    m_editor.edit(FactKind::Limit, u"warm"_s);
    type(u"value"_s, u"99"_s);
    m_editor.saveButton()->click();
    EXPECT_TRUE(m_editor.problem().contains(u"24"_s) && m_editor.problem().contains(u"32"_s));
    type(u"value"_s, u"26.5"_s);
    m_editor.saveButton()->click();
    EXPECT_DOUBLE_EQ(care::limitsOf(m_keeper.row()).warm_C, 26.5);
    m_editor.edit(FactKind::Caution, u"C-CO2"_s);
    EXPECT_TRUE(shown(u"points"_s).isEmpty()) << "the program's points are not edited";
    type(u"points"_s, u"The cupboard vent stays open.\nA second alarm hangs low."_s);
    type(u"points/source"_s, u"own experience"_s);
    m_editor.saveButton()->click();
    EXPECT_TRUE(m_editor.problem().isEmpty()) << m_editor.problem().toStdString();
    EXPECT_EQ(book().caution(u"C-CO2"_s)->points.size(), facts::builtInFacts().caution(u"C-CO2"_s)->points.size() + 2);
}

TEST_F(FactEditorTest, WhatIsHalfTypedIsThereAgain)
{
    m_editor.edit(FactKind::Condition, u"alg_dust"_s);
    type(u"check"_s, u"Look again on Sunday"_s);
    m_editor.edit(FactKind::Condition, u"alg_spot"_s);
    EXPECT_FALSE(m_editor.hasDraft());
    m_editor.edit(FactKind::Condition, u"alg_dust"_s);
    EXPECT_EQ(shown(u"check"_s), u"Look again on Sunday"_s);
    EXPECT_TRUE(m_editor.hasDraft());
}

TEST_F(FactEditorTest, EveryFieldHasANameAndTabLeavesIt)
{
    m_theme.setTextScale(2.0);
    for (const FactKind kind : {FactKind::Condition, FactKind::Species, FactKind::Caution}) {
        m_editor.add(kind);
        for (QWidget* widget : m_editor.findChildren<QWidget*>()) {
            if (widget->isVisible() && (widget->focusPolicy() & Qt::TabFocus) != 0 && !widget->focusProxy()) {
                QAccessibleInterface* node = QAccessible::queryAccessibleInterface(widget);
                ASSERT_NE(node, nullptr);
                EXPECT_FALSE(node->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
            }
        }
    }
    auto* points = qobject_cast<QPlainTextEdit*>(m_editor.field(u"points"_s));
    ASSERT_NE(points, nullptr);
    points->setFocus();
    QTest::keyClick(points, Qt::Key_Tab);
    EXPECT_NE(m_editor.focusWidget(), points);
    EXPECT_TRUE(points->toPlainText().isEmpty());
}

TEST_F(FactEditorTest, TheGuideMarksYoursWithTheBuiltInOneStepAway)
{
    GuidePage page(m_keeper, m_theme);
    page.resize(1300, 860);
    page.show();
    page.open(u"condition:alg_dust"_s);
    EXPECT_TRUE(page.takeBackButton()->isHidden());
    QSignalSpy edit(&page, &GuidePage::editWanted);
    page.editButton()->click();
    ASSERT_EQ(edit.count(), 1);
    const QString shipped = page.pane()->article().title;
    m_editor.edit(FactKind::Condition, u"alg_dust"_s);
    type(u"name"_s, u"Dust of my own"_s);
    m_editor.saveButton()->click();
    EXPECT_EQ(page.pane()->article().title, u"Dust of my own"_s);
    EXPECT_TRUE(page.pane()->article().kind.contains(u"yours"_s));
    const QString link = page.pane()->article().blocks.front().lines.front().topic;
    EXPECT_EQ(link, builtInTopic(u"condition:alg_dust"_s));
    page.open(link);
    EXPECT_EQ(page.pane()->article().title, shipped);
    page.back();
    EXPECT_FALSE(page.takeBackButton()->isHidden());
    page.takeBackButton()->click();
    EXPECT_EQ(page.pane()->article().title, shipped);
    ASSERT_TRUE(m_keeper.undo());
    EXPECT_EQ(page.pane()->article().title, u"Dust of my own"_s);
    page.open(u"rule:nitrite-animals"_s);
    EXPECT_FALSE(page.editButton()->isEnabled()) << "published";
    page.open(u"rule:warm"_s);
    EXPECT_TRUE(page.editButton()->isEnabled());
}

} // namespace littoral::ui::test
