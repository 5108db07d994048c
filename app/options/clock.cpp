#include "options/clock.h"

#include <QDate>

namespace tenthday {

Day machineDay() {
    constexpr qint64 kJulianDayOfEpoch = 2440588;  // 1970-01-01
    return Day{Days{static_cast<int>(QDate::currentDate().toJulianDay() - kJulianDayOfEpoch)}};
}

Clock::Clock(std::optional<Day> given, std::function<Day()> machine)
    : given_(given), machine_(std::move(machine)) {}

Day Clock::today(const Book& book) const {
    if (given_) return *given_;
    return book.today ? *book.today : machine_();
}

}  // namespace tenthday
