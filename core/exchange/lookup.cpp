#include "exchange/lookup.h"

#include <algorithm>

namespace tenthday {

Lookup::Lookup(const Snapshot& snapshot) : snapshot_(&snapshot) {
    std::apply(
        [&]<class... Rows>(LabelMap<Rows>&... maps) {
            const auto fill = [&]<class Row>(LabelMap<Row>& map) {
                for (const auto& row : snapshot.all<Row>())
                    map.byLabel.emplace(row->label, row->id);
            };
            (fill(maps), ...);
        },
        labels_);
    for (const auto& row : snapshot.all<BoxLayout>()) layouts_[row->box].push_back(row);
    for (auto& [box, rows] : layouts_)
        std::sort(rows.begin(), rows.end(),
                  [](const auto& a, const auto& b) { return a->from < b->from; });
    for (const auto& row : snapshot.all<NucSide>()) sides_[row->layout].push_back(row);
}

Lookup::Place Lookup::placeOf(Id<NucSide> side) const {
    const auto row = snapshot_->find(side);
    const auto layout = row ? snapshot_->find(row->layout) : nullptr;
    return layout ? Place{nameOf(layout->box), row->side} : Place{};
}

std::vector<Ptr<BoxLayout>> Lookup::layoutsOf(Id<Box> box) const {
    const auto at = layouts_.find(box);
    return at == layouts_.end() ? std::vector<Ptr<BoxLayout>>{} : at->second;
}

Ptr<BoxLayout> Lookup::layoutOn(Id<Box> box, Day day) const {
    const auto at = layouts_.find(box);
    if (at == layouts_.end()) return nullptr;
    Ptr<BoxLayout> inForce;
    for (const auto& layout : at->second)
        if (layout->from <= day) inForce = layout;
    return inForce;
}

Id<NucSide> Lookup::sideOf(Id<BoxLayout> layout, std::string_view side) const {
    const auto at = sides_.find(layout);
    if (at == sides_.end()) return {};
    for (const auto& row : at->second)
        if (row->side == (side.empty() ? "-" : side)) return row->id;
    return {};
}

bool Lookup::tookCell(Id<NucSide> side, Id<Batch> batch) const {
    const auto cells = snapshot_->all<Placement>().of(batch.uuid);
    return std::any_of(cells.begin(), cells.end(), [&](const auto& p) { return p->side == side; });
}

Id<NucSide> Lookup::sideOn(Id<Box> box, std::string_view side, Day day,
                           std::optional<Id<Batch>> batch) const {
    const auto layout = layoutOn(box, day);
    if (!layout) return {};
    const auto now = sideOf(layout->id, side);
    const auto before = layout->from == day ? layoutOn(box, day - Days{1}) : nullptr;
    if (!before) return now;
    const auto old = sideOf(before->id, side);
    if (now.isNone()) return old;
    if (batch && !old.isNone() && tookCell(old, *batch) && !tookCell(now, *batch)) return old;
    return now;
}

}  // namespace tenthday
