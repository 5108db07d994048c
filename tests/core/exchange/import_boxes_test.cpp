#include <gtest/gtest.h>

#include "core/exchange/paper_book.h"

namespace tenthday {
namespace {

using test::PaperBook;

constexpr const char* kHeader = "label,yard,yard_from,layout,layout_from,note\n";

PaperBook twoYards() {
    PaperBook book;
    EXPECT_EQ(book.import("yards", "label\nHeron\nDike\n"), "");
    return book;
}
std::string boxes(PaperBook& book, const std::string& lines) {
    return book.import("boxes", kHeader + lines);
}

TEST(ImportBoxes, AnUndividedBoxHasOneSideNamedByADash) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,7,2027-05-01,\n"), "");
    ASSERT_EQ(book.snapshot().all<NucSide>().size(), 1U);
    const auto side = *book.snapshot().all<NucSide>().begin();
    EXPECT_EQ(side->side, "-");
    EXPECT_EQ(side->frames, Frames{7});
}

TEST(ImportBoxes, ADividedBoxHasSidesAAndB) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,3+4,2027-05-01,\n"), "");
    std::map<std::string, int> frames;
    for (const auto& side : book.snapshot().all<NucSide>()) frames[side->side] = side->frames.value;
    EXPECT_EQ(frames, (std::map<std::string, int>{{"A", 3}, {"B", 4}}));
}

TEST(ImportBoxes, ALinePerMoveOrNewLayoutOfTheSameBox) {
    auto book = twoYards();
    const std::string lines =
        "7,Heron,2027-05-01,3+3,2027-05-01,old\n"
        "7,Dike,2027-06-10,3+3,2027-05-01,\n"
        "7,Dike,2027-06-10,7,2027-06-20,\n"
        "7,,2027-09-01,7,2027-06-20,\n";
    EXPECT_EQ(boxes(book, lines), "");
    EXPECT_EQ(book.snapshot().all<Box>().size(), 1U);
    EXPECT_EQ(book.snapshot().all<BoxStay>().size(), 3U);
    EXPECT_EQ(book.snapshot().all<BoxLayout>().size(), 2U);
    EXPECT_EQ(book.snapshot().all<NucSide>().size(), 3U);
    EXPECT_EQ(book.bareText("boxes"), std::string(kHeader) +
                                          "7,Heron,2027-05-01,3+3,2027-05-01,old\n"
                                          "7,Dike,2027-06-10,3+3,2027-05-01,old\n"
                                          "7,Dike,2027-06-10,7,2027-06-20,old\n"
                                          "7,,2027-09-01,7,2027-06-20,old\n");
    EXPECT_EQ(boxes(book, lines), "");
    EXPECT_EQ(book.changed, 0U);
}

TEST(ImportBoxes, WhatIsUnchangedMakesNoNewRow) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,3+3,2027-05-01,\n"), "");
    EXPECT_EQ(boxes(book, "7,Dike,2027-06-10,3+3,2027-06-10,\n"), "");
    EXPECT_EQ(book.snapshot().all<BoxStay>().size(), 2U);
    EXPECT_EQ(book.snapshot().all<BoxLayout>().size(), 1U);
}

TEST(ImportBoxes, OneDayServesBothWhenTheOtherIsEmpty) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,7,,\n8,Heron,,7,2027-05-02,\n"), "");
    EXPECT_EQ(book.bareText("boxes"), std::string(kHeader) +
                                          "7,Heron,2027-05-01,7,2027-05-01,\n"
                                          "8,Heron,2027-05-02,7,2027-05-02,\n");
}

TEST(ImportBoxes, LinesMayComeInAnyOrder) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Dike,2027-06-10,,,\n8,Dike,2027-05-01,7,,\n7,Heron,2027-05-01,7,,\n"),
              "");
    EXPECT_EQ(book.bareText("boxes"), std::string(kHeader) +
                                          "7,Heron,2027-05-01,7,2027-05-01,\n"
                                          "7,Dike,2027-06-10,7,2027-05-01,\n"
                                          "8,Dike,2027-05-01,7,2027-05-01,\n");
}

TEST(ImportBoxes, AStayOfTheSameDayIsPutRight) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,7,,\n"), "");
    EXPECT_EQ(boxes(book, "7,Dike,2027-05-01,,,\n"), "");
    EXPECT_EQ(book.bareText("boxes"), std::string(kHeader) + "7,Dike,2027-05-01,7,2027-05-01,\n");
}

TEST(ImportBoxes, ALayoutWithHistoryIsNeverReplaced) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,7,,\n"), "");
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,3+3,2027-05-01,\n"),
              "line 2, column layout: laid out as 7 from 2027-05-01 already");
}

TEST(ImportBoxes, LinesThatDisagreeAreRefused) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,7,,\n7,Dike,2027-05-01,7,,\n"),
              "line 3, column yard: line 2 has another from 2027-05-01");
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,7,,\n7,Heron,2027-05-01,3+3,,\n"),
              "line 3, column layout: line 2 has another from 2027-05-01");
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,7,,a\n7,Heron,2027-05-01,7,,b\n"),
              "line 3, column note: differs from line 2");
}

TEST(ImportSides, TheLayoutInForceOnTheDayDecides) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,3+3,,\n7,Heron,2027-06-20,7,2027-06-20,\n"), "");
    const std::string header = "box,side,day\n";
    EXPECT_EQ(book.import("stockings", header + "7,A,2027-06-19\n7,-,2027-06-20\n"), "");
    EXPECT_EQ(book.import("stockings", header + "7,-,2027-06-19\n"),
              "line 2, column side: no side '-': box '7' is laid out as 3+3 on 2027-06-19");
    EXPECT_EQ(book.import("stockings", header + "7,A,2027-06-21\n"),
              "line 2, column side: no side 'A': box '7' is laid out as 7 on 2027-06-21");
    EXPECT_EQ(book.import("stockings", header + "7,A,2027-04-30\n"),
              "line 2, column box: box '7' has no layout on 2027-04-30");
}

