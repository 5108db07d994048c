/// @file evening_lines.h  Many entries of one day as one edit: each is judged as if those before it
/// were made.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "evening/evening_verbs.h"

namespace tenthday {

/// What one row of the page is to hold.
struct EveningLine {
    std::size_t row = 0;                ///< of the page
    std::optional<EveningInput> input;  ///< none: what it holds is taken back
};

/// Why a line cannot be entered.
struct EveningTrouble {
    std::optional<Refusal> refusal;  ///< it cannot be true
    std::string text;                ///< English; of what is wrong otherwise
};

struct EveningLines {
    ChangeSet changes;  ///< of all lines that are good
    /// By line; none where it is good.
    std::vector<std::optional<EveningTrouble>> troubles;
};

/// Enters the lines in their order. A line whose row is gone after those before it is in trouble.
/// @param page  of this outlook
[[nodiscard]] EveningLines enterLines(const OutlookPtr& outlook, const EveningPage& page,
                                      const std::vector<EveningLine>& lines, const IdSource& newId);

}  // namespace tenthday
