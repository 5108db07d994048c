#include "chart/late_words.h"

#include "chart/bands.h"
#include "screen_text/trouble_text.h"

namespace tenthday {
namespace {

constexpr qreal kAir = 2.5;
constexpr qreal kSign = 9;
constexpr qreal kBetween = 5;
constexpr qreal kCrossed = 10000;  ///< px of air that a line through the words costs

using Span = std::pair<qreal, qreal>;  ///< top and bottom

/// The batch's nucs of a column, joined where one band stands on the next.
std::vector<Span> spansOf(const DayColumn& column, Id<Batch> batch) {
    std::vector<Span> spans;
    for (const auto& box : column.boxes) {  // from the foot up
        if (box.run.batch != batch || !isCounted(box.run.band)) continue;
        if (!spans.empty() && spans.back().first <= box.rect.bottom() + 0.01)
            spans.back().first = box.rect.top();
        else
            spans.push_back({box.rect.top(), box.rect.bottom()});
    }
    return spans;
}

/// A batch's block, column by column.
struct Block {
    std::vector<std::vector<Span>> spans;
    std::vector<QRectF> columns;  ///< null where it is not
    std::vector<bool> waits;      ///< its queens are due to fly: the best place for the words
};

Block blockOf(const YardPicture& picture, Id<Batch> batch) {
    Block block;
    for (const auto& column : picture.columns) {
        block.spans.push_back(spansOf(column, batch));
        block.columns.push_back(block.spans.back().empty() ? QRectF() : column.boxes.front().rect);
        block.waits.push_back(
            std::any_of(column.boxes.begin(), column.boxes.end(), [&](const BandBox& box) {
                return box.run.batch == batch && box.run.band == Band::DueToFly;
            }));
    }
    return block;
}

struct Place {
    QRectF rect;    ///< of the plate; null for none
    qreal air = 0;  ///< above or below, where it is least
};

/// A plate of such a size from a column on, at such a height; null where the block ends before.
Place placeFrom(const Block& block, std::size_t column, qreal middle, const QSizeF& size) {
    const qreal top = middle - size.height() / 2;
    const qreal bottom = middle + size.height() / 2;
    const qreal left = block.columns[column].left();
    Place place{{}, 1000};
    for (; column < block.columns.size(); ++column) {
        const auto& spans = block.spans[column];
        const auto at = std::find_if(spans.begin(), spans.end(), [&](const Span& span) {
            return span.first <= top && span.second >= bottom;
        });
        if (at == spans.end()) return {};
        place.air = std::min({place.air, top - at->first, at->second - bottom});
        if (block.columns[column].right() - left < size.width() + 2) continue;
        place.rect = QRectF(left + 1, top, size.width(), size.height());
        return place;
    }
    return {};
}

/// The place with the most air, where the queens wait if that can be, and no line through it.
Place bestPlace(const LaneInput& input, const Block& block, const QSizeF& size) {
    constexpr qreal kElsewhere = 100;
    Place best;
    for (std::size_t i = 0; i < block.columns.size(); ++i)
        for (const auto& span : block.spans[i]) {
            auto place = placeFrom(block, i, (span.first + span.second) / 2, size);
            if (place.rect.isNull() || input.ribbon.meets(place.rect)) continue;
            if (!block.waits[i]) place.air -= kElsewhere;
            if (input.isCrossed(place.rect)) place.air -= kCrossed;
            if (best.rect.isNull() || place.air > best.air) best = place;
        }
    return best;
}

/// On ground of its own with an edge about it: seen among the colours of the block.
void layPlate(const Place& place, const LateWords& text, Sheet& sheet) {
    const auto& rect = place.rect;
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
    for (const auto& words : {text.words, trouble_text::lateBriefly(), QString()}) {
        const LateWords shown{text.number, words};
        const auto place = bestPlace(input, block, plateSize(shown, sheet.ruler()));
        if (place.rect.isNull()) continue;
        layPlate(place, shown, sheet);
        return place.rect;
    }
    return {};
}

}  // namespace tenthday
