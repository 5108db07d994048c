/// @file sheet.h  Collects the items of a layout. Knows how to place text, and no lanes.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "chart/chart_item.h"
#include "chart/text_ruler.h"

namespace tenthday {

/// Whole device pixels, in logical ones: edges that fall on them are crisp at any scale.
struct Snap {
    qreal ratio = 1;
    [[nodiscard]] qreal operator()(qreal value) const {
        return static_cast<qreal>(qRound64(value * ratio)) / ratio;
    }
    /// The thinnest crisp line, about 1 px.
    [[nodiscard]] qreal hair() const { return std::max(1.0, std::floor(ratio)) / ratio; }
    [[nodiscard]] QRectF rect(qreal left, qreal top, qreal right, qreal bottom) const {
        return {QPointF((*this)(left), (*this)(top)), QPointF((*this)(right), (*this)(bottom))};
    }
};

/// By how much something lies lower than before, px, where it is the same but for that; none where
/// what was laid there cannot be moved to the very pixels at which it would be laid.
[[nodiscard]] std::optional<qreal> movedDown(const QRectF& before, const QRectF& now,
                                             const Snap& snap);

enum class Align : std::uint8_t { Left, Middle, Right };

class Sheet {
public:
    Sheet(const TextRuler& ruler, Snap snap) : ruler_(ruler), snap_(snap) {}

    [[nodiscard]] const TextRuler& ruler() const { return ruler_; }
    [[nodiscard]] const Snap& snap() const { return snap_; }

    /// So many more places come: room for them is made at once.
    void expectTargets(std::size_t count) {
        auto& targets = layout_.targets;
        if (const auto room = targets.size() + count; room > targets.capacity())
            targets.reserve(std::max(room, 2 * targets.capacity()));
    }
    /// A place to hit; later ones lie above earlier ones.
    int target(const TargetKey& key, const QRectF& rect);

    /// Edges go to whole device pixels, unless corners are rounded.
    void fill(Layer layer, Role role, const QRectF& rect, int target = -1, qreal radius = 0);
    void frame(Layer layer, Role role, const QRectF& rect, qreal pen, qreal radius = 0);
    void hatch(Layer layer, Role role, const QRectF& rect, Slope slope, qreal spacing, qreal pen);
    void dots(Layer layer, Role role, const QRectF& rect, qreal spacing, qreal across);
    void dotted(Layer layer, Role role, const QRectF& rect, qreal across, int target = -1);
    void path(Layer layer, Role role, const QPainterPath& path, int target = -1);
    void stroke(Layer layer, Role role, const QPainterPath& path, qreal pen, int target = -1);
    void glyph(Layer layer, Role role, Glyph glyph, QPointF centre, qreal size, int target = -1);
    /// One line of text. @param at x of the left end, middle or right end; y of the baseline
    void text(Layer layer, Role role, Type type, const QString& text, QPointF at, Align align,
              int target = -1);
    /// What such a text would take, digits' top to baseline.
    [[nodiscard]] QRectF textRect(Type type, const QString& text, QPointF at, Align align) const;
    /// Baseline that centres digits of this type about y.
    [[nodiscard]] qreal baselineAt(Type type, qreal middleY) const;

    /// A frame about a place that was collected, if it was.
    void frameTarget(Layer layer, Role role, const TargetKey& key, qreal pen);
    void setPxPerCell(qreal px) { layout_.pxPerCell = px; }

    /// Places of what was collected, for a key that is to be told anew.
    [[nodiscard]] std::vector<Target>& targets() { return layout_.targets; }

    /// All that was collected.
    void moveDown(qreal by);

    /// What others collected comes after what is here, layer by layer, in their order.
    void append(const std::vector<const Sheet*>& others);
    void append(const Sheet& other) { append(std::vector{&other}); }

    /// Everything collected, in painting order.
    [[nodiscard]] Layout finish(const DayAxis& axis, const QRectF& plot, qreal contentHeight) &&;

private:
    Item& add(Layer layer, Shape shape, Role role, const QRectF& rect, int target);

    const TextRuler& ruler_;
    Snap snap_;
    Layout layout_;  ///< its items come last
    std::array<std::vector<Item>, kLayerCount> layers_;
};

}  // namespace tenthday
