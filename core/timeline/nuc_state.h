/// @file nuc_state.h  State of a mating nuc on a day.
#pragma once
#include <cstdint>

#include "base/tokens.h"

namespace tenthday {

enum class NucState : std::uint8_t {
    NotStocked,
    Ready,     ///< stocked, without cell or queen
    Cell,      ///< holds a cell
    Virgin,    ///< queen out, not yet flying
    DueToFly,  ///< flies, or waits for weather
    Laying,    ///< laying, not judged
    JudgedGood,
    NoQueen,  ///< looked, none found
    DroneLayer,
    Caught,  ///< queenless since the catch
    Spent    ///< given up for the season
};
template <>
struct TokensOf<NucState> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"not_stocked", "ready", "cell", "virgin", "due_to_fly", "laying", "judged_good",
         "no_queen", "drone_layer", "caught", "spent"});
};

}  // namespace tenthday
