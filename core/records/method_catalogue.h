/// @file method_catalogue.h  The built-in ways of raising cells.
#pragma once
#include <vector>

#include "facts/facts.h"
#include "records/rows.h"

namespace tenthday {

struct MethodSteps {
    Method method;
    std::vector<Step> steps;  ///< in order
};

/// One queenless box from start to finish; a closed starter, then queenright finishers; and each
/// with an incubator from sealing on; one box whose unsealed cells go to the nucs on day 3. Ids are
/// fixed, the same in every book. Sources: S79 (one box), S11, S13, S25 (starter 24 h), S36
/// (careful step to the incubator, day 5), published French practice (young cells).
[[nodiscard]] const std::vector<MethodSteps>& builtInMethods();

/// The steps of a built-in method with hours by these facts instead of the defaults: starter, move
/// to the incubator, ripe. For answers without a book; a book keeps the steps it was made with.
[[nodiscard]] std::vector<Step> stepsBy(const MethodSteps& made, const Facts& facts);

}  // namespace tenthday
