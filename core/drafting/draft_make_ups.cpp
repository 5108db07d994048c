#include <algorithm>

#include "drafting/draft_writers.h"
#include "records/task_marks.h"

namespace tenthday {

void eraseMakeUp(const Snapshot& snapshot, const Ptr<MakeUp>& makeUp, ChangeSet& changes) {
    eraseTaskMarks(snapshot, makeUp->id.uuid, changes);
    changes.erase(makeUp);
}

namespace {

/// Bees without a queen are made up; a queenright finisher and an incubator are not.
bool isMadeUp(const Snapshot& snapshot, Id<Builder> id) {
    const auto builder = snapshot.find(id);
    return builder &&
           (builder->kind == BuilderKind::Starter || builder->kind == BuilderKind::StarterFinisher);
}

MakeUp plannedMakeUp(const Snapshot& snapshot, const Batch& batch, Id<Builder> builder,
                     bool openBrood) {
    const auto graft = momentOf(graftDay(snapshot, batch), batch.hour);
    const auto moment = hoursAfter(graft, -snapshot.facts()[Fact::MakeUpBeforeH]);
    MakeUp row;
    row.builder = builder;
    row.day = dayOf(moment);
    if (batch.hour) row.hour = hourOf(moment);
    row.openBrood = openBrood;
    return row;
}

class MakeUpWriter {
public:
    MakeUpWriter(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId,
                 MakeUpsUntil before)
        : snapshot_(snapshot),
          batch_(*snapshot.find(draft.id)),
          planned_(hasGraft(draft.start) ? draft.makeUp : MakeUpPlan::None),
          newId_(newId),
          before_(std::move(before)),
          builders_(firstBuilders(snapshot, draft.id)) {}

    ChangeSet run() {
        if (planned_ != MakeUpPlan::None)
            for (const auto& makeUp : makeUpsFor(snapshot_, batch_))
                if (!before_.own.contains(makeUp->id)) served_.insert(makeUp->builder);
        for (const auto& makeUp : before_.all) keep(makeUp);
        for (const auto builder : builders_)
            if (planned_ != MakeUpPlan::None && !served_.contains(builder) &&
                isMadeUp(snapshot_, builder))
                provide(builder);
        for (const auto& makeUp : spare_) eraseMakeUp(snapshot_, makeUp, changes_);
        return std::move(changes_);
    }

private:
    [[nodiscard]] bool openBrood() const { return planned_ == MakeUpPlan::WithOpenBrood; }

    [[nodiscard]] bool servesAnother(const MakeUp& makeUp) const {
        const auto served = batchesServed(snapshot_, makeUp);
        return std::any_of(served.begin(), served.end(),
                           [&](const auto& batch) { return batch->id != batch_.id; });
    }

    void keep(const Ptr<MakeUp>& makeUp) {
        const bool used =
            std::find(builders_.begin(), builders_.end(), makeUp->builder) != builders_.end();
        const bool fits = isMadeUpFor(makeUp->day, graftDay(snapshot_, batch_));
        const bool own = before_.own.contains(makeUp->id);
        const bool ahead = makeUp->day >= snapshot_.today();
        // One that came along to where another serves already is one too many.
        const bool doubled = own && ahead && served_.contains(makeUp->builder);
        if (used && fits && !doubled && planned_ != MakeUpPlan::None) {
            MakeUp row = *makeUp;
            if (before_.replanned) row.openBrood = openBrood();
            changes_.edit(makeUp, row);
            served_.insert(makeUp->builder);
        } else if (ahead && (own || !servesAnother(*makeUp))) {
            spare_.push_back(makeUp);
        }
    }

    void provide(Id<Builder> builder) {
        const auto planned = plannedMakeUp(snapshot_, batch_, builder, openBrood());
        if (spare_.empty()) {
            put(changes_, Ptr<MakeUp>(), planned, newId_);
            return;
        }
        MakeUp row = *spare_.back();
        row.builder = builder;
        row.openBrood = openBrood();
        if (!isMadeUpFor(row.day, graftDay(snapshot_, batch_)))
            row.day = planned.day, row.hour = planned.hour;
        changes_.edit(spare_.back(), row);
        spare_.pop_back();
    }

    const Snapshot& snapshot_;
    const Batch& batch_;
    MakeUpPlan planned_;
    const IdSource& newId_;
    MakeUpsUntil before_;
    std::vector<Id<Builder>> builders_;
    std::vector<Ptr<MakeUp>> spare_;  ///< planned for this batch alone, and not where it is now
    std::set<Id<Builder>> served_;
    ChangeSet changes_;
};

}  // namespace

ChangeSet makeUpEdit(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId,
                     const MakeUpsUntil& before) {
    return MakeUpWriter(snapshot, draft, newId, before).run();
}

}  // namespace tenthday
