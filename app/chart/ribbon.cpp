#include "chart/ribbon.h"

#include <numeric>

namespace tenthday {
namespace {

/// A strand of the trunk: x span at one height.
struct Strand {
    qreal left;
    qreal right;
};

/// Parts of a trunk that ends at `right`, from right to left, by share of `width`.
std::vector<Strand> strandsOf(const std::vector<qreal>& cells, qreal right, qreal width) {
    const qreal total = std::accumulate(cells.begin(), cells.end(), 0.0);
    std::vector<Strand> strands;
    for (const qreal count : cells) {
        const qreal part = total > 0 ? width * count / total : 0;
        strands.push_back({right - part, right});
        right -= part;
    }
    return strands;
}

/// From a bar's lower right corner into the trunk.
QPainterPath gather(const Ribbon::Out& out, const Strand& strand, qreal top) {
    const qreal width = strand.right - strand.left;
    const qreal y = out.right.y();
    const qreal bend = (top - y) / 2;
    const qreal right = out.right.x();
    QPainterPath path;
    path.moveTo(right - width, y);
    path.lineTo(right, y);
    path.cubicTo(right, y + bend, strand.right, top - bend, strand.right, top);
    path.lineTo(strand.left, top);
    path.cubicTo(strand.left, top - bend, right - width, y + bend, right - width, y);
    path.closeSubpath();
    return path;
}

/// Down the trunk, then opening into a yard's block from its side.
QPainterPath spread(const Ribbon::In& in, const Strand& strand, qreal top) {
    const qreal height = in.bottom - in.top;
    const qreal reach = std::max(6.0, in.left - strand.right);
    const qreal turn = std::max(top, in.top - std::min(reach * 1.6 + 8, in.top - top));
    QPainterPath path;
    path.moveTo(strand.left, top);
    path.lineTo(strand.right, top);
    path.lineTo(strand.right, turn);
    path.cubicTo(strand.right, in.top, strand.right, in.top, in.left, in.top);
    path.lineTo(in.left, in.bottom);
    path.cubicTo(strand.left, in.bottom - 0.1 * height, strand.left, in.top + 0.55 * height,
                 strand.left, std::min(turn, in.top));
    path.closeSubpath();
    return path;
}

}  // namespace

void layRibbon(const LaneInput& input, qreal top, Sheet& sheet) {
    auto& ends = input.ribbon;
    if (ends.outs.empty() || ends.ins.empty()) return;
    std::vector<qreal> outCells;
    std::vector<qreal> inCells;
    qreal thickness = 0;
    qreal right = input.axis.right();
    for (const auto& out : ends.outs) {
        outCells.push_back(out.cells);
        thickness += out.thickness;
        right = std::min(right, out.right.x());
        top = std::max(top, out.right.y() + 12);
    }
    for (const auto& in : ends.ins) {
        inCells.push_back(in.cells);
        right = std::min(right, in.left - 3);
    }
    const qreal width = std::min(thickness, std::max(input.axis.dayWidth() * 0.8, 9.0));
    if (right - width < input.axis.left()) return;
    const auto gathered = strandsOf(outCells, right, width);
    QPainterPath above;
    for (std::size_t i = 0; i < ends.outs.size(); ++i)
        above.addPath(gather(ends.outs[i], gathered[i], top));
    // Nearer yards branch off first, on the side the days run to: no strand crosses another.
    const auto spreads = strandsOf(inCells, right, width);
    for (std::size_t i = 0; i < ends.ins.size(); ++i)
        ends.course.addPath(spread(ends.ins[i], spreads[i], top));
    above.setFillRule(Qt::WindingFill);
    ends.course.setFillRule(Qt::WindingFill);
    sheet.path(Layer::Under, Role::Ribbon, above);
    sheet.path(Layer::Ribbon, Role::Ribbon, ends.course);
    // Copies of a path share what it reckons when first asked. Asked here, the lanes that keep
    // clear of it side by side find it there.
    (void)ends.course.controlPointRect();
}

}  // namespace tenthday
