/// Two stories of the trade, told to the program in CSV files and answered by its verbs.
#include <gtest/gtest.h>

#include "app/headless/program.h"

namespace tenthday::test {
namespace {

using Rows = std::vector<std::map<std::string, std::string>>;

class WildQueen : public ProgramTest {
protected:
    /// Dequeened Thu 10 June 17:00 with open brood, grafted Fri 11, cells due out Mon 21 at 9:00.
    WildQueen() : book(makeNew()) {
        import(book, "yards", "label,roles\nHome,builder\n");
        import(book, "builders", "label,yard,kind,from\nBox 1,Home,starter_finisher,2027-05-01\n");
        import(book, "makeups", "builder,day,hour,open_brood\nBox 1,2027-06-10,17,yes\n");
        import(book, "batches", "label,day,hour\n7,2027-06-11,9\n");
        import(book, "bars", "batch,bar,cells\n7,1,24\n");
        import(book, "loads", "batch,bar,step,builder\n7,1,1,Box 1\n");
    }
    Rows wildFindings(const std::string& today) {
        Rows rows;
        for (const auto& row : rowsOf(answer({"findings", book, "--today", today})))
            if (row.at("finding") == "wild_queen_overdue") rows.push_back(row);
        return rows;
    }
    std::string book;
};

TEST_F(WildQueen, IsATaskUntilSaturdayAndThenADanger) {
    EXPECT_TRUE(wildFindings("2027-06-12").empty());
    EXPECT_TRUE(wildFindings("2027-06-18").empty());
    const auto found = wildFindings("2027-06-19");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].at("day"), "2027-06-19");
    EXPECT_EQ(found[0].at("severity"), "danger");
    EXPECT_EQ(found[0].at("subject"), "7");
    EXPECT_EQ(found[0].at("text"),
              "no look for wild cells in Box 1: a wild queen can be out from Sat 19 June 17:00: "
              "look today, or cage the cells in place");
}

TEST_F(WildQueen, ATickedLookOnDayEightOrNineEndsItAnEarlyOneDoesNot) {
    import(book, "buildernotes", "builder,kind,day\nBox 1,look,2027-06-15\n");
    EXPECT_EQ(wildFindings("2027-06-19").size(), 1U);
    import(book, "buildernotes", "builder,kind,day\nBox 1,look,2027-06-18\n");
    EXPECT_TRUE(wildFindings("2027-06-19").empty());
}

TEST_F(WildQueen, TheClockFollowsTheFactThatIsSet) {
    // From 216 h to 240 h the warning stays, a day later is what it says.
    import(book, "facts", "fact,override\nwild_oldest_h,240\n");
    const auto found = wildFindings("2027-06-19");
    ASSERT_EQ(found.size(), 1U);
    EXPECT_NE(found[0].at("text").find("from Sun 20 June 17:00"), std::string::npos);
}

