#include "chart/magnet.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <utility>

#include "drafting/day_trials.h"

namespace tenthday {

namespace {

using Clock = std::chrono::steady_clock;

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

/// When a search may take the machine: seldom in a frame or between frames that come fast one after
/// the other, where all cores are wanted for what is made ahead of the next.
class Magnet::Pace {
public:
    void frameBegins() {
        const std::lock_guard lock(mutex_);
        isFrame_ = true;
    }
    void frameEnds() {
        const std::lock_guard lock(mutex_);
        isFrame_ = false;
        frameEnded_ = Clock::now();
        changed_.notify_all();
    }
    void end() {
        const std::lock_guard lock(mutex_);
        isOver_ = true;
        changed_.notify_all();
    }
    /// Returns when the next day may be tried: at once while none is made, else in a while, so that
    /// a hand that never rests gets its clear days all the same. @return false: it is over
    [[nodiscard]] bool awaitTurn() {
        using namespace std::chrono_literals;
        constexpr auto kRest = 20ms;
        constexpr auto kPatience = 300ms;
        std::unique_lock lock(mutex_);
        const auto latest = Clock::now() + kPatience;
        while (!isOver_) {
            const auto turn = isFrame_ ? latest : std::min(latest, frameEnded_ + kRest);
            if (turn <= Clock::now()) break;
            changed_.wait_until(lock, turn);
        }
        return !isOver_;
    }

private:
    std::mutex mutex_;
    std::condition_variable changed_;
    bool isFrame_ = false;
    bool isOver_ = false;
    Clock::time_point frameEnded_ = Clock::now();  ///< a search begins with a frame to come
};

Magnet::Magnet(QObject* parent) : QObject(parent), pace_(std::make_shared<Pace>()) {}
void Magnet::frameBegins() { pace_->frameBegins(); }
void Magnet::frameEnds() { pace_->frameEnds(); }

/// Tries days one by one. Asked by one thread after the other.
class Magnet::Search {
public:
    Search(OutlookPtr saved, Id<Batch> batch, std::shared_ptr<Pace> pace)
        : saved_(std::move(saved)), batch_(batch), pace_(std::move(pace)) {}

    /// Tries some more of them.
    void some() {
        using namespace std::chrono_literals;
        constexpr int kAtOnce = 6;
        constexpr auto kLongEnough = 200ms;  // to tell what was found
        const auto begun = Clock::now();
        for (int n = 0; n < kAtOnce && !isDone(); ++n, ++tried_) {
            if (n > 0 && Clock::now() - begun > kLongEnough) break;
            if (!pace_->awaitTurn()) return;
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

    OutlookPtr saved_;
    Id<Batch> batch_;
    std::shared_ptr<Pace> pace_;
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
    pace_->end();
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
