#include "chart/gesture_dragging_edge.h"

#include <cmath>

#include "chart/gesture_resting.h"

namespace tenthday {
namespace {

constexpr qreal kLeastStep = 3;  ///< px of a cell: thinner ones could not be aimed at
constexpr int kMostGrafts = 999;

ChartWish wishFor(const TargetKey& edge, int cells) {
    ChartWish wish;
    wish.batches = {edge.batch};
    wish.grafts = ChartWish::Grafts{edge.batch, edge.index, cells};
    return wish;
}

}  // namespace

DraggingEdgeGesture::DraggingEdgeGesture(const ChartHand& hand, QPointF grabbed,
                                         const TargetKey& edge)
    : grabbed_(grabbed),
      edge_(edge),
      saved_(hand.savedGrafts(edge.batch, edge.index)),
      shown_(saved_),
      pxPerCell_(std::max(kLeastStep, hand.pxPerCell())) {}

Gesture::Next DraggingEdgeGesture::moved(ChartHand& hand, QPointF at) {
    hand.setPointer(Qt::SizeVerCursor);
    const auto more = static_cast<int>(std::lround((grabbed_.y() - at.y()) / pxPerCell_));
    const int cells = std::clamp(saved_ + more, 1, kMostGrafts);
    if (cells == shown_) return nullptr;
    shown_ = cells;
    if (cells == saved_)
        hand.dropPreview();
    else
        hand.showPreview(wishFor(edge_, cells));
    return nullptr;
}

std::vector<ChartWish> DraggingEdgeGesture::expected(const ChartHand& /*hand*/) const {
    std::vector<ChartWish> wishes;
    for (const int cells : {shown_ + 1, shown_ - 1})
        if (cells != saved_ && cells > 0) wishes.push_back(wishFor(edge_, cells));
    return wishes;
}

Gesture::Next DraggingEdgeGesture::release(ChartHand& hand, QPointF at) {
    moved(hand, at);
    if (shown_ != saved_) hand.save(wishFor(edge_, shown_));
    hand.setPointer(Qt::ArrowCursor);
    return std::make_unique<RestingGesture>();
}

Gesture::Next DraggingEdgeGesture::cancel(ChartHand& hand) {
    hand.dropPreview();
    hand.setPointer(Qt::ArrowCursor);
    return std::make_unique<RestingGesture>();
}

}  // namespace tenthday
