#include "chart/builders_lane.h"

#include "chart/builder_row.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr qreal kLeastTrack = 24;
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
    sheet.text(Layer::Names, Role::Ink, Type::Label, chart_text::builders(),
               {input.titleLeft, sheet.baselineAt(Type::Label, area.top() + head / 2)},
               Align::Left);
    const qreal track = (area.height() - head) / std::max(1, countTracks(rows));
    const qreal pxPerCell = (track - kBelowBar - kAboveBar) / thickestLoad(rows);
    qreal y = area.top() + head;
    for (const auto& row : rows) {
        const QRectF rowArea(area.left(), y, area.width(), track * row.trackCount);
        layBuilderRow(input, row, rowArea, pxPerCell, sheet);
        y += rowArea.height();
    }
}

}  // namespace tenthday
