#include "chart/load_bar.h"

#include "chart/chart_head.h"
#include "screen_text/chart_hand_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

constexpr qreal kStub = 6;

/// A bar's upper edge over part of its span, left to right.
struct Edge {
    std::vector<QPointF> points;

    /// The part between two x, with the height at each end found between points.
    [[nodiscard]] Edge between(qreal from, qreal to) const {
        Edge part;
        for (std::size_t i = 0; i + 1 < points.size(); ++i) {
            const QLineF piece(points[i], points[i + 1]);
            const qreal left = std::max(piece.x1(), from);
            const qreal right = std::min(piece.x2(), to);
            if (left > right || piece.x1() >= to) continue;
            part.push(at(piece, left));
            part.push(at(piece, right));
        }
        return part;
    }
    [[nodiscard]] QPainterPath closedAt(qreal base) const {
        QPainterPath path;
        if (points.empty()) return path;
        path.moveTo(points.front().x(), base);
        for (const auto& point : points) path.lineTo(point);
        path.lineTo(points.back().x(), base);
        path.closeSubpath();
        return path;
    }
    [[nodiscard]] qreal lowestY() const {
        qreal y = points.empty() ? 0 : points.front().y();
        for (const auto& point : points) y = std::max(y, point.y());
        return y;
    }
    [[nodiscard]] qreal highestY() const {
        qreal y = points.empty() ? 0 : points.front().y();
        for (const auto& point : points) y = std::min(y, point.y());
        return y;
    }

private:
    static QPointF at(const QLineF& piece, qreal x) {
        return piece.dx() <= 0 ? piece.p1() : piece.pointAt((x - piece.x1()) / piece.dx());
    }
    void push(QPointF point) {
        if (points.empty() || points.back() != point) points.push_back(point);
    }
};

struct BarShape {
    Edge edge;
    qreal left;
    qreal sealedAt;  ///< x from which its cells are sealed; the right end when none are
    qreal right;
    double lastCells;
};

BarShape shapeOf(const LaneInput& input, const LoadSpan& span, qreal base, qreal pxPerCell,
                 const Snap& snap) {
    const auto& axis = input.axis;
    BarShape shape{{}, snap(axis.xOf(span.span.from)), 0, snap(axis.xOf(span.span.until)), 0};
    shape.sealedAt = shape.right;
    const qreal slope = std::min(axis.dayWidth() * 0.6, 9.0);
    qreal y = base;
    for (std::size_t i = 0; i < span.thickness.size(); ++i) {
        const auto& part = span.thickness[i];
        const qreal x =
            std::clamp(i == 0 ? shape.left : axis.xOf(part.from), shape.left, shape.right);
        const qreal next =
            snap(base - std::max(part.cells > 0 ? 3.0 : 0.0, part.cells * pxPerCell));
        if (i > 0) {
            const qreal before = shape.edge.points.back().x();
            shape.edge.points.push_back({std::max(before, x - slope), y});
        }
        shape.edge.points.push_back({x, next});
        if (part.sealed && shape.sealedAt == shape.right) shape.sealedAt = snap(x);
        y = next;
        shape.lastCells = part.cells;
    }
    if (!shape.edge.points.empty()) shape.edge.points.push_back({shape.right, y});
    return shape;
}

/// x moved right past the lines of today and the chosen day, where they would run through a text.
qreal clearOfLines(const LaneInput& input, qreal x, qreal width) {
    const auto& axis = input.axis;
    std::vector<qreal> lines{axis.xOf(input.outlook.snapshot.today())};
    if (const auto chosen = input.options.chosenDay) {
        lines.push_back(axis.xOf(*chosen));
        lines.push_back(axis.xOf(*chosen + Days{1}));
    }
    for (const qreal line : lines)
        if (x - 2 < line && line < x + width + 2) x = line + 4;
    return x;
}

