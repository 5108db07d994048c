#include <algorithm>

#include "drafting/draft_writers.h"

namespace tenthday {
namespace {

class TakeWriter {
public:
    TakeWriter(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId)
        : snapshot_(snapshot), draft_(draft), newId_(newId) {
        for (const auto& outcome : snapshot.all<Outcome>().of(draft.id.uuid))
            if (outcome->kind == OutcomeKind::TakeCount && !outcome->side)
                counts_.push_back(outcome);
    }

    Result<ChangeSet> run() {
        for (const auto& bar : draft_.bars)
            if (auto done = write(bar); !done) return done.error();
        if (!isAlone() && !changes_.isEmpty())
            for (const auto& count : counts_)
                if (!count->bar && count != given_) changes_.erase(count);
        return std::move(changes_);
    }

private:
    [[nodiscard]] bool isAlone() const { return draft_.bars.size() == 1; }

    Result<void> write(const BarDraft& bar) {
        const auto before = takeCountOf(snapshot_, draft_.id, bar.number, isAlone());
        if (before && before->count == bar.taken) return {};
        if (!bar.taken) {
            eraseAll(bar.number);
            return {};
        }
        if (before) {
            Outcome row = *before;
            row.count = bar.taken;
            changes_.edit(before, row);
            return {};
        }
        return giveOrAdd(bar);
    }

    /// Older counts of the bar go too: they would come back.
    void eraseAll(std::int32_t bar) {
        for (const auto& count : counts_)
            if (count->bar == bar || (isAlone() && !count->bar)) changes_.erase(count);
    }

    /// The count of a whole batch of one bar stays that bar's, with its day and note.
    Result<void> giveOrAdd(const BarDraft& bar) {
        const auto whole = takeCountOf(snapshot_, draft_.id, bar.number, true);
        if (whole && !whole->bar && !given_ && whole->count == bar.taken) {
            Outcome row = *whole;
            row.bar = bar.number;
            changes_.edit(whole, row);
            given_ = whole;
            return {};
        }
        const Day graft = graftedOrPlanned(snapshot_, *snapshot_.find(draft_.id));
        if (snapshot_.today() <= graft)
            return refusal(draft_, "the take is counted from the day after the graft on");
        Outcome row;
        row.id = {newId_()};
        row.batch = draft_.id;
        row.bar = bar.number;
        row.kind = OutcomeKind::TakeCount;
        row.count = bar.taken;
        row.day = std::min(snapshot_.today(), graft + Days{3});
        changes_.add(row);
        return {};
    }

    const Snapshot& snapshot_;
    const BatchDraft& draft_;
    const IdSource& newId_;
    std::vector<Ptr<Outcome>> counts_;
    Ptr<Outcome> given_;
    ChangeSet changes_;
};

}  // namespace

Result<ChangeSet> takeEdit(const Snapshot& snapshot, const BatchDraft& draft,
                           const IdSource& newId) {
    return TakeWriter(snapshot, draft, newId).run();
}

}  // namespace tenthday
