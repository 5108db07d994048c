#include "occupancy/wild_clock.h"

#include <algorithm>

namespace tenthday {

WildClock wildClockFrom(Uuid cause, Moment start, const Facts& facts, BroodAge age) {
    const Day day = dayOf(start);
    const auto days = [&](Fact fact) { return Days{static_cast<int>(facts[fact])}; };
    WildClock clock;
    clock.cause = cause;
    clock.start = start;
    clock.firstLook = {day + days(Fact::Look1FromD), day + days(Fact::Look1ToD)};
    clock.secondLook = {day + days(Fact::Look2FromD), day + days(Fact::Look2ToD)};
    const double fromHatching = facts[Fact::EmergenceH] - facts[Fact::EggH];
    const auto queenOut = [&](Fact fact) {
        double hours = facts[fact];
        if (age != BroodAge::All) hours = std::max(hours, facts[Fact::WildYoungH]);
        if (age == BroodAge::Eggs) hours = std::max(hours, fromHatching);
        return hoursAfter(start, hours);
    };
    clock.oldest = queenOut(Fact::WildOldestH);
    clock.old = queenOut(Fact::WildOldH);
    clock.young = queenOut(Fact::WildYoungH);
    clock.runsOut = hoursAfter(start, facts[Fact::WildLastH]);
    return clock;
}

bool isQueenless(const Snapshot& snapshot, const Builder& builder) {
    return builder.kind == BuilderKind::Starter || builder.kind == BuilderKind::StarterFinisher ||
           !snapshot.all<MakeUp>().of(builder.id.uuid).empty();
}

}  // namespace tenthday
