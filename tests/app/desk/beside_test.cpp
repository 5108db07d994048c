// Work beside the window's own gives way to it.
#include "desk/beside.h"

#include <gtest/gtest.h>

#include <atomic>
#include <future>
#include <memory>
#include <thread>

#include "base/side_by_side.h"

#ifdef __linux__
#include <sys/resource.h>
#endif

namespace tenthday::test {
namespace {

/// What a piece of work finds in its thread.
template <class Find>
auto found(Haste haste, Find find) {
    auto answer = std::make_shared<std::promise<decltype(find())>>();
    auto future = answer->get_future();
    beside(haste, [answer, find] { answer->set_value(find()); });
    return future.get();
}

TEST(Beside, RunsInAnotherThread) {
    for (const auto haste : {Haste::Now, Haste::Later})
        EXPECT_NE(found(haste, [] { return std::this_thread::get_id(); }),
                  std::this_thread::get_id());
}

TEST(Beside, WhatHasTimeTakesOneCore) {
    if (std::thread::hardware_concurrency() < 2) GTEST_SKIP() << "there is one core";
    const auto threads = [] {
        std::atomic<int> others = 0;
        const auto own = std::this_thread::get_id();
        sideBySide(64, [&](std::size_t) { others += std::this_thread::get_id() != own; });
        return others.load();
    };
    EXPECT_EQ(found(Haste::Later, threads), 0);
}

#ifdef __linux__
TEST(Beside, WhatHasTimeGivesWay) {
    const auto niceness = [] { return getpriority(PRIO_PROCESS, 0); };
    const int own = niceness();
    if (own == 19) GTEST_SKIP() << "nothing gives way to this";
    EXPECT_EQ(found(Haste::Now, niceness), own);
    EXPECT_GT(found(Haste::Later, niceness), own);
    EXPECT_EQ(niceness(), own);
}
#endif

}  // namespace
}  // namespace tenthday::test
