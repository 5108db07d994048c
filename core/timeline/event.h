/// @file event.h  The dated events of a batch, in the order of their tokens.
#pragma once
#include <cstdint>
#include <optional>

#include "base/tokens.h"
#include "calendar/day.h"

namespace tenthday {

enum class Event : std::uint8_t {
    Confine,
    FreeBreeder,
    MakeUpBuilder,
    Graft,
    TakeCount,
    TopUp,
    ToFinisher,
    Sealed,
    FragileFrom,
    FragileUntil,
    CageFrom,
    Ripe,
    LatestMove,
    FirstOut,
    Emergence,
    Mature,
    DueToFly,
    FirstEggs,
    FirstLook,
    SealedBrood,
    Catch
};
template <>
struct TokensOf<Event> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"confine",   "free_breeder", "make_up_builder", "graft",        "take_count",
         "top_up",    "to_finisher",  "sealed",          "fragile_from", "fragile_until",
         "cage_from", "ripe",         "latest_move",     "first_out",    "emergence",
         "mature",    "due_to_fly",   "first_eggs",      "first_look",   "sealed_brood",
         "catch"});
};

/// What must be said beside a date. Words for the window stand in app/screen_text.
enum class EventNote : std::uint8_t {
    None,
    Observed,          ///< seen, not reckoned
    HeatClamped,       ///< temperature outside the measured range; its end was used
    QueenMayBeOut,     ///< age unknown: a queen may be out at once
    NotEvenRipeSafe,   ///< the first queen can be out before the cells are ripe: cage or move early
    CagesInPlaceOnly,  ///< from here nursery cages go over the cells where they hang
};

/// One event: 5, 50 and 95 % of its distribution; all equal where it is set by a rule.
struct EventDates {
    Event event{};
    Moment earliest;  ///< rounded down to the minute
    Moment likely;    ///< rounded to the nearest minute
    Moment latest;    ///< rounded up to the minute
    EventNote note = EventNote::None;
    friend bool operator==(const EventDates&, const EventDates&) = default;
};

}  // namespace tenthday
