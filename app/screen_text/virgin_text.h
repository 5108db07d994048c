/// @file virgin_text.h  The words of the page of virgins.
#pragma once
#include <QString>

#include "occupancy/waiting_virgins.h"
#include "outlook/outlook.h"

namespace tenthday::virgin_text {

[[nodiscard]] QString pageEntry();
/// "Virgins on Thursday 3 June 2027".
[[nodiscard]] QString head(Day day);
[[nodiscard]] QString columnHead(int column);
[[nodiscard]] QString groupColumnHead(int column);

/// The weather behind and ahead, how many wait for it, and until when they can.
[[nodiscard]] QString sentence(const WaitingVirgins& virgins);
/// "4 wait, 12 look, 1 combine"; nothing for advice that no nuc gets.
[[nodiscard]] QString advised(const std::array<std::int32_t, kTokenCount<VirginAdvice>>& advised);

/// Age in days; "cell" before she is out.
[[nodiscard]] QString age(std::int32_t days);
/// "9 to 11" of a group.
[[nodiscard]] QString ages(std::int32_t youngest, std::int32_t oldest);
/// "1 of 9" days; "about 1.4 of 9" where some are reckoned by their chance.
[[nodiscard]] QString flown(const WaitingVirgin& virgin);
/// A mean number of flying days.
[[nodiscard]] QString meanFlown(std::optional<double> days);
/// "?" where no weather is known.
[[nodiscard]] QString chance(std::optional<double> chance);
/// "Thu 3 Jun"; "none" once she is given up.
[[nodiscard]] QString nextLook(const WaitingVirgin& virgin);
/// "look Thu 3 Jun", "recell Tue 8 Jun".
[[nodiscard]] QString advice(const WaitingVirgin& virgin);
/// The advice in one word.
[[nodiscard]] QString word(VirginAdvice advice);

/// Entries of the filter: all, then each advice.
[[nodiscard]] QString filter(int entry);
[[nodiscard]] QString byBatch();
/// What the figures of a group are.
[[nodiscard]] QString groupMeans();
[[nodiscard]] QString goToNuc();
[[nodiscard]] QString changeBatch();
/// What belongs on the page, where no nuc is listed.
[[nodiscard]] QString noVirgins();
/// To leave the nucs alone while virgins fly.
[[nodiscard]] QString leaveShut(const Facts& facts);

}  // namespace tenthday::virgin_text
