#include "chart/day_axis.h"

#include <algorithm>
#include <cmath>

namespace tenthday {

DayAxis::DayAxis(DayWindow span, qreal left, qreal width)
    : span_(span), left_(left), width_(std::max(width, 1.0)), dayWidth_(narrowestDay()) {}

qreal DayAxis::narrowestDay() const { return width_ / std::max(span_.size(), 1); }

qreal DayAxis::longestScroll() const { return std::max(0.0, span_.size() * dayWidth_ - width_); }

DayAxis DayAxis::clamped() const {
    auto axis = *this;
    axis.dayWidth_ = std::clamp(dayWidth_, narrowestDay(), std::max(kWidestDay, narrowestDay()));
    axis.scroll_ = std::clamp(scroll_, 0.0, axis.longestScroll());
    return axis;
}

qreal DayAxis::xOf(Day day) const {
    return left_ - scroll_ + static_cast<qreal>((day - span_.first).count()) * dayWidth_;
}

qreal DayAxis::xOf(Moment moment) const {
    constexpr qreal kMinutesPerDay = 1440;
    const auto minutes = (moment - Moment{span_.first}).count();
    return left_ - scroll_ + static_cast<qreal>(minutes) / kMinutesPerDay * dayWidth_;
}

Day DayAxis::dayAt(qreal x) const {
    // A day's left edge may come back a rounding error short of itself.
    constexpr qreal kRounding = 1e-7;
    const auto days = std::floor((x - left_ + scroll_) / dayWidth_ + kRounding);
    return span_.first + Days{static_cast<int>(days)};
}

DayWindow DayAxis::visible() const {
    const Day last = dayAt(right() - 1e-3);
    return {std::max(span_.first, dayAt(left_)), std::min(span_.last, last)};
}

DayAxis DayAxis::withDayWidth(qreal x, qreal dayWidth) const {
    auto axis = *this;
    axis.dayWidth_ = std::clamp(dayWidth, narrowestDay(), std::max(kWidestDay, narrowestDay()));
    const qreal daysLeftOfX = (x - left_ + scroll_) / dayWidth_;
    axis.scroll_ = daysLeftOfX * axis.dayWidth_ - (x - left_);
    return axis.clamped();
}

DayAxis DayAxis::zoomedAt(qreal x, qreal factor) const {
    return withDayWidth(x, dayWidth_ * factor);
}

DayAxis DayAxis::scrolledBy(qreal px) const {
    auto axis = *this;
    axis.scroll_ += px;
    return axis.clamped();
}

DayAxis DayAxis::showing(Day day, qreal margin) const {
    const qreal beyond = xOf(day) + dayWidth_ + margin - right();
    const qreal short_ = left_ - (xOf(day) - margin);
    if (short_ > 0) return scrolledBy(-short_);
    return beyond > 0 ? scrolledBy(beyond) : *this;
}

DayAxis DayAxis::centredOn(Day day) const { return scrolledBy(middleOf(day) - left_ - width_ / 2); }

DayAxis DayAxis::fittedTo(DayWindow days) const {
    auto axis = *this;
    axis.dayWidth_ = width_ / std::max(days.size(), 1);
    axis.scroll_ = static_cast<qreal>((days.first - span_.first).count()) * axis.dayWidth_;
    return axis.clamped();
}

DayAxis DayAxis::placed(DayWindow span, qreal left, qreal width) const {
    DayAxis axis(span, left, width);
    if (showsAll()) return axis;
    axis.dayWidth_ = dayWidth_;
    axis.scroll_ = scroll_ + static_cast<qreal>((span_.first - span.first).count()) * dayWidth_;
    return axis.clamped();
}

}  // namespace tenthday
