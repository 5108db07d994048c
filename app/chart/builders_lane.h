/// @file builders_lane.h  A row per builder: its loads as bars whose thickness is their cells.
#pragma once
#include "chart/kept_rows.h"

namespace tenthday {

class BuildersLane : public Lane {
public:
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;
    [[nodiscard]] const KeptRows& rows() const { return rows_; }

private:
    KeptRows rows_;
};

}  // namespace tenthday
