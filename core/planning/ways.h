/// @file ways.h  Ways to fix a shortfall of a plan.
#pragma once
#include "planning/season_plan.h"

namespace tenthday {

enum class WayKind : std::uint8_t {
    MoreNucs,       ///< so many nucs more, from a day on
    MoreBuilders,   ///< so many builders more of a kind, all season
    EarlierGrafts,  ///< grafting may begin so many days earlier
    LaterDue,       ///< an order that is short goes so many days later
};
template <>
struct TokensOf<WayKind> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"more_nucs", "more_builders", "earlier_grafts", "later_due"});
};

/// One thing to do.
struct WayPart {
    WayKind kind{};
    std::int32_t amount = 0;           ///< nucs, builders or days: the least that does
    std::optional<Day> from;           ///< nucs: first day they are wanted; grafts: the first day
    std::optional<BuilderKind> where;  ///< of builders
    std::optional<Id<Order>> order;    ///< of a later due day
    std::optional<Day> due;            ///< the later day
    friend bool operator==(const WayPart&, const WayPart&) = default;
};

/// Done together these leave no order short. Of one that fixes nothing alone `fixes` is false, and
/// `parts` holds its kind with no amount.
struct WayToFix {
    std::vector<WayPart> parts;  ///< one; two where no single way does
    bool fixes = true;
    friend bool operator==(const WayToFix&, const WayToFix&) = default;
};

/// Each kind by itself; and, where none does alone, two together. Empty where nothing is short.
/// Each amount is tried in the book, without keeping it, and planned as planSeason() does it: a way
/// fixes the shortfall when by the exact chances every order is as sure as it must be. Cancelled:
/// what was found so far.
[[nodiscard]] Result<std::vector<WayToFix>> waysToFix(const Outlook& outlook,
                                                      const PlanQuestion& question,
                                                      const PlanControl& control = {});

}  // namespace tenthday
