#include "chart/builder_row.h"

#include "chart/ghosts.h"
#include "chart/load_bar.h"
#include "chart/outline.h"
#include "chart/planned_stays.h"
#include "records/relations.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

QString label(const std::string& text) { return QString::fromStdString(text); }

/// Lowest track free at each load's start; rest counts as free.
void giveTracks(BuilderRow& row) {
    std::vector<Moment> freeFrom;
    for (const auto& load : row.loads) {
        std::size_t track = 0;
        while (track < freeFrom.size() && freeFrom[track] > load.span->span.from) ++track;
        if (track == freeFrom.size()) freeFrom.push_back(load.span->span.until);
        freeFrom[track] = load.span->span.until;
        row.tracks.push_back(static_cast<int>(track));
    }
    row.trackCount = std::max<int>(1, static_cast<int>(freeFrom.size()));
}

/// None of loads without a builder.
Id<Builder> idOf(const BuilderRow& row) {
    return row.builder ? row.builder->builder->id : Id<Builder>{};
}

BuilderRow homelessLoads(const Outlook& outlook) {
    BuilderRow row;
    row.name = chart_text::noBuilderYet();
    for (const auto& batch : outlook.batches)
        for (const auto& span : batch->timeline.loads)
            if (!span.builder) row.loads.push_back({batch->batch->id, &span});
    std::sort(row.loads.begin(), row.loads.end(),
              [](const auto& a, const auto& b) { return a.span->span.from < b.span->span.from; });
    return row;
}

void layMakeUps(const LaneInput& input, const BuilderOutlook& builder, qreal base,
                BuilderTracks& tracks, Sheet& sheet) {
    for (std::size_t i = 0; i < builder.makeUps.size(); ++i) {
        const auto& makeUp = *builder.makeUps[i];
        const auto moment = momentOf(makeUp.day, makeUp.hour);
        const qreal x = input.axis.xOf(moment);
        if (x < input.axis.left() - 8 || x > input.axis.right() + 8) continue;
        const QRectF rect(x - 4, base - 8, 8, 8);
        const int target = sheet.target({.hit = Hit::MakeUp,
                                         .builder = builder.builder->id,
                                         .day = makeUp.day,
                                         .index = static_cast<int>(i)},
                                        rect.adjusted(-2, -2, 2, 2));
        sheet.fill(Layer::Body, Role::Ground, rect, target);
        sheet.glyph(Layer::Body, Role::InkSoft, Glyph::MakeUp, rect.center(), 8, target);
        tracks.addMark(rect);
    }
}

void layIdle(const LaneInput& input, const BuilderOutlook& builder, qreal base, Sheet& sheet) {
    const auto& snap = sheet.snap();
    for (std::size_t i = 0; i < builder.idle.size(); ++i) {
        const auto& idle = builder.idle[i];
        if (!idle.overlaps(input.visible)) continue;
        const qreal left = std::max(input.axis.xOf(idle.first), input.axis.left() - 4);
        const qreal right = std::min(input.axis.xOf(idle.last + Days{1}), input.axis.right() + 4);
        const auto rect = snap.rect(left + 1, base - 5, right - 1, base);
        const int target = sheet.target({.hit = Hit::Idle,
                                         .builder = builder.builder->id,
                                         .day = idle.first,
                                         .index = static_cast<int>(i)},
                                        rect.adjusted(0, -3, 0, 3));
        sheet.fill(Layer::Body, Role::Ground, rect, target, 2);
        sheet.frame(Layer::Body, Role::GridStrong, rect, snap.hair(), 2);
    }
}

void layLook(const LaneInput& input, const BuilderOutlook& builder, int index, const DayWindow& due,
             std::optional<Day> ticked, qreal base, BuilderTracks& tracks, Sheet& sheet) {
    constexpr qreal kSize = 7;
    const auto& axis = input.axis;
    const qreal x =
        ticked ? axis.middleOf(*ticked) : (axis.xOf(due.first) + axis.xOf(due.last + Days{1})) / 2;
    if (x < axis.left() || x > axis.right()) return;
    const QPointF centre(x, base + 5);
    const int target = sheet.target({.hit = Hit::Look,
                                     .builder = builder.builder->id,
                                     .day = ticked ? *ticked : due.first,
                                     .index = index},
                                    QRectF(centre.x() - 6, centre.y() - 5, 12, 10));
    sheet.glyph(Layer::Body, ticked ? Role::Good : Role::InkSoft,
                ticked ? Glyph::LookDone : Glyph::LookDue, centre, kSize, target);
    tracks.addMark({centre.x() - kSize / 2 - 1, centre.y() - kSize / 2, kSize + 2, kSize});
}

void layLooks(const LaneInput& input, const BuilderOutlook& builder, qreal base,
              BuilderTracks& tracks, Sheet& sheet) {
    int index = 0;
    for (const auto& clock : builder.clocks) {
        layLook(input, builder, index++, clock.firstLook, clock.firstTicked, base, tracks, sheet);
        layLook(input, builder, index++, clock.secondLook, clock.secondTicked, base, tracks, sheet);
    }
}

