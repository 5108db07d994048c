#include "chart/trouble_line.h"

#include <numeric>
#include <set>

#include "chart/line_room.h"
#include "look/space.h"
#include "screen_text/chart_hand_text.h"
#include "screen_text/dates.h"
#include "screen_text/flying_text.h"
#include "screen_text/trouble_text.h"
#include "timeline/late.h"

namespace tenthday {
namespace {

constexpr qreal kSign = 9;
constexpr qreal kToWord = space::kInset;
constexpr qreal kBetween = 14;

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

/// @param most   so many of its batches are named; of none they are only counted
/// @param dated  with the day it is about, of several batches the first one's
QString textOf(const Trouble& trouble, int most, bool dated) {
    QString who;
    if (!trouble.batch.isEmpty()) {
        const auto names = trouble.names();
        const int count = static_cast<int>(names.size());
        const int named = count == 1 ? 1 : std::min(most, count);
        who = named == 0 ? chart_hand_text::batches(count)
                         : chart_hand_text::batchNames(names.mid(0, named), count - named);
    }
    const auto day = dated && trouble.key.day ? shortDay(*trouble.key.day) : QString();
    return trouble_text::told(who, day, trouble.words);
}

/// A sign and words at a place.
struct Told {
    Role role;
    QString words;
    QRectF place;
};

qreal widthOf(const QString& words, const TextRuler& ruler) {
    return kSign + kToWord + ruler.width(words, Type::Strong);
}

/// @param keys  what can be asked there, the first in front
void write(const LaneInput& input, const Told& told, const std::vector<TargetKey>& keys,
           Sheet& sheet) {
    const auto& place = told.place;
    int target = -1;
    for (auto key = keys.rbegin(); key != keys.rend(); ++key) target = sheet.target(*key, place);
    const qreal middle = place.center().y();
    if (input.ribbon.meets(place))
        sheet.fill(Layer::Words, Role::Ground, place.adjusted(-2, 0, 2, 0), target, 2);
    sheet.glyph(Layer::Words, told.role, Glyph::Warning, {place.left() + kSign / 2, middle}, kSign,
                target);
    sheet.text(Layer::Words, told.role, Type::Strong, told.words,
               {place.left() + kSign + kToWord, sheet.baselineAt(Type::Strong, middle)},
               Align::Left, target);
}

std::vector<TargetKey> keysOf(const Trouble& trouble) {
    std::vector<TargetKey> keys{trouble.key};
    for (const auto& other : trouble.others) keys.push_back(other.key);
    return keys;
}

/// Troubles of a kind that are only counted.
struct Counted {
    const Trouble* first;  ///< the worst
    std::vector<TargetKey> keys;

