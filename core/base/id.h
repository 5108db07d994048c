/// @file id.h  Typed row ids. Core never makes one: they come in from outside.
#pragma once
#include <array>
#include <compare>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace tenthday {

/// 128 bits of a UUID; all zero means "none".
struct Uuid {
    std::uint64_t high = 0;
    std::uint64_t low = 0;
    friend constexpr auto operator<=>(const Uuid&, const Uuid&) = default;
};

/// Lower-case 8-4-4-4-12 text.
[[nodiscard]] std::string toText(const Uuid& uuid);
/// Reads 8-4-4-4-12 hex text of either case; nothing else is accepted.
[[nodiscard]] std::optional<Uuid> uuidFromText(std::string_view text);

/// The id of a row of one kind: a YardId is no BoxId.
template <class Kind>
struct Id {
    Uuid uuid;

    [[nodiscard]] constexpr bool isNone() const noexcept { return uuid == Uuid{}; }
    explicit constexpr operator bool() const noexcept { return !isNone(); }
    friend constexpr auto operator<=>(const Id&, const Id&) = default;
};

}  // namespace tenthday

template <>
struct std::hash<tenthday::Uuid> {
    std::size_t operator()(const tenthday::Uuid& u) const noexcept {
        return u.high * 0x9E3779B97F4A7C15ULL ^ u.low;
    }
};
template <class Kind>
struct std::hash<tenthday::Id<Kind>> {
    std::size_t operator()(const tenthday::Id<Kind>& id) const noexcept {
        return std::hash<tenthday::Uuid>{}(id.uuid);
    }
};
