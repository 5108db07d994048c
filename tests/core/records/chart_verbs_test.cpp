#include "records/chart_verbs.h"

#include <gtest/gtest.h>

#include "records/relations.h"
#include "support/season_maker.h"

namespace tenthday::test {
namespace {

/// Two batches grafted on one day, whose builders are made up the day before; two yards of nucs.
class ChartVerbs : public ::testing::Test {
protected:
    ChartVerbs() {
        maker.yard("Home", 1).yard("Alder", 2);
        maker.box("N1", "Home", "3+3", "2027-05-01").box("N2", "Alder", "3+3", "2027-05-01");
        maker.builder("East", "Home").builder("West", "Home");
        maker.makeUp("East", "2027-06-09", 9, false);
        maker.batch("17", "2027-06-10", 14, 20, "East").batch("18", "2027-06-10", 15, 16, "East");
    }
    Snapshot after(const Result<ChangeSet>& edit) {
        EXPECT_TRUE(edit.ok()) << (edit.ok() ? "" : edit.error().text);
        auto next = applied(season, edit.value());
        EXPECT_TRUE(next.ok()) << (next.ok() ? "" : next.error().text);
        return next.value();
    }
    IdSource fresh() {
        return [this] { return id<Batch>(++count).uuid; };
    }
    Cells cellsFor(const Snapshot& snapshot, const char* batch, const char* yard) {
        for (const auto& share : snapshot.all<BatchShare>().of(maker.batchId(batch).uuid))
            if (share->yard == maker.yardId(yard)) return share->cells;
        return Cells{0};
    }

