#include "chart/chart_head.h"

#include "calendar/iso_week.h"
#include "records/order_days.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

constexpr qreal kFlagPad = 7;

bool hasDayRow(const DayAxis& axis, const TextRuler& ruler) {
    return axis.dayWidth() >= ruler.width(QStringLiteral("28"), Type::Small) + 5;
}

struct HeadRows {
    qreal months;  ///< baselines
    qreal weeks;
    qreal days;
    qreal hours;
    QRectF flags;
};

HeadRows rowsOf(const LaneInput& input, const QRectF& area, const Sheet& sheet) {
    const auto& ruler = sheet.ruler();
    HeadRows rows{};
    qreal y = area.top() + 4;
    rows.months = sheet.baselineAt(Type::Title, y + ruler.line(Type::Title) / 2);
    y += ruler.line(Type::Title) + 2;
    rows.weeks = sheet.baselineAt(Type::Small, y + ruler.line(Type::Small) / 2);
    y += ruler.line(Type::Small);
    if (hasDayRow(input.axis, ruler)) {
        rows.days = sheet.baselineAt(Type::Small, y + ruler.line(Type::Small) / 2);
        y += ruler.line(Type::Small);
    }
    if (hasHours(input.axis)) {
        rows.hours = sheet.baselineAt(Type::Small, y + ruler.line(Type::Small) / 2);
        y += ruler.line(Type::Small);
    }
    rows.flags = QRectF(area.left(), y + 1, area.width(), ruler.line(Type::Strong) + 3);
    return rows;
}

template <class Do>
void eachDay(const DayWindow& days, Do&& act) {
    for (Day day = days.first; day <= days.last; day += Days{1}) act(day);
}

void layMonths(const LaneInput& input, const QRectF& area, const HeadRows& rows, Sheet& sheet) {
    const auto& snap = sheet.snap();
    Day start = input.visible.first;
    while (start <= input.visible.last) {
        const date::year_month_day date{start};
        const Day next{date::local_days{(date.year() / date.month() / 1) + date::months{1}}};
        const qreal left = std::max(input.axis.xOf(start), input.axis.left());
        const qreal right = std::min(input.axis.xOf(next), input.axis.right());
        if (date.day() == date::day{1})
            sheet.fill(
                Layer::Heads, Role::GridStrong,
                {snap(left), area.top() + 6, snap.hair(), sheet.ruler().line(Type::Title) + 2});
        const auto fits = [&](const QString& text) {
            return sheet.ruler().width(text, Type::Title) + 8 <= right - left;
        };
        // A new year is named where it begins; that of the first day stands in the corner.
        const auto name = monthName(start);
        const bool isNewYear = date.month() == date::January && start != input.visible.first;
        const auto withYear = isNewYear ? monthAndYear(start) : name;
        const auto text = fits(withYear) ? withYear : fits(name) ? name : name.left(3);
        if (fits(text))
            sheet.text(Layer::Heads, Role::Ink, Type::Title, text, {left + 5, rows.months},
                       Align::Left);
        start = next;
    }
}

/// So many weeks from one that is named to the next: 1, 2, 4 or 8, as few as have room for the
/// widest name.
int weekStep(const DayAxis& axis, qreal widest) {
    constexpr int kMost = 8;
    int step = 1;
    while (step < kMost && widest + 4 > step * 7 * axis.dayWidth()) step *= 2;
    return step;
}

/// Weeks counted on from the season's first year: 53, 54 after its end, so that steps stay equal.
int weekCount(const LaneInput& input, Day monday) {
    const Day first = input.outlook.season.first;
    const Day firstMonday = first - Days{isoWeekday(first) - 1};
    return isoWeekOf(first).week + static_cast<int>((monday - firstMonday).count() / 7);
}

