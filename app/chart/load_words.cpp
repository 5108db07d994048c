/// What is written on and beside the bars of a builder: it meets no mark, and no other word.
#include "chart/bar_shape.h"
#include "chart/chart_head.h"
#include "chart/load_bar.h"
#include "look/space.h"
#include "screen_text/chart_hand_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/trouble_text.h"

namespace tenthday {
namespace {

constexpr qreal kInAir = 2;  ///< above and below a word inside a bar, together

/// x moved right past the lines of today and the chosen day, where they would run through a text.
qreal clearOfLines(const LaneInput& input, qreal x, qreal width) {
    const auto& axis = input.axis;
    std::vector<qreal> lines{axis.xOf(input.outlook.snapshot.today())};
    if (const auto chosen = input.options.chosenDay) {
        lines.push_back(axis.xOf(*chosen));
        lines.push_back(axis.xOf(*chosen + Days{1}));
    }
    for (const qreal line : lines)
        if (x - 2 < line && line < x + width + 2) x = line + 4;
    return x;
}

/// Writes a word where it meets nothing. @return whether it did
bool put(Role role, Type type, const QString& text, QPointF at, BuilderTracks& tracks, Sheet& sheet,
         int target) {
    const auto rect = sheet.textRect(type, text, at, Align::Left);
    if (!tracks.isClear(rect)) return false;
    tracks.addWord(rect);
    sheet.text(Layer::Words, role, type, text, at, Align::Left, target);
    return true;
}

/// The batch's number on the ground, off a bar too thin for it: above its beginning, else above
/// its end, else beside it.
void writeOutside(const LaneInput& input, const QString& text, const BarShape& bar, qreal base,
                  BuilderTracks& tracks, Sheet& sheet, int target) {
    constexpr qreal kAir = 2;
    const auto [from, to] = bar.inSight(input.axis);
    const qreal wide = sheet.ruler().width(text, Type::Batch);
    const auto above = [&](qreal left) {
        const qreal end = std::max(left + 1, std::min(to, left + wide));
        return QPointF(left, sheet.snap()(bar.edge.between(left, end).highestY() - kAir));
    };
    for (const auto& at :
         {above(from), above(std::max(from, to - wide)), QPointF(to + space::kPart, base - kAir)}) {
        const auto rect = sheet.textRect(Type::Batch, text, at, Align::Left);
        if (rect.right() > input.axis.right() || !tracks.isFree(rect)) continue;
        if (input.isCrossed(rect))
            sheet.fill(Layer::Words, Role::Ground, rect.adjusted(-2, -2, 2, 2), -1, 2);
        (void)put(Role::Ink, Type::Batch, text, at, tracks, sheet, target);
        return;
    }
}

/// The batch's number at the left of its bar, or off it. @return x up to which the bar is written
/// on
qreal writeNumber(const LaneInput& input, const QString& batch, const BarShape& bar, qreal base,
                  BuilderTracks& tracks, Sheet& sheet, int target) {
    const auto& ruler = sheet.ruler();
    const auto [from, to] = bar.inSight(input.axis);
    const qreal number = ruler.width(batch, Type::Batch);
    const qreal left = clearOfLines(input, from + 4, number);
    const qreal end = left + number + 3;
    const qreal high = base - bar.edge.between(from, std::min(to, end)).lowestY();
    if (end <= to && ruler.capHeight(Type::Batch) + kInAir <= high) {
        const QPointF at(left, sheet.baselineAt(Type::Batch, base - high / 2));
        if (put(Role::CellsInk, Type::Batch, batch, at, tracks, sheet, target))
            return left + number;
    }
    if (!tracks.isDense() && to - from >= ruler.capHeight(Type::Batch))
        writeOutside(input, batch, bar, base, tracks, sheet, target);
    return from;
}

/// How many cells it is, on the sealed part, where they fit.
void writeCells(const LaneInput& input, const BarShape& bar, qreal used, qreal base,
                BuilderTracks& tracks, Sheet& sheet, int target) {
    const auto& ruler = sheet.ruler();
    const qreal to = bar.inSight(input.axis).second;
    const qreal high = base - bar.edge.lowestY();
    if (bar.sealedAt >= to || ruler.capHeight(Type::Small) + kInAir > high) return;
    const qreal left = clearOfLines(input, std::max(bar.sealedAt, used) + 5,
                                    ruler.width(chart_text::number(99), Type::Small));
    const int cells = static_cast<int>(std::lround(bar.lastCells));
    for (const auto& text : {chart_text::cells(cells), chart_text::number(cells)}) {
        const qreal width = ruler.width(text, Type::Small);
        if (width > to - left - 4 || clearOfLines(input, left, width) != left) continue;
        const QPointF at(left, sheet.baselineAt(Type::Small, base - high / 2));
        if (put(Role::CellsInk, Type::Small, text, at, tracks, sheet, target)) return;
    }
}

/// Where hours have room: at which the cells come in and go out, above the bar's ends.
void writeHours(const LaneInput& input, const LoadSpan& span, const BarShape& bar, qreal base,
                BuilderTracks& tracks, Sheet& sheet) {
    if (!hasHours(input.axis)) return;
    constexpr qreal kAir = 3;
    const auto& axis = input.axis;
    const auto write = [&](const QString& text, qreal x, qreal y, Align align) {
        const QPointF at(x, sheet.snap()(y - kAir));
        const auto rect = sheet.textRect(Type::Small, text, at, align);
        if (rect.left() < axis.left() || rect.right() > axis.right() || input.isCrossed(rect) ||
            !tracks.isClear(rect))
            return;
        tracks.addWord(rect);
        sheet.text(Layer::Words, Role::InkSoft, Type::Small, text, at, align);
    };
    const auto& points = bar.edge.points;
    if (points.empty() || bar.right - bar.left < axis.dayWidth() / 2) return;
    write(chart_hand_text::in(clock(span.span.from)), bar.left, points.front().y(), Align::Left);
    write(chart_hand_text::out(clock(span.span.until)), bar.right,
          std::min(base, points.back().y()), Align::Right);
}

/// What is wrong with a load, at its end.
struct LoadTrouble {
    const Finding* finding = nullptr;
    int index = -1;
    qreal end = 0;

