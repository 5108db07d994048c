#include "chart/sheet.h"

namespace tenthday {

std::optional<qreal> movedDown(const QRectF& before, const QRectF& now, const Snap& snap) {
    const qreal down = now.top() - before.top();
    if (before.translated(0, down) != now) return std::nullopt;
    const auto isExact = [](qreal value) { return std::floor(value * 64) == value * 64; };
    const bool isWhole = std::floor(down) == down && std::floor(snap.ratio) == snap.ratio;
    const bool canMove = isWhole && isExact(before.top()) && isExact(now.top());
    return down == 0 || canMove ? std::optional(down) : std::nullopt;
}

int Sheet::target(const TargetKey& key, const QRectF& rect) {
    layout_.targets.push_back({key, rect});
    return static_cast<int>(layout_.targets.size()) - 1;
}

Item& Sheet::add(Layer layer, Shape shape, Role role, const QRectF& rect, int target) {
    Item item;
    item.layer = layer;
    item.shape = shape;
    item.role = role;
    item.rect = rect;
    item.target = target;
    return layers_[static_cast<std::size_t>(layer)].emplace_back(item);
}

void Sheet::fill(Layer layer, Role role, const QRectF& rect, int target, qreal radius) {
    if (rect.width() <= 0 || rect.height() <= 0) return;
    const auto crisp =
        radius > 0 ? rect : snap_.rect(rect.left(), rect.top(), rect.right(), rect.bottom());
    add(layer, Shape::Fill, role, crisp, target).radius = radius;
}

void Sheet::frame(Layer layer, Role role, const QRectF& rect, qreal pen, qreal radius) {
    auto& item = add(layer, Shape::Frame, role, rect, -1);
    item.pen = pen;
    item.radius = radius;
}

void Sheet::hatch(Layer layer, Role role, const QRectF& rect, Slope slope, qreal spacing,
                  qreal pen) {
    if (rect.width() <= 0 || rect.height() <= 0) return;
    auto& item = add(layer, Shape::Hatch, role, rect, -1);
    item.slope = slope;
    item.spacing = spacing;
    item.pen = pen;
}

void Sheet::dots(Layer layer, Role role, const QRectF& rect, qreal spacing, qreal across) {
    if (rect.width() < across || rect.height() < across) return;
    auto& item = add(layer, Shape::Dots, role, rect, -1);
    item.spacing = spacing;
    item.pen = across;
}

void Sheet::dotted(Layer layer, Role role, const QRectF& rect, qreal across, int target) {
    if (rect.width() <= 0) return;
    add(layer, Shape::Dotted, role, rect, target).pen = across;
}

void Sheet::path(Layer layer, Role role, const QPainterPath& path, int target) {
    layout_.paths.push_back(path);
    add(layer, Shape::Path, role, path.boundingRect(), target).detail =
        static_cast<int>(layout_.paths.size()) - 1;
}

void Sheet::stroke(Layer layer, Role role, const QPainterPath& path, qreal pen, int target) {
    layout_.paths.push_back(path);
    auto& item = add(layer, Shape::Stroke, role, path.boundingRect(), target);
    item.detail = static_cast<int>(layout_.paths.size()) - 1;
    item.pen = pen;
}

void Sheet::glyph(Layer layer, Role role, Glyph glyph, QPointF centre, qreal size, int target) {
    add(layer, Shape::Glyph, role, {centre.x() - size / 2, centre.y() - size / 2, size, size},
        target)
        .detail = static_cast<int>(glyph);
}

QRectF Sheet::textRect(Type type, const QString& text, QPointF at, Align align) const {
    const qreal width = ruler_.width(text, type);
    const qreal caps = ruler_.capHeight(type);
    const qreal left = align == Align::Left     ? at.x()
                       : align == Align::Middle ? at.x() - width / 2
                                                : at.x() - width;
    return {left, at.y() - caps, width, caps};
}

qreal Sheet::baselineAt(Type type, qreal middleY) const {
    return snap_(middleY + ruler_.capHeight(type) / 2);
}

void Sheet::text(Layer layer, Role role, Type type, const QString& text, QPointF at, Align align,
                 int target) {
    if (text.isEmpty()) return;
    const auto rect = textRect(type, text, at, align);
    layout_.texts.push_back({text, type, rect.bottomLeft()});
    add(layer, Shape::Text, role, rect, target).detail = static_cast<int>(layout_.texts.size()) - 1;
}

void Sheet::frameTarget(Layer layer, Role role, const TargetKey& key, qreal pen) {
    for (const auto& target : layout_.targets)
        if (target.key == key)
            return frame(layer, role, target.rect.adjusted(-3, -3, 3, 3), pen, 3);
}

namespace {

/// Room for what comes, at once; where more comes later, it still grows by leaps.
template <class T>
void makeRoom(std::vector<T>& all, std::size_t more) {
    const auto wanted = all.size() + more;
    if (wanted > all.capacity()) all.reserve(std::max(wanted, 2 * all.capacity()));
}

/// @return how many there were before
template <class T>
int addBehind(std::vector<T>& all, const std::vector<T>& more) {
    const auto before = static_cast<int>(all.size());
    all.insert(all.end(), more.begin(), more.end());
    return before;
}

}  // namespace

void Sheet::moveDown(qreal by) {
    for (auto& layer : layers_)
        for (auto& item : layer) item.rect.translate(0, by);
    for (auto& target : layout_.targets) target.rect.translate(0, by);
    for (auto& text : layout_.texts) text.baseline.ry() += by;
    for (auto& path : layout_.paths) path.translate(0, by);
}

void Sheet::append(const std::vector<const Sheet*>& others) {
    std::size_t targetsToCome = 0;
    std::array<std::size_t, kLayerCount> itemsToCome{};
    for (const auto* other : others) {
        targetsToCome += other->layout_.targets.size();
        for (std::size_t i = 0; i < kLayerCount; ++i) itemsToCome[i] += other->layers_[i].size();
    }
    makeRoom(layout_.targets, targetsToCome);
    for (std::size_t i = 0; i < kLayerCount; ++i) makeRoom(layers_[i], itemsToCome[i]);
    for (const auto* other : others) {
        const int targets = addBehind(layout_.targets, other->layout_.targets);
        const int texts = addBehind(layout_.texts, other->layout_.texts);
        const int paths = addBehind(layout_.paths, other->layout_.paths);
        if (other->layout_.pxPerCell != 0) layout_.pxPerCell = other->layout_.pxPerCell;
        for (std::size_t i = 0; i < kLayerCount; ++i) {
            auto& layer = layers_[i];
            const auto first = static_cast<std::size_t>(addBehind(layer, other->layers_[i]));
            for (auto at = first; at < layer.size(); ++at) {
                auto& item = layer[at];
                if (item.target >= 0) item.target += targets;
                if (item.shape == Shape::Text) item.detail += texts;
                if (item.shape == Shape::Path || item.shape == Shape::Stroke) item.detail += paths;
            }
        }
    }
}

Layout Sheet::finish(const DayAxis& axis, const QRectF& plot, qreal contentHeight) && {
    std::size_t count = 0;
    for (const auto& layer : layers_) count += layer.size();
    layout_.items.reserve(count);
    for (const auto& layer : layers_)
        layout_.items.insert(layout_.items.end(), layer.begin(), layer.end());
    layout_.axis = axis;
    layout_.plot = plot;
    layout_.contentHeight = contentHeight;
    return std::move(layout_);
}

}  // namespace tenthday
