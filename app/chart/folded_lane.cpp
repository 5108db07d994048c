#include "chart/folded_lane.h"

namespace tenthday {

LaneHeight FoldedLane::height(const LaneInput& /*input*/, const TextRuler& ruler) const {
    const qreal line = ruler.line(Type::Label) + 4;
    return {line, line, line, 0};
}

void FoldedLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    sheet.text(Layer::Names, Role::InkSoft, Type::Label, name_,
               {input.titleLeft, sheet.baselineAt(Type::Label, nameMiddle(area, sheet.ruler()))},
               Align::Left);
    sheet.fill(Layer::Under, Role::Grid,
               {input.axis.left(), area.bottom(), input.axis.width(), sheet.snap().hair()});
}

void layFolder(const LaneInput& input, LaneName lane, bool folded, const QRectF& area, qreal middle,
               Sheet& sheet) {
    constexpr qreal kMark = 7;
    constexpr qreal kReach = 14;  ///< above and below the name's middle
    const QRectF place(0, middle - kReach, input.axis.left(), 2 * kReach);
    const int target =
        sheet.target({.hit = Hit::LaneName, .index = static_cast<int>(lane)},
                     place.intersected({0, area.top(), input.axis.left(), area.height()}));
    sheet.glyph(Layer::Names, Role::InkSoft, folded ? Glyph::Closed : Glyph::Opened,
                {input.titleLeft / 2, middle}, kMark, target);
}

}  // namespace tenthday
