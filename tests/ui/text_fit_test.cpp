// SPDX-License-Identifier: GPL-3.0-or-later
// The check itself: it must find what is cut, covered or crowded, and leave alone what is not.
#include "tests/ui/support/text_fit.h"

#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <functional>
#include <gtest/gtest.h>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

namespace {

class Painted final : public QWidget
{
public:
    explicit Painted(std::function<void(QPainter&)> draw)
        : m_draw(std::move(draw))
    {
        resize(300, 80);
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        m_draw(painter);
    }

private:
    std::function<void(QPainter&)> m_draw;
};

std::vector<TextFault> faultsOf(QWidget& window)
{
    window.show();
    return textFaults(window);
}

std::vector<TextFault> faultsOf(std::function<void(QPainter&)> draw)
{
    Painted view(std::move(draw));
    return faultsOf(view);
}

} // namespace

TEST(TextFit, FindsALabelNarrowerThanItsWords)
{
    QWidget window;
    window.resize(300, 80);
    QLabel label(u"Nitrite 6 mg/L: no animals yet"_s, &window);
    label.setGeometry(10, 10, 280, 24);
    EXPECT_TRUE(faultsOf(window).empty());
    label.setGeometry(10, 10, 60, 24);
    const auto faults = faultsOf(window);
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].flaw, TextFlaw::Clipped);
    label.setGeometry(10, 10, 280, 5);
    EXPECT_EQ(faultsOf(window).size(), 1U) << "cut from above and below";
}

TEST(TextFit, FindsWordsOverWords)
{
    const auto at = [](double x) {
        return [x](QPainter& painter) {
            painter.drawText(QPointF(10, 40), u"day 7"_s);
            painter.drawText(QPointF(x, 40), u"Nitrite"_s);
        };
    };
    EXPECT_TRUE(faultsOf(at(150)).empty());
    const auto faults = faultsOf(at(20));
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].flaw, TextFlaw::Overlapping);
    EXPECT_EQ(faults[0].other, u"Nitrite"_s);
}

TEST(TextFit, FindsWhatAClipOrALaterFillCuts)
{
    EXPECT_EQ(faultsOf([](QPainter& painter) {
                  painter.setClipRect(QRect(0, 0, 30, 80));
                  painter.drawText(QPointF(10, 40), u"Water change"_s);
              }).size(),
              1U);
    EXPECT_EQ(faultsOf([](QPainter& painter) {
                  painter.drawText(QPointF(10, 40), u"Water change"_s);
                  painter.fillRect(QRect(40, 20, 200, 40), Qt::white);
              }).size(),
              1U);
    EXPECT_TRUE(faultsOf([](QPainter& painter) {
                    painter.fillRect(QRect(40, 20, 200, 40), Qt::white);
                    painter.drawText(QPointF(10, 40), u"Water change"_s);
                    painter.save();
                    painter.setClipRect(QRect(0, 0, 20, 80));
                    painter.restore();
                    painter.drawText(QPointF(10, 70), u"not clipped any more"_s);
                }).empty());
}

TEST(TextFit, FollowsTheTransform)
{
    EXPECT_EQ(faultsOf([](QPainter& painter) {
                  painter.translate(280, 0);
                  painter.drawText(QPointF(0, 40), u"beyond the edge"_s);
              }).size(),
              1U);
}

TEST(TextFit, LeavesWhatScrolls)
{
    QScrollArea area;
    area.resize(200, 60);
    auto* label = new QLabel(u"one\ntwo\nthree\nfour\nfive\nsix"_s);
    area.setWidget(label);
    EXPECT_TRUE(faultsOf(area).empty()) << listed(textFaults(area));
    QLineEdit typed(u"a sentence that is much longer than the field it was typed into"_s);
    typed.resize(80, 30);
    EXPECT_TRUE(faultsOf(typed).empty());
}

} // namespace littoral::ui::test
