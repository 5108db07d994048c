/// @file count.h  Whole counts that cannot be mixed up: cells, frames, millilitres of bees; tenths.
#pragma once
#include <compare>
#include <cstdint>

namespace tenthday {

/// A whole count of one kind of thing. Same kinds add; cells plus frames does not compile.
template <class Kind>
struct Count {
    std::int32_t value = 0;

    constexpr Count() = default;
    explicit constexpr Count(std::int32_t v) : value(v) {}
    friend constexpr auto operator<=>(const Count&, const Count&) = default;
    constexpr Count& operator+=(Count other) { return value += other.value, *this; }
    constexpr Count& operator-=(Count other) { return value -= other.value, *this; }
    friend constexpr Count operator+(Count a, Count b) { return a += b; }
    friend constexpr Count operator-(Count a, Count b) { return a -= b; }
};

using Cells = Count<struct CellsKind>;
using Frames = Count<struct FramesKind>;
/// Bees by volume, ml (a mini nuc takes about 300 ml).
using BeesMl = Count<struct BeesMlKind>;

/// A measure kept in whole tenths of its unit: 18.3 °C is 183. Of percent: permille.
struct Tenths {
    std::int32_t value = 0;

    constexpr Tenths() = default;
    explicit constexpr Tenths(std::int32_t tenths) : value(tenths) {}
    friend constexpr auto operator<=>(const Tenths&, const Tenths&) = default;
};

}  // namespace tenthday
