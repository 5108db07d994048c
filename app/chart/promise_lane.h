/// @file promise_lane.h  What more can be promised, week by week.
#pragma once
#include "chart/lane.h"

namespace tenthday {

class PromiseLane : public Lane {
public:
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;
    [[nodiscard]] bool staysUnseen(const LaneInput& /*input*/,
                                   const QRectF& /*area*/) const override {
        return true;  // no ribbon ends here
    }
    [[nodiscard]] qreal nameMiddle(const QRectF& area, const TextRuler& ruler) const override;
};

}  // namespace tenthday
