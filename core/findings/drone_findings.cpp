#include "findings/drone_findings.h"

#include <algorithm>

namespace tenthday {
namespace {

Finding aboutYard(const DroneNeed& need, Severity severity, Day day) {
    Finding finding;
    finding.kind = FindingKind::FewDrones;
    finding.severity = severity;
    finding.day = day;
    finding.subject = need.yard->id;
    finding.subjectLabel = need.yard->label;
    return finding;
}

/// Nothing noted at all may be a yard among bees of others: worth a word, no more.
Finding tooFew(const DroneNeed& need, Day today) {
    auto finding = aboutYard(need, need.combIn ? Severity::Warning : Severity::Note,
                             std::max(need.peak, today));
    finding.count = *need.noted;
    finding.limit = need.wanted;
    finding.virgins = need.virgins;
    return finding;
}

/// The first virgins fly before the yard's drones are mature.
Finding tooLate(const DroneNeed& need, Day today) {
    auto finding = aboutYard(need, Severity::Note, std::max(need.flights.first, today));
    finding.moment = momentOf(need.flights.first);
    finding.freeFrom = need.mature;
    return finding;
}

}  // namespace

std::vector<Finding> aboutDrones(const std::vector<DroneNeed>& drones, Day today) {
    std::vector<Finding> found;
    for (const auto& need : drones) {
        if (need.flights.last < today) continue;
        if (need.mature && *need.mature > std::max(need.flights.first, today))
            found.push_back(tooLate(need, today));
        if (need.isShort()) found.push_back(tooFew(need, today));
    }
    return found;
}

}  // namespace tenthday
