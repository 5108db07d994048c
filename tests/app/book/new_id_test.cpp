#include "book/new_id.h"

#include <gtest/gtest.h>

#include <set>

namespace tenthday {
namespace {

TEST(NewId, CarriesTimeVersionAndVariantAsTheStandardSays) {
    // The time of RFC 9562's example in appendix A.6: 22 February 2022, 19:22:22 UTC.
    IdMaker maker([] { return 0x017F22E279B0ULL; }, [] { return 0ULL; });
    EXPECT_EQ(toText(maker.next()), "017f22e2-79b0-7000-8000-000000000000");
}

TEST(NewId, RisesWithinOneMillisecond) {
    IdMaker maker([] { return 1'800'000'000'000ULL; }, [] { return ~0ULL; });
    auto last = maker.next();
    for (int i = 0; i < 10'000; ++i) {
        const auto next = maker.next();
        ASSERT_LT(last, next) << i;
        EXPECT_EQ(toText(next)[14], '7');
        last = next;
    }
}

TEST(NewId, RisesWhenTheClockIsSetBack) {
    std::uint64_t now = 1'800'000'000'000;
    IdMaker maker([&] { return now; }, [] { return 5ULL; });
    const auto before = maker.next();
    now -= 3'600'000;
    EXPECT_LT(before, maker.next());
}

TEST(NewId, DiffersEachTime) {
    std::set<Uuid> seen;
    for (int i = 0; i < 1000; ++i) seen.insert(idMaker().next());
    EXPECT_EQ(seen.size(), 1000U);
}

}  // namespace
}  // namespace tenthday
