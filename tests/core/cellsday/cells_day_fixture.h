/// @file cells_day_fixture.h  A cells day with three yards and one batch, 21 June 2027.
#pragma once
#include <gtest/gtest.h>

#include "cellsday/cells_verbs.h"
#include "cellsday/propose.h"
#include "support/season_maker.h"

namespace tenthday::test {

/// Mill (4 nucs, first on the round), Home (6), Fell (3), all stocked and ready on 21 June, the
/// older the number the longer; batch 9 with eight ripe cells, grafted on 11 June at 15:00.
class CellsDayTest : public ::testing::Test {
protected:
    explicit CellsDayTest(std::string_view today = "2027-06-21") : maker_(today) {
        maker_.yard("Mill", 1).yard("Home", 2).yard("Fell", 3).builder("Box", "Home");
        maker_.makeUp("Box", "2027-06-10", 17, true);
        nucs("M", "Mill", 4);
        nucs("H", "Home", 6);
        nucs("F", "Fell", 3);
        maker_.batch("9", "2027-06-11", 15, 30, "Box");
        rebuild();
    }
    /// The maker's rows, and eight ripe cells of batch 9.
    void rebuild() {
        read(maker_.snapshot());
        count("9", 8);
    }
    void count(const std::string& batch, int ripe) {
        Outcome row;
        row.id = id<Outcome>(++next_);
        row.batch = maker_.batchId(batch);
        row.kind = OutcomeKind::Ripe;
        row.day = day("2027-06-21");
        row.count = Cells{ripe};
        ChangeSet changes;
        for (const auto& old : outlook_->snapshot.all<Outcome>().of(row.batch.uuid))
            if (old->kind == OutcomeKind::Ripe) changes.erase(old);
        changes.add(row);
        read(applied(outlook_->snapshot, changes).value());
    }
    void nucs(const std::string& letter, const std::string& yard, int count) {
        for (int i = 1; i <= count; ++i) {
            const auto box = letter + std::to_string(i);
            maker_.box(box, yard, "7", "2027-04-01");
            maker_.stock(box + "/-", "2027-06-" + std::to_string(19 - i));
        }
    }
    void read(const Snapshot& snapshot) { outlook_ = outlookOf(snapshot, memo_); }
    void open(const char* on = "2027-06-21") {
        draft_ = cellsDraft(*outlook_, day(on));
        nucs_ = nucsOf(*outlook_, draft_);
    }
    void propose(const WayOrder& order = usualWays()) {
        draft_ = proposeWays(*outlook_, nucs_, draft_, order);
    }
    IdSource ids() {
        return [this] { return id<Placement>(++next_).uuid; };
    }
    /// Saves the draft and opens it anew.
    void keep(CellsKept how) {
        const auto changes = changesOf(*outlook_, draft_, how, ids());
        ASSERT_TRUE(changes.ok()) << changes.error().text;
        auto next = applied(outlook_->snapshot, changes.value());
        ASSERT_TRUE(next.ok()) << next.error().text;
        read(next.value());
        open(toText(draft_.day).c_str());
    }
    std::string refusal(CellsKept how) {
        const auto changes = changesOf(*outlook_, draft_, how, ids());
        return changes.ok() ? "" : changes.error().text;
    }
    /// The drafted or done nucs in walking order: "M1 M2".
    std::string walk() const {
        std::string text;
        for (const auto& stop : placementList(draft_, nucs_))
            text += (text.empty() ? "" : " ") + stop.nuc->side->box->label;
        return text;
    }
    std::int32_t other(CellTarget way) const {
        return draft_.batches.at(0).others[static_cast<std::size_t>(way)];
    }
    std::size_t placements() const { return outlook_->snapshot.all<Placement>().size(); }
    Id<NucSide> side(const std::string& box) const { return maker_.sideId(box + "/-"); }

    SeasonMaker maker_;
    OutlookPtr outlook_;
    OutlookMemo memo_;
    CellsDraft draft_;
    std::vector<CellsNuc> nucs_;
    std::uint64_t next_ = 860'000;
};

}  // namespace tenthday::test
