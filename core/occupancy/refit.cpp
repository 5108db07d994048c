#include <algorithm>

#include "occupancy/fitted_nucs.h"
#include "records/same_tables.h"

namespace tenthday {
namespace {

constexpr std::size_t kMostBatches = 32;
/// Of all sides, one in so many may differ.
constexpr std::size_t kOneIn = 4;
constexpr std::size_t kFewSides = 64;

/// Cells of it are named, or were seen, in nucs.
bool hasNucsOfItsOwn(const Snapshot& snapshot, Id<Batch> batch) {
    const auto hasSide = [](const auto& row) { return row->side.has_value(); };
    const auto placements = snapshot.all<Placement>().of(batch.uuid);
    const auto outcomes = snapshot.all<Outcome>().of(batch.uuid);
    return std::any_of(placements.begin(), placements.end(), hasSide) ||
           std::any_of(outcomes.begin(), outcomes.end(), hasSide) ||
           !snapshot.all<CaughtQueen>().of(batch.uuid).empty();
}

/// First fit gave it.
bool isGiven(const SideRound& round) { return !round.named && !round.done; }

/// Serves the batches in their order. A side is "other" once its rounds may differ from those it
/// had before when the same batches were served: from then on it is kept apart and asked itself.
/// All that is not other is as it was found before.
class Refit {
public:
    Refit(const FittedNucs& before, const Snapshot& snapshot, const Timelines& timelines)
        : before_(before),
          snapshot_(snapshot),
          timelines_(timelines),
          otherOf_(before.sides.size(), -1),
          othersIn_(before.yards.yards.size()) {}

    std::optional<RefittedNucs> run() {
        if (!sameTablesBut<Batch, BatchBar, BatchLoad, BatchShare, MakeUp>(before_.snapshot,
                                                                           snapshot_) ||
            !findChanged())
            return std::nullopt;
        now_.placed.resize(timelines_.size());
        for (const auto at : fitOrder(timelines_)) {
            now_.placed[at] = serve(at);
            if (others_.size() > kFewSides + before_.sides.size() / kOneIn) return std::nullopt;
        }
        takeOthers();
        return std::move(now_);
    }

private:
    /// A side whose rounds may differ.
    struct Other {
        std::size_t side = 0;
        SideOutlook now;
    };

    /// Tells batches that are as they were from the rest, whose sides are others from the outset.
    bool findChanged() {
        auto& differing = now_.differing;
        knownAs_.assign(timelines_.size(), nullptr);
        std::vector<bool> isThere(before_.fits.size());
        for (std::size_t at = 0; at < timelines_.size(); ++at) {
            const auto& [batch, timeline] = timelines_[at];
            const auto place = before_.places.find(batch);
            const auto* known =
                place == before_.places.end() ? nullptr : &before_.fits[place->second];
            if (known != nullptr) isThere[place->second] = true;
            if (known != nullptr && isSame(*known, timeline)) {
                knownAs_[at] = known;
                continue;
            }
            differing.emplace_back(batch, timeline);
            if (known != nullptr) setApart(*known);
        }
        for (std::size_t place = 0; place < before_.fits.size(); ++place) {
            if (isThere[place]) continue;
            differing.emplace_back(before_.fits[place].wish.batch, nullptr);
            setApart(before_.fits[place]);
        }
        return differing.size() <= kMostBatches &&
               std::none_of(differing.begin(), differing.end(),
                            [&](const auto& one) { return hasNucsOfItsOwn(snapshot_, one.first); });
    }

    /// Its timeline is made anew with its shares; who makes it otherwise is served as well.
    [[nodiscard]] bool isSame(const BatchFit& fit, const BatchTimeline* timeline) const {
        if (fit.wish.timeline != timeline) return false;
        const auto& was = before_.snapshot.all<BatchShare>();
        const auto& is = snapshot_.all<BatchShare>();
        if (was.isSame(is)) return true;
        const auto a = was.of(fit.wish.batch.uuid);
        const auto b = is.of(fit.wish.batch.uuid);
        return std::equal(a.begin(), a.end(), b.begin(), b.end());
    }

