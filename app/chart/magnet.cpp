#include "chart/magnet.h"

#include <cmath>

#include "drafting/day_trials.h"

namespace tenthday {
namespace {

std::vector<Day> clearDaysAbout(const Outlook& saved, Id<Batch> id) {
    std::vector<Day> clear;
    if (!saved.snapshot.find(id)) return clear;
    const auto draft = draftOf(saved.snapshot, id);
    DayTrials trials(saved.snapshot, draft, FreeDays{});
    for (int by = -Magnet::kReach; by <= Magnet::kReach; ++by) {
        const Day day = draft.day + Days{by};
        if (day < saved.snapshot.today()) continue;
        if (trials.clashesWithNothing(day)) clear.push_back(day);
    }
    return clear;
}

}  // namespace

void Magnet::begin(const OutlookPtr& saved, Id<Batch> batch) {
    end();
    work_.ask([saved, batch] { return clearDaysAbout(*saved, batch); },
              [this](const std::vector<Day>& clear) {
                  clear_ = clear;
                  Q_EMIT found();
              });
}

void Magnet::end() {
    work_.cancel();
    clear_.clear();
}

Days drawnTo(Day start, qreal days, const std::vector<Day>& clear) {
    constexpr qreal kPull =
        0.85;  // of a day; what lies between two clear days keeps 0.3 of its own
    const Days nearest{static_cast<int>(std::lround(days))};
    Days best = nearest;
    qreal away = kPull;
    for (const Day day : clear) {
        const Days to = day - start;
        const qreal distance = std::abs(days - static_cast<qreal>(to.count()));
        if (distance > away) continue;
        away = distance;
        best = to;
    }
    return best;
}

}  // namespace tenthday
