#include "chart/magnet.h"

#include <QThread>
#include <algorithm>
#include <cmath>
#include <optional>

#include "drafting/day_trials.h"

namespace tenthday {

namespace {

/// Days aside of the batch's own, in the order they are tried: those near by first, in runs. From
/// day to day little differs, and each is reckoned from the one before.
std::vector<Days> daysAside() {
    constexpr int kNear = 5;
    std::vector<Days> days;
    const auto run = [&](int from, int until, int by) {
        for (int i = from; i <= until; ++i) days.emplace_back(by * i);
    };
    run(0, kNear, 1);
    run(1, kNear, -1);
    run(kNear + 1, Magnet::kReach, 1);
    run(kNear + 1, Magnet::kReach, -1);
    return days;
}

}  // namespace

/// Tries days one by one. Asked by one thread after the other.
class Magnet::Search {
public:
    Search(OutlookPtr saved, Id<Batch> batch, std::shared_ptr<const Pace> pace)
        : saved_(std::move(saved)), batch_(batch), pace_(std::move(pace)) {}

    /// Tries some more of them.
    void some() {
        constexpr int kAtOnce = 11;
        for (int n = 0; n < kAtOnce && !isDone(); ++n, ++tried_) {
            giveWay();
            if (pace_->isOver) return;
            if (!trials_) begin();
            if (isDone()) break;  // all were before today
            const Day day = start_ + days_[tried_];
            if (trials_->clashesWithNothing(day)) clear_.push_back(day);
        }
        std::sort(clear_.begin(), clear_.end());
    }
    [[nodiscard]] bool isDone() const { return tried_ == days_.size(); }
    [[nodiscard]] const std::vector<Day>& clear() const { return clear_; }

private:
    void begin() {
        const auto draft = draftOf(saved_->snapshot, batch_);
        start_ = draft.day;
        std::erase_if(days_, [&](Days by) { return start_ + by < saved_->snapshot.today(); });
        trials_.emplace(*saved_, draft, FreeDays{});
    }
    /// The drag goes on meanwhile: its frames come first on a machine of few cores. A hand that
    /// never rests gets its clear days all the same.
    void giveWay() const {
        constexpr unsigned long kPauseMs = 4;
        constexpr int kMostPauses = 6;
        int pauses = 0;
        do QThread::msleep(kPauseMs);
        while (pace_->isFrame && !pace_->isOver && ++pauses < kMostPauses);
    }

    OutlookPtr saved_;
    Id<Batch> batch_;
    std::shared_ptr<const Pace> pace_;
    Day start_{};
    std::optional<DayTrials> trials_;
    std::vector<Days> days_ = daysAside();
    std::size_t tried_ = 0;
    std::vector<Day> clear_;
};

void Magnet::begin(const OutlookPtr& saved, Id<Batch> batch) {
    end();
    if (saved->snapshot.find(batch)) lookOn(std::make_shared<Search>(saved, batch, pace_));
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
    pace_->isOver = true;
    pace_ = std::make_shared<Pace>();
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
