#include "occupancy/drone_needs.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "base/natural_order.h"
#include "biology/drones.h"
#include "limits/season_limits.h"

namespace tenthday {
namespace {

/// Fewer virgins than this are not worth a day of their own.
constexpr double kFew = 0.05;

/// Virgins due to fly, by day.
class Flights {
public:
    double& on(Day day) {
        if (virgins_.empty()) first_ = day;
        if (day < first_) {
            virgins_.insert(virgins_.begin(), static_cast<std::size_t>((first_ - day).count()), 0);
            first_ = day;
        }
        const auto at = static_cast<std::size_t>((day - first_).count());
        if (at >= virgins_.size()) virgins_.resize(at + 1);
        return virgins_[at];
    }
    /// From the first day with any to the last.
    [[nodiscard]] DayWindow days() const {
        return {first_, first_ + Days{static_cast<int>(virgins_.size()) - 1}};
    }
    /// The first of the days with the most, and how many these are.
    [[nodiscard]] std::pair<Day, double> peak() const {
        std::pair<Day, double> most{first_, 0};
        for (std::size_t i = 0; i < virgins_.size(); ++i)
            if (virgins_[i] > most.second + 1e-9)
                most = {first_ + Days{static_cast<int>(i)}, virgins_[i]};
        return most;
    }

private:
    Day first_{};
    std::vector<double> virgins_;
};

class Counter {
public:
    Counter(const Snapshot& snapshot, const Timelines& timelines)
        : snapshot_(snapshot), season_(snapshot.season()) {
        for (const auto& [id, timeline] : timelines) timelines_[id] = timeline;
    }

    void add(Id<Yard> stands, const BatchBlock& block) {
        const auto batch = snapshot_.find(block.batch);
        const auto timeline = timelines_.find(block.batch);
        if (!batch || timeline == timelines_.end() || batch->mating == Mating::Insemination) return;
        const auto& hold = timeline->second->hold;
        for (Day day = block.days.first; day <= block.days.last; day += Days{1}) {
            const double virgins =
                block.cells *
                static_cast<double>(hold.on(day)[static_cast<std::size_t>(NucState::DueToFly)]);
            if (virgins < kFew) continue;
            const auto yard =
                batch->mating == Mating::Open ? std::optional(stands) : stationOn(batch->id, day);
            if (!yard) continue;
            flights_[*yard].on(day) += virgins;
            const Day graft = dayOf(timeline->second->graft);
            const auto first = firstGraft_.try_emplace(*yard, graft).first;
            first->second = std::min(first->second, graft);
        }
    }

    std::vector<DroneNeed> run() const {
        std::vector<DroneNeed> needs;
        for (const auto& [id, flights] : flights_)
            if (const auto yard = snapshot_.find(id)) needs.push_back(needOf(yard, flights));
        std::sort(needs.begin(), needs.end(), [](const DroneNeed& a, const DroneNeed& b) {
            return a.yard->driveOrder != b.yard->driveOrder
                       ? a.yard->driveOrder < b.yard->driveOrder
                       : naturalLess(a.yard->label, b.yard->label);
        });
        return needs;
    }

private:
    [[nodiscard]] std::optional<Id<Yard>> stationOn(Id<Batch> batch, Day day) const {
        for (const auto& stay : snapshot_.all<MatingStay>().of(batch.uuid))
            if (stay->from <= day && day <= stay->until) return stay->yard;
        return std::nullopt;
    }

    [[nodiscard]] DroneNeed needOf(const Ptr<Yard>& yard, const Flights& flights) const {
        const auto& facts = snapshot_.facts();
        DroneNeed need;
        need.yard = yard;
        need.flights = flights.days();
        std::tie(need.peak, need.virgins) = flights.peak();
        need.wanted = droneColoniesFor(need.virgins, facts);
        need.firstGraft = firstGraft_.at(yard->id);
        need.combBy = droneCombBy(need.firstGraft, facts);
        need.combLast = droneCombLast(need.firstGraft, facts);
        readNotes(need);
        return need;
    }

    /// Notes of the season: those whose drones are of it, so not of last summer.
    void readNotes(DroneNeed& need) const {
        const auto& facts = snapshot_.facts();
        const Day earliest = season_.first - Days{static_cast<int>(droneMatureAge(facts)) + 60};
        std::optional<Day> newest;
        std::optional<std::int32_t> young;  // colonies whose drones are not mature by the peak
        for (const auto& seen : snapshot_.all<DroneSighting>().of(need.yard->id.uuid)) {
            if (seen->day < earliest || seen->day > season_.last) continue;
            const Day mature = dronesMatureBy(seen->stage, seen->day, facts);
            need.mature = std::min(need.mature.value_or(mature), mature);
            need.combIn = std::min(need.combIn.value_or(seen->day), seen->day);
            if (seen->colonies && mature > need.peak) young = 0;
            if (!seen->colonies || mature > need.peak || (newest && seen->day < *newest)) continue;
            newest = seen->day;
            need.noted = seen->colonies;
        }
        // Drones too young for the peak are none for it. So is what nobody noted here, once it is
        // too late for comb, where drones are noted at all.
        const bool late =
            notesDrones(earliest) && !need.combIn && need.combLast < snapshot_.today();
        if (!need.noted && (young || late)) need.noted = 0;
    }

    /// In this season, in any yard.
    [[nodiscard]] bool notesDrones(Day earliest) const {
        const auto& all = snapshot_.all<DroneSighting>();
        return std::any_of(all.begin(), all.end(), [&](const auto& seen) {
            return seen->day >= earliest && seen->day <= season_.last;
        });
    }

    const Snapshot& snapshot_;
    DayWindow season_;
    std::unordered_map<Id<Batch>, const BatchTimeline*> timelines_;
    std::map<Id<Yard>, Flights> flights_;
    std::map<Id<Yard>, Day> firstGraft_;
};

}  // namespace

std::vector<DroneNeed> droneNeeds(const Snapshot& snapshot, const std::vector<YardOutlook>& yards,
                                  const Timelines& timelines) {
    Counter counter(snapshot, timelines);
    for (const auto& yard : yards)
        for (const auto& block : yard.blocks) counter.add(yard.yard->id, block);
    return counter.run();
}

}  // namespace tenthday