TEST(ImportSides, OnTheDayOfANewLayoutTheOldSideCanStillBeMeant) {
    auto book = twoYards();
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,3+3,,\n7,Heron,2027-06-25,2+2+2,2027-06-25,\n"), "");
    EXPECT_EQ(book.import("batches", "label,day\n701,2027-05-20\n702,2027-06-15\n"), "");
    EXPECT_EQ(
        book.import("placements", "batch,box,side,day\n701,7,A,2027-05-30\n702,7,A,2027-06-25\n"),
        "");
    // Batch 701's queen is caught from the old side in the morning, 702's cell goes into the new.
    EXPECT_EQ(book.import("outcomes", "batch,box,side,kind,day\n701,7,A,catch,2027-06-25\n"), "");
    const auto snapshot = book.snapshot();
    const auto caught = *snapshot.all<Outcome>().begin();
    const auto layout = snapshot.find(snapshot.find(*caught->side)->layout);
    EXPECT_EQ(layout->layout, "3+3");
    const auto later = findByLabel<Batch>(snapshot, "702");
    const auto placed = *snapshot.all<Placement>().of(later->id.uuid).begin();
    EXPECT_EQ(snapshot.find(snapshot.find(*placed->side)->layout)->layout, "2+2+2");
}

TEST(ImportBoxes, ANucWithHistoryIsNotDividedAnewBeforeIt) {
    auto book = twoYards();
    ASSERT_EQ(boxes(book, "7,Heron,2027-05-01,7,2027-05-01,\n"), "");
    ASSERT_EQ(book.import("stockings", "box,side,day\n7,-,2027-05-20\n"), "");
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,3+3,2027-05-15,\n"),
              "line 2, column layout_from: its nucs as they are have bees, cells or looks until "
              "2027-05-20");
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,3+3,2027-05-20,\n"),
              "line 2, column layout_from: its nucs as they are have bees, cells or looks until "
              "2027-05-20");
    EXPECT_EQ(boxes(book, "7,Heron,2027-05-01,3+3,2027-05-21,\n"), "");
    PaperBook again;
    for (const char* kind : {"yards", "boxes", "stockings"})
        EXPECT_EQ(again.import(kind, book.text(kind)), "") << kind;
}

TEST(ImportBatches, AMethodKeepsTheStepsAtWhichCellsStand) {
    auto book = twoYards();
    ASSERT_EQ(book.import("builders", "label,yard,kind,from\nBig,Heron,finisher,2027-04-01\n"), "");
    ASSERT_EQ(book.import("batches", "label,day,method\n1,2027-05-10,starter and finisher\n"), "");
    ASSERT_EQ(book.import("loads", "batch,bar,step,builder\n1,1,2,Big\n"), "");
    EXPECT_EQ(book.import("batches", "label,day,method\n1,2027-05-10,one box\n"),
              "line 2, column method: has no step 2, at which cells of this batch stand in a "
              "builder");
    EXPECT_EQ(book.import("batches", "label,day,method\n1,2027-05-11,\n"),
              "line 2, column method: has no step 2, at which cells of this batch stand in a "
              "builder");
    EXPECT_EQ(book.import("batches", "label,day\n1,2027-05-11\n"), "");
}

TEST(Export, LoadsAndSharesCarryNoId) {
    const PaperBook book;
    EXPECT_EQ(book.text("loads"), "batch,bar,step,builder\n");
    EXPECT_EQ(book.text("shares"), "batch,yard,cells\n");
}

TEST(ImportWeather, TakesTheNamesOfACommonOpenFileToo) {
    PaperBook book;
    EXPECT_EQ(book.import("weather",
                          "date,precipitation,temp_max,temp_min,wind\n"
                          "2012-01-01,0.0,12.8,5.0,4.7\n2012-01-02,10.9,10.6,2.8,4.5\n"),
              "");
    EXPECT_EQ(book.text("weather"),
              "date,tmax_c,tmin_c,rain_mm,wind_ms,flew\n"
              "2012-01-01,12.8,5.0,0.0,4.7,\n2012-01-02,10.6,2.8,10.9,4.5,\n");
    EXPECT_EQ(book.import("weather", "date,flew\n2012-01-02,no\n"), "");
    EXPECT_EQ(book.changed, 1U);
    EXPECT_EQ(book.import("weather", "date,tmax_c\n2012-01-03,60\n"),
              "line 2, column tmax_c: -60 to 59.9 is needed");
    EXPECT_EQ(book.import("weather", "date,tmax_c\n2012-01-03,-999\n"),
              "line 2, column tmax_c: -60 to 59.9 is needed");
    EXPECT_EQ(book.import("weather", "date,tmax_c\n2012-01-03,12.34\n"),
              "line 2, column tmax_c: a number with one decimal at most is needed, not '12.34'");
}

TEST(ImportOrders, HaveTheirDefaults) {
    PaperBook book;
    EXPECT_EQ(book.import("orders", "label,kind,count,due\nK-07,mated,12,2027-06-20\n"), "");
    EXPECT_EQ(book.bareText("orders"),
              "label,kind,count,not_before,due,line,part_ok,sure,weight,note\n"
              "K-07,mated,12,,2027-06-20,,no,90.0,1,\n");
    EXPECT_EQ(book.import("orders",
                          "label,kind,count,due,not_before\n"
                          "K-08,mated,12,2027-06-20,2027-06-21\n"),
              "line 2, column due: is before the first day allowed");
}

}  // namespace
}  // namespace tenthday
