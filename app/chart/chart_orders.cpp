#include "chart/chart_orders.h"

namespace tenthday {

ChartOrders::ChartOrders(QObject* parent) : QObject(parent) {
    rest_.setSingleShot(true);
    connect(&rest_, &QTimer::timeout, this, &ChartOrders::ask);
}

void ChartOrders::show(const OutlookPtr& outlook, bool isPreview) {
    if (outlook == wanted_ && isPreview == isPreview_) return;
    work_.cancel();
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
    work_.ask(
        [outlook = wanted_] {
            return Made{outlook, seasonOrdersOf(*outlook)};
        },
        [this](const Made& made) { take(made); });
}

void ChartOrders::take(const Made& made) {
    shown_ = made;
    if (!isPreview_) saved_ = made;
    Q_EMIT reckoned();
}

}  // namespace tenthday
