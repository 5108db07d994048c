#include "occupancy/stocking_list.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <unordered_map>

namespace tenthday {
namespace {

/// Lets each donor give in turn: the one that gave least first.
class Givers {
public:
    Givers(const Snapshot& snapshot, const std::vector<DonorGifts>& donors)
        : snapshot_(snapshot), donors_(donors) {
        for (const auto& yard : snapshot.all<Yard>()) labels_.push_back(yard->label);
    }

    /// For a nuc in a yard, on a day.
    std::string take(Id<Yard> yard, Day day, std::int32_t beesMl, std::int32_t frames) {
        const auto there = snapshot_.find(yard);
        DonorGifts* best = nullptr;
        for (auto& donor : donors_) {
            const bool fliesBack = there && namesYard(donor.donor, there->label, labels_);
            if (fliesBack || !donor.mayGive() || isHeld(donor, day)) continue;
            const auto left = mayStillGive(donor, snapshot_.facts());
            if (left.bees.value < beesMl || left.brood.value < frames) continue;
            if (best == nullptr || std::pair(donor.broodFrames, donor.beesMl) <
                                       std::pair(best->broodFrames, best->beesMl))
                best = &donor;
        }
        if (best == nullptr) return {};
        best->beesMl += beesMl;
        best->broodFrames += frames;
        return best->donor;
    }

private:
    [[nodiscard]] bool isHeld(const DonorGifts& donor, Day day) {
        const auto [at, isNew] = held_.try_emplace({donor.donor, day}, false);
        if (isNew) at->second = !donorHolds(snapshot_, donor.donor, day).empty();
        return at->second;
    }

    const Snapshot& snapshot_;
    std::vector<DonorGifts> donors_;
    std::vector<std::string_view> labels_;
    std::map<std::pair<std::string, Day>, bool> held_;
};

class Lister {
public:
    Lister(const Snapshot& snapshot, const NucOutlook& nucs, Day from)
        : snapshot_(snapshot), nucs_(nucs), today_(snapshot.today()) {
        list_.days = {from, from + kStockingAhead};
        list_.donors = donorGifts(snapshot, from);
        for (const auto& yard : nucs.yards) stops_.emplace(yard.yard->id, stops_.size());
        queenless_ = std::max(queenlessDays(snapshot.facts()), Days{1});
        for (const auto& row : snapshot.all<Stocking>())
            if (row->day < from && row->beesMl && (!newest_ || row->day >= newest_->day))
                newest_ = row;
    }

    StockingList run() {
        planned();
        for (const auto& cells : nucs_.cellsDays)
            if (list_.days.contains(cells.day)) wanted(cells);
        sort();
        Givers givers(snapshot_, list_.donors);
        for (auto& need : list_.needs)
            if (need.why != StockingWhy::Planned)
                need.donor = givers.take(need.yard, need.dayBy, need.bees.value_or(BeesMl{0}).value,
                                         need.brood.value_or(Frames{0}).value);
        return std::move(list_);
    }

private:
    void planned() {
        for (const auto& side : nucs_.sides)
            for (const auto& row : side.stockings) {
                const auto yard = side.yardOn(row->day);
                if (!yard || row->day < today_ || !list_.days.contains(row->day)) continue;
                list_.needs.push_back({StockingWhy::Planned,
                                       &side,
                                       *yard,
                                       row->day,
                                       false,
                                       {},
                                       row->beesMl,
                                       row->broodFrames,
                                       row->donor});
                used_.insert(side.side->id);
            }
    }

    void wanted(const CellsDay& cells) {
        std::int32_t lack = cells.toNucs - cells.numbers.ready -
                            static_cast<std::int32_t>(std::floor(cells.numbers.likely + 1e-6));
        if (lack <= 0 && !hasNamed(cells.day)) return;
        const auto order = sidesFor(cells);
        for (const auto* side : order)
            if (isNamed(*side, cells.day) && isBare(*side, cells.day))
                --lack, add(StockingWhy::CellsDay, *side, cells.day);
        for (const auto* side : order)
            if (lack > 0 && canStock(*side, cells.day))
                --lack, add(StockingWhy::CellsDay, *side, cells.day);
        for (const auto* side : order)
            if (lack > 0 && wantsBrood(*side, cells.day))
                --lack, add(StockingWhy::OpenBrood, *side, cells.day);
        list_.withoutNuc += std::max(lack, 0);
    }

