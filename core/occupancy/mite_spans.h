/// @file mite_spans.h  Days without open brood of nucs and builders, for work against mites, and
/// what was done on them.
#pragma once
#include "base/id_source.h"
#include "occupancy/broodless.h"
#include "occupancy/nucs.h"
#include "records/change_set.h"

namespace tenthday {

/// A nuc's spans without open brood, by time: from its first stocking on, and anew once it was
/// given up and stocked again. A queen lays from the first day on which one of her batch can (seen
/// earlier: from then) to her catch, seen or planned; a nuc in which no queen was found had no
/// brood of her.
[[nodiscard]] std::vector<BroodlessSpan> nucBroodlessSpans(const Snapshot& snapshot,
                                                           const SideOutlook& side);

/// One span, or work that was done outside of any.
struct MiteSpan {
    const SideOutlook* side = nullptr;        ///< a nuc's
    const BuilderOutlook* builder = nullptr;  ///< or a builder's
    BroodlessSpan span;                       ///< of work outside: the day it was done
    bool outside = false;                     ///< there was open brood, as far as is known
    std::vector<Ptr<MiteWork>> work;          ///< done in it, by day; none: nothing was done
};

/// Those of the season, by first day; of one day nucs in their order before builders. They point
/// into what is given.
[[nodiscard]] std::vector<MiteSpan> miteSpans(const Snapshot& snapshot, const NucOutlook& nucs,
                                              const SharedList<BuilderOutlook>& builders);

/// Where work was done.
struct MitePlace {
    std::optional<Id<NucSide>> side;
    std::optional<Id<Builder>> builder;
};
/// Keeps what was done, a row for each place. Refused for a day still to come and without a word on
/// what was done.
[[nodiscard]] Result<ChangeSet> recordMiteWork(const Snapshot& snapshot,
                                               const std::vector<MitePlace>& places, Day day,
                                               const std::string& what, const std::string& note,
                                               const IdSource& newId);

}  // namespace tenthday
