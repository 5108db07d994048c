#include "supply/promise.h"

#include <algorithm>

namespace tenthday {
namespace {

/// What is left on a day at the level, beside what is owed; below 0 where that is short.
std::int32_t leftOn(SeasonSupply& supply, Day day, double level) {
    return supply.queensBy(day).reachedWith(level) - supply.owedBy(day);
}

/// What can be promised for a day: the least that is left on it and on due days after it.
class Left {
public:
    Left(SeasonSupply& supply, double level) : supply_(supply), level_(level) {
        for (const Day day : supply.dueDays()) later_.emplace_back(day, leftOn(supply, day, level));
        for (auto i = later_.size(); i-- > 1;)
            later_[i - 1].second = std::min(later_[i - 1].second, later_[i].second);
    }
    [[nodiscard]] std::int32_t on(Day day) const {
        const auto own = leftOn(supply_, day, level_);
        const auto after = std::find_if(later_.begin(), later_.end(),
                                        [&](const auto& due) { return due.first > day; });
        return after == later_.end() ? own : std::min(own, after->second);
    }

private:
    SeasonSupply& supply_;
    double level_;
    std::vector<std::pair<Day, std::int32_t>> later_;  ///< due day, least left from it on
};

}  // namespace

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
    const auto& snapshot = supply.snapshot();
    const Left left(supply, level);
    Day day = std::max(snapshot.today(), snapshot.season().first);
    Day tooEarly = day - Days{1};
    Day enough = snapshot.season().last + kLeadIn;
    if (enough < day || left.on(enough) < queens) return std::nullopt;
    // A later day never has less left: what is owed in between counts for the earlier one too.
    while (enough - tooEarly > Days{1}) {
        const Day middle = tooEarly + (enough - tooEarly) / 2;
        (left.on(middle) < queens ? tooEarly : enough) = middle;
    }
    return enough;
}

std::array<std::optional<Day>, kTokenCount<CatchRule>> firstPromiseByRule(
    const SeasonSupply& supply, std::int32_t queens, double level) {
    std::array<std::optional<Day>, kTokenCount<CatchRule>> days;
    for (std::size_t i = 0; i < days.size(); ++i) {
        auto under = supply.under(static_cast<CatchRule>(i));
        days[i] = firstPromise(under, queens, level);
    }
    return days;
}

}  // namespace tenthday
