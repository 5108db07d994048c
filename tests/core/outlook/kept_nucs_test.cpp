// First fit follows only what differs from a season before: it must never show.
#include <gtest/gtest.h>

#include <utility>

#include "drafting/batch_draft.h"
#include "outlook/outlook.h"
#include "records/verbs.h"
#include "support/large_season.h"
#include "support/property.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::describe;
using test::drawnBelow;
using test::freshOutlook;

/// A season whose later half is planned, in nucs that are too few, enough or plenty, or that move.
struct Crowd {
    const char* name;
    test::LargeSeason size;
    bool boxesMove = false;
};
void PrintTo(const Crowd& crowd, std::ostream* out) { *out << crowd.name; }

/// Every third box goes to another yard in the middle of the season, and some come back; every
/// seventh goes nowhere; every fifth is divided anew.
Snapshot withMovingBoxes(const Snapshot& season) {
    ChangeSet changes;
    const auto& yards = season.all<Yard>();
    const Day middle = season.season().first + Days{80};
    std::uint64_t n = 800'000;
    const auto stay = [&](const Box& box, Day from, std::optional<Id<Yard>> yard) {
        changes.add(BoxStay{test::id<BoxStay>(n++), 1, box.id, yard, from});
    };
    std::size_t at = 0;
    for (const auto& box : season.all<Box>()) {
        ++at;
        const auto home = season.all<BoxStay>().of(box->id.uuid).front()->yard;
        const auto other = (*(yards.begin() + static_cast<std::ptrdiff_t>(at % yards.size())))->id;
        if (at % 3 == 0) stay(*box, middle, other);
        if (at % 6 == 0) stay(*box, middle + Days{20}, home);
        if (at % 7 == 0) stay(*box, middle + Days{40}, std::nullopt);
        if (at % 5 != 0) continue;
        const BoxLayout layout{test::id<BoxLayout>(n++), 1, box->id, "6", middle + Days{10}};
        const NucSide side{test::id<NucSide>(n++), 1, layout.id, "-", Frames{6}};
        Stocking stocking;
        stocking.id = test::id<Stocking>(n++);
        stocking.side = side.id;
        stocking.day = layout.from;
        stocking.openBrood = true;
        changes.add(layout);
        changes.add(side);
        changes.add(stocking);
    }
    return applied(season, changes).value();
}

/// What a hand does to the plan: batches moved, added, thrown out, made bigger, sent elsewhere,
/// renamed and caught otherwise, recorded ones too; builders made up on other days.
class Hand {
public:
    explicit Hand(int batches) : batches_(batches) {}

    /// What cannot be done leaves the season as it was.
    Snapshot next(const Snapshot& season) {
        ChangeSet changes;
        const auto batch = season.find(test::largeSeasonBatch(planned()));
        if (!batch) return season;
        switch (drawnBelow(8)) {
            case 0:
                add(*batch, changes);
                break;
            case 1: {
                auto gone = deleteBatch(season, batch->id);
                if (gone) changes = std::move(gone).value();
                break;
            }
            case 2: {
                const auto bar = season.all<BatchBar>().of(batch->id.uuid).front();
                auto edited = *bar;
                edited.cells = Cells{1 + drawnBelow(60)};
                changes.edit(bar, edited);
                break;
            }
            case 3:
                share(season, batch->id, changes);
                break;
            case 4:
                rename(season, changes);
                break;
            case 5:
                makeUp(season, changes);
                break;
            default: {
                auto moved = moveBatch(season, batch->id, batch->day + Days{drawnBelow(25) - 12});
                if (moved) changes = std::move(moved).value();
            }
        }
        auto next = applied(season, changes);
        return next ? std::move(next).value() : season;
    }

private:
    /// One that is not grafted yet.
    [[nodiscard]] int planned() const { return batches_ * 2 / 3 + drawnBelow(batches_ / 3); }

