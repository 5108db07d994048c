/// @file plan_seasons.h  Made-up seasons to be planned, the same for the same number.
#pragma once
#include <cstdint>

#include "planning/plan_problem.h"

namespace tenthday::test {

/// How large a made-up season is.
struct SeasonSize {
    std::int32_t days = 30;  ///< on which may be grafted
    std::int32_t every = 1;  ///< and of these only each so manieth
    std::int32_t orders = 4;
    std::int32_t builders = 2;
    std::int32_t nucs = 40;
    std::int32_t lines = 1;
    double plenty = 1;  ///< what is ordered, as a share of about what can be had
};

/// Builders that rear from start to finish, one or two of them gone for a while; orders for queens
/// of any line or one, some proven, now and then one for cells; some queens there already.
[[nodiscard]] PlanProblem madeUpSeason(std::uint32_t number, const SeasonSize& size);

}  // namespace tenthday::test