    /// The cells of a batch, with the sides they get.
    PlacedCells serve(std::size_t at) {
        const auto* known = knownAs_[at];
        if (known == nullptr) {
            const auto& [batch, timeline] = timelines_[at];
            auto fit = wishOf(snapshot_, before_.yards, batch, *timeline, {}, *before_.bare);
            choose(fit, nullptr);
            for (const auto& taken : fit.taken) give(taken.side, fit.wish);
            return fit.cells;
        }
        const auto placed = isAsBefore(*known) ? known->cells : serveAgain(*known);
        served_ = static_cast<std::size_t>(known - before_.fits.data()) + 1;
        return placed;
    }

    /// No other side is or was free where it asks: it takes what it took.
    [[nodiscard]] bool isAsBefore(const BatchFit& known) const {
        return std::all_of(known.asked.begin(), known.asked.end(), [&](const AskedYard& asked) {
            if (othersIn_[asked.yard].empty()) return true;
            const auto isOther = [&](const FreeSide& free) { return otherOf_[free.side] >= 0; };
            if (std::any_of(asked.free.begin(), asked.free.end(), isOther)) return false;
            const auto& hold = known.wish.timeline->hold;
            return std::none_of(othersIn_[asked.yard].begin(), othersIn_[asked.yard].end(),
                                [&](auto other) {
                                    return freedom(others_[other].now, asked.yard, hold.transferDay)
                                        .takes(hold.transferDay, hold.catchDay);
                                });
        });
    }

    PlacedCells serveAgain(const BatchFit& known) {
        BatchFit fit;
        fit.wish = known.wish;
        fit.cells = known.cells;
        fit.cells.placed -= static_cast<std::int32_t>(known.taken.size());
        choose(fit, &known);
        const auto took = [](const BatchFit& by, std::size_t side) {
            return std::any_of(by.taken.begin(), by.taken.end(),
                               [&](const TakenSide& taken) { return taken.side == side; });
        };
        for (const auto& taken : known.taken)
            if (!took(fit, taken.side)) setApart(taken.side);
        for (const auto& taken : fit.taken)
            if (otherOf_[taken.side] >= 0 || !took(known, taken.side)) give(taken.side, fit.wish);
        return fit.cells;
    }

    /// @param known  what the batch found before; null where nothing is known of it
    void choose(BatchFit& fit, const BatchFit* known) {
        const auto& hold = fit.wish.timeline->hold;
        chooseSides(fit, othersIn_.size(), [&](std::size_t yard) {
            if (known != nullptr)
                for (const auto* found : {&known->asked, &known->notAsked})
                    for (const auto& asked : *found)
                        if (asked.yard == yard)
                            return freeAgain(asked, hold.transferDay, hold.catchDay);
            return freeAnew(yard, hold.transferDay, hold.catchDay);
        });
    }

    [[nodiscard]] Freedom freedom(const SideOutlook& side, std::size_t yard, Day day) const {
        return freedomOn(side, before_.yards.yards[yard]->id, day);
    }

    /// Of those that were free, and of the others.
    std::vector<FreeSide> freeAgain(const AskedYard& asked, Day day, Day heldUntil) const {
        std::vector<FreeSide> free;
        free.reserve(asked.free.size());
        for (const auto& was : asked.free)
            if (otherOf_[was.side] < 0) free.push_back(was);
        for (const auto other : othersIn_[asked.yard]) {
            const auto found = freedom(others_[other].now, asked.yard, day);
            if (found.takes(day, heldUntil))
                free.push_back({found.free, found.certain, others_[other].side});
        }
        return free;
    }

