#include "chart/slice_plates.h"

#include <array>

#include "chart/bands.h"
#include "chart/counted_day.h"

namespace tenthday {
namespace {

constexpr qreal kPadX = 3;
constexpr qreal kPadY = 2;
constexpr qreal kLeastSlice = 2;  ///< px: a lower one is no slice one could point at

/// Columns from `first` up to `end` with the same number and a slice to be seen.
struct Run {
    std::size_t first = 0;
    std::size_t end = 0;
};

/// The tallest slice of each column; null where it has none that can be seen and counted.
std::vector<QRectF> slicesOf(const YardPicture& picture, const BandNumbers& numbers) {
    std::vector<QRectF> slices(picture.columns.size());
    for (std::size_t i = 0; i < slices.size(); ++i) {
        if (numbers.texts[i].isEmpty()) continue;
        const auto slice = picture.tallest(i, numbers.band);
        if (slice.height() >= kLeastSlice) slices[i] = slice;
    }
    return slices;
}

/// Those without their number yet.
std::vector<Run> runsOf(const std::vector<QRectF>& slices, const BandNumbers& numbers) {
    std::vector<Run> runs;
    for (std::size_t i = 0; i < slices.size(); ++i) {
        if (slices[i].isNull()) continue;
        const bool goesOn =
            !runs.empty() && runs.back().end == i && numbers.texts[i - 1] == numbers.texts[i];
        if (goesOn)
            runs.back().end = i + 1;
        else
            runs.push_back({i, i + 1});
    }
    std::erase_if(runs, [&](const Run& run) {
        const auto written = numbers.written.begin();
        return std::find(written + static_cast<std::ptrdiff_t>(run.first),
                         written + static_cast<std::ptrdiff_t>(run.end),
                         true) != written + static_cast<std::ptrdiff_t>(run.end);
    });
    return runs;
}

/// px by which the plate of the counted day may stand over its neighbours.
constexpr qreal kOver = 5;

class Plates {
public:
    Plates(const LaneInput& input, const YardPicture& picture, const BandNumbers& numbers,
           std::vector<QRectF>& taken, Sheet& sheet)
        : input_(input),
          picture_(picture),
          numbers_(numbers),
          counted_(countedDay(input.outlook, input.options)),
          slices_(slicesOf(picture, numbers)),
          taken_(taken),
          sheet_(sheet) {}

    void lay() {
        for (const auto& run : runsOf(slices_, numbers_)) lay(run);
    }

private:
    /// On the day whose nucs are counted in words, over its line; else on a cells day, else on the
    /// first day with room, where lines of days run through only if there is no other.
    void lay(const Run& run) {
        const auto& text = numbers_.texts[run.first];
        const auto& ruler = sheet_.ruler();
        const QSizeF size(ruler.width(text, Type::Number) + 2 * kPadX,
                          ruler.capHeight(Type::Number) + 2 * kPadY);
        const bool isNarrow =
            slices_[run.end - 1].right() - slices_[run.first].left() < size.width() + 3;
        if (isNarrow && !holdsCounted(run)) return;
        std::optional<QRectF> crossed;
        for (const auto column : inOrder(run)) {
            const auto plate = placeAt(run, column, size);
            if (!plate) continue;
            if (isCounted(column) || !input_.isCrossed(*plate)) return write(text, *plate);
            crossed = crossed.value_or(*plate);
        }
        if (crossed) write(text, *crossed);
    }

    /// Its nucs are counted in words beside the lane.
    [[nodiscard]] bool isCounted(std::size_t column) const {
        return counted_ == picture_.columns[column].day;
    }
    [[nodiscard]] bool holdsCounted(const Run& run) const {
        for (auto i = run.first; i < run.end; ++i)
            if (isCounted(i)) return true;
        return false;
    }

