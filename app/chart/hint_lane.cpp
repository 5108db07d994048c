#include "chart/hint_lane.h"

namespace tenthday {

LaneHeight HintLane::height(const LaneInput& /*input*/, const TextRuler& ruler) const {
    const qreal line = ruler.line(Type::Label);
    if (brief_) return {line + 4, line + 10, line + 10, 0};
    return {2 * line, 4 * line, 8 * line, 1};
}

void HintLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const qreal baseline = sheet.baselineAt(Type::Label, area.center().y());
    sheet.text(Layer::Names, Role::Ink, Type::Label, name_, {input.titleLeft, baseline},
               Align::Left);
    sheet.text(Layer::Names, Role::Ink, Type::Label, hint_, {area.left() + 8, baseline},
               Align::Left);
}

}  // namespace tenthday