    /// Each side of a yard is asked.
    std::vector<FreeSide> freeAnew(std::size_t yard, Day day, Day heldUntil) const {
        std::vector<FreeSide> free;
        for (const auto side : before_.yards.sides[yard]) {
            const auto other = otherOf_[side];
            const auto found =
                other >= 0 ? freedom(others_[static_cast<std::size_t>(other)].now, yard, day)
                           : freedomSoFar(side, yard, day);
            if (found.takes(day, heldUntil)) free.push_back({found.free, found.certain, side});
        }
        return free;
    }

    /// Of a side that is none of the others, with the rounds given so far. Those to come are of
    /// this day or later: one that is later does nothing but end the stretch the side is in.
    [[nodiscard]] Freedom freedomSoFar(std::size_t side, std::size_t yard, Day day) const {
        const auto& was = before_.sides[side];
        const auto isOnTheDay = [&](const SideRound& round) {
            return round.transferDay == day && isToCome(round);
        };
        if (std::any_of(was.rounds.begin(), was.rounds.end(), isOnTheDay))
            return freedom(soFar(side), yard, day);
        return freedomOn(was, before_.yards.yards[yard]->id, day,
                         [&](const SideRound& round) { return isToCome(round); });
    }

    /// First fit gave it to a batch that has not been served yet.
    [[nodiscard]] bool isToCome(const SideRound& round) const {
        return isGiven(round) && before_.places.find(round.batch)->second >= served_;
    }

    [[nodiscard]] SideOutlook soFar(std::size_t side) const {
        SideOutlook now = before_.sides[side];
        const auto goes = [&](const SideRound& round) { return isToCome(round); };
        if (std::erase_if(now.rounds, goes) > 0) divide(now, snapshot_);
        return now;
    }

    void setApart(const BatchFit& fit) {
        for (const auto& taken : fit.taken) setApart(taken.side);
    }
    void setApart(std::size_t side) {
        if (otherOf_[side] >= 0) return;
        otherOf_[side] = static_cast<std::int32_t>(others_.size());
        for (const auto& stay : before_.sides[side].stays) {
            const auto yard = stay.yard ? before_.yards.find(*stay.yard) : std::nullopt;
            if (!yard) continue;
            auto& others = othersIn_[*yard];
            if (others.empty() || others.back() != others_.size()) others.push_back(others_.size());
        }
        others_.push_back({side, soFar(side)});
    }

    void give(std::size_t side, const FitWish& wish) {
        setApart(side);
        giveRound(others_[static_cast<std::size_t>(otherOf_[side])].now, wish, snapshot_);
    }

    static bool isSameRound(const SideRound& a, const SideRound& b) {
        return a.batch == b.batch && a.timeline == b.timeline && a.transferDay == b.transferDay &&
               a.named == b.named && a.done == b.done;
    }

    /// Those of the others that came out as they were are none.
    void takeOthers() {
        now_.sides = before_.sides;
        for (auto& other : others_) {
            const auto& was = before_.sides[other.side].rounds;
            const auto& is = other.now.rounds;
            if (std::equal(was.begin(), was.end(), is.begin(), is.end(), isSameRound)) continue;
            now_.changed.push_back(other.side);
            now_.sides.replace(other.side, std::move(other.now));
        }
    }

    const FittedNucs& before_;
    const Snapshot& snapshot_;
    const Timelines& timelines_;
    RefittedNucs now_;
    std::vector<const BatchFit*> knownAs_;  ///< by place in the timelines; null: changed
    std::size_t served_ = 0;                ///< of the fits before, those before the next
    std::vector<std::int32_t> otherOf_;     ///< by side: in `others_`; -1: as before
    std::vector<Other> others_;
    std::vector<std::vector<std::size_t>> othersIn_;  ///< by yard: in `others_`
};

}  // namespace

std::optional<RefittedNucs> refit(const FittedNucs& before, const Snapshot& snapshot,
                                  const Timelines& timelines) {
    return Refit(before, snapshot, timelines).run();
}

}  // namespace tenthday
