#include "cellsday/cells_draft.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <unordered_map>

#include "base/natural_order.h"
#include "occupancy/caged.h"
#include "occupancy/open_sides.h"
#include "occupancy/winter.h"

namespace tenthday {
namespace {

std::size_t indexOf(CellTarget way) { return static_cast<std::size_t>(way); }

bool isCounted(const Snapshot& snapshot, Id<Batch> batch) {
    const auto outcomes = snapshot.all<Outcome>().of(batch.uuid);
    return std::any_of(outcomes.begin(), outcomes.end(), [](const auto& outcome) {
        return outcome->kind == OutcomeKind::Ripe && outcome->count;
    });
}

/// Virgins that wait in cages can go into nucs on this day.
bool virginsCanGo(const Outlook& outlook, const BatchOutlook& batch, Day day) {
    const auto from = virginsFrom(batch.timeline);
    const auto* out = batch.timeline.find(Event::Emergence);
    if (!from || out == nullptr || day < *from || day > outlook.snapshot.today()) return false;
    const auto last = static_cast<int>(outlook.snapshot.facts()[Fact::LastMatingD]);
    return day <= dayOf(out->likely) + Days{last};
}

bool isInCage(const Placement& row, Day day) {
    return row.done && row.day < day &&
           (row.target == CellTarget::Caged || row.target == CellTarget::Incubator);
}

/// The batch's cells on the day by what the book says.
BatchCells readCells(const Outlook& outlook, const BatchOutlook& batch, Day day) {
    const auto& snapshot = outlook.snapshot;
    BatchCells cells;
    cells.batch = batch.batch->id;
    const bool virgins = virginsCanGo(outlook, batch, day);
    for (const auto& row : snapshot.all<Placement>().of(cells.batch.uuid)) {
        const bool nuc = row->target == CellTarget::Nuc;
        if (row->done && row->day == day) {
            if (nuc)
                cells.doneNucs.push_back(*row->side);
            else
                ++cells.doneOthers[indexOf(row->target)];
        } else if (isReplaceable(row->done, row->day, day, snapshot.today())) {
            if (nuc)
                cells.nucs.push_back(*row->side);
            else
                ++cells.others[indexOf(row->target)];
        } else if (virgins && isInCage(*row, day)) {
            ++cells.caged[indexOf(row->target)];
            ++cells.others[indexOf(row->target)];
        } else {
            ++cells.onOtherDays;
        }
    }
    const auto all = static_cast<std::int32_t>(std::lround(batch.timeline.counts.ripe));
    cells.expected = std::max(all - cells.onOtherDays, cells.done() + sumOf(cells.caged));
    // What has no record once the queens are out is not coming.
    const auto* out = batch.timeline.find(Event::Emergence);
    if (virgins && out != nullptr && day > dayOf(out->latest))
        cells.expected = cells.done() + sumOf(cells.caged);
    cells.wasCounted = isCounted(snapshot, cells.batch);
    return cells;
}

bool hasRowOn(const Snapshot& snapshot, Id<Batch> batch, Day day) {
    const auto rows = snapshot.all<Placement>().of(batch.uuid);
    return std::any_of(rows.begin(), rows.end(), [&](const auto& row) { return row->day == day; });
}

bool hasRecord(const Snapshot& snapshot, Id<Batch> batch) {
    const auto rows = snapshot.all<Placement>().of(batch.uuid);
    return std::any_of(rows.begin(), rows.end(), [](const auto& row) { return row->done; });
}

bool isOf(const Outlook& outlook, const BatchOutlook& batch, const BatchCells& cells, Day day) {
    if (hasRowOn(outlook.snapshot, cells.batch, day) || sumOf(cells.caged) > 0) return true;
    if (cells.expected == 0) return false;
    const Day out = batch.timeline.hold.transferDay;
    if (out == day) return true;
    // Once a part is recorded, a rest that nobody counted is not coming.
    if (!cells.wasCounted && hasRecord(outlook.snapshot, cells.batch)) return false;
    const auto* emergence = batch.timeline.find(Event::Emergence);
    return out < day && day <= outlook.snapshot.today() && emergence != nullptr &&
           day <= dayOf(emergence->latest);
}

/// Yards in driving order.
std::vector<Ptr<Yard>> roundOf(const Snapshot& snapshot) {
    std::vector<Ptr<Yard>> yards(snapshot.all<Yard>().begin(), snapshot.all<Yard>().end());
    std::stable_sort(yards.begin(), yards.end(), [](const auto& a, const auto& b) {
        return a->driveOrder != b->driveOrder ? a->driveOrder < b->driveOrder
                                              : naturalLess(a->label, b->label);
    });
    return yards;
}

/// By record something else is in it on the day, and nothing was seen of its end. A queen of a
/// season before may be caught until a day that is still to come.
bool isHeld(const SideOutlook& side, Day day, Day today) {
    if (day <= today && winteredOn(side, day) != nullptr) return true;
    return std::any_of(side.rounds.begin(), side.rounds.end(), [&](const SideRound& round) {
        const bool ended = round.seen == NucState::Caught || round.seen == NucState::NoQueen ||
                           round.seen == NucState::Spent;
        return round.done && !ended && round.transferDay <= day;
    });
}

CellsNuc nucOf(const Outlook& outlook, const SideOutlook& side, Day day, const OpenSide* open) {
    CellsNuc nuc;
    nuc.side = &side;
    if (open != nullptr) {
        nuc.fit = open->certain ? NucFit::Ready : NucFit::Likely;
        nuc.since = open->since;
        return nuc;
    }
    const auto is = sideOn(side, day, outlook.snapshot.today());
    nuc.fit = isHeld(side, day, outlook.snapshot.today()) ? NucFit::Held : NucFit::NotReady;
    nuc.why = is.reason;
    nuc.since = is.readyFrom;
    return nuc;
}

/// The last day any of the draft's cells holds its nuc.
Day heldUntil(const Outlook& outlook, const CellsDraft& draft) {
    Day last = draft.day;
    for (const auto& cells : draft.batches)
        if (const auto* batch = outlook.find(cells.batch))
            last = std::max(last, batch->timeline.hold.catchDay);
    return last;
}

}  // namespace

std::int32_t sumOf(const WayCounts& counts) {
    return std::accumulate(counts.begin(), counts.end(), 0);
}

std::int32_t BatchCells::done() const {
    return static_cast<std::int32_t>(doneNucs.size()) + sumOf(doneOthers);
}
std::int32_t BatchCells::drafted() const {
    return static_cast<std::int32_t>(nucs.size()) + sumOf(others);
}
bool BatchCells::goesInto(Id<NucSide> side) const {
    return std::find(nucs.begin(), nucs.end(), side) != nucs.end();
}

bool BatchCells::takesVirgins() const {
    for (std::size_t way = 0; way < caged.size(); ++way)
        if (others[way] < caged[way]) return true;
    return false;
}

std::int32_t CellsDraft::ripe() const {
    std::int32_t sum = 0;
    for (const auto& cells : batches) sum += cells.ripe();
    return sum;
}
std::int32_t CellsDraft::left() const {
    std::int32_t sum = 0;
    for (const auto& cells : batches) sum += cells.left();
    return sum;
}
std::int32_t CellsDraft::toNucs() const {
    std::size_t sum = 0;
    for (const auto& cells : batches) sum += cells.nucs.size() + cells.doneNucs.size();
    return static_cast<std::int32_t>(sum);
}
std::int32_t CellsDraft::on(CellTarget way) const {
    if (way == CellTarget::Nuc) return toNucs();
    std::int32_t sum = 0;
    for (const auto& cells : batches)
        sum += cells.others[indexOf(way)] + cells.doneOthers[indexOf(way)];
    return sum;
}
const BatchCells* CellsDraft::in(Id<NucSide> side) const {
    for (const auto& cells : batches)
        if (cells.goesInto(side) ||
            std::find(cells.doneNucs.begin(), cells.doneNucs.end(), side) != cells.doneNucs.end())
            return &cells;
    return nullptr;
}

CellsDraft cellsDraft(const Outlook& outlook, Day day) {
    CellsDraft draft{day, {}};
    for (const auto& batch : outlook.batches) {
        auto cells = readCells(outlook, *batch, day);
        if (isOf(outlook, *batch, cells, day)) draft.batches.push_back(std::move(cells));
    }
    return draft;
}

std::vector<CellsNuc> nucsOf(const Outlook& outlook, const CellsDraft& draft) {
    std::vector<Id<Batch>> batches;
    for (const auto& cells : draft.batches) batches.push_back(cells.batch);
    const auto open =
        openSides(outlook.nucs, outlook.snapshot, batches, draft.day, heldUntil(outlook, draft));
    const auto round = roundOf(outlook.snapshot);
    std::unordered_map<Id<Yard>, std::size_t> stops;
    for (std::size_t i = 0; i < round.size(); ++i) stops[round[i]->id] = i;
    std::vector<CellsNuc> nucs;
    auto next = open.begin();
    for (std::size_t i = 0; i < outlook.nucs.sides.size(); ++i) {
        const auto& side = outlook.nucs.sides[i];
        const bool isOpen = next != open.end() && next->side == i;
        const auto* at = isOpen ? &*next++ : nullptr;
        const auto yard = side.yardOn(draft.day);
        if (!yard || !side.stands.contains(draft.day)) continue;
        nucs.push_back(nucOf(outlook, side, draft.day, at));
        nucs.back().yard = *yard;
        nucs.back().stop = stops[*yard];
    }
    // Boxes stand by label already.
    std::stable_sort(nucs.begin(), nucs.end(),
                     [](const auto& a, const auto& b) { return a.stop < b.stop; });
    return nucs;
}

void give(CellsDraft& draft, std::size_t batch, Id<NucSide> side) {
    const auto* now = draft.in(side);
    if (now != nullptr && !now->goesInto(side)) return;
    takeOut(draft, side);
    draft.batches[batch].nucs.push_back(side);
}

void takeOut(CellsDraft& draft, Id<NucSide> side) {
    for (auto& cells : draft.batches) std::erase(cells.nucs, side);
}

std::int32_t cellsIn(const CellsDraft& draft, const std::vector<CellsNuc>& nucs, std::size_t batch,
                     Id<Yard> yard) {
    return static_cast<std::int32_t>(
        std::count_if(nucs.begin(), nucs.end(), [&](const CellsNuc& nuc) {
            return nuc.yard == yard && draft.batches[batch].goesInto(nuc.id());
        }));
}

void setCellsIn(CellsDraft& draft, const std::vector<CellsNuc>& nucs, std::size_t batch,
                Id<Yard> yard, std::int32_t cells) {
    std::vector<const CellsNuc*> here;
    for (const auto& nuc : nucs)
        if (nuc.yard == yard) here.push_back(&nuc);
    std::stable_sort(here.begin(), here.end(), [](const auto* a, const auto* b) {
        return a->fit != b->fit ? a->fit < b->fit : a->since < b->since;
    });
    auto now = cellsIn(draft, nucs, batch, yard);
    for (auto at = here.begin(); at != here.end() && now < cells; ++at)
        if ((*at)->isOpen() && draft.in((*at)->id()) == nullptr)
            give(draft, batch, (*at)->id()), ++now;
    for (auto at = here.rbegin(); at != here.rend() && now > std::max(cells, 0); ++at)
        if (draft.batches[batch].goesInto((*at)->id())) takeOut(draft, (*at)->id()), --now;
}

std::vector<PlacementStop> placementList(const CellsDraft& draft,
                                         const std::vector<CellsNuc>& nucs) {
    std::vector<PlacementStop> list;
    for (const auto& nuc : nucs)
        if (const auto* cells = draft.in(nuc.id()))
            list.push_back({&nuc, cells->batch, !cells->goesInto(nuc.id())});
    return list;
}

}  // namespace tenthday
