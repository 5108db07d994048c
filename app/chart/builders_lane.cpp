#include "chart/builders_lane.h"

#include "chart/builder_names.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr qreal kLeastTrack = 28;
constexpr qreal kWishedTrack = 40;
constexpr qreal kMostTrack = 68;
/// A whole season in one window: many builders share so much height, in bars without words.
constexpr qreal kSeasonDay = 12;      ///< px of a day, from which words matter more than overview
constexpr qreal kSeasonHeight = 280;  ///< px for all tracks
constexpr qreal kLowestTrack = 3;
/// Air above the bars of a track, for words.
constexpr qreal kAboveBar = 5;
constexpr qreal kAboveDenseBar = 1;

qreal leastTrack(const DayAxis& axis, int tracks) {
    if (axis.dayWidth() >= kSeasonDay) return kLeastTrack;
    return std::clamp(kSeasonHeight / std::max(1, tracks), kLowestTrack, kLeastTrack);
}

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
    QRectF run;  // of neighbouring days
    const auto hatchRun = [&] {
        sheet.hatch(Layer::Under, Role::OutsideHatch, run, Slope::Rising, kSpacing, 1);
    };
    for (Day day = input.visible.first; day <= input.visible.last; day += Days{1}) {
        if (!isOutside(input.outlook.limits, day)) continue;
        const qreal left = std::max(axis.xOf(day), axis.left());
        const qreal right = std::min(axis.xOf(day + Days{1}), axis.right());
        const QRectF column(left, area.top(), right - left, area.height());
        sheet.target({.hit = Hit::OutsideLimits, .day = day}, column);
        if (run.right() < left) hatchRun(), run = column;
        run.setRight(right);
    }
    hatchRun();
}

/// Troubles that found no room in their rows, along the lane's head.
void layUntold(const LaneInput& input, std::vector<Trouble> untold, const BuilderTracks& tracks,
               const QRectF& head, Sheet& sheet) {
    const QRectF line(head.left(), head.top() + 1, head.width(), head.height() - 3);
    layTroubles(input, std::move(untold), line, tracks.within(line.top(), line.bottom()), sheet);
}

}  // namespace

/// Where all of a season share the height there is, a track more in a drag takes its room from the
/// others, as long as they stay visible: lanes below hold still.
LaneHeight BuildersLane::height(const LaneInput& input, const TextRuler& ruler) const {
    const auto& before = input.options.before;
    int tracks = countTracks(builderRows(input.outlook, input.options.heldTracks));
    if (input.axis.dayWidth() < kSeasonDay) {
        const int saved = countTracks(builderRows(before ? *before : input.outlook));
        if (saved * leastTrack(input.axis, saved) >= tracks * kLowestTrack) tracks = saved;
    }
    const qreal head = headOf(ruler);
    return {head + tracks * leastTrack(input.axis, tracks), head + tracks * kWishedTrack,
            head + tracks * kMostTrack, 4.0 * tracks};
}

void BuildersLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto rows = builderRows(input.outlook, input.options.heldTracks);
    const qreal head = headOf(sheet.ruler());
    layOutside(input, area, sheet);
    sheet.text(Layer::Names, Role::Ink, Type::Label, chart_text::builders(),
               {input.titleLeft, sheet.baselineAt(Type::Label, area.top() + head / 2)},
               Align::Left);
    BuilderTracks tracks(input);
    tracks.track = (area.height() - head) / std::max(1, countTracks(rows));
    const qreal above = tracks.isDense() ? kAboveDenseBar : kAboveBar;
    tracks.pxPerCell = (tracks.track - tracks.belowBar() - above) / thickestLoad(rows);
    sheet.setPxPerCell(tracks.pxPerCell);
    const qreal top = area.top() + head;
    layBuilderNames(input, rows, top, tracks, sheet);
    rows_.lay(input, rows, area, top, tracks, sheet);
    layUntold(input, rows_.untold(input, rows), tracks,
              {area.left(), area.top(), area.width(), head}, sheet);
}

}  // namespace tenthday
