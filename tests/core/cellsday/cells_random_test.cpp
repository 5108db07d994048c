// Random seasons and random days' work: cells are neither lost nor made, however they are given,
// kept, undone and redone.
#include <gtest/gtest.h>

#include <map>
#include <random>

#include "cellsday/cells_verbs.h"
#include "cellsday/propose.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

class RandomDay {
public:
    explicit RandomDay(unsigned seed) : random_(seed) {}

    void run() {
        make();
        for (int step = 0; step < 12 && !::testing::Test::HasFatalFailure(); ++step) {
            const Day on = day("2027-06-20") + Days{below(5)};
            open(on);
            for (int edits = below(9); edits > 0; --edits) editOnce();
            sums("after an edit");
            keepIfItMay();
        }
    }

private:
    int below(int n) { return static_cast<int>(random_() % static_cast<unsigned>(n)); }

    void make() {
        test::SeasonMaker maker("2027-06-22");
        maker.yard("Mill", below(3)).yard("Home", below(3)).yard("Fell", below(3));
        maker.builder("Box", "Home");
        const std::string yards[] = {"Mill", "Home", "Fell"};
        for (int i = 1; i <= 4 + below(20); ++i) {
            const auto box = "N" + std::to_string(i);
            const bool divided = below(2) == 0;
            maker.box(box, yards[below(3)], divided ? "3+3" : "7", "2027-04-01");
            if (below(5) == 0) continue;
            const auto on = "2027-06-" + std::to_string(10 + below(12));
            maker.stock(box + (divided ? "/A" : "/-"), on);
        }
        const int batches = 1 + below(3);
        for (int i = 0; i < batches; ++i) {
            const auto label = std::to_string(9 + i);
            maker.batch(label, "2027-06-" + std::to_string(10 + below(4)), 15, 5 + below(20),
                        "Box");
            if (below(2)) maker.share(label, yards[below(3)], 1 + below(6));
            if (below(2)) maker.outcome(label, OutcomeKind::Ripe, "2027-06-21", below(15));
        }
        read(maker.snapshot());
    }
    void read(const Snapshot& snapshot) { outlook_ = outlookOf(snapshot, memo_); }
    void open(Day on) {
        draft_ = cellsDraft(*outlook_, on);
        nucs_ = nucsOf(*outlook_, draft_);
        sums("as opened");
    }

    void editOnce() {
        if (draft_.batches.empty() || nucs_.empty()) return;
        const auto batch = static_cast<std::size_t>(below(static_cast<int>(draft_.batches.size())));
        const auto& nuc = nucs_[static_cast<std::size_t>(below(static_cast<int>(nucs_.size())))];
        switch (below(5)) {
            case 0:
                return give(draft_, batch, nuc.id());
            case 1:
                return takeOut(draft_, nuc.id());
            case 2:
                return setCellsIn(draft_, nucs_, batch, nuc.yard, below(8));
            case 3:
                draft_.batches[batch].others[static_cast<std::size_t>(1 + below(6))] = below(4);
                return;
            default:
                proposals();
        }
    }
    void proposals() {
        WayOrder order;
        for (int i = 0; i < below(4); ++i)
            order.push_back({static_cast<Way>(below(static_cast<int>(kTokenCount<Way>))),
                             below(2) ? std::optional(below(6)) : std::nullopt});
        const auto before = draft_;
        draft_ = proposeWays(*outlook_, nucs_, draft_, order);
        for (std::size_t i = 0; i < draft_.batches.size(); ++i) {
            const auto was = before.batches[i].left();
            EXPECT_LE(draft_.batches[i].left(), std::max(was, 0)) << "gives no more than are left";
            EXPECT_GE(draft_.batches[i].left(), std::min(was, 0));
            for (const auto side : before.batches[i].nucs)
                EXPECT_TRUE(draft_.batches[i].goesInto(side)) << "what was drafted stays";
        }
    }

    /// Every cell is somewhere, once.
    void sums(const char* when) {
        std::map<Id<NucSide>, int> cells;
        std::int32_t ways = 0;
        for (const auto& batch : draft_.batches) {
            ASSERT_EQ(batch.ripe(), batch.done() + batch.drafted() + batch.left()) << when;
            for (const auto side : batch.nucs) ++cells[side];
            for (const auto side : batch.doneNucs) ++cells[side];
        }
        for (const auto& [side, count] : cells) ASSERT_EQ(count, 1) << when;
        for (std::size_t way = 0; way < kTokenCount<CellTarget>; ++way)
            ways += draft_.on(static_cast<CellTarget>(way));
        ASSERT_EQ(draft_.ripe(), ways + draft_.left()) << when;
    }

    void keepIfItMay() {
        const auto how = below(2) ? CellsKept::Done : CellsKept::Planned;
        const auto changes =
            changesOf(*outlook_, draft_, how, [this] { return test::id<Placement>(++next_).uuid; });
        if (!changes) return;
        const auto before = outlook_->snapshot;
        const auto drafted = draft_;
        auto after = applied(before, changes.value());
        ASSERT_TRUE(after.ok()) << after.error().text;
        auto undone = applied(after.value(), changes.value().inverse());
        ASSERT_TRUE(undone.ok());
        ASSERT_TRUE(undone.value().sameContent(before)) << "undone";
        auto redone = applied(undone.value(), changes.value().inverse().inverse());
        ASSERT_TRUE(redone.ok()) << redone.error().text;
        ASSERT_TRUE(redone.value().sameContent(after.value())) << "redone";
        doneStays(before, after.value());
        read(after.value());
        open(drafted.day);
        compare(drafted, how);
    }
    static void doneStays(const Snapshot& before, const Snapshot& after) {
        for (const auto& row : before.all<Placement>())
            if (row->done) {
                const auto now = after.find(row->id);
                ASSERT_TRUE(now != nullptr && *now == *row) << "a record was touched";
            }
    }
    /// What was drafted is what the book says of the day.
    void compare(const CellsDraft& drafted, CellsKept how) {
        for (const auto& batch : drafted.batches) {
            const auto now = std::find_if(draft_.batches.begin(), draft_.batches.end(),
                                          [&](const auto& b) { return b.batch == batch.batch; });
            if (now == draft_.batches.end()) {
                ASSERT_EQ(batch.drafted() + batch.done(), 0);
                continue;
            }
            ASSERT_EQ(now->done() + now->drafted(), batch.done() + batch.drafted());
            for (std::size_t way = 0; way < kTokenCount<CellTarget>; ++way)
                ASSERT_EQ(now->others[way] + now->doneOthers[way],
                          batch.others[way] + batch.doneOthers[way]);
            if (how == CellsKept::Done) {
                ASSERT_EQ(now->drafted(), 0);
                ASSERT_EQ(now->left(), 0);
            }
        }
    }

    std::mt19937 random_;
    OutlookMemo memo_;
    OutlookPtr outlook_;
    CellsDraft draft_;
    std::vector<CellsNuc> nucs_;
    std::uint64_t next_ = 870'000;
};

TEST(CellsDayRandom, CellsAreNeitherLostNorMade) {
    for (unsigned seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(seed);
        RandomDay(seed).run();
        if (::testing::Test::HasFatalFailure()) return;
    }
}

}  // namespace
}  // namespace tenthday
