/// @file yard_lane.h  One yard: its nucs day by day as a stack, the ready number in the white.
#pragma once
#include "chart/yard_picture.h"

namespace tenthday {

class YardLane : public Lane {
public:
    /// @param yard  place in `outlook.nucs.yards`
    explicit YardLane(std::size_t yard) : yard_(yard) {}
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;
    void write(const LaneInput& input, Sheet& sheet) override;

private:
    std::size_t yard_;
    YardPicture picture_;
};

}  // namespace tenthday
