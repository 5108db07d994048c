#include "chart/cells_days_lane.h"

#include "chart/cells_day_sums.h"
#include "chart/counted_day.h"
#include "chart/trouble_line.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr qreal kTick = 5;
constexpr qreal kAroundRows = 7;  ///< above and below the lines of a sum
constexpr int kLines = CellsDayLabel::kLines;

qreal lineOf(const TextRuler& ruler) { return ruler.line(Type::Small); }

/// How the last line of a sum is told. Too many has a shape of its own: filled where nothing is
/// likely to help. Catches that free enough are ordinary work, and framed. What is over can only be
/// looked back at: words alone.
struct Tone {
    std::optional<Role> filled;
    std::optional<Role> framed;
    Role ink = Role::Ink;
};
Tone toneOf(const CellsDay& day, Day today) {
    if (isUncovered(day, today)) return {Role::DangerGround, {}, Role::DangerInk};
    if (isUncovered(day)) return {{}, {}, Role::Danger};
    if (isToFree(day) && day.day >= today) return {{}, Role::InkSoft, Role::Ink};
    return {};
}

void layLabel(const Tone& tone, const CellsDayLabel& label, const QRectF& plate, int target,
              bool onPlate, Sheet& sheet) {
    const qreal line = lineOf(sheet.ruler());
    if (onPlate) sheet.fill(Layer::Words, Role::Ground, plate, target, 3);
    const QRectF last(plate.left(), plate.bottom() - line - 1, plate.width(), line + 1);
    if (tone.filled) sheet.fill(Layer::Words, *tone.filled, last, target, 3);
    if (tone.framed) sheet.frame(Layer::Words, *tone.framed, last, sheet.snap().hair(), 3);
    for (std::size_t i = 0; i < label.lines.size(); ++i) {
        const auto role = i == 3 ? tone.ink : i == 0 || i == 2 ? Role::InkSoft : Role::Ink;
        const qreal middle = plate.top() + (static_cast<qreal>(i) + 0.5) * line;
        sheet.text(Layer::Words, role, label.lines[i].type, label.lines[i].text,
                   {plate.center().x(), sheet.baselineAt(label.lines[i].type, middle)},
                   Align::Middle, target);
    }
}

/// In one yard alone its own number says it.
bool hasTotal(const Outlook& outlook) { return outlook.nucs.yards.size() > 1; }

/// "today: 168 ready +358", of all yards, under the lane's name.
QString totalWords(const LaneInput& input, Day day) {
    const auto all = readyInAllYards(input.outlook, day);
    return chart_text::readyOn(cellsDayName(input, day), all.ready, wholeLikely(all));
}

/// In the line of the days, as it is of one, too. Can be asked: so it lies over the place that
/// folds the lane.
void layTotal(const LaneInput& input, const QRectF& row, Sheet& sheet) {
    const auto day = countedDay(input.outlook, input.options);
    if (!day || !hasTotal(input.outlook)) return;
    const auto& ruler = sheet.ruler();
    const qreal middle = row.top() + lineOf(ruler) / 2;
    const qreal height = ruler.line(Type::Strong);
    const QRectF line(0, middle - height / 2, input.titleRight, height);
    const int target = sheet.target({.hit = Hit::ReadyTotal, .day = day}, line);
    sheet.text(
        Layer::Names, Role::Ink, Type::Strong,
        ruler.elided(totalWords(input, *day), Type::Strong, input.titleRight - input.titleLeft),
        {input.titleRight, sheet.baselineAt(Type::Strong, line.center().y())}, Align::Right,
        target);
}

void layNames(const LaneInput& input, const QRectF& area, const QRectF& row, Sheet& sheet) {
    const qreal line = lineOf(sheet.ruler());
    sheet.text(Layer::Names, Role::Ink, Type::Label, chart_text::matingNucs(),
               {input.titleLeft,
                sheet.baselineAt(Type::Label, area.top() + sheet.ruler().line(Type::Label) / 2)},
               Align::Left);
    qreal y = row.top() + 1.5 * line;
    for (const auto& name :
         {chart_text::forNucsHead(), chart_text::readyHead(), chart_text::leftHead()}) {
        sheet.text(Layer::Names, Role::InkSoft, Type::Small, name,
                   {input.titleRight, sheet.baselineAt(Type::Small, y)}, Align::Right);
        y += line;
    }
}

