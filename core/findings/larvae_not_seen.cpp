#include "findings/larvae_not_seen.h"

#include "occupancy/breeder_larvae.h"
#include "records/relations.h"

namespace tenthday {

std::vector<Finding> larvaeNotSeen(const Snapshot& snapshot, const Timelines& timelines) {
    std::vector<Finding> found;
    for (const auto& [id, timeline] : timelines) {
        const Day graft = dayOf(timeline->graft);
        const DayWindow looked{graft - Days{1}, graft};
        if (!looked.contains(snapshot.today()) || isGrafted(snapshot, id)) continue;
        for (const auto& look : larvaeLooks(snapshot, id)) {
            if (look.seen == QueenNoteKind::Larvae) continue;
            Finding finding;
            finding.day = look.due;
            finding.kind = FindingKind::LarvaeNotSeen;
            finding.severity = look.seen ? Severity::Warning : Severity::Note;
            finding.subject = id;
            finding.subjectLabel = snapshot.find(id)->label;
            finding.otherLabel = look.queen->label;
            finding.moment = timeline->graft;
            finding.count = look.seen ? 1 : 0;
            found.push_back(std::move(finding));
        }
    }
    return found;
}

}  // namespace tenthday
