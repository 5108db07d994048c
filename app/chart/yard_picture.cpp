#include "chart/yard_picture.h"

#include "chart/bands.h"

namespace tenthday {
namespace {

/// The same band over several days, drawn in one piece.
struct Stretch {
    BandRun run;
    QRectF rect;
    int target;
};

/// Joins what goes on unchanged from day to day. Runs of a day come from the foot up, and so do the
/// stretches that are open: each looks no further than where it would stand.
class Stretches {
public:
    Stretches(qreal dayWidth, const Snap& snap, Sheet& sheet)
        : gap_(dayGap(dayWidth, snap)), sheet_(sheet) {}
    ~Stretches() {
        for (const auto& stretch : open_) finish(stretch);
    }

    /// Days come one after the other.
    void add(const DayColumn& column, const std::vector<int>& targets) {
        next_.clear();
        auto before = open_.begin();
        for (std::size_t i = 0; i < column.boxes.size(); ++i) {
            const auto& box = column.boxes[i];
            if (gap_ > 0 && isCounted(box.run.band)) {
                layBand(box.run.band, box.rect, gap_, sheet_, targets[i]);
                continue;
            }
            for (; before != open_.end() && before->run.from < box.run.from; ++before)
                finish(*before);
            if (before != open_.end() && before->run == box.run) {
                next_.push_back(*before++);
                next_.back().rect.setRight(box.rect.right());
            } else {
                next_.push_back({box.run, box.rect, targets[i]});
            }
        }
        for (; before != open_.end(); ++before) finish(*before);
        std::swap(open_, next_);
    }

private:
    void finish(const Stretch& stretch) {
        layBand(stretch.run.band, stretch.rect, isCounted(stretch.run.band) ? gap_ : 0, sheet_,
                stretch.target);
    }
    qreal gap_;
    Sheet& sheet_;
    std::vector<Stretch> open_;  ///< up to the day before
    std::vector<Stretch> next_;  ///< up to the day that is added
};

}  // namespace

QRectF YardPicture::tallest(std::size_t column, Band band, std::optional<Id<Batch>> batch) const {
    QRectF best;
    for (const auto& box : columns[column].boxes)
        if (box.run.band == band && (!batch || box.run.batch == batch) &&
            box.rect.height() > best.height())
            best = box.rect;
    return best;
}

void YardPicture::moveDown(qreal by) {
    for (auto& column : columns)
        for (auto& box : column.boxes) box.rect.translate(0, by);
    for (auto& block : blocks) block.top += by, block.bottom += by;
}

YardPicture yardPicture(const LaneInput& input, const YardOutlook& yard, const DayWindow& days,
                        const QRectF& area, const Snap& snap) {
    YardPicture picture;
    picture.yard = &yard;
    const qreal pxPerNuc = area.height() / std::max(1, yard.mostSides);
    const auto yOf = [&](double nucs) { return area.bottom() - nucs * pxPerNuc; };
    for (const auto& place : input.stacks.places(yard))
        picture.blocks.push_back(
            {place.batch, snap(yOf(place.to)), snap(yOf(place.from)), place.to - place.from});
    for (Day day = days.first; day <= days.last; day += Days{1}) {
        DayColumn column{day, {}, {}};
        const auto index = (day - input.outlook.season.first).count();
        if (index >= 0 && index < static_cast<int>(yard.days.size()))
            column.numbers = yard.days[static_cast<std::size_t>(index)].numbers;
        const qreal left = std::max(input.axis.xOf(day), input.axis.left());
        const qreal right = std::min(input.axis.xOf(day + Days{1}), input.axis.right());
        const auto width = snap.rect(left, 0, right, 0);
        const auto& runs = input.stacks.on(yard, day);
        column.boxes.reserve(runs.size());
        for (const auto& run : runs) {
            const qreal top = snap(yOf(static_cast<double>(run.to)));
            const qreal bottom = snap(yOf(static_cast<double>(run.from)));
            if (top < bottom)
                column.boxes.push_back({run, {width.left(), top, width.width(), bottom - top}});
        }
        picture.columns.push_back(std::move(column));
    }
    return picture;
}

void layColumns(const LaneInput& input, const YardPicture& picture, Sheet& sheet) {
    Stretches stretches(input.axis.dayWidth(), sheet.snap(), sheet);
    const bool names = input.namesYardDays();
    std::size_t count = 0;
    for (const auto& column : picture.columns) count += column.boxes.size();
    if (names) sheet.expectTargets(count);
    std::vector<int> targets;
    for (const auto& column : picture.columns) {
        targets.assign(column.boxes.size(), -1);
        for (std::size_t i = 0; names && i < column.boxes.size(); ++i) {
            const auto& box = column.boxes[i];
            targets[i] = sheet.target({.hit = Hit::YardDay,
                                       .batch = box.run.batch.value_or(Id<Batch>{}),
                                       .yard = picture.yard->yard->id,
                                       .day = column.day,
                                       .index = static_cast<int>(box.run.band)},
                                      box.rect);
        }
        stretches.add(column, targets);
    }
}

}  // namespace tenthday
