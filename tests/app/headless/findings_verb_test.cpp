#include <gtest/gtest.h>

#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class FindingsVerb : public ProgramTest {};

TEST_F(FindingsVerb, TheExampleHasThreeAndANote) {
    const auto book = makeExample();
    const auto text = answer({"findings", book});
    EXPECT_EQ(text.substr(0, text.find('\n')), "day,severity,finding,subject,text");
    const auto rows = rowsOf(text);
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0].at("finding"), "too_many_cells");
    EXPECT_EQ(rows[0].at("subject"), "705");
    EXPECT_EQ(rows[1].at("finding"), "catch_holds_nucs");
    EXPECT_EQ(rows[1].at("severity"), "note");
    EXPECT_EQ(rows[1].at("subject"), "701, 702");
    EXPECT_EQ(rows[2].at("finding"), "box_overfull");
    EXPECT_EQ(rows[2].at("subject"), "707");
    EXPECT_EQ(rows[3].at("finding"), "yard_full");
    EXPECT_EQ(rows[3].at("subject"), "707");
}

TEST_F(FindingsVerb, TodayComesFromTheOptionBeforeTheBook) {
    const auto book = makeExample();
    EXPECT_EQ(answer({"findings", book, "--today", "2027-06-03"}), answer({"findings", book}));
    EXPECT_NE(answer({"findings", book, "--today=2027-06-06"}), answer({"findings", book}));
    EXPECT_EQ(answer({"--today", "2027-06-06", "findings", book}),
              answer({"findings", book, "--today", "2027-06-06"}));
}

TEST_F(FindingsVerb, TwoExamplesAreTheSameBooks) {
    const auto one = makeExample("one.tenthday");
    const auto two = at("two.tenthday");
    ASSERT_EQ(runHere({"example", two}).exit, 0);
    for (const char* kind : {"yards", "boxes", "queens", "batches", "placements", "outcomes"})
        EXPECT_EQ(answer({"export", one, kind}), answer({"export", two, kind})) << kind;
}

TEST_F(FindingsVerb, PicturesAreDrawnWithoutADisplay) {
    const auto book = makeExample();
    EXPECT_EQ(answer({"picture", book, "--out", at("chart.png"), "--size", "800x600"}), "");
    EXPECT_EQ(bytesOf(at("chart.png")).substr(1, 3), "PNG");
    EXPECT_EQ(answer({"picture", book, "--out", at("chart.svg"), "--look", "dark", "--from",
                      "2027-06-01", "--to", "2027-06-30"}),
              "");
    EXPECT_NE(bytesOf(at("chart.svg")).find("<svg"), std::string::npos);
    const auto done = runHere({"picture", book, "--out", at("no/chart.png")});
    EXPECT_EQ(done.exit, 1);
    EXPECT_EQ(std::count(done.err.begin(), done.err.end(), '\n'), 1) << done.err;
}

}  // namespace
}  // namespace tenthday::test
