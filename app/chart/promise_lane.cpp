#include "chart/promise_lane.h"

#include "calendar/iso_week.h"
#include "screen_text/chart_text.h"
#include "screen_text/order_text.h"

namespace tenthday {
namespace {

constexpr qreal kAbove = 4;
constexpr qreal kBelow = 6;
constexpr qreal kAir = 2;  ///< between weeks
constexpr qreal kPadX = 3;

qreal rowHeight(const TextRuler& ruler) {
    return std::ceil(
        std::max(ruler.line(Type::Label) + ruler.line(Type::Small), ruler.line(Type::Number) + 6));
}

/// The part in sight of a week's box; null where hardly any is.
QRectF boxOf(const LaneInput& input, const DayWindow& days, const QRectF& row) {
    const qreal left = std::max(input.axis.xOf(days.first) + kAir, input.axis.left());
    const qreal right = std::min(input.axis.xOf(days.last + Days{1}) - kAir, input.axis.right());
    if (right - left < 4) return {};
    return {left, row.top() + 2, right - left, row.height() - 4};
}

/// A box as wide as the week, its number in the middle: of none a plain 0. A week that is over has
/// a word and no box.
void layWeek(const LaneInput& input, const PromiseWeek& week, const QRectF& row, Sheet& sheet) {
    const auto days = daysOf(week.week);
    const auto box = boxOf(input, days, row);
    if (box.isNull()) return;
    const int target = sheet.target({.hit = Hit::PromiseWeek, .day = days.first}, box);
    const bool some = week.canPromise > 0;
    const bool isOver = days.last < input.outlook.snapshot.today();
    if (some) sheet.fill(Layer::Body, Role::Ready, box, target, 3);
    if (!isOver)
        sheet.frame(Layer::Body, some ? Role::ReadyEdge : Role::GridStrong, box,
                    sheet.snap().hair(), 3);
    const auto text = isOver ? order_text::weekIsOver() : chart_text::number(week.canPromise);
    const auto type = isOver ? Type::Small : Type::Number;
    if (sheet.ruler().width(text, type) > box.width() - 2 * kPadX) return;
    const QPointF at(box.center().x(), sheet.baselineAt(type, box.center().y()));
    const auto words = sheet.textRect(type, text, at, Align::Middle);
    if (input.isCrossed(words))
        sheet.fill(Layer::Words, some ? Role::Ready : Role::Ground, words.adjusted(-3, -3, 3, 3),
                   target);
    sheet.text(Layer::Words, some ? Role::ReadyInk : Role::InkSoft, type, text, at, Align::Middle,
               target);
}

/// Every week can be asked; along them all stands one word for why there are no numbers.
void layNotWorkedOut(const LaneInput& input, const QRectF& row, Sheet& sheet) {
    const Day first = std::max(input.visible.first, input.outlook.snapshot.today());
    for (Day day = input.visible.first; day <= input.visible.last; day += Days{1}) {
        const auto days = daysOf(isoWeekOf(day));
        const auto box =
            day == days.first || day == input.visible.first ? boxOf(input, days, row) : QRectF();
        if (!box.isNull()) sheet.target({.hit = Hit::PromiseWeek, .day = days.first}, box);
    }
    const QRectF box = boxOf(input, {first, input.visible.last}, row);
    const auto text = order_text::noPromiseYet(input.outlook);
    if (box.width() < sheet.ruler().width(text, Type::Small) + 2 * kPadX) return;
    sheet.frame(Layer::Body, Role::GridStrong, box, sheet.snap().hair(), 3);
    sheet.text(Layer::Words, Role::InkSoft, Type::Small, text,
               {box.left() + 3 * kPadX, sheet.baselineAt(Type::Small, box.center().y())},
               Align::Left);
}

}  // namespace

LaneHeight PromiseLane::height(const LaneInput& /*input*/, const TextRuler& ruler) const {
    const qreal height = kAbove + rowHeight(ruler) + kBelow;
    return {height, height, height, 0};
}

qreal PromiseLane::nameMiddle(const QRectF& area, const TextRuler& ruler) const {
    return area.top() + kAbove + ruler.line(Type::Label) / 2;
}

void PromiseLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& ruler = sheet.ruler();
    const QRectF row = area.adjusted(0, kAbove, 0, -kBelow);
    const qreal room = input.titleRight - input.titleLeft;
    qreal y = row.top();
    const auto line = [&](const QString& text, Type type, Role role) {
        const qreal height = ruler.line(type);
        sheet.text(Layer::Names, role, type, ruler.elided(text, type, room),
                   {input.titleLeft, sheet.baselineAt(type, y + height / 2)}, Align::Left);
        y += height;
    };
    line(order_text::promiseLane(), Type::Label, Role::Ink);
    line(order_text::promiseHow(), Type::Small, Role::InkSoft);
    if (!input.options.orders) return layNotWorkedOut(input, row, sheet);
    for (const auto& week : input.options.orders->weeks) layWeek(input, week, row, sheet);
}

}  // namespace tenthday