    void add(const Batch& like, ChangeSet& changes) {
        const auto n = static_cast<std::uint64_t>(700'000 + added_++);
        Batch batch = like;
        batch.id = test::id<Batch>(n);
        batch.label = "More " + std::to_string(n);
        batch.day += Days{drawnBelow(9)};
        changes.add(batch);
        BatchBar bar;
        bar.id = test::id<BatchBar>(n);
        bar.batch = batch.id;
        bar.bar = 1;
        bar.cells = Cells{1 + drawnBelow(60)};
        changes.add(bar);
    }
    /// Cells to another yard, or to none.
    static void share(const Snapshot& season, Id<Batch> batch, ChangeSet& changes) {
        const auto shares = season.all<BatchShare>().of(batch.uuid);
        if (shares.empty()) return;
        const auto& yards = season.all<Yard>();
        const auto place = drawnBelow(static_cast<int>(yards.size()) + 1);
        if (place == static_cast<int>(yards.size())) return changes.erase(shares.front());
        auto edited = *shares.front();
        edited.yard = (*(yards.begin() + place))->id;
        changes.edit(shares.front(), edited);
    }
    /// Of any batch, one whose cells are in their nucs too.
    void rename(const Snapshot& season, ChangeSet& changes) {
        const auto batch = season.find(test::largeSeasonBatch(drawnBelow(batches_)));
        if (!batch) return;
        auto edited = *batch;
        edited.label = "Named " + std::to_string(added_++);
        edited.catchRule = static_cast<CatchRule>(drawnBelow(3));
        changes.edit(batch, edited);
    }
    static void makeUp(const Snapshot& season, ChangeSet& changes) {
        const auto& all = season.all<MakeUp>();
        const auto row = *(all.begin() + drawnBelow(static_cast<int>(all.size())));
        auto edited = *row;
        edited.day += Days{drawnBelow(5) - 2};
        edited.openBrood = !edited.openBrood;
        changes.edit(row, edited);
    }

    int batches_;
    int added_ = 0;
};

class KeptNucs : public ::testing::TestWithParam<Crowd> {};

TEST_P(KeptNucs, AreAfterAnyMoveAsFromTheStart) {
    const auto size = GetParam().size;
    const auto made = test::largeSeason(size);
    const auto season = GetParam().boxesMove ? withMovingBoxes(made) : made;
    test::holdsFor(12, [&] {
        OutlookMemo memo;
        Hand hand(size.batches);
        auto now = season;
        auto last = outlookOf(now, memo);
        for (int move = 0; move < 12; ++move) {
            now = hand.next(now);
            const auto fresh = describe(*freshOutlook(now));
            OutlookMemo another(*std::exchange(last, outlookOf(now, memo)));
            ASSERT_EQ(describe(*last), fresh) << "after move " << move;
            ASSERT_EQ(describe(*outlookOf(now, another)), fresh) << "gone on from the last one";
        }
        ASSERT_EQ(describe(*outlookOf(season, memo)), describe(*freshOutlook(season))) << "undone";
    });
}

INSTANTIATE_TEST_SUITE_P(Nucs, KeptNucs,
                         ::testing::Values(Crowd{"TooFew", {60, 160, 1}},
                                           Crowd{"JustEnough", {60, 300, 1}},
                                           Crowd{"Plenty", {60, 800, 1}},
                                           Crowd{"Moving", {60, 300, 1}, true}),
                         [](const auto& test) { return std::string(test.param.name); });

TEST(KeptNucsOfASeason, AreTheVerySameWhereNothingChanged) {
    const auto season = test::largeSeason({60, 300, 1});
    OutlookMemo memo;
    const auto before = outlookOf(season, memo);
    const auto batch = test::largeSeasonBatch(50);
    const auto moved = moveBatch(season, batch, season.find(batch)->day + Days{1});
    ASSERT_TRUE(moved) << moved.error().text;
    const auto after = outlookOf(applied(season, moved.value()).value(), memo);
    std::size_t same = 0;
    for (std::size_t i = 0; i < before->nucs.sides.size(); ++i)
        same += before->nucs.sides.pointer(i) == after->nucs.sides.pointer(i);
    EXPECT_LT(same, before->nucs.sides.size()) << "the batch's own are others";
    EXPECT_GT(same, before->nucs.sides.size() / 2);
    std::size_t builders = 0;
    for (std::size_t i = 0; i < before->builders.size(); ++i)
        builders += before->builders.pointer(i) == after->builders.pointer(i);
    EXPECT_GT(builders, before->builders.size() / 2);
    EXPECT_LT(builders, before->builders.size());
}

/// A row before the layout came into force: what the nuc was then is no room for a cell.
TEST(KeptNucsOfASeason, ANucThatDoesNotStandYetTakesNoCell) {
    test::SeasonMaker maker("2027-06-10");
    maker.yard("Mill").builder("Box", "Mill").builder("Box 2", "Mill");
    maker.box("N1", "Mill", "7", "2027-04-01");  // never stocked
    maker.batch("700", "2027-05-25", 12, 20, "Box 2").batch("701", "2027-06-04", 12, 20, "Box");
    maker.outcome("701", OutcomeKind::Graft, "2027-06-04", 20);
    const auto box = (*maker.snapshot().all<Box>().begin())->id;
    const BoxLayout layout{test::id<BoxLayout>(77'000), 1, box, "6", test::day("2027-07-15")};
    const NucSide side{test::id<NucSide>(77'000), 1, layout.id, "-", Frames{6}};
    Outcome none;
    none.id = test::id<Outcome>(77'000);
    none.batch = maker.batchId("701");
    none.kind = OutcomeKind::NoQueen;
    none.day = test::day("2027-06-14");
    none.side = side.id;
    const auto before = test::with(maker.snapshot(), layout, side, none);
    OutlookMemo memo;
    (void)outlookOf(before, memo);
    Batch later = *before.find(maker.batchId("701"));
    later.id = test::id<Batch>(77'001);
    later.label = "702";
    later.day = test::day("2027-06-08");
    BatchBar bar;
    bar.id = test::id<BatchBar>(77'002);
    bar.batch = later.id;
    bar.bar = 1;
    bar.cells = Cells{5};
    const auto after = test::with(before, later, bar);
    const auto kept = outlookOf(after, memo);
    EXPECT_EQ(describe(*kept), describe(*freshOutlook(after)));
    for (const auto& nuc : kept->nucs.sides)
        for (const auto& round : nuc.rounds) EXPECT_NE(round.batch, later.id);
}

}  // namespace
}  // namespace tenthday
