#include "chart/builder_tracks.h"

#include <utility>

namespace tenthday {
namespace {

constexpr qreal kBelowBar = 9;
constexpr qreal kBelowDenseBar = 1;
constexpr qreal kDenseTrack = 24;  ///< px: lower ones hold bars alone

/// Batches that a preview moves to another graft.
std::unordered_set<Id<Batch>> movedBatches(const LaneInput& input) {
    std::unordered_set<Id<Batch>> moved;
    if (!input.options.before) return moved;
    for (const auto& was : input.options.before->batches) {
        const auto* is = input.find(was->batch->id);
        if (is && was->timeline.graft != is->timeline.graft) moved.insert(was->batch->id);
    }
    return moved;
}

}  // namespace

Stripe RowPlaces::stripe() const {
    Stripe stripe;
    for (const auto* all : {&bars, &marks, &words})
        for (const auto& rect : *all) stripe.add(rect);
    return stripe;
}

void RowPlaces::moveDown(qreal by) {
    for (auto* all : {&bars, &marks, &words})
        for (auto& rect : *all) rect.translate(0, by);
    asked = asked.movedDown(by);
}

BuilderTracks::BuilderTracks(const LaneInput& input)
    : troubles(input.outlook.findings), moved(movedBatches(input)) {}

void BuilderTracks::addBar(const QRectF& rect) {
    bars_.add(rect);
    row_.bars.push_back(rect);
}

void BuilderTracks::addMark(const QRectF& rect) {
    marks_.add(rect);
    row_.marks.push_back(rect);
}

void BuilderTracks::addWord(const QRectF& rect) {
    words_.add(rect);
    row_.words.push_back(rect);
}

RowPlaces BuilderTracks::takeRow() { return std::exchange(row_, {}); }

void BuilderTracks::add(const RowPlaces& row) {
    for (const auto& rect : row.bars) bars_.add(rect);
    for (const auto& rect : row.marks) marks_.add(rect);
    for (const auto& rect : row.words) words_.add(rect);
}

bool BuilderTracks::isDense() const { return track < kDenseTrack; }
qreal BuilderTracks::belowBar() const { return isDense() ? kBelowDenseBar : kBelowBar; }

bool BuilderTracks::isClear(const QRectF& rect) {
    const auto near = rect.adjusted(-3, -1, 3, 1);
    row_.asked.add(near);
    return !marks_.meets(rect) && !words_.meets(near);
}

bool BuilderTracks::isFree(const QRectF& rect) {
    return isClear(rect) && !bars_.meets(rect.adjusted(-2, -1, 2, 1));
}

std::vector<QRectF> BuilderTracks::within(qreal top, qreal bottom) const {
    std::vector<QRectF> all;
    for (const auto* places : {&bars_, &marks_, &words_})
        for (const auto& rect : places->within(top, bottom)) all.push_back(rect);
    return all;
}

}  // namespace tenthday
