#include "chart/flying_lane.h"

#include "screen_text/flying_text.h"

namespace tenthday {
namespace {

constexpr qreal kPad = 3;
constexpr qreal kNarrowDay = 5;  ///< px; a narrower day has no room for an outline
constexpr qreal kBarShare = 0.72;
constexpr qreal kMark = 7;
constexpr qreal kToText = 5;

qreal barsHeight(const TextRuler& ruler) { return 1.7 * ruler.line(Type::Small); }
qreal dronesHeight(const TextRuler& ruler) { return ruler.line(Type::Small) + 1; }

std::optional<Day> causeOf(const Outlook& outlook, Limit which) {
    for (const auto& limit : outlook.limits.all)
        if (limit.limit == which) return limit.cause;
    return std::nullopt;
}

/// A day's bar; whole columns where days are too narrow for air between them.
QRectF barOf(const LaneInput& input, Day day, const QRectF& bars, qreal share, const Snap& snap) {
    const qreal width = input.axis.dayWidth();
    const qreal air = width < kNarrowDay ? 0 : width * (1 - kBarShare) / 2;
    const qreal left = std::max(input.axis.xOf(day) + air, input.axis.left());
    const qreal right = std::min(input.axis.xOf(day + Days{1}) - air, input.axis.right());
    return snap.rect(left, bars.bottom() - share * bars.height(), std::max(left, right),
                     bars.bottom());
}

/// An outline as high as the chance; of a narrow day only its upper edge.
void layChance(const LaneInput& input, Day day, const QRectF& bars, double chance, Sheet& sheet) {
    const qreal hair = sheet.snap().hair();
    auto bar = barOf(input, day, bars, chance, sheet.snap());
    if (bar.width() <= 0) return;
    bar.setTop(std::min(bar.top(), bar.bottom() - hair));
    const auto edge = [&](const QRectF& rect) { sheet.fill(Layer::Body, Role::FlyingDay, rect); };
    edge({bar.left(), bar.top(), bar.width(), hair});
    if (input.axis.dayWidth() < kNarrowDay || bar.height() <= 2 * hair) return;
    edge({bar.left(), bar.bottom() - hair, bar.width(), hair});
    const qreal inner = bar.height() - 2 * hair;
    edge({bar.left(), bar.top() + hair, hair, inner});
    edge({bar.right() - hair, bar.top() + hair, hair, inner});
}

void layDay(const LaneInput& input, Day day, const QRectF& bars, Sheet& sheet) {
    const auto& mating = *input.outlook.mating;
    const auto known = mating.knownToFly(day);
    if (known == true) {
        sheet.fill(Layer::Body, Role::FlyingDay, barOf(input, day, bars, 1, sheet.snap()));
    } else if (known == false) {
        auto tick = barOf(input, day, bars, 0, sheet.snap());
        tick.setTop(tick.bottom() - 2 * sheet.snap().hair());
        sheet.fill(Layer::Body, Role::InkSoft, tick);
    } else if (const auto chance = mating.chanceToFly(day)) {
        layChance(input, day, bars, *chance, sheet);
    }
}

/// What is to be seen of the span of mature drones.
struct DroneSpan {
    std::optional<Day> from;
    std::optional<Day> until;
    qreal left;
    qreal right;
    qreal middle;

