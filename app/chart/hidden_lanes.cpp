#include "chart/hidden_lanes.h"

#include <utility>

#include "look/space.h"
#include "screen_text/chart_hand_text.h"

namespace tenthday {
namespace {

constexpr qreal kArrow = 8;
constexpr qreal kBetween = 24;  ///< between the names below and those above

qreal widthOf(const QString& text, const TextRuler& ruler) {
    return kArrow + space::kInset + ruler.width(text, Type::Small);
}

/// Names as many as have room, then how many more.
QString fitted(const QStringList& names, QString (*words)(const QStringList&, int), qreal room,
               const TextRuler& ruler) {
    const int all = static_cast<int>(names.size());
    QString text;
    for (int named = all; named > 0; --named) {
        text = words(names.mid(0, named), all - named);
        if (widthOf(text, ruler) <= room) return text;
    }
    return ruler.elided(text, Type::Small, room - widthOf({}, ruler));
}

/// An angle that points to where the lanes are.
QPainterPath arrow(QPointF centre, bool down) {
    const qreal half = kArrow / 2;
    const qreal tip = down ? half / 2 : -half / 2;
    QPainterPath path(centre + QPointF(-half, -tip));
    path.lineTo(centre + QPointF(0, tip));
    path.lineTo(centre + QPointF(half, -tip));
    return path;
}

void laySign(const QString& text, bool down, const QRectF& place, Sheet& sheet) {
    const int target = sheet.target({.hit = down ? Hit::LanesBelow : Hit::LanesAbove}, place);
    const qreal middle = place.center().y();
    sheet.stroke(Layer::Heads, Role::Ink, arrow({place.left() + kArrow / 2, middle}, down), 1.4,
                 target);
    sheet.text(Layer::Heads, Role::Ink, Type::Small, text,
               {place.left() + kArrow + space::kInset, sheet.baselineAt(Type::Small, middle)},
               Align::Left, target);
}

}  // namespace

HiddenLanes hiddenLanes(const std::vector<LaneSpan>& lanes, const QRectF& plot,
                        const TextRuler& ruler) {
    const qreal name = ruler.line(Type::Small);
    HiddenLanes hidden;
    bool isAbove = false;  // the lane before
    bool isBelow = false;
    for (const auto& lane : lanes) {
        // Of one with a name that much is enough to know of it; rows go with the lane they belong
        // to, and are told where only they are hidden.
        const qreal seen = lane.isRowsOfBefore ? lane.bottom - lane.top - name : name;
        const bool wasAbove = std::exchange(isAbove, lane.bottom - plot.top() < seen);
        const bool wasBelow = std::exchange(isBelow, plot.bottom() - lane.top < seen);
        if (isAbove && !(lane.isRowsOfBefore && wasAbove)) hidden.above += lane.name;
        if (isBelow && !(lane.isRowsOfBefore && wasBelow)) hidden.below += lane.name;
    }
    return hidden;
}

qreal hiddenLanesHeight(const TextRuler& ruler) {
    return std::ceil(ruler.line(Type::Small)) + 2 * space::kInset;
}

void layHiddenLanes(const HiddenLanes& hidden, const QRectF& line, Sheet& sheet) {
    const auto& ruler = sheet.ruler();
    qreal room = line.width();
    if (!hidden.below.isEmpty()) {
        const qreal most = hidden.above.isEmpty() ? room : room - room / 3;
        const auto text = fitted(hidden.below, chart_hand_text::lanesBelow, most, ruler);
        const qreal width = widthOf(text, ruler);
        laySign(text, true, {line.left(), line.top(), width, line.height()}, sheet);
        room -= width + kBetween;
    }
    if (hidden.above.isEmpty()) return;
    // At the other end: pressed again and again in one place, each scrolls one way only.
    const auto text = fitted(hidden.above, chart_hand_text::lanesAbove, room, ruler);
    const qreal width = widthOf(text, ruler);
    laySign(text, false, {line.right() - width, line.top(), width, line.height()}, sheet);
}

void layLackingLanes(const QStringList& lanes, const QRectF& line, Sheet& sheet) {
    if (lanes.isEmpty()) return;
    sheet.text(Layer::Heads, Role::Ink, Type::Small,
               fitted(lanes, chart_hand_text::lanesLacking, line.width(), sheet.ruler()),
               {line.left(), sheet.baselineAt(Type::Small, line.center().y())}, Align::Left);
}

}  // namespace tenthday
