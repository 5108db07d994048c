/// @file cells_days_lane.h  On each day cells come out: ripe, ready, left; above, late batches.
#pragma once
#include "chart/cells_day_label.h"

namespace tenthday {

class CellsDaysLane : public Lane {
public:
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;
    void write(const LaneInput& input, Sheet& sheet) override;

private:
    QRectF row_;   ///< where the labels stand
    QRectF head_;  ///< above them: which batches are late
    CellsDayLabels labels_;
};

}  // namespace tenthday
