// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame_fixture.h"
#include "tests/ui/support/lane_demo.h"
#include "ui/frame/main_window.h"
#include "ui/frame/session.h"
#include "ui/paint/axis_slide.h"
#include "ui/style/littoral_style.h"
#include "ui/widgets/lanes/lane_view.h"
#include "ui/widgets/motion.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QStyle>
#include <QTest>
#include <QWidget>

namespace littoral::ui::test {

using namespace Qt::StringLiterals;

TEST(BetweenAxes, EveryInstantGoesStraightFromOnePlaceToTheOther)
{
    const qint64 flooded = 1'700'000'000'000;
    const AxisView dates{AxisMode::Calendar, flooded - 10 * kDayMs, flooded + 39 * kDayMs, 0, 240.0, 980.0, {}};
    const AxisView ages{AxisMode::Age, -kDayMs / 4, 63 * kDayMs, 0, 240.0, 980.0, {}};
    for (const double done : {0.0, 0.25, 0.5, 0.9, 1.0}) {
        const AxisView now = between(dates, ages, flooded, done);
        for (const int day : {0, 7, 16, 40}) {
            const qint64 at = flooded + day * kDayMs;
            const double straight = (1.0 - done) * dates.x(at, flooded) + done * ages.x(at, flooded);
            EXPECT_NEAR(now.x(at, flooded), straight, 0.01) << day << " at " << done;
        }
    }
    EXPECT_EQ(between(dates, ages, flooded, 1.0), ages);
}

namespace {

int duration(const QWidget& view)
{
    return view.style()->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, &view);
}

/// Motion for the length of a test; the others run without.
class Moving
{
public:
    Moving() { reduceMotion(false); }
    ~Moving() { reduceMotion(true); }
    Moving(const Moving&) = delete;
    Moving& operator=(const Moving&) = delete;
    Moving(Moving&&) = delete;
    Moving& operator=(Moving&&) = delete;
};

} // namespace

TEST(Motion, EndsExactlyAndStartsNothingWhereReducedMotionIsAskedFor)
{
    const Moving moving;
    QWidget view;
    view.show();
    Motion motion(view);
    std::vector<double> steps;
    motion.start([&](double done) { steps.push_back(done); });
    EXPECT_TRUE(motion.isMoving());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !motion.isMoving(); }, 5000));
    EXPECT_EQ(steps.back(), 1.0);
    EXPECT_TRUE(std::ranges::is_sorted(steps));
    reduceMotion(true);
    steps.clear();
    motion.start([&](double done) { steps.push_back(done); });
    EXPECT_EQ(steps, std::vector<double>{1.0});
    EXPECT_FALSE(motion.isMoving());
}

TEST(Motion, TakesAsLongAsTheStyleSays)
{
    const Moving moving;
    const QWidget view;
    EXPECT_GE(duration(view), 120);
    EXPECT_LE(duration(view), 160);
    reduceMotion(true);
    EXPECT_EQ(duration(view), 0);
}

class LaneSlideTest : public ::testing::Test
{
protected:
    LaneSlideTest()
        : m_theme(Scheme::Light)
        , m_view(m_theme, m_axis)
    {
        m_axis.setZone(QTimeZone(3600));
        m_axis.setNow(demo::now());
        m_axis.showAround(27, 20);
        m_view.resize(1392, 850);
    }
    Moving m_moving;
    double markX() const
    {
        const LaneBox& box = m_view.box(0);
        return box.axis.x(m_view.lanes()[0]->series[0].marks.front().at, m_view.lanes()[0]->flooded);
    }
    bool rests(const std::function<bool()>& there) { return QTest::qWaitFor(there, 5000); }

    Theme m_theme;
    TimeAxis m_axis;
    LaneView m_view;
};

TEST_F(LaneSlideTest, MarksSlideFromTheirDateToTheirAge)
{
    m_view.setLanes(demo::sixLanes());
    m_view.show();
    const double date = markX();
    m_axis.setMode(AxisMode::Age);
    EXPECT_NEAR(markX(), date, 0.5) << "the slide begins where the marks are";
    m_axis.setMode(AxisMode::Calendar);
    reduceMotion(true);
    m_axis.setMode(AxisMode::Age);
    const double age = markX();
    EXPECT_GT(std::abs(age - date), 20.0);
    m_axis.setMode(AxisMode::Calendar);
    EXPECT_EQ(markX(), date);
    reduceMotion(false);
    m_axis.setMode(AxisMode::Age);
    EXPECT_TRUE(rests([&] { return std::abs(markX() - age) < 1e-9; })) << "and ends where they belong";
}

TEST_F(LaneSlideTest, TheChosenLaneGrowsOutOfTheOverview)
{
    m_view.setLanes(demo::manyLanes(24, 100));
    m_view.show();
    const int before = m_view.laneRect(3).height();
    QTest::keyClick(&m_view, Qt::Key_Down);
    QTest::keyClick(&m_view, Qt::Key_Down);
    QTest::keyClick(&m_view, Qt::Key_Down);
    EXPECT_NEAR(m_view.laneRect(3).height(), before, 2) << "it begins at the height it had";
    EXPECT_TRUE(rests([&] { return m_view.laneRect(3).height() > before + 30; }));
    reduceMotion(true);
    QTest::keyClick(&m_view, Qt::Key_Down);
    EXPECT_GT(m_view.laneRect(4).height(), before + 30) << "at once";
}

class MotionChoiceTest : public FrameTest
{
};

TEST_F(MotionChoiceTest, IsKeptAndFollowsTheSystemUnlessChosen)
{
    MainWindow window(m_keeper, m_forecasts, m_theme, m_ask);
    const Moving moving;
    window.setSystemMotion(true);
    EXPECT_EQ(duration(window), 0) << "the system asks for it and nothing else was chosen";
    window.actions().action(u"motion.full"_s)->trigger();
    EXPECT_GT(duration(window), 0);
    window.actions().action(u"motion.reduced"_s)->trigger();
    window.setSystemMotion(false);
    EXPECT_EQ(duration(window), 0);
    EXPECT_EQ(Session().motion(), MotionChoice::Reduced);
    window.actions().action(u"motion.system"_s)->trigger();
    EXPECT_GT(duration(window), 0);
}

TEST_F(MotionChoiceTest, ReadsWhatTheDesktopKeeps)
{
    const auto write = [this](const QString& file, const QByteArray& text) {
        const QString whole = path(file);
        QDir().mkpath(QFileInfo(whole).path());
        QFile out(whole);
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(text);
    };
    qunsetenv("LITTORAL_MOTION");
    EXPECT_FALSE(systemReducesMotion());
    write(u"kdeglobals"_s, "[KDE]\nAnimationDurationFactor=0\n");
    EXPECT_TRUE(systemReducesMotion());
    write(u"gtk-3.0/settings.ini"_s, "[Settings]\ngtk-enable-animations=1\n");
    EXPECT_FALSE(systemReducesMotion());
    write(u"gtk-4.0/settings.ini"_s, "[Settings]\ngtk-enable-animations=false\n");
    EXPECT_TRUE(systemReducesMotion());
    qputenv("LITTORAL_MOTION", "full");
    EXPECT_FALSE(systemReducesMotion());
    qputenv("LITTORAL_MOTION", "reduced");
    EXPECT_TRUE(systemReducesMotion());
    qunsetenv("LITTORAL_MOTION");
}

} // namespace littoral::ui::test
