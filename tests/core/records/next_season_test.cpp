// A season is over: what goes on into the next does, what does not is retired, one undo takes all
// of it back.
#include "records/next_season.h"

#include <gtest/gtest.h>

#include "records/relations.h"
#include "support/ids.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

class NextSeasons : public ::testing::Test {
protected:
    NextSeasons() : maker_("2027-11-01") {
        maker_.yard("Mill").box("Q1", "Mill", "3+3", "2027-04-01");
        maker_.box("Q2", "Mill", "7", "2027-04-01").builder("Big", "Mill").builder("Old", "Mill");
        ChangeSet queens;
        const auto queen = [&](std::uint64_t n, const char* label, std::optional<Day> until) {
            queens.add(
                Queen{test::id<Queen>(n), 1, label, 2026, {}, {}, day("2027-04-01"), until, {}});
        };
        queen(1, "Rosa", std::nullopt);
        queen(2, "Tilla", day("2027-12-31"));
        queen(3, "Gone", day("2027-06-01"));
        book_ = applied(maker_.snapshot(), queens).value();
    }
    static Uuid fresh() {
        static std::uint64_t next = 70000;
        return test::id<Book>(++next).uuid;
    }
    template <class Row>
    Id<Row> idOf(const char* label) {
        return findByLabel<Row>(book_, label)->id;
    }
    test::SeasonMaker maker_;
    Snapshot book_;
};

TEST_F(NextSeasons, IsAYearLaterWithTheNextName) {
    const auto next = nextSeasonAfter(book_);
    EXPECT_EQ(next.from, day("2028-01-01"));
    EXPECT_EQ(next.until, day("2028-12-31"));
    EXPECT_TRUE(next.label.find("2028") != std::string::npos) << next.label;
    EXPECT_EQ(servingBreeders(book_).size(), 2U) << "one was taken out in June";
}

TEST_F(NextSeasons, WhatGoesOnStandsAndWhatDoesNotIsRetiredInOneStep) {
    auto next = nextSeasonAfter(book_);
    next.retiredBoxes = {idOf<Box>("Q2")};
    next.retiredBuilders = {idOf<Builder>("Old")};
    next.retiredBreeders = {idOf<Queen>("Rosa")};
    const auto edit = carryOver(book_, next, fresh);
    ASSERT_TRUE(edit) << edit.error().text;
    const auto after = applied(book_, edit.value());
    ASSERT_TRUE(after) << after.error().text;
    const auto& book = after.value();
    EXPECT_EQ(book.all<Season>().size(), book_.all<Season>().size() + 1);
    EXPECT_TRUE(yardOn(book, idOf<Box>("Q1"), day("2028-05-01")));
    EXPECT_FALSE(yardOn(book, idOf<Box>("Q2"), day("2028-01-01")));
    EXPECT_TRUE(yardOn(book, idOf<Box>("Q2"), day("2027-12-31"))) << "its history stays";
    EXPECT_EQ(book.find(idOf<Builder>("Old"))->until, day("2027-12-31"));
    EXPECT_FALSE(book.find(idOf<Builder>("Big"))->until);
    EXPECT_EQ(book.find(idOf<Queen>("Rosa"))->breederUntil, day("2027-12-31"));
    EXPECT_FALSE(book.find(idOf<Queen>("Tilla"))->breederUntil) << "her last day was the season's";
    EXPECT_EQ(book.find(idOf<Queen>("Gone"))->breederUntil, day("2027-06-01"));
    const auto back = applied(book, edit.value().inverse());
    ASSERT_TRUE(back);
    EXPECT_TRUE(back.value().sameContent(book_));
}

TEST_F(NextSeasons, ARetiredBoxGoesNowhereItWasToGoLater) {
    const auto box = idOf<Box>("Q2");
    const auto goesTo = [&](std::uint64_t n, const char* from) {
        ChangeSet stay;
        stay.add(BoxStay{test::id<BoxStay>(n), 1, box, idOf<Yard>("Mill"), day(from)});
        book_ = applied(book_, stay).value();
    };
    goesTo(901, "2028-05-10");
    auto next = nextSeasonAfter(book_);
    next.retiredBoxes = {box};
    for (const bool alsoOnItsFirstDay : {false, true}) {
        if (alsoOnItsFirstDay) goesTo(902, "2028-01-01");
        const auto edit = carryOver(book_, next, fresh);
        ASSERT_TRUE(edit) << edit.error().text;
        const auto after = applied(book_, edit.value());
        ASSERT_TRUE(after) << after.error().text;
        for (const char* on : {"2028-01-01", "2028-05-10", "2028-11-30"})
            EXPECT_FALSE(yardOn(after.value(), box, day(on))) << on;
        EXPECT_TRUE(yardOn(after.value(), box, day("2027-12-31")));
        const auto back = applied(after.value(), edit.value().inverse());
        ASSERT_TRUE(back) << back.error().text;
        EXPECT_TRUE(back.value().sameContent(book_));
    }
}

TEST_F(NextSeasons, CannotBeginBeforeThisOneHasEnded) {
    auto next = nextSeasonAfter(book_);
    next.from = day("2027-12-31");
    EXPECT_FALSE(carryOver(book_, next, fresh));
    next = nextSeasonAfter(book_);
    next.until = next.from - Days{1};
    EXPECT_FALSE(carryOver(book_, next, fresh));
}

}  // namespace
}  // namespace tenthday
