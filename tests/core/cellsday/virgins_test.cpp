// Virgins out of cages and incubators go into nucs on a later day: never more than were caged.
#include <algorithm>

#include "core/cellsday/cells_day_fixture.h"
#include "evening/evening_verbs.h"
#include "occupancy/caged.h"

namespace tenthday {
namespace {

using test::day;

/// Of the eight cells of batch 9 five went into the nucs of Home and three into cages on 21 June;
/// her queens are likely out on 23 June (S11: day 12). Today is 27 June.
class VirginsDay : public test::CellsDayTest {
protected:
    VirginsDay() {
        open();
        for (int i = 1; i <= 5; ++i) give(draft_, 0, maker_.sideId("H" + std::to_string(i) + "/-"));
        way(CellTarget::Caged) = 3;
        keep(CellsKept::Done);
        later("2027-06-27");
    }
    std::int32_t& way(CellTarget target) {
        return draft_.batches[0].others[static_cast<std::size_t>(target)];
    }
    void later(const char* today) {
        auto snapshot = outlook_->snapshot;
        snapshot.setToday(day(today));
        read(snapshot);
    }
    Result<ChangeSet> changes(CellsKept how) { return changesOf(*outlook_, draft_, how, ids()); }
    [[nodiscard]] int cells(CellTarget target) const {
        const auto& rows = outlook_->snapshot.all<Placement>();
        return static_cast<int>(std::count_if(rows.begin(), rows.end(), [&](const auto& row) {
            return row->done && row->target == target;
        }));
    }
    [[nodiscard]] const BatchTimeline& line() const { return outlook_->batches[0]->timeline; }
};

TEST_F(VirginsDay, TheyWaitInTheirCagesOnceTheyAreOut) {
    EXPECT_EQ(virginsFrom(line()), day("2027-06-24"));
    open("2027-06-23");
    EXPECT_TRUE(draft_.batches.empty() || sumOf(draft_.batches[0].caged) == 0) << "cells still";
    open("2027-06-27");
    ASSERT_EQ(draft_.batches.size(), 1U);
    EXPECT_EQ(draft_.batches[0].ripe(), 3);
    EXPECT_EQ(draft_.batches[0].left(), 0) << "they have their cages";
    EXPECT_FALSE(draft_.batches[0].takesVirgins());
    open("2027-06-28");
    EXPECT_TRUE(draft_.batches.empty()) << "what is still to come is not recorded";
}

TEST_F(VirginsDay, IntoNucsTheyGoOutOfTheirCages) {
    open("2027-06-27");
    way(CellTarget::Caged) = 1;
    EXPECT_EQ(draft_.batches[0].left(), 2);
    give(draft_, 0, maker_.sideId("M1/-"));
    give(draft_, 0, maker_.sideId("M2/-"));
    EXPECT_EQ(whyNotKept(*outlook_, nucs_, draft_, CellsKept::Planned)->why,
              CellsTrouble::VirginsLater);
    keep(CellsKept::Done);
    EXPECT_EQ(cells(CellTarget::Nuc), 7);
    EXPECT_EQ(cells(CellTarget::Caged), 1);
    EXPECT_EQ(outlook_->snapshot.all<Placement>().size(), 8U) << "as many as were ripe";
    EXPECT_EQ(std::lround(line().counts.ripe), 8);
    open("2027-06-27");
    EXPECT_EQ(draft_.batches[0].ripe(), 3) << "two in nucs, one in her cage";
    EXPECT_EQ(draft_.batches[0].left(), 0);
    open("2027-06-21");
    EXPECT_EQ(draft_.batches[0].left(), 0) << "the cells day adds up as before";
}

TEST_F(VirginsDay, NeverMoreThanWereCaged) {
    open("2027-06-27");
    for (const char* nuc : {"M1/-", "M2/-", "M3/-", "M4/-"}) give(draft_, 0, maker_.sideId(nuc));
    way(CellTarget::Caged) = 0;
    EXPECT_EQ(draft_.batches[0].left(), -1);
    EXPECT_FALSE(changes(CellsKept::Done).ok());
}

TEST_F(VirginsDay, TheBuildersDatesDoNotMoveWithThem) {
    const auto leaves = line().hold.leaves;
    const auto look = line().hold.lookDay;
    const auto findings = outlook_->findings.size();
    open("2027-06-27");
    way(CellTarget::Caged) = 2;
    give(draft_, 0, maker_.sideId("M1/-"));
    keep(CellsKept::Done);
    EXPECT_EQ(line().hold.leaves, leaves) << "she left the builder as a cell";
    EXPECT_EQ(line().hold.lookDay, look);
    EXPECT_EQ(outlook_->findings.size(), findings);
}

// S47, S49: first flights from 6 d of age on; none fly out of a cage.
TEST_F(VirginsDay, DatesOfTheirNucsRunFromTheDayTheyCanFly) {
    later("2027-07-03");
    const auto due = dayOf(line().find(Event::DueToFly)->likely);
    open("2027-07-03");
    way(CellTarget::Caged) = 2;
    give(draft_, 0, maker_.sideId("M1/-"));
    keep(CellsKept::Done);
    const auto& hold = line().hold;
    const auto behind = day("2027-07-03") - due;
    ASSERT_GT(behind, Days{0});
    const auto side = std::find_if(outlook_->nucs.sides.begin(), outlook_->nucs.sides.end(),
                                   [](const auto& one) { return one.box->label == "M1"; });
    ASSERT_EQ(side->rounds.size(), 1U);
    EXPECT_EQ(side->rounds[0].lookDay, hold.lookDay + behind);
    EXPECT_EQ(side->rounds[0].catchDay, hold.catchDay + behind);
    const auto is = sideOn(*side, day("2027-07-05"), day("2027-07-05"));
    EXPECT_EQ(is.state, NucState::DueToFly);
    const auto home = std::find_if(outlook_->nucs.sides.begin(), outlook_->nucs.sides.end(),
                                   [](const auto& one) { return one.box->label == "H1"; });
    EXPECT_EQ(home->rounds[0].lookDay, hold.lookDay) << "the others are not put off";
}

TEST_F(VirginsDay, TakenBackSheIsInHerCageAgain) {
    open("2027-06-27");
    way(CellTarget::Caged) = 2;
    give(draft_, 0, maker_.sideId("M1/-"));
    keep(CellsKept::Done);
    const auto page = eveningOf(*outlook_, day("2027-06-27"));
    const auto row = std::find_if(page.rows.begin(), page.rows.end(), [](const auto& one) {
        return one.entry == EveningEntry::Placed && one.isFilled();
    });
    ASSERT_NE(row, page.rows.end());
    const auto back = takeBack(*outlook_, *row);
    ASSERT_TRUE(back.ok());
    read(applied(outlook_->snapshot, back.value()).value());
    EXPECT_EQ(cells(CellTarget::Caged), 3);
    EXPECT_EQ(cells(CellTarget::Nuc), 5);
}

}  // namespace
}  // namespace tenthday
