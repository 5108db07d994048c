#include "base/side_by_side.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <stdexcept>
#include <thread>
#include <vector>

namespace tenthday {
namespace {

TEST(SideBySide, EachPieceIsDoneOnceAndAllAreDoneAtTheEnd) {
    for (const std::size_t pieces : {0U, 1U, 2U, 7U, 1000U}) {
        std::vector<int> done(pieces, 0);
        sideBySide(pieces, [&](std::size_t i) { ++done[i]; });
        EXPECT_EQ(done, std::vector<int>(pieces, 1));
    }
}

TEST(SideBySide, APieceMayHavePiecesOfItsOwn) {
    std::atomic<int> sum = 0;
    sideBySide(8, [&](std::size_t i) {
        sideBySide(i + 1, [&](std::size_t k) { sum += static_cast<int>(k) + 1; });
    });
    EXPECT_EQ(sum, 120);
}

TEST(SideBySide, WhatAPieceThrowsIsThrownOn) {
    for (const std::size_t pieces : {1U, 50U})
        EXPECT_THROW(sideBySide(pieces,
                                [](std::size_t i) {
                                    if (i == 0) throw std::runtime_error("a piece");
                                }),
                     std::runtime_error);
}

TEST(SideBySide, OneByOneIsInOrderAndInThisThread) {
    const auto here = std::this_thread::get_id();
    std::vector<std::size_t> order;
    {
        const OneByOne beside;
        sideBySide(100, [&](std::size_t i) {
            if (std::this_thread::get_id() == here) order.push_back(i);
        });
    }
    ASSERT_EQ(order.size(), 100U);
    EXPECT_TRUE(std::is_sorted(order.begin(), order.end()));
    std::atomic<int> after = 0;
    sideBySide(100, [&](std::size_t) { ++after; });
    EXPECT_EQ(after, 100);
}

}  // namespace
}  // namespace tenthday
