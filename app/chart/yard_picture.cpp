#include "chart/yard_picture.h"

#include "chart/bands.h"

namespace tenthday {
namespace {

/// The same band over several days, drawn in one piece.
struct Stretch {
    BandRun run;
    QRectF rect;
    Day last;
    int target;
};

/// Joins what goes on unchanged from day to day.
class Stretches {
public:
    Stretches(qreal dayWidth, const Snap& snap, Sheet& sheet)
        : gap_(dayGap(dayWidth, snap)), sheet_(sheet) {}
    ~Stretches() {
        for (const auto& stretch : open_) finish(stretch);
    }

    void add(const DayColumn& column, const std::vector<int>& targets) {
        for (std::size_t i = 0; i < column.boxes.size(); ++i) {
            const auto& box = column.boxes[i];
            if (gap_ > 0 && isCounted(box.run.band)) {
                layBand(box.run.band, box.rect, gap_, sheet_, targets[i]);
                continue;
            }
            const auto same = std::find_if(open_.begin(), open_.end(), [&](const Stretch& other) {
                return other.last + Days{1} == column.day && other.run == box.run;
            });
            if (same != open_.end()) {
                same->rect.setRight(box.rect.right());
                same->last = column.day;
            } else {
                open_.push_back({box.run, box.rect, column.day, targets[i]});
            }
        }
        const auto ended = std::stable_partition(
            open_.begin(), open_.end(),
            [&](const Stretch& stretch) { return stretch.last == column.day; });
        std::for_each(ended, open_.end(), [&](const Stretch& stretch) { finish(stretch); });
        open_.erase(ended, open_.end());
    }

private:
    void finish(const Stretch& stretch) {
        layBand(stretch.run.band, stretch.rect, isCounted(stretch.run.band) ? gap_ : 0, sheet_,
                stretch.target);
    }
    qreal gap_;
    Sheet& sheet_;
    std::vector<Stretch> open_;
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

YardPicture yardPicture(const LaneInput& input, const YardOutlook& yard, const QRectF& area,
                        const Snap& snap) {
    YardPicture picture;
    picture.yard = &yard;
    const qreal pxPerNuc = area.height() / std::max(1, yard.mostSides);
    const auto yOf = [&](double nucs) { return area.bottom() - nucs * pxPerNuc; };
    for (const auto& place : input.stacks.places(yard))
        picture.blocks.push_back(
            {place.batch, snap(yOf(place.to)), snap(yOf(place.from)), place.to - place.from});
    for (Day day = input.visible.first; day <= input.visible.last; day += Days{1}) {
        DayColumn column{day, {}, {}};
        const auto index = (day - input.outlook.season.first).count();
        if (index >= 0 && index < static_cast<int>(yard.days.size()))
            column.numbers = yard.days[static_cast<std::size_t>(index)].numbers;
        const qreal left = std::max(input.axis.xOf(day), input.axis.left());
        const qreal right = std::min(input.axis.xOf(day + Days{1}), input.axis.right());
        for (const auto& run : input.stacks.on(yard, day)) {
            const auto rect = snap.rect(left, yOf(static_cast<double>(run.to)), right,
                                        yOf(static_cast<double>(run.from)));
            if (rect.height() > 0) column.boxes.push_back({run, rect});
        }
        picture.columns.push_back(std::move(column));
    }
    return picture;
}

void layColumns(const LaneInput& input, const YardPicture& picture, Sheet& sheet) {
    Stretches stretches(input.axis.dayWidth(), sheet.snap(), sheet);
    for (const auto& column : picture.columns) {
        std::vector<int> targets;
        for (const auto& box : column.boxes)
            targets.push_back(sheet.target({.hit = Hit::YardDay,
                                            .batch = box.run.batch.value_or(Id<Batch>{}),
                                            .yard = picture.yard->yard->id,
                                            .day = column.day,
                                            .index = static_cast<int>(box.run.band)},
                                           box.rect));
        stretches.add(column, targets);
    }
}

}  // namespace tenthday
