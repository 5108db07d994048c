#include "batches/trial_worker.h"

#include <QCoreApplication>
#include <QPointer>

#include "desk/beside.h"

namespace tenthday {
namespace {

constexpr std::size_t kNearest = 3;

}  // namespace

void TrialWorker::cancel() {
    if (cancelled_) *cancelled_ = true;
    cancelled_.reset();
}

void TrialWorker::ask(const OutlookPtr& season, const Question& question) {
    cancel();
    auto cancelled = std::make_shared<std::atomic<bool>>(false);
    cancelled_ = cancelled;
    // The worker touches nothing of this object; its answers come back through the event loop.
    const auto answer = [cancelled, me = QPointer(this)](const TrialResult& result) {
        QMetaObject::invokeMethod(qApp, [cancelled, me, result] {
            if (me && !*cancelled) Q_EMIT me->found(result);
        });
    };
    beside(Haste::Later, [=] {  // what is typed comes first
        const auto isCancelled = [&] { return cancelled->load(); };
        if (isCancelled()) return;
        const auto& draft = question.draft;
        DayTrials trials(*season, draft, question.free);
        TrialResult result;
        if (auto own = trials.on(draft.day, question.repeat)) result.own = std::move(own).value();
        if (question.otherDays) result.week = trials.week(isCancelled);
        if (isCancelled()) return;
        answer(result);
        if (!question.otherDays) return;
        result.nearest = trials.nearestClear(kNearest, isCancelled);
        if (!isCancelled()) answer(result);
    });
}

}  // namespace tenthday
