/// @file sample_outlook.h  An invented season's outlook put together by hand, for tests of the
/// chart: it stays as it is when the rules in core change.
#pragma once
#include "outlook/outlook.h"

namespace tenthday {

/// Three yards, three builders and an incubator, eight batches grafted from 7 May 2027; today is
/// 2 June. Batch 15's box is overfull; on 21 June more cells come out than nucs are ready.
[[nodiscard]] OutlookPtr sampleOutlook();
/// The same with one batch grafted on another day.
[[nodiscard]] OutlookPtr sampleOutlook(std::string_view movedLabel, Day graft);
/// Ids of the sample, by label; none when there is no such label.
[[nodiscard]] Id<Batch> sampleBatch(std::string_view label);
[[nodiscard]] Id<Builder> sampleBuilder(std::string_view label);
[[nodiscard]] Id<Yard> sampleYard(std::string_view label);

}  // namespace tenthday
