#include "chart/trouble_line.h"

#include "look/space.h"
#include "screen_text/flying_text.h"
#include "screen_text/trouble_text.h"
#include "timeline/late.h"

namespace tenthday {
namespace {

constexpr qreal kSign = 9;
constexpr qreal kToWord = space::kInset;
constexpr qreal kBetween = 14;

/// Room along a line that is given away piece by piece.
class LineRoom {
public:
    LineRoom(const QRectF& line, std::vector<QRectF> taken)
        : line_(line), taken_(std::move(taken)) {}

    /// The free place of such a width nearest to x; null where there is none. It is taken then.
    QRectF take(qreal x, qreal width) {
        std::vector<qreal> starts{x, line_.right() - width};
        for (const auto& other : taken_) {
            starts.push_back(other.right() + kBetween);
            starts.push_back(other.left() - kBetween - width);
        }
        std::optional<qreal> best;
        for (const qreal start : starts)
            if (isFree(start, width) && (!best || std::abs(start - x) < std::abs(*best - x)))
                best = start;
        if (!best) return {};
        taken_.push_back(rectAt(*best, width));
        return taken_.back();
    }
    void giveBack() { taken_.pop_back(); }

private:
    [[nodiscard]] QRectF rectAt(qreal left, qreal width) const {
        return {left, line_.top(), width, line_.height()};
    }
    [[nodiscard]] bool isFree(qreal left, qreal width) const {
        if (left < line_.left() || left + width > line_.right()) return false;
        const auto wanted = rectAt(left, width).adjusted(1 - kBetween, 0, kBetween - 1, 0);
        return std::none_of(taken_.begin(), taken_.end(),
                            [&](const QRectF& other) { return other.intersects(wanted); });
    }
    QRectF line_;
    std::vector<QRectF> taken_;
};

void write(const LaneInput& input, const Trouble& trouble, const QRectF& place, Sheet& sheet) {
    const int target = sheet.target(trouble.key, place);
    const qreal middle = place.center().y();
    if (input.isCrossed(place) || input.ribbon.meets(place))
        sheet.fill(Layer::Words, Role::Ground, place.adjusted(-2, 0, 2, 0), target, 2);
    sheet.glyph(Layer::Words, trouble.role, Glyph::Warning, {place.left() + kSign / 2, middle},
                kSign, target);
    sheet.text(Layer::Words, trouble.role, Type::Strong, trouble.text,
               {place.left() + kSign + kToWord, sheet.baselineAt(Type::Strong, middle)},
               Align::Left, target);
}

/// Trouble by trouble its place; fewer where the words for the rest would else have none.
std::vector<QRectF> placesFor(const LaneInput& input, const std::vector<Trouble>& troubles,
                              LineRoom& room, QRectF& more, const TextRuler& ruler) {
    std::vector<QRectF> places;
    for (const auto& trouble : troubles) {
        const qreal width = kSign + kToWord + ruler.width(trouble.text, Type::Strong);
        const auto place = room.take(std::max(trouble.x, input.axis.left()), width);
        if (place.isNull()) break;
        places.push_back(place);
    }
    const auto all = static_cast<int>(troubles.size());
    while (static_cast<int>(places.size()) < all) {
        const auto words = trouble_text::more(all - static_cast<int>(places.size()));
        const qreal beside = places.empty() ? input.axis.left() : places.back().right() + kBetween;
        more = room.take(beside, ruler.width(words, Type::Small));
        if (!more.isNull() || places.empty()) break;
        room.giveBack();
        places.pop_back();
    }
    return places;
}

}  // namespace

void layTroubles(const LaneInput& input, std::vector<Trouble> troubles, const QRectF& line,
                 const std::vector<QRectF>& taken, Sheet& sheet) {
    std::stable_sort(troubles.begin(), troubles.end(),
                     [](const auto& a, const auto& b) { return a.weight > b.weight; });
    LineRoom room(line, taken);
    QRectF more;
    const auto places = placesFor(input, troubles, room, more, sheet.ruler());
    for (std::size_t i = 0; i < places.size(); ++i) write(input, troubles[i], places[i], sheet);
    if (more.isNull()) return;
    if (input.isCrossed(more) || input.ribbon.meets(more))
        sheet.fill(Layer::Words, Role::Ground, more.adjusted(-2, 0, 2, 0), -1, 2);
    sheet.text(Layer::Words, Role::Ink, Type::Small,
               trouble_text::more(static_cast<int>(troubles.size() - places.size())),
               {more.left(), sheet.baselineAt(Type::Small, more.center().y())}, Align::Left);
}

std::vector<Trouble> lateBatches(const LaneInput& input) {
    constexpr int kNotCaught = 1000;  // above any number of days
    std::vector<Trouble> late;
    const auto& outlook = input.outlook;
    for (const auto& batch : outlook.batches) {
        const auto& line = batch->timeline;
        const DayWindow stay{line.hold.transferDay, line.hold.catchDay};
        if (!stay.overlaps(input.visible)) continue;
        const auto words = flying_text::late(outlook, *batch);
        if (words.isEmpty()) continue;
        const auto days = lateByWeather(line, *outlook.mating, outlook.snapshot.facts());
        const auto* due = line.find(Event::DueToFly);
        const Day from = due ? dayOf(due->earliest) : stay.first;
        late.push_back({{.hit = Hit::Trouble, .batch = batch->batch->id, .day = from},
                        trouble_text::ofBatch(QString::fromStdString(batch->batch->label), words),
                        Role::Caution,
                        input.axis.xOf(from),
                        days + (stay.last >= outlook.snapshot.today() ? kNotCaught : 0)});
    }
    return late;
}

}  // namespace tenthday
