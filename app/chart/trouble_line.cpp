#include "chart/trouble_line.h"

#include "look/space.h"
#include "screen_text/chart_hand_text.h"
#include "screen_text/flying_text.h"
#include "screen_text/lists.h"
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
    LineRoom(const QRectF& line, const std::vector<QRectF>& taken) : line_(line) {
        for (const auto& rect : taken) close(rect, kBetween);
    }

    /// What comes keeps so much air to it.
    void close(const QRectF& rect, qreal air) {
        closed_.push_back({rect.left() - air, rect.right() + air});
    }
    /// The free place of such a width nearest to x; null where there is none. It is taken then.
    QRectF take(qreal x, qreal width) {
        std::vector<qreal> starts{x, line_.right() - width};
        for (const auto& [from, until] : closed_) {
            starts.push_back(until);
            starts.push_back(from - width);
        }
        std::optional<qreal> best;
        for (const qreal start : starts)
            if (isFree(start, width) && (!best || std::abs(start - x) < std::abs(*best - x)))
                best = start;
        if (!best) return {};
        const QRectF place(*best, line_.top(), width, line_.height());
        close(place, kBetween);
        return place;
    }
    void giveBack() { closed_.pop_back(); }

private:
    [[nodiscard]] bool isFree(qreal left, qreal width) const {
        constexpr qreal kTouch = 0.01;
        if (left < line_.left() || left + width > line_.right()) return false;
        return std::none_of(closed_.begin(), closed_.end(), [&](const auto& other) {
            return left + kTouch < other.second && other.first + kTouch < left + width;
        });
    }
    QRectF line_;
    std::vector<std::pair<qreal, qreal>> closed_;  ///< from and until, with their air
};

/// The lines of today and the chosen day cut through no words.
void closeDayLines(const LaneInput& input, LineRoom& room) {
    constexpr qreal kOffLine = 4;
    const auto close = [&](Day day) { room.close({input.axis.xOf(day), 0, 0, 0}, kOffLine); };
    close(input.outlook.snapshot.today());
    if (!input.options.chosenDay) return;
    close(*input.options.chosenDay);
    close(*input.options.chosenDay + Days{1});
}

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
            alike->join(trouble);
    }
    return all;
}

/// @param most  so many of its batches are named; of none they are only counted
QString textOf(const Trouble& trouble, int most) {
    if (trouble.batch.isEmpty()) return trouble.words;
    const auto names = trouble.names();
    const int count = static_cast<int>(names.size());
    if (count == 1) return trouble_text::ofBatch(trouble.batch, trouble.words);
    const auto who = most == 0 ? chart_hand_text::batches(count)
                               : listedWithMore(names.mid(0, most), count - most);
    return trouble_text::ofBatch(who, trouble.words);
}

void write(const LaneInput& input, const Trouble& trouble, int most, const QRectF& place,
           Sheet& sheet) {
    // All that share the words can be asked there, the first of them in front.
    for (auto i = trouble.others.size(); i-- > 0;) sheet.target(trouble.others[i].key, place);
    const int target = sheet.target(trouble.key, place);
    const qreal middle = place.center().y();
    if (input.ribbon.meets(place))
        sheet.fill(Layer::Words, Role::Ground, place.adjusted(-2, 0, 2, 0), target, 2);
    sheet.glyph(Layer::Words, trouble.role, Glyph::Warning, {place.left() + kSign / 2, middle},
                kSign, target);
    sheet.text(Layer::Words, trouble.role, Type::Strong, textOf(trouble, most),
               {place.left() + kSign + kToWord, sheet.baselineAt(Type::Strong, middle)},
               Align::Left, target);
}

/// Places given to the first troubles of a line, then to the words for the rest.
struct Laid {
    int most = 0;  ///< so many batches that share their words are named
    std::vector<QRectF> places;
    QRectF more;  ///< null where none are left, or there is no room for the words either
    QString words;
};