void layWeek(const LaneInput& input, Day monday, const HeadRows& rows, Sheet& sheet) {
    const auto& axis = input.axis;
    const qreal left = axis.xOf(monday);
    const qreal room = 7 * axis.dayWidth();
    const auto week = weekLabel(monday);
    const auto monthDay = dayNumber(monday);
    const auto& ruler = sheet.ruler();
    const qreal weekWidth = ruler.width(week, Type::Small);
    // All weeks show their Monday, or none: as the widest have room for it.
    const qreal widest =
        ruler.width(weekLabel(Day{date::local_days{date::year{2027} / 7 / 12}}), Type::Small);
    const qreal whole = widest + 5 + ruler.width(QStringLiteral("28"), Type::Small) + 6;
    if (left + 4 < axis.left() || left + 4 + weekWidth > axis.right()) return;
    if (weekCount(input, monday) % weekStep(axis, widest) == 0)
        sheet.text(Layer::Heads, Role::InkSoft, Type::Small, week, {left + 4, rows.weeks},
                   Align::Left);
    if (whole <= room && !hasDayRow(axis, ruler) && left + whole <= axis.right())
        sheet.text(Layer::Heads, Role::Ink, Type::Small, monthDay,
                   {left + 9 + weekWidth, rows.weeks}, Align::Left);
}

void layDayNames(const LaneInput& input, const HeadRows& rows, Sheet& sheet) {
    const auto& axis = input.axis;
    const auto& ruler = sheet.ruler();
    const bool named = axis.dayWidth() >= ruler.width(QStringLiteral("Wed 28"), Type::Small) + 8;
    eachDay(input.visible, [&](Day day) {
        const auto text = named ? weekdayName(day) + QChar(u' ') + dayNumber(day) : dayNumber(day);
        // In the middle of what is seen of a wide day.
        const qreal left = std::max(axis.xOf(day), axis.left());
        const qreal right = std::min(axis.xOf(day + Days{1}), axis.right());
        const auto at =
            QPointF(hasHours(axis) ? (left + right) / 2 : axis.middleOf(day), rows.days);
        const auto rect = sheet.textRect(Type::Small, text, at, Align::Middle);
        if (rect.left() < axis.left() || rect.right() > axis.right()) return;
        const bool free = isoWeekday(day) >= 6 || isDayOff(input.outlook.snapshot, day);
        sheet.text(Layer::Heads, free ? Role::InkSoft : Role::Ink, Type::Small, text, at,
                   Align::Middle);
    });
}

/// Hours between two that are named: as few as have room.
int hourStep(const DayAxis& axis, const TextRuler& ruler) {
    constexpr qreal kAir = 14;
    const qreal wide = ruler.width(hourOfDay(22), Type::Small) + kAir;
    for (const int step : {1, 2, 3, 6})
        if (axis.dayWidth() * step / 24 >= wide) return step;
    return 12;
}

template <class Do>
void eachHour(const LaneInput& input, int step, Do&& act) {
    eachDay(input.visible, [&](Day day) {
        for (int hour = 0; hour < 24; hour += step)
            act(hour, input.axis.xOf(Moment{day} + std::chrono::hours{hour}));
    });
}

void layHourNames(const LaneInput& input, const HeadRows& rows, Sheet& sheet) {
    const auto& axis = input.axis;
    eachHour(input, hourStep(axis, sheet.ruler()), [&](int hour, qreal x) {
        const auto text = hourOfDay(hour);
        const QPointF at(x, rows.hours);
        const auto rect = sheet.textRect(Type::Small, text, at, Align::Middle);
        if (rect.left() < axis.left() || rect.right() > axis.right()) return;
        sheet.text(Layer::Heads, Role::InkSoft, Type::Small, text, at, Align::Middle);
    });
}

struct Flag {
    QString text;
    qreal x;  ///< where it points
    bool isToday;
};

QRectF flagRect(const Flag& flag, const LaneInput& input, const QRectF& row, const Sheet& sheet) {
    const qreal width = sheet.ruler().width(flag.text, Type::Strong) + 2 * kFlagPad;
    const qreal left = std::clamp(flag.x - width / 2, input.axis.left(),
                                  std::max(input.axis.left(), input.axis.right() - width));
    return {sheet.snap()(left), sheet.snap()(row.top()), sheet.snap()(width),
            sheet.snap()(row.height())};
}

