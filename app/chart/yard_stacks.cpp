#include "chart/yard_stacks.h"

#include <algorithm>

#include "base/side_by_side.h"

namespace tenthday {
namespace {

bool isSame(const YardDay& a, const YardDay& b) {
    return a.stack == b.stack && a.sides == b.sides && a.numbers.ready == b.numbers.ready &&
           a.numbers.likely == b.numbers.likely && a.numbers.canStock == b.numbers.canStock &&
           a.numbers.needsBrood == b.numbers.needsBrood;
}

bool isSame(const BatchBlock& a, const BatchBlock& b) {
    return a.batch == b.batch && a.days == b.days && a.cells == b.cells;
}

template <class T>
const T* found(const std::unordered_map<Id<Yard>, T>& all, Id<Yard> yard) {
    const auto at = all.find(yard);
    return at == all.end() ? nullptr : &at->second;
}

}  // namespace

StackFacts::StackFacts(const Outlook& outlook) {
    for (const auto& batch : outlook.batches) batches.emplace(batch->batch->id, batch);
    Id<Batch> last{};  // neighbours mostly hold the same
    for (const auto& side : outlook.nucs.sides) {
        for (const auto& round : side.rounds)
            if (!round.isOpen() && round.batch != last) seen.insert(last = round.batch);
        for (const auto& queen : side.wintered)
            if (const auto yard = side.yardOn(std::max(queen.from, outlook.season.first)))
                wintered[*yard].push_back({queen.from, queen.last});
    }
}

void YardStacks::show(const OutlookPtr& shown) {
    if (shown == outlook_) return;
    outlook_ = shown;
    facts_.emplace(*shown);
    const auto& yards = shown->nucs.yards;
    std::vector<Kept> fresh(yards.size());
    sideBySide(yards.size(), [&](std::size_t i) { fresh[i] = keptOf(yards[i]); });
    kept_.clear();
    for (std::size_t i = 0; i < yards.size(); ++i)
        kept_.emplace(yards[i].yard->id, std::move(fresh[i]));
}

YardStacks::Kept YardStacks::keptOf(const YardOutlook& yard) {
    const auto before = kept_.find(yard.yard->id);
    if (before != kept_.end() && isAsKept(before->second.inputs, yard)) {
        before->second.stack.reset();  // it looks into the season before
        return std::move(before->second);
    }
    Kept fresh;
    fresh.state = ++states_;
    fresh.inputs = inputsOf(yard);
    fresh.runs.resize(yard.days.size());
    fresh.places = stackOf(fresh, yard).places();
    fresh.placesOfBlocks = stackOf(fresh, yard).placesOfBlocks();
    if (before != kept_.end()) keepDays(before->second, fresh);
    return fresh;
}

const std::vector<BandRun>& YardStacks::on(const YardOutlook& yard, Day day) {
    static const std::vector<BandRun> nothing;
    auto& kept = kept_.at(yard.yard->id);
    const auto index = (day - outlook_->season.first).count();
    if (index < 0 || index >= static_cast<int>(kept.runs.size())) return nothing;
    auto& runs = kept.runs[static_cast<std::size_t>(index)];
    if (!runs) {
        runs = stackOf(kept, yard).on(day);
        ++reckoned_;
    }
    return *runs;
}

void YardStacks::reckon(const std::vector<const YardOutlook*>& yards, const DayWindow& days) {
    constexpr std::size_t kAtOnce = 8;
    struct Piece {
        Kept* kept;
        std::vector<std::size_t> days;  ///< from the season's first
    };
    std::vector<Piece> pieces;
    const auto first = std::max(days.first, outlook_->season.first);
    const auto last = std::min(days.last, outlook_->season.last);
    for (const auto* yard : yards) {
        auto& kept = kept_.at(yard->yard->id);
        bool isBegun = false;
        for (Day day = first; day <= last; day += Days{1}) {
            const auto index = static_cast<std::size_t>((day - outlook_->season.first).count());
            if (index >= kept.runs.size() || kept.runs[index]) continue;
            (void)stackOf(kept, *yard);
            if (!isBegun || pieces.back().days.size() == kAtOnce) pieces.push_back({&kept, {}});
            isBegun = true;
            pieces.back().days.push_back(index);
        }
    }
    sideBySide(pieces.size(), [&](std::size_t i) {
        auto& [kept, of] = pieces[i];
        for (const auto index : of)
            kept->runs[index] =
                kept->stack->on(outlook_->season.first + Days{static_cast<int>(index)});
        reckoned_ += static_cast<int>(of.size());
    });
}

const std::vector<YardStack::Places>& YardStacks::places(const YardOutlook& yard) {
    return kept_.at(yard.yard->id).places;
}

const std::shared_ptr<const BatchOutlook>& YardStacks::held(Id<Batch> id) const {
    static const std::shared_ptr<const BatchOutlook> none;
    const auto at = facts_->batches.find(id);
    return at == facts_->batches.end() ? none : at->second;
}

int YardStacks::stateOf(const YardOutlook& yard) const { return kept_.at(yard.yard->id).state; }

YardStacks::Inputs YardStacks::inputsOf(const YardOutlook& yard) const {
    Inputs inputs{outlook_->season.first, yard.mostSides, yard.days, yard.blocks, {}, {}, {}};
    for (const auto& block : yard.blocks) {
        const auto batch = facts_->batches.find(block.batch);
        inputs.batches.push_back(batch == facts_->batches.end() ? nullptr : batch->second);
        inputs.seen.push_back(facts_->seen.contains(block.batch));
    }
    if (const auto* wintered = found(facts_->wintered, yard.yard->id)) inputs.wintered = *wintered;
    return inputs;
}

bool YardStacks::isAsKept(const Inputs& kept, const YardOutlook& yard) const {
    const auto same = [](const auto& a, const auto& b) { return isSame(a, b); };
    if (kept.first != outlook_->season.first || kept.mostSides != yard.mostSides ||
        !std::equal(kept.blocks.begin(), kept.blocks.end(), yard.blocks.begin(), yard.blocks.end(),
                    same) ||
        !std::equal(kept.days.begin(), kept.days.end(), yard.days.begin(), yard.days.end(), same))
        return false;
    for (std::size_t i = 0; i < kept.blocks.size(); ++i) {
        const auto id = kept.blocks[i].batch;
        const auto batch = facts_->batches.find(id);
        const auto* now = batch == facts_->batches.end() ? nullptr : batch->second.get();
        if (kept.batches[i].get() != now || kept.seen[i] != facts_->seen.contains(id)) return false;
    }
    const auto* wintered = found(facts_->wintered, yard.yard->id);
    return wintered ? kept.wintered == *wintered : kept.wintered.empty();
}

void YardStacks::keepDays(Kept& before, Kept& fresh) {
    const auto& was = before.inputs;
    const auto& is = fresh.inputs;
    if (was.first != is.first || was.days.size() != is.days.size() || was.wintered != is.wintered)
        return;
    std::vector<bool> differs(is.days.size(), false);
    for (std::size_t i = 0; i < is.days.size(); ++i) differs[i] = !isSame(was.days[i], is.days[i]);
    const auto differOn = [&](const DayWindow& days) {
        const auto from = std::max(days.first, is.first);
        for (auto i = (from - is.first).count();
             i <= (days.last - is.first).count() && i < static_cast<int>(differs.size()); ++i)
            differs[static_cast<std::size_t>(i)] = true;
    };
    // Blocks come by day: those that stay as they are come in the same order.
    std::size_t next = 0;
    for (std::size_t i = 0; i < is.blocks.size(); ++i) {
        std::size_t at = next;
        while (at < was.blocks.size() &&
               !(isSame(was.blocks[at], is.blocks[i]) && was.batches[at] == is.batches[i] &&
                 was.seen[at] == is.seen[i] &&
                 before.placesOfBlocks[at] == fresh.placesOfBlocks[i]))
            ++at;
        if (at == was.blocks.size()) {
            differOn(is.blocks[i].days);
            continue;
        }
        for (; next < at; ++next) differOn(was.blocks[next].days);
        ++next;
    }
    for (; next < was.blocks.size(); ++next) differOn(was.blocks[next].days);
    for (std::size_t i = 0; i < differs.size(); ++i)
        if (!differs[i]) fresh.runs[i] = std::move(before.runs[i]);
}

YardStack& YardStacks::stackOf(Kept& kept, const YardOutlook& yard) const {
    if (!kept.stack) kept.stack.emplace(*outlook_, yard, *facts_);
    return *kept.stack;
}

}  // namespace tenthday
