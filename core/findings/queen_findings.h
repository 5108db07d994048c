/// @file queen_findings.h  Caught queens on the way to an order and in a bank. Inner to the room.
#pragma once
#include "findings/finding.h"

namespace tenthday {

/// - Of open orders for queens and virgins of others that go today or later: each recorded or
///   forecast day from the caging to the day after they go that is colder or warmer than queens on
///   the way should have it (S99); a danger where it can kill their sperm (S100).
/// - Of bank colonies (named by the note of a queen's stay) today: more queens than one keeps
///   (S20), and queens there for longer than the facts allow (S20, S97).
[[nodiscard]] std::vector<Finding> aboutQueens(const Snapshot& snapshot);

}  // namespace tenthday