void layFlag(const Flag& flag, const QRectF& rect, Sheet& sheet) {
    QPainterPath shape;
    shape.addRoundedRect(rect, 3, 3);
    QPainterPath tip;
    const qreal x = std::clamp(flag.x, rect.left() + 5, rect.right() - 5);
    tip.addPolygon(QPolygonF({{x - 5, rect.bottom() - 1},
                              {x + 5, rect.bottom() - 1},
                              {x, rect.bottom() + 4},
                              {x - 5, rect.bottom() - 1}}));
    shape = shape.united(tip);
    sheet.path(Layer::Heads, flag.isToday ? Role::Today : Role::ChosenGround, shape);
    if (!flag.isToday) sheet.stroke(Layer::Heads, Role::Chosen, shape, 1.2);
    sheet.text(Layer::Heads, flag.isToday ? Role::TodayInk : Role::Ink, Type::Strong, flag.text,
               {rect.center().x(), sheet.baselineAt(Type::Strong, rect.center().y())},
               Align::Middle);
}

void layFlags(const LaneInput& input, const QRectF& row, Sheet& sheet) {
    const auto& axis = input.axis;
    const Day today = input.outlook.snapshot.today();
    const auto chosen = input.options.chosenDay;
    const bool showsToday = input.visible.contains(today);
    std::optional<QRectF> taken;
    if (chosen && input.visible.contains(*chosen)) {
        const bool same = showsToday && *chosen == today;
        const Flag flag{same ? chart_text::todayOn(weekdayAndDay(today)) : weekdayAndDay(*chosen),
                        axis.middleOf(*chosen), same};
        taken = flagRect(flag, input, row, sheet);
        layFlag(flag, *taken, sheet);
        if (same) return;
    }
    if (!showsToday) return;
    // Days that are not written out are read off elsewhere, and today's is asked for most.
    const auto words = hasDayRow(axis, sheet.ruler()) ? chart_text::today()
                                                      : chart_text::todayOn(weekdayAndDay(today));
    const Flag flag{words, axis.middleOf(today), true};
    auto rect = flagRect(flag, input, row, sheet);
    if (taken && rect.intersects(taken->adjusted(-3, 0, 3, 0))) {
        const bool left = today < *chosen;
        rect.moveLeft(left ? taken->left() - rect.width() - 3 : taken->right() + 3);
    }
    if (rect.left() >= axis.left() && rect.right() <= axis.right()) layFlag(flag, rect, sheet);
}

}  // namespace

bool hasHours(const DayAxis& axis) {
    constexpr qreal kWide = 190;
    return axis.dayWidth() >= kWide;
}

qreal headHeight(const DayAxis& axis, const TextRuler& ruler) {
    const qreal days = hasDayRow(axis, ruler) ? ruler.line(Type::Small) : 0;
    const qreal hours = hasHours(axis) ? ruler.line(Type::Small) : 0;
    return std::ceil(4 + ruler.line(Type::Title) + 2 + ruler.line(Type::Small) + days + hours +
                     ruler.line(Type::Strong) + 3 + 7);
}

void layHead(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    // Over the corner, too: names of lanes that are scrolled go behind it.
    sheet.fill(Layer::Top, Role::Ground,
               {0, area.top(), input.options.size.width(), area.height()});
    const auto rows = rowsOf(input, area, sheet);
    sheet.text(Layer::Heads, Role::Ink, Type::Title, yearNumber(input.visible.first),
               {input.titleLeft, rows.months}, Align::Left);
    layMonths(input, area, rows, sheet);
    eachDay(input.visible, [&](Day day) {
        if (isoWeekday(day) == 1) layWeek(input, day, rows, sheet);
        sheet.target({.hit = Hit::Head, .day = day},
                     {input.axis.xOf(day), area.top(), input.axis.dayWidth(), area.height()});
    });
    if (hasDayRow(input.axis, sheet.ruler())) layDayNames(input, rows, sheet);
    if (hasHours(input.axis)) layHourNames(input, rows, sheet);
    layFlags(input, rows.flags, sheet);
}

