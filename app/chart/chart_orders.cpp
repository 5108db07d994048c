#include "chart/chart_orders.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace tenthday {

ChartOrders::ChartOrders(QObject* parent) : QObject(parent) {
    rest_.setSingleShot(true);
    connect(&rest_, &QTimer::timeout, this, &ChartOrders::ask);
}

void ChartOrders::cancel() {
    if (cancelled_) *cancelled_ = true;
    cancelled_.reset();
}

void ChartOrders::show(const OutlookPtr& outlook, bool isPreview) {
    if (outlook == wanted_ && isPreview == isPreview_) return;
    cancel();
    rest_.stop();
    const bool otherSeason = !outlook || !wanted_ || wanted_->season != outlook->season;
    wanted_ = outlook;
    isPreview_ = isPreview;
    if (otherSeason) shown_ = saved_ = {};
    if (outlook && saved_.of == outlook) shown_ = saved_;
    // An outlook put together by hand may know no weather to reckon with.
    if (!outlook || !outlook->mating || !areOld()) return;
    rest_.start(isPreview ? kRest : 0);
}

void ChartOrders::ask() {
    auto cancelled = std::make_shared<std::atomic<bool>>(false);
    cancelled_ = cancelled;
    QThreadPool::globalInstance()->start([cancelled, me = QPointer(this), outlook = wanted_] {
        if (*cancelled) return;
        const Made made{outlook, seasonOrdersOf(*outlook)};
        QMetaObject::invokeMethod(qApp, [cancelled, me, made] {
            if (me && !*cancelled) me->take(made);
        });
    });
}

void ChartOrders::take(const Made& made) {
    shown_ = made;
    if (!isPreview_) saved_ = made;
    Q_EMIT reckoned();
}

}  // namespace tenthday
