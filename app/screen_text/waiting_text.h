/// @file waiting_text.h  By when queens have eggs, and which days without flying they wait for.
#pragma once
#include <optional>

#include "outlook/outlook.h"
#include "screen_text/chart_cards.h"

namespace tenthday::waiting_text {

/// "of those that will lay", "80 % by 9 Jun", "in 3 of 10 past years no flying day from 24 May to
/// 31 May". A second line where the days are known in part.
[[nodiscard]] std::vector<CardLine> level(const Outlook& outlook, const BatchOutlook& batch);
/// "never mate for weather", "3 %", "30 % or more of them in 1 of 10 past years"; nothing where
/// hardly any is lost so.
[[nodiscard]] std::optional<CardLine> never(const Outlook& outlook, const BatchOutlook& batch);

/// The same as a sentence.
[[nodiscard]] QString sentence(const Outlook& outlook, const BatchOutlook& batch);

}  // namespace tenthday::waiting_text
