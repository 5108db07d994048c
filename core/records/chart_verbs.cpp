#include "records/chart_verbs.h"

#include <algorithm>

#include "records/relations.h"
#include "records/verbs.h"

namespace tenthday {
namespace {

template <class Row>
void joinRow(std::vector<RowChange>& rows, const RowChangeOf<Row>& next) {
    for (auto at = rows.begin(); at != rows.end(); ++at) {
        const auto was = at->template as<Row>();
        if (!was || !was->after || !next.before || was->after->id != next.before->id) continue;
        if (!next.after) {
            if (was->before)
                *at = RowChangeOf<Row>{was->before, nullptr};
            else
                rows.erase(at);
            return;
        }
        Row last = *next.after;
        last.version = was->before ? was->before->version + 1 : 1;
        *at = RowChangeOf<Row>{was->before, std::make_shared<const Row>(std::move(last))};
        return;
    }
    rows.push_back(next);
}

/// The yard a planned placement's nuc stands in on its day.
std::optional<Id<Yard>> yardOf(const Snapshot& snapshot, const Placement& placement) {
    const auto side = placement.side ? snapshot.find(*placement.side) : nullptr;
    const auto layout = side ? snapshot.find(side->layout) : nullptr;
    return layout ? yardOn(snapshot, layout->box, placement.day) : std::nullopt;
}

/// Lets go of the nucs named in a yard, or says that cells are in them already.
Result<void> letGo(const Snapshot& snapshot, const Batch& batch, Id<Yard> yard,
                   ChangeSet& changes) {
    for (const auto& placement : snapshot.all<Placement>().of(batch.id.uuid)) {
        if (yardOf(snapshot, *placement) != yard) continue;
        if (placement->done)
            return Error{"batch " + batch.label + ": cells of it are in nucs there already"};
        changes.erase(placement);
    }
    return {};
}

Cells cellsFor(const YardShares& shares, Id<Yard> yard) {
    for (const auto& [id, cells] : shares)
        if (id == yard) return cells;
    return Cells{0};
}

}  // namespace

ChangeSet joined(ChangeSet first, const ChangeSet& then) {
    for (const auto& row : then.rows)
        visitChange(
            [&](const auto& change) {
                joinRow(first.rows, change);
                return 0;
            },
            row);
    return first;
}

Result<ChangeSet> moveBatches(const Snapshot& snapshot, const std::vector<Id<Batch>>& batches,
                              Days by) {
    constexpr std::size_t kMostNamed = 3;
    ChangeSet all{Verb::MoveBatches, {}, {}, {}};
    Snapshot now = snapshot;
    for (std::size_t i = 0; i < batches.size(); ++i) {
        const auto batch = now.find(batches[i]);
        if (!batch) return Error{"batch: there is none with this id"};
        const auto moved = moveBatch(now, batch->id, batch->day + by);
        if (!moved) return moved.error();
        if (batches.size() == 1) return moved;
        if (i < kMostNamed) all.subject += (i > 0 ? ", " : "") + batch->label;
        if (i == kMostNamed) all.subject += " ...";
        auto next = applied(now, moved.value());
        if (!next) return next.error();
        now = std::move(next).value();
        all = joined(std::move(all), moved.value());
    }
    return all;
}

Result<ChangeSet> putLoad(const Snapshot& snapshot, const LoadMove& move, const IdSource& fresh) {
    if (move.from) return moveLoad(snapshot, move.batch, move.step, *move.from, move.to);
    const auto batch = snapshot.find(move.batch);
    if (!batch) return Error{"batch: there is none with this id"};
    ChangeSet changes{Verb::MoveBars, batch->label, {}, {}};
    for (const auto bar : move.bars)
        changes.add(BatchLoad{{fresh()}, 1, move.batch, bar, move.step, move.to});
    return changes;
}

Result<ChangeSet> setGrafts(const Snapshot& snapshot, Id<Batch> id, std::int32_t number,
                            Cells cells) {
    constexpr std::int32_t kMost = 999;
    const auto batch = snapshot.find(id);
    if (!batch) return Error{"batch: there is none with this id"};
    if (isGrafted(snapshot, id))
        return Error{"batch " + batch->label + ": is grafted; what was grafted no longer changes"};
    ChangeSet changes{Verb::SetGrafts, batch->label, {}, {}};
    for (const auto& bar : snapshot.all<BatchBar>().of(id.uuid)) {
        if (bar->bar != number) continue;
        BatchBar changed = *bar;
        changed.cells = Cells{std::clamp(cells.value, 1, kMost)};
        changes.edit(bar, changed);
        return changes;
    }
    return Error{"batch " + batch->label + ": has no bar " + std::to_string(number)};
}

Result<ChangeSet> moveShare(const Snapshot& snapshot, Id<Batch> id, Id<Yard> from, Id<Yard> to,
                            const YardShares& now, const IdSource& fresh) {
    const auto batch = snapshot.find(id);
    if (!batch) return Error{"batch: there is none with this id"};
    ChangeSet changes{Verb::MoveShare, batch->label, {}, {}};
    const auto moving = cellsFor(now, from);
    if (moving.value == 0) return Error{"batch " + batch->label + ": has no cells for this yard"};
    if (from == to) return changes;
    if (auto free = letGo(snapshot, *batch, from, changes); !free) return free.error();
    auto wanted = now;
    std::erase_if(wanted, [&](const auto& share) { return share.first == from; });
    const auto there = std::find_if(wanted.begin(), wanted.end(),
                                    [&](const auto& share) { return share.first == to; });
    if (there == wanted.end())
        wanted.emplace_back(to, moving);
    else
        there->second = Cells{there->second.value + moving.value};
    for (const auto& row : snapshot.all<BatchShare>().of(id.uuid)) {
        const auto cells = cellsFor(wanted, row->yard);
        std::erase_if(wanted, [&](const auto& share) { return share.first == row->yard; });
        if (cells.value == 0) {
            changes.erase(row);
            continue;
        }
        BatchShare changed = *row;
        changed.cells = cells;
        changes.edit(row, changed);
    }
    for (const auto& [yard, cells] : wanted)
        if (cells.value > 0) changes.add(BatchShare{{fresh()}, 1, id, yard, cells});
    return changes;
}

}  // namespace tenthday
