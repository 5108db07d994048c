#include "occupancy/nuc_upkeep.h"

#include <algorithm>

#include "records/relations.h"

namespace tenthday {
namespace {

/// The newest stocking by a day's start.
Ptr<Stocking> stockedBy(const SideOutlook& side, Day day) {
    Ptr<Stocking> newest;
    for (const auto& row : side.stockings)
        if (row->day < day && (!newest || row->day >= newest->day)) newest = row;
    return newest;
}

bool addsBees(const NucCare& care) {
    return care.kind == NucCareKind::Boost && (!care.beesMl || care.beesMl->value > 0);
}

const SideOutlook* sideIn(const NucOutlook& nucs, Id<NucSide> id) {
    for (const auto& side : nucs.sides)
        if (side.side->id == id) return &side;
    return nullptr;
}

NucCare careOf(const CarePlan& plan) {
    const bool bees = plan.kind == NucCareKind::Boost || plan.kind == NucCareKind::Thin;
    const bool brood = plan.kind == NucCareKind::Boost || plan.kind == NucCareKind::BroodIn ||
                       plan.kind == NucCareKind::Thin;
    NucCare care;
    care.kind = plan.kind;
    care.day = plan.day;
    care.hour = plan.hour;
    if (bees) care.beesMl = plan.beesMl;
    if (brood) care.broodFrames = plan.broodFrames;
    care.openBrood = brood && plan.kind != NucCareKind::Thin && plan.openBrood &&
                     plan.broodFrames.value_or(Frames{1}).value > 0;
    if (plan.kind == NucCareKind::Boost || plan.kind == NucCareKind::BroodIn)
        care.donor = plan.donor;
    care.note = plan.note;
    return care;
}

std::optional<std::string> whyNot(const SideOutlook& side, const CarePlan& plan) {
    const auto name = nucName(*side.box, *side.side);
    if (!side.stands.contains(plan.day) || !side.yardOn(plan.day))
        return name + ": stands nowhere on " + toText(plan.day);
    const bool stocked = std::any_of(side.stockings.begin(), side.stockings.end(),
                                     [&](const auto& row) { return row->day <= plan.day; });
    if (!stocked) return name + ": is not stocked by " + toText(plan.day);
    return std::nullopt;
}

}  // namespace

NucStrength strengthOn(const Snapshot& snapshot, const SideOutlook& side, Day day) {
    NucStrength strength;
    strength.most = static_cast<std::int32_t>(snapshot.facts()[Fact::NucRounds]);
    const auto stocking = stockedBy(side, day);
    if (!stocking) return strength;
    strength.freshOn = stocking->day;
    strength.isCounted = stocking->beesMl.has_value();
    strength.beesMl = stocking->beesMl.value_or(BeesMl{0}).value;
    for (const auto& care : snapshot.all<NucCare>().of(side.side->id.uuid)) {
        if (care->day >= day || care->day < stocking->day) continue;
        strength.lastCare = std::max(strength.lastCare.value_or(care->day), care->day);
        const auto bees = care->beesMl.value_or(BeesMl{0}).value;
        if (care->kind == NucCareKind::Thin) strength.beesMl = std::max(strength.beesMl - bees, 0);
        if (!addsBees(*care)) continue;
        strength.beesMl += bees;
        strength.isCounted = strength.isCounted && care->beesMl;
        strength.freshOn = std::max(*strength.freshOn, care->day);
    }
    strength.rounds = static_cast<std::int32_t>(
        std::count_if(side.rounds.begin(), side.rounds.end(), [&](const SideRound& round) {
            return round.transferDay >= *strength.freshOn && round.transferDay < day;
        }));
    return strength;
}

Result<ChangeSet> careForNucs(const NucOutlook& nucs, const std::vector<Id<NucSide>>& sides,
                              const CarePlan& plan, const IdSource& newId) {
    const auto care = careOf(plan);
    const bool nothing = care.kind == NucCareKind::BroodIn
                             ? care.broodFrames && care.broodFrames->value == 0
                             : care.kind != NucCareKind::Feed &&
                                   care.beesMl.value_or(BeesMl{0}).value == 0 &&
                                   care.broodFrames.value_or(Frames{0}).value == 0;
    if (nothing) return Error{"bees or brood frames are needed"};
    ChangeSet changes{Verb::AddRow, {}, plan.day, {}};
    for (const auto id : sides) {
        const auto* side = sideIn(nucs, id);
        if (side == nullptr) return Error{"nuc_side: there is none with this id"};
        if (const auto why = whyNot(*side, plan)) return Error{*why};
        auto row = care;
        row.id = {newId()};
        row.side = id;
        changes.subject += (changes.subject.empty() ? "" : ", ") + nucName(*side->box, *side->side);
        changes.add(std::move(row));
    }
    return changes;
}

Result<ChangeSet> takeBackCare(const Snapshot& snapshot, const std::vector<Id<NucSide>>& sides,
                               Day day) {
    ChangeSet changes{Verb::DeleteRow, {}, day, {}};
    for (const auto side : sides)
        for (const auto& care : snapshot.all<NucCare>().of(side.uuid))
            if (care->day == day) changes.erase(care);
    if (changes.isEmpty()) return Error{"no upkeep of these nucs is noted on " + toText(day)};
    return changes;
}

}  // namespace tenthday
