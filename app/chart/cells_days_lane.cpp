#include "chart/cells_days_lane.h"

#include <array>

#include "chart/trouble_line.h"
#include "screen_text/cells_sum_text.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr qreal kPad = 5;
constexpr qreal kTick = 5;

struct LabelLine {
    QString text;
    Type type;
};
struct Label {
    std::array<LabelLine, 3> lines;
    qreal width = 0;
};

qreal lineOf(const TextRuler& ruler) { return ruler.line(Type::Small); }

/// Cells for which there is no ready nuc, and none likely either.
bool isUncovered(const CellsDay& day) { return day.left() + wholeLikely(day.numbers) < 0; }

/// Too many only where nothing likely covers them: else what they hang on.
QString leftText(const CellsDay& day, bool brief) {
    if (brief) return chart_text::leftShort(day.left());
    return day.left() < 0 && !isUncovered(day) ? chart_text::needCatch(-day.left())
                                               : chart_text::left(day.left());
}

Label labelOf(const CellsDay& day, bool brief, const TextRuler& ruler) {
    const int likely = wholeLikely(day.numbers);
    const int ready = day.numbers.ready;
    Label label;
    label.lines[0] = {cells_sum_text::ripe(day.ripe, day.toNucs, brief), Type::Strong};
    label.lines[1] = {
        brief ? chart_text::readyShort(ready, likely) : chart_text::ready(ready, likely),
        Type::Small};
    label.lines[2] = {leftText(day, brief), Type::Strong};
    for (const auto& line : label.lines)
        label.width = std::max(label.width, ruler.width(line.text, line.type) + 2 * kPad);
    return label;
}

int weightOf(const LaneInput& input, const CellsDay& day) {
    const bool selected = std::any_of(day.batches.begin(), day.batches.end(),
                                      [&](Id<Batch> batch) { return input.isSelected(batch); });
    return (selected ? 4 : 0) + (input.options.chosenDay == day.day ? 2 : 0) +
           (day.left() < 0 ? 1 : 0);
}

void layLabel(const CellsDay& day, const Label& label, const QRectF& plate, int target,
              bool onPlate, Sheet& sheet) {
    const qreal line = lineOf(sheet.ruler());
    const bool tooMany = day.left() < 0;
    const bool uncovered = isUncovered(day);
    if (onPlate) sheet.fill(Layer::Words, Role::Ground, plate, target, 3);
    const QRectF last(plate.left(), plate.bottom() - line - 1, plate.width(), line + 1);
    // Too many has a shape of its own: filled where nothing is likely to help, else framed.
    if (tooMany && uncovered)
        sheet.fill(Layer::Words, Role::DangerGround, last, target, 3);
    else if (tooMany)
        sheet.frame(Layer::Words, Role::Caution, last, 1.2, 3);
    for (std::size_t i = 0; i < label.lines.size(); ++i) {
        const auto role = i == 2 && tooMany ? (uncovered ? Role::DangerInk : Role::Caution)
                          : i == 1          ? Role::InkSoft
                                            : Role::Ink;
        const qreal middle = plate.top() + (static_cast<qreal>(i) + 0.5) * line;
        sheet.text(Layer::Words, role, label.lines[i].type, label.lines[i].text,
                   {plate.center().x(), sheet.baselineAt(label.lines[i].type, middle)},
                   Align::Middle, target);
    }
}

/// The plate over x, or beside its middle, where it meets no other; null where it cannot.
QRectF placeFor(const Label& label, qreal x, const QRectF& row, const LaneInput& input,
                const std::vector<QRectF>& taken) {
    const qreal slack = label.width / 2 - kPad;
    for (const qreal shift : {0.0, -slack / 2, slack / 2, -slack, slack}) {
        const QRectF plate(x - label.width / 2 + shift, row.top(), label.width, row.height());
        if (plate.left() < input.axis.left() || plate.right() > input.axis.right()) continue;
        const bool meets = std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) {
            return other.adjusted(-3, 0, 3, 0).intersects(plate);
        });
        if (!meets) return plate;
    }
    return {};
}

