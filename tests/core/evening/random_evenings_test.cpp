// Random seasons lived day by day: counts, cells, looks, catches, upkeep and mite work entered,
// corrected and taken back. Nothing is lost or made at any stage, and every edit undone brings back
// every date.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "cellsday/cells_verbs.h"
#include "cellsday/propose.h"
#include "evening/evening_verbs.h"
#include "occupancy/mite_spans.h"
#include "occupancy/nuc_upkeep.h"
#include "records/queen_verbs.h"
#include "records/setup_verbs.h"
#include "records/winter_note.h"
#include "support/property.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

class RandomSeason {
public:
    /// How many edits were kept.
    int run() {
        make();
        for (Day today = day("2027-06-10"); today <= day("2027-07-25"); today += Days{2}) {
            auto snapshot = outlook_->snapshot;
            snapshot.setToday(today);
            read(snapshot);
            const int strokes = 1 + below(5);
            for (int i = 0; i < strokes; ++i) stroke(today);
        }
        return edits_;
    }

private:
    static int below(int n) { return test::drawnBelow(n); }
    IdSource ids() {
        return [this] { return test::id<Outcome>(++next_).uuid; };
    }
    void read(const Snapshot& snapshot) {
        outlook_ = outlookOf(snapshot, memo_);
        kept_.push_back(outlook_);
        if (kept_.size() > 3) kept_.erase(kept_.begin());
    }

    void make() {
        test::SeasonMaker maker("2027-06-10");
        maker.yard("Mill", 1).yard("Home", 2).builder("Box", "Home").builder("Two", "Home");
        maker.makeUp("Box", "2027-06-07", 17, true);
        const int nucs = 6 + below(12);
        for (int i = 1; i <= nucs; ++i) {
            const auto box = "N" + std::to_string(i);
            maker.box(box, below(2) ? "Mill" : "Home", "7", "2027-04-01");
            if (below(6)) maker.stock(box + "/-", "2027-06-" + std::to_string(10 + below(7)));
        }
        const int batches = 1 + below(3);
        for (int i = 0; i < batches; ++i)
            maker.batch(std::to_string(9 + i), "2027-06-" + std::to_string(11 + 4 * i), 15,
                        4 + below(20), below(2) ? "Box" : "Two");
        read(maker.snapshot());
    }

    void stroke(Day today) {
        switch (below(8)) {
            case 0:
                return keep(upkeep(today), "upkeep");
            case 1:
                return keep(diary(today), "a line of the diary");
            case 2:
                return keep(miteWork(today), "mite work");
            case 3:
                return keep(cells(today), "a cells day");
            case 4:
                return keep(moveSome(today), "queens moved");
            default:
                return keep(evening(today), "the evening page");
        }
    }

    Result<ChangeSet> evening(Day today) {
        const auto page = eveningOf(*outlook_, today - Days{below(2)});
        std::vector<const EveningRow*> rows;
        for (const auto& row : page.rows)
            if (row.entry != EveningEntry::None) rows.push_back(&row);
        if (rows.empty()) return Error{"nothing to enter"};
        const auto& row = *rows[static_cast<std::size_t>(below(static_cast<int>(rows.size())))];
        if (row.isFilled() && below(2)) return takeBack(*outlook_, row);
        EveningInput input;
        input.day = page.day;
        if (below(2)) input.hour = Hour{8 + below(10)};
        input.count = below(24);
        input.look = static_cast<NucLook>(below(static_cast<int>(kTokenCount<NucLook>)));
        input.stays = below(5) == 0;
        if (below(3)) input.queenNumbers = "{yy}-{n:3}";
        return enter(*outlook_, row, input, ids());
    }

    Result<ChangeSet> cells(Day today) {
        auto draft = cellsDraft(*outlook_, today);
        if (draft.batches.empty()) return Error{"no cells"};
        for (auto& batch : draft.batches)
            if (below(2)) batch.others.fill(0);
        const auto nucs = nucsOf(*outlook_, draft);
        draft =
            proposeWays(*outlook_, nucs, draft, {{Way::OtherYards, below(8)}, {Way::Caged, {}}});
        return changesOf(*outlook_, draft, below(3) ? CellsKept::Done : CellsKept::Planned, ids());
    }

    Result<ChangeSet> upkeep(Day today) {
        CarePlan plan;
        plan.kind = static_cast<NucCareKind>(below(4));
        plan.day = today - Days{below(4)};
        plan.beesMl = BeesMl{100 * below(4)};
        plan.broodFrames = Frames{below(2)};
        plan.openBrood = below(2) == 0;
        return careForNucs(outlook_->nucs, {anySide()}, plan, ids());
    }

    Result<ChangeSet> diary(Day today) {
        const auto builder = outlook_->builders[static_cast<std::size_t>(below(2))].builder->id;
        if (below(3) == 0) {
            MakeUp row;
            row.id = test::id<MakeUp>(++next_);
            row.builder = builder;
            row.day = today - Days{below(6)};
            row.openBrood = below(2) == 0;
            return saveRow(outlook_->snapshot, row);
        }
        BuilderNote row;
        row.id = test::id<BuilderNote>(++next_);
        row.builder = builder;
        row.kind = static_cast<BuilderNoteKind>(below(5));
        row.day = today - Days{below(6)};
        row.openBrood = row.kind == BuilderNoteKind::BroodIn && below(2) == 0;
        return saveRow(outlook_->snapshot, row);
    }

