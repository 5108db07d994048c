#include "chart/builders_lane.h"

#include "chart/builder_row.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr qreal kLeastTrack = 28;
constexpr qreal kWishedTrack = 40;
constexpr qreal kMostTrack = 68;
/// Around the bars of a track: marks of looks below, air and words above.
constexpr qreal kBelowBar = 9;
constexpr qreal kAboveBar = 5;

int countTracks(const std::vector<BuilderRow>& rows) {
    int tracks = 0;
    for (const auto& row : rows) tracks += row.trackCount;
    return tracks;
}

qreal headOf(const TextRuler& ruler) { return ruler.line(Type::Label) + 4; }

/// Days on which a graft is not worth while any more, or not yet.
bool isOutside(const SeasonLimits& limits, Day day) {
    const auto first = limits.firstGraft();
    const auto last = limits.lastGraft();
    return (first && day < *first) || (last && day > *last);
}

/// Hatches the days before the first graft of the season and after its last one.
void layOutside(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    constexpr qreal kSpacing = 9;
    const auto& axis = input.axis;
    for (Day day = input.visible.first; day <= input.visible.last; day += Days{1}) {
        if (!isOutside(input.outlook.limits, day)) continue;
        const qreal left = std::max(axis.xOf(day), axis.left());
        const qreal right = std::min(axis.xOf(day + Days{1}), axis.right());
        const QRectF column(left, area.top(), right - left, area.height());
        sheet.target({.hit = Hit::OutsideLimits, .day = day}, column);
        sheet.hatch(Layer::Ground, Role::OutsideHatch, column, Slope::Rising, kSpacing, 1);
    }
}

}  // namespace

LaneHeight BuildersLane::height(const LaneInput& input, const TextRuler& ruler) const {
    const auto tracks = countTracks(builderRows(input.outlook));
    const qreal head = headOf(ruler);
    return {head + tracks * kLeastTrack, head + tracks * kWishedTrack, head + tracks * kMostTrack,
            4.0 * tracks};
}

void BuildersLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto rows = builderRows(input.outlook);
    const qreal head = headOf(sheet.ruler());
    layOutside(input, area, sheet);
    sheet.text(Layer::Names, Role::Ink, Type::Label, chart_text::builders(),
               {input.titleLeft, sheet.baselineAt(Type::Label, area.top() + head / 2)},
               Align::Left);
    const qreal track = (area.height() - head) / std::max(1, countTracks(rows));
    const qreal pxPerCell = (track - kBelowBar - kAboveBar) / thickestLoad(rows);
    sheet.setPxPerCell(pxPerCell);
    qreal y = area.top() + head;
    for (const auto& row : rows) {
        const QRectF rowArea(area.left(), y, area.width(), track * row.trackCount);
        layBuilderRow(input, row, rowArea, pxPerCell, sheet);
        y += rowArea.height();
    }
}

}  // namespace tenthday
