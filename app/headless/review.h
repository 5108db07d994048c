/// @file review.h  The verb that looks back on a season.
#pragma once
#include "headless/verb.h"

namespace tenthday {

[[nodiscard]] const HeadlessVerb& reviewVerb();

}  // namespace tenthday
