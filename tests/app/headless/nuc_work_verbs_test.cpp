#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class NucWorkVerbs : public ProgramTest {};

TEST_F(NucWorkVerbs, StockingListsWhatAWeekWants) {
    const auto book = makeNew();
    import(book, "yards", "label,roles\nMill,mating builder\nHeath,donor\n");
    import(book, "boxes",
           "label,yard,yard_from,layout,layout_from\nN1,Mill,2027-04-01,3+3,2027-04-01\n");
    import(book, "builders", "label,yard,kind,from\nBox,Mill,starter_finisher,2027-01-01\n");
    import(book, "stockings", "box,side,day,bees_ml,donor\nN1,A,2027-05-13,250,Heath\n");
    import(book, "batches", "label,start,day,hour\n1,graft,2027-05-04,14\n");
    import(book, "bars", "batch,bar,cells\n1,1,20\n");
    import(book, "outcomes", "batch,kind,day,count\n1,ripe,2027-05-10,2\n");
    const auto text = answer({"stocking", book, "--today", "2027-05-10"});
    EXPECT_EQ(text,
              "day_by,yard,box,side,bees_ml,brood_frames,donor,reason\n"
              "2027-05-13,Mill,N1,A,250,,Heath,planned\n"
              "2027-05-13,Mill,N1,B,300,,Heath,cells_day\n");
    EXPECT_EQ(answer({"stocking", book, "--today", "2027-05-10", "--on", "2027-05-10"}), text);
    EXPECT_EQ(runHere({"stocking", book, "--on", "May"}).exit, 2);
}

// Her batch is of another season and not read: by her stay she is there all the same.
TEST_F(NucWorkVerbs, AQueenLeftForTheWinterIsThereInSpring) {
    const auto book = makeNew();
    import(book, "seasons", "label,from,until\n2028,2028-03-01,2028-10-31\n");
    import(book, "yards", "label,roles\nMill,mating builder\n");
    import(book, "boxes",
           "label,yard,yard_from,layout,layout_from\nN1,Mill,2027-04-01,7,2027-04-01\n");
    import(book, "builders", "label,yard,kind,from\nBox,Mill,starter_finisher,2027-01-01\n");
    import(book, "stockings", "box,side,day,open_brood\nN1,-,2027-05-13,yes\n");
    import(book, "batches", "label,start,day,hour\n1,graft,2027-05-04,14\n");
    import(book, "bars", "batch,bar,cells\n1,1,20\n");
    import(book, "placements", "batch,box,side,target,day,done\n1,N1,-,nuc,2027-05-14,yes\n");
    const auto spring = [&] {
        return answer({"nucs", book, "--on", "2028-04-20", "--today", "2028-04-15"});
    };
    const std::string head = "yard,box,side,state,ready,ready_from,chance,reason\n";
    EXPECT_EQ(spring().find("judged_good"), std::string::npos);
    import(book, "queens", "label,year\n27-001,2027\n");
    import(book, "caught", "queen,batch,box,side,day\n27-001,1,N1,-,2027-08-10\n");
    import(book, "queenstays", "queen,place,from\n27-001,nuc,2027-08-10\n");
    EXPECT_EQ(spring(), head + "Mill,N1,-,judged_good,no,,100.0,laying\n");
    import(book, "queenstays", "queen,place,from\n27-001,sold,2028-04-18\n");
    EXPECT_EQ(spring(), head + "Mill,N1,-,caught,yes,2028-04-19,100.0,\n");
}

TEST_F(NucWorkVerbs, BroodlessListsSpansAndWhatWasDone) {
    const auto book = makeNew();
    import(book, "yards", "label,roles\nMill,mating builder\n");
    import(book, "boxes",
           "label,yard,yard_from,layout,layout_from\nN1,Mill,2027-04-01,7,2027-04-01\n");
    import(book, "builders", "label,yard,kind,from\nBox,Mill,starter_finisher,2027-01-01\n");
    import(book, "stockings", "box,side,day,open_brood\nN1,-,2027-05-01,yes\n");
    import(book, "makeups", "builder,day,open_brood\nBox,2027-05-03,yes\n");
    import(book, "mitework", "builder,box,side,day,what\n,N1,-,2027-05-12,drip\n");
    EXPECT_EQ(answer({"broodless", book, "--today", "2027-06-01"}),
              "kind,box,side,builder,from,until,done,what\n"
              "nuc,N1,-,,2027-05-10,,2027-05-12,drip\n"
              "builder,,,Box,2027-05-12,,,none\n");
}

}  // namespace
}  // namespace tenthday::test
