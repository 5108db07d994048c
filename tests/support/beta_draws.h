/// @file beta_draws.h  Batches by lot, for checks of reckoned chances.
#pragma once
#include <random>

#include "losses/stage.h"

namespace tenthday::test {

/// How many of so many pass in one batch, whose own share is drawn from a beta distribution (two
/// gamma draws) before its cells are.
inline int drawPassed(std::mt19937_64& random, int count, const StageRate& rate) {
    double share = rate.mean;
    if (const double rho = correlation(rate); rho > 0) {
        const double size = 1 / rho - 1;
        const double a = std::gamma_distribution<>(rate.mean * size)(random);
        const double b = std::gamma_distribution<>((1 - rate.mean) * size)(random);
        share = a / (a + b);
    }
    return std::binomial_distribution<>(count, share)(random);
}

}  // namespace tenthday::test