/// A word above a thin bar, in the ink of the ground. @return what it takes; null where there is no
/// room
QRectF writeAbove(const LaneInput& input, Type type, const QString& text, const BarShape& bar,
                  qreal left, qreal to, Sheet& sheet, int target) {
    constexpr qreal kAir = 3;
    const qreal wide = sheet.ruler().width(text, type);
    if (left + wide > input.axis.right()) return {};
    const qreal top = bar.edge.between(left, std::min(to, left + wide)).highestY();
    const QPointF at(left, sheet.snap()(top - kAir));
    const auto rect = sheet.textRect(type, text, at, Align::Left);
    if (input.isCrossed(rect))
        sheet.fill(Layer::Words, Role::Ground, rect.adjusted(-2, -2, 2, 2), -1, 2);
    sheet.text(Layer::Words, Role::Ink, type, text, at, Align::Left, target);
    return rect;
}

/// Writes the batch's number at the left and its cells on the sealed part, each where it fits; the
/// number above the bar where that is too thin. @return what stands above; null where nothing does
QRectF layBarText(const LaneInput& input, const QString& batch, const BarShape& bar, qreal from,
                  qreal to, qreal base, Sheet& sheet, int target) {
    const auto& ruler = sheet.ruler();
    const qreal room = base - bar.edge.lowestY();
    const qreal wide = ruler.width(batch, Type::Batch) + 7;
    const qreal high = base - bar.edge.between(from, std::min(to, from + wide)).lowestY();
    qreal used = from;
    QRectF above;
    if (wide <= to - from && ruler.capHeight(Type::Batch) + 3 <= high) {
        sheet.text(Layer::Words, Role::CellsInk, Type::Batch, batch,
                   {from + 4, sheet.baselineAt(Type::Batch, base - high / 2)}, Align::Left, target);
        used = from + 4 + ruler.width(batch, Type::Batch);
    } else if (to - from >= ruler.capHeight(Type::Batch)) {
        above = writeAbove(input, Type::Batch, batch, bar, from, to, sheet, target);
    }
    const qreal left = clearOfLines(input, std::max(bar.sealedAt, used) + 5,
                                    ruler.width(chart_text::number(99), Type::Small));
    const int cells = static_cast<int>(std::lround(bar.lastCells));
    for (const auto& text : {chart_text::cells(cells), chart_text::number(cells)}) {
        const qreal width = ruler.width(text, Type::Small);
        if (bar.sealedAt >= to || width > to - left - 4) continue;
        if (clearOfLines(input, left, width) != left) continue;
        if (ruler.capHeight(Type::Small) + 3 > room) return above;
        sheet.text(Layer::Words, Role::CellsInk, Type::Small, text,
                   {left, sheet.baselineAt(Type::Small, base - room / 2)}, Align::Left, target);
        return above;
    }
    return above;
}

/// Dots on the open part, leaving the batch's number free.
void layOpenDots(const QRectF& open, const QRectF& words, Sheet& sheet) {
    constexpr qreal kSpacing = 5;
    constexpr qreal kAcross = 1.8;
    const auto part = [&](qreal left, qreal right) {
        if (right > left)
            sheet.dots(Layer::Body, Role::OpenDots,
                       QRectF(QPointF(left, open.top()), QPointF(right, open.bottom())), kSpacing,
                       kAcross);
    };
    if (words.isNull()) return part(open.left(), open.right());
    part(open.left(), words.left());
    part(words.right(), open.right());
}

/// Where hours have room: at which the cells come in and go out, above the bar's ends.
void layHours(const LaneInput& input, const LoadSpan& span, const BarShape& bar, qreal base,
              const QRectF& taken, Sheet& sheet) {
    if (!hasHours(input.axis)) return;
    constexpr qreal kAir = 3;
    const auto& axis = input.axis;
    const auto write = [&](const QString& text, qreal x, qreal y, Align align) {
        const QPointF at(x, sheet.snap()(y - kAir));
        const auto rect = sheet.textRect(Type::Small, text, at, align);
        if (rect.left() < axis.left() || rect.right() > axis.right() || input.isCrossed(rect) ||
            rect.intersects(taken))
            return;
        sheet.text(Layer::Words, Role::InkSoft, Type::Small, text, at, align);
    };
    const auto& points = bar.edge.points;
    if (points.empty() || bar.right - bar.left < axis.dayWidth() / 2) return;
    write(chart_hand_text::in(clock(span.span.from)), bar.left, points.front().y(), Align::Left);
    write(chart_hand_text::out(clock(span.span.until)), bar.right,
          std::min(base, points.back().y()), Align::Right);
}

