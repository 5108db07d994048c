#include "supply/promise.h"

#include <algorithm>

#include "records/deliveries.h"

namespace tenthday {
namespace {

/// What can be promised for a day: the least that is left on it and for orders due after it.
class Left {
public:
    Left(SeasonSupply& supply, double level)
        : supply_(supply), level_(level), later_(supply.spares(level)) {
        for (auto i = later_.size(); i-- > 1;)
            later_[i - 1].queens = std::min(later_[i - 1].queens, later_[i].queens);
    }
    /// @param wholeOn  the queens have to be there by then
    [[nodiscard]] std::int32_t on(Day wholeOn, Day due) const {
        const auto own = supply_.servingBy(wholeOn, due).reachedWith(level_) - supply_.owedBy(due);
        const auto after = std::find_if(later_.begin(), later_.end(),
                                        [&](const auto& order) { return order.due > due; });
        return after == later_.end() ? own : std::min(own, after->queens);
    }
    [[nodiscard]] std::int32_t on(Day day) const { return on(day, day); }

private:
    SeasonSupply& supply_;
    double level_;
    std::vector<SeasonSupply::Spare> later_;  ///< of those due from this one on, the least
};

/// Days on which something new can be promised.
DayWindow openDays(const Snapshot& snapshot) {
    return {std::max(snapshot.today(), snapshot.season().first), snapshot.season().last + kLeadIn};
}

Order orderOf(const PromiseAsk& ask, Day due) {
    Order order;
    order.kind = ask.kind;
    order.count = ask.count;
    order.due = due;
    order.line = ask.line;
    order.sure = Tenths{static_cast<std::int32_t>(ask.level * 1000 + 0.5)};
    return order;
}

/// Tries an order on a day, and looks at all that it does to the others.
class Trials {
public:
    Trials(SeasonSupply& supply, const PromiseAsk& ask)
        : supply_(supply), ask_(ask), before_(supply.orders()) {}

    [[nodiscard]] bool holdsOn(Day due) const {
        if (!isForQueens(ask_.kind) && !supply_.cellsServe(orderOf(ask_, due), ask_.shipDays))
            return false;
        auto with = supply_.with(orderOf(ask_, due), ask_.shipDays);
        const auto after = with.orders();
        return std::all_of(after.begin(), after.end(), [&](const auto& outlook) {
            return outlook.state == OrderState::Met || !wasMet(outlook);
        });
    }

private:
    /// The one asked about counts as met: it has to be.
    [[nodiscard]] bool wasMet(const OrderOutlook& outlook) const {
        const auto same = std::find_if(before_.begin(), before_.end(), [&](const auto& before) {
            return before.order == outlook.order;
        });
        return same == before_.end() || same->state == OrderState::Met;
    }

    SeasonSupply& supply_;
    const PromiseAsk& ask_;
    std::vector<OrderOutlook> before_;
};

/// The day on which all has to be there, should it go on that day.
Day wholeOnFor(const SeasonSupply& supply, const PromiseAsk& ask, Day due) {
    const auto order = orderOf(ask, due);
    return wholeOn(order, ask.shipDays, orderDays(supply.snapshot(), order, ask.shipDays));
}

/// Days on which it could go.
std::vector<Day> daysToGo(const SeasonSupply& supply, const PromiseAsk& ask) {
    const auto& snapshot = supply.snapshot();
    const auto open = openDays(snapshot);
    std::vector<Day> days;
    for (Day day = open.first; day <= open.last; day += Days{1})
        if (canGo(snapshot, ask.kind, ask.shipDays, day) &&
            wholeOnFor(supply, ask, day) >= open.first)
            days.push_back(day);
    if (ask.kind != OrderKind::RipeCell) return days;
    const auto ripe = supply.cellsDays();
    std::erase_if(days,
                  [&](Day day) { return !std::binary_search(ripe.begin(), ripe.end(), day); });
    return days;
}

std::optional<Day> firstWhere(const std::vector<Day>& days, auto&& holds) {
    const auto first = std::find_if(days.begin(), days.end(), holds);
    return first == days.end() ? std::nullopt : std::optional(*first);
}

std::optional<Day> firstByHalves(const std::vector<Day>& days, auto&& holds) {
    if (days.empty() || !holds(days.back())) return std::nullopt;
    std::size_t low = 0;
    std::size_t good = days.size() - 1;
    while (low < good) {
        const auto middle = (low + good) / 2;
        if (holds(days[middle]))
            good = middle;
        else
            low = middle + 1;
    }
    return days[good];
}

}  // namespace

PromiseAsk askOf(const Snapshot& snapshot, const Order& order) {
    PromiseAsk ask;
    ask.kind = order.kind;
    ask.count = deliveredOf(snapshot, order.id).restOf(order);
    ask.line = order.line;
    ask.shipDays = termsOf(snapshot, order.id).shipDays;
    ask.level = order.sure.value / 1000.0;
    return ask;
}

std::vector<PromiseWeek> promiseByWeek(SeasonSupply& supply, double level) {
    const auto season = supply.snapshot().season();
    const Left left(supply, level);
    std::vector<PromiseWeek> weeks;
    for (Day monday = daysOf(isoWeekOf(season.first)).first; monday <= season.last;
         monday += Days{7}) {
        const Day end = monday + Days{6};
        const auto more = end < supply.snapshot().today() ? 0 : std::max(left.on(end), 0);
        weeks.push_back(
            {isoWeekOf(monday), supply.queensBy(end).reachedWith(level), supply.owedBy(end), more});
    }
    return weeks;
}

std::optional<Day> firstPromise(SeasonSupply& supply, std::int32_t queens, double level) {
    PromiseAsk ask;
    ask.count = queens;
    ask.level = level;
    return firstPromise(supply, ask);
}

std::optional<Day> firstPromise(SeasonSupply& supply, const PromiseAsk& ask) {
    const auto days = daysToGo(supply, ask);
    const bool isAny = ask.kind == OrderKind::Mated || ask.kind == OrderKind::Own;
    if (!isAny || ask.line) {
        const Trials trials(supply, ask);
        const auto holds = [&](Day day) { return trials.holdsOn(day); };
        return isForQueens(ask.kind) ? firstByHalves(days, holds) : firstWhere(days, holds);
    }
    const Left left(supply, ask.level);
    const auto holds = [&](Day day) {
        return left.on(wholeOnFor(supply, ask, day), day) >= ask.count;
    };
    // Without weekdays a later day never has less left: what is owed in between counts for the
    // earlier one too.
    return ask.shipDays.empty() ? firstByHalves(days, holds) : firstWhere(days, holds);
}

DayByRule firstPromiseByRule(const SeasonSupply& supply, std::int32_t queens, double level) {
    PromiseAsk ask;
    ask.count = queens;
    ask.level = level;
    return firstPromiseByRule(supply, ask);
}

DayByRule firstPromiseByRule(const SeasonSupply& supply, const PromiseAsk& ask) {
    DayByRule days;
    for (std::size_t i = 0; i < days.size(); ++i) {
        auto under = supply.under(static_cast<CatchRule>(i));
        days[i] = firstPromise(under, ask);
    }
    return days;
}

std::vector<WaitingOrder> waitingOrders(SeasonSupply& supply) {
    std::vector<WaitingOrder> waiting;
    for (const auto& order : waitingOrdersOf(supply.snapshot())) {
        const auto ask = askOf(supply.snapshot(), *order);
        waiting.push_back({order, ask.count == 0 ? std::nullopt : firstPromise(supply, ask)});
    }
    return waiting;
}

}  // namespace tenthday
