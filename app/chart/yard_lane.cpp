#include "chart/yard_lane.h"

#include <utility>

#include "chart/cells_day_label.h"
#include "chart/counted_day.h"
#include "chart/ghosts.h"
#include "chart/planned_stays.h"
#include "look/space.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

constexpr qreal kGap = space::kLane;  ///< air above each yard
constexpr qreal kOpener = 8;

const YardDay* yardDayOn(const LaneInput& input, const YardOutlook& yard, Day day) {
    const auto index = (day - input.outlook.season.first).count();
    if (index < 0 || index >= static_cast<int>(yard.days.size())) return nullptr;
    return &yard.days[static_cast<std::size_t>(index)];
}

/// The mark that says whether the yard is opened; all of its names can be pressed.
void layOpener(const LaneInput& input, const YardOutlook& yard, qreal middle, const QRectF& area,
               Sheet& sheet) {
    if (input.options.isPicture) return;
    const int target = sheet.target({.hit = Hit::YardName, .yard = yard.yard->id},
                                    {0, area.top(), input.axis.left(), area.height()});
    sheet.glyph(Layer::Names, Role::InkSoft,
                input.options.isOpen(yard.yard->id) ? Glyph::Opened : Glyph::Closed,
                {input.titleLeft + kOpener / 2 - 2, middle}, kOpener, target);
}

/// "17 Jun: 22 ready +27", of the chosen day or today; empty where neither is in the season.
QString readyWords(const LaneInput& input, const YardOutlook& yard) {
    const auto counted = countedDay(input.outlook, input.options);
    const auto* day = counted ? yardDayOn(input, yard, *counted) : nullptr;
    if (day == nullptr) return {};
    const bool isToday = *counted == input.outlook.snapshot.today();
    return chart_text::readyOn(isToday ? chart_text::today() : shortDay(*counted),
                               day->numbers.ready, wholeLikely(day->numbers));
}

/// Name, number of nucs and how many are ready: as many lines as have room.
void layNames(const LaneInput& input, const YardOutlook& yard, const QRectF& area, Sheet& sheet) {
    struct Line {
        QString text;
        Type type;
        Role role;
    };
    std::vector<Line> lines{{QString::fromStdString(yard.yard->label), Type::Label, Role::Ink},
                            {chart_text::nucs(yard.mostSides), Type::Small, Role::InkSoft}};
    if (const auto ready = readyWords(input, yard); !ready.isEmpty())
        lines.push_back({ready, Type::Strong, Role::Ink});
    const auto& ruler = sheet.ruler();
    qreal total = 0;
    for (const auto& line : lines) total += ruler.line(line.type);
    while (lines.size() > 1 && total > area.height() + 4) {
        const auto gone = lines.size() > 2 ? lines.begin() + 1 : lines.end() - 1;
        total -= ruler.line(gone->type);
        lines.erase(gone);
    }
    qreal y = area.center().y() - total / 2;
    layOpener(input, yard, y + ruler.line(Type::Label) / 2, area, sheet);
    for (const auto& line : lines) {
        const qreal height = ruler.line(line.type);
        sheet.text(
            Layer::Names, line.role, line.type,
            ruler.elided(line.text, line.type, input.titleRight - input.titleLeft - kOpener - 2),
            {input.titleRight, sheet.baselineAt(line.type, y + height / 2)}, Align::Right);
        y += height;
    }
}

void layEdges(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const qreal hair = sheet.snap().hair();
    for (const qreal y : {area.top() - hair, area.bottom()})
        sheet.fill(Layer::Body, Role::GridStrong, {input.axis.left(), y, input.axis.width(), hair});
}

/// Columns in which a batch holds nucs, from the first to the last; null where none is in sight.
QRectF staySpan(const YardPicture& picture, Id<Batch> batch) {
    QRectF span;
    for (const auto& column : picture.columns)
        for (const auto& box : column.boxes)
            if (box.run.batch == batch) span = span.united(box.rect);
    return span;
}

/// A frame about the selected batches' nucs.
void laySelection(const LaneInput& input, const YardPicture& picture, Sheet& sheet) {
    for (const auto& block : picture.blocks) {
        if (!input.isMarked(block.batch)) continue;
        const auto span = staySpan(picture, block.batch);
        if (span.isNull()) continue;
        const QRectF stay(QPointF(span.left(), block.top), QPointF(span.right(), block.bottom));
        sheet.frame(Layer::Marks, Role::Selection, stay.adjusted(-2, -2, 1, 2), 1.6, 3);
    }
}

