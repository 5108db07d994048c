#include "chart/legend_marks.h"

#include <array>
#include <initializer_list>

#include "chart/cells_day_label.h"
#include "chart/flying_lane.h"
#include "chart/planned_stays.h"
#include "chart/queens_lane.h"
#include "screen_text/flying_text.h"

namespace tenthday {
namespace {

using chart_text::LegendEntry;

template <class All, class Is>
bool any(const All& all, Is&& is) {
    return std::any_of(all.begin(), all.end(), is);
}

class Marks {
public:
    Marks(const Outlook& outlook, const ChartOptions& options) : of_(outlook), options_(options) {}

    std::vector<LegendMark> all(const DayWindow& days) {
        builders();
        cellsDays();
        nucs(days);
        flying();
        queens();
        grounds();
        ofHands();
        troubles();
        return std::move(marks_);
    }

private:
    void add(bool has, LegendMark mark) {
        if (has) marks_.push_back(mark);
    }

    void builders() {
        const auto hasLoad = [](const auto& batch) { return !batch->timeline.loads.empty(); };
        const auto rests = [](const auto& batch) {
            return any(batch->timeline.loads,
                       [](const auto& load) { return load.restUntil > dayOf(load.span.until); });
        };
        const bool loads = any(of_.batches, hasLoad);
        for (const LegendMark mark : std::initializer_list<LegendMark>{
                 LegendEntry::OpenCells, LegendEntry::SealedCells, LegendSign::CellsOut})
            add(loads, mark);
        add(anyBuilder([](const auto& is) { return !is.makeUps.empty(); }), LegendSign::MakeUp);
        add(anyClock([](const auto& is) { return !is.firstTicked || !is.secondTicked; }),
            LegendEntry::LookDue);
        add(anyClock([](const auto& is) { return is.firstTicked || is.secondTicked; }),
            LegendEntry::LookDone);
        add(any(of_.batches, rests), LegendEntry::Rest);
        add(anyBuilder([](const auto& is) { return !is.idle.empty(); }), LegendSign::Idle);
    }
    template <class Is>
    bool anyBuilder(Is&& is) const {
        return any(of_.builders, is);
    }
    template <class Is>
    bool anyClock(Is&& is) const {
        return anyBuilder([&](const auto& builder) { return any(builder.clocks, is); });
    }

    void cellsDays() {
        add(!of_.nucs.cellsDays.empty(), LegendSign::CellsDay);
        const Day today = of_.snapshot.today();
        add(any(of_.nucs.cellsDays, [&](const auto& day) { return isUncovered(day, today); }),
            LegendSign::TooMany);
    }

    /// What nucs are on these days, in any yard.
    struct Seen {
        std::array<bool, kTokenCount<NucState>> states{};
        bool ready = false;
        bool likely = false;
        bool waiting = false;
        [[nodiscard]] bool is(NucState state) const {
            return states[static_cast<std::size_t>(state)];
        }
        void add(const YardDay& day) {
            for (std::size_t state = 0; state < states.size(); ++state)
                states[state] = states[state] || day.stack[state] > 0;
            const auto count = [&](NucState state) {
                return day.stack[static_cast<std::size_t>(state)];
            };
            const int empty =
                count(NucState::Ready) + count(NucState::Caught) + count(NucState::NoQueen);
            ready = ready || day.numbers.ready > 0;
            likely = likely || day.numbers.likely > 0;
            waiting = waiting || day.numbers.needsBrood > 0 ||
                      empty > day.numbers.ready + day.numbers.likely;
        }
    };
    [[nodiscard]] Seen seenOn(const DayWindow& days) const {
        Seen seen;
        const auto first = (days.first - of_.season.first).count();
        const auto last = (days.last - of_.season.first).count();
        for (const auto& yard : of_.nucs.yards) {
            const auto until = std::min<std::ptrdiff_t>(last + 1, std::ssize(yard.days));
            for (auto at = std::max<std::ptrdiff_t>(first, 0); at < until; ++at)
                seen.add(yard.days[static_cast<std::size_t>(at)]);
        }
        return seen;
    }
    void nucs(const DayWindow& days) {
        const auto seen = seenOn(days);
        add(seen.is(NucState::Virgin), LegendEntry::Virgin);
        add(seen.is(NucState::DueToFly), LegendEntry::DueToFly);
        add(seen.is(NucState::DueToFly) || seen.is(NucState::Laying), LegendEntry::FirstEggs);
        add(seen.is(NucState::Laying), LegendEntry::Laying);
        add(seen.is(NucState::JudgedGood), LegendEntry::JudgedGood);
        add(seen.is(NucState::NoQueen), LegendEntry::NoQueen);
        add(seen.is(NucState::DroneLayer), LegendSign::DroneLayer);
        add(seen.ready, LegendEntry::Ready);
        add(seen.likely, LegendEntry::Likely);
        add(seen.ready || seen.likely || showsOrders(of_, options_), LegendSign::BoxedNumber);
        add(seen.waiting, LegendEntry::Waiting);
        add(seen.is(NucState::NotStocked), LegendEntry::NotStocked);
        add(seen.is(NucState::Spent), LegendSign::Spent);
    }

