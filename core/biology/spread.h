/// @file spread.h  A spread of hours: the sum of a uniform and a normal part, or a mixture of such.
#pragma once
#include <array>
#include <cstddef>

namespace tenthday {

/// Value of the standard normal distribution below which a share p lies (0 < p < 1).
/// Rational approximation (P. J. Acklam), relative error under 1.2e-9.
[[nodiscard]] double probit(double p);

/// Hours as a distribution: a mixture of up to four parts, each uniform of one width plus normal of
/// one spread. Exact sums by convolution; a part of no width and no spread is a fixed hour.
class Spread {
public:
    /// A fixed hour.
    explicit Spread(double meanH = 0) : Spread(meanH, 0, 0) {}
    /// @param widthH  full width of the uniform part, h, >= 0
    /// @param sdH     standard deviation of the normal part, h, >= 0
    Spread(double meanH, double widthH, double sdH);

    /// The same, later by so many hours.
    [[nodiscard]] Spread later(double hours) const;
    /// The same plus an independent normal delay.
    [[nodiscard]] Spread plusNormal(double meanH, double sdH) const;
    /// The same plus an independent delay of one of three lengths with these shares (sum 1).
    [[nodiscard]] Spread plusOneOf(const std::array<double, 3>& hours,
                                   const std::array<double, 3>& shares) const;

    /// Share that lies at or before an hour, 0..1. Accurate far into the lower tail.
    [[nodiscard]] double by(double hour) const;
    /// Hour by which a share q lies (0 < q < 1).
    [[nodiscard]] double at(double q) const;
    [[nodiscard]] double mean() const;
    /// Total standard deviation, h.
    [[nodiscard]] double sd() const;

private:
    struct Value {
        double by;
        double density;
    };
    [[nodiscard]] Value value(double hour) const;

    static constexpr std::size_t kMostParts = 4;
    std::size_t parts_ = 1;
    std::array<double, kMostParts> weight_{1};
    std::array<double, kMostParts> mean_{};
    double halfWidth_ = 0;
    double sd_ = 0;
};

}  // namespace tenthday
