/// @file queens_lane.h  Queens in hand day by day with their range, and the orders they are for.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Flags of orders stand in the lane; before they are reckoned: will stand.
[[nodiscard]] bool showsOrders(const Outlook& outlook, const ChartOptions& options);

class QueensLane : public Lane {
public:
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;
    [[nodiscard]] bool staysUnseen(const LaneInput& /*input*/,
                                   const QRectF& /*area*/) const override {
        return true;  // no ribbon ends here
    }
    [[nodiscard]] qreal nameMiddle(const QRectF& area, const TextRuler& ruler) const override;
    void write(const LaneInput& input, Sheet& sheet) override;

private:
    int rows_ = 0;  ///< of flags
    QRectF flags_;  ///< rows of flags and the plot their masts run through
    QRectF plot_;
};

}  // namespace tenthday
