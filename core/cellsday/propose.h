/// @file propose.h  A proposal for a cells day: fewest yards, then longest ready; what finds no nuc
/// goes the user's ways in the user's order.
#pragma once
#include "cellsday/cells_draft.h"

namespace tenthday {

/// A way for cells that find no nuc where they were meant to.
enum class Way : std::uint8_t {
    OtherYards,  ///< ready nucs beyond what the batch plans for its yards, the nearest first
    Split,
    Sold,
    Caged,
    Incubator,
    GivenAway,
    Culled
};
template <>
struct TokensOf<Way> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"other_yards", "split", "sold", "caged", "incubator", "given_away", "culled"});
};

struct WayStep {
    Way way{};
    std::optional<std::int32_t> most;  ///< cells of the day that go this way at the most
    friend bool operator==(const WayStep&, const WayStep&) = default;
};
/// Tried one after the other; a way that is not named is not taken.
using WayOrder = std::vector<WayStep>;

/// Ready nucs in other yards, then cages.
[[nodiscard]] WayOrder usualWays();

/// Gives the cells that are left their ways; what is drafted already stays.
///  1. The yards a batch names get as many as it plans for them, longest ready first.
///  2. Batches that name no yard: all of them together by chooseNucs, dealt along the round.
///  3. What still is left goes by `order`. Other yards are near where few stops of the round lie
///     between them and one that gets cells already.
/// @param nucs  those of the draft
[[nodiscard]] CellsDraft proposeWays(const Outlook& outlook, const std::vector<CellsNuc>& nucs,
                                     CellsDraft draft, const WayOrder& order);

}  // namespace tenthday
