#include "occupancy/breeder_uses.h"

#include <gtest/gtest.h>

#include "exchange/example.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

class BreederUses : public ::testing::Test {
protected:
    BreederUses() { maker_.yard("East").builder("Box", "East"); }

    void queen(std::uint64_t n, const char* label, std::optional<std::uint64_t> line,
               const char* from = "2027-04-01", const char* until = nullptr) {
        Queen row;
        row.id = id<Queen>(n);
        row.label = label;
        if (line) row.line = id<Line>(*line);
        row.breederFrom = day(from);
        if (until != nullptr) row.breederUntil = day(until);
        rows_.add(row);
    }
    void line(std::uint64_t n, const char* label) { rows_.add(Line{id<Line>(n), 1, label}); }

    /// A batch grafted from a queen.
    void graft(const char* label, const char* on, std::uint64_t from) {
        maker_.batch(label, on, 14, 20, "Box");
        froms_[label] = id<Queen>(from);
    }
    Snapshot book() {
        auto snapshot = applied(maker_.snapshot(), rows_).value();
        ChangeSet bars;
        for (const auto& bar : snapshot.all<BatchBar>()) {
            BatchBar with = *bar;
            with.breeder = froms_.at(snapshot.find(bar->batch)->label);
            bars.edit(bar, with);
        }
        return applied(snapshot, bars).value();
    }
    std::vector<BreederUse> uses(std::uint64_t queen) {
        for (auto& season : breederSeasons(book()))
            if (season.queen->id == id<Queen>(queen)) return season.uses;
        return {};
    }
    static std::vector<std::string> labels(const std::vector<Ptr<Queen>>& queens) {
        std::vector<std::string> all;
        for (const auto& queen : queens) all.push_back(queen->label);
        return all;
    }

    test::SeasonMaker maker_{"2027-05-01"};
    ChangeSet rows_;
    std::map<std::string, Id<Queen>> froms_;
};

// Four days before the graft, for 24 h (S9, S15, S25).
TEST_F(BreederUses, SheIsConfinedFourDaysBeforeTheGraftForADay) {
    queen(1, "A1", {});
    graft("1", "2027-05-10", 1);
    const auto all = uses(1);
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(toText(all[0].confined.from), "2027-05-06T14:00");
    EXPECT_EQ(toText(all[0].confined.until), "2027-05-07T14:00");
    EXPECT_FALSE(all[0].free);
    EXPECT_FALSE(all[0].tooSoon);
}

// S25: three queens share a batch every fourth day; one alone would have three days between.
TEST_F(BreederUses, EveryFourthDayIsTooSoonAloneAndFineInTurns) {
    queen(1, "A1", {});
    graft("1", "2027-05-10", 1);
    graft("2", "2027-05-14", 1);
    graft("3", "2027-05-19", 1);
    auto all = uses(1);
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[1].free, Days{3});
    EXPECT_TRUE(all[1].tooSoon);
    EXPECT_EQ(all[2].free, Days{4});
    EXPECT_FALSE(all[2].tooSoon);
    queen(2, "A2", {});
    queen(3, "A3", {});
    froms_["2"] = id<Queen>(2);
    graft("4", "2027-05-22", 1);
    froms_["3"] = id<Queen>(3);
    all = uses(1);
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[1].free, Days{11});
    EXPECT_FALSE(all[1].tooSoon);
}

TEST_F(BreederUses, BatchesOfOneStayAreOneUse) {
    queen(1, "A1", {});
    graft("1", "2027-05-10", 1);
    graft("2", "2027-05-10", 1);
    graft("3", "2027-05-11", 1);
    const auto all = uses(1);
    ASSERT_EQ(all.size(), 2U) << "a day later she is confined anew, the hour she is freed";
    EXPECT_EQ(all[0].batches.size(), 2U);
    EXPECT_TRUE(all[1].tooSoon);
    EXPECT_EQ(all[1].free, Days{0});
}

TEST_F(BreederUses, ReserveIsOfHerLineABreederAndFree) {
    line(1, "Alder");
    line(2, "Birch");
    queen(1, "A1", 1);
    queen(2, "A2", 1);
    queen(3, "A3", 1);                              // used on the same days
    queen(4, "A4", 1, "2027-05-07");                // not yet a breeder
    queen(5, "A5", 1, "2026-04-01", "2027-05-06");  // no more
    queen(6, "B1", 2);
    graft("1", "2027-05-10", 1);
    graft("2", "2027-05-10", 3);
    EXPECT_EQ(labels(uses(1).at(0).reserve), (std::vector<std::string>{"A2"}));
    EXPECT_EQ(labels(uses(3).at(0).reserve), (std::vector<std::string>{"A2"}));
}

TEST_F(BreederUses, WithoutALineThereIsNoReserve) {
    queen(1, "A1", {});
    queen(2, "A2", {});
    graft("1", "2027-05-10", 1);
    EXPECT_TRUE(uses(1).at(0).reserve.empty());
}

/// Reckoned here without weather and losses; the dates of the batches must say the same.
TEST(Confinement, IsTheOneOfTheBatchesOwnDates) {
    auto snapshot = applied(Snapshot(), exampleContent()).value();
    snapshot.setSeason((*snapshot.all<Season>().begin())->id);
    ChangeSet changes;
    const auto last = *(snapshot.all<Batch>().end() - 1);
    Batch confined = *last;
    confined.start = Start::Confined;
    changes.edit(last, confined);
    snapshot = applied(snapshot, changes).value();
    OutlookMemo memo;
    const auto outlook = outlookOf(snapshot, memo);
    int seen = 0;
    for (const auto& batch : outlook->batches) {
        const auto span = confinementOf(snapshot, *batch->batch);
        EXPECT_EQ(span.from, batch->timeline.find(Event::Confine)->likely) << batch->batch->label;
        EXPECT_EQ(span.until, batch->timeline.find(Event::FreeBreeder)->likely);
        seen += batch->timeline.grafted ? 1 : 0;
    }
    EXPECT_GT(seen, 0) << "grafts that were recorded are among them";
}

}  // namespace
}  // namespace tenthday
