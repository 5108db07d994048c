/// Limits fitted to ticks that are counted by hand.
#include "weather/fly_fit.h"

#include <gtest/gtest.h>

#include <vector>

namespace tenthday {
namespace {

using Ticks = std::vector<DayWeather>;

void add(Ticks& ticks, int count, double tmaxC, bool flew) {
    for (int i = 0; i < count; ++i) ticks.push_back({tmaxC, 0.0, 1.0, flew});
}

TEST(FlyFit, NeedsTwentyTicksAndThreeEachWay) {
    Ticks ticks;
    add(ticks, 16, 20, true);
    add(ticks, 3, 15, false);
    EXPECT_FALSE(fitFlyingLimit(ticks, Facts()));
    ticks.push_back({std::nullopt, {}, {}, true});  // nobody knows how warm it was
    ticks.push_back({19.0, {}, {}, std::nullopt});  // nobody looked
    EXPECT_FALSE(fitFlyingLimit(ticks, Facts()));
    add(ticks, 1, 20, true);
    ASSERT_TRUE(fitFlyingLimit(ticks, Facts()));
    EXPECT_EQ(fitFlyingLimit(ticks, Facts())->ticks, 20);

    Ticks oneSided;
    add(oneSided, 28, 20, true);
    add(oneSided, 2, 12, false);
    EXPECT_FALSE(fitFlyingLimit(oneSided, Facts()));
}

TEST(FlyFit, TakesTheLimitThatGetsFewestTicksWrong) {
    Ticks ticks;
    add(ticks, 8, 14.0, false);
    add(ticks, 2, 16.4, false);
    add(ticks, 4, 16.5, true);
    add(ticks, 1, 17.0, false);  // one that no limit gets right
    add(ticks, 9, 19.0, true);
    const auto fit = fitFlyingLimit(ticks, Facts()).value();
    EXPECT_EQ(fit.tmaxC, 16.5) << "above 16.4 and not above 16.5: one tick wrong";
    EXPECT_EQ(fit.ticks, 24);
    EXPECT_EQ(fit.wrong, 1);
    EXPECT_EQ(fit.wrongNow, 4) << "with 18 °C the four days of 16.5 °C";
}

TEST(FlyFit, OfEqualLimitsTakesTheOneNearestToTheDefault) {
    Ticks ticks;
    add(ticks, 10, 12.0, false);
    add(ticks, 10, 22.0, true);
    EXPECT_EQ(fitFlyingLimit(ticks, Facts())->tmaxC, 18.0) << "12.1 to 22 all get none wrong";
    Facts own;
    ASSERT_TRUE(own.set(Fact::FlyTmaxC, 14).ok());
    EXPECT_EQ(fitFlyingLimit(ticks, own)->tmaxC, 18.0) << "the default, not the user's own";
    add(ticks, 1, 17.0, true);
    EXPECT_EQ(fitFlyingLimit(ticks, Facts())->tmaxC, 17.0);
    ticks.clear();
    add(ticks, 10, 19.0, false);
    add(ticks, 10, 22.0, true);
    EXPECT_EQ(fitFlyingLimit(ticks, Facts())->tmaxC, 19.1);
}

TEST(FlyFit, KeepsTheLimitsOfWindAndRain) {
    Ticks ticks;
    add(ticks, 10, 14.0, false);
    add(ticks, 10, 20.0, true);
    for (int i = 0; i < 5; ++i) ticks.push_back({21.0, 12.0, 0.0, false});  // wet and warm
    for (int i = 0; i < 2; ++i) ticks.push_back({21.0, 0.0, 20.0, true});   // they flew in a gale
    const auto fit = fitFlyingLimit(ticks, Facts()).value();
    EXPECT_EQ(fit.tmaxC, 18.0);
    EXPECT_EQ(fit.wrong, 2) << "no warmth makes a gale a flying day";
    EXPECT_EQ(fit.wrongNow, 2);
}

TEST(FlyFit, GoesNoFurtherThanAFactMay) {
    Ticks ticks;
    add(ticks, 17, 59.0, false);
    add(ticks, 3, 59.5, true);
    const auto fit = fitFlyingLimit(ticks, Facts()).value();
    Facts own;
    EXPECT_TRUE(own.set(Fact::FlyTmaxC, fit.tmaxC).ok());
}

}  // namespace
}  // namespace tenthday
