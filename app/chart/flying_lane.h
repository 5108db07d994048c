/// @file flying_lane.h  Flying days: seen ones solid, others as high as their chance; above them
/// the span of mature drones.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Some weather of the season is known.
[[nodiscard]] bool knowsFlyingDays(const Outlook& outlook);
/// It is known when drones are mature, or when they are thrown out.
[[nodiscard]] bool knowsDrones(const Outlook& outlook);

/// Stands in a chart only where one of the two is known.
class FlyingLane : public Lane {
public:
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;
    [[nodiscard]] qreal nameMiddle(const QRectF& area, const TextRuler& /*ruler*/) const override {
        return area.center().y();
    }
};

}  // namespace tenthday
