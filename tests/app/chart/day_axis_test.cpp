#include "chart/day_axis.h"

#include <gtest/gtest.h>

#include "support/days.h"

namespace tenthday::test {
namespace {

const DayWindow kSeason{day("2027-04-26"), day("2027-09-05")};

DayAxis axis() { return {kSeason, 137, 1200}; }

TEST(DayAxis, ShowsTheWholeSeasonAtFirst) {
    EXPECT_TRUE(axis().showsAll());
    EXPECT_DOUBLE_EQ(axis().xOf(kSeason.first), 137);
    EXPECT_NEAR(axis().xOf(kSeason.last + Days{1}), 1337, 1e-9);
    EXPECT_EQ(axis().visible(), kSeason);
}

TEST(DayAxis, GoesFromDayToXAndBackAtEveryZoom) {
    for (qreal zoom = 1; zoom < 40; zoom *= 1.07) {
        const auto zoomed = axis().zoomedAt(700, zoom).scrolledBy(31.7);
        for (Day d = kSeason.first; d <= kSeason.last; d += Days{1}) {
            ASSERT_EQ(zoomed.dayAt(zoomed.xOf(d)), d) << zoom;
            ASSERT_EQ(zoomed.dayAt(zoomed.middleOf(d)), d) << zoom;
            ASSERT_EQ(zoomed.dayAt(zoomed.xOf(d + Days{1}) - 0.01), d) << zoom;
        }
    }
}

TEST(DayAxis, PutsNoonInTheMiddleOfItsDay) {
    const auto zoomed = axis().zoomedAt(300, 6);
    const Day d = day("2027-06-17");
    EXPECT_NEAR(zoomed.xOf(momentOf(d)), zoomed.middleOf(d), 1e-9);
}

TEST(DayAxis, ZoomKeepsTheDayUnderThePointer) {
    for (const qreal x : {500.0, 700.0, 1000.0}) {
        auto zoomed = axis();
        const Day under = zoomed.dayAt(x);
        for (int i = 0; i < 12; ++i) {
            zoomed = zoomed.zoomedAt(x, 1.25);
            ASSERT_EQ(zoomed.dayAt(x), under);
        }
        for (int i = 0; i < 8; ++i) {
            zoomed = zoomed.zoomedAt(x, 0.8);
            ASSERT_EQ(zoomed.dayAt(x), under);
        }
    }
}

TEST(DayAxis, NeverShowsADayOutsideItsSeason) {
    const auto in = axis().zoomedAt(137, 5);
    EXPECT_DOUBLE_EQ(in.scrolledBy(-1e6).xOf(kSeason.first), 137);
    EXPECT_NEAR(in.scrolledBy(1e6).xOf(kSeason.last + Days{1}), 1337, 1e-6);
    EXPECT_EQ(in.scrolledBy(1e6).visible().last, kSeason.last);
    EXPECT_TRUE(in.zoomedAt(900, 1e-6).showsAll());
    EXPECT_LE(in.zoomedAt(900, 1e6).dayWidth(), DayAxis::kWidestDay);
}

TEST(DayAxis, BringsADayIntoViewByTheLeastScroll) {
    const auto in = axis().zoomedAt(137, 8);
    const Day late = day("2027-08-01");
    const auto shown = in.showing(late, 40);
    EXPECT_NEAR(shown.xOf(late) + shown.dayWidth() + 40, shown.right(), 1e-6);
    EXPECT_EQ(shown.showing(late, 40).scroll(), shown.scroll());
    EXPECT_NEAR(in.centredOn(late).middleOf(late), 137 + 600, 1e-6);
}

TEST(DayAxis, KeepsZoomAndDaysWhenTheWindowGrows) {
    const auto in = axis().zoomedAt(700, 4);
    const auto wider = in.placed(kSeason, 150, 1500);
    EXPECT_DOUBLE_EQ(wider.dayWidth(), in.dayWidth());
    EXPECT_EQ(wider.visible().first, in.visible().first);
    EXPECT_TRUE(axis().placed(kSeason, 150, 700).showsAll());
}

TEST(DayAxis, CrossesTheNewYearAndLeapDays) {
    const DayAxis southern({day("2027-10-01"), day("2028-03-31")}, 0, 900);
    EXPECT_NEAR(southern.xOf(day("2028-03-01")) - southern.xOf(day("2028-02-28")),
                2 * southern.dayWidth(), 1e-9);
    EXPECT_EQ(southern.dayAt(southern.middleOf(day("2028-02-29"))), day("2028-02-29"));
}

}  // namespace
}  // namespace tenthday::test
