#include "tasks/open_hours.h"

#include <algorithm>
#include <cmath>

#include "records/yard_state.h"

namespace tenthday {
namespace {

Hour hourOfFact(const Facts& facts, Fact fact) {
    return Hour{static_cast<std::int32_t>(std::lround(facts[fact]))};
}

bool virginsFly(const NucOutlook& nucs, const DayWindow& season, Id<Yard> yard, Day day) {
    if (!season.contains(day)) return false;
    const auto found = std::find_if(nucs.yards.begin(), nucs.yards.end(),
                                    [&](const auto& one) { return one.yard->id == yard; });
    if (found == nucs.yards.end()) return false;
    const auto& stack = found->days[static_cast<std::size_t>((day - season.first).count())].stack;
    return stack[static_cast<std::size_t>(NucState::DueToFly)] > 0;
}

}  // namespace

std::optional<ShutHours> shutHours(const Snapshot& snapshot, const NucOutlook& nucs,
                                   const MatingTable& mating, Id<Yard> yard, Day day, Opens opens) {
    const auto& facts = snapshot.facts();
    std::optional<ShutHours> shut;
    if (opens == Opens::Nucs && mating.knownToFly(day) != false &&
        virginsFly(nucs, snapshot.season(), yard, day))
        shut = {hourOfFact(facts, Fact::FlightFromH), hourOfFact(facts, Fact::FlightToH), true,
                false};
    if (!yardNoteOn(snapshot, yard, YardNoteKind::Robbing, day)) return shut;
    const Hour from = hourOfFact(facts, Fact::RobbingFromH);
    const Hour until = hourOfFact(facts, Fact::RobbingToH);
    if (!shut) return ShutHours{from, until, false, true};
    return ShutHours{std::min(from, shut->from), std::max(until, shut->until), true, true};
}

}  // namespace tenthday