void layNames(const LaneInput& input, const QRectF& area, const QRectF& row, Sheet& sheet) {
    const qreal line = lineOf(sheet.ruler());
    sheet.text(Layer::Names, Role::Ink, Type::Label, chart_text::matingNucs(),
               {input.titleLeft,
                sheet.baselineAt(Type::Label, area.top() + sheet.ruler().line(Type::Label) / 2)},
               Align::Left);
    qreal y = row.top() + line / 2;
    for (const auto& name :
         {chart_text::ripeHead(), chart_text::readyHead(), chart_text::leftHead()}) {
        sheet.text(Layer::Names, Role::InkSoft, Type::Small, name,
                   {input.titleRight, sheet.baselineAt(Type::Small, y)}, Align::Right);
        y += line;
    }
}

/// Days to be seen, those that matter most first: they get their room first.
std::vector<std::size_t> byWeight(const LaneInput& input, const std::vector<CellsDay>& days) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < days.size(); ++i)
        if (input.visible.contains(days[i].day)) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return weightOf(input, days[a]) > weightOf(input, days[b]);
    });
    return order;
}

/// Something runs through a place: its words want a ground of their own.
bool isCrossed(const LaneInput& input, const QRectF& place) {
    const auto& axis = input.axis;
    const auto crosses = [&](qreal x) { return place.left() - 2 < x && x < place.right() + 2; };
    const auto chosen = input.options.chosenDay;
    return input.ribbon.meets(place) || crosses(axis.xOf(input.outlook.snapshot.today())) ||
           (chosen && (crosses(axis.xOf(*chosen)) || crosses(axis.xOf(*chosen + Days{1}))));
}

}  // namespace

int wholeLikely(const ReadyNumbers& numbers) {
    // A sum of chances may fall a rounding error short of the whole it is.
    return static_cast<int>(std::floor(numbers.likely + 1e-6));
}

LaneHeight CellsDaysLane::height(const LaneInput& /*input*/, const TextRuler& ruler) const {
    const qreal height = ruler.line(Type::Label) + 3 * lineOf(ruler) + kTick + 8;
    return {height, height, height, 0};
}

void CellsDaysLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto& snap = sheet.snap();
    const qreal rows = 3 * lineOf(sheet.ruler()) + 2;
    row_ = QRectF(area.left(), snap(area.bottom() - rows - 5), area.width(), snap(rows));
    head_ = QRectF(area.left(), area.top() + 1, area.width(),
                   std::max(0.0, row_.top() - kTick - 4 - area.top()));
    layNames(input, area, row_, sheet);
    for (const auto& day : input.outlook.nucs.cellsDays) {
        if (!input.visible.contains(day.day)) continue;
        const auto role = isUncovered(day) ? Role::DangerGround : Role::InkSoft;
        sheet.fill(Layer::Body, role,
                   {snap(input.axis.middleOf(day.day)) - snap.hair(), row_.top() - kTick - 2,
                    2 * snap.hair(), kTick});
    }
}

void CellsDaysLane::write(const LaneInput& input, Sheet& sheet) {
    layTroubles(input, lateBatches(input), head_, {}, sheet);
    const auto& days = input.outlook.nucs.cellsDays;
    std::vector<QRectF> taken;
    for (const auto index : byWeight(input, days)) {
        const auto& day = days[index];
        for (const bool brief : {false, true}) {
            const auto label = labelOf(day, brief, sheet.ruler());
            const auto plate = placeFor(label, input.axis.middleOf(day.day), row_, input, taken);
            if (plate.isNull()) continue;
            taken.push_back(plate);
            const int target = sheet.target(
                {.hit = Hit::CellsDay, .day = day.day, .index = static_cast<int>(index)}, plate);
            layLabel(day, label, plate, target, isCrossed(input, plate), sheet);
            break;
        }
    }
}

}  // namespace tenthday
