#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class VirginsVerb : public ProgramTest {};

TEST_F(VirginsVerb, ListsOldestFirstWithChancesAndAdvice) {
    const auto book = makeExample();
    const auto text = answer({"virgins", book, "--on", "2027-06-03"});
    EXPECT_EQ(text.substr(0, text.find('\n')),
              "yard,box,side,batch,age,flown,last_day,mated,still,look,advice");
    const auto rows = rowsOf(text);
    ASSERT_GT(rows.size(), 20U);
    double age = 99;
    for (const auto& row : rows) {
        EXPECT_LE(numberIn(row.at("age")), age);
        age = numberIn(row.at("age"));
        const double hope = numberIn(row.at("mated")) + numberIn(row.at("still"));
        EXPECT_GE(hope, 0);
        EXPECT_LE(hope, 100.1);
        if (row.at("advice") == "wait" || row.at("advice") == "look") {
            EXPECT_GE(row.at("look"), "2027-06-03");
        } else {
            EXPECT_EQ(row.at("look"), "");
            EXPECT_LT(hope, 10.1);
        }
    }
    // Grafted on 22 May, its cells emerge on that day.
    EXPECT_EQ(rows.back().at("batch"), "704");
}

TEST_F(VirginsVerb, TodayIsTheDayWhenNoneIsGiven) {
    const auto book = makeExample();
    EXPECT_EQ(answer({"virgins", book}), answer({"virgins", book, "--on", "2027-06-03"}));
    EXPECT_EQ(answer({"virgins", book, "--today", "2027-05-29"}),
              answer({"virgins", book, "--today", "2027-05-29", "--on", "2027-05-29"}));
}

TEST_F(VirginsVerb, WithoutWeatherChancesAreEmpty) {
    const auto book = makeNew();
    import(book, "yards", "label,roles\nMill,mating builder\n");
    import(book, "boxes",
           "label,yard,yard_from,layout,layout_from\nN1,Mill,2027-04-01,7,2027-04-01\n");
    import(book, "stockings", "box,side,day,open_brood\nN1,-,2027-05-12,yes\n");
    import(book, "batches", "label,start,day,hour\n1,graft,2027-05-04,14\n");
    import(book, "placements", "batch,box,side,day,done\n1,N1,-,2027-05-14,yes\n");
    const auto rows =
        rowsOf(answer({"virgins", book, "--today", "2027-05-28", "--on", "2027-05-28"}));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].at("mated"), "");
    EXPECT_EQ(rows[0].at("flown"), "");
    EXPECT_EQ(rows[0].at("advice"), "wait");
}

TEST_F(VirginsVerb, AWrongDayIsWrongUse) {
    const auto run = runHere({"virgins", makeExample(), "--on", "2027-02-30"});
    EXPECT_EQ(run.exit, 2);
    EXPECT_NE(run.err.find("--on"), std::string::npos) << run.err;
}

}  // namespace
}  // namespace tenthday::test
