#include "chart/magnet.h"

#include <QThread>
#include <algorithm>
#include <cmath>
#include <optional>

#include "drafting/day_trials.h"

namespace tenthday {

/// Tries days one by one, the nearest first. Asked by one thread after the other.
class Magnet::Search {
public:
    Search(OutlookPtr saved, Id<Batch> batch) : saved_(std::move(saved)), batch_(batch) {}

    /// Tries some more of them.
    void some() {
        constexpr int kAtOnce = 10;
        // The drag goes on meanwhile: its frames come first on a machine of few cores.
        constexpr unsigned long kPauseMs = 4;
        if (!trials_) begin();
        for (int n = 0; n < kAtOnce && !isDone(); ++n, ++tried_) {
            const Day day = start_ + Days{aside(tried_)};
            if (day < saved_->snapshot.today()) continue;
            if (trials_->clashesWithNothing(day)) clear_.push_back(day);
            QThread::msleep(kPauseMs);
        }
        std::sort(clear_.begin(), clear_.end());
    }
    [[nodiscard]] bool isDone() const { return tried_ > 2 * kReach; }
    [[nodiscard]] const std::vector<Day>& clear() const { return clear_; }

private:
    void begin() {
        const auto draft = draftOf(saved_->snapshot, batch_);
        start_ = draft.day;
        trials_.emplace(saved_->snapshot, draft, FreeDays{});
    }
    /// 0, 1, -1, 2, -2 ...
    static int aside(int n) { return n % 2 == 0 ? -n / 2 : n / 2 + 1; }

    OutlookPtr saved_;
    Id<Batch> batch_;
    Day start_{};
    std::optional<DayTrials> trials_;
    int tried_ = 0;
    std::vector<Day> clear_;
};

void Magnet::begin(const OutlookPtr& saved, Id<Batch> batch) {
    end();
    if (saved->snapshot.find(batch)) lookOn(std::make_shared<Search>(saved, batch));
}

void Magnet::lookOn(const std::shared_ptr<Search>& search) {
    isLooking_ = true;
    work_.ask(
        [search] {
            search->some();
            return search->clear();
        },
        [this, search](const std::vector<Day>& clear) {
            clear_ = clear;
            isLooking_ = !search->isDone();
            if (isLooking_) lookOn(search);
            Q_EMIT found();
        });
}

void Magnet::end() {
    work_.cancel();
    isLooking_ = false;
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
