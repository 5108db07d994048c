/// @file hint_lane.h  In place of a lane with nothing in it: what belongs there and how to begin.
#pragma once
#include "chart/lane.h"

namespace tenthday {

class HintLane : public Lane {
public:
    HintLane(QString name, QString hint, bool brief = false)
        : name_(std::move(name)), hint_(std::move(hint)), brief_(brief) {}
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;

private:
    QString name_;
    QString hint_;
    bool brief_;
};

}  // namespace tenthday