/// Something runs through a place: its words want a ground of their own.
bool isCrossed(const LaneInput& input, const QRectF& place) {
    return input.ribbon.meets(place) || input.isCrossed(place);
}

}  // namespace

LaneHeight CellsDaysLane::height(const LaneInput& /*input*/, const TextRuler& ruler) const {
    const qreal height = ruler.line(Type::Label) + kTick + 1 + kLines * lineOf(ruler) + kAroundRows;
    return {height, height, height, 0};
}

void CellsDaysLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& snap = sheet.snap();
    const qreal rows = kLines * lineOf(sheet.ruler()) + 2;
    row_ = QRectF(area.left(), snap(area.bottom() - rows - 5), area.width(), snap(rows));
    head_ = QRectF(area.left(), area.top() + 1, area.width(),
                   std::max(0.0, row_.top() - kTick - 4 - area.top()));
    layNames(input, area, row_, sheet);
    for (const auto& day : input.outlook.nucs.cellsDays) {
        if (!input.visible.contains(day.day)) continue;
        const bool tooMany = isUncovered(day, input.outlook.snapshot.today());
        const auto role = tooMany ? Role::DangerGround : Role::InkSoft;
        sheet.fill(Layer::Body, role,
                   {snap(input.axis.middleOf(day.day)) - snap.hair(), row_.top() - kTick - 2,
                    2 * snap.hair(), kTick});
    }
}

namespace {

/// Days whose numbers have no room say so, where at least that fits, and can be asked there and at
/// their ticks.
void layOthers(const LaneInput& input, const QRectF& row, const std::vector<CellsDaySum>& placed,
               Sheet& sheet) {
    constexpr qreal kGrip = 4;
    constexpr qreal kAir = 3;
    const auto& days = input.outlook.nucs.cellsDays;
    const auto words = chart_text::noRoom();
    std::vector<QRectF> taken;
    for (const auto& sum : placed) taken.push_back(sum.plate);
    for (std::size_t i = 0; i < days.size(); ++i) {
        const bool isTold = std::any_of(placed.begin(), placed.end(),
                                        [&](const CellsDaySum& one) { return one.index == i; });
        if (isTold || !input.visible.contains(days[i].day)) continue;
        const qreal x = input.axis.middleOf(days[i].day);
        const TargetKey key{.hit = Hit::CellsDay, .day = days[i].day, .index = static_cast<int>(i)};
        sheet.target(key, {x - kGrip, row.top() - kTick - 2, 2 * kGrip, kTick});
        const QPointF at(x,
                         sheet.baselineAt(Type::Strong, row.top() + 1.5 * lineOf(sheet.ruler())));
        const auto place = sheet.textRect(Type::Strong, words, at, Align::Middle);
        const bool meets = std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) {
            return other.adjusted(-kAir, 0, kAir, 0).intersects(place);
        });
        if (meets || place.left() < input.axis.left() || place.right() > input.axis.right())
            continue;
        taken.push_back(place);
        const int target =
            sheet.target(key, {place.left(), row.top(), place.width(), row.height()});
        if (isCrossed(input, place))
            sheet.fill(Layer::Words, Role::Ground, place.adjusted(-2, -2, 2, 2), target, 2);
        sheet.text(Layer::Words, Role::InkSoft, Type::Strong, words, at, Align::Middle, target);
    }
}

}  // namespace

void CellsDaysLane::write(const LaneInput& input, Sheet& sheet) {
    layTotal(input, row_, sheet);
    layTroubles(input, lateBatches(input), head_, {}, sheet);
    const auto& days = input.outlook.nucs.cellsDays;
    labels_.begin(input);
    const auto all = cellsDaySums(input, row_, labels_, sheet.ruler());
    for (const auto& placed : all) {
        const auto& day = days[placed.index];
        const int target = sheet.target(
            {.hit = Hit::CellsDay, .day = day.day, .index = static_cast<int>(placed.index)},
            placed.plate);
        layLabel(toneOf(day, input.outlook.snapshot.today()), *placed.label, placed.plate, target,
                 isCrossed(input, placed.plate), sheet);
    }
    layOthers(input, row_, all, sheet);
}

}  // namespace tenthday
