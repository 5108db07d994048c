/// @file trial_worker.h  Tries a draft on other days beside the window's own work.
#pragma once
#include <QObject>
#include <atomic>
#include <memory>

#include "drafting/day_trials.h"

namespace tenthday {

/// What is known of a draft's days; the later parts come when they are found.
struct TrialResult {
    std::optional<DayTrial> own;
    std::vector<DayTrial> week;
    std::optional<std::vector<DayTrial>> nearest;
};

/// One question at a time: a new one ends the one before, whose answers are dropped. Ending never
/// waits.
class TrialWorker : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;
    ~TrialWorker() override { cancel(); }

    /// What is asked.
    struct Question {
        BatchDraft draft;
        Repeat repeat;  ///< counts for the draft's own day
        FreeDays free;
        bool otherDays = true;  ///< its week and the nearest clear days too
    };
    void ask(const OutlookPtr& season, const Question& question);
    void cancel();

Q_SIGNALS:
    /// First with the draft's own day and its week, then with the nearest clear days too; only the
    /// own day where no other is asked for.
    void found(const tenthday::TrialResult& result);

private:
    std::shared_ptr<std::atomic<bool>> cancelled_;
};

}  // namespace tenthday
