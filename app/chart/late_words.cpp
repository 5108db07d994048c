#include "chart/late_words.h"

#include "chart/bands.h"
#include "screen_text/trouble_text.h"

namespace tenthday {
namespace {

constexpr qreal kAir = 2.5;
constexpr qreal kSign = 9;
constexpr qreal kBetween = 5;

/// Where a plate may lie: within one band, so that no edge between bands is hidden, the band in
/// which queens wait before others; in the end anywhere in the block.
constexpr std::optional<Band> kGrounds[] = {Band::DueToFly, Band::Virgin,     Band::Laying,
                                            Band::Cell,     Band::JudgedGood, Band::NoQueen};

/// The batch's nucs in a column that are in one band; of none: all that stand on each other.
struct Part {
    std::optional<Band> band;
    qreal top;
    qreal bottom;
};

struct BlockColumn {
    QRectF rect;  ///< its place and width
    std::vector<Part> parts;
};
using Block = std::vector<BlockColumn>;

std::vector<Part> partsOf(const DayColumn& column, Id<Batch> batch) {
    std::vector<Part> bands;
    std::vector<Part> whole;
    for (const auto& box : column.boxes) {  // from the foot up
        if (box.run.batch != batch || !isCounted(box.run.band)) continue;
        bands.push_back({box.run.band, box.rect.top(), box.rect.bottom()});
        if (!whole.empty() && whole.back().top <= box.rect.bottom() + 0.01)
            whole.back().top = box.rect.top();
        else
            whole.push_back({{}, box.rect.top(), box.rect.bottom()});
    }
    bands.insert(bands.end(), whole.begin(), whole.end());
    return bands;
}

Block blockOf(const YardPicture& picture, Id<Batch> batch) {
    Block block;
    block.reserve(picture.columns.size());
    for (const auto& column : picture.columns) {
        auto parts = partsOf(column, batch);
        const auto rect = parts.empty() ? QRectF() : column.boxes.front().rect;
        block.push_back({rect, std::move(parts)});
    }
    return block;
}

struct Place {
    QRectF rect;    ///< of the plate; null for none
    qreal air = 0;  ///< above or below, where it is least
};

/// A plate of such a size from a column on, at such a height; null where its ground ends before.
Place placeFrom(const Block& block, std::size_t column, std::optional<Band> ground, qreal middle,
                const QSizeF& size) {
    const qreal top = middle - size.height() / 2;
    const qreal bottom = middle + size.height() / 2;
    const qreal left = block[column].rect.left();
    Place place{{}, 1000};
    for (; column < block.size(); ++column) {
        const auto& [rect, parts] = block[column];
        const auto at = std::find_if(parts.begin(), parts.end(), [&](const Part& part) {
            return part.band == ground && part.top <= top && part.bottom >= bottom;
        });
        if (at == parts.end()) return {};
        place.air = std::min({place.air, top - at->top, at->bottom - bottom});
        if (rect.right() - left < size.width() + 2) continue;
        place.rect = QRectF(left + 1, top, size.width(), size.height());
        return place;
    }
    return {};
}

/// The place with the most air that no line of a day and no ribbon runs through.
QRectF bestPlace(const LaneInput& input, const Block& block, std::optional<Band> ground,
                 const QSizeF& size) {
    Place best;
    for (std::size_t i = 0; i < block.size(); ++i)
        for (const auto& part : block[i].parts) {
            if (part.band != ground || part.bottom - part.top < size.height()) continue;
            const auto place = placeFrom(block, i, ground, (part.top + part.bottom) / 2, size);
            if (place.rect.isNull() || input.ribbon.meets(place.rect)) continue;
            if (input.isCrossed(place.rect)) continue;
            if (best.rect.isNull() || place.air > best.air) best = place;
        }
    return best.rect;
}

/// On ground of its own with an edge about it: seen among the colours of the block.
void layPlate(const QRectF& rect, const LateWords& text, Sheet& sheet) {
    const qreal middle = rect.center().y();
    qreal x = rect.left() + kBetween;
    sheet.fill(Layer::Words, Role::Ground, rect, -1, 3);
    sheet.frame(Layer::Words, Role::Caution, rect, 1.2, 3);
    sheet.glyph(Layer::Words, Role::Caution, Glyph::Warning, {x + kSign / 2, middle}, kSign);
    x += kSign + kBetween - 1;
    sheet.text(Layer::Words, Role::Ink, Type::Batch, text.number,
               {x, sheet.baselineAt(Type::Batch, middle)}, Align::Left);
    x += sheet.ruler().width(text.number, Type::Batch) + kBetween;
    sheet.text(Layer::Words, Role::Caution, Type::Strong, text.words,
               {x, sheet.baselineAt(Type::Strong, middle)}, Align::Left);
}

QSizeF plateSize(const LateWords& text, const TextRuler& ruler) {
    const qreal words = text.words.isEmpty() ? 0 : kBetween + ruler.width(text.words, Type::Strong);
    return {3 * kBetween - 1 + kSign + ruler.width(text.number, Type::Batch) + words,
            ruler.capHeight(Type::Batch) + 2 * kAir + 1};
}

}  // namespace

QRectF writeLate(const LaneInput& input, const YardPicture& picture, Id<Batch> batch,
                 const LateWords& text, Sheet& sheet) {
    const auto block = blockOf(picture, batch);
    const LateWords forms[] = {
        text, {text.number, trouble_text::lateBriefly()}, {text.number, QString()}};
    for (const auto& shown : forms)
        for (const auto ground : kGrounds) {
            const auto place = bestPlace(input, block, ground, plateSize(shown, sheet.ruler()));
            if (place.isNull()) continue;
            layPlate(place, shown, sheet);
            return place;
        }
    // The sign and the number hide little, wherever in the block they lie.
    const auto place = bestPlace(input, block, {}, plateSize(forms[2], sheet.ruler()));
    if (!place.isNull()) layPlate(place, forms[2], sheet);
    return place;
}

}  // namespace tenthday
