#include "cellsday/cells_verbs.h"

#include <algorithm>

#include "occupancy/caged.h"
#include "occupancy/open_sides.h"
#include "occupancy/winter.h"
#include "records/counted.h"

namespace tenthday {
namespace {

/// Writes the placements of one batch, in rows that were planned where there are some.
class Writer {
public:
    Writer(const Outlook& outlook, const BatchCells& cells, Day day, CellsKept how,
           const IdSource& newId, ChangeSet& changes)
        : cells_(cells),
          day_(day),
          done_(how == CellsKept::Done),
          newId_(newId),
          changes_(changes) {
        const auto& snapshot = outlook.snapshot;
        auto staying = cells.caged;
        for (std::size_t way = 0; way < staying.size(); ++way)
            staying[way] = std::min(staying[way], cells.others[way]);
        others_ = cells.others;
        for (const auto& row : snapshot.all<Placement>().of(cells.batch.uuid)) {
            const auto way = static_cast<std::size_t>(row->target);
            if (isReplaceable(row->done, row->day, day, snapshot.today())) {
                planned_.push_back(row);
            } else if (row->done && row->day < day && cells.caged[way] > 0) {
                if (staying[way] > 0)
                    --staying[way], --others_[way];  // she stays where she is
                else
                    leaving_.push_back(row);
            }
        }
        const auto* batch = outlook.find(cells.batch);
        const auto virgins = batch != nullptr ? virginsFrom(batch->timeline) : std::nullopt;
        late_ = done_ && virgins && day >= *virgins;
        if (batch != nullptr && batch->timeline.hold.transferDay == day)
            hour_ = hourOf(batch->timeline.hold.transfer);
    }

    void write() {
        std::vector<Placement> fresh;
        for (const auto side : cells_.nucs) keep(CellTarget::Nuc, side, fresh);
        for (std::size_t way = 0; way < others_.size(); ++way)
            for (std::int32_t i = 0; i < others_[way]; ++i)
                keep(static_cast<CellTarget>(way), {}, fresh);
        for (const auto& row : planned_) changes_.erase(row);
        for (auto& row : fresh) changes_.add(std::move(row));
    }

private:
    void keep(CellTarget target, std::optional<Id<NucSide>> side, std::vector<Placement>& fresh) {
        Placement row;
        row.batch = cells_.batch;
        row.side = side;
        row.target = target;
        row.day = day_;
        row.done = done_;
        const auto at = std::find_if(planned_.begin(), planned_.end(), [&](const auto& old) {
            return !late_ && old->target == target && old->side == side;
        });
        if (at == planned_.end() && !leaving_.empty()) {
            row.done = true;
            changes_.edit(leaving_.back(), std::move(row));
            leaving_.pop_back();
            return;
        }
        if (at == planned_.end()) {
            row.id = Id<Placement>{newId_()};
            row.hour = hour_;
            fresh.push_back(std::move(row));
            return;
        }
        row.hour = (*at)->day == day_ ? (*at)->hour : hour_;
        changes_.edit(*at, std::move(row));
        planned_.erase(at);
    }

