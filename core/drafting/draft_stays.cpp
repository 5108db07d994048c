#include <algorithm>

#include "drafting/draft_writers.h"
#include "outlook/outlook.h"

namespace tenthday {
namespace {

// Nucs settle for a day before the first flights; a week lets most bad weather pass (common
// practice).
constexpr Days kSettle{1};
constexpr Days kSpare{7};

/// Where nucs were brought last.
std::optional<Id<Yard>> lastStation(const Snapshot& snapshot) {
    Ptr<MatingStay> last;
    for (const auto& stay : snapshot.all<MatingStay>())
        if (stay->yard && (!last || stay->from > last->from)) last = stay;
    return last ? last->yard : std::nullopt;
}

/// Dates of a draft without its days for mating; null where it is refused.
std::shared_ptr<const BatchOutlook> outlookWithout(const Snapshot& snapshot, BatchDraft draft) {
    draft.stays.clear();
    if (!draft.id) draft.id = {Uuid{~std::uint64_t{0}, 0}};
    const auto after = withDraft(snapshot, draft);
    const auto batch = after ? after.value().find(draft.id) : nullptr;
    if (!batch) return nullptr;
    OutlookMemo memo;
    return memo.batch(after.value(), batch);
}

}  // namespace

std::vector<StayDraft> usualStays(const Snapshot& snapshot, const BatchDraft& draft) {
    if (draft.mating == Mating::Open) return {};
    const auto batch = outlookWithout(snapshot, draft);
    const auto* due = batch ? batch->timeline.find(Event::DueToFly) : nullptr;
    const auto* out = batch ? batch->timeline.find(Event::Emergence) : nullptr;
    if (due == nullptr || out == nullptr) return {};
    const auto& facts = snapshot.facts();
    const Day graft = plannedGraft(snapshot, draft);
    if (draft.mating == Mating::Insemination) {
        const Day day = dayOf(hoursAfter(out->likely, facts[Fact::InseminationAgeD] * 24));
        return {{{}, {}, day - graft, day - graft}};
    }
    const Day last = dayOf(hoursAfter(out->latest, facts[Fact::LastMatingD] * 24));
    const Day until = std::min(dayOf(due->latest) + kSpare, last);
    return {{{}, lastStation(snapshot), dayOf(due->earliest) - kSettle - graft, until - graft}};
}

ChangeSet stayEdit(const Snapshot& snapshot, const BatchDraft& draft,
                   const std::optional<BatchDraft>& before, const IdSource& newId) {
    ChangeSet changes;
    const Day graft = plannedGraft(snapshot, draft);
    const auto isSame = [&](const StayDraft& stay) {
        return before &&
               std::find(before->stays.begin(), before->stays.end(), stay) != before->stays.end();
    };
    for (const auto& row : snapshot.all<MatingStay>().of(draft.id.uuid))
        if (std::none_of(draft.stays.begin(), draft.stays.end(),
                         [&](const auto& stay) { return stay.id == row->id; }))
            changes.erase(row);
    for (const auto& stay : draft.stays) {
        const auto row = stay.id ? snapshot.find(stay.id) : nullptr;
        if (row && row->until < snapshot.today() && isSame(stay)) continue;
        MatingStay wanted{stay.id, 1, draft.id, stay.yard, graft + stay.from, graft + stay.until};
        if (row && row->from <= snapshot.today() && isSame(stay)) {  // it has begun
            wanted.from = row->from;
            wanted.until = std::max(wanted.until, wanted.from);
        }
        put(changes, row, wanted, newId);
    }
    return changes;
}

}  // namespace tenthday