    SeasonMaker maker;
    Snapshot season;
    std::uint64_t count = 900'000;
};

TEST_F(ChartVerbs, SeveralBatchesMoveInOneEditAndTheirSharedMakeUpGoesWithThem) {
    season = maker.snapshot();
    const auto edit = moveBatches(season, {maker.batchId("17"), maker.batchId("18")}, Days{3});
    const auto moved = after(edit);
    EXPECT_EQ(edit.value().subject, "17, 18");
    EXPECT_EQ(edit.value().verb, Verb::MoveBatches);
    EXPECT_EQ(moved.find(maker.batchId("17"))->day, day("2027-06-13"));
    EXPECT_EQ(moved.find(maker.batchId("18"))->day, day("2027-06-13"));
    EXPECT_EQ((*moved.all<MakeUp>().begin())->day, day("2027-06-12"));
    const auto back = applied(moved, edit.value().inverse());
    ASSERT_TRUE(back.ok()) << back.error().text;
    EXPECT_EQ(back.value().find(maker.batchId("18"))->day, day("2027-06-10"));
    EXPECT_EQ((*back.value().all<MakeUp>().begin())->day, day("2027-06-09"));
}

TEST_F(ChartVerbs, OneThatCannotMoveKeepsAllWhereTheyAre) {
    maker.outcome("18", OutcomeKind::Graft, "2027-05-20", 16);
    season = maker.snapshot();
    EXPECT_FALSE(moveBatches(season, {maker.batchId("17"), maker.batchId("18")}, Days{3}).ok());
}

TEST_F(ChartVerbs, ARowThatTwoEditsTouchChangesOnce) {
    season = maker.snapshot();
    const auto first = moveBatches(season, {maker.batchId("17")}, Days{2});
    const auto between = after(first);
    const auto second = moveBatches(between, {maker.batchId("17")}, Days{-1});
    ASSERT_TRUE(second.ok());
    const auto both = joined(first.value(), second.value());
    EXPECT_EQ(both.rows.size(), 1U);
    EXPECT_EQ(after(both).find(maker.batchId("17"))->day, day("2027-06-11"));
}

TEST_F(ChartVerbs, CellsGoIntoAnotherBuilder) {
    season = maker.snapshot();
    const auto moved = after(putLoad(
        season, {maker.batchId("17"), 1, {1}, maker.builderId("East"), maker.builderId("West")},
        fresh()));
    for (const auto& load : moved.all<BatchLoad>().of(maker.batchId("17").uuid))
        if (load->step == 1) {
            EXPECT_EQ(load->builder, maker.builderId("West"));
        }
    for (const auto& load : moved.all<BatchLoad>().of(maker.batchId("18").uuid))
        EXPECT_EQ(load->builder, maker.builderId("East"));
}

TEST_F(ChartVerbs, CellsWithoutABuilderGetOne) {
    season = maker.snapshot();
    ChangeSet out{Verb::EditRow, {}, {}, {}};
    for (const auto& load : season.all<BatchLoad>().of(maker.batchId("17").uuid)) out.erase(load);
    season = after(out);
    const auto moved = after(putLoad(
        season, {maker.batchId("17"), 1, {1}, std::nullopt, maker.builderId("West")}, fresh()));
    const auto loads = moved.all<BatchLoad>().of(maker.batchId("17").uuid);
    ASSERT_EQ(loads.size(), 1U);
    EXPECT_EQ(loads.front()->builder, maker.builderId("West"));
}

TEST_F(ChartVerbs, GraftsOfABarChangeUntilTheyAreGrafted) {
    season = maker.snapshot();
    const auto more = after(setGrafts(season, maker.batchId("17"), 1, Cells{28}));
    EXPECT_EQ(more.all<BatchBar>().of(maker.batchId("17").uuid).front()->cells, Cells{28});
    EXPECT_EQ(after(setGrafts(season, maker.batchId("17"), 1, Cells{-4}))
                  .all<BatchBar>()
                  .of(maker.batchId("17").uuid)
                  .front()
                  ->cells,
              Cells{1});
    EXPECT_FALSE(setGrafts(season, maker.batchId("17"), 2, Cells{28}).ok());
    maker.outcome("17", OutcomeKind::Graft, "2027-05-20", 20);
    season = maker.snapshot();
    const auto refused = setGrafts(season, maker.batchId("17"), 1, Cells{28});
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().text.find("is grafted"), std::string::npos) << refused.error().text;
}

TEST_F(ChartVerbs, CellsOfAYardGoToAnotherAndAddUp) {
    maker.share("17", "Home", 9).share("17", "Alder", 4);
    season = maker.snapshot();
    const YardShares now{{maker.yardId("Home"), Cells{9}}, {maker.yardId("Alder"), Cells{4}}};
    const auto moved = after(moveShare(season, maker.batchId("17"), maker.yardId("Home"),
                                       maker.yardId("Alder"), now, fresh()));
    EXPECT_EQ(cellsFor(moved, "17", "Home"), Cells{0});
    EXPECT_EQ(cellsFor(moved, "17", "Alder"), Cells{13});
}

TEST_F(ChartVerbs, ABatchThatNamedNoYardsNamesThoseItHadFound) {
    season = maker.snapshot();
    const YardShares found{{maker.yardId("Home"), Cells{9}}};
    const auto moved = after(moveShare(season, maker.batchId("17"), maker.yardId("Home"),
                                       maker.yardId("Alder"), found, fresh()));
    EXPECT_EQ(cellsFor(moved, "17", "Alder"), Cells{9});
    EXPECT_FALSE(moveShare(season, maker.batchId("17"), maker.yardId("Alder"), maker.yardId("Home"),
                           found, fresh())
                     .ok());
}

TEST_F(ChartVerbs, CellsThatAreInTheirNucsStay) {
    maker.stock("N1/A", "2027-05-10").share("17", "Home", 9);
    maker.place("17", "N1/A", "2027-05-30", true);
    season = maker.snapshot();
    const YardShares now{{maker.yardId("Home"), Cells{9}}};
    const auto refused = moveShare(season, maker.batchId("17"), maker.yardId("Home"),
                                   maker.yardId("Alder"), now, fresh());
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().text.find("in nucs there already"), std::string::npos);
}

}  // namespace
}  // namespace tenthday::test