bool isLastLoad(const Outlook& outlook, const BuilderLoad& load) {
    const auto* batch = outlook.find(load.batch);
    if (!batch) return false;
    for (const auto& other : batch->timeline.loads)
        if (other.span.until > load.span->span.until) return false;
    return true;
}

void layExit(const LaneInput& input, const BuilderLoad& load, const BarShape& bar, qreal base,
             Sheet& sheet, int target) {
    if (!isLastLoad(input.outlook, load)) return;
    if (input.isSelected(load.batch))
        input.ribbon.outs.push_back(
            {{bar.right, base}, bar.lastCells, base - bar.edge.points.back().y()});
    else if (bar.right > input.axis.left() && bar.right <= input.axis.right() + 4)
        sheet.fill(Layer::Body, Role::SealedCells,
                   sheet.snap().rect(bar.right - 4, base, bar.right, base + kStub), target);
}

/// The upper edge of a selected batch's bars before they are grafted: dragged, it sets how many
/// are. Where several bars stand there, it is the last one's.
void layGraftsEdge(const LaneInput& input, const BatchOutlook& batch, const BuilderLoad& load,
                   const BarShape& bar, qreal from, qreal to, Sheet& sheet) {
    constexpr qreal kReach = 6;  ///< above the edge, and half of that below
    constexpr qreal kGrip = 12;
    const auto& options = input.options;
    if (!input.isSelected(load.batch) || !options.alsoSelected.empty() || !options.canFold) return;
    if (load.span->step != 1 || load.span->bars.empty() || batch.timeline.grafted) return;
    if (to - from < kGrip || bar.left < input.axis.left()) return;
    const qreal top = bar.edge.highestY();
    const int target =
        sheet.target({.hit = Hit::Grafts, .batch = load.batch, .index = load.span->bars.back()},
                     QRectF(QPointF(from, top - kReach), QPointF(to, top + kReach / 2)));
    const qreal middle = std::max((from + to) / 2, to - kGrip);  // clear of its number
    for (const qreal y : {top - 4.0, top - 1.5})
        sheet.fill(
            Layer::Marks, Role::Selection,
            sheet.snap().rect(middle - kGrip / 2, y, middle + kGrip / 2, y + sheet.snap().hair()),
            target);
}

const Finding* worstFor(const Outlook& outlook, const BuilderRow& row, const BuilderLoad& load,
                        int& index) {
    const Finding* worst = nullptr;
    for (std::size_t i = 0; i < outlook.findings.size(); ++i) {
        const auto& finding = outlook.findings[i];
        if (finding.severity == Severity::Note || finding.kind == FindingKind::TooManyCells)
            continue;
        const auto* batch = std::get_if<Id<Batch>>(&finding.subject);
        const auto* builder = std::get_if<Id<Builder>>(&finding.subject);
        const bool ofBatch =
            batch && *batch == load.batch &&
            (!finding.builder || !row.builder || *finding.builder == row.builder->builder->id);
        const bool ofBuilder = builder && row.builder && *builder == row.builder->builder->id &&
                               load.span->span.days().contains(finding.day);
        if (!ofBatch && !ofBuilder) continue;
        if (worst && worst->severity >= finding.severity) continue;
        worst = &finding;
        index = static_cast<int>(i);
    }
    return worst;
}

}  // namespace

