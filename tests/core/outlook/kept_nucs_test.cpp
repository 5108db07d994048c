// First fit follows only what differs from a season before: it must never show.
#include <gtest/gtest.h>

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

/// A season whose later half is planned, in nucs that are too few, enough or plenty.
struct Crowd {
    const char* name;
    test::LargeSeason size;
};
void PrintTo(const Crowd& crowd, std::ostream* out) { *out << crowd.name; }

/// What a hand does to the plan: batches moved, added, thrown out, made bigger, sent elsewhere.
class Hand {
public:
    explicit Hand(int batches) : batches_(batches) {}

    /// What cannot be done leaves the season as it was.
    Snapshot next(const Snapshot& season) {
        ChangeSet changes;
        const auto batch = season.find(test::largeSeasonBatch(planned()));
        if (!batch) return season;
        switch (drawnBelow(6)) {
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

    int batches_;
    int added_ = 0;
};

class KeptNucs : public ::testing::TestWithParam<Crowd> {};

TEST_P(KeptNucs, AreAfterAnyMoveAsFromTheStart) {
    const auto size = GetParam().size;
    const auto season = test::largeSeason(size);
    test::holdsFor(12, [&] {
        OutlookMemo memo;
        Hand hand(size.batches);
        auto now = season;
        (void)outlookOf(now, memo);
        for (int move = 0; move < 12; ++move) {
            now = hand.next(now);
            ASSERT_EQ(describe(*outlookOf(now, memo)), describe(*freshOutlook(now)))
                << "after move " << move;
        }
        ASSERT_EQ(describe(*outlookOf(season, memo)), describe(*freshOutlook(season))) << "undone";
    });
}

INSTANTIATE_TEST_SUITE_P(Nucs, KeptNucs,
                         ::testing::Values(Crowd{"TooFew", {60, 160, 1}},
                                           Crowd{"JustEnough", {60, 300, 1}},
                                           Crowd{"Plenty", {60, 800, 1}}),
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

}  // namespace
}  // namespace tenthday
