#include "findings/disease_hold.h"

#include <algorithm>

#include "records/relations.h"
#include "records/yard_state.h"

namespace tenthday {
namespace {

/// Letters A to Z small; others as they are.
std::string lowered(std::string_view text) {
    std::string low(text);
    for (auto& letter : low)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return low;
}

bool isWordEnd(const std::string& text, std::size_t at) {
    return at >= text.size() || text[at] == ' ' || text[at] == ',' || text[at] == ';';
}

/// "from mill 3" holds "Mill" as whole words.
bool holdsWords(const std::string& text, const std::string& words) {
    for (auto at = text.find(words); at != std::string::npos && !words.empty();
         at = text.find(words, at + 1))
        if ((at == 0 || isWordEnd(text, at - 1)) && isWordEnd(text, at + words.size())) return true;
    return false;
}

class HoldSearch {
public:
    explicit HoldSearch(const Snapshot& snapshot) : snapshot_(snapshot) {
        for (const auto& yard : snapshot.all<Yard>()) yards_.push_back(lowered(yard->label));
        for (const auto& note : snapshot.all<YardNote>())
            if (note->kind == YardNoteKind::Disease && note->until >= snapshot.today())
                if (const auto yard = snapshot.find(note->yard)) holds_.emplace_back(note, yard);
    }

    std::vector<Finding> run() {
        if (holds_.empty()) return {};
        for (const auto& row : snapshot_.all<MakeUp>()) taken(row->day, row->donors, row->builder);
        for (const auto& row : snapshot_.all<BuilderNote>())
            if (row->kind == BuilderNoteKind::BroodIn || row->kind == BuilderNoteKind::BeesIn)
                taken(row->day, row->donor, row->builder);
        for (const auto& row : snapshot_.all<Stocking>())
            for (const auto& [note, yard] : holds_)
                if (isHeld(*note, row->day) && names(row->donor, yard->label))
                    add(*note, *yard, row->day).subjectLabel = nucOf(row->side);
        moves();
        return std::move(found_);
    }

private:
    [[nodiscard]] bool isHeld(const YardNote& note, Day day) const {
        return day >= snapshot_.today() && note.from <= day && day <= note.until;
    }

    /// A donor is of the yard whose label is the longest in it: "Mill Road 3" is not of Mill.
    [[nodiscard]] bool names(std::string_view donors, const std::string& yard) const {
        const auto wanted = lowered(yard);
        while (!donors.empty()) {
            const auto end = donors.find_first_of(",;");
            const auto donor = lowered(donors.substr(0, end));
            const bool other = std::any_of(yards_.begin(), yards_.end(), [&](const auto& label) {
                return label.size() > wanted.size() && holdsWords(label, wanted) &&
                       holdsWords(donor, label);
            });
            if (!other && holdsWords(donor, wanted)) return true;
            if (end == std::string_view::npos) return false;
            donors.remove_prefix(end + 1);
        }
        return false;
    }

    Finding& add(const YardNote& note, const Yard& yard, Day day) {
        Finding finding;
        finding.kind = FindingKind::LeavesHold;
        finding.severity = Severity::Danger;
        finding.day = day;
        finding.otherLabel = yard.label;
        finding.until = momentOf(note.until);
        found_.push_back(std::move(finding));
        return found_.back();
    }

    void taken(Day day, const std::string& donors, Id<Builder> into) {
        for (const auto& [note, yard] : holds_) {
            if (!isHeld(*note, day) || !names(donors, yard->label)) continue;
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
    std::vector<std::string> yards_;  ///< labels, in small letters
    std::vector<std::pair<Ptr<YardNote>, Ptr<Yard>>> holds_;
    std::vector<Finding> found_;
};

}  // namespace

std::vector<Finding> leavesHold(const Snapshot& snapshot) { return HoldSearch(snapshot).run(); }

}  // namespace tenthday
