#include "chart/bands.h"

namespace tenthday {

Role groundOf(Band band) {
    switch (band) {
        case Band::JudgedGood:
            return Role::JudgedGood;
        case Band::Laying:
            return Role::Laying;
        case Band::DueToFly:
            return Role::DueToFly;
        case Band::Virgin:
            return Role::Virgin;
        case Band::Cell:
            return Role::SealedCells;
        case Band::DroneLayer:
            return Role::DroneLayer;
        case Band::NoQueen:
            return Role::NoQueen;
        case Band::Waiting:
            return Role::Waiting;
        case Band::Likely:
            return Role::Likely;
        case Band::Ready:
            return Role::Ready;
        case Band::Spent:
            return Role::SpentGround;
        case Band::NotStocked:
            return Role::NotStockedHatch;
    }
    return Role::Ground;
}

Role inkOn(Band band) {
    switch (band) {
        case Band::JudgedGood:
            return Role::JudgedGoodInk;
        case Band::Laying:
            return Role::LayingInk;
        case Band::DueToFly:
            return Role::DueToFlyInk;
        case Band::Virgin:
            return Role::VirginInk;
        case Band::Cell:
            return Role::CellsInk;
        default:
            return Role::NoQueenInk;
    }
}

qreal dayGap(qreal dayWidth, const Snap& snap) {
    constexpr qreal kGappedDay = 7;
    return dayWidth >= kGappedDay ? snap.hair() : 0;
}

void layNotStocked(Layer layer, const QRectF& rect, qreal spacing, Sheet& sheet) {
    // They hang from the top, where neighbouring days meet: lines of the yard, not of the window.
    const qreal hair = sheet.snap().hair();
    for (qreal y = rect.top() + spacing / 2; y + hair < rect.bottom(); y += spacing)
        sheet.fill(layer, Role::NotStockedHatch, {rect.left(), y, rect.width(), hair});
}

namespace {

/// Told apart by direction and by density: what is likely has few lines that fall, where no queen
/// was found many rise, and a drone layer's cross.
void hatch(Layer layer, Band band, const QRectF& rect, Sheet& sheet) {
    if (band == Band::Likely) sheet.hatch(layer, Role::LikelyHatch, rect, Slope::Falling, 8, 1);
    if (band == Band::NoQueen) sheet.hatch(layer, Role::NoQueenHatch, rect, Slope::Rising, 3.5, 1);
    if (band == Band::DroneLayer)
        for (const auto slope : {Slope::Rising, Slope::Falling})
            sheet.hatch(layer, Role::DroneLayerHatch, rect, slope, 4.5, 1);
}

/// In the light look it is hardly lighter than the ground. Of a slice too low the lines would leave
/// nothing.
void layReadyEdges(const QRectF& rect, Sheet& sheet) {
    constexpr qreal kLeastSlice = 5;
    if (rect.height() < kLeastSlice) return;
    const qreal hair = sheet.snap().hair();
    for (const qreal y : {rect.top(), rect.bottom() - hair})
        sheet.fill(Layer::Body, Role::ReadyEdge, {rect.left(), y, rect.width(), hair});
}

}  // namespace

void layBand(Band band, const QRectF& whole, qreal gap, Sheet& sheet, int target) {
    auto rect = whole;
    // The line where neighbours in a stack meet is ground left free.
    if (rect.height() >= 4) rect.setTop(rect.top() + sheet.snap().hair());
    if (rect.width() > 2 * gap) rect.setRight(rect.right() - gap);
    if (band == Band::NotStocked) return layNotStocked(Layer::Body, whole, 5, sheet);
    sheet.fill(Layer::Body, groundOf(band), rect, target);
    hatch(Layer::Body, band, rect, sheet);
    if (band == Band::Ready) layReadyEdges(rect, sheet);
}

void layBandSwatch(Band band, const QRectF& box, Sheet& sheet) {
    sheet.fill(Layer::Heads, groundOf(band), box, -1, 2);
    hatch(Layer::Heads, band, box, sheet);
}

void layUnsureEggs(double share, const QRectF& rect, qreal gap, Sheet& sheet, int target) {
    layBand(Band::DueToFly, rect, gap, sheet, target);
    auto laying = rect;
    if (laying.width() > 2 * gap) laying.setRight(laying.right() - gap);
    const qreal hair = sheet.snap().hair();
    laying.setTop(laying.bottom() - std::max(hair, share * (laying.height() - hair)));
    sheet.fill(Layer::Body, groundOf(Band::Laying), laying, target);
}

}  // namespace tenthday
