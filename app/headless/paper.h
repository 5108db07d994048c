/// @file paper.h  The verb that prints lists and cards.
#pragma once
#include "headless/verb.h"

namespace tenthday {

[[nodiscard]] const HeadlessVerb& paperVerb();

}  // namespace tenthday
