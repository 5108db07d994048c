#include "records/donors.h"

namespace tenthday {
namespace {

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    return text;
}

}  // namespace

bool namesYard(std::string_view donors, std::string_view yard) {
    while (!donors.empty()) {
        const auto end = donors.find_first_of(",;");
        const auto donor = trimmed(donors.substr(0, end));
        if (donor == yard || (donor.starts_with(yard) && donor[yard.size()] == ' ')) return true;
        if (end == std::string_view::npos) return false;
        donors.remove_prefix(end + 1);
    }
    return false;
}

std::vector<DonorHold> donorHolds(const Snapshot& snapshot, std::string_view donors, Day day) {
    std::vector<DonorHold> holds;
    if (donors.empty()) return holds;
    for (const auto& note : snapshot.all<YardNote>()) {
        if (note->kind != YardNoteKind::Disease || day < note->from || day > note->until) continue;
        const auto yard = snapshot.find(note->yard);
        if (yard && namesYard(donors, yard->label)) holds.push_back({note, yard});
    }
    return holds;
}

}  // namespace tenthday
