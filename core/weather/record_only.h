/// @file record_only.h  A chain of flying days of which nothing is known but what is recorded.
#pragma once
#include "weather/flying_chain.h"

namespace tenthday {

/// No day has a chance: each is recorded or forecast, or nothing is known of it (a gap). Stays at a
/// mating station then take a gap for a flying day, as where no weather at all is known.
[[nodiscard]] bool isRecordOnly(const FlyingChain& chain);

}  // namespace tenthday
