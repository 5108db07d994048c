#include "chart/hit_test.h"

#include "look/space.h"

namespace tenthday {
namespace {

constexpr qreal kLeastGrip = space::kLeastHit;

QRectF grip(const Target& target) {
    const qreal beside = target.rect.width() < kLeastGrip ? kLeastGrip / 2 : 0;
    const qreal above = target.rect.height() < kLeastGrip ? kLeastGrip / 2 : 0;
    return target.rect.adjusted(-beside, -above, beside, above);
}

bool isInSight(const Layout& layout, const Target& target, QPointF point) {
    if (target.key.hit == Hit::LegendName || target.key.hit == Hit::Strip ||
        target.key.hit == Hit::LanesBelow || target.key.hit == Hit::LanesAbove)
        return point.y() >= layout.plot.bottom();
    if (target.key.hit == Hit::YardName || target.key.hit == Hit::LaneName ||
        target.key.hit == Hit::ReadyTotal)
        return point.x() < layout.plot.left() && point.y() >= layout.plot.top() &&
               point.y() < layout.plot.bottom();
    if (point.x() < layout.plot.left() || point.x() > layout.plot.right()) return false;
    const bool inPlot = point.y() >= layout.plot.top() && point.y() < layout.plot.bottom();
    return target.key.hit == Hit::Head ? point.y() < layout.plot.top() : inPlot;
}

/// What lies behind everything: asked only where nothing stands on it.
bool isBehind(Hit hit) {
    return hit == Hit::Ground || hit == Hit::OutsideLimits || hit == Hit::BuilderRow ||
           hit == Hit::YardRow;
}

}  // namespace

const Target* targetAt(const Layout& layout, QPointF point) {
    // Exactly under the pointer first, then the grip around small bars.
    for (auto at = layout.targets.rbegin(); at != layout.targets.rend(); ++at)
        if (!isBehind(at->key.hit) && at->rect.contains(point) && isInSight(layout, *at, point))
            return &*at;
    for (auto at = layout.targets.rbegin(); at != layout.targets.rend(); ++at)
        if (at->key.hit == Hit::Load && grip(*at).contains(point) && isInSight(layout, *at, point))
            return &*at;
    for (const auto hit : {Hit::OutsideLimits, Hit::Ground})
        for (const auto& target : layout.targets)
            if (target.key.hit == hit && target.rect.contains(point) &&
                isInSight(layout, target, point))
                return &target;
    return nullptr;
}

const Target* targetAt(const Layout& layout, QPointF point, Hit hit) {
    for (auto at = layout.targets.rbegin(); at != layout.targets.rend(); ++at)
        if (at->key.hit == hit && at->rect.contains(point) && isInSight(layout, *at, point))
            return &*at;
    return nullptr;
}

const Target* findTarget(const Layout& layout, const TargetKey& key) {
    for (const auto& target : layout.targets)
        if (target.key == key) return &target;
    return nullptr;
}

}  // namespace tenthday
