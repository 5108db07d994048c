/// @file nuc_upkeep.h  The bees of a nuc: when they were fresh, what was added, whether they are
/// worn.
#pragma once
#include "base/id_source.h"
#include "occupancy/nucs.h"
#include "records/change_set.h"

namespace tenthday {

/// Brood with eggs or larvae was put in.
[[nodiscard]] inline bool bringsOpenBrood(const NucCare& care) {
    return care.openBrood && (care.kind == NucCareKind::BroodIn || care.kind == NucCareKind::Boost);
}

/// How a nuc's bees are at the start of work on a day. What a round takes of them is not known:
/// only what was put in and taken out is counted.
struct NucStrength {
    std::optional<Day> freshOn;   ///< stocked, or boosted since; none: not stocked
    std::int32_t beesMl = 0;      ///< put in since the last stocking, less what was thinned out
    bool isCounted = false;       ///< ml are noted of all that was put in
    std::int32_t rounds = 0;      ///< cells and queens it held since its bees were fresh
    std::int32_t most = 0;        ///< fact nuc_rounds
    std::optional<Day> lastCare;  ///< of any kind
    /// After so many rounds its bees are worn (common practice): boost, or combine and stock anew.
    [[nodiscard]] bool isWorn() const { return freshOn && rounds >= most; }
};
[[nodiscard]] NucStrength strengthOn(const Snapshot& snapshot, const SideOutlook& side, Day day);

/// What is done to keep up one nuc, or many alike.
struct CarePlan {
    NucCareKind kind = NucCareKind::Boost;
    Day day;
    std::optional<Hour> hour;
    std::optional<BeesMl> beesMl;
    std::optional<Frames> broodFrames;
    bool openBrood = false;
    std::string donor;
    std::string note;
};

/// Keeps it, one row for each nuc; what does not belong to its kind is left out. Refused where a
/// nuc does not exist, does not stand on that day or was not stocked by then, and where nothing is
/// put in.
[[nodiscard]] Result<ChangeSet> careForNucs(const NucOutlook& nucs,
                                            const std::vector<Id<NucSide>>& sides,
                                            const CarePlan& plan, const IdSource& newId);
/// Takes back the upkeep that was noted of these nucs on a day. Refused where there is none.
[[nodiscard]] Result<ChangeSet> takeBackCare(const Snapshot& snapshot,
                                             const std::vector<Id<NucSide>>& sides, Day day);

}  // namespace tenthday
