#include "mating/egg_hours.h"

#include <algorithm>

namespace tenthday {

double EggHours::by(double hour) const {
    if (spread_) return spread_->by(hour);
    const auto after = std::upper_bound(steps_.begin(), steps_.end(), hour,
                                        [](double h, const Step& step) { return h < step.hour; });
    if (after == steps_.begin()) return 0;
    return after == steps_.end() ? 1 : std::prev(after)->by;
}

double EggHours::at(double q) const {
    if (spread_) return spread_->at(q);
    // A share summed from many falls short of a round figure by a rounding's breadth.
    const auto found = std::find_if(steps_.begin(), steps_.end() - 1,
                                    [&](const Step& step) { return step.by >= q - 1e-12; });
    return found->hour;
}

}  // namespace tenthday
