#include "chart/cells_day_sums.h"

#include "chart/line_room.h"

namespace tenthday {
namespace {

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
    const bool isOverX = std::abs(place.left() - wished) <= wide / 2 - kLabelPad;
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
                                    CellsDayLabels& labels, const TextRuler& ruler) {
    const auto& days = input.outlook.nucs.cellsDays;
    std::vector<CellsDaySum> all;
    for (const auto index : byWeight(input, days)) {
        const auto& day = days[index];
        const auto taken = platesBut(all, nullptr);
        for (const bool brief : {false, true}) {
            const auto* label =
                named ? labels.of(input, day, brief, LeftWords::Named, ruler) : nullptr;
            if (label == nullptr) label = labels.of(input, day, brief, LeftWords::Fewest, ruler);
            const auto plate = placeFor(*label, input.axis.middleOf(day.day), row, input, taken);
            if (plate.isNull()) continue;
            all.push_back({index, brief, label, plate});
            break;
        }
    }
    return all;
}

/// Says more of what is left.
class SaysMore {
public:
    SaysMore(const LaneInput& input, const QRectF& row, CellsDayLabels& labels,
             const TextRuler& ruler)
        : input_(input), row_(row), labels_(labels), ruler_(ruler) {}

    /// Which batches have too many cells wherever there is room for that; and that it is nucs that
    /// are left, where all days can.
    void in(std::vector<CellsDaySum>& all) {
        const auto& days = input_.outlook.nucs.cellsDays;
        for (auto& placed : all)
            if (isUncovered(days[placed.index]))
                say({LeftWords::NamedWhole, LeftWords::Named, LeftWords::Whole}, placed,
                    platesBut(all, &placed));
        auto told = all;
        const bool canAll = std::all_of(told.begin(), told.end(), [&](CellsDaySum& placed) {
            return days[placed.index].left() < 0 || placed.brief ||
                   say({LeftWords::NucsLeft}, placed, platesBut(told, &placed));
        });
        if (canAll) all = std::move(told);
    }

private:
    /// In the first words that have room there. @return whether any have
    bool say(std::initializer_list<LeftWords> wordings, CellsDaySum& placed,
             const std::vector<QRectF>& taken) {
        const auto& day = input_.outlook.nucs.cellsDays[placed.index];
        for (const auto words : wordings) {
            const auto* label = labels_.of(input_, day, placed.brief, words, ruler_);
            if (label == nullptr) continue;
            const auto plate = placeFor(*label, input_.axis.middleOf(day.day), row_, input_, taken);
            if (plate.isNull()) continue;
            placed.label = label;
            placed.plate = plate;
            return true;
        }
        return false;
    }

    const LaneInput& input_;
    const QRectF& row_;
    CellsDayLabels& labels_;
    const TextRuler& ruler_;
};

/// How many days are told in whole words, and how many at all.
std::pair<std::ptrdiff_t, std::size_t> toldOf(const std::vector<CellsDaySum>& all) {
    return {
        std::count_if(all.begin(), all.end(), [](const CellsDaySum& one) { return !one.brief; }),
        all.size()};
}

}  // namespace

std::vector<CellsDaySum> cellsDaySums(const LaneInput& input, const QRectF& row,
                                      CellsDayLabels& labels, const TextRuler& ruler) {
    auto all = placedDays(input, row, false, labels, ruler);
    auto named = placedDays(input, row, true, labels, ruler);
    const auto [whole, told] = toldOf(all);
    const auto [wholeNamed, toldNamed] = toldOf(named);
    if (wholeNamed >= whole && toldNamed >= told) all = std::move(named);
    SaysMore(input, row, labels, ruler).in(all);
    return all;
}

}  // namespace tenthday
