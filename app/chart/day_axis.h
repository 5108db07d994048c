/// @file day_axis.h  Days to x and back. No painter, no widget.
#pragma once
#include <QtGlobal>

#include "calendar/window.h"

namespace tenthday {

/// A span of days laid along x from `left` over `width` px; part of it shows when zoomed in.
/// A value: zooming and scrolling give a new axis. Never shows a day outside the span.
class DayAxis {
public:
    static constexpr qreal kWidestDay = 960;  ///< px of a day, zoomed in all the way

    DayAxis() = default;
    /// Shows the whole span. @param span at least one day  @param width > 0, px
    DayAxis(DayWindow span, qreal left, qreal width);

    [[nodiscard]] const DayWindow& span() const { return span_; }
    [[nodiscard]] qreal left() const { return left_; }
    [[nodiscard]] qreal right() const { return left_ + width_; }
    [[nodiscard]] qreal width() const { return width_; }
    /// px per day.
    [[nodiscard]] qreal dayWidth() const { return dayWidth_; }
    /// px by which the span's first day lies left of the left edge, >= 0.
    [[nodiscard]] qreal scroll() const { return scroll_; }
    [[nodiscard]] qreal longestScroll() const;
    [[nodiscard]] bool showsAll() const { return dayWidth_ <= narrowestDay(); }

    /// Left edge of a day; its right edge is that of the next.
    [[nodiscard]] qreal xOf(Day day) const;
    [[nodiscard]] qreal middleOf(Day day) const { return xOf(day) + dayWidth_ / 2; }
    [[nodiscard]] qreal xOf(Moment moment) const;
    /// The day at x, which may lie outside the span.
    [[nodiscard]] Day dayAt(qreal x) const;
    /// Days of the span at least partly to be seen.
    [[nodiscard]] DayWindow visible() const;

    /// `factor` times as wide a day, with what is at x staying at x (as far as the span's ends
    /// let).
    [[nodiscard]] DayAxis zoomedAt(qreal x, qreal factor) const;
    [[nodiscard]] DayAxis withDayWidth(qreal x, qreal dayWidth) const;
    /// Later days come into view by so many px (earlier ones when negative).
    [[nodiscard]] DayAxis scrolledBy(qreal px) const;
    /// Scrolled as little as brings the day wholly into view, with `margin` px beside it.
    [[nodiscard]] DayAxis showing(Day day, qreal margin = 0) const;
    /// Scrolled so that the day stands in the middle.
    [[nodiscard]] DayAxis centredOn(Day day) const;
    /// Zoomed and scrolled so that these days fill the width, as far as the span and zoom let.
    [[nodiscard]] DayAxis fittedTo(DayWindow days) const;
    /// The same days in another place: keeps the zoom, or the whole span where that was shown.
    [[nodiscard]] DayAxis placed(DayWindow span, qreal left, qreal width) const;

    friend bool operator==(const DayAxis&, const DayAxis&) = default;

private:
    [[nodiscard]] qreal narrowestDay() const;
    [[nodiscard]] DayAxis clamped() const;

    DayWindow span_{Day{}, Day{}};
    qreal left_ = 0;
    qreal width_ = 1;
    qreal dayWidth_ = 1;
    qreal scroll_ = 0;
};

}  // namespace tenthday
