/// Lines copied out of a spreadsheet.
#include "exchange/pasted.h"

#include <gtest/gtest.h>

#include "records/order_days.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

using Lines = std::vector<std::vector<std::string>>;

Lines linesOf(std::string_view text) {
    const auto read = readPasted(text);
    return read ? read.value().lines : Lines{{"refused: " + read.error().text}};
}

TEST(Pasted, TabsPartCellsAsSpreadsheetsCopyThem) {
    EXPECT_EQ(linesOf("K-03\t12\t2027-06-14\nK-04\t5\t2027-06-20\n"),
              (Lines{{"K-03", "12", "2027-06-14"}, {"K-04", "5", "2027-06-20"}}));
    EXPECT_EQ(linesOf("a, b\t1"), (Lines{{"a, b", "1"}}));
    EXPECT_EQ(linesOf("a\tb\r\nc\td\r\n"), (Lines{{"a", "b"}, {"c", "d"}}));
    EXPECT_EQ(linesOf("a\tb\rc\td"), (Lines{{"a", "b"}, {"c", "d"}}));
}

TEST(Pasted, CommasAndSemicolonsServeWhereThereAreNoTabs) {
    EXPECT_EQ(linesOf("a,b\nc,d"), (Lines{{"a", "b"}, {"c", "d"}}));
    EXPECT_EQ(linesOf("a;1,5;x\nb;2,5;y"), (Lines{{"a", "1,5", "x"}, {"b", "2,5", "y"}}));
}

TEST(Pasted, QuotesHoldLineEndsTabsAndQuotes) {
    EXPECT_EQ(linesOf("\"Hill, J.\"\t\"two\nlines\"\t\"6\"\"\"\n"),
              (Lines{{"Hill, J.", "two\nlines", "6\""}}));
    EXPECT_EQ(linesOf("6\" frame\tx"), (Lines{{"6\" frame", "x"}})) << "inside a cell";
    EXPECT_EQ(linesOf(" a \t\" b \" \n"), (Lines{{"a", " b "}})) << "its spaces are meant";
    EXPECT_EQ(linesOf("a\t\"open"), (Lines{{"refused: line 1: a quote is never closed"}}));
}

TEST(Pasted, BlankLinesAreNoneAndShortOnesAreFilled) {
    EXPECT_EQ(linesOf("\n\n a \tb\tc\n\t\t\nd\n\n"), (Lines{{"a", "b", "c"}, {"d", "", ""}}));
    EXPECT_EQ(linesOf(""), Lines{});
    EXPECT_EQ(linesOf("\xEF\xBB\xBFx\ty"), (Lines{{"x", "y"}}));
}

TEST(Pasted, WhatIsNoTextIsRefused) {
    EXPECT_EQ(linesOf("a\n\xFF"), (Lines{{"refused: line 2: not readable as text"}}));
}

TEST(Pasted, WhatIsWrittenReadsBack) {
    const Lines lines{
        {"K-03", "two\nlines", "a\tb"}, {"6\"", "", "plain, with comma"}, {" outer ", "\t", "x"}};
    std::string text;
    for (const auto& line : lines) appendPasted(text, line);
    EXPECT_EQ(linesOf(text), lines);
}

class PastedOrders : public ::testing::Test {
protected:
    PastedEdit edit(const Lines& lines) {
        return editOf(book, "orders", {"label", "kind", "count", "due"}, lines, [this] {
            return Uuid{7, ++next};
        });
    }
    std::uint64_t next = 0;
    Snapshot book = with(SeasonMaker().snapshot(), orderFor(1, 5, "2027-06-20"));
};

TEST_F(PastedOrders, AllLinesComeAsOneEdit) {
    const auto made =
        edit({{"K-03", "mated", "12", "2027-06-14"}, {"Order 1", "mated", "8", "2027-06-20"}});
    EXPECT_TRUE(made.isGood());
    EXPECT_EQ(made.isNew, (std::vector<bool>{true, false}));
    EXPECT_EQ(made.changes.rows.size(), 2U);
    EXPECT_TRUE(applied(book, made.changes).ok());
}

