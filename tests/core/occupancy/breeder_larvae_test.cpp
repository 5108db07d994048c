#include "occupancy/breeder_larvae.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;

/// Batch 9 is grafted from B1 on 11 June; B2 is of her line, X of another.
class BreederLarvae : public ::testing::Test {
protected:
    BreederLarvae() : maker_("2027-06-11") {
        maker_.yard("Mill").builder("Box", "Mill").batch("9", "2027-06-11", 15, 12, "Box");
        book_ = test::with(maker_.snapshot(), Line{test::id<Line>(1), 1, "Hill"},
                           Line{test::id<Line>(2), 1, "Other"}, queen(1, "B1", 1),
                           queen(2, "B2", 1), queen(3, "X", 2));
        const auto bar = *book_.all<BatchBar>().begin();
        auto grafted = *bar;
        grafted.breeder = test::id<Queen>(1);
        ChangeSet changes;
        changes.edit(bar, grafted);
        book_ = applied(book_, changes).value();
    }
    static Queen queen(std::uint64_t n, const char* label, std::uint64_t line) {
        Queen queen;
        queen.id = test::id<Queen>(n);
        queen.label = label;
        queen.line = test::id<Line>(line);
        queen.breederFrom = day("2027-01-01");
        return queen;
    }
    void note(const char* on, QueenNoteKind kind) {
        const auto changes =
            noteLarvae(book_, test::id<Queen>(1), day(on), kind, test::id<QueenNote>(++next_));
        ASSERT_TRUE(changes.ok());
        book_ = applied(book_, changes.value()).value();
    }
    LarvaeLook look() const { return larvaeLooks(book_, maker_.batchId("9")).at(0); }

    test::SeasonMaker maker_;
    Snapshot book_;
    std::uint64_t next_ = 10;
};

// Common practice: whether there are larvae fit to graft is seen the day before.
TEST_F(BreederLarvae, ALookIsDueTheDayBeforeTheGraft) {
    EXPECT_EQ(look().queen->label, "B1");
    EXPECT_EQ(look().due, day("2027-06-10"));
    EXPECT_FALSE(look().seen);
    note("2027-06-07", QueenNoteKind::Larvae);
    EXPECT_FALSE(look().seen) << "larvae of the week before say nothing";
    note("2027-06-10", QueenNoteKind::Larvae);
    EXPECT_EQ(look().seen, QueenNoteKind::Larvae);
    note("2027-06-11", QueenNoteKind::NoLarvae);
    EXPECT_EQ(look().seen, QueenNoteKind::NoLarvae) << "the newest counts";
}

TEST_F(BreederLarvae, TheReserveIsOfHerLine) {
    const auto reserve = reserveFor(book_, test::id<Queen>(1), maker_.batchId("9"));
    ASSERT_EQ(reserve.size(), 1U);
    EXPECT_EQ(reserve[0]->label, "B2");
}

TEST_F(BreederLarvae, OfOneDayThereIsOneNote) {
    note("2027-06-10", QueenNoteKind::NoLarvae);
    note("2027-06-10", QueenNoteKind::Larvae);
    EXPECT_EQ(book_.all<QueenNote>().size(), 1U);
    EXPECT_EQ(look().seen, QueenNoteKind::Larvae);
    EXPECT_FALSE(noteLarvae(book_, test::id<Queen>(1), day("2027-06-12"), QueenNoteKind::Larvae,
                            test::id<QueenNote>(99))
                     .ok())
        << "still to come";
}

// Common practice.
TEST_F(BreederLarvae, AreAskedForFromTheDayBeforeUntilTheGraft) {
    const auto told = [&](const char* today) {
        auto book = book_;
        book.setToday(day(today));
        std::vector<Finding> found;
        const auto outlook = test::freshOutlook(book);
        for (const auto& finding : outlook->findings)
            if (finding.kind == FindingKind::LarvaeNotSeen) found.push_back(finding);
        return found;
    };
    EXPECT_TRUE(told("2027-06-09").empty());
    ASSERT_EQ(told("2027-06-10").size(), 1U);
    const auto asked = told("2027-06-11").at(0);
    EXPECT_EQ(asked.severity, Severity::Note);
    EXPECT_EQ(asked.otherLabel, "B1");
    EXPECT_EQ(asked.day, day("2027-06-10"));
    EXPECT_TRUE(told("2027-06-12").empty());
    note("2027-06-10", QueenNoteKind::NoLarvae);
    const auto none = told("2027-06-10").at(0);
    EXPECT_EQ(none.severity, Severity::Warning);
    EXPECT_NE(englishText(none).find("take a queen in reserve"), std::string::npos);
    note("2027-06-10", QueenNoteKind::Larvae);
    EXPECT_TRUE(told("2027-06-10").empty());
}

}  // namespace
}  // namespace tenthday
