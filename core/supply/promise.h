/// @file promise.h  What can be promised beside what is owed.
#pragma once
#include <array>
#include <optional>
#include <vector>

#include "calendar/iso_week.h"
#include "supply/season_supply.h"

namespace tenthday {

/// How sure a promise is unless another level is asked for (common practice).
inline constexpr double kPromiseLevel = 0.9;

/// Counts since the season began, at the end of the week.
struct PromiseWeek {
    IsoWeek week;
    std::int32_t ready = 0;  ///< queens in hand by then, or more, with the chance asked for
    std::int32_t owed = 0;   ///< of orders for queens due by then
    /// More queens, of any line, that can be promised for the end of that week; none for one that
    /// is over.
    std::int32_t canPromise = 0;
};

/// By ISO week of the season. A promise is good when with the chance asked for the queens in hand
/// are enough for it and for all that is owed, on its own day and on every later due day: so it
/// takes nothing from an order that is sure, and there is none while a later one is short.
/// @param level  0..1
[[nodiscard]] std::vector<PromiseWeek> promiseByWeek(SeasonSupply& supply, double level);

/// What somebody would order.
struct PromiseAsk {
    OrderKind kind = OrderKind::Mated;
    std::int32_t count = 1;        ///< >= 1
    std::optional<Id<Line>> line;  ///< none: any
    std::string shipDays;          ///< as in OrderTerms
    double level = kPromiseLevel;  ///< how sure it must be, 0..1
};
/// An order as a question: what is still owed of it, at the chance it must have.
[[nodiscard]] PromiseAsk askOf(const Snapshot& snapshot, const Order& order);

/// First day, from today on, for which so many queens (>= 1) of any line can be promised whole;
/// nothing in the season and its last queens.
[[nodiscard]] std::optional<Day> firstPromise(SeasonSupply& supply, std::int32_t queens,
                                              double level);
/// First day, from today on, on which all that is asked for can go whole, with its chance and so
/// that no order that is met ceases to be. With weekdays, queens must be there the day before, on
/// which they are caged; days off count. For queens of any line there is none while an order due
/// later is short. Ripe cells go on a day on which cells are ripe. Queens of
/// one line, or proven ones, are sought by halving the days: should a later day be the worse one
/// (orders due in between), an earlier good one may be passed over; the day given always holds.
[[nodiscard]] std::optional<Day> firstPromise(SeasonSupply& supply, const PromiseAsk& ask);

/// By catch rule, in the order of CatchRule: what each costs.
using DayByRule = std::array<std::optional<Day>, kTokenCount<CatchRule>>;
/// The same were all batches caught by one rule.
[[nodiscard]] DayByRule firstPromiseByRule(const SeasonSupply& supply, std::int32_t queens,
                                           double level);
[[nodiscard]] DayByRule firstPromiseByRule(const SeasonSupply& supply, const PromiseAsk& ask);

/// An order on the waiting list.
struct WaitingOrder {
    Ptr<Order> order;
    std::optional<Day> earliest;  ///< on which it could be promised whole
};
/// In the order of filling; each by itself, as if it alone were taken from the list.
[[nodiscard]] std::vector<WaitingOrder> waitingOrders(SeasonSupply& supply);

}  // namespace tenthday
