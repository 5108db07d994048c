/// @file sides_lane.h  A yard opened: a thin row for each of its nucs, with what is in it each day.
#pragma once
#include "chart/bands.h"
#include "chart/lane.h"

namespace tenthday {

/// The band in which a single nuc is drawn on a day.
[[nodiscard]] Band bandOf(const SideDay& day);

class SidesLane : public Lane {
public:
    /// @param yard  place in `outlook.nucs.yards`
    explicit SidesLane(std::size_t yard) : yard_(yard) {}
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;

private:
    std::size_t yard_;
};

}  // namespace tenthday