/// "and 9 more: 312, 315 ..." of those from one on, from the longest to the shortest.
std::vector<QString> wordsForRest(const std::vector<Trouble>& troubles, std::size_t first) {
    constexpr int kMostNames = 3;
    int count = 0;
    QStringList names;
    for (std::size_t i = first; i < troubles.size(); ++i) {
        const auto own = troubles[i].names();
        count += static_cast<int>(own.size());
        if (!troubles[i].batch.isEmpty() && names.size() < kMostNames) names += own;
    }
    std::vector<QString> words;
    for (auto most = std::min<qsizetype>(kMostNames, names.size()); most > 0; --most)
        words.push_back(trouble_text::moreNamed(count, names.mid(0, most)));
    words.push_back(trouble_text::more(count));
    return words;
}

/// Trouble by trouble its place, until one has none.
Laid firstPlaces(const LaneInput& input, const std::vector<Trouble>& troubles, LineRoom& room,
                 bool inOrder, int most, const TextRuler& ruler) {
    Laid laid{most, {}, {}, {}};
    const qreal start = input.axis.left();
    for (const auto& trouble : troubles) {
        const qreal width = kSign + kToWord + ruler.width(textOf(trouble, most), Type::Strong);
        const auto place = room.take(inOrder ? start : std::max(trouble.x, start), width);
        if (place.isNull()) break;
        laid.places.push_back(place);
    }
    return laid;
}

/// The words for those left; fewer places where these would else have none.
void tellRest(const LaneInput& input, const std::vector<Trouble>& troubles, LineRoom& room,
              const TextRuler& ruler, Laid& laid) {
    while (laid.places.size() < troubles.size()) {
        const qreal beside =
            laid.places.empty() ? input.axis.left() : laid.places.back().right() + kBetween;
        for (const auto& words : wordsForRest(troubles, laid.places.size())) {
            laid.words = words;
            laid.more = room.take(beside, ruler.width(words, Type::Small));
            if (!laid.more.isNull()) return;
        }
        if (laid.places.empty()) return;
        room.giveBack();
        laid.places.pop_back();
    }
}

/// With as many batches named as leave all troubles their place; one of each at least, where not
/// even that takes the room of a trouble.
Laid bestPlaces(const LaneInput& input, const std::vector<Trouble>& troubles, const LineRoom& room,
                bool inOrder, const TextRuler& ruler) {
    for (const int most : {6, 4, 3, 2}) {
        auto left = room;
        auto laid = firstPlaces(input, troubles, left, inOrder, most, ruler);
        if (laid.places.size() == troubles.size()) return laid;
    }
    Laid laid;
    for (const int most : {1, 0}) {
        auto left = room;
        laid = firstPlaces(input, troubles, left, inOrder, most, ruler);
        tellRest(input, troubles, left, ruler, laid);
        if (!laid.places.empty()) break;
    }
    return laid;
}

}  // namespace

void Trouble::join(const Trouble& other) {
    const auto isSame = [&](const Joined& one) { return one.key.batch == other.key.batch; };
    const bool isNamed =
        key.batch == other.key.batch || std::any_of(others.begin(), others.end(), isSame);
    others.push_back({other.key, isNamed ? QString() : other.batch});
}

QStringList Trouble::names() const {
    QStringList names{batch};
    for (const auto& other : others)
        if (!other.batch.isEmpty()) names.push_back(other.batch);
    return names;
}

void layTroubles(const LaneInput& input, std::vector<Trouble> troubles, const QRectF& line,
                 const std::vector<QRectF>& taken, Sheet& sheet) {
    std::stable_sort(troubles.begin(), troubles.end(), [](const auto& a, const auto& b) {
        return a.weight != b.weight ? a.weight > b.weight : a.x < b.x;
    });
    const auto all = joined(troubles);
    LineRoom room(line, taken);
    closeDayLines(input, room);
    const bool inDanger = std::any_of(all.begin(), all.end(), [](const Trouble& trouble) {
        return trouble.role == Role::Danger;
    });
    auto laid = bestPlaces(input, all, room, inDanger, sheet.ruler());
    if (!inDanger && laid.places.size() < all.size())
        laid = bestPlaces(input, all, room, true, sheet.ruler());
    for (std::size_t i = 0; i < laid.places.size(); ++i)
        write(input, all[i], laid.most, laid.places[i], sheet);
    const auto& more = laid.more;
    if (more.isNull()) return;
    if (input.ribbon.meets(more))
        sheet.fill(Layer::Words, Role::Ground, more.adjusted(-2, 0, 2, 0), -1, 2);
    sheet.text(Layer::Words, Role::Ink, Type::Small, laid.words,
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
