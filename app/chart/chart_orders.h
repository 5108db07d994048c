/// @file chart_orders.h  The orders a chart shows, reckoned beside the window's own work.
#pragma once
#include <QObject>
#include <QTimer>

#include "desk/side_work.h"
#include "outlook/season_orders.h"

namespace tenthday {

/// What is asked last counts; answers to older questions are dropped.
class ChartOrders : public QObject {
    Q_OBJECT

public:
    /// So long a drag must rest before its preview is reckoned, ms.
    static constexpr int kRest = 200;

    explicit ChartOrders(QObject* parent = nullptr);

    /// The season to show; null: none. Reckoned at once when it is saved, once it rests when it is
    /// a preview. Until then the orders reckoned last stay, and are old.
    void show(const OutlookPtr& outlook, bool isPreview);

    /// Null until the first are reckoned.
    [[nodiscard]] const SeasonOrdersPtr& orders() const { return shown_.orders; }
    /// Those of the season as saved; null until they are reckoned.
    [[nodiscard]] const SeasonOrdersPtr& saved() const { return saved_.orders; }
    [[nodiscard]] bool areOld() const { return !areOf(wanted_); }
    [[nodiscard]] bool areOf(const OutlookPtr& outlook) const { return shown_.of == outlook; }

Q_SIGNALS:
    void reckoned();

private:
    /// Orders, and the outlook they were made from.
    struct Made {
        OutlookPtr of;
        SeasonOrdersPtr orders;
    };
    void ask();
    void take(const Made& made);

    OutlookPtr wanted_;
    Made shown_;
    Made saved_;  ///< to go back to when a preview is dropped
    bool isPreview_ = false;
    QTimer rest_;
    SideWork work_{this};
};

}  // namespace tenthday