    const BatchCells& cells_;
    Day day_;
    bool done_;
    bool late_ = false;  ///< recorded of virgins: in the row of a plan she would pass for one that
                         ///< came out of a cage
    const IdSource& newId_;
    ChangeSet& changes_;
    std::vector<Ptr<Placement>> planned_;  ///< not used again yet
    std::vector<Ptr<Placement>> leaving_;  ///< virgins whose cages are to be emptied
    WayCounts others_{};                   ///< less those that stay in their cages
    std::optional<Hour> hour_;             ///< of the day's cells out, where it is the batch's own
};

/// The ripe cells counted now, in place of the count there was. Cells that all have a place by
/// record are counted by it.
void keepCount(const Outlook& outlook, const BatchCells& cells, Day day, CellsKept how,
               const IdSource& newId, ChangeSet& changes) {
    const bool byRecord =
        how == CellsKept::Done && !cells.wasCounted && cells.ripe() > 0 && sumOf(cells.caged) == 0;
    if (!cells.counted && !byRecord) return;
    const auto outcomes = outlook.snapshot.all<Outcome>().of(cells.batch.uuid);
    const auto before = newestCount(outcomes, OutcomeKind::Ripe, std::nullopt);
    Outcome count;
    count.day = day;
    if (before) count = *before;
    // Counts of its bars are older than this one, or it would not stand in their place.
    for (const auto& row : outcomes)
        if (row->kind == OutcomeKind::Ripe && row->bar && row->count)
            count.day = std::max(count.day, row->day);
    count.batch = cells.batch;
    count.kind = OutcomeKind::Ripe;
    count.count = Cells{cells.ripe() + cells.onOtherDays};
    if (before) return changes.edit(before, std::move(count));
    count.id = Id<Outcome>{newId()};
    changes.add(std::move(count));
}

std::string labelsOf(const Outlook& outlook, const CellsDraft& draft) {
    std::string labels;
    for (const auto& cells : draft.batches)
        if (const auto batch = outlook.snapshot.find(cells.batch))
            labels += (labels.empty() ? "" : ", ") + batch->label;
    return labels;
}

CellsRefusal heldBy(const CellsNuc& nuc, Id<Batch> batch, Day day) {
    const auto* stays = winteredOn(*nuc.side, day);
    if (stays == nullptr) return {CellsTrouble::NucHeld, batch, 0, nuc.side};
    return {CellsTrouble::QueenStays, batch, 0, nuc.side,
            stays->queen ? stays->queen->label : std::string()};
}

std::optional<CellsRefusal> troubleOf(const std::vector<CellsNuc>& nucs, const BatchCells& cells,
                                      Day day, bool done) {
    const auto is = [&](CellsTrouble why, std::int32_t count) {
        return CellsRefusal{why, cells.batch, count, nullptr};
    };
    if (cells.counted && *cells.counted < cells.done())
        return is(CellsTrouble::BelowRecord, cells.done());
    if (cells.left() < 0) return is(CellsTrouble::TooMany, -cells.left());
    if (done && cells.left() > 0) return is(CellsTrouble::NoPlaceYet, cells.left());
    if (!done && cells.takesVirgins()) return is(CellsTrouble::VirginsLater, 0);
    for (const auto& nuc : nucs)
        if (nuc.fit == NucFit::Held && cells.goesInto(nuc.id()))
            return heldBy(nuc, cells.batch, day);
    return std::nullopt;
}

}  // namespace

std::optional<CellsRefusal> whyNotKept(const Outlook& outlook, const std::vector<CellsNuc>& nucs,
                                       const CellsDraft& draft, CellsKept how) {
    const bool done = how == CellsKept::Done;
    for (const auto& cells : draft.batches) {
        const bool records = done || cells.counted.has_value();
        if (records && draft.day > outlook.snapshot.today())
            return CellsRefusal{CellsTrouble::AfterToday, cells.batch, 0, nullptr};
        if (auto trouble = troubleOf(nucs, cells, draft.day, done)) return trouble;
    }
    return std::nullopt;
}

std::string englishText(const CellsRefusal& refusal) {
    const auto count = std::to_string(refusal.count);
    switch (refusal.why) {
        case CellsTrouble::TooMany:
            return count + " cells more are given away than are ripe";
        case CellsTrouble::NoPlaceYet:
            return count + " cells have no place yet";
        case CellsTrouble::AfterToday:
            return "that day is still to come";
        case CellsTrouble::NucHeld:
            return "another cell or queen is in nuc " + refusal.side->box->label + '/' +
                   refusal.side->side->side;
        case CellsTrouble::QueenStays:
            return "queen " + refusal.queen + " stays in nuc " + refusal.side->box->label + '/' +
                   refusal.side->side->side + ": note first where she is now";
        case CellsTrouble::BelowRecord:
            return count + " cells of the day are recorded already";
        case CellsTrouble::VirginsLater:
            return "virgins out of cages are recorded once they are in their nucs, not planned";
    }
    return {};
}

Result<ChangeSet> changesOf(const Outlook& outlook, const CellsDraft& draft, CellsKept how,
                            const IdSource& newId) {
    if (const auto refusal = whyNotKept(outlook, nucsOf(outlook, draft), draft, how)) {
        const auto batch = outlook.snapshot.find(refusal->batch);
        return Error{(batch ? batch->label : std::string()) + ": " + englishText(*refusal)};
    }
    const auto verb = how == CellsKept::Done ? Verb::RecordOutcome : Verb::EditBatch;
    // Without a day: it would read as if the batch moved there.
    ChangeSet changes{verb, labelsOf(outlook, draft), {}, {}};
    for (const auto& cells : draft.batches) {
        keepCount(outlook, cells, draft.day, how, newId, changes);
        Writer(outlook, cells, draft.day, how, newId, changes).write();
    }
    return changes;
}

}  // namespace tenthday
