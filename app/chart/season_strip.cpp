#include "chart/season_strip.h"

#include "screen_text/chart_hand_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

constexpr qreal kPad = 3;
constexpr int kRows = 3;  ///< batches that overlap stand in so many rows, in turn

/// The season along the whole width.
DayAxis wholeAxis(const DayAxis& axis) { return {axis.span(), axis.left(), axis.width()}; }

/// @param today  x of today's line, which no name may meet
void layMonths(const DayAxis& whole, const QRectF& area, qreal today, Sheet& sheet) {
    Day start = whole.span().first;
    while (start <= whole.span().last) {
        const date::year_month_day date{start};
        const Day next{date::local_days{(date.year() / date.month() / 1) + date::months{1}}};
        const qreal left = whole.xOf(start);
        const qreal right = std::min(whole.xOf(next), whole.right());
        if (date.day() == date::day{1})
            sheet.fill(
                Layer::Heads, Role::GridStrong,
                sheet.snap().rect(left, area.top(), left + sheet.snap().hair(), area.bottom()));
        const auto name = monthName(start);
        const qreal room = right - left - 2 * kPad;
        const auto fits = [&](const QString& text) {
            return sheet.ruler().width(text, Type::Small) <= room;
        };
        const auto text = fits(name) ? name : name.left(3);
        const qreal end = left + kPad + 1 + sheet.ruler().width(text, Type::Small);
        const bool meets = left - 2 < today && today < end + 2;
        if (fits(text) && !meets)
            sheet.text(Layer::Heads, Role::InkSoft, Type::Small, text,
                       {left + kPad + 1,
                        sheet.snap()(area.top() + kPad + sheet.ruler().capHeight(Type::Small))},
                       Align::Left);
        start = next;
    }
}

/// Cells in their colour, then nucs in that of virgins due to fly.
void layBatches(const LaneInput& input, const DayAxis& whole, const QRectF& rows, Sheet& sheet) {
    const qreal row = rows.height() / kRows;
    int place = 0;
    for (const auto& batch : input.outlook.batches) {
        const auto& line = batch->timeline;
        const qreal top = rows.top() + (place++ % kRows) * row;
        const qreal graft = std::max(whole.left(), whole.xOf(line.graft));
        const qreal out = std::min(whole.right(), whole.xOf(line.hold.leaves));
        const qreal caught = std::min(whole.right(), whole.xOf(line.hold.catchDay + Days{1}));
        const auto bar = [&](Role role, qreal left, qreal right) {
            if (right > left)
                sheet.fill(Layer::Heads, role, sheet.snap().rect(left, top, right, top + row - 1));
        };
        bar(Role::SealedCells, graft, out);
        bar(input.isMarked(batch->batch->id) ? Role::Selection : Role::DueToFly,
            std::max(graft, out), caught);
    }
}

void layDues(const LaneInput& input, const DayAxis& whole, const QRectF& area, Sheet& sheet) {
    if (!input.options.orders) return;
    for (const auto& order : input.options.orders->orders) {
        const Day due = order.order->due;
        if (!whole.span().contains(due)) continue;
        const qreal x = whole.middleOf(due);
        const bool isShort = order.state == OrderState::Short;
        sheet.fill(Layer::Heads, isShort ? Role::DangerGround : Role::Good,
                   sheet.snap().rect(x - 1, area.top(), x + 1, area.bottom()));
    }
}

}  // namespace

qreal stripHeight(const TextRuler& ruler) { return std::ceil(ruler.line(Type::Small)) + 14; }

Day stripDayAt(const DayAxis& axis, qreal x) {
    return std::clamp(wholeAxis(axis).dayAt(x), axis.span().first, axis.span().last);
}

void layStrip(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& snap = sheet.snap();
    const auto whole = wholeAxis(input.axis);
    sheet.target({.hit = Hit::Strip}, area);
    sheet.fill(Layer::Heads, Role::LaneGround, area);
    const Day today = input.outlook.snapshot.today();
    layMonths(whole, area, whole.xOf(today), sheet);
    const QRectF rows = area.adjusted(0, area.height() - 13, 0, -1);
    layBatches(input, whole, rows, sheet);
    layDues(input, whole, rows, sheet);
    if (whole.span().contains(today))
        sheet.fill(
            Layer::Heads, Role::Today,
            {snap(whole.xOf(today)) - snap.hair(), area.top(), 2 * snap.hair(), area.height()});
    sheet.frame(Layer::Heads, Role::GridStrong, area, snap.hair());
    const auto seen = snap.rect(whole.xOf(input.visible.first), area.top(),
                                whole.xOf(input.visible.last + Days{1}), area.bottom());
    sheet.frame(Layer::Heads, Role::Selection, seen.adjusted(0, -1, 0, 1), 1.6, 2);
    sheet.text(Layer::Heads, Role::InkSoft, Type::Small, chart_hand_text::wholeSeason(),
               {input.titleRight, sheet.baselineAt(Type::Small, area.center().y())}, Align::Right);
}

}  // namespace tenthday
