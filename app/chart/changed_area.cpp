#include "chart/changed_area.h"

#include <QHash>
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "base/side_by_side.h"

namespace tenthday {
namespace {

constexpr int kTileWidth = 64;  ///< logical px
constexpr int kTileHeight = 16;

size_t markOf(const QPainterPath& path) {
    size_t mark = static_cast<size_t>(path.fillRule());
    for (int i = 0; i < path.elementCount(); ++i) {
        const auto element = path.elementAt(i);
        mark = qHashMulti(mark, static_cast<int>(element.type), element.x, element.y);
    }
    return mark;
}

/// What an item paints, in one number; which place it belongs to is not painted.
size_t markOf(const Layout& layout, const Item& item) {
    const auto detail = static_cast<std::size_t>(item.detail);
    size_t mark = qHashMulti(0, static_cast<int>(item.shape), static_cast<int>(item.role),
                             item.rect.x(), item.rect.y(), item.rect.width(), item.rect.height());
    if (item.shape == Shape::Text) {
        const auto& text = layout.texts[detail];
        return qHashMulti(mark, text.text, static_cast<int>(text.type), text.baseline.x(),
                          text.baseline.y());
    }
    if (item.shape == Shape::Path || item.shape == Shape::Stroke)
        return qHashMulti(mark, item.pen, markOf(layout.paths[detail]));
    return item.shape == Shape::Fill ? qHashMulti(mark, item.radius)
                                     : qHashMulti(mark, item.pen, item.radius, item.spacing,
                                                  item.detail, static_cast<int>(item.slope));
}

/// Of all items, in their order.
std::vector<size_t> marksOf(const Layout& layout) {
    constexpr std::size_t kPart = 1024;
    std::vector<size_t> marks(layout.items.size());
    sideBySide((marks.size() + kPart - 1) / kPart, [&](std::size_t part) {
        const auto end = std::min(marks.size(), (part + 1) * kPart);
        for (auto i = part * kPart; i < end; ++i) marks[i] = markOf(layout, layout.items[i]);
    });
    return marks;
}

/// Tiles of a row that differ, from the first to the last.
struct Span {
    int first;
    int last;
};

/// Two rectangles in one, where that holds little else.
bool isWorthJoining(const QRect& a, const QRect& b) {
    const auto area = [](const QRect& rect) { return rect.width() * rect.height(); };
    constexpr int kMore = 4;  // a quarter more at the most
    const int alone = area(a) + area(b);
    return area(a.united(b)) - alone <= alone / kMore;
}

}  // namespace

QRectF reachOf(const Item& item) {
    qreal beyond = 2;
    // Letters reach under the baseline and over capitals, those of another font further.
    if (item.shape == Shape::Text) beyond += 2 * item.rect.height();
    if (item.shape == Shape::Stroke) beyond += item.pen;
    if (item.shape == Shape::Dots || item.shape == Shape::Dotted) beyond += 2 * item.pen;
    if (item.shape == Shape::Glyph) beyond += item.rect.width() / 2;
    return item.rect.adjusted(-beyond, -beyond, beyond, beyond);
}

PictureMarks::PictureMarks(const Layout& layout, QSize page)
    : page_(page),
      columns_(page.width() / kTileWidth + 1),
      rows_(page.height() / kTileHeight + 1),
      tiles_(static_cast<std::size_t>(columns_ * rows_)) {
    const auto marks = marksOf(layout);
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const auto& item = layout.items[i];
        if (item.layer == Layer::Ground)
            ground_ = qHashMulti(ground_, marks[i]);
        else
            add(item, marks[i]);
    }
}

void PictureMarks::add(const Item& item, size_t mark) {
    const auto reach = reachOf(item);
    const auto tile = [](qreal at, int size, int count) {
        return static_cast<int>(std::clamp(std::floor(at / size), 0.0, count - 1.0));
    };
    if (reach.right() < 0 || reach.bottom() < 0 || reach.left() > page_.width() ||
        reach.top() > page_.height())
        return;
    const int left = tile(reach.left(), kTileWidth, columns_);
    const int right = tile(reach.right(), kTileWidth, columns_);
    const int bottom = tile(reach.bottom(), kTileHeight, rows_);
    for (int row = tile(reach.top(), kTileHeight, rows_); row <= bottom; ++row)
        for (int column = left; column <= right; ++column) {
            auto& on = tiles_[placeOf(row, column)];
            on = (on ^ mark) * 0x9E3779B97F4A7C15ULL + (on >> 29);  // the order counts
        }
}

QRegion PictureMarks::changedSince(const PictureMarks& before) const {
    if (page_ != before.page_ || ground_ != before.ground_) return QRect(QPoint(), page_);
    QRegion region;
    QRect open;
    for (int row = 0; row < rows_; ++row) {
        std::optional<Span> span;
        for (int column = 0; column < columns_; ++column) {
            const auto at = placeOf(row, column);
            if (tiles_[at] != before.tiles_[at]) span = {span ? span->first : column, column};
        }
        if (!span) continue;
        const QRect differs(span->first * kTileWidth, row * kTileHeight,
                            (span->last - span->first + 1) * kTileWidth, kTileHeight);
        const bool joins = !open.isNull() && isWorthJoining(open, differs);
        if (!joins) region += std::exchange(open, differs);
        open = open.united(differs);
    }
    return (region + open) & QRect(QPoint(), page_);
}

}  // namespace tenthday
