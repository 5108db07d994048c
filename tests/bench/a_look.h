/// @file a_look.h  One look into a nuc as an edit: what entering it costs is timed.
#pragma once
#include <stdexcept>

#include "outlook/outlook.h"
#include "records/change_set.h"

namespace tenthday {

/// "None yet" of today, in a nuc that holds a cell or a virgin. std::logic_error where none does.
inline ChangeSet aLook(const Outlook& outlook) {
    constexpr Days kStillIn{20};  // after the transfer nothing is caught yet
    const Day today = outlook.snapshot.today();
    const SideRound* held = nullptr;
    const SideOutlook* in = nullptr;
    for (const auto& side : outlook.nucs.sides)
        for (const auto& round : side.rounds)
            if (round.transferDay < today && round.transferDay + kStillIn > today)
                held = &round, in = &side;
    if (held == nullptr) throw std::logic_error("no nuc holds a cell");
    Outcome look;
    look.id = Id<Outcome>{Uuid{1, 1}};
    look.batch = held->batch;
    look.side = in->side->id;
    look.kind = OutcomeKind::NoneYet;
    look.day = today;
    ChangeSet changes;
    changes.add(look);
    return changes;
}

}  // namespace tenthday
