/// @file winter_note.h  The outcome that says that a queen stays in her nuc over the winter.
#pragma once
#include <string_view>

#include "records/rows.h"

namespace tenthday {

/// The note of an outcome `judged_good` that says so.
inline constexpr std::string_view kWinterNote = "winter";

[[nodiscard]] inline bool staysForWinter(const Outcome& outcome) {
    return outcome.kind == OutcomeKind::JudgedGood && outcome.note == kWinterNote;
}

}  // namespace tenthday
