#include "biology/spread.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace tenthday {
namespace {

double normalDensity(double z) {
    return std::exp(-0.5 * z * z) * std::numbers::inv_sqrtpi / std::numbers::sqrt2;
}
double normalBelow(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

/// Rational function of x with four and five coefficients, for the tails of probit.
double tail(double r) {
    const double above =
        ((((-7.784894002430293e-03 * r - 3.223964580411365e-01) * r - 2.400758277161838e+00) * r -
          2.549732539343734e+00) *
             r +
         4.374664141464968e+00) *
            r +
        2.938163982698783e+00;
    const double below =
        (((7.784695709041462e-03 * r + 3.224671290700398e-01) * r + 2.445134137142996e+00) * r +
         3.754408661907416e+00) *
            r +
        1.0;
    return above / below;
}

}  // namespace

double probit(double p) {
    constexpr double kTail = 0.02425;
    if (p < kTail) return tail(std::sqrt(-2 * std::log(p)));
    if (p > 1 - kTail) return -tail(std::sqrt(-2 * std::log1p(-p)));
    const double q = p - 0.5;
    const double r = q * q;
    const double above =
        (((((-3.969683028665376e+01 * r + 2.209460984245205e+02) * r - 2.759285104469687e+02) * r +
           1.383577518672690e+02) *
              r -
          3.066479806614716e+01) *
             r +
         2.506628277459239e+00) *
        q;
    const double below =
        ((((-5.447609879822406e+01 * r + 1.615858368580409e+02) * r - 1.556989798598866e+02) * r +
          6.680131188771972e+01) *
             r -
         1.328068155288572e+01) *
            r +
        1.0;
    return above / below;
}

Spread::Spread(double meanH, double widthH, double sdH) : halfWidth_(widthH / 2), sd_(sdH) {
    assert(widthH >= 0 && sdH >= 0);
    mean_[0] = meanH;
}

Spread Spread::later(double hours) const {
    Spread moved = *this;
    for (std::size_t i = 0; i < parts_; ++i) moved.mean_[i] += hours;
    return moved;
}

Spread Spread::plusNormal(double meanH, double sdH) const {
    Spread sum = later(meanH);
    sum.sd_ = std::hypot(sd_, sdH);
    return sum;
}

Spread Spread::plusOneOf(const std::array<double, 3>& hours,
                         const std::array<double, 3>& shares) const {
    assert(parts_ == 1);
    Spread sum = *this;
    sum.parts_ = 0;
    const double total = shares[0] + shares[1] + shares[2];
    for (std::size_t i = 0; i < hours.size(); ++i) {
        sum.weight_[i] = total > 0 ? shares[i] / total : 1.0 / 3;
        sum.mean_[i] = mean_[0] + hours[i];
        ++sum.parts_;
    }
    return sum;
}

Spread::Value Spread::value(double hour) const {
    Value sum{0, 0};
    for (std::size_t i = 0; i < parts_; ++i) {
        const double t = hour - mean_[i];
        if (sd_ <= 0) {
            const bool inside = std::abs(t) < halfWidth_;
            sum.by += weight_[i] * (inside ? (t + halfWidth_) / (2 * halfWidth_) : t >= 0 ? 1 : 0);
            sum.density += inside ? weight_[i] / (2 * halfWidth_) : 0;
        } else if (halfWidth_ <= 0) {
            sum.by += weight_[i] * normalBelow(t / sd_);
            sum.density += weight_[i] * normalDensity(t / sd_) / sd_;
        } else {
            // The integral of the normal's share over the width: z P(z) + density(z) at both ends.
            const double above = (t + halfWidth_) / sd_;
            const double below = (t - halfWidth_) / sd_;
            const double shareAbove = normalBelow(above);
            const double shareBelow = normalBelow(below);
            const double integral = above * shareAbove + normalDensity(above) -
                                    (below * shareBelow + normalDensity(below));
            sum.by += weight_[i] * sd_ / (2 * halfWidth_) * integral;
            sum.density += weight_[i] * (shareAbove - shareBelow) / (2 * halfWidth_);
        }
    }
    return sum;
}

double Spread::by(double hour) const { return std::clamp(value(hour).by, 0.0, 1.0); }

double Spread::at(double q) const {
    assert(q > 0 && q < 1);
    if (sd_ <= 0 && parts_ == 1) return mean_[0] + (2 * q - 1) * halfWidth_;
    const double wanted = probit(q);
    const auto [first, last] = std::minmax_element(mean_.begin(), mean_.begin() + parts_);
    double low = *first - halfWidth_ - 12 * sd_ - 1;
    double high = *last + halfWidth_ + 12 * sd_ + 1;
    double hour = std::clamp(mean() + wanted * sd(), low, high);
    // Newton on the probit scale, where these spreads are almost straight; bisection as a net.
    for (int round = 0; round < 60; ++round) {
        const auto [share, density] = value(hour);
        (share < q ? low : high) = hour;
        double next = 0.5 * (low + high);
        if (share > 0 && share < 1 && density > 0) {
            const double here = probit(share);
            const double step = (wanted - here) * normalDensity(here) / density;
            if (std::abs(step) < 1e-6) return hour + step;
            if (hour + step > low && hour + step < high) next = hour + step;
        }
        if (high - low < 1e-6) break;
        hour = next;
    }
    return hour;
}

double Spread::mean() const {
    double sum = 0;
    for (std::size_t i = 0; i < parts_; ++i) sum += weight_[i] * mean_[i];
    return sum;
}

double Spread::sd() const {
    const double middle = mean();
    double variance = sd_ * sd_ + halfWidth_ * halfWidth_ / 3;
    for (std::size_t i = 0; i < parts_; ++i)
        variance += weight_[i] * (mean_[i] - middle) * (mean_[i] - middle);
    return std::sqrt(variance);
}

}  // namespace tenthday
