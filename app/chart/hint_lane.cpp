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
    const QPointF at(area.left() + 8, baseline);
    const auto words = sheet.textRect(Type::Label, hint_, at, Align::Left);
    if (input.isCrossed(words))
        sheet.fill(Layer::Names, Role::Ground, words.adjusted(-3, -3, 3, 3), -1, 2);
    sheet.text(Layer::Names, Role::Ink, Type::Label, hint_, at, Align::Left);
}

}  // namespace tenthday