QRectF layLoadBar(const LaneInput& input, const BuilderRow& row, const BuilderLoad& load,
                  qreal base, qreal pxPerCell, Sheet& sheet) {
    const auto bar = shapeOf(input, *load.span, base, pxPerCell, sheet.snap());
    const qreal from = std::max(bar.left, input.axis.left());
    const qreal to = std::min(bar.right, input.axis.right());
    if (bar.edge.points.empty() || from >= to) return {};
    const auto seen = bar.edge.between(from, to);
    const QRectF rect(QPointF(from, seen.highestY()), QPointF(to, base));
    const int target =
        sheet.target({.hit = Hit::Load,
                      .batch = load.batch,
                      .builder = row.builder ? row.builder->builder->id : Id<Builder>{},
                      .day = dayOf(load.span->span.from),
                      .index = load.span->step},
                     rect);
    const auto* batch = input.outlook.find(load.batch);
    const auto label = batch ? QString::fromStdString(batch->batch->label) : QString();
    if (bar.sealedAt > from) {
        const auto open = bar.edge.between(from, std::min(bar.sealedAt, to));
        sheet.path(Layer::Body, Role::OpenCells, open.closedAt(base), target);
        const qreal wordsEnd = from + sheet.ruler().width(label, Type::Batch) + 7;
        layOpenDots({QPointF(from, open.lowestY()), QPointF(std::min(bar.sealedAt, to), base)},
                    {QPointF(from, base - 1), QPointF(std::min(wordsEnd, to), base)}, sheet);
    }
    if (bar.sealedAt < to)
        sheet.path(Layer::Body, Role::SealedCells,
                   bar.edge.between(std::max(bar.sealedAt, from), to).closedAt(base), target);
    const auto above = layBarText(input, label, bar, from, to, base, sheet, target);
    layHours(input, *load.span, bar, base, above, sheet);
    layExit(input, load, bar, base, sheet, target);
    if (input.isMarked(load.batch))
        sheet.frame(Layer::Marks, Role::Selection, rect.adjusted(-3, -3, 3, 3), 1.6, 4);
    if (batch) layGraftsEdge(input, *batch, load, bar, from, std::min(bar.sealedAt, to), sheet);
    return rect.united(above);
}

void layTrouble(const LaneInput& input, const BuilderRow& row, const QRectF& area,
                const std::vector<QRectF>& bars, Sheet& sheet) {
    constexpr qreal kSign = 9;
    const auto& ruler = sheet.ruler();
    for (const auto& load : row.loads) {
        int index = -1;
        const auto* finding = worstFor(input.outlook, row, load, index);
        const qreal end = input.axis.xOf(load.span->span.until);
        if (!finding || end < input.axis.left() || end > input.axis.right()) continue;
        const auto words = chart_text::trouble(*finding);
        const qreal width = kSign + 4 + ruler.width(words, Type::Strong);
        const qreal height = ruler.capHeight(Type::Strong) + 4;
        // Beside the bar's end, over its rest; else above it, ending where it ends.
        const qreal middle = area.center().y() - 2;
        const QRectF beside(end + 6, middle - height / 2, width, height);
        const QRectF above(end - width, area.top(), width, height);
        const auto isFree = [&](const QRectF& place) {
            if (place.right() > input.axis.right() || place.left() < input.axis.left())
                return false;
            return std::none_of(bars.begin(), bars.end(), [&](const QRectF& bar) {
                return bar.adjusted(-2, -1, 2, 1).intersects(place);
            });
        };
        const auto role = finding->severity == Severity::Danger ? Role::Danger : Role::Caution;
        const bool hasRoom = isFree(beside) || isFree(above);
        const QRectF place = isFree(beside) ? beside
                             : hasRoom      ? above
                                            : QRectF(end + 1, middle - height / 2, kSign, height);
        const int target = sheet.target(
            {.hit = Hit::Trouble, .batch = load.batch, .day = finding->day, .index = index}, place);
        sheet.glyph(Layer::Words, role, Glyph::Warning,
                    {place.left() + kSign / 2, place.center().y()}, kSign, target);
        if (hasRoom)
            sheet.text(
                Layer::Words, role, Type::Strong, words,
                {place.left() + kSign + 4, sheet.baselineAt(Type::Strong, place.center().y())},
                Align::Left, target);
    }
}

}  // namespace tenthday
