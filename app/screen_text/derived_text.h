/// @file derived_text.h  Why nothing can be pasted into a table of what is reckoned, and where it
/// can be changed.
#pragma once
#include <QString>

namespace tenthday::derived_text {

[[nodiscard]] QString virgins();
[[nodiscard]] QString virginBatches();
[[nodiscard]] QString stockings();
[[nodiscard]] QString broodless();
[[nodiscard]] QString rates();
[[nodiscard]] QString ownOutcomes();
[[nodiscard]] QString whatIf();
[[nodiscard]] QString proposals();
[[nodiscard]] QString planSums();
[[nodiscard]] QString nucsToTick();
[[nodiscard]] QString wayOrder();
[[nodiscard]] QString weatherFile();
[[nodiscard]] QString pastedLines();
[[nodiscard]] QString story();
[[nodiscard]] QString weekOfBatch();
[[nodiscard]] QString datesOfBatch();

}  // namespace tenthday::derived_text
