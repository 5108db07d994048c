#include <gtest/gtest.h>

#include "records/validity.h"
#include "support/small_book.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

std::string refusal(const ChangeSet& change) {
    const auto next = applied(test::smallBook(), change);
    return next ? "" : next.error().text;
}

TEST(References, MustLeadToARow) {
    ChangeSet change;
    change.add(BoxStay{id<BoxStay>(9), 1, test::kBox, id<Yard>(99), day("2027-05-01")});
    EXPECT_EQ(refusal(change), "box_stay.yard: refers to nothing");
}

TEST(References, MustBeSetWhereTheyAreNotOptional) {
    ChangeSet change;
    change.add(BatchShare{id<BatchShare>(9), 1, test::kBatch, {}, Cells{4}});
    EXPECT_EQ(refusal(change), "batch_yard.yard: refers to nothing");
}

TEST(References, MayBeEmptyWhereTheyAreOptional) {
    ChangeSet change;
    change.add(BoxStay{id<BoxStay>(9), 1, test::kBox, {}, day("2027-08-01")});
    change.add(BatchBar{id<BatchBar>(9), 1, test::kBatch, 2, {}, Cells{20}});
    EXPECT_EQ(refusal(change), "");
}

TEST(References, MayLeadToARowOfTheSameEditInAnyOrder) {
    ChangeSet change;
    change.add(BoxStay{id<BoxStay>(9), 1, id<Box>(9), test::kYard, day("2027-05-01")});
    change.add(Box{id<Box>(9), 1, "13", ""});
    EXPECT_EQ(refusal(change), "");
}

TEST(References, RowInUseIsNotDeleted) {
    const auto book = test::smallBook();
    ChangeSet yard;
    yard.erase(book.find(test::kYard));
    EXPECT_EQ(refusal(yard), "yard.id: still in use by box_stay");
    ChangeSet batch;
    batch.erase(book.find(test::kBatch));
    EXPECT_EQ(refusal(batch), "batch.id: still in use by batch_bar");
    ChangeSet queen;
    queen.erase(book.find(test::kQueen));
    EXPECT_EQ(refusal(queen), "queen.id: still in use by batch_bar");
}

TEST(References, RowIsDeletedWithAllThatUsesIt) {
    const auto book = test::smallBook();
    ChangeSet change;
    change.erase(book.find(test::kBatch));
    change.erase(*book.all<BatchBar>().begin());
    EXPECT_EQ(refusal(change), "");
}

TEST(References, RowIsDeletedOnceNothingUsesItAnyMore) {
    const auto book = test::smallBook();
    ChangeSet change;
    const auto bar = *book.all<BatchBar>().begin();
    BatchBar after = *bar;
    after.breeder.reset();
    change.edit(bar, after);
    change.erase(book.find(test::kQueen));
    EXPECT_EQ(refusal(change), "");
}

TEST(Labels, AreUniquePerKind) {
    ChangeSet change;
    change.add(Box{id<Box>(9), 1, "12", ""});
    EXPECT_EQ(refusal(change), "box.label: is there already: 12");
    ChangeSet other;  // a queen may be called as a box is
    other.add(Queen{.id = id<Queen>(9),
                    .label = "12",
                    .year = {},
                    .mother = {},
                    .line = {},
                    .breederFrom = {},
                    .breederUntil = {},
                    .note = {}});
    EXPECT_EQ(refusal(other), "");
}

TEST(Labels, CanBeSwappedInOneEdit) {
    ChangeSet first;
    first.add(Box{id<Box>(9), 1, "13", ""});
    const auto book = applied(test::smallBook(), first).value();
    ChangeSet swap;
    swap.edit(book.find(test::kBox), Box{test::kBox, 1, "13", ""});
    swap.edit(book.find(id<Box>(9)), Box{id<Box>(9), 1, "12", ""});
    const auto next = applied(book, swap);
    ASSERT_TRUE(next) << next.error().text;
    EXPECT_EQ(findByLabel<Box>(next.value(), "13")->id, test::kBox);
}

TEST(RefusedEdit, ChangesNothingAtAll) {
    const auto book = test::smallBook();
    ChangeSet change;
    change.add(Box{id<Box>(9), 1, "13", ""});
    change.add(Box{id<Box>(10), 1, "", ""});
    ASSERT_FALSE(applied(book, change));
    EXPECT_TRUE(book.sameContent(test::smallBook()));
    EXPECT_EQ(book.find(id<Box>(9)), nullptr);
}

}  // namespace
}  // namespace tenthday
