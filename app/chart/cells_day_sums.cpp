#include "chart/cells_day_sums.h"

#include "chart/cells_days_lane.h"
#include "chart/line_room.h"
#include "screen_text/cells_sum_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

constexpr qreal kPad = 5;

/// Too many only where nothing likely covers them: else what they hang on.
QString leftText(const CellsDay& day, bool brief) {
    if (day.left() < 0 && !isUncovered(day))
        return brief ? chart_text::nucsToFreeShort(-day.left())
                     : chart_text::nucsToFree(-day.left());
    return brief ? chart_text::leftShort(day.left())
                 : cells_sum_text::left(day.left(), wholeLikely(day.numbers));
}

/// Labels of the batches whose cells are ripe that day.
QStringList batchesOf(const LaneInput& input, const CellsDay& day) {
    QStringList labels;
    for (const auto id : day.batches)
        if (const auto* batch = input.find(id))
            labels.push_back(QString::fromStdString(batch->batch->label));
    return labels;
}

/// Which batches have too many cells; empty where none has.
QString namedText(const LaneInput& input, const CellsDay& day, const QString& left) {
    return isUncovered(day) && !day.batches.empty()
               ? cells_sum_text::ofBatches(batchesOf(input, day), left)
               : QString();
}

/// Cells too many in more words than they must have, from the most on: of which batches, and that
/// they are cells.
QStringList tooManyWords(const LaneInput& input, const CellsDay& day, bool brief) {
    const auto left = leftText(day, brief);
    const auto whole =
        brief ? left : cells_sum_text::leftInWords(day.left(), wholeLikely(day.numbers));
    QStringList words{namedText(input, day, whole), namedText(input, day, left), whole};
    words.removeAll(QString());
    return words;
}

/// @param brief  in the least room
CellsDayLabel labelOf(const LaneInput& input, const CellsDay& day, bool brief, const QString& left,
                      const TextRuler& ruler) {
    const int likely = wholeLikely(day.numbers);
    const int ready = day.numbers.ready;
    CellsDayLabel label;
    label.lines[0] = {cellsDayName(input, day.day), Type::Small};
    label.lines[1] = {cells_sum_text::ripe(day.ripe, day.toNucs, brief), Type::Strong};
    label.lines[2] = {
        brief ? chart_text::readyShort(ready, likely) : chart_text::ready(ready, likely),
        Type::Small};
    label.lines[3] = {left, Type::Strong};
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

/// The plate over x, or as near to that as it meets no other; null where it cannot.
QRectF placeFor(const CellsDayLabel& label, qreal x, const QRectF& row, const LaneInput& input,
                const std::vector<QRectF>& taken) {
    constexpr qreal kAir = 3;
    const qreal wide = label.width;
    const qreal wished = x - wide / 2;
    const LineRoom room({input.axis.left(), row.top(), input.axis.width(), row.height()}, taken,
                        kAir);
    const auto place = room.nearest(wished, wide);
    const bool isOverX = std::abs(place.left() - wished) <= wide / 2 - kPad;
    return isOverX ? place : QRectF();
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

std::vector<QRectF> platesBut(const std::vector<CellsDaySum>& all, const CellsDaySum* one) {
    std::vector<QRectF> plates;
    for (const auto& placed : all)
        if (&placed != one) plates.push_back(placed.plate);
    return plates;
}

/// Those that matter most first; in few words where whole ones have no room.
/// @param named  says which batches have too many cells
std::vector<CellsDaySum> placedDays(const LaneInput& input, const QRectF& row, bool named,
                                    const TextRuler& ruler) {
    const auto& days = input.outlook.nucs.cellsDays;
    std::vector<CellsDaySum> all;
    for (const auto index : byWeight(input, days)) {
        const auto& day = days[index];
        const auto taken = platesBut(all, nullptr);
        for (const bool brief : {false, true}) {
            const auto left = leftText(day, brief);
            const auto name = named ? namedText(input, day, left) : QString();
            const auto label = labelOf(input, day, brief, name.isEmpty() ? left : name, ruler);
            const auto plate = placeFor(label, input.axis.middleOf(day.day), row, input, taken);
            if (plate.isNull()) continue;
            all.push_back({index, brief, label, plate});
            break;
        }
    }
    return all;
}

/// Says what is left in the first words that have room there. @return whether any have
bool say(const LaneInput& input, const QStringList& wordings, const QRectF& row,
         const TextRuler& ruler, CellsDaySum& placed, const std::vector<QRectF>& taken) {
    const auto& day = input.outlook.nucs.cellsDays[placed.index];
    for (const auto& words : wordings) {
        const auto label = labelOf(input, day, placed.brief, words, ruler);
        const auto plate = placeFor(label, input.axis.middleOf(day.day), row, input, taken);
        if (plate.isNull()) continue;
        placed.label = label;
        placed.plate = plate;
        return true;
    }
    return false;
}

/// Says which batches have too many cells wherever there is room for that; and that it is nucs
/// that are left, where all days can.
void sayMore(const LaneInput& input, const QRectF& row, const TextRuler& ruler,
             std::vector<CellsDaySum>& all) {
    const auto& days = input.outlook.nucs.cellsDays;
    for (auto& placed : all)
        if (isUncovered(days[placed.index]))
            say(input, tooManyWords(input, days[placed.index], placed.brief), row, ruler, placed,
                platesBut(all, &placed));
    auto told = all;
    const bool canAll = std::all_of(told.begin(), told.end(), [&](CellsDaySum& placed) {
        const int left = days[placed.index].left();
        return left < 0 || placed.brief ||
               say(input, {cells_sum_text::leftInWords(left, 0)}, row, ruler, placed,
                   platesBut(told, &placed));
    });
    if (canAll) all = std::move(told);
}

/// How many days are told in whole words, and how many at all.
std::pair<std::ptrdiff_t, std::size_t> toldOf(const std::vector<CellsDaySum>& all) {
    return {
        std::count_if(all.begin(), all.end(), [](const CellsDaySum& one) { return !one.brief; }),
        all.size()};
}

}  // namespace

QString cellsDayName(const LaneInput& input, Day day) {
    return day == input.outlook.snapshot.today() ? chart_text::today() : shortDay(day);
}

std::vector<CellsDaySum> cellsDaySums(const LaneInput& input, const QRectF& row,
                                      const TextRuler& ruler) {
    auto all = placedDays(input, row, false, ruler);
    auto named = placedDays(input, row, true, ruler);
    const auto [whole, told] = toldOf(all);
    const auto [wholeNamed, toldNamed] = toldOf(named);
    if (wholeNamed >= whole && toldNamed >= told) all = std::move(named);
    sayMore(input, row, ruler, all);
    return all;
}

}  // namespace tenthday