TEST_F(PastedOrders, LinesTooManyToBeToldApartAreCountedByWhatTheyChange) {
    Lines lines{{"Order 1", "mated", "8", "2027-06-20"}};
    for (int i = 0; i < 600; ++i)
        lines.push_back({"N-" + std::to_string(i), "mated", "1", "2027-06-20"});
    const auto made = edit(lines);
    ASSERT_TRUE(made.isGood());
    ASSERT_TRUE(made.counts);
    EXPECT_EQ(made.counts->fresh, 600U);
    EXPECT_EQ(made.counts->changed, 1U) << "it was there already";
    EXPECT_TRUE(made.isNew.empty()) << "nothing is said of a line";
    EXPECT_FALSE(edit({lines.front()}).counts) << "few are told apart";
}

TEST_F(PastedOrders, EveryBadLineIsToldAndNoneIsTaken) {
    const auto made = edit({{"K-03", "mated", "12", "2027-06-14"},
                            {"K-04", "tame", "5", "2027-06-20"},
                            {"K-05", "mated", "0", "2027-06-20"},
                            {"K-06", "mated", "5", "14 June"}});
    EXPECT_FALSE(made.isGood());
    EXPECT_TRUE(made.changes.isEmpty());
    ASSERT_EQ(made.troubles.size(), 4U);
    EXPECT_EQ(made.troubles[0], "");
    EXPECT_NE(made.troubles[1].find("kind"), std::string::npos) << made.troubles[1];
    EXPECT_NE(made.troubles[2].find("1 to 9999"), std::string::npos) << made.troubles[2];
    EXPECT_NE(made.troubles[3].find("due"), std::string::npos) << made.troubles[3];
    for (const auto& trouble : made.troubles) EXPECT_EQ(trouble.find("line "), std::string::npos);
}

TEST_F(PastedOrders, ALabelThatComesTwiceIsToldAtItsSecondLine) {
    const auto made = edit({{"K-03", "mated", "12", "2027-06-14"},
                            {"K-04", "mated", "12", "2027-06-14"},
                            {"K-03", "mated", "5", "2027-06-20"}});
    EXPECT_FALSE(made.isGood());
    EXPECT_EQ(made.troubles[0], "");
    EXPECT_EQ(made.troubles[1], "");
    EXPECT_NE(made.troubles[2], "");
    EXPECT_TRUE(made.changes.isEmpty());
}

TEST_F(PastedOrders, TermsStandBesideTheirOrderInTheSameEdit) {
    const std::vector<std::string> columns{"label", "kind",    "count",    "due",
                                           "sure",  "purpose", "standing", "ship_days"};
    const auto taken = [&](const Lines& lines) {
        return editOf(book, "orders", columns, lines, [this] { return Uuid{7, ++next}; });
    };
    const auto made = taken({{"K-03", "mated", "12", "2027-06-14", "", "", "waiting", "123"},
                             {"Splits", "own", "5", "2027-06-20", "80", "split", "open", ""},
                             {"K-05", "mated", "5", "2027-06-20", "", "none", "open", ""},
                             {"Order 1", "mated", "5", "2027-06-20", "90", "", "", ""}});
    ASSERT_TRUE(made.isGood());
    const auto after = applied(book, made.changes).value();
    EXPECT_EQ(after.all<Order>().size(), 4U);
    ASSERT_EQ(after.all<OrderTerms>().size(), 2U) << "terms that say nothing are no row";
    const auto waiting = termsOf(after, findByLabel<Order>(after, "K-03")->id);
    EXPECT_EQ(waiting.standing, OrderStanding::Waiting);
    EXPECT_EQ(waiting.shipDays, "123");
    EXPECT_EQ(termsOf(after, findByLabel<Order>(after, "Splits")->id).purpose, OrderPurpose::Split);
    const auto bad = taken({{"K-03", "mated", "12", "2027-06-14", "", "", "open", ""},
                            {"K-04", "mated", "12", "2027-06-14", "", "split", "open", ""},
                            {"K-06", "mated", "12", "2035-06-14", "", "", "open", ""},
                            {"K-07", "mated", "12", "2027-06-14", "", "", "open", "18"}});
    EXPECT_EQ(bad.troubles[0], "");
    EXPECT_NE(bad.troubles[1].find("only queens for oneself"), std::string::npos);
    EXPECT_NE(bad.troubles[2].find("is in no season"), std::string::npos);
    EXPECT_NE(bad.troubles[3].find("ship_days"), std::string::npos) << bad.troubles[3];
    EXPECT_TRUE(bad.changes.isEmpty());
}

}  // namespace
}  // namespace tenthday::test
