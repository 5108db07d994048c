#include "cellsday/choose_nucs.h"

#include <algorithm>
#include <map>
#include <optional>

namespace tenthday {
namespace {

using Chosen = std::vector<std::size_t>;  ///< indices into the offers

/// Chooses among nucs of one sort.
class Chooser {
public:
    Chooser(std::span<const NucOffer> offers, Chosen among, std::set<std::size_t> used)
        : offers_(offers), among_(std::move(among)), used_(std::move(used)) {
        std::stable_sort(among_.begin(), among_.end(), [&](std::size_t a, std::size_t b) {
            const auto& x = offers_[a];
            const auto& y = offers_[b];
            return x.since != y.since ? x.since < y.since : x.stop < y.stop;
        });
        std::map<std::size_t, std::size_t> rooms;
        for (const auto at : among_) ++rooms[offers_[at].stop];
        for (const auto& [stop, room] : rooms)
            used_.contains(stop) ? void(usedRoom_ += room) : yards_.push_back({stop, room});
    }

    [[nodiscard]] Chosen choose(std::size_t cells) const {
        if (cells >= among_.size()) return among_;
        if (cells <= usedRoom_) return longestReady({}, cells);
        const auto fewest = fewestYards(cells);
        if (yards_.size() > kExactYards) return longestReady(largest(fewest), cells);
        return bestOf(fewest, cells);
    }

private:
    struct YardRoom {
        std::size_t stop;
        std::size_t room;
    };

    [[nodiscard]] std::vector<YardRoom> byRoom() const {
        auto yards = yards_;
        std::stable_sort(yards.begin(), yards.end(),
                         [](const auto& a, const auto& b) { return a.room > b.room; });
        return yards;
    }
    /// So many yards more are needed: the largest ones tell.
    [[nodiscard]] std::size_t fewestYards(std::size_t cells) const {
        std::size_t room = usedRoom_;
        std::size_t count = 0;
        for (const auto& yard : byRoom()) {
            if (room >= cells) break;
            room += yard.room;
            ++count;
        }
        return count;
    }
    [[nodiscard]] std::set<std::size_t> largest(std::size_t count) const {
        std::set<std::size_t> stops;
        const auto yards = byRoom();
        for (std::size_t i = 0; i < count; ++i) stops.insert(yards[i].stop);
        return stops;
    }
    /// The nucs ready longest in the used yards and in these.
    [[nodiscard]] Chosen longestReady(const std::set<std::size_t>& stops, std::size_t cells) const {
        Chosen chosen;
        for (const auto at : among_) {
            if (chosen.size() == cells) break;
            const auto stop = offers_[at].stop;
            if (used_.contains(stop) || stops.contains(stop)) chosen.push_back(at);
        }
        return chosen;
    }
    /// Tries all sets of so many yards, the earlier on the round first.
    [[nodiscard]] Chosen bestOf(std::size_t count, std::size_t cells) const {
        Chosen best;
        std::optional<Days> bestDays;
        std::vector<bool> takes(yards_.size(), false);
        std::fill(takes.begin(), takes.begin() + static_cast<std::ptrdiff_t>(count), true);
        do {
            std::set<std::size_t> stops;
            for (std::size_t i = 0; i < yards_.size(); ++i)
                if (takes[i]) stops.insert(yards_[i].stop);
            auto chosen = longestReady(stops, cells);
            if (chosen.size() < cells) continue;
            Days days{0};
            for (const auto at : chosen) days += offers_[at].since.time_since_epoch();
            if (bestDays && days >= *bestDays) continue;
            bestDays = days;
            best = std::move(chosen);
        } while (std::prev_permutation(takes.begin(), takes.end()));
        return best;
    }

    std::span<const NucOffer> offers_;
    Chosen among_;  ///< longest ready first
    std::set<std::size_t> used_;
    std::size_t usedRoom_ = 0;
    std::vector<YardRoom> yards_;  ///< not used yet, along the round
};

}  // namespace

std::vector<std::size_t> chooseNucs(std::span<const NucOffer> offers, std::size_t cells,
                                    const std::set<std::size_t>& used) {
    Chosen sure;
    Chosen planned;
    for (std::size_t i = 0; i < offers.size(); ++i)
        (offers[i].certain ? sure : planned).push_back(i);
    auto chosen = Chooser(offers, std::move(sure), used).choose(cells);
    if (chosen.size() < cells) {
        auto yards = used;
        for (const auto at : chosen) yards.insert(offers[at].stop);
        const auto more =
            Chooser(offers, std::move(planned), std::move(yards)).choose(cells - chosen.size());
        chosen.insert(chosen.end(), more.begin(), more.end());
    }
    std::sort(chosen.begin(), chosen.end());
    return chosen;
}

}  // namespace tenthday
