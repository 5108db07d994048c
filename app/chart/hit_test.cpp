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

/// Beside, above, under or in the plot.
QRectF regionOf(const Layout& layout, Hit hit) {
    constexpr qreal kFar = 1e6;
    const auto& plot = layout.plot;
    switch (hit) {
        case Hit::LegendName:
        case Hit::Strip:
        case Hit::LanesBelow:
        case Hit::LanesAbove:
            return {-kFar, plot.bottom(), 2 * kFar, kFar};
        case Hit::YardName:
        case Hit::LaneName:
        case Hit::ReadyTotal:
            return {-kFar, plot.top(), plot.left() + kFar, plot.height()};
        case Hit::Head:
            return {plot.left(), -kFar, plot.width(), plot.top() + kFar};
        default:
            return plot;
    }
}

bool isInSight(const Layout& layout, const Target& target, QPointF point) {
    const auto region = regionOf(layout, target.key.hit);
    // Where regions meet, what lies between is of the lower and of the right one.
    return region.contains(point) && point.y() < region.bottom() &&
           (point.x() < region.right() || region.right() > layout.plot.left());
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

QRectF seenPart(const Layout& layout, const Target& target) {
    return target.rect.intersected(regionOf(layout, target.key.hit));
}

const Target* findTarget(const Layout& layout, const TargetKey& key) {
    for (const auto& target : layout.targets)
        if (target.key == key) return &target;
    return nullptr;
}

}  // namespace tenthday
