#include "timeline/hold.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

Moment likely(const BatchDates& dates, Event event) {
    for (const auto& d : dates.events)
        if (d.event == event) return d.likely;
    return dates.transfer;
}

/// Shares of states of a placed cell's nuc so many hours after the graft.
class Shares {
public:
    Shares(const BatchDates& dates, const Facts& facts)
        : dates_(dates),
          laying_(layingShare(facts, dates.given) * (1 - dates.neverMates)),
          good_(facts[Fact::JudgedGood]),
          toSealed_(facts[Fact::EggsToSealedD] * 24) {}

    /// Until the first look nobody knows which queens failed: they count as due to fly.
    [[nodiscard]] StateShares at(double hour, bool looked) const {
        const double out = dates_.clock.emerged().by(hour);
        const double flying = std::min(out, dates_.dueToFly.by(hour));
        const double eggs = std::min(flying, dates_.firstEggs.by(hour));
        const double brood = std::min(eggs, dates_.firstEggs.by(hour - toSealed_));
        const double judged = looked ? laying_ * good_ * brood : 0;
        StateShares shares{};
        set(shares, NucState::JudgedGood, judged);
        set(shares, NucState::Laying, laying_ * eggs - judged);
        if (looked) {
            set(shares, NucState::NoQueen, 1 - laying_);
            set(shares, NucState::DueToFly, laying_ * (1 - eggs));
        } else {
            set(shares, NucState::Cell, 1 - out);
            set(shares, NucState::Virgin, out - flying);
            set(shares, NucState::DueToFly, flying - laying_ * eggs);
        }
        return shares;
    }

private:
    static void set(StateShares& shares, NucState state, double share) {
        shares[static_cast<std::size_t>(state)] = static_cast<float>(std::max(share, 0.0));
    }
    const BatchDates& dates_;
    double laying_;
    double good_;
    double toSealed_;
};

}  // namespace

const StateShares& NucHold::on(Day day) const {
    const auto index = std::clamp<std::int64_t>((day - transferDay).count(), 0,
                                                static_cast<std::int64_t>(shares.size()) - 1);
    return shares[static_cast<std::size_t>(index)];
}

NucHold holdOf(const BatchDates& dates, const Facts& facts) {
    NucHold hold;
    hold.transfer = dates.transfer;
    hold.leaves = dates.leaves;
    hold.transferDay = dayOf(dates.transfer);
    hold.lookDay = std::max(dayOf(likely(dates, Event::FirstLook)), hold.transferDay);
    hold.catchDay = std::max(dayOf(likely(dates, Event::Catch)), hold.lookDay);
    for (std::size_t i = 0; i < hold.catchBy.size(); ++i)
        hold.catchBy[i] = std::max(dayOf(dates.catchBy[i]), hold.transferDay);
    hold.lostDay =
        dayOf(likely(dates, Event::Emergence)) + Days{static_cast<int>(facts[Fact::LostVirginD])};
    hold.layingShare = layingShare(facts, dates.given) * (1 - dates.neverMates);
    hold.virginShare = layingShare(facts, Given::Virgin) * (1 - dates.neverMates);
    const Shares shares(dates, facts);
    const auto start = std::chrono::hours{static_cast<int>(facts[Fact::WorkStartH])};
    for (Day day = hold.transferDay; day <= hold.catchDay; day += Days{1}) {
        // On the transfer day the nuc counts as filled, though the cell comes during the day.
        const Moment moment = std::max(Moment{day} + start, dates.transfer);
        const Moment asked = day == hold.transferDay ? moment : Moment{day} + start;
        hold.shares.push_back(shares.at(hoursBetween(dates.graft, asked), day > hold.lookDay));
    }
    return hold;
}

}  // namespace tenthday
