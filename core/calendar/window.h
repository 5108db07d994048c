/// @file window.h  Spans of days (inclusive) and of hours (half-open).
#pragma once
#include <cstdint>

#include "calendar/day.h"

namespace tenthday {

/// Days from first to last, both included. Empty when last < first.
struct DayWindow {
    Day first;
    Day last;

    [[nodiscard]] constexpr bool contains(Day day) const { return first <= day && day <= last; }
    [[nodiscard]] constexpr bool isEmpty() const { return last < first; }
    /// How many days, 0 when empty.
    [[nodiscard]] constexpr std::int32_t size() const {
        return isEmpty() ? 0 : static_cast<std::int32_t>((last - first).count()) + 1;
    }
    [[nodiscard]] constexpr bool overlaps(const DayWindow& other) const {
        return first <= other.last && other.first <= last;
    }
    friend constexpr bool operator==(const DayWindow&, const DayWindow&) = default;
};

/// From `from` up to, not including, `until`.
struct MomentSpan {
    Moment from;
    Moment until;

    [[nodiscard]] constexpr bool contains(Moment moment) const {
        return from <= moment && moment < until;
    }
    [[nodiscard]] constexpr bool overlaps(const MomentSpan& other) const {
        return from < other.until && other.from < until;
    }
    /// Calendar days touched.
    [[nodiscard]] constexpr DayWindow days() const {
        return {dayOf(from), dayOf(until - std::chrono::minutes{1})};
    }
    friend constexpr bool operator==(const MomentSpan&, const MomentSpan&) = default;
};

}  // namespace tenthday
