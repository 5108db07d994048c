/// @file trouble_text.h  The words of batches in trouble along the head of a lane.
#pragma once
#include "outlook/outlook.h"
#include "screen_text/chart_cards.h"

namespace tenthday::trouble_text {

/// In the least room: "late".
[[nodiscard]] QString lateBriefly();
/// "batch 707, late: 9 days without flying"; "batches 702 and 703, 1 Jun: builder free only ...".
/// @param day  where the words stand away from it; else empty
[[nodiscard]] QString told(const QString& who, const QString& day, const QString& words);
/// "and 12 more", of those that have no room.
[[nodiscard]] QString more(int count);
/// Troubles of a kind share their words for how many there are; without a finding: weather makes
/// the batch late.
[[nodiscard]] bool areOfAKind(const Finding* one, const Finding* other);
/// "9 batches too late to graft", of those that are of a kind with one.
[[nodiscard]] QString counted(const Finding* one, int count);
/// The same of several kinds.
[[nodiscard]] QString inTrouble(int count);
/// How late weather makes a batch, and against what that is counted; without lines for a batch
/// that is not late.
[[nodiscard]] CardText lateCard(const Outlook& outlook, Id<Batch> batch);

}  // namespace tenthday::trouble_text
