#include "chart/chart_wish.h"

#include <algorithm>

namespace tenthday {
namespace {

/// Adds an edit made after those before it.
class Edits {
public:
    explicit Edits(const Snapshot& snapshot) : now_(snapshot) {}

    [[nodiscard]] const Snapshot& now() const { return now_; }
    Result<void> add(const Result<ChangeSet>& edit) {
        if (!edit) return edit.error();
        if (edit.value().isEmpty()) return {};
        auto next = applied(now_, edit.value());
        if (!next) return next.error();
        now_ = std::move(next).value();
        all_ = all_.isEmpty() ? edit.value() : joined(std::move(all_), edit.value());
        return {};
    }
    [[nodiscard]] const ChangeSet& all() const { return all_; }

private:
    Snapshot now_;
    ChangeSet all_;
};

}  // namespace

namespace {

Cells cellsIn(const YardShares& shares, Id<Yard> yard) {
    for (const auto& [of, cells] : shares)
        if (of == yard) return cells;
    return {};
}

/// Where first fit and named nucs put them: a full yard holds fewer than are planned for it.
YardShares foundFor(const Outlook& outlook, Id<Batch> batch) {
    YardShares shares;
    for (const auto& yard : outlook.nucs.yards) {
        std::int32_t cells = 0;  // of all days on which they go there
        for (const auto& block : yard.blocks)
            if (block.batch == batch) cells += block.cells;
        if (cells > 0) shares.emplace_back(yard.yard->id, Cells{cells});
    }
    return shares;
}

}  // namespace

YardShares sharesOf(const Outlook& outlook, Id<Batch> batch, Id<Yard> from) {
    YardShares shares;
    for (const auto& row : outlook.snapshot.all<BatchShare>().of(batch.uuid))
        if (row->cells > Cells{0}) shares.emplace_back(row->yard, row->cells);
    const auto found = foundFor(outlook, batch);
    if (shares.empty()) return found;
    // What is shown there goes along, planned for that yard or not.
    const auto here = cellsIn(found, from);
    const auto named = std::find_if(shares.begin(), shares.end(),
                                    [&](const auto& share) { return share.first == from; });
    if (named != shares.end())
        named->second = std::max(named->second, here);
    else if (here > Cells{0})
        shares.emplace_back(from, here);
    return shares;
}

std::optional<ChartWish::Share> yardMove(const Outlook& outlook, Id<Batch> batch, Id<Yard> place,
                                         int by) {
    const auto shares = sharesOf(outlook, batch, place);
    if (shares.empty()) return std::nullopt;
    auto from = std::find_if(shares.begin(), shares.end(),
                             [&](const auto& share) { return share.first == place; });
    if (from == shares.end())
        from = std::max_element(shares.begin(), shares.end(), [](const auto& a, const auto& b) {
            return a.second.value < b.second.value;
        });
    const auto& yards = outlook.nucs.yards;
    const auto at = std::find_if(yards.begin(), yards.end(),
                                 [&](const auto& yard) { return yard.yard->id == from->first; });
    if (at == yards.end()) return std::nullopt;
    const auto next = (at - yards.begin()) + by;
    if (next < 0 || next >= static_cast<std::ptrdiff_t>(yards.size())) return std::nullopt;
    return ChartWish::Share{batch, from->first, yards[static_cast<std::size_t>(next)].yard->id};
}

Result<ChangeSet> changesOf(const Outlook& saved, const ChartWish& wish, const IdSource& fresh) {
    Edits edits(saved.snapshot);
    if (wish.by != Days{0})
        if (auto done = edits.add(moveBatches(edits.now(), wish.batches, wish.by)); !done)
            return done.error();
    if (wish.load)
        if (auto done = edits.add(putLoad(edits.now(), *wish.load, fresh)); !done)
            return done.error();
    if (wish.grafts) {
        const auto& [batch, bar, cells] = *wish.grafts;
        if (auto done = edits.add(setGrafts(edits.now(), batch, bar, Cells{cells})); !done)
            return done.error();
    }
    if (wish.share) {
        const auto& [batch, from, to] = *wish.share;
        const auto now = sharesOf(saved, batch, from);
        if (auto done = edits.add(moveShare(edits.now(), batch, from, to, now, fresh)); !done)
            return done.error();
    }
    return edits.all();
}

}  // namespace tenthday