void layGround(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& axis = input.axis;
    const auto& snap = sheet.snap();
    eachDay(input.visible, [&](Day day) {
        const auto column =
            snap.rect(axis.xOf(day), area.top(), axis.xOf(day + Days{1}), area.bottom());
        const int target = sheet.target({.hit = Hit::Ground, .day = day}, column);
        if (isDayOff(input.outlook.snapshot, day))
            sheet.fill(Layer::Ground, Role::DayOffGround, column, target);
        else if (isoWeekday(day) >= 6)
            sheet.fill(Layer::Ground, Role::WeekendGround, column, target);
        const bool month = date::year_month_day{day}.day() == date::day{1};
        if (month || isoWeekday(day) == 1)
            sheet.fill(Layer::Ground, month ? Role::GridStrong : Role::Grid,
                       {column.left(), column.top(), snap.hair(), column.height()});
    });
}

namespace {

/// While a batch is dragged: a bar at the top of each day on which it clashes with nothing, and
/// over it, where it has room, a tick.
void layClearDays(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    constexpr qreal kMark = 8;
    constexpr qreal kBar = 3;
    const bool ticks = input.axis.dayWidth() >= kMark + 4;
    if (!input.options.offersDays) return;
    for (const Day day : input.options.clearDays) {
        if (!input.visible.contains(day)) continue;
        if (ticks)
            sheet.glyph(Layer::Heads, Role::Good, Glyph::LookDone,
                        {input.axis.middleOf(day), area.top() - kMark}, kMark);
        sheet.fill(Layer::Heads, Role::Good,
                   sheet.snap().rect(input.axis.xOf(day) + 1, area.top() - kBar,
                                     input.axis.xOf(day + Days{1}) - 1, area.top()));
    }
}

/// Today begins at its line: its column is raised from the ground, and ends where the next day
/// begins. A day off, or of the weekend, stays what it is.
void layTodayGround(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    constexpr qreal kLeast = 4;  ///< px of a day, to end visibly
    const auto& axis = input.axis;
    const Day today = input.outlook.snapshot.today();
    const auto column =
        sheet.snap().rect(axis.xOf(today), area.top(), axis.xOf(today + Days{1}), area.bottom());
    if (!isDayOff(input.outlook.snapshot, today) && isoWeekday(today) < 6)
        sheet.fill(Layer::Ground, Role::ChosenGround, column);
    if (column.width() < kLeast) return;
    sheet.fill(
        Layer::Ground, Role::GridStrong,
        {column.right() - sheet.snap().hair(), area.top(), sheet.snap().hair(), area.height()});
}

}  // namespace

void layDayLines(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& axis = input.axis;
    const auto& snap = sheet.snap();
    const Day today = input.outlook.snapshot.today();
    if (input.visible.contains(today)) layTodayGround(input, area, sheet);
    layClearDays(input, area, sheet);
    if (const auto chosen = input.options.chosenDay; chosen && input.visible.contains(*chosen)) {
        const auto column =
            snap.rect(axis.xOf(*chosen), area.top(), axis.xOf(*chosen + Days{1}), area.bottom());
        sheet.fill(Layer::Ground, Role::ChosenGround, column);
        for (const qreal x : {column.left(), column.right() - snap.hair()})
            sheet.fill(Layer::Marks, Role::Chosen, {x, area.top(), snap.hair(), area.height()});
    }
    if (hasHours(axis))
        eachHour(input, hourStep(axis, sheet.ruler()), [&](int hour, qreal x) {
            if (hour != 0 && x > axis.left() && x < axis.right())
                sheet.fill(Layer::Ground, Role::Grid,
                           {snap(x), area.top(), snap.hair(), area.height()});
        });
    if (input.visible.contains(today)) {
        const qreal x = snap(axis.xOf(today));
        sheet.fill(Layer::Marks, Role::Today,
                   {x - snap.hair(), area.top(), 2 * snap.hair(), area.height()});
    }
}

}  // namespace tenthday
