#include "findings/hold_trips.h"

#include <algorithm>
#include <unordered_map>

#include "findings/disease_hold.h"

namespace tenthday {
namespace {

bool shareABar(const LoadSpan& a, const LoadSpan& b) {
    return std::any_of(a.bars.begin(), a.bars.end(), [&](auto bar) {
        return std::find(b.bars.begin(), b.bars.end(), bar) != b.bars.end();
    });
}

class Trips {
public:
    Trips(const Snapshot& snapshot, const NucOutlook& nucs) : snapshot_(snapshot) {
        for (const auto& note : snapshot.all<YardNote>())
            if (note->kind == YardNoteKind::Disease && note->until >= snapshot.today())
                holds_.push_back(note);
        if (holds_.empty()) return;
        for (const auto& side : nucs.sides)
            for (const auto& round : side.rounds) rounds_[round.batch].push_back({&side, &round});
    }
    [[nodiscard]] bool hasHolds() const { return !holds_.empty(); }

    void look(Id<Batch> batch, const BatchTimeline& timeline) {
        batch_ = batch;
        for (const auto& load : timeline.loads) {
            const auto yard = yardOf(load);
            if (!yard) continue;
            const Day out = dayOf(load.span.until);
            bool isLast = true;
            for (const auto& next : timeline.loads) {
                if (next.step != load.step + 1 || !shareABar(load, next)) continue;
                isLast = false;
                if (const auto to = yardOf(next); to && to != yard)
                    leaves(*yard, dayOf(next.span.from), Event::ToFinisher);
            }
            if (isLast) cellsOut(*yard, out);
        }
        stations();
    }

    std::vector<Finding> found;

private:
    [[nodiscard]] std::optional<Id<Yard>> yardOf(const LoadSpan& load) const {
        const auto builder = load.builder ? snapshot_.find(*load.builder) : nullptr;
        return builder ? std::optional(builder->yard) : std::nullopt;
    }

    /// @param out  the day on which the last cells leave the builder
    void cellsOut(Id<Yard> yard, Day out) {
        for (const auto& [side, round] : rounds_[batch_])
            if (round->transferDay <= out)
                if (const auto to = side->yardOn(round->transferDay); to && to != yard)
                    leaves(yard, round->transferDay, Event::Ripe);
        for (const auto& row : snapshot_.all<Placement>().of(batch_.uuid))
            if (row->target == CellTarget::Sold || row->target == CellTarget::GivenAway)
                leaves(yard, row->day, Event::Ripe);
    }

    void stations() {
        for (const auto& stay : snapshot_.all<MatingStay>().of(batch_.uuid)) {
            if (!stay->yard) continue;
            for (const auto& [side, round] : rounds_[batch_]) {
                if (round->catchDay < stay->from) continue;
                const auto home = side->yardOn(stay->from);
                if (home == stay->yard) continue;
                if (home) leaves(*home, stay->from, Event::DueToFly);
                leaves(*stay->yard, stay->until, Event::DueToFly);
            }
        }
    }

    void leaves(Id<Yard> yard, Day day, Event event) {
        for (const auto& note : holds_) {
            if (note->yard != yard || day < note->from || note->until < day) continue;
            const auto row = snapshot_.find(yard);
            if (!row || isTold(row->label, day, event)) continue;
            auto finding = holdFinding(*note, *row, day, snapshot_.today());
            finding.subject = batch_;
            finding.event = event;
            if (const auto batch = snapshot_.find(batch_)) finding.subjectLabel = batch->label;
            found.push_back(std::move(finding));
        }
    }
    [[nodiscard]] bool isTold(const std::string& yard, Day day, Event event) const {
        return std::any_of(found.begin(), found.end(), [&](const auto& finding) {
            return std::get_if<Id<Batch>>(&finding.subject) != nullptr &&
                   std::get<Id<Batch>>(finding.subject) == batch_ && finding.otherLabel == yard &&
                   finding.day == day && finding.event == event;
        });
    }

    const Snapshot& snapshot_;
    std::vector<Ptr<YardNote>> holds_;
    std::unordered_map<Id<Batch>, std::vector<std::pair<const SideOutlook*, const SideRound*>>>
        rounds_;
    Id<Batch> batch_;
};

}  // namespace

std::vector<Finding> tripsOutOfHold(const Snapshot& snapshot, const Timelines& timelines,
                                    const NucOutlook& nucs) {
    Trips trips(snapshot, nucs);
    if (!trips.hasHolds()) return {};
    for (const auto& [batch, timeline] : timelines) trips.look(batch, *timeline);
    return std::move(trips.found);
}

}  // namespace tenthday
