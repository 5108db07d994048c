/// @file plan_worker.h  Plans a season beside the window's own work.
#pragma once
#include <QObject>
#include <atomic>
#include <memory>

#include "planning/ways.h"

namespace tenthday {

/// One question at a time: a new one ends the one before, whose answer is dropped. Ending never
/// waits.
class PlanWorker : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;
    ~PlanWorker() override { drop(); }

    void plan(const OutlookPtr& outlook, const PlanQuestion& question);
    void findWays(const OutlookPtr& outlook, const PlanQuestion& question);
    /// Ends soon, with the best found so far.
    void stop();
    /// Ends soon, and nothing is told of it.
    void drop();
    [[nodiscard]] bool isWorking() const { return run_ != nullptr; }

Q_SIGNALS:
    void progressed(const tenthday::PlanProgress& progress);
    void planned(const tenthday::Result<tenthday::PlanAnswer>& answer);
    void waysFound(const tenthday::Result<std::vector<tenthday::WayToFix>>& ways);

private:
    struct Run {
        std::atomic<bool> stop = false;
        std::atomic<bool> dropped = false;
    };
    template <class Find, class Tell>
    void start(Find find, Tell tell);

    std::shared_ptr<Run> run_;
};

}  // namespace tenthday
