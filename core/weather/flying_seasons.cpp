#include "weather/flying_seasons.h"

#include <algorithm>

namespace tenthday {
namespace {

constexpr std::int8_t kUnknown = -1;

int yearOf(Day day) { return int{date::year_month_day{day}.year()}; }

/// The record as one stretch of days without gaps in its numbering.
class Stretch {
public:
    explicit Stretch(std::span<const FlyingRecordDay> record) {
        if (record.empty()) return;
        const auto [first, last] =
            std::minmax_element(record.begin(), record.end(),
                                [](const auto& a, const auto& b) { return a.day < b.day; });
        days_ = {first->day, last->day};
        flags_.assign(static_cast<std::size_t>(days_.size()), kUnknown);
        for (const auto& day : record)
            flags_[static_cast<std::size_t>((day.day - days_.first).count())] =
                day.flying ? std::int8_t{1} : std::int8_t{0};
    }

    [[nodiscard]] const DayWindow& days() const { return days_; }
    [[nodiscard]] std::int8_t on(Day day) const {
        return days_.contains(day) ? flags_[static_cast<std::size_t>((day - days_.first).count())]
                                   : kUnknown;
    }

private:
    DayWindow days_{Day{Days{1}}, Day{Days{0}}};
    std::vector<std::int8_t> flags_;
};

/// Builds the possible seasons of a stretch.
class Maker {
public:
    Maker(const Stretch& record, const DayWindow& season, const DayWindow& window)
        : record_(record),
          season_{static_cast<std::size_t>((season.first - window.first).count()),
                  static_cast<std::size_t>(season.size())} {
        oldest_ = yearOf(window.first) - yearOf(record.days().first) + 1;
        const int newest = std::max(yearOf(window.first) - yearOf(record.days().last) - 1, 1);
        for (int years = newest; years <= oldest_; ++years) {
            auto& days = mapped_.emplace_back();
            days.reserve(static_cast<std::size_t>(window.size()));
            for (Day day = window.first; day <= window.last; day += Days{1})
                days.push_back(yearsBefore(day, years));
        }
        newest_ = newest;
    }

    [[nodiscard]] int oldest() const { return oldest_; }

    /// Nine days in ten of the season are recorded.
    [[nodiscard]] bool serves(int years, Days shift) const {
        if (years < newest_) return false;
        const auto& days = daysOf(years);
        std::size_t found = 0;
        for (std::size_t i = 0; i < season_.days; ++i)
            found += record_.on(days[season_.first + i] + shift) != kUnknown ? 1 : 0;
        return found * 10 >= season_.days * 9;
    }

    [[nodiscard]] std::vector<std::uint8_t> season(int years, Days shift) const {
        std::vector<std::uint8_t> flags(daysOf(years).size());
        std::uint8_t last = 0;
        for (std::size_t i = 0; i < flags.size(); ++i) {
            if (const auto flag = flagOf(i, years, shift); flag != kUnknown)
                last = static_cast<std::uint8_t>(flag);
            flags[i] = last;
        }
        return flags;
    }

private:
    [[nodiscard]] const std::vector<Day>& daysOf(int years) const {
        return mapped_[static_cast<std::size_t>(years - newest_)];
    }

    /// The record of that year; where it has none, of the year next to it that has.
    [[nodiscard]] std::int8_t flagOf(std::size_t i, int years, Days shift) const {
        for (int away = 0; away <= oldest_ - newest_; ++away)
            for (const int other : {years + away, years - away}) {
                if (other < newest_ || other > oldest_) continue;
                if (const auto flag = record_.on(daysOf(other)[i] + shift); flag != kUnknown)
                    return flag;
            }
        return kUnknown;
    }

    const Stretch& record_;
    struct {
        std::size_t first;
        std::size_t days;
    } season_;
    int oldest_ = 0;
    int newest_ = 1;
    std::vector<std::vector<Day>> mapped_;  ///< per years back from newest_: the window's days then
};

}  // namespace

Day yearsBefore(Day day, int years) {
    const date::year_month_day ymd{day};
    const auto year = ymd.year() - date::years{years};
    const date::year_month_day earlier{year, ymd.month(), ymd.day()};
    return Day{date::local_days{earlier.ok() ? earlier : year / ymd.month() / date::last}};
}

FlyingSeasons::FlyingSeasons(std::span<const FlyingRecordDay> record, DayWindow season,
                             DayWindow window, std::int32_t shift)
    : window_(window), known_(static_cast<std::size_t>(window.size()), kUnknown) {
    const Stretch stretch(record);
    for (std::size_t i = 0; i < known_.size(); ++i)
        known_[i] = stretch.on(window.first + Days{static_cast<int>(i)});
    if (stretch.days().isEmpty()) return;
    const Maker maker(stretch, season, window);
    for (int years = maker.oldest(); years >= 1; --years) {
        const auto before = flying_.size();
        for (std::int32_t by = -shift; by <= shift; ++by)
            if (maker.serves(years, Days{by})) flying_.push_back(maker.season(years, Days{by}));
        if (flying_.size() > before) years_.push_back(yearOf(season.first) - years);
    }
    for (auto& possible : flying_)
        for (std::size_t i = 0; i < known_.size(); ++i)
            if (known_[i] != kUnknown) possible[i] = known_[i] == 1 ? 1 : 0;
}

std::optional<bool> FlyingSeasons::known(Day day) const {
    if (!window_.contains(day) || known_[index(day)] == kUnknown) return std::nullopt;
    return known_[index(day)] == 1;
}

std::optional<double> FlyingSeasons::chance(Day day) const {
    if (const auto sure = known(day)) return *sure ? 1.0 : 0.0;
    if (flying_.empty() || !window_.contains(day)) return std::nullopt;
    std::size_t flies = 0;
    for (const auto& season : flying_) flies += season[index(day)];
    return static_cast<double>(flies) / static_cast<double>(flying_.size());
}

bool isInOneOf(std::span<const DayWindow> stays, Day day) {
    return std::any_of(stays.begin(), stays.end(),
                       [&](const DayWindow& stay) { return stay.contains(day); });
}

FlyingSeasons FlyingSeasons::onlyIn(std::span<const DayWindow> stays, DayWindow days) const {
    days = {std::max(days.first, window_.first), std::min(days.last, window_.last)};
    FlyingSeasons only = *this;
    if (days.isEmpty()) days = {window_.first, window_.first - Days{1}};  // nothing is known then
    only.window_ = days;
    const auto from = static_cast<std::ptrdiff_t>(index(days.first));
    const auto size = static_cast<std::ptrdiff_t>(days.size());
    only.known_.assign(known_.begin() + from, known_.begin() + from + size);
    for (std::size_t i = 0; i < flying_.size(); ++i)
        only.flying_[i].assign(flying_[i].begin() + from, flying_[i].begin() + from + size);
    for (Day day = days.first; day <= days.last; day += Days{1}) {
        if (isInOneOf(stays, day)) continue;
        only.known_[only.index(day)] = 0;
        for (auto& season : only.flying_) season[only.index(day)] = 0;
    }
    return only;
}

}  // namespace tenthday
