#include "chart/trouble_line.h"

#include "look/space.h"
#include "screen_text/chart_hand_text.h"
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

/// Those alike in one, at the first of them by day.
std::vector<Trouble> joined(const std::vector<Trouble>& troubles) {
    std::vector<Trouble> all;
    for (const auto& trouble : troubles) {
        const auto alike = std::find_if(all.begin(), all.end(), [&](const Trouble& other) {
            return !trouble.batch.isEmpty() && !other.batch.isEmpty() &&
                   other.words == trouble.words && other.role == trouble.role &&
                   other.weight == trouble.weight;
        });
        if (alike == all.end())
            all.push_back(trouble);
        else
            alike->others.push_back(trouble.key);
    }
    return all;
}

QString textOf(const Trouble& trouble) {
    if (trouble.batch.isEmpty()) return trouble.words;
    const auto who =
        trouble.count() > 1 ? chart_hand_text::batches(trouble.count()) : trouble.batch;
    return trouble_text::ofBatch(who, trouble.words);
}

void write(const LaneInput& input, const Trouble& trouble, const QRectF& place, Sheet& sheet) {
    // All that share the words can be asked there, the first of them in front.
    for (auto i = trouble.others.size(); i-- > 0;) sheet.target(trouble.others[i], place);
    const int target = sheet.target(trouble.key, place);
    const qreal middle = place.center().y();
    if (input.isCrossed(place) || input.ribbon.meets(place))
        sheet.fill(Layer::Words, Role::Ground, place.adjusted(-2, 0, 2, 0), target, 2);
    sheet.glyph(Layer::Words, trouble.role, Glyph::Warning, {place.left() + kSign / 2, middle},
                kSign, target);
    sheet.text(Layer::Words, trouble.role, Type::Strong, textOf(trouble),
               {place.left() + kSign + kToWord, sheet.baselineAt(Type::Strong, middle)},
               Align::Left, target);
}

/// Places given to the first troubles of a line, then to the words for the rest.
struct Laid {
    std::vector<QRectF> places;
    QRectF more;  ///< null where none are left, or there is no room for the words either
    int left = 0;
};

int batchesFrom(const std::vector<Trouble>& troubles, std::size_t first) {
    int count = 0;
    for (std::size_t i = first; i < troubles.size(); ++i) count += troubles[i].count();
    return count;
}

/// Trouble by trouble its place; fewer where the words for the rest would else have none.
Laid placesFor(const LaneInput& input, const std::vector<Trouble>& troubles, LineRoom room,
               bool inOrder, const TextRuler& ruler) {
    Laid laid;
    const qreal start = input.axis.left();
    for (const auto& trouble : troubles) {
        const qreal width = kSign + kToWord + ruler.width(textOf(trouble), Type::Strong);
        const auto place = room.take(inOrder ? start : std::max(trouble.x, start), width);
        if (place.isNull()) break;
        laid.places.push_back(place);
    }
    while (laid.places.size() < troubles.size()) {
        laid.left = batchesFrom(troubles, laid.places.size());
        const auto words = trouble_text::more(laid.left);
        const qreal beside = laid.places.empty() ? start : laid.places.back().right() + kBetween;
        laid.more = room.take(beside, ruler.width(words, Type::Small));
        if (!laid.more.isNull() || laid.places.empty()) break;
        room.giveBack();
        laid.places.pop_back();
    }
    return laid;
}

}  // namespace

void layTroubles(const LaneInput& input, std::vector<Trouble> troubles, const QRectF& line,
                 const std::vector<QRectF>& taken, Sheet& sheet) {
    std::stable_sort(troubles.begin(), troubles.end(), [](const auto& a, const auto& b) {
        return a.weight != b.weight ? a.weight > b.weight : a.x < b.x;
    });
    const auto all = joined(troubles);
    const LineRoom room(line, taken);
    const bool inDanger = std::any_of(all.begin(), all.end(), [](const Trouble& trouble) {
        return trouble.role == Role::Danger;
    });
    auto laid = placesFor(input, all, room, inDanger, sheet.ruler());
    if (!inDanger && laid.places.size() < all.size())
        laid = placesFor(input, all, room, true, sheet.ruler());
    for (std::size_t i = 0; i < laid.places.size(); ++i)
        write(input, all[i], laid.places[i], sheet);
    const auto& more = laid.more;
    if (more.isNull()) return;
    if (input.isCrossed(more) || input.ribbon.meets(more))
        sheet.fill(Layer::Words, Role::Ground, more.adjusted(-2, 0, 2, 0), -1, 2);
    sheet.text(Layer::Words, Role::Ink, Type::Small, trouble_text::more(laid.left),
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
                        QString::fromStdString(batch->batch->label),
                        words,
                        Role::Caution,
                        input.axis.xOf(from),
                        days + (stay.last >= outlook.snapshot.today() ? kNotCaught : 0)});
    }
    return late;
}

}  // namespace tenthday
