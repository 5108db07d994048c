/// @file taken_places.h  Places that are taken already: what comes later must not meet them.
#pragma once
#include <QRectF>
#include <algorithm>
#include <vector>

namespace tenthday {

/// Kept in bands of equal height, so that only neighbours are looked at. Order does not matter.
class TakenPlaces {
public:
    /// Empty ones meet nothing.
    void add(const QRectF& rect) {
        for (auto band = bandOf(rect.top()); band <= bandOf(rect.bottom()); ++band) {
            if (band >= bands_.size()) bands_.resize(band + 1);
            bands_[band].push_back(rect);
        }
    }
    [[nodiscard]] bool meets(const QRectF& rect) const {
        for (auto band = bandOf(rect.top()); band <= bandOf(rect.bottom()); ++band) {
            if (band >= bands_.size()) return false;
            for (const auto& other : bands_[band])
                if (other.intersects(rect)) return true;
        }
        return false;
    }
    /// All that reach into the stripe from `top` to `bottom`; some may come twice.
    [[nodiscard]] std::vector<QRectF> within(qreal top, qreal bottom) const {
        std::vector<QRectF> all;
        for (auto band = bandOf(top); band <= bandOf(bottom) && band < bands_.size(); ++band)
            for (const auto& rect : bands_[band])
                if (rect.top() < bottom && rect.bottom() > top) all.push_back(rect);
        return all;
    }

private:
    /// What lies above the chart, or far below, shares the first band or the last.
    static std::size_t bandOf(qreal y) {
        constexpr qreal kBand = 16;
        constexpr qreal kLast = 1023;
        return static_cast<std::size_t>(std::clamp(y / kBand, 0.0, kLast));
    }
    std::vector<std::vector<QRectF>> bands_;
};

}  // namespace tenthday
