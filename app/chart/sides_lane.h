/// @file sides_lane.h  A yard opened: a thin row for each of its nucs, with what is in it each day.
#pragma once
#include "chart/lane.h"
#include "chart/side_row.h"

namespace tenthday {

class SidesLane : public Lane {
public:
    /// @param yard  place in `outlook.nucs.yards`
    explicit SidesLane(std::size_t yard) : yard_(yard) {}
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;
    [[nodiscard]] bool staysUnseen(const LaneInput& /*input*/,
                                   const QRectF& /*area*/) const override {
        return true;  // no ribbon ends here
    }
    /// How late weather makes a batch, in the first of its nucs that has room for it.
    void write(const LaneInput& input, Sheet& sheet) override;

private:
    std::size_t yard_;
    std::vector<SideWait> waits_;
};

}  // namespace tenthday
