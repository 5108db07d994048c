/// @file order_prospect.h  What an order that is being entered would be like. Nothing is kept.
#pragma once
#include "outlook/grafts_for.h"
#include "outlook/supply_of.h"
#include "records/order_verbs.h"
#include "supply/promise.h"

namespace tenthday {

struct OrderProspect {
    /// How it would stand; nothing where it is not of the season shown, or on the waiting list.
    std::optional<OrderOutlook> outlook;
    /// First day on which it could be whole, with its chance and without harm to others.
    std::optional<Day> first;
    DayByRule byRule;         ///< the same were all batches caught by one rule; of queens only
    std::int32_t harmed = 0;  ///< orders that would no longer be met
    /// How many grafts would do, where it is for queens and not met as planned and other numbers
    /// can still be grafted.
    std::optional<GraftsWanted> grafts;
};

/// Of an order as it is entered, new or in place of the one with its id. Refused where it could not
/// be kept. Leans on the outlook's batches, nucs and weather, which no order changes.
[[nodiscard]] Result<OrderProspect> prospectOf(const Outlook& outlook, const OrderWords& words);

}  // namespace tenthday
