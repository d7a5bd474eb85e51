// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/guide_articles.h"
#include "ui/models/guide_model.h"
#include "ui/models/guide_shelves.h"

#include <QAbstractItemModelTester>
#include <algorithm>
#include <gtest/gtest.h>

namespace littoral::ui {

using namespace Qt::StringLiterals;
using Kind = GuideBlock::Kind;

namespace {

class GuideModelTest : public ::testing::Test
{
protected:
    GuideModelTest() { m_model.setShelves(factShelves(m_sources)); }

    [[nodiscard]] QStringList found() const
    {
        QStringList topics;
        for (int row = 0; row < m_model.rowCount(); ++row) {
            if (const QString topic = m_model.index(row).data(GuideModel::TopicRole).toString(); !topic.isEmpty()) {
                topics << topic;
            }
        }
        return topics;
    }

    std::shared_ptr<const GuideSources> m_sources = guideSources({});
    GuideModel m_model;
};

std::ptrdiff_t placeOf(const GuideArticle& article, Kind kind)
{
    return std::ranges::find(article.blocks, kind, &GuideBlock::kind) - article.blocks.begin();
}

} // namespace

TEST_F(GuideModelTest, EveryFactHasATopicAndEveryTopicAnArticleWithASource)
{
    const QAbstractItemModelTester tester(&m_model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QStringList topics = found();
    const facts::FactBook& book = m_sources->book;
    EXPECT_GE(topics.size(), qsizetype(book.conditions.size() + book.species.size() + book.cautions.size()));
    for (const QString& topic : topics) {
        const auto article = m_model.article(topic);
        ASSERT_TRUE(article) << topic.toStdString();
        EXPECT_EQ(article->topic, topic);
        EXPECT_FALSE(article->title.isEmpty()) << topic.toStdString();
        EXPECT_FALSE(article->source.isEmpty()) << topic.toStdString();
    }
}

TEST_F(GuideModelTest, EveryLinkLeadsSomewhere)
{
    for (const QString& topic : found()) {
        const auto article = m_model.article(topic);
        ASSERT_TRUE(article);
        for (const GuideBlock& block : article->blocks) {
            for (const GuideLine& line : block.lines) {
                EXPECT_TRUE(line.topic.isEmpty() || m_model.has(line.topic))
                    << topic.toStdString() << " to " << line.topic.toStdString();
            }
        }
    }
}

TEST_F(GuideModelTest, CautionsStandAboveActionsAndAreWhole)
{
    for (const facts::Condition& condition : m_sources->book.conditions) {
        const auto article = m_model.article(topicId(u"condition"_s, condition.id));
        ASSERT_TRUE(article);
        const auto boxes = std::ranges::count(article->blocks, Kind::Caution, &GuideBlock::kind);
        EXPECT_EQ(boxes, condition.cautions.size()) << condition.id.toStdString();
        if (!condition.cautions.isEmpty()) {
            EXPECT_LT(placeOf(*article, Kind::Caution), placeOf(*article, Kind::Steps)) << condition.id.toStdString();
            const facts::Caution* caution = m_sources->book.caution(condition.cautions.front());
            const auto box = article->blocks.begin() + placeOf(*article, Kind::Caution);
            EXPECT_EQ(box->lines.size(), caution->points.size() + 1); // and where it comes from
        }
    }
}

TEST_F(GuideModelTest, EvidenceIsWordsWithoutCodes)
{
    for (const facts::Condition& condition : m_sources->book.conditions) {
        for (const auto* side : {&condition.supporting, &condition.against}) {
            for (const facts::Evidence& item : *side) {
                const QString text = evidenceText(m_sources->book, item);
                EXPECT_FALSE(text.contains(u"::"_s) || text.contains(u'_') || text.contains(u'=') ||
                             text.contains(u'<') || text.contains(u'>'))
                    << item.text.toStdString() << " reads " << text.toStdString();
            }
        }
    }
}

TEST_F(GuideModelTest, SearchTakesBeginningsOfAllWords)
{
    m_model.search(u"gree dus"_s);
    ASSERT_FALSE(found().isEmpty());
    EXPECT_EQ(found().front(), u"condition:alg_dust"_s);
    m_model.search(u"davidi"_s);
    EXPECT_EQ(found(), QStringList{u"species:A002"_s});
    m_model.search(u"DAVIDI Neo"_s);
    EXPECT_EQ(found(), QStringList{u"species:A002"_s});
    m_model.search(u"co2"_s); // finds "CO₂"
    EXPECT_TRUE(found().contains(u"condition:an_co2"_s));
    m_model.search(u"xyzzy"_s);
    EXPECT_EQ(m_model.topicCount(), 0);
    EXPECT_EQ(m_model.firstTopic(), -1);
}

TEST_F(GuideModelTest, AShelfNarrowsAndHeadingsCannotBeChosen)
{
    m_model.setShelf(u"caution"_s);
    EXPECT_EQ(m_model.topicCount(), static_cast<int>(m_sources->book.cautions.size()));
    EXPECT_EQ(m_model.flags(m_model.index(0)), Qt::NoItemFlags);
    EXPECT_EQ(m_model.firstTopic(), 1);
}

TEST_F(GuideModelTest, SubjectsFindTheirTopic)
{
    EXPECT_EQ(topicFor(*m_sources, u"alg_diatom"_s), u"condition:alg_diatom"_s);
    EXPECT_EQ(topicFor(*m_sources, u"cherry shrimp"_s), u"species:A002"_s);
    EXPECT_EQ(topicFor(*m_sources, u"C-CO2"_s), u"caution:C-CO2"_s);
    EXPECT_EQ(topicFor(*m_sources, u"water-change"_s), u"task:water-change"_s);
    EXPECT_TRUE(topicFor(*m_sources, u"no such thing"_s).isEmpty());
}

TEST_F(GuideModelTest, EveryFlagOfASpeciesIsASentence)
{
    for (const facts::Species& one : m_sources->book.species) {
        for (const QString& flag : one.flags) {
            EXPECT_TRUE(flagText(flag).endsWith(u'.')) << flag.toStdString();
        }
    }
}

TEST_F(GuideModelTest, TheKeepersOwnSpeciesIsInTheGuide)
{
    record::Row row;
    row.settings.insert(u"fact.species.X001"_s,
                        uR"({"id": "X001", "kind": "fish", "scientific": "Invented piscis", "name": "made-up fish",
                            "position": ["mid"], "sensitivity": 2, "temp": [20, 26], "ph": [6, 7.5], "gh": [2, 12],
                            "kh": [1, 8], "size_cm": 4, "mass_g": 0.5, "group": 6, "tank_l": 60, "gate": "G2",
                            "source": "from memory"})"_s);
    m_model.setShelves(factShelves(guideSources(row)));
    EXPECT_TRUE(m_model.has(u"species:X001"_s));
}

} // namespace littoral::ui
