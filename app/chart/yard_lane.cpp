#include "chart/yard_lane.h"

#include "chart/cells_days_lane.h"
#include "chart/yard_picture.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr qreal kGap = 12;  ///< air above each yard

const YardDay* yardDayOn(const LaneInput& input, const YardOutlook& yard, Day day) {
    const auto index = (day - input.outlook.season.first).count();
    if (index < 0 || index >= static_cast<int>(yard.days.size())) return nullptr;
    return &yard.days[static_cast<std::size_t>(index)];
}

/// Name, number of nucs and, of the chosen day, how many are ready: as many lines as have room.
void layNames(const LaneInput& input, const YardOutlook& yard, const QRectF& area, Sheet& sheet) {
    struct Line {
        QString text;
        Type type;
        Role role;
    };
    std::vector<Line> lines{{QString::fromStdString(yard.yard->label), Type::Label, Role::Ink},
                            {chart_text::nucs(yard.mostSides), Type::Small, Role::InkSoft}};
    if (input.options.chosenDay)
        if (const auto* day = yardDayOn(input, yard, *input.options.chosenDay))
            lines.push_back({chart_text::ready(day->numbers.ready, wholeLikely(day->numbers)),
                             Type::Strong, Role::Ink});
    const auto& ruler = sheet.ruler();
    qreal total = 0;
    for (const auto& line : lines) total += ruler.line(line.type);
    while (lines.size() > 1 && total > area.height() + 4) {
        const auto gone = lines.size() > 2 ? lines.begin() + 1 : lines.end() - 1;
        total -= ruler.line(gone->type);
        lines.erase(gone);
    }
    qreal y = area.center().y() - total / 2;
    for (const auto& line : lines) {
        const qreal height = ruler.line(line.type);
        sheet.text(Layer::Names, line.role, line.type,
                   ruler.elided(line.text, line.type, input.titleRight - input.titleLeft),
                   {input.titleRight, sheet.baselineAt(line.type, y + height / 2)}, Align::Right);
        y += height;
    }
}

void layEdges(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const qreal hair = sheet.snap().hair();
    for (const qreal y : {area.top() - hair, area.bottom()})
        sheet.fill(Layer::Body, Role::GridStrong, {input.axis.left(), y, input.axis.width(), hair});
}

/// Where the selected batch's cells enter this yard, and a frame about its stay.
void laySelection(const LaneInput& input, const YardPicture& picture, Sheet& sheet) {
    if (!input.options.selected) return;
    for (const auto& block : picture.yard->blocks) {
        if (block.batch != *input.options.selected) continue;
        QRectF stay;
        bool entered = false;
        for (const auto& column : picture.columns) {
            if (!block.days.contains(column.day)) continue;
            QRectF here;
            for (const auto& box : column.boxes)
                if (box.run.batch == block.batch) here = here.united(box.rect);
            if (here.isNull()) continue;
            if (!entered && column.day <= block.days.first + Days{1})
                input.ribbon.ins.push_back(
                    {here.left(), here.top(), here.bottom(), static_cast<qreal>(block.cells)});
            entered = true;
            stay = stay.united(here);
        }
        if (!stay.isNull())
            sheet.frame(Layer::Marks, Role::Selection, stay.adjusted(-2, -2, 1, 1), 1.6, 3);
    }
}

}  // namespace

LaneHeight YardLane::height(const LaneInput& input, const TextRuler& ruler) const {
    const qreal sides = std::max(1, input.outlook.nucs.yards[yard_].mostSides);
    const qreal words = ruler.line(Type::Label) + ruler.line(Type::Small) - 4;
    return {kGap + words, kGap + std::max(words, 2.6 * sides), kGap + std::max(words, 5.5 * sides),
            sides};
}

void YardLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) const {
    const auto& yard = input.outlook.nucs.yards[yard_];
    const auto& snap = sheet.snap();
    const QRectF nucs = snap.rect(area.left(), area.top() + kGap, area.right(), area.bottom());
    const auto picture = yardPicture(input, yard, nucs, snap);
    layColumns(input, picture, sheet);
    layEdges(input, nucs, sheet);
    laySelection(input, picture, sheet);
    layYardNumbers(input, picture, sheet);
    layNames(input, yard, nucs, sheet);
}

}  // namespace tenthday
