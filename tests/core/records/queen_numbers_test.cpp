#include "records/queen_numbers.h"

#include <gtest/gtest.h>

#include "support/with_rows.h"

namespace tenthday {
namespace {

Snapshot queensCalled(const std::vector<std::string>& labels) {
    ChangeSet changes;
    std::uint64_t n = 1;
    for (const auto& label : labels) {
        Queen queen;
        queen.id = test::id<Queen>(n++);
        queen.label = label;
        changes.add(queen);
    }
    return applied(Snapshot{}, changes).value();
}

std::string next(const Snapshot& snapshot, const char* pattern, QueenNumberParts parts) {
    return QueenNumbers(snapshot, QueenPattern::of(pattern).value()).next(parts);
}

const QueenNumberParts kParts{2027, "Buckfast Hill", "705"};

TEST(QueenNumbers, EachPlaceholderIsFilled) {
    const Snapshot none;
    EXPECT_EQ(next(none, "{yy}-{n:3}", kParts), "27-001");
    EXPECT_EQ(next(none, "{year}/{n}", kParts), "2027/1");
    EXPECT_EQ(next(none, "{line} {batch}.{n:2}", kParts), "Buckfast Hill 705.01");
    EXPECT_EQ(next(none, "{n}", kParts), "1");
    EXPECT_EQ(next(none, "Q{n:2}-{yy}", {2009, {}, {}}), "Q01-09");
}

TEST(QueenNumbers, TheNextIsAboveTheHighestInUse) {
    const auto book = queensCalled({"27-001", "27-007", "26-099", "27-x", "27-", "B 4"});
    EXPECT_EQ(next(book, "{yy}-{n:3}", kParts), "27-008");
    EXPECT_EQ(next(book, "{yy}-{n:3}", {2026, {}, {}}), "26-100") << "each year by itself";
    EXPECT_EQ(next(book, "{yy}-{n:3}", {2028, {}, {}}), "28-001");
    EXPECT_EQ(next(book, "B {n}", kParts), "B 5");
}

TEST(QueenNumbers, OneAfterTheOtherAreAllDifferent) {
    const auto book = queensCalled({"A2"});
    QueenNumbers numbers(book, QueenPattern::of("{line}{n}").value());
    EXPECT_EQ(numbers.next({2027, "A", {}}), "A3");
    EXPECT_EQ(numbers.next({2027, "A", {}}), "A4");
    EXPECT_EQ(numbers.next({2027, "B", {}}), "B1") << "each line counts by itself";
    EXPECT_EQ(numbers.next({2027, "A", {}}), "A5");
}

TEST(QueenNumbers, PatternsThatCannotBeAreRefused) {
    for (const char* text : {"", "27", "{yy}", "{n}{n}", "{n:0}", "{n:7}", "{n:33}", "{day}{n}",
                             "{n", "n}", "{}{n}", "{n} {n:3}"})
        EXPECT_FALSE(QueenPattern::of(text).ok()) << text;
    for (const char* text : {"{n}", "{n:6}", "a b {n}", "{yy}{n}{batch}"})
        EXPECT_TRUE(QueenPattern::of(text).ok()) << text;
}

}  // namespace
}  // namespace tenthday