    Result<ChangeSet> miteWork(Day today) {
        const auto spans = miteSpans(outlook_->snapshot, outlook_->nucs, outlook_->builders);
        if (spans.empty()) return Error{"no span"};
        const auto& span = spans[static_cast<std::size_t>(below(static_cast<int>(spans.size())))];
        MitePlace place;
        if (span.side) place.side = span.side->side->id;
        if (span.builder) place.builder = span.builder->builder->id;
        return recordMiteWork(outlook_->snapshot, {place}, today - Days{below(5)}, "drip", {},
                              ids());
    }

    Result<ChangeSet> moveSome(Day today) {
        std::vector<Id<Queen>> queens;
        for (const auto& queen : outlook_->snapshot.all<Queen>())
            if (below(2)) queens.push_back(queen->id);
        if (queens.empty()) return Error{"no queen"};
        return moveQueens(outlook_->snapshot, queens, static_cast<QueenPlace>(below(5)), today, {},
                          ids());
    }

    Id<NucSide> anySide() {
        const auto& sides = outlook_->nucs.sides;
        return sides[static_cast<std::size_t>(below(static_cast<int>(sides.size())))].side->id;
    }

    void keep(const Result<ChangeSet>& changes, const char* what) {
        if (!changes || changes.value().isEmpty()) return;
        const auto before = outlook_;
        const auto text = test::describe(*before);
        const auto after = applied(before->snapshot, changes.value());
        ASSERT_TRUE(after.ok()) << what << ": " << after.error().text;
        const auto undo = changes.value().inverse();
        const auto undone = applied(after.value(), undo);
        ASSERT_TRUE(undone.ok()) << what << ": " << undone.error().text;
        ASSERT_TRUE(undone.value().sameContent(before->snapshot)) << what << " undone";
        const auto redone = applied(undone.value(), undo.inverse());
        ASSERT_TRUE(redone.ok()) << what << ": " << redone.error().text;
        ASSERT_TRUE(redone.value().sameContent(after.value())) << what << " redone";
        OutlookMemo fresh;
        ASSERT_EQ(test::describe(*outlookOf(undone.value(), fresh)), text)
            << what << " taken back restores every date";
        read(redone.value());
        ++edits_;
        conserved(what);
    }

    void conserved(const char* what) {
        for (const auto& batch : outlook_->batches) countsFall(*batch, what);
        for (const auto& side : outlook_->nucs.sides) oneThing(side, what);
        queens(what);
    }

    /// No stage has more than the one before, and no more cells have a place than were ripe.
    void countsFall(const BatchOutlook& batch, const char* what) {
        const auto& c = batch.timeline.counts;
        ASSERT_LE(c.accepted, c.grafted + 1e-9) << what;
        ASSERT_LE(c.sealed, c.accepted + 1e-9) << what;
        // Cells given before they are sealed leave the builder as started ones.
        const bool young = batch.timeline.latestMove == Moment::max();
        ASSERT_LE(c.ripe, (young ? c.accepted : c.sealed) + 1e-9) << what;
        ASSERT_LE(c.laying, c.ripe + 1e-9) << what;
        ASSERT_LE(c.good, c.laying + 1e-9) << what;
        for (const auto& cells : cellsDraft(*outlook_, outlook_->snapshot.today()).batches)
            ASSERT_EQ(cells.ripe(), cells.done() + cells.drafted() + cells.left()) << what;
    }

    /// A nuc is one thing a day, by shares that sum to 1, in one of the four numbers at the most.
    void oneThing(const SideOutlook& side, const char* what) {
        Day next = side.stands.first;
        for (const auto& segment : side.segments) {
            if (segment.days.isEmpty()) continue;
            ASSERT_EQ(segment.days.first, next) << what << ": no gap";
            next = segment.days.last + Days{1};
        }
        for (int i = 0; i < 60; i += 7) {
            const Day on = day("2027-06-15") + Days{i};
            const auto is = sideOn(side, on, outlook_->snapshot.today());
            double sum = 0;
            for (const auto share : is.shares) sum += static_cast<double>(share);
            ASSERT_NEAR(sum, 1, 1e-4) << what << " on " << toText(on);
            ASSERT_LE(is.ready + (is.likely > 0) + is.canStock + is.needsBrood, 1) << what;
        }
    }

    /// Each queen with a number came from one catch that still stands, or stays for the winter.
    void queens(const char* what) {
        std::set<std::pair<Uuid, Day>> catches;
        for (const auto& outcome : outlook_->snapshot.all<Outcome>())
            if ((outcome->kind == OutcomeKind::Catch || staysForWinter(*outcome)) && outcome->side)
                catches.insert({outcome->side->uuid, outcome->day});
        std::set<std::pair<Uuid, Day>> numbered;
        for (const auto& caught : outlook_->snapshot.all<CaughtQueen>()) {
            ASSERT_TRUE(catches.contains({caught->side->uuid, caught->day})) << what;
            ASSERT_TRUE(numbered.insert({caught->side->uuid, caught->day}).second) << what;
            ASSERT_TRUE(stayOn(outlook_->snapshot, caught->queen, caught->day)) << what;
        }
    }

    OutlookMemo memo_;
    OutlookPtr outlook_;
    std::vector<OutlookPtr> kept_;
    std::uint64_t next_ = 950'000;
    int edits_ = 0;
};

TEST(RandomEvenings, NothingIsLostOrMade) {
    constexpr int kSeasons = 24;
    int edits = 0;
    test::holdsFor(kSeasons, [&] { edits += RandomSeason().run(); });
    EXPECT_GT(edits, 10 * kSeasons) << "seasons in which something was done";
}

}  // namespace
}  // namespace tenthday
