#include "occupancy/breeder_larvae.h"

#include <algorithm>

#include "occupancy/breeder_uses.h"
#include "records/relations.h"

namespace tenthday {
namespace {

std::vector<Ptr<Queen>> breedersOf(const Snapshot& snapshot, Id<Batch> batch) {
    const auto rows = snapshot.all<BatchBar>().of(batch.uuid);
    std::vector<Ptr<BatchBar>> bars(rows.begin(), rows.end());
    std::sort(bars.begin(), bars.end(),
              [](const auto& a, const auto& b) { return a->bar < b->bar; });
    std::vector<Ptr<Queen>> queens;
    for (const auto& bar : bars) {
        const auto queen = bar->breeder ? snapshot.find(*bar->breeder) : nullptr;
        if (queen && std::find(queens.begin(), queens.end(), queen) == queens.end())
            queens.push_back(queen);
    }
    return queens;
}

}  // namespace

Ptr<QueenNote> larvaeNoteBy(const Snapshot& snapshot, Id<Queen> queen, Day day) {
    Ptr<QueenNote> newest;
    for (const auto& note : snapshot.all<QueenNote>().of(queen.uuid))
        if (note->day <= day && (!newest || note->day >= newest->day)) newest = note;
    return newest;
}

std::vector<LarvaeLook> larvaeLooks(const Snapshot& snapshot, Id<Batch> id) {
    const auto batch = snapshot.find(id);
    std::vector<LarvaeLook> looks;
    if (!batch || !hasGraft(batch->start)) return looks;
    const Day graft = graftedOrPlanned(snapshot, *batch);
    for (const auto& queen : breedersOf(snapshot, id)) {
        LarvaeLook look{queen, graft - Days{1}, {}};
        const auto note = larvaeNoteBy(snapshot, queen->id, graft);
        if (note && note->day >= look.due) look.seen = note->kind;
        looks.push_back(std::move(look));
    }
    return looks;
}

std::vector<Ptr<Queen>> reserveFor(const Snapshot& snapshot, Id<Queen> queen, Id<Batch> batch) {
    for (const auto& season : breederSeasons(snapshot)) {
        if (season.queen->id != queen) continue;
        for (const auto& use : season.uses)
            for (const auto& one : use.batches)
                if (one->id == batch) return use.reserve;
    }
    return {};
}

Result<ChangeSet> noteLarvae(const Snapshot& snapshot, Id<Queen> id, Day day, QueenNoteKind kind,
                             Id<QueenNote> fresh) {
    const auto queen = snapshot.find(id);
    if (!queen) return Error{"queen: there is none with this id"};
    if (day > snapshot.today()) return Error{"that day is still to come: " + toText(day)};
    ChangeSet changes{Verb::EditRow, queen->label, day, {}};
    QueenNote note;
    note.queen = id;
    note.day = day;
    note.kind = kind;
    const auto before = larvaeNoteBy(snapshot, id, day);
    if (before && before->day == day) {
        note.note = before->note;
        changes.edit(before, std::move(note));
        return changes;
    }
    note.id = fresh;
    changes.add(std::move(note));
    return changes;
}

}  // namespace tenthday
