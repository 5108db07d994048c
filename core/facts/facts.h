/// @file facts.h  Every default as data: value, unit, range, source, and a book's overrides.
#pragma once
#include <array>
#include <cstdint>
#include <string_view>

#include "base/result.h"
#include "facts/fact.h"

namespace tenthday {

/// One line of a facts revision. Views point into the program's embedded text.
struct FactEntry {
    Fact fact{};
    double value = 0;       ///< published or customary default, in `unit`
    std::string_view unit;  ///< h, d, °C, share (0..1), cells, workers, colonies, queens, m/s, mm
    double low = 0;         ///< lowest value found in print or use
    double high = 0;        ///< highest value found in print or use
    std::string_view source;  ///< key into the list of sources, "common practice" or "from memory"
    std::string_view what;    ///< what it is, English
};

/// What a value of the user's own may be, in the fact's unit. Wider than the published range,
/// which is advice: only what cannot be reckoned with is kept out.
struct FactBounds {
    double least;
    double most;
};
[[nodiscard]] FactBounds boundsOf(const FactEntry& entry);

inline constexpr std::int32_t kNewestFactsRevision = 1;

/// The lines of a published revision (1..kNewestFactsRevision), in the order of Fact.
/// Every revision ever published stays in the program: books pin theirs.
[[nodiscard]] const std::array<FactEntry, kTokenCount<Fact>>& factsRevision(std::int32_t revision);

/// The values in force: one revision with a book's overrides. Cheap to copy and compare.
class Facts {
public:
    explicit Facts(std::int32_t revision = kNewestFactsRevision);

    [[nodiscard]] double operator[](Fact fact) const {
        return values_[static_cast<std::size_t>(fact)];
    }
    [[nodiscard]] std::int32_t revision() const { return revision_; }
    [[nodiscard]] const FactEntry& entry(Fact fact) const {
        return factsRevision(revision_)[static_cast<std::size_t>(fact)];
    }
    [[nodiscard]] bool isOverridden(Fact fact) const { return (*this)[fact] != entry(fact).value; }
    /// Sets a value of the user's own; refused outside boundsOf().
    [[nodiscard]] Result<void> set(Fact fact, double value);

    friend bool operator==(const Facts&, const Facts&) = default;

private:
    std::int32_t revision_;
    std::array<double, kTokenCount<Fact>> values_{};
};

}  // namespace tenthday
