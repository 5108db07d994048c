#include "records/change_set.h"

#include <gtest/gtest.h>

#include "support/small_book.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

ChangeSet moveTo(const Snapshot& book, Day to) {
    ChangeSet change{.verb = Verb::MoveBatch, .subject = "1", .day = to, .rows = {}};
    const auto before = book.find(test::kBatch);
    Batch after = *before;
    after.day = to;
    change.edit(before, after);
    return change;
}

TEST(ChangeSet, LeadsToTheNextSnapshotAndLeavesTheOldOne) {
    const auto book = test::smallBook();
    const auto next = applied(book, moveTo(book, day("2027-06-09")));
    ASSERT_TRUE(next) << next.error().text;
    EXPECT_EQ(next.value().find(test::kBatch)->day, day("2027-06-09"));
    EXPECT_EQ(next.value().find(test::kBatch)->version, 2);
    EXPECT_EQ(book.find(test::kBatch)->day, day("2027-06-04"));
    EXPECT_EQ(book.find(test::kBatch)->version, 1);
}

TEST(ChangeSet, SharesEveryRowItDoesNotTouch) {
    const auto book = test::smallBook();
    const auto next = applied(book, moveTo(book, day("2027-06-09"))).value();
    EXPECT_EQ(next.find(test::kYard).get(), book.find(test::kYard).get());
    EXPECT_EQ(*next.all<BatchBar>().begin(), *book.all<BatchBar>().begin());
    EXPECT_EQ(next.factsPtr(), book.factsPtr());
}

TEST(ChangeSet, InverseBringsTheContentBackUnderAHigherVersion) {
    const auto book = test::smallBook();
    const auto change = moveTo(book, day("2027-06-09"));
    const auto moved = applied(book, change).value();
    const auto undone = applied(moved, change.inverse());
    ASSERT_TRUE(undone) << undone.error().text;
    EXPECT_TRUE(undone.value().sameContent(book));
    EXPECT_EQ(undone.value().find(test::kBatch)->version, 3);
    const auto redone = applied(undone.value(), change.inverse().inverse());
    ASSERT_TRUE(redone) << redone.error().text;
    EXPECT_TRUE(redone.value().sameContent(moved));
    EXPECT_EQ(redone.value().find(test::kBatch)->version, 4);
}

TEST(ChangeSet, InverseOfAWholeBookIsNothingLeft) {
    const auto rows = test::smallBookRows();
    const auto empty = applied(test::smallBook(), rows.inverse());
    ASSERT_TRUE(empty) << empty.error().text;
    EXPECT_TRUE(empty.value().sameContent(Snapshot{}));
    EXPECT_TRUE(
        applied(empty.value(), rows.inverse().inverse()).value().sameContent(test::smallBook()));
}

TEST(ChangeSet, DeletedRowComesBackWithAHigherVersionThanItHad) {
    const auto book = test::smallBook();
    ChangeSet gone;
    gone.erase(*book.all<BatchBar>().begin());
    const auto without = applied(book, gone).value();
    EXPECT_TRUE(without.all<BatchBar>().empty());
    const auto back = applied(without, gone.inverse()).value();
    EXPECT_EQ((*back.all<BatchBar>().begin())->version, 2);
    EXPECT_TRUE(back.sameContent(book));
}

TEST(ChangeSet, EditThatChangesNothingIsNoEdit) {
    const auto book = test::smallBook();
    EXPECT_TRUE(moveTo(book, day("2027-06-04")).isEmpty());
    EXPECT_FALSE(moveTo(book, day("2027-06-05")).isEmpty());
}

TEST(ChangeSet, RefusesARowThatWasChangedMeanwhile) {
    const auto book = test::smallBook();
    const auto mine = moveTo(book, day("2027-06-09"));
    const auto theirs = applied(book, moveTo(book, day("2027-06-11"))).value();
    const auto refused = applied(theirs, mine);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text, "batch: the row was changed meanwhile");
}

TEST(ChangeSet, RefusesAnIdThatIsThereAlready) {
    const auto book = test::smallBook();
    ChangeSet twice;
    twice.add(Box{test::kBox, 1, "13", ""});
    EXPECT_EQ(applied(book, twice).error().text, "box: a row with this id is there already");
}

TEST(ChangeSet, RefusesTheSameNewIdTwiceAlsoInAManyRowEdit) {
    ChangeSet many;
    for (std::uint64_t n = 10; n < 30; ++n)
        many.add(Box{id<Box>(n), 1, "B" + std::to_string(n), ""});
    EXPECT_TRUE(applied(test::smallBook(), many));
    many.add(Box{id<Box>(12), 1, "other", ""});
    EXPECT_EQ(applied(test::smallBook(), many).error().text,
              "box: a row with this id is there already");
}

TEST(ChangeSet, ManyNewRowsAreAllFound) {
    ChangeSet many;
    for (std::uint64_t n = 100; n > 10; --n)
        many.add(Box{id<Box>(n), 1, std::to_string(n) + "x", ""});
    const auto next = applied(test::smallBook(), many).value();
    EXPECT_EQ(next.all<Box>().size(), 91U);
    for (std::uint64_t n = 11; n <= 100; ++n) ASSERT_NE(next.find(id<Box>(n)), nullptr) << n;
}

TEST(ChangeSet, ChangeOfAnOverrideChangesTheFacts) {
    const auto book = test::smallBook();
    ChangeSet change;
    change.add(FactOverride{id<FactOverride>(1), 1, "emergence_h", 390000});
    const auto next = applied(book, change).value();
    EXPECT_EQ(next.facts()[Fact::EmergenceH], 390);
    EXPECT_EQ(book.facts()[Fact::EmergenceH], 384);
    EXPECT_EQ(applied(next, change.inverse()).value().facts()[Fact::EmergenceH], 384);
}

}  // namespace
}  // namespace tenthday