    /// Sides of the yards that its batches name, then all others along the round.
    [[nodiscard]] std::vector<const SideOutlook*> sidesFor(const CellsDay& cells) const {
        std::set<Id<Yard>> named;
        for (const auto batch : cells.batches)
            for (const auto& share : snapshot_.all<BatchShare>().of(batch.uuid))
                if (share->cells.value > 0) named.insert(share->yard);
        std::vector<std::pair<std::pair<bool, std::size_t>, const SideOutlook*>> order;
        for (const auto& side : nucs_.sides) {
            const auto yard = side.yardOn(cells.day);
            const auto stop = yard ? stops_.find(*yard) : stops_.end();
            if (stop != stops_.end() && side.stands.contains(cells.day))
                order.push_back({{!named.contains(*yard), stop->second}, &side});
        }
        std::stable_sort(order.begin(), order.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        std::vector<const SideOutlook*> sides;
        for (const auto& [key, side] : order) sides.push_back(side);
        return sides;
    }

    [[nodiscard]] static bool isNamed(const SideOutlook& side, Day day) {
        return std::any_of(side.rounds.begin(), side.rounds.end(), [&](const SideRound& round) {
            return round.named && !round.done && round.transferDay == day;
        });
    }
    [[nodiscard]] bool hasNamed(Day day) const {
        return std::any_of(nucs_.sides.begin(), nucs_.sides.end(), [&](const auto& side) {
            return isNamed(side, day) && isBare(side, day);
        });
    }
    /// Nothing is stocked in it by then, or it was given up.
    [[nodiscard]] bool isBare(const SideOutlook& side, Day day) const {
        if (used_.contains(side.side->id)) return false;
        const auto is = sideOn(side, day, today_);
        return is.state == NucState::NotStocked || is.state == NucState::Spent;
    }
    [[nodiscard]] bool canStock(const SideOutlook& side, Day day) const {
        return !used_.contains(side.side->id) && sideOn(side, day, today_).canStock;
    }
    [[nodiscard]] bool wantsBrood(const SideOutlook& side, Day day) const {
        return !used_.contains(side.side->id) && sideOn(side, day, today_).needsBrood;
    }

    void add(StockingWhy why, const SideOutlook& side, Day cellsDay) {
        const bool bees = why == StockingWhy::CellsDay;
        const Day latest = cellsDay - (bees ? queenless_ : Days{1});
        StockingNeed need;
        need.why = why;
        need.side = &side;
        need.yard = *side.yardOn(cellsDay);
        need.dayBy = std::max(latest, today_);
        need.late = latest < today_;
        need.cellsDay = cellsDay;
        if (bees) likeLast(side, need);
        if (!bees) need.brood = Frames{1};
        used_.insert(side.side->id);
        list_.needs.push_back(std::move(need));
    }

    /// As the nuc was stocked last; else as any was.
    void likeLast(const SideOutlook& side, StockingNeed& need) const {
        Ptr<Stocking> last;
        for (const auto& row : side.stockings)
            if (row->beesMl && (!last || row->day >= last->day)) last = row;
        if (!last) last = newest_;
        need.bees = last ? *last->beesMl
                         : BeesMl{static_cast<std::int32_t>(snapshot_.facts()[Fact::NucBeesMl])};
        if (last) need.brood = last->broodFrames;
    }

    void sort() {
        std::stable_sort(list_.needs.begin(), list_.needs.end(), [&](const auto& a, const auto& b) {
            const auto stop = [&](const StockingNeed& need) {
                const auto at = stops_.find(need.yard);
                return at == stops_.end() ? stops_.size() : at->second;
            };
            // Nucs stand in their order in one vector.
            return std::tuple(a.dayBy, stop(a), a.side) < std::tuple(b.dayBy, stop(b), b.side);
        });
    }

    const Snapshot& snapshot_;
    const NucOutlook& nucs_;
    Day today_;
    Days queenless_{1};
    Ptr<Stocking> newest_;
    std::unordered_map<Id<Yard>, std::size_t> stops_;
    std::set<Id<NucSide>> used_;
    StockingList list_;
};

}  // namespace

StockingList stockingList(const Snapshot& snapshot, const NucOutlook& nucs, Day from) {
    return Lister(snapshot, nucs, from).run();
}

}  // namespace tenthday
