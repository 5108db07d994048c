#include "chart/cells_days_lane.h"

#include <array>

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

Label labelOf(const CellsDay& day, bool brief, const TextRuler& ruler) {
    const int likely = wholeLikely(day.numbers);
    const int ready = day.numbers.ready;
    Label label;
    label.lines[0] = {brief ? chart_text::number(day.ripe) : chart_text::ripe(day.ripe),
                      Type::Strong};
    label.lines[1] = {
        brief ? chart_text::readyShort(ready, likely) : chart_text::ready(ready, likely),
        Type::Small};
    label.lines[2] = {brief ? chart_text::leftShort(day.left()) : chart_text::left(day.left()),
                      Type::Strong};
    for (const auto& line : label.lines)
        label.width = std::max(label.width, ruler.width(line.text, line.type) + 2 * kPad);
    return label;
}

/// Cells for which there is no ready nuc, and none likely either.
bool isUncovered(const CellsDay& day) { return day.left() + wholeLikely(day.numbers) < 0; }

int weightOf(const LaneInput& input, const CellsDay& day) {
    const bool selected = std::any_of(day.batches.begin(), day.batches.end(),
                                      [&](Id<Batch> batch) { return input.isSelected(batch); });
    return (selected ? 4 : 0) + (input.options.chosenDay == day.day ? 2 : 0) +
           (day.left() < 0 ? 1 : 0);
}

void layLabel(const CellsDay& day, const Label& label, const QRectF& plate, int target,
              Sheet& sheet) {
    const qreal line = lineOf(sheet.ruler());
    const bool tooMany = day.left() < 0;
    const bool uncovered = isUncovered(day);
    sheet.fill(Layer::Words, Role::Ground, plate, target, 3);
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

}  // namespace

int wholeLikely(const ReadyNumbers& numbers) {
    // A sum of chances may fall a rounding error short of the whole it is.
    return static_cast<int>(std::floor(numbers.likely + 1e-6));
}

LaneHeight CellsDaysLane::height(const LaneInput& /*input*/, const TextRuler& ruler) const {
    const qreal height = ruler.line(Type::Label) + 3 * lineOf(ruler) + kTick + 8;
    return {height, height, height, 0};
}

void CellsDaysLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) const {
    const auto& snap = sheet.snap();
    const qreal rows = 3 * lineOf(sheet.ruler()) + 2;
    const QRectF row(area.left(), snap(area.bottom() - rows - 5), area.width(), snap(rows));
    layNames(input, area, row, sheet);

    const auto& days = input.outlook.nucs.cellsDays;
    std::vector<int> order;
    for (std::size_t i = 0; i < days.size(); ++i)
        if (input.visible.contains(days[i].day)) order.push_back(static_cast<int>(i));
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
        return weightOf(input, days[static_cast<std::size_t>(a)]) >
               weightOf(input, days[static_cast<std::size_t>(b)]);
    });
    std::vector<QRectF> taken;
    for (const int index : order) {
        const auto& day = days[static_cast<std::size_t>(index)];
        const qreal x = input.axis.middleOf(day.day);
        const auto tickRole = isUncovered(day) ? Role::DangerGround : Role::InkSoft;
        sheet.fill(Layer::Body, tickRole,
                   {snap(x) - snap.hair(), row.top() - kTick - 2, 2 * snap.hair(), kTick});
        for (const bool brief : {false, true}) {
            const auto label = labelOf(day, brief, sheet.ruler());
            const auto plate = placeFor(label, x, row, input, taken);
            if (plate.isNull()) continue;
            taken.push_back(plate);
            const int target =
                sheet.target({.hit = Hit::CellsDay, .day = day.day, .index = index}, plate);
            layLabel(day, label, plate, target, sheet);
            break;
        }
    }
}

}  // namespace tenthday
