/// @file supply_of.h  The orders of an outlook's season and the queens for them.
#pragma once
#include "outlook/outlook.h"
#include "supply/own_rates.h"
#include "supply/season_supply.h"
#include "supply/what_if.h"

namespace tenthday {

/// Reckoned anew at each call; the outlook must outlive it.
[[nodiscard]] SeasonSupply supplyOf(const Outlook& outlook);

/// The rates of losses by the outcomes of an outlook's batches.
[[nodiscard]] OwnRates ownRatesOf(const Outlook& outlook);

/// Adds what the batches of an earlier season's outlook say, in the order of their grafts. A batch
/// that is there already (late ones are read with the next season too) stays as it is.
void addOutcomes(const Outlook& outlook, EarlierOutcomes& earlier);

/// What bad luck would do, or why it cannot be asked. Nothing is kept.
[[nodiscard]] Result<WhatIfAnswer> whatIf(const Outlook& outlook, const WhatIf& what);

}  // namespace tenthday