    void add(const Trouble& trouble) {
        const auto more = keysOf(trouble);
        keys.insert(keys.end(), more.begin(), more.end());
    }
    [[nodiscard]] bool isAlike(const Trouble& other) const {
        return first->role == other.role && trouble_text::areOfAKind(first->finding, other.finding);
    }
    /// Of batches, each once.
    [[nodiscard]] int count() const { return countBatches(keys); }
    [[nodiscard]] QString words() const { return trouble_text::counted(first->finding, count()); }
};

/// Those from one on by kind, in the order of the worst of each.
std::vector<Counted> countedFrom(const std::vector<Trouble>& troubles, std::size_t from) {
    std::vector<Counted> all;
    for (auto i = from; i < troubles.size(); ++i) {
        auto of = std::find_if(all.begin(), all.end(), [&](const Counted& counted) {
            return counted.isAlike(troubles[i]);
        });
        if (of == all.end()) of = all.insert(all.end(), Counted{&troubles[i], {}});
        of->add(troubles[i]);
    }
    return all;
}

/// What a line tells, from left to right.
struct Laid {
    int most = 0;  ///< so many batches that share their words are named
    struct Spot {
        QString words;
        QRectF place;
    };
    std::vector<Spot> spots;  ///< of the first troubles
    struct Count {
        Counted of;
        QString words;
        QRectF place;
    };
    std::vector<Count> counts;  ///< of the rest
};

/// Words there are seen to be about what stands at x.
bool standsAt(const QRectF& place, qreal x) {
    constexpr qreal kNear = 24;
    return place.left() - kNear <= x && x <= place.right() + kNear;
}

/// Where words stand nearest to x; away from their batch they name its day. The place is taken
/// then; null where there is none.
Laid::Spot spotFor(const Trouble& trouble, int most, qreal x, LineRoom& room,
                   const TextRuler& ruler) {
    Laid::Spot spot;
    for (const bool dated : {false, true}) {
        auto left = room;
        spot.words = textOf(trouble, most, dated);
        spot.place = left.take(x, widthOf(spot.words, ruler));
        if (spot.place.isNull()) break;
        if (!dated && !standsAt(spot.place, trouble.x)) continue;
        room = std::move(left);
        break;
    }
    return spot;
}

/// Trouble by trouble its place, until one has none.
Laid firstPlaces(const LaneInput& input, const std::vector<Trouble>& troubles, std::size_t count,
                 LineRoom& room, bool inOrder, int most, const TextRuler& ruler) {
    Laid laid{most, {}, {}};
    const qreal start = input.axis.left();
    for (std::size_t i = 0; i < count; ++i) {
        const qreal x = inOrder ? start : std::max(troubles[i].x, start);
        auto spot = spotFor(troubles[i], most, x, room, ruler);
        if (spot.place.isNull()) break;
        laid.spots.push_back(std::move(spot));
    }
    return laid;
}

/// Sum of the ways from batches to their words, px.
qreal wayOf(const Laid& laid, const std::vector<Trouble>& troubles) {
    qreal way = 0;
    for (std::size_t i = 0; i < laid.spots.size(); ++i)
        way += std::abs(laid.spots[i].place.left() - troubles[i].x);
    return way;
}

/// All near their batches. Where those that come first by weight would drive others to the wrong
/// side of them, places are given from the first day on or from the last day back. Without places
/// where not all have room.
Laid nearPlaces(const LaneInput& input, const std::vector<Trouble>& troubles, const LineRoom& room,
                int most, const TextRuler& ruler) {
    std::vector<std::size_t> byDay(troubles.size());
    std::iota(byDay.begin(), byDay.end(), 0);
    std::stable_sort(byDay.begin(), byDay.end(),
                     [&](auto a, auto b) { return troubles[a].x < troubles[b].x; });
    auto left = room;
    auto best = firstPlaces(input, troubles, troubles.size(), left, false, most, ruler);
    if (best.spots.size() < troubles.size()) return {};
    for (int turn = 0; turn < 2; ++turn) {
        std::vector<Trouble> turned;
        for (const auto i : byDay) turned.push_back(troubles[i]);
        left = room;
        const auto laid = firstPlaces(input, turned, turned.size(), left, false, most, ruler);
        const bool hasAll = laid.spots.size() == troubles.size();
        if (hasAll && wayOf(laid, turned) < wayOf(best, troubles)) {
            for (std::size_t i = 0; i < byDay.size(); ++i) best.spots[byDay[i]] = laid.spots[i];
        }
        std::reverse(byDay.begin(), byDay.end());
    }
    return best;
}

/// Places for so many kinds of the rest, and for how many there are beside them.
/// @return whether all had room
bool placeCounts(const LaneInput& input, const std::vector<Counted>& rest, std::size_t kinds,
                 LineRoom room, const TextRuler& ruler, Laid& laid) {
    laid.counts.clear();
    qreal x = laid.spots.empty() ? input.axis.left() : laid.spots.back().place.right() + kBetween;
    const auto place = [&](Counted of, const QString& words) {
        const auto at = room.takeFrom(x, widthOf(words, ruler));
        if (at.isNull()) return false;
        laid.counts.push_back({std::move(of), words, at});
        x = at.right() + kBetween;
        return true;
    };
    for (std::size_t i = 0; i < kinds; ++i)
        if (!place(rest[i], rest[i].words())) return false;
    if (kinds == rest.size()) return true;
    auto others = rest[kinds];
    for (auto i = kinds + 1; i < rest.size(); ++i)
        others.keys.insert(others.keys.end(), rest[i].keys.begin(), rest[i].keys.end());
    const auto words = trouble_text::more(others.count());
    return place(std::move(others), words);
}

/// Counts of the rest; fewer troubles told where these would else have no room, the worst last.
void tellRest(const LaneInput& input, const std::vector<Trouble>& troubles, const LineRoom& empty,
              bool inOrder, const TextRuler& ruler, Laid& laid) {
    const auto tell = [&](std::size_t told, bool allKinds) {
        auto room = empty;
        laid = firstPlaces(input, troubles, told, room, inOrder, laid.most, ruler);
        const auto rest = countedFrom(troubles, told);
        for (auto kinds = rest.size() + 1; kinds-- > 0;) {
            if (placeCounts(input, rest, kinds, room, ruler, laid)) return true;
            if (allKinds) return false;
        }
        return false;
    };
    for (auto told = laid.spots.size(); told > 0; --told)
        if (tell(told, true)) return;
    for (auto told = std::min<std::size_t>(1, laid.spots.size()) + 1; told-- > 0;)
        if (tell(told, false)) return;
    laid.counts.clear();
}

/// With as many batches named as leave all troubles their place; one of each at least, where not
/// even that takes the room of a trouble.
Laid bestPlaces(const LaneInput& input, const std::vector<Trouble>& troubles, const LineRoom& room,
                bool inOrder, const TextRuler& ruler) {
    constexpr std::size_t kWorst = 4;  ///< told by themselves where the others are counted
    const auto places = [&](std::size_t count, int most) {
        auto left = room;
        return firstPlaces(input, troubles, count, left, inOrder, most, ruler);
    };
    for (const int most : {6, 4, 3, 2}) {
        auto laid = inOrder ? places(troubles.size(), most)
                            : nearPlaces(input, troubles, room, most, ruler);
        if (laid.spots.size() == troubles.size()) return laid;
    }
    Laid laid;
    for (const int most : {1, 0}) {
        laid = places(troubles.size(), most);
        if (laid.spots.size() == troubles.size()) return laid;
        if (laid.spots.size() > kWorst) laid.spots.resize(kWorst);
        tellRest(input, troubles, room, inOrder, ruler, laid);
        if (!laid.spots.empty()) break;
    }
    return laid;
}

}  // namespace

int countBatches(const std::vector<TargetKey>& keys) {
    std::set<std::pair<int, Id<Batch>>> different;
    for (const auto& key : keys) different.insert({key.batch.isNone() ? key.index : -1, key.batch});
    return static_cast<int>(different.size());
}

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
    LineRoom room(line, taken, kBetween);
    closeDayLines(input, room);
    const bool inDanger = std::any_of(all.begin(), all.end(), [](const Trouble& trouble) {
        return trouble.role == Role::Danger;
    });
    auto laid = bestPlaces(input, all, room, inDanger, sheet.ruler());
    if (!inDanger && laid.spots.size() < all.size())
        laid = bestPlaces(input, all, room, true, sheet.ruler());
    for (std::size_t i = 0; i < laid.spots.size(); ++i)
        write(input, {all[i].role, laid.spots[i].words, laid.spots[i].place}, keysOf(all[i]),
              sheet);
    for (const auto& count : laid.counts)
        write(input, {count.of.first->role, count.words, count.place}, count.of.keys, sheet);
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