    [[nodiscard]] TargetKey key(Id<Batch> batch) const {
        return {.hit = Hit::Trouble, .batch = batch, .day = finding->day, .index = index};
    }
    [[nodiscard]] Role role() const {
        return finding->severity == Severity::Danger ? Role::Danger : Role::Caution;
    }
};

/// Its sign and words. Beside the bar's end, over its rest; else above it, ending where it ends;
/// else its sign alone.
/// @return whether its words had room
bool layLoadTrouble(const LaneInput& input, const BuilderLoad& load, const LoadTrouble& trouble,
                    const QRectF& area, bool hasOutlines, BuilderTracks& tracks, Sheet& sheet) {
    constexpr qreal kSign = 9;
    const auto& ruler = sheet.ruler();
    const auto words = chart_text::trouble(*trouble.finding);
    const qreal width = kSign + 4 + ruler.width(words, Type::Strong);
    const qreal height = ruler.capHeight(Type::Strong) + 4;
    const qreal middle = area.center().y() - 2;
    const QRectF beside(trouble.end + 6, middle - height / 2, width, height);
    const QRectF above(trouble.end - width, area.top(), width, height);
    const QRectF sign(trouble.end + 1, middle - height / 2, kSign, height);
    const auto isFree = [&](const QRectF& place) {
        return place.right() <= input.axis.right() && place.left() >= input.axis.left() &&
               tracks.isFree(place);
    };
    const bool hasRoom = !tracks.isDense() && (isFree(beside) || isFree(above));
    const auto place = !hasRoom ? sign : isFree(beside) ? beside : above;
    if (!hasRoom && !tracks.isClear(place)) return false;
    tracks.addWord(place);
    const int target = sheet.target(trouble.key(load.batch), place);
    // Off outlines, also of what is proposed, and off the lines of days.
    if (hasRoom && (hasOutlines || input.options.proposals || input.isCrossed(place)))
        sheet.fill(Layer::Words, Role::Ground, place.adjusted(-1, -1, 1, 1), target, 2);
    sheet.glyph(Layer::Words, trouble.role(), Glyph::Warning,
                {place.left() + kSign / 2, place.center().y()}, kSign, target);
    if (hasRoom)
        sheet.text(Layer::Words, trouble.role(), Type::Strong, words,
                   {place.left() + kSign + 4, sheet.baselineAt(Type::Strong, place.center().y())},
                   Align::Left, target);
    return hasRoom;
}

}  // namespace

void writeLoad(const LaneInput& input, const BuilderLoad& load, qreal base, int target,
               BuilderTracks& tracks, Sheet& sheet) {
    if (target < 0) return;
    const auto bar = barShape(input, *load.span, base, tracks.pxPerCell, sheet.snap());
    const auto* batch = input.find(load.batch);
    const auto label = batch ? QString::fromStdString(batch->batch->label) : QString();
    const qreal used = writeNumber(input, label, bar, base, tracks, sheet, target);
    writeCells(input, bar, used, base, tracks, sheet, target);
    writeHours(input, *load.span, bar, base, tracks, sheet);
}

int worstInSight(const LaneInput& input, const BuilderRow& row, const BuilderLoad& load,
                 const BuilderTracks& tracks) {
    const qreal end = input.axis.xOf(load.span->span.until);
    const bool isInSight = end >= input.axis.left() && end <= input.axis.right();
    return isInSight ? tracks.troubles.worst(row, load) : -1;
}

Trouble troubleOf(const LaneInput& input, const BuilderLoad& load, int index) {
    constexpr int kComing = 10;
    constexpr int kDanger = 100;
    const LoadTrouble trouble{&input.outlook.findings[static_cast<std::size_t>(index)], index,
                              input.axis.xOf(load.span->span.until)};
    const auto& finding = *trouble.finding;
    const auto* batch = input.find(load.batch);
    const bool comes = finding.day >= input.outlook.snapshot.today();
    return {trouble.key(load.batch),
            batch ? QString::fromStdString(batch->batch->label) : QString(),
            chart_text::trouble(finding),
            trouble.role(),
            trouble.end,
            (comes ? kComing : 0) + (finding.severity == Severity::Danger ? kDanger : 0),
            &finding};
}

void layTrouble(const LaneInput& input, const BuilderRow& row, const QRectF& area, bool hasOutlines,
                BuilderTracks& tracks, Sheet& sheet) {
    for (std::size_t i = 0; i < row.loads.size(); ++i) {
        const auto& load = row.loads[i];
        const int index = worstInSight(input, row, load, tracks);
        if (index < 0) continue;
        const LoadTrouble trouble{&input.outlook.findings[static_cast<std::size_t>(index)], index,
                                  input.axis.xOf(load.span->span.until)};
        if (!layLoadTrouble(input, load, trouble, area, hasOutlines, tracks, sheet))
            tracks.leaveUntold(i);
    }
}

}  // namespace tenthday
