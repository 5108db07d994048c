#include "window/screen_place.h"

#include <gtest/gtest.h>

namespace tenthday {
namespace {

const QRect kLaptop{0, 0, 1366, 768};
const QRect kBeside{1366, 0, 1920, 1080};

struct Place {
    const char* name;
    QRect wanted;
    QList<QRect> screens;
    QRect expected;
};
void PrintTo(const Place& p, std::ostream* out) { *out << p.name; }

class ScreenPlace : public ::testing::TestWithParam<Place> {};

TEST_P(ScreenPlace, IsWhereItCanBeReached) {
    const auto& p = GetParam();
    const auto place = placeOnScreen(p.wanted, p.screens);
    EXPECT_EQ(place, p.expected) << place.x() << ' ' << place.y() << ' ' << place.width() << ' '
                                 << place.height();
}
// clang-format off
INSTANTIATE_TEST_SUITE_P(Table, ScreenPlace, ::testing::Values(
    Place{"FirstRunOnALaptop", {},                      {kLaptop},          {39, 0, 1280, 728}},
    Place{"StaysPut",          {100, 50, 900, 600},     {kLaptop},          {100, 50, 900, 600}},
    Place{"StaysOnTheSecond",  {1500, 80, 1600, 900},   {kLaptop, kBeside}, {1500, 80, 1600, 900}},
    Place{"SecondIsGone",      {1500, 80, 1600, 900},   {kLaptop},          {0, 0, 1358, 728}},
    Place{"AboveTheTop",       {100, -300, 900, 600},   {kLaptop},          {100, 0, 900, 600}},
    Place{"BeyondTheCorner",   {1300, 700, 900, 600},   {kLaptop},          {458, 128, 900, 600}},
    Place{"FarAway",           {9000, 9000, 900, 600},  {kBeside, kLaptop}, {2378, 440, 900, 600}},
    Place{"TooSmall",          {10, 10, 50, 50},        {kLaptop},          {10, 10, 560, 340}}),
    [](const auto& test) { return test.param.name; });
// clang-format on

}  // namespace
}  // namespace tenthday
