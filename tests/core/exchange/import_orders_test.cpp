/// Orders and what hangs on them are looked at together when they are imported: what the form would
/// refuse, the file's line is refused for.
#include <gtest/gtest.h>

#include "core/exchange/paper_book.h"

namespace tenthday::test {
namespace {

/// A season, a batch of 20 grafts with 12 ripe cells, an order for ten queens.
class ImportedOrders : public ::testing::Test {
protected:
    ImportedOrders() {
        take("seasons", "label,from,until\n2027,2027-04-01,2027-08-31\n");
        take("batches", "label,day\n701,2027-05-10\n");
        take("bars", "batch,bar,cells\n701,1,20\n");
        take("outcomes", "batch,kind,day,count\n701,ripe,2027-05-20,12\n");
        take("orders",
             "label,kind,count,due\nK-01,mated,10,2027-06-20\n"
             "K-02,ripe_cell,4,2027-05-20\n");
    }
    void take(std::string_view kind, std::string_view text) {
        ASSERT_EQ(book.import(kind, text), "") << kind;
    }
    std::string refusal(std::string_view kind, const std::string& text) {
        return book.import(kind, text);
    }
    std::string deliveries(const std::string& lines) {
        return refusal("deliveries", "order,day,count,batch,failed,why\n" + lines);
    }

    PaperBook book;
};

TEST_F(ImportedOrders, AnOrderThatNoSeasonShowsIsRefused) {
    EXPECT_EQ(refusal("orders",
                      "label,kind,count,due\nK-03,mated,1,2027-06-20\n"
                      "K-04,mated,1,2035-06-20\n"),
              "line 3, column due: 2035-06-20 is in no season and would not be seen; seasons are "
              "added in Set-up");
    EXPECT_EQ(refusal("orders", "label,kind,count,due\nK-04,mated,1,2027-10-20\n"), "")
        << "the last queens of the season";
}

TEST_F(ImportedOrders, NoMoreIsDeliveredThanWasOrdered) {
    EXPECT_EQ(deliveries("K-01,2027-06-20,6,,0,none\nK-01,2027-06-21,3,,0,none\n"
                         "K-01,2027-06-22,2,,0,none\n"),
              "line 4, column count: only 1 are owed");
    EXPECT_EQ(deliveries("K-01,2027-06-20,6,,2,drone_layer\nK-01,2027-06-21,6,,0,none\n"), "");
    EXPECT_EQ(deliveries("K-01,2027-06-22,1,,0,none\n"),
              "line 2, column count: nothing is owed any more");
    EXPECT_EQ(refusal("orders", "label,kind,count,due\nK-01,mated,9,2027-06-20\n"),
              "line 2, column count: 10 are delivered already");
}

TEST_F(ImportedOrders, NoMoreIsDeliveredOfABatchThanItGave) {
    EXPECT_EQ(deliveries("K-01,2027-06-20,9,701,0,none\nK-02,2027-05-20,4,701,0,none\n"),
              "line 3, column count: batch 701 had 12 ripe cells, 13 would be delivered of it");
    EXPECT_EQ(deliveries("K-01,2027-06-20,9,701,0,none\nK-02,2027-05-20,3,701,0,none\n"), "");
}

TEST_F(ImportedOrders, ACountOfTheWholeBatchStandsInPlaceOfItsBars) {
    take("batches", "label,day\n702,2027-05-12\n");
    take("bars", "batch,bar,cells\n702,1,10\n702,2,10\n");
    take("outcomes",
         "batch,bar,kind,day,count\n702,1,ripe,2027-05-21,6\n702,2,ripe,2027-05-21,5\n");
    EXPECT_EQ(deliveries("K-01,2027-06-20,10,702,0,none\nK-02,2027-05-22,2,702,0,none\n"),
              "line 3, column count: batch 702 had 11 ripe cells, 12 would be delivered of it");
    take("outcomes", "batch,kind,day,count\n702,ripe,2027-05-21,9\n");
    EXPECT_EQ(deliveries("K-01,2027-06-20,10,702,0,none\n"),
              "line 2, column count: batch 702 had 9 ripe cells, 10 would be delivered of it")
        << "it says how many the bars gave, and does not come on top of them";
    take("outcomes", "batch,kind,day,count\n702,ripe,2027-05-22,8\n");
    EXPECT_EQ(deliveries("K-01,2027-06-20,9,702,0,none\n"),
              "line 2, column count: batch 702 had 8 ripe cells, 9 would be delivered of it")
        << "the newest day counts";
    take("outcomes",
         "batch,bar,kind,day,count\n702,1,ripe,2027-05-23,7\n702,2,ripe,2027-05-23,3\n");
    EXPECT_EQ(deliveries("K-01,2027-06-20,10,702,0,none\n"), "") << "both bars counted anew";
}

TEST_F(ImportedOrders, NothingIsDeliveredAheadOfToday) {
    EXPECT_EQ(deliveries("K-01,2028-06-02,1,,0,none\n"),
              "line 2, column day: 2028-06-02 is ahead of today");
}

TEST_F(ImportedOrders, EarmarksAreForOpenOrdersForQueensAndNoMoreThanIsOwed) {
    const auto marks = [&](const std::string& lines) {
        return refusal("earmarks", "order,batch,count\n" + lines);
    };
    EXPECT_EQ(marks("K-01,701,11\n"), "line 2, column count: of 10 owed 0 are earmarked elsewhere");
    EXPECT_EQ(marks("K-02,701,1\n"),
              "line 2, column order: cells and virgins are of the batch of their day");
    take("orders", "label,kind,count,due\nK-03,mated,20,2027-07-20\n");
    EXPECT_EQ(marks("K-01,701,9\nK-03,701,12\n"),
              "line 3, column count: batch 701 has only 11 grafts that are not earmarked");
    take("earmarks", "order,batch,count\nK-01,701,9\n");
    EXPECT_EQ(refusal("orderterms", "order,standing\nK-01,cancelled\n"),
              "line 2, column standing: 9 are earmarked for it");
    EXPECT_EQ(refusal("orderterms", "order,purpose\nK-01,split\n"),
              "line 2, column purpose: only queens for oneself have a purpose");
    EXPECT_EQ(refusal("orders", "label,kind,count,due\nK-01,virgin,10,2027-06-20\n"),
              "line 2, column kind: queens are earmarked for it, so it is not for cells");
}

TEST_F(ImportedOrders, WhatStoodBeforeIsNotAskedAgain) {
    const auto kept = book.text("orders");
    take("seasons", "label,from,until\n2027,2025-04-01,2025-08-31\n");
    EXPECT_EQ(book.import("orders", kept), "");
    EXPECT_EQ(book.changed, 0U);
    EXPECT_EQ(book.import("orders",
                          "label,kind,count,due\nK-01,mated,10,2027-06-20\n"
                          "K-05,mated,1,2025-06-20\n"),
              "")
        << "beside a new one, by its label alone";
    EXPECT_EQ(book.changed, 1U);
}

}  // namespace
}  // namespace tenthday::test