    void flying() {
        const bool knows = knowsFlyingDays(of_);
        add(knows, LegendEntry::FlyingDay);
        add(knows, LegendEntry::NoFlyingDay);
        add(knows && !flying_text::isThisYearOnly(of_), LegendEntry::FlyingChance);
        add(knowsDrones(of_), LegendEntry::DronesMature);
        add(of_.limits.firstGraft() || of_.limits.lastGraft(), LegendEntry::OutsideLimits);
    }

    /// Of orders that are not reckoned yet, any can come out.
    void queens() {
        add(hasQueensOrOrders(of_), LegendSign::InHand);
        if (!showsOrders(of_, options_)) return;
        const auto anyOrder = [&](auto&& is) {
            return !options_.orders || any(options_.orders->orders, is);
        };
        const auto anyIn = [&](OrderState state) {
            return anyOrder([&](const auto& order) { return order.state == state; });
        };
        add(anyIn(OrderState::Met), LegendSign::OrderMet);
        add(anyIn(OrderState::AtRisk), LegendSign::OrderAtRisk);
        add(anyIn(OrderState::Short), LegendSign::OrderShort);
        add(anyOrder(
                [](const auto& order) { return order.days && order.days->go != order.order->due; }),
            LegendSign::Leaves);
    }

    void grounds() {
        marks_.emplace_back(LegendSign::Weekend);
        add(of_.snapshot.all<DayOff>().size() > 0, LegendSign::DayOff);
    }

    void ofHands() {
        const bool canHand = !options_.isPicture;
        const bool isChosen = options_.selected || options_.place.hit != Hit::None;
        add(canHand || isChosen, LegendSign::Chosen);
        add(canHand || options_.offersDays, LegendSign::ClearDay);
        add(canHand || isChosen || options_.before || options_.proposals || hasMoved(),
            LegendSign::Planned);
    }
    /// What was grafted on another day than planned has the outline of its plan.
    [[nodiscard]] bool hasMoved() const {
        return any(of_.batches,
                   [&](const auto& batch) { return shiftToPlan(of_, batch.get()).has_value(); });
    }

    void troubles() {
        const auto anyOf = [&](Severity severity) {
            return any(of_.findings, [&](const auto& is) { return is.severity == severity; });
        };
        const auto isLate = [&](const auto& batch) {
            return !flying_text::late(of_, *batch).isEmpty();
        };
        add(anyOf(Severity::Warning) || any(of_.batches, isLate), LegendSign::Trouble);
        add(anyOf(Severity::Danger), LegendSign::Urgent);
    }

    const Outlook& of_;
    const ChartOptions& options_;
    std::vector<LegendMark> marks_;
};

}  // namespace

std::vector<LegendMark> legendMarks(const Outlook& outlook, const ChartOptions& options,
                                    const DayWindow& days) {
    return Marks(outlook, options).all(days);
}

}  // namespace tenthday
