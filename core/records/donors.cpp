#include "records/donors.h"

#include <algorithm>
#include <string>

namespace tenthday {
namespace {

/// Letters A to Z small; others as they are.
std::string lowered(std::string_view text) {
    std::string low(text);
    for (auto& letter : low)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return low;
}

/// "from mill 3" holds "mill" as whole words.
bool holdsWords(const std::string& text, const std::string& words) {
    const auto isEnd = [&](std::size_t at) { return at >= text.size() || text[at] == ' '; };
    for (auto at = text.find(words); at != std::string::npos && !words.empty();
         at = text.find(words, at + 1))
        if ((at == 0 || isEnd(at - 1)) && isEnd(at + words.size())) return true;
    return false;
}

/// One donor of the field, in small letters, and the rest of the field.
std::string nextDonor(std::string_view& donors) {
    const auto end = donors.find_first_of(",;");
    auto donor = lowered(donors.substr(0, end));
    donors.remove_prefix(end == std::string_view::npos ? donors.size() : end + 1);
    return donor;
}

}  // namespace

bool namesYard(std::string_view donors, std::string_view yard,
               const std::vector<std::string_view>& others) {
    const auto wanted = lowered(yard);
    while (!donors.empty()) {
        const auto donor = nextDonor(donors);
        const bool other = std::any_of(others.begin(), others.end(), [&](std::string_view label) {
            const auto longer = lowered(label);
            return longer.size() > wanted.size() && holdsWords(longer, wanted) &&
                   holdsWords(donor, longer);
        });
        if (!other && holdsWords(donor, wanted)) return true;
    }
    return false;
}

std::vector<DonorHold> donorHolds(const Snapshot& snapshot, std::string_view donors, Day day) {
    std::vector<DonorHold> holds;
    if (donors.empty()) return holds;
    std::vector<std::string_view> labels;
    for (const auto& yard : snapshot.all<Yard>()) labels.push_back(yard->label);
    for (const auto& note : snapshot.all<YardNote>()) {
        if (note->kind != YardNoteKind::Disease || day < note->from || day > note->until) continue;
        const auto yard = snapshot.find(note->yard);
        if (yard && namesYard(donors, yard->label, labels)) holds.push_back({note, yard});
    }
    return holds;
}

}  // namespace tenthday
