#include <algorithm>

#include "drafting/draft_writers.h"

namespace tenthday {
namespace {

class PartsWriter {
public:
    PartsWriter(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId)
        : snapshot_(snapshot), draft_(draft), newId_(newId) {
        for (const auto& bar : draft.bars) numbers_.push_back(bar.number);
    }

    ChangeSet run() {
        for (const auto& step : snapshot_.all<Step>().of(draft_.method.uuid))
            steps_.push_back(step->step);
        std::sort(steps_.begin(), steps_.end());
        bars();
        loads();
        shares();
        return std::move(changes_);
    }

private:
    void bars() {
        const auto old = snapshot_.all<BatchBar>().of(draft_.id.uuid);
        for (const auto& bar : old)
            if (placeOf(bar->bar) == numbers_.size()) eraseBar(bar);
        for (std::size_t i = 0; i < numbers_.size(); ++i)
            put(changes_, find(old, [&](const auto& b) { return b.bar == numbers_[i]; }),
                BatchBar{
                    {}, 1, draft_.id, numbers_[i], draft_.bars[i].breeder, draft_.bars[i].cells},
                newId_);
    }

    /// Its counts go with it; what was seen in a nuc stays, without the bar.
    void eraseBar(const Ptr<BatchBar>& bar) {
        changes_.erase(bar);
        for (const auto& outcome : snapshot_.all<Outcome>().of(draft_.id.uuid)) {
            if (outcome->bar != bar->bar) continue;
            if (!outcome->side) {
                changes_.erase(outcome);
                continue;
            }
            Outcome kept = *outcome;
            kept.bar.reset();
            changes_.edit(outcome, kept);
        }
    }

    /// The place of a bar in the draft; their number where it is not there.
    [[nodiscard]] std::size_t placeOf(std::int32_t bar) const {
        const auto found = std::find(numbers_.begin(), numbers_.end(), bar);
        return static_cast<std::size_t>(found - numbers_.begin());
    }

    [[nodiscard]] std::optional<Id<Builder>> wanted(std::int32_t bar, std::int32_t step) const {
        const auto at = std::find(steps_.begin(), steps_.end(), step) - steps_.begin();
        if (placeOf(bar) == numbers_.size()) return std::nullopt;
        const auto& builders = draft_.bars[placeOf(bar)].steps;
        const auto place = static_cast<std::size_t>(at);
        return place < steps_.size() && place < builders.size() ? builders[place] : std::nullopt;
    }

    void loads() {
        const auto old = snapshot_.all<BatchLoad>().of(draft_.id.uuid);
        for (const auto& load : old)
            if (!wanted(load->bar, load->step)) changes_.erase(load);
        for (const auto bar : numbers_)
            for (const auto step : steps_)
                if (const auto builder = wanted(bar, step))
                    put(changes_,
                        find(old, [&](const auto& l) { return l.bar == bar && l.step == step; }),
                        BatchLoad{{}, 1, draft_.id, bar, step, *builder}, newId_);
    }

    void shares() {
        const auto old = snapshot_.all<BatchShare>().of(draft_.id.uuid);
        const auto cellsFor = [&](Id<Yard> yard) {
            Cells cells{0};
            for (const auto& [to, count] : draft_.shares)
                if (to == yard) cells += count;
            return cells;
        };
        for (const auto& share : old)
            if (cellsFor(share->yard) == Cells{0}) changes_.erase(share);
        std::set<Id<Yard>> done;
        for (const auto& [yard, count] : draft_.shares) {
            if (cellsFor(yard) == Cells{0} || !done.insert(yard).second) continue;
            const auto to = yard;
            put(changes_, find(old, [&](const auto& s) { return s.yard == to; }),
                BatchShare{{}, 1, draft_.id, to, cellsFor(to)}, newId_);
        }
    }

    template <class Row, class Is>
    static Ptr<Row> find(std::span<const Ptr<Row>> rows, Is is) {
        const auto found =
            std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return is(*row); });
        return found == rows.end() ? nullptr : *found;
    }

    const Snapshot& snapshot_;
    const BatchDraft& draft_;
    const IdSource& newId_;
    std::vector<std::int32_t> numbers_;  ///< of the draft's bars
    std::vector<std::int32_t> steps_;
    ChangeSet changes_;
};

}  // namespace

ChangeSet partsEdit(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId) {
    return PartsWriter(snapshot, draft, newId).run();
}

}  // namespace tenthday
