#include "chart/promise_lane.h"

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

/// A box as wide as the week, its number in the middle; of a week that is over the box alone.
void layWeek(const LaneInput& input, const PromiseWeek& week, const QRectF& row, Sheet& sheet) {
    const auto days = daysOf(week.week);
    const qreal left = std::max(input.axis.xOf(days.first) + kAir, input.axis.left());
    const qreal right = std::min(input.axis.xOf(days.last + Days{1}) - kAir, input.axis.right());
    if (right - left < 4) return;
    const QRectF box(left, row.top() + 2, right - left, row.height() - 4);
    const int target = sheet.target({.hit = Hit::PromiseWeek, .day = days.first}, box);
    const bool some = week.canPromise > 0;
    if (some) sheet.fill(Layer::Body, Role::Ready, box, target, 3);
    sheet.frame(Layer::Body, some ? Role::ReadyEdge : Role::Grid, box, sheet.snap().hair(), 3);
    if (days.last < input.outlook.snapshot.today()) return;
    const auto text = order_text::canPromise(week.canPromise);
    const auto type = some ? Type::Number : Type::Small;
    if (sheet.ruler().width(text, type) > box.width() - 2 * kPadX) return;
    const QPointF at(box.center().x(), sheet.baselineAt(type, box.center().y()));
    sheet.text(Layer::Words, some ? Role::ReadyInk : Role::InkSoft, type, text, at, Align::Middle,
               target);
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
    if (!input.options.orders) return;
    for (const auto& week : input.options.orders->weeks) layWeek(input, week, row, sheet);
}

}  // namespace tenthday