class ReadyNucs : public ProgramTest {
protected:
    /// 36 ripe on Mon 14 June. Mill: 20 stocked Fri 11; 10 standing empty; 6 with queens to catch
    /// by the 13th; 4 queenless without brood since 24 May. Home: 14 stocked Sat 12.
    ReadyNucs() : book(makeNew()) {
        import(book, "yards", "label,roles,drive_order\nHome,mating builder,0\nMill,mating,1\n");
        std::string boxes = "label,yard,yard_from,layout,layout_from\n";
        std::string stockings = "box,side,day,open_brood\n";
        std::string placements = "batch,box,side,day,done\n";
        std::string outcomes =
            "batch,box,side,kind,day,count\n3,,,graft,2027-05-04,60\n3,,,ripe,2027-05-14,6\n"
            "4,,,graft,2027-06-04,60\n4,,,sealed,2027-06-10,36\n";
        for (int i = 1; i <= 54; ++i) {
            const auto box = std::to_string(i);
            boxes += box + "," + (i <= 40 ? "Mill" : "Home") + ",2027-04-01,7,2027-04-01\n";
            if (i <= 20) stockings += box + ",-,2027-06-11,yes\n";
            if (i >= 31 && i <= 36) {
                stockings += box + ",-,2027-05-10,yes\n";
                placements += "3," + box + ",-,2027-05-14,yes\n";
                outcomes += "3," + box + ",-,first_eggs,2027-06-02,\n";
            }
            if (i >= 37 && i <= 40) stockings += box + ",-,2027-05-24,no\n";
            if (i >= 41) stockings += box + ",-,2027-06-12,yes\n";
        }
        import(book, "boxes", boxes);
        import(book, "stockings", stockings);
        import(book, "builders",
               "label,yard,kind,from\nBox A,Home,starter_finisher,2027-05-01\n"
               "Box B,Home,starter_finisher,2027-05-01\n");
        import(book, "batches", "label,day\n3,2027-05-04\n4,2027-06-04\n");
        import(book, "bars", "batch,bar,cells\n3,1,60\n4,1,60\n");
        import(book, "loads", "batch,bar,step,builder\n3,1,1,Box A\n4,1,1,Box B\n");
        import(book, "placements", placements);
        import(book, "outcomes", outcomes);
    }
    std::string book;
};

TEST_F(ReadyNucs, AreFourNumbersPerYard) {
    const auto rows =
        rowsOf(answer({"nucs", book, "--on", "2027-06-14", "--totals", "--today", "2027-06-13"}));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[0], (std::map<std::string, std::string>{{"yard", "Home"},
                                                           {"ready", "14"},
                                                           {"likely", "0.0"},
                                                           {"likely_90", ""},
                                                           {"can_stock", "0"},
                                                           {"needs_brood", "0"}}));
    EXPECT_EQ(rows[1].at("yard"), "Mill");
    EXPECT_EQ(rows[1].at("ready"), "20");
    EXPECT_EQ(rows[1].at("can_stock"), "10");
    EXPECT_EQ(rows[1].at("needs_brood"), "4");
    EXPECT_GT(numberIn(rows[1].at("likely")), 5.0);
    EXPECT_LE(numberIn(rows[1].at("likely")), 6.0);
}

TEST_F(ReadyNucs, TwoCellsAreTooMany) {
    const auto rows = rowsOf(answer({"findings", book, "--today", "2027-06-13"}));
    std::string text;
    for (const auto& row : rows)
        if (row.at("finding") == "too_many_cells") text = row.at("text");
    EXPECT_EQ(text.substr(0, text.find(';')),
              "36 ripe on Mon 14 June, 34 nucs ready: 2 cells too many");
    EXPECT_NE(text.find("10 can be stocked by Sun 13 June"), std::string::npos) << text;
    EXPECT_NE(text.find("4 need open brood first"), std::string::npos) << text;
}

TEST_F(ReadyNucs, EverySideSaysWhyItIsNot) {
    std::map<std::string, int> reasons;
    for (const auto& row :
         rowsOf(answer({"nucs", book, "--on", "2027-06-14", "--today", "2027-06-13"})))
        ++reasons[row.at("ready") == "yes" ? "ready" : row.at("reason")];
    EXPECT_EQ(reasons,
              (std::map<std::string, int>{
                  {"ready", 34}, {"not_stocked", 10}, {"needs_brood", 4}, {"awaiting_catch", 6}}));
}

TEST_F(ReadyNucs, StockedTwoMoreAndCaughtNoneThereIsRoomForAll) {
    import(book, "stockings",
           "box,side,day,open_brood\n21,-,2027-06-12,yes\n22,-,2027-06-12,yes\n");
    for (const auto& row : rowsOf(answer({"findings", book, "--today", "2027-06-13"})))
        EXPECT_NE(row.at("finding"), "too_many_cells");
}

}  // namespace
}  // namespace tenthday::test
