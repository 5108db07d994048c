#include "chart/ghosts.h"

#include "chart/outline.h"
#include "look/space.h"

namespace tenthday {
namespace {

constexpr qreal kPad = space::kInset;

/// An outline with its label in the upper left, where it has room.
void layGhost(const LaneInput& input, qreal left, qreal right, qreal top, qreal bottom,
              const QString& label, Sheet& sheet) {
    left = std::max(left, input.axis.left());
    right = std::min(right, input.axis.right());
    if (right - left < 2) return;
    const auto rect = sheet.snap().rect(left, top, right, bottom);
    layOutline(Layer::Marks, rect, sheet);
    const QPointF at(rect.left() + kPad, sheet.baselineAt(Type::Small, rect.center().y()));
    const auto words = sheet.textRect(Type::Small, label, at, Align::Left);
    if (words.right() + kPad > rect.right() || words.height() + 2 > rect.height()) return;
    sheet.fill(Layer::Marks, Role::Ground, words.adjusted(-2, -1.5, 2, 1.5));
    sheet.text(Layer::Marks, Role::InkSoft, Type::Small, label, at, Align::Left);
}

}  // namespace

void layProposedLoads(const LaneInput& input, Id<Builder> builder, qreal base, qreal pxPerCell,
                      Sheet& sheet) {
    constexpr qreal kLeast = 4;
    const auto& proposals = input.options.proposals;
    if (!proposals) return;
    for (const auto& load : proposals->loads)
        if (load.builder == builder)
            layGhost(input, input.axis.xOf(load.from), input.axis.xOf(load.until),
                     base - std::max(kLeast, load.cells * pxPerCell), base, load.label, sheet);
}

void layProposedStays(const LaneInput& input, Id<Yard> yard, int mostSides, const QRectF& area,
                      Sheet& sheet) {
    const auto& proposals = input.options.proposals;
    if (!proposals) return;
    const qreal pxPerNuc = area.height() / std::max(1, mostSides);
    for (const auto& stay : proposals->stays)
        if (stay.yard == yard)
            layGhost(input, input.axis.xOf(stay.days.first),
                     input.axis.xOf(stay.days.last + Days{1}), area.top(),
                     area.top() + std::min(mostSides, stay.nucs) * pxPerNuc, stay.label, sheet);
}

}  // namespace tenthday
