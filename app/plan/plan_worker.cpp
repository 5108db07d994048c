#include "plan/plan_worker.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QPointer>
#include <QThreadPool>

#include "plan/event_brake.h"

namespace tenthday {

/// The worker touches nothing of this object; what it tells comes back through the event loop.
template <class Find, class Tell>
void PlanWorker::start(Find find, Tell tell) {
    drop();
    const auto run = std::make_shared<Run>();
    run_ = run;
    QThreadPool::globalInstance()->start([run, find, tell, me = QPointer(this)] {
        if (run->dropped) return;
        PlanControl control;
        control.cancel = &run->stop;
        QElapsedTimer clock;
        clock.start();
        EventBrake brake;  // the solver tells of every step
        control.report = [run, me, &clock, &brake](const PlanProgress& progress) {
            if (!brake.lets(clock.elapsed())) return;
            QMetaObject::invokeMethod(qApp, [run, me, progress] {
                if (me && !run->dropped) Q_EMIT me->progressed(progress);
            });
        };
        const auto answer = find(control);
        QMetaObject::invokeMethod(qApp, [run, me, tell, answer] {
            if (!me || run->dropped) return;
            me->run_.reset();
            tell(*me, answer);
        });
    });
}

void PlanWorker::plan(const OutlookPtr& outlook, const PlanQuestion& question) {
    start([outlook, question](
              const PlanControl& control) { return planSeason(*outlook, question, control); },
          [](PlanWorker& me, const Result<PlanAnswer>& answer) { Q_EMIT me.planned(answer); });
}

void PlanWorker::findWays(const OutlookPtr& outlook, const PlanQuestion& question) {
    start([outlook,
           question](const PlanControl& control) { return waysToFix(*outlook, question, control); },
          [](PlanWorker& me, const Result<std::vector<WayToFix>>& ways) {
              Q_EMIT me.waysFound(ways);
          });
}

void PlanWorker::stop() {
    if (run_) run_->stop = true;
}

void PlanWorker::drop() {
    if (!run_) return;
    run_->dropped = true;
    run_->stop = true;
    run_.reset();
}

}  // namespace tenthday