    [[nodiscard]] bool startsIn(const LaneInput& input) const {
        return from && input.axis.xOf(*from) >= input.axis.left() - 0.5;
    }
    [[nodiscard]] bool endsIn(const LaneInput& input) const {
        return until && input.axis.xOf(*until) <= input.axis.right() + 0.5;
    }
};

DroneSpan droneSpan(const LaneInput& input, qreal middle) {
    const auto& axis = input.axis;
    DroneSpan span{causeOf(input.outlook, Limit::DronesReady),
                   causeOf(input.outlook, Limit::DronesOut), axis.left(), axis.right(), middle};
    if (span.from) span.left = std::max(span.left, axis.xOf(*span.from));
    if (span.until) span.right = std::min(span.right, axis.xOf(*span.until));
    return span;
}

/// The word at the start of the span, or at its end where only that is known; what it takes of the
/// line, null where it has no room.
QRectF layDroneWord(const LaneInput& input, const DroneSpan& span, Sheet& sheet) {
    const bool atEnd = !span.from && span.until;
    const auto text = atEnd ? flying_text::dronesUntil(*span.until) : flying_text::dronesMature();
    const qreal x = atEnd ? span.right - (span.endsIn(input) ? kToText : 2)
                          : span.left + (span.startsIn(input) ? kMark + kToText : 2);
    const QPointF at(x, sheet.baselineAt(Type::Small, span.middle));
    const auto align = atEnd ? Align::Right : Align::Left;
    const auto rect = sheet.textRect(Type::Small, text, at, align);
    if (rect.left() < span.left || rect.right() + kToText > span.right + (atEnd ? kToText : 0))
        return {};
    if (input.isCrossed(rect))
        sheet.fill(Layer::Words, Role::Ground, rect.adjusted(-2, -2, 2, 2), -1, 2);
    sheet.text(Layer::Words, Role::InkSoft, Type::Small, text, at, align);
    return rect.adjusted(-kToText, 0, kToText, 0);
}

/// A line from the first mature drones to the day they are thrown out: a ring at a start that is
/// known, a stop at such an end; dotted back from an end without a start.
void layDrones(const LaneInput& input, const QRectF& row, Sheet& sheet) {
    const auto span = droneSpan(input, sheet.snap()(row.center().y()));
    if (span.right <= span.left) return;
    const qreal pen = 2 * sheet.snap().hair();
    if (span.startsIn(input)) {
        QPainterPath ring;
        ring.addEllipse(QRectF(span.left + 1, span.middle - kMark / 2 + 1, kMark - 2, kMark - 2));
        sheet.stroke(Layer::Body, Role::Ink, ring, 1.5);
    }
    if (span.endsIn(input))
        sheet.fill(Layer::Body, Role::Ink, {span.right - pen, span.middle - 4, pen, 8});
    const auto word = layDroneWord(input, span, sheet);
    const qreal top = span.middle - pen / 2;
    if (!span.from) {
        const qreal right = word.isNull() ? span.right - pen : word.left();
        return sheet.dotted(Layer::Body, Role::Ink, {span.left, top, right - span.left, pen}, 1.5);
    }
    const qreal left =
        !word.isNull() ? word.right() : span.left + (span.startsIn(input) ? kMark : 0);
    sheet.fill(Layer::Body, Role::Ink, {left, top, span.right - left, pen});
}

/// The longest run of days in sight of which nothing is known.
DayWindow longestUnknown(const LaneInput& input) {
    DayWindow longest{input.visible.first, input.visible.first - Days{1}};
    DayWindow run = longest;
    for (Day day = input.visible.first; day <= input.visible.last; day += Days{1}) {
        if (input.outlook.mating->chanceToFly(day))
            run = {day + Days{1}, day};
        else
            run.last = day;
        if (run.size() > longest.size()) longest = run;
    }
    return longest;
}

/// Where only days of this year are known: that nothing else is reckoned with, where it has room.
void layThisYearOnly(const LaneInput& input, const QRectF& bars, Sheet& sheet) {
    const auto days = longestUnknown(input);
    const qreal left = std::max(input.axis.xOf(days.first), input.axis.left());
    const qreal right = std::min(input.axis.xOf(days.last + Days{1}), input.axis.right());
    const auto text = flying_text::thisYearOnly();
    const QPointF at((left + right) / 2, sheet.baselineAt(Type::Small, bars.center().y()));
    const auto rect = sheet.textRect(Type::Small, text, at, Align::Middle);
    if (rect.left() < left + kToText || rect.right() > right - kToText) return;
    if (input.isCrossed(rect))
        sheet.fill(Layer::Words, Role::Ground, rect.adjusted(-2, -2, 2, 2), -1, 2);
    sheet.text(Layer::Words, Role::InkSoft, Type::Small, text, at, Align::Middle);
}

}  // namespace

bool knowsFlyingDays(const Outlook& outlook) {
    if (!outlook.mating) return false;
    for (Day day = outlook.season.first; day <= outlook.season.last; day += Days{1})
        if (outlook.mating->chanceToFly(day)) return true;
    return false;
}

bool knowsDrones(const Outlook& outlook) {
    return causeOf(outlook, Limit::DronesReady) || causeOf(outlook, Limit::DronesOut);
}

LaneHeight FlyingLane::height(const LaneInput& input, const TextRuler& ruler) const {
    const qreal bars = knowsFlyingDays(input.outlook) ? barsHeight(ruler) : 0;
    const qreal drones = knowsDrones(input.outlook) ? dronesHeight(ruler) : 0;
    const qreal height = std::ceil(bars + drones + 2 * kPad);
    return {height, height, height, 0};
}

void FlyingLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& axis = input.axis;
    const bool weather = knowsFlyingDays(input.outlook);
    for (Day day = input.visible.first; day <= input.visible.last; day += Days{1})
        sheet.target({.hit = Hit::FlyingDay, .day = day},
                     {axis.xOf(day), area.top(), axis.dayWidth(), area.height()});
    const qreal drones = knowsDrones(input.outlook) ? dronesHeight(sheet.ruler()) : 0;
    if (drones > 0) layDrones(input, {area.left(), area.top() + kPad, area.width(), drones}, sheet);
    const auto name = weather ? flying_text::flyingDays() : flying_text::drones();
    sheet.text(Layer::Names, Role::Ink, Type::Label, name,
               {input.titleLeft, sheet.baselineAt(Type::Label, area.center().y())}, Align::Left);
    if (!weather) return;
    const auto bars = sheet.snap().rect(area.left(), area.top() + kPad + drones, area.right(),
                                        area.bottom() - kPad);
    sheet.fill(Layer::Under, Role::Grid,
               {axis.left(), bars.bottom(), axis.width(), sheet.snap().hair()});
    for (Day day = input.visible.first; day <= input.visible.last; day += Days{1})
        layDay(input, day, bars, sheet);
    if (flying_text::isThisYearOnly(input.outlook)) layThisYearOnly(input, bars, sheet);
}

}  // namespace tenthday
