#include "base/count.h"

#include <gtest/gtest.h>

namespace tenthday {
namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Subtractable = requires(A a, B b) {
    a - b;
};
template <class A, class B>
concept Multipliable = requires(A a, B b) {
    a* b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
    a < b;
};

static_assert(Addable<Cells, Cells> && Subtractable<Frames, Frames>);
static_assert(!Addable<Cells, Frames>, "cells plus frames means nothing");
static_assert(!Addable<Cells, int>, "a bare number does not say of what");
static_assert(!Subtractable<Cells, BeesMl>);
static_assert(!Multipliable<Cells, Cells>);
static_assert(!Comparable<Cells, Frames>);
static_assert(!std::is_convertible_v<int, Cells>);
static_assert(!std::is_convertible_v<Cells, int>);
static_assert(!std::is_convertible_v<Cells, Frames>);
static_assert(std::is_trivially_copyable_v<Cells> && sizeof(Cells) == 4);

TEST(Count, AddsAndComparesWithinOneKind) {
    Cells cells{20};
    cells += Cells{18};
    EXPECT_EQ(cells, Cells{38});
    EXPECT_EQ(cells - Cells{40}, Cells{-2});
    EXPECT_EQ((cells -= Cells{8}).value, 30);
    EXPECT_LT(cells, Cells{31});
    EXPECT_EQ(Cells{}.value, 0);
}

}  // namespace
}  // namespace tenthday