    [[nodiscard]] std::vector<std::size_t> inOrder(const Run& run) const {
        const auto& cellsDays = input_.outlook.nucs.cellsDays;
        std::array<std::vector<std::size_t>, 3> columns;  // by how much they matter, least last
        for (std::size_t i = run.first; i < run.end; ++i) {
            const Day day = picture_.columns[i].day;
            const bool isCellsDay = std::any_of(cellsDays.begin(), cellsDays.end(),
                                                [&](const auto& of) { return of.day == day; });
            columns[isCounted(i) ? 0 : isCellsDay ? 1 : 2].push_back(i);
        }
        for (const auto& more : {columns[1], columns[2]})
            columns[0].insert(columns[0].end(), more.begin(), more.end());
        return columns[0];
    }

    /// About a column, within the days of the run (on the counted day in the middle of it) and the
    /// yard; none where it meets something.
    [[nodiscard]] std::optional<QRectF> placeAt(const Run& run, std::size_t column,
                                                const QSizeF& size) const {
        const auto& slice = slices_[column];
        const qreal first = slices_[run.first].left() + 1;
        const qreal last = slices_[run.end - 1].right() - 2 - size.width();
        const qreal middle = slice.center().x() - size.width() / 2;
        if (!isCounted(column) && last < first) return std::nullopt;
        const qreal left = isCounted(column) ? middle : std::clamp(middle, first, last);
        // Over days that count otherwise it would read as theirs.
        if (left < first - kOver || left > last + kOver) return std::nullopt;
        if (left < input_.axis.left() || left + size.width() > input_.axis.right())
            return std::nullopt;
        const auto& boxes = picture_.columns[column].boxes;
        const qreal lowest = boxes.front().rect.bottom() - size.height();
        const qreal top = std::clamp(slice.center().y() - size.height() / 2,
                                     std::min(boxes.back().rect.top(), lowest), lowest);
        const QRectF plate(QPointF(left, sheet_.snap()(top)), size);
        if (!isOverSlices(run, column, plate) || input_.ribbon.meets(plate)) return std::nullopt;
        const auto near = plate.adjusted(-3, -1, 3, 1);
        const bool meets = std::any_of(taken_.begin(), taken_.end(),
                                       [&](const QRectF& other) { return other.intersects(near); });
        return meets ? std::nullopt : std::optional(plate);
    }

    /// Under all of the plate runs the slice that it counts; but for a little over narrow days,
    /// where the plate stands in the middle of the counted one.
    [[nodiscard]] bool isOverSlices(const Run& run, std::size_t column, const QRectF& plate) const {
        const auto meets = [&](std::size_t i) {
            return slices_[i].top() <= plate.bottom() && slices_[i].bottom() >= plate.top();
        };
        const qreal over = isCounted(column) ? kOver : 0;
        for (auto i = column; i < run.end && slices_[i].left() < plate.right() - over; ++i)
            if (!meets(i)) return false;
        for (auto i = column; i > run.first && slices_[i - 1].right() > plate.left() + over; --i)
            if (!meets(i - 1)) return false;
        return true;
    }

    void write(const QString& text, const QRectF& plate) {
        const bool likely = numbers_.band == Band::Likely;
        taken_.push_back(plate);
        sheet_.fill(Layer::Words, groundOf(numbers_.band), plate, -1, 2);
        sheet_.frame(Layer::Words, likely ? Role::LikelyHatch : Role::ReadyEdge, plate,
                     sheet_.snap().hair(), 2);
        sheet_.text(Layer::Words, likely ? Role::LikelyInk : Role::ReadyInk, Type::Number, text,
                    {plate.center().x(), sheet_.baselineAt(Type::Number, plate.center().y())},
                    Align::Middle);
    }

    const LaneInput& input_;
    const YardPicture& picture_;
    const BandNumbers& numbers_;
    std::optional<Day> counted_;
    std::vector<QRectF> slices_;
    std::vector<QRectF>& taken_;
    Sheet& sheet_;
};

}  // namespace

void laySlicePlates(const LaneInput& input, const YardPicture& picture, const BandNumbers& numbers,
                    std::vector<QRectF>& taken, Sheet& sheet) {
    Plates(input, picture, numbers, taken, sheet).lay();
}

}  // namespace tenthday
