/// @file count_spread.h  A whole count that is not certain: the chance of each number.
#pragma once
#include <cstdint>
#include <span>
#include <vector>

namespace tenthday {

/// Of cells or queens: how likely each number is. Chances are exact but for rounding and for tails:
/// from each end, numbers that together are less likely than kTail are given to the nearest number
/// kept, so that no mass is lost.
class CountSpread {
public:
    static constexpr double kTail = 1e-13;

    /// Surely so many (>= 0).
    explicit CountSpread(std::int32_t count = 0) : first_(count), chances_{1} {}
    /// @param chances  of `first` (>= 0), first + 1 and so on: none negative, their sum 1
    CountSpread(std::int32_t first, std::vector<double> chances);

    /// Least and greatest number that can be.
    [[nodiscard]] std::int32_t first() const { return first_; }
    [[nodiscard]] std::int32_t last() const {
        return first_ + static_cast<std::int32_t>(chances_.size()) - 1;
    }
    /// Chances of first() to last().
    [[nodiscard]] std::span<const double> chances() const { return chances_; }

    /// Chance of just so many.
    [[nodiscard]] double of(std::int32_t count) const;
    /// Chance of so many or more, 0..1.
    [[nodiscard]] double atLeast(std::int32_t count) const;
    /// The greatest number that is reached with this chance or better, 0 < chance <= 1.
    [[nodiscard]] std::int32_t reachedWith(double chance) const;
    /// The least number that a share q of all outcomes does not exceed (0 < q < 1).
    [[nodiscard]] std::int32_t quantile(double q) const;
    [[nodiscard]] double mean() const;
    /// Standard deviation.
    [[nodiscard]] double sd() const;

    /// The same and so many more that are certain (>= 0).
    [[nodiscard]] CountSpread shifted(std::int32_t by) const;
    /// What is left when so many (>= 0) are taken, or all where there are fewer.
    [[nodiscard]] CountSpread without(std::int32_t taken) const;
    /// No more than so many (>= 0): there is room for no more.
    [[nodiscard]] CountSpread cappedAt(std::int32_t most) const;

    friend bool operator==(const CountSpread&, const CountSpread&) = default;

private:
    void trim();

    std::int32_t first_;
    std::vector<double> chances_;
};

/// The sum of two counts that do not hang on each other (convolution).
[[nodiscard]] CountSpread operator+(const CountSpread& a, const CountSpread& b);

/// Chance that both together are so many or more, without making their sum.
[[nodiscard]] double atLeastTogether(const CountSpread& a, const CountSpread& b,
                                     std::int32_t count);

/// One of several spreads holds, with these chances (none negative, their sum 1, as many as parts).
[[nodiscard]] CountSpread mixture(std::span<const double> weights,
                                  std::span<const CountSpread> parts);

}  // namespace tenthday
