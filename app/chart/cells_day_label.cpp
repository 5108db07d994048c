#include "chart/cells_day_label.h"

#include "screen_text/cells_sum_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

/// Too many only where nothing likely covers them: else what they hang on.
QString fewestWords(const CellsDay& day, bool brief, Day today) {
    // On a day that is over nothing can be freed any more.
    if (isToFree(day) && day.day < today)
        return brief ? chart_text::leftShort(day.left()) : chart_text::nucsShort(-day.left());
    if (isToFree(day))
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

/// Empty where there is nothing to say so.
QString leftText(const LaneInput& input, const CellsDay& day, bool brief, LeftWords words) {
    const auto fewest = fewestWords(day, brief, input.outlook.snapshot.today());
    if (words == LeftWords::Fewest) return fewest;
    if (words == LeftWords::NucsLeft)
        return day.left() < 0 ? QString() : cells_sum_text::leftInWords(day.left(), 0);
    if (!isUncovered(day)) return {};
    const auto whole = brief || words == LeftWords::Named
                           ? fewest
                           : cells_sum_text::leftInWords(day.left(), wholeLikely(day.numbers));
    if (words == LeftWords::Whole) return whole;
    return day.batches.empty() ? QString()
                               : cells_sum_text::ofBatches(batchesOf(input, day), whole);
}

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
        label.width = std::max(label.width, ruler.width(line.text, line.type) + 2 * kLabelPad);
    return label;
}

}  // namespace

int wholeLikely(const ReadyNumbers& numbers) {
    // A sum of chances may fall a rounding error short of the whole it is.
    return static_cast<int>(std::floor(numbers.likely + 1e-6));
}

bool isUncovered(const CellsDay& day) { return day.left() + wholeLikely(day.numbers) < 0; }
bool isUncovered(const CellsDay& day, Day today) { return day.day >= today && isUncovered(day); }
bool isToFree(const CellsDay& day) { return day.left() < 0 && !isUncovered(day); }

QString cellsDayName(const LaneInput& input, Day day) {
    return day == input.outlook.snapshot.today() ? chart_text::today() : shortDay(day);
}

void CellsDayLabels::begin(const LaneInput& input) {
    if (!input.isAsBefore) return kept_.clear();
    const auto& days = input.outlook.nucs.cellsDays;
    std::erase_if(kept_, [&](const auto& item) {
        return std::none_of(days.begin(), days.end(), [&](const CellsDay& day) {
            return day.day == item.first && isOf(item.second, input, day);
        });
    });
}

bool CellsDayLabels::isOf(const Kept& kept, const LaneInput& input, const CellsDay& day) {
    const auto& sum = kept.sum;
    return sum.ripe == day.ripe && sum.toNucs == day.toNucs &&
           sum.numbers.ready == day.numbers.ready && sum.numbers.likely == day.numbers.likely &&
           std::equal(kept.batches.begin(), kept.batches.end(), day.batches.begin(),
                      day.batches.end(), [&](const auto& batch, Id<Batch> id) {
                          return batch && batch == input.stacks.held(id);
                      });
}

const CellsDayLabel* CellsDayLabels::of(const LaneInput& input, const CellsDay& day, bool brief,
                                        LeftWords words, const TextRuler& ruler) {
    const auto [at, isNew] = kept_.try_emplace(day.day);
    auto& kept = at->second;
    if (isNew) {
        kept.sum = day;
        for (const auto id : day.batches) kept.batches.push_back(input.stacks.held(id));
    }
    auto& label = kept.labels[2 * static_cast<std::size_t>(words) + (brief ? 1 : 0)];
    if (!label) {
        const auto left = leftText(input, day, brief, words);
        label = left.isEmpty() ? CellsDayLabel() : labelOf(input, day, brief, left, ruler);
    }
    return label->width > 0 ? &*label : nullptr;
}

}  // namespace tenthday
