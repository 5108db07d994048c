#include "chart/late_words.h"

#include "chart/bands.h"

namespace tenthday {
namespace {

constexpr qreal kAir = 2.5;
constexpr qreal kBetween = 6;
constexpr qreal kCrossed = 10000;  ///< px of air that a line through the words costs

/// Bands on which the ink of queens due to fly can be read.
bool canCarry(Band band) {
    return band == Band::DueToFly || band == Band::Virgin || band == Band::Laying;
}

/// The batch's box of a column that holds all of a text's height; null where there is none.
const BandBox* boxAt(const DayColumn& column, Id<Batch> batch, qreal top, qreal bottom) {
    for (const auto& box : column.boxes)
        if (box.run.batch == batch && canCarry(box.run.band) && box.rect.top() <= top &&
            box.rect.bottom() >= bottom)
            return &box;
    return nullptr;
}

/// Neighbouring days' boxes at one height.
struct Place {
    std::vector<const BandBox*> boxes;
    qreal middle = 0;
    qreal air = 0;  ///< above or below, where it is least

    [[nodiscard]] qreal width() const {
        return boxes.empty() ? 0 : boxes.back()->rect.right() - boxes.front()->rect.left();
    }
};

/// Days from a column on, until the text has room; fewer where the block ends before.
Place placeFrom(const YardPicture& picture, std::size_t column, Id<Batch> batch, qreal middle,
                const QSizeF& size) {
    const qreal top = middle - size.height() / 2 - kAir;
    const qreal bottom = middle + size.height() / 2 + kAir;
    Place place{{}, middle, bottom - top + 1000};
    for (; column < picture.columns.size() && place.width() < size.width() + 2 * kAir; ++column) {
        const auto* box = boxAt(picture.columns[column], batch, top, bottom);
        if (!box) break;
        place.boxes.push_back(box);
        place.air = std::min({place.air, top - box->rect.top(), box->rect.bottom() - bottom});
    }
    return place;
}

/// The place with the most air, and no line through it where that can be; without boxes where there
/// is none.
Place bestPlace(const LaneInput& input, const YardPicture& picture, Id<Batch> batch,
                const QSizeF& size) {
    Place best;
    for (std::size_t i = 0; i < picture.columns.size(); ++i)
        for (const auto& box : picture.columns[i].boxes) {
            if (box.run.batch != batch || box.run.band != Band::DueToFly) continue;
            // From here on, or so that it ends here: wherever queens wait to fly.
            for (const std::size_t back : {std::size_t{0}, std::size_t{4}, std::size_t{8}}) {
                if (back > i) continue;
                auto place = placeFrom(picture, i - back, batch, box.rect.center().y(), size);
                if (place.width() < size.width() + 2 * kAir) continue;
                const QRectF rect(place.boxes.front()->rect.left(),
                                  place.middle - size.height() / 2, place.width(), size.height());
                if (input.ribbon.meets(rect)) continue;
                if (input.isCrossed(rect)) place.air -= kCrossed;
                if (best.boxes.empty() || place.air > best.air) best = std::move(place);
            }
        }
    return best;
}

/// Each band goes on under the words, over the gaps between days and the lines of days.
void layPlates(const LaneInput& input, const Place& place, const QRectF& words, Sheet& sheet) {
    const auto layer = input.isCrossed(words) ? Layer::Words : Layer::Body;
    const auto plate = words.adjusted(-2, -kAir, 2, kAir);
    for (const auto* box : place.boxes) {
        QRectF part = box->rect.intersected(plate);
        sheet.fill(layer, groundOf(box->run.band), part);
    }
}

}  // namespace

bool writeLate(const LaneInput& input, const YardPicture& picture, Id<Batch> batch,
               const LateWords& text, Sheet& sheet) {
    const auto& ruler = sheet.ruler();
    const qreal number = ruler.width(text.number, Type::Batch);
    const QSizeF size(number + kBetween + ruler.width(text.words, Type::Strong),
                      ruler.capHeight(Type::Batch));
    const auto place = bestPlace(input, picture, batch, size);
    if (place.boxes.empty()) return false;
    const qreal left = place.boxes.front()->rect.left() + (place.width() - size.width()) / 2;
    const qreal baseline = sheet.baselineAt(Type::Batch, place.middle);
    layPlates(input, place, {left, baseline - size.height(), size.width(), size.height()}, sheet);
    const auto ink = inkOn(Band::DueToFly);
    sheet.text(Layer::Words, ink, Type::Batch, text.number, {left, baseline}, Align::Left);
    sheet.text(Layer::Words, ink, Type::Strong, text.words, {left + number + kBetween, baseline},
               Align::Left);
    return true;
}

}  // namespace tenthday
