// Lists taken into the open book and written from it.
#include "window/lists.h"

#include "app/book/book_fixture.h"
#include "book/finished_file.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

class ListsTest : public test::BookTest {
protected:
    void SetUp() override {
        desk_ = Desk::open(makeSmallBook(), test::fixedOptions()).value();
        ChangeSet changes;
        changes.add(Season{id<Season>(2), 1, "2028", day("2028-04-01"), day("2028-09-30")});
        ASSERT_TRUE(desk_->apply(changes));
    }
    void TearDown() override { desk_.reset(); }
    Result<int> take(const std::string& kind, const char* text) {
        const auto path = at(QStringLiteral("list.csv"));
        EXPECT_TRUE(writeWhole(path, text));
        return importList(*desk_, kind, path);
    }

    std::unique_ptr<Desk> desk_;
};

TEST_F(ListsTest, RowsOfTheSeasonShownAreOneUndoStep) {
    const auto rows = take("batches", "label,day,method\n7,2027-06-20,our way\n");
    ASSERT_TRUE(rows) << rows.error().text;
    EXPECT_EQ(rows.value(), 1);
    EXPECT_EQ(desk_->outlook()->batches.size(), 2U);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->outlook()->batches.size(), 1U);
}

TEST_F(ListsTest, BatchesOfAnotherSeasonGoIntoTheFileAndNotAmongThoseShown) {
    ASSERT_TRUE(take("batches", "label,day,method\n7,2028-06-20,our way\n"));
    EXPECT_EQ(desk_->outlook()->batches.size(), 1U);
    EXPECT_TRUE(desk_->snapshot().isLabelOfOtherSeason("7"));
    EXPECT_FALSE(desk_->canUndo()) << "undo begins anew";
    // What hangs on it comes the same way, though it is not shown.
    ASSERT_TRUE(take("outcomes", "batch,kind,day,count\n7,graft,2028-06-20,20\n"));
    ASSERT_TRUE(desk_->showSeason(id<Season>(2)));
    ASSERT_EQ(desk_->outlook()->batches.size(), 1U);
    EXPECT_TRUE(desk_->outlook()->batches[0]->timeline.grafted);
}

TEST_F(ListsTest, ABadLineChangesNothingAndNamesItsFile) {
    const auto before = desk_->snapshot();
    const auto bad = take("batches", "label,day\n7,2028-06-20\n8,2028-02-30\n");
    ASSERT_FALSE(bad);
    EXPECT_NE(bad.error().text.find("list.csv line 3, column day"), std::string::npos)
        << bad.error().text;
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
    EXPECT_FALSE(importList(*desk_, "batches", at(QStringLiteral("nowhere.csv"))));
}

TEST_F(ListsTest, WhatIsWrittenIsTakenAgainAsNothingNew) {
    const auto path = at(QStringLiteral("out.csv"));
    ASSERT_TRUE(take("batches", "label,day,method\n7,2028-06-20,our way\n"));
    ASSERT_TRUE(exportList(*desk_, "batches", path));
    const auto again = importList(*desk_, "batches", path);
    ASSERT_TRUE(again) << again.error().text;
    EXPECT_EQ(again.value(), 0);
}

}  // namespace
}  // namespace tenthday
