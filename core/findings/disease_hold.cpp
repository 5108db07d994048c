#include "findings/disease_hold.h"

#include "records/donors.h"
#include "records/relations.h"

namespace tenthday {
namespace {

class HoldSearch {
public:
    explicit HoldSearch(const Snapshot& snapshot) : snapshot_(snapshot) {
        for (const auto& note : snapshot.all<YardNote>())
            if (note->kind == YardNoteKind::Disease && note->until >= snapshot.today())
                if (const auto yard = snapshot.find(note->yard)) holds_.push_back({note, yard});
    }

    std::vector<Finding> run() {
        if (holds_.empty()) return {};
        for (const auto& row : snapshot_.all<MakeUp>()) taken(row->day, row->donors, row->builder);
        for (const auto& row : snapshot_.all<BuilderNote>())
            if (row->kind == BuilderNoteKind::BroodIn || row->kind == BuilderNoteKind::BeesIn)
                taken(row->day, row->donor, row->builder);
        for (const auto& row : snapshot_.all<Stocking>())
            for (const auto& [note, yard] : holdsOn(row->day, row->donor))
                add(*note, *yard, row->day).subjectLabel = nucOf(row->side);
        for (const auto& row : snapshot_.all<NucCare>())
            if (row->kind == NucCareKind::Boost || row->kind == NucCareKind::BroodIn)
                for (const auto& [note, yard] : holdsOn(row->day, row->donor))
                    add(*note, *yard, row->day).subjectLabel = nucOf(row->side);
        moves();
        return std::move(found_);
    }

private:
    [[nodiscard]] bool isHeld(const YardNote& note, Day day) const {
        return note.from <= day && day <= note.until;
    }

    /// Told as long as the hold lasts, what was done before today too.
    [[nodiscard]] std::vector<DonorHold> holdsOn(Day day, const std::string& donors) const {
        auto holds = donorHolds(snapshot_, donors, day);
        std::erase_if(holds,
                      [&](const auto& hold) { return hold.note->until < snapshot_.today(); });
        return holds;
    }

    Finding& add(const YardNote& note, const Yard& yard, Day day) {
        found_.push_back(holdFinding(note, yard, day, snapshot_.today()));
        return found_.back();
    }

    void taken(Day day, const std::string& donors, Id<Builder> into) {
        for (const auto& [note, yard] : holdsOn(day, donors)) {
            auto& finding = add(*note, *yard, day);
            finding.subject = into;
            if (const auto builder = snapshot_.find(into)) finding.subjectLabel = builder->label;
        }
    }

    [[nodiscard]] std::string nucOf(Id<NucSide> id) const {
        const auto side = snapshot_.find(id);
        const auto layout = side ? snapshot_.find(side->layout) : nullptr;
        const auto box = layout ? snapshot_.find(layout->box) : nullptr;
        return box ? nucName(*box, *side) : std::string();
    }

    /// Boxes that stand in the yard the day before and elsewhere from that day on.
    void moves() {
        for (const auto& stay : snapshot_.all<BoxStay>())
            for (const auto& [note, yard] : holds_) {
                if (!isHeld(*note, stay->from) || stay->yard == yard->id) continue;
                if (yardOn(snapshot_, stay->box, stay->from - Days{1}) != yard->id) continue;
                auto& finding = add(*note, *yard, stay->from);
                if (const auto box = snapshot_.find(stay->box)) finding.subjectLabel = box->label;
            }
    }

    const Snapshot& snapshot_;
    std::vector<DonorHold> holds_;
    std::vector<Finding> found_;
};

}  // namespace

Finding holdFinding(const YardNote& note, const Yard& yard, Day day, Day today) {
    Finding finding;
    finding.kind = FindingKind::LeavesHold;
    const bool isDone = day < today;
    finding.severity = isDone ? Severity::Warning : Severity::Danger;
    finding.count = isDone ? 1 : 0;
    finding.day = day;
    finding.otherLabel = yard.label;
    finding.until = momentOf(note.until);
    return finding;
}

std::vector<Finding> leavesHold(const Snapshot& snapshot) { return HoldSearch(snapshot).run(); }

}  // namespace tenthday