void layRest(const LaneInput& input, const BuilderRow& row, const BuilderLoad& load, qreal base,
             Sheet& sheet) {
    const qreal left = std::max(input.axis.xOf(load.span->span.until) + 4, input.axis.left());
    const qreal right =
        std::min(input.axis.xOf(load.span->restUntil + Days{1}), input.axis.right());
    if (load.span->restUntil <= dayOf(load.span->span.until) || right <= left) return;
    const QRectF rect(left, base - 3, right - left, 2);
    const int target =
        sheet.target({.hit = Hit::Rest,
                      .batch = load.batch,
                      .builder = row.builder ? row.builder->builder->id : Id<Builder>{},
                      .day = load.span->restUntil},
                     rect.adjusted(0, -3, 0, 3));
    sheet.dotted(Layer::Body, Role::InkSoft, rect, 1.5, target);
}

void frameGhost(const LaneInput& input, const LoadSpan& span, Moment from, Moment until, qreal base,
                qreal pxPerCell, Sheet& sheet) {
    double cells = 0;
    for (const auto& part : span.thickness) cells = std::max(cells, part.cells);
    const qreal left = std::max(input.axis.xOf(from), input.axis.left());
    const qreal right = std::min(input.axis.xOf(until), input.axis.right());
    if (left < right)
        layOutline(Layer::Under, sheet.snap().rect(left, base - cells * pxPerCell, right, base),
                   sheet);
}

/// The outline of where a load was planned, of a batch that was grafted on another day: all of its
/// stays hang on the graft.
void layPlanned(const LaneInput& input, const BuilderLoad& load, qreal base, qreal pxPerCell,
                Sheet& sheet) {
    const auto shift = shiftToPlan(input.outlook, input.find(load.batch));
    if (!shift) return;
    const auto by = *shift;
    frameGhost(input, *load.span, load.span->span.from + by, load.span->span.until + by, base,
               pxPerCell, sheet);
}

/// Outlines of where loads stood before the preview moved them.
void layGhosts(const LaneInput& input, const BuilderRow& row, qreal base,
               const BuilderTracks& tracks, Sheet& sheet) {
    if (tracks.moved.empty() || !row.builder) return;
    for (const auto& builder : input.options.before->builders) {
        if (builder.builder->id != row.builder->builder->id) continue;
        for (const auto& load : builder.loads)
            if (tracks.moved.contains(load.batch))
                frameGhost(input, *load.span, load.span->span.from, load.span->span.until, base,
                           tracks.pxPerCell, sheet);
    }
}

}  // namespace

std::vector<BuilderRow> builderRows(const Outlook& outlook, const HeldTracks& held) {
    std::vector<BuilderRow> rows;
    for (const auto& builder : outlook.builders) {
        rows.push_back({&builder, label(builder.builder->label), builder.loads, {}, 1});
        giveTracks(rows.back());
    }
    auto homeless = homelessLoads(outlook);
    if (!homeless.loads.empty() || held.contains(idOf(homeless))) {
        giveTracks(homeless);
        rows.push_back(std::move(homeless));
    }
    for (auto& row : rows)
        if (const auto at = held.find(idOf(row)); at != held.end())
            row.trackCount = std::max(row.trackCount, at->second);
    return rows;
}

void holdTracks(const Outlook& outlook, HeldTracks& held) {
    for (const auto& row : builderRows(outlook)) {
        auto& tracks = held[idOf(row)];
        tracks = std::max(tracks, row.trackCount);
    }
}

double thickestLoad(const std::vector<BuilderRow>& rows) {
    double most = 1;
    for (const auto& row : rows)
        for (const auto& load : row.loads)
            for (const auto& part : load.span->thickness) most = std::max(most, part.cells);
    return most;
}

namespace {

/// Marks before words: words keep clear of them.
void layMarks(const LaneInput& input, const BuilderRow& row, const QRectF& area, qreal base,
              BuilderTracks& tracks, Sheet& sheet) {
    const auto& builder = *row.builder;
    if (!tracks.isDense()) {
        layIdle(input, builder, base, sheet);
        layMakeUps(input, builder, base, tracks, sheet);
        layLooks(input, builder, base, tracks, sheet);
    }
    sheet.target({.hit = Hit::BuilderRow, .builder = builder.builder->id}, area);
    layProposedLoads(input, builder.builder->id, base, tracks.pxPerCell, sheet);
}

}  // namespace

void layBuilderRow(const LaneInput& input, const BuilderRow& row, const QRectF& area,
                   BuilderTracks& tracks, Sheet& sheet) {
    const auto& snap = sheet.snap();
    const qreal base = snap(area.bottom() - tracks.belowBar());
    sheet.fill(Layer::Under, Role::Grid,
               {input.axis.left(), base, input.axis.width(), snap.hair()});
    layGhosts(input, row, base, tracks, sheet);
    if (row.builder) layMarks(input, row, area, base, tracks, sheet);
    const auto baseOf = [&](std::size_t i) { return snap(base - row.tracks[i] * tracks.track); };
    std::vector<int> targets;
    for (std::size_t i = 0; i < row.loads.size(); ++i) {
        const auto& load = row.loads[i];
        if (!tracks.isDense()) layRest(input, row, load, baseOf(i), sheet);
        if (!input.options.before) layPlanned(input, load, baseOf(i), tracks.pxPerCell, sheet);
        targets.push_back(layLoadBar(input, row, load, baseOf(i), tracks, sheet));
    }
    for (std::size_t i = 0; i < row.loads.size(); ++i)
        writeLoad(input, row.loads[i], baseOf(i), targets[i], tracks, sheet);
}

}  // namespace tenthday
