#include "base/id.h"

#include <gtest/gtest.h>

#include <unordered_set>

#include "support/ids.h"

namespace tenthday {
namespace {

struct YardKind;
struct BoxKind;
using YardId = Id<YardKind>;
using BoxId = Id<BoxKind>;

template <class A, class B>
concept Assignable = requires(A a, B b) {
    a = b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
    a == b;
};

static_assert(Assignable<YardId&, YardId> && Comparable<YardId, YardId>);
static_assert(!Assignable<YardId&, BoxId>, "a box's id is no yard's id");
static_assert(!Comparable<YardId, BoxId>);
static_assert(!std::is_convertible_v<YardId, bool>, "an id is asked, not converted");
static_assert(std::is_trivially_copyable_v<YardId> && sizeof(YardId) == 16);

constexpr const char* kText = "0190f0a1-b2c3-7d4e-8f5a-6b7c8d9e0f1a";

TEST(Id, TextKeepsEveryNibbleInItsPlace) {
    const auto uuid = uuidFromText(kText);
    ASSERT_TRUE(uuid);
    EXPECT_EQ(uuid->high, 0x0190f0a1b2c37d4eULL);
    EXPECT_EQ(uuid->low, 0x8f5a6b7c8d9e0f1aULL);
    EXPECT_EQ(toText(*uuid), kText);
}

TEST(Id, ReadsUpperCaseAndWritesLower) {
    const auto uuid = uuidFromText("0190F0A1-B2C3-7D4E-8F5A-6B7C8D9E0F1A");
    ASSERT_TRUE(uuid);
    EXPECT_EQ(toText(*uuid), kText);
}

TEST(Id, RefusesAnyOtherForm) {
    for (const char* text :
         {"", "0190f0a1", "{190f0a1-b2c3-7d4e-8f5a-6b7c8d9e0f1a",
          "0190f0a1b-2c3-7d4e-8f5a-6b7c8d9e0f1a", "0190f0a1-b2c3-7d4e-8f5a-6b7c8d9e0f1",
          "0190f0a1-b2c3-7d4e-8f5a-6b7c8d9e0f1a0", "0190f0a1-b2c3-7d4e-8f5a-6b7c8d9e0f1g",
          "0190f0a1 b2c3 7d4e 8f5a 6b7c8d9e0f1a"})
        EXPECT_FALSE(uuidFromText(text)) << text;
}

TEST(Id, NoneIsAllZeroAndNothingElse) {
    EXPECT_TRUE(YardId{}.isNone());
    EXPECT_FALSE(YardId{});
    EXPECT_FALSE((YardId{Uuid{0, 1}}.isNone()));
    EXPECT_FALSE((YardId{Uuid{1, 0}}.isNone()));
}

TEST(Id, OrdersByTimeFirstAsUuid7Does) {
    const Uuid earlier{0x0190000000007fffULL, ~0ULL};
    const Uuid later{0x0190000000017000ULL, 0};
    EXPECT_LT(earlier, later);
    EXPECT_LT(toText(earlier), toText(later));
}

TEST(Id, HashTellsThousandsApart) {
    std::unordered_set<std::size_t> hashes;
    for (std::uint64_t n = 0; n < 5000; ++n)
        hashes.insert(std::hash<YardId>{}(test::id<YardKind>(n)));
    EXPECT_EQ(hashes.size(), 5000U);
}

}  // namespace
}  // namespace tenthday
