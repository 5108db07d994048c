#include "occupancy/builder_rhythm.h"

#include <algorithm>

namespace tenthday {

Days rhythmOf(BuilderKind kind, const Facts& facts) {
    const auto days = [&](Fact fact) { return Days{static_cast<int>(facts[fact])}; };
    switch (kind) {
        case BuilderKind::Starter:
            return days(Fact::RhythmStarterD);
        case BuilderKind::Finisher:
            return days(Fact::RhythmFinisherD);
        case BuilderKind::StarterFinisher:
            return days(Fact::RhythmStarterFinisherD);
        case BuilderKind::Incubator:
        case BuilderKind::Holding:
            break;
    }
    return Days{0};
}

Day freeAfter(Day comes, Day last, Day restUntil, Days rhythm) {
    const Day byRhythm = comes + rhythm;
    const bool overlaps = byRhythm < last;
    const bool rests = restUntil > last;
    return rests && !overlaps ? std::max(byRhythm, restUntil + Days{1}) : byRhythm;
}

}  // namespace tenthday
