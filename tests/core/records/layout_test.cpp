#include <gtest/gtest.h>

#include "records/validity.h"

namespace tenthday {
namespace {

using Frames = std::vector<std::int32_t>;

TEST(Layout, NamesTheFramesOfEachSide) {
    EXPECT_EQ(framesOfLayout("7"), Frames{7});
    EXPECT_EQ(framesOfLayout("3+3"), (Frames{3, 3}));
    EXPECT_EQ(framesOfLayout("2+2+2"), (Frames{2, 2, 2}));
    EXPECT_EQ(framesOfLayout("20"), Frames{20});
    EXPECT_EQ(framesOfLayout("1+1+1+1+1+1").size(), 6U);
}

TEST(Layout, AnythingElseIsNone) {
    for (const char* text : {"", "+", "3+", "+3", "3++3", "0", "3+0", "21", "-3", "3-3", " 7", "7 ",
                             "3 + 3", "seven", "3,3", "1+1+1+1+1+1+1", "99999999999", "3.5"})
        EXPECT_TRUE(framesOfLayout(text).empty()) << text;
}

TEST(SideName, IsADashAloneElseALetter) {
    EXPECT_EQ(sideName(0, 1), "-");
    EXPECT_EQ(sideName(0, 2), "A");
    EXPECT_EQ(sideName(1, 2), "B");
    EXPECT_EQ(sideName(5, 6), "F");
}

}  // namespace
}  // namespace tenthday
