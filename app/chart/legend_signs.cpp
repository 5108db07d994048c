#include "chart/legend_signs.h"

#include <QTransform>

#include "chart/bands.h"
#include "chart/leaves_mark.h"
#include "chart/order_cloth.h"
#include "chart/outline.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr Layer kLayer = Layer::Heads;

/// A bar on its line, and what hangs from its end.
void layCellsOut(const QRectF& box, Sheet& sheet) {
    const qreal base = box.top() + 5;
    sheet.fill(kLayer, Role::SealedCells, {box.left(), box.top(), box.width(), 5});
    sheet.fill(kLayer, Role::SealedCells, {box.right() - 4, base, 4, box.bottom() - base});
}

void layTick(Role role, const QRectF& box, Sheet& sheet) {
    const qreal hair = sheet.snap().hair();
    sheet.fill(kLayer, role, {sheet.snap()(box.center().x()) - hair, box.top() + 2, 2 * hair, 6});
}

void layBoxedNumber(const QRectF& box, Sheet& sheet) {
    const auto plate = box.adjusted(1, -1, -1, 1);
    sheet.fill(kLayer, Role::Ready, plate, -1, 2);
    sheet.frame(kLayer, Role::ReadyEdge, plate, sheet.snap().hair(), 2);
    sheet.text(kLayer, Role::ReadyInk, Type::Small, chart_text::number(5),
               {plate.center().x(), sheet.baselineAt(Type::Small, plate.center().y())},
               Align::Middle);
}

void layInHand(const QRectF& box, Sheet& sheet) {
    sheet.fill(kLayer, Role::Laying, box.adjusted(0, 1, 0, -1));
    QPainterPath line(QPointF(box.left(), box.center().y()));
    line.lineTo(QPointF(box.right(), box.center().y()));
    sheet.stroke(kLayer, Role::JudgedGood, line, 2);
}

/// Days off and weekends are little darker than the ground: their edge shows where they end.
void layDayGround(Role role, const QRectF& box, Sheet& sheet) {
    sheet.fill(kLayer, role, box);
    sheet.frame(kLayer, Role::GridStrong, box, sheet.snap().hair());
}

void layChosen(const QRectF& box, Sheet& sheet) {
    sheet.fill(kLayer, Role::Ribbon, box.adjusted(3, 3, -3, -3));
    sheet.frame(kLayer, Role::Selection, box, 1.6, 3);
}

/// Of orders that are met and of those that are short, in the colours of their flags.
void layLeaves(const QRectF& box, Sheet& sheet) {
    constexpr qreal kSmaller = 0.62;
    const auto mark = [&](Role role, qreal x) {
        const auto to = QTransform::fromTranslate(x, box.bottom() - 2).scale(kSmaller, kSmaller);
        sheet.path(kLayer, role, to.map(leavesMark({0, 0})));
    };
    mark(Role::Good, box.left() + box.width() / 4);
    mark(Role::Danger, box.right() - box.width() / 4);
}

/// Of the orders and of days.
void layOrdersOrDays(LegendSign sign, const QRectF& box, Sheet& sheet) {
    switch (sign) {
        case LegendSign::InHand:
            return layInHand(box, sheet);
        case LegendSign::OrderMet:
            return layCloth(kLayer, OrderState::Met, box, false, sheet);
        case LegendSign::OrderAtRisk:
            return layCloth(kLayer, OrderState::AtRisk, box, false, sheet);
        case LegendSign::OrderShort:
            return layCloth(kLayer, OrderState::Short, box, false, sheet);
        case LegendSign::Leaves:
            return layLeaves(box, sheet);
        case LegendSign::Weekend:
            return layDayGround(Role::WeekendGround, box, sheet);
        case LegendSign::DayOff:
            return layDayGround(Role::DayOffGround, box, sheet);
        case LegendSign::Chosen:
            return layChosen(box, sheet);
        case LegendSign::ClearDay:
            return sheet.fill(kLayer, Role::Good, {box.left(), box.bottom() - 3, box.width(), 3});
        case LegendSign::Planned:
            return layOutline(kLayer, box, sheet);
        case LegendSign::Urgent:
            return sheet.glyph(kLayer, Role::Danger, Glyph::Warning, box.center(), 9);
        default:
            return sheet.glyph(kLayer, Role::Caution, Glyph::Warning, box.center(), 9);
    }
}

}  // namespace

void layLegendSign(LegendSign sign, const QRectF& box, Sheet& sheet) {
    switch (sign) {
        case LegendSign::CellsOut:
            return layCellsOut(box, sheet);
        case LegendSign::MakeUp:
            return sheet.glyph(kLayer, Role::InkSoft, Glyph::MakeUp, box.center(), 8);
        case LegendSign::Idle:
            return sheet.frame(kLayer, Role::GridStrong, box.adjusted(0, 3, 0, -2),
                               sheet.snap().hair(), 2);
        case LegendSign::CellsDay:
            return layTick(Role::InkSoft, box, sheet);
        case LegendSign::TooMany:
            return layTick(Role::DangerGround, box, sheet);
        case LegendSign::DroneLayer:
            return layBandSwatch(Band::DroneLayer, box, sheet);
        case LegendSign::Spent:
            return layBandSwatch(Band::Spent, box, sheet);
        case LegendSign::BoxedNumber:
            return layBoxedNumber(box, sheet);
        default:
            return layOrdersOrDays(sign, box, sheet);
    }
}

}  // namespace tenthday
