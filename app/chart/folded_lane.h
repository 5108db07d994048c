/// @file folded_lane.h  A lane folded to one line: its name, and what pressing it does.
#pragma once
#include "chart/lane.h"

namespace tenthday {

class FoldedLane : public Lane {
public:
    explicit FoldedLane(QString name) : name_(std::move(name)) {}
    [[nodiscard]] LaneHeight height(const LaneInput& input, const TextRuler& ruler) const override;
    void lay(const LaneInput& input, const QRectF& area, Sheet& sheet) override;

private:
    QString name_;
};

/// The mark beside a lane's name, and the place that folds it.
/// @param middle  y of the name
void layFolder(const LaneInput& input, LaneName lane, bool folded, const QRectF& area, qreal middle,
               Sheet& sheet);

}  // namespace tenthday