/// Where the first selected batch's cells enter its nucs. @return whether it has any on these days
bool giveEnds(const LaneInput& input, const YardPicture& picture) {
    bool isThere = false;
    for (const auto& block : picture.blocks) {
        if (!input.isSelected(block.batch)) continue;
        const auto span = staySpan(picture, block.batch);
        if (span.isNull()) continue;
        isThere = true;
        if (span.left() > input.axis.left() + 1)
            input.ribbon.ins.push_back({span.left(), block.top, block.bottom, block.nucs});
    }
    return isThere;
}

QRectF nucsIn(const QRectF& area, const Snap& snap) {
    return snap.rect(area.left(), area.top() + kGap, area.right(), area.bottom());
}

/// In sight, from the first day to the last on which the batch is there.
DayWindow daysInSight(const LaneInput& input, const YardOutlook& yard, Id<Batch> batch) {
    DayWindow days{input.visible.last + Days{1}, input.visible.first - Days{1}};
    for (const auto& block : yard.blocks) {
        if (block.batch != batch) continue;
        days.first = std::min(days.first, block.days.first);
        days.last = std::max(days.last, block.days.last);
    }
    return {std::max(days.first, input.visible.first), std::min(days.last, input.visible.last)};
}

}  // namespace

LaneHeight YardLane::height(const LaneInput& input, const TextRuler& ruler) const {
    const qreal sides = std::max(1, input.outlook.nucs.yards[yard_].mostSides);
    const qreal words = ruler.line(Type::Label) + ruler.line(Type::Strong) - 4;
    return {kGap + words, kGap + std::max(words, 2.6 * sides), kGap + std::max(words, 9.0 * sides),
            sides};
}

YardLane::Laid YardLane::leaning(const LaneInput& input, const QRectF& area) const {
    const auto& yard = input.outlook.nucs.yards[yard_];
    return {area, yard.yard, input.stacks.stateOf(yard), input.namesYardDays()};
}

std::optional<qreal> YardLane::stillLies(const LaneInput& input, const QRectF& area) {
    if (!input.isAsBefore || !laid_) return std::nullopt;
    const auto down = movedDown(laid_->area, area, Snap{input.options.pixelRatio});
    if (down) laid_->area = area;
    if (!down || laid_ != leaning(input, area)) return std::nullopt;
    picture_.yard = &input.outlook.nucs.yards[yard_];
    if (*down != 0) picture_.moveDown(*down);
    if (written_) written_->down += *down;
    return down;
}

void YardLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    laid_ = leaning(input, area);
    written_.reset();
    const auto& yard = input.outlook.nucs.yards[yard_];
    const auto& snap = sheet.snap();
    const auto nucs = nucsIn(area, snap);
    sheet.target({.hit = Hit::YardRow, .yard = yard.yard->id}, nucs);
    picture_ = yardPicture(input, yard, input.visible, nucs, snap);
    layColumns(input, picture_, sheet);
    layPlannedStays(input, picture_, sheet);
    layEdges(input, nucs, sheet);
    laySelection(input, picture_, sheet);
    giveEnds(input, picture_);
    layProposedStays(input, yard.yard->id, yard.mostSides, nucs, sheet);
    layNames(input, yard, nucs, sheet);
}

bool YardLane::staysUnseen(const LaneInput& input, const QRectF& area) const {
    if (!input.options.selected) return true;
    const auto& yard = input.outlook.nucs.yards[yard_];
    const Snap snap{input.options.pixelRatio};
    const auto days = daysInSight(input, yard, *input.options.selected);
    for (Day day = days.first; day <= days.last; day += Days{1})
        if (giveEnds(input, yardPicture(input, yard, {day, day}, nucsIn(area, snap), snap))) break;
    return true;
}

std::optional<qreal> YardLane::stillWritten(const LaneInput& input) {
    if (!written_) return std::nullopt;
    const qreal down = std::exchange(written_->down, 0);
    const auto& days = input.outlook.nucs.cellsDays;
    const bool isAlike =
        std::equal(days.begin(), days.end(), written_->cellsDays.begin(), written_->cellsDays.end(),
                   [](const CellsDay& is, Day was) { return is.day == was; }) &&
        input.ribbon.answersAlike(written_->asked, down);
    if (!isAlike) return std::nullopt;
    for (auto& asked : written_->asked) asked.rect.translate(0, down);
    return down;
}

void YardLane::write(const LaneInput& input, Sheet& sheet) {
    input.ribbon.asked.clear();
    writeYardNumbers(input, picture_, sheet);
    written_ = Written{{}, {}, 0};
    for (const auto& day : input.outlook.nucs.cellsDays) written_->cellsDays.push_back(day.day);
    written_->asked = std::move(input.ribbon.asked);
}

}  // namespace tenthday
