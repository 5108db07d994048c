#include <algorithm>
#include <array>
#include <set>
#include <utility>

#include "calendar/iso_week.h"
#include "chart/bands.h"
#include "chart/cells_day_label.h"
#include "chart/counted_day.h"
#include "chart/late_words.h"
#include "chart/slice_plates.h"
#include "chart/taken_places.h"
#include "chart/yard_picture.h"
#include "screen_text/chart_text.h"
#include "screen_text/flying_text.h"

namespace tenthday {
namespace {

constexpr int kMostColumns = 4;  ///< a number may spread over so many equal days
constexpr qreal kAir = 2.5;

/// What `count` columns from `first` have in common of a band; null where one has none of it.
QRectF common(const YardPicture& picture, std::size_t first, int count, Band band,
              std::optional<Id<Batch>> batch) {
    QRectF rect = picture.tallest(first, band, batch);
    for (int i = 1; i < count; ++i) {
        const auto next = picture.tallest(first + static_cast<std::size_t>(i), band, batch);
        const qreal top = std::max(rect.top(), next.top());
        const qreal bottom = std::min(rect.bottom(), next.bottom());
        if (rect.isNull() || next.isNull() || bottom <= top) return {};
        rect = QRectF(QPointF(rect.left(), top), QPointF(next.right(), bottom));
    }
    return rect;
}

struct Room {
    QRectF rect;
    int columns = 0;
};

/// The narrowest room for a text from a column on, or about it.
Room roomFor(const YardPicture& picture, std::size_t column, bool about, Band band,
             std::optional<Id<Batch>> batch, const QSizeF& size) {
    for (int count = 1; count <= kMostColumns; count += about ? 2 : 1) {
        const auto before = about ? static_cast<std::size_t>(count / 2) : 0U;
        if (column < before ||
            column - before + static_cast<std::size_t>(count) > picture.columns.size())
            break;
        const auto rect = common(picture, column - before, count, band, batch);
        if (rect.isNull() || rect.height() < size.height() + 2 * kAir) break;
        if (rect.width() >= size.width() + 2 * kAir) return {rect, count};
    }
    return {};
}

/// Writes one kind of number along the days of a yard, in the band it counts.
class NumbersWriter {
public:
    NumbersWriter(const LaneInput& input, const YardPicture& picture, Sheet& sheet,
                  BandNumbers& numbers)
        : input_(input), picture_(picture), sheet_(sheet), numbers_(numbers) {
        for (const auto& day : input.outlook.nucs.cellsDays) cellsDays_.insert(day.day);
    }

    /// @return what they take
    std::vector<QRectF> write() {
        // The chosen day first, or today: no other number may take its room.
        const auto counted = countedDay(input_.outlook, input_.options);
        for (std::size_t i = 0; i < picture_.columns.size(); ++i)
            if (counted == picture_.columns[i].day) writeAt(i, true);
        for (std::size_t i = 0; i < picture_.columns.size(); ++i)
            if (isWanted(i)) writeAt(i, false);
        return std::move(taken_);
    }

private:
    /// Where the number changes, on Mondays and on cells days; every day when days are wide.
    [[nodiscard]] bool isWanted(std::size_t i) const {
        constexpr qreal kWideDay = 26;
        const Day day = picture_.columns[i].day;
        return input_.axis.dayWidth() >= kWideDay || i == 0 ||
               numbers_.texts[i - 1] != numbers_.texts[i] || isoWeekday(day) == 1 ||
               cellsDays_.contains(day);
    }

    void writeAt(std::size_t i, bool about) {
        const auto& text = numbers_.texts[i];
        const Band band = numbers_.band;
        if (text.isEmpty()) return;
        const QSizeF size(sheet_.ruler().width(text, Type::Number),
                          sheet_.ruler().capHeight(Type::Number));
        const auto room = roomFor(picture_, i, about, band, {}, size);
        if (room.columns == 0) return;
        const QPointF at(room.rect.center().x(), sheet_.snap()(room.rect.bottom() - 4));
        const auto rect = sheet_.textRect(Type::Number, text, at, Align::Middle);
        if (apart_.meets(rect) || input_.ribbon.meets(rect.adjusted(-2, -1, 2, 1))) return;
        taken_.push_back(rect);
        apart_.add(rect.adjusted(-4, -2, 4, 2));
        numbers_.written[i] = true;
        // Off its hatch, and off the lines of today and the chosen day.
        const bool crossed = input_.isCrossed(rect);
        if (crossed || band == Band::Likely)
            sheet_.fill(crossed ? Layer::Words : Layer::Body, groundOf(band),
                        rect.adjusted(-2, -3, 2, 3));
        sheet_.text(Layer::Words, band == Band::Likely ? Role::LikelyInk : Role::ReadyInk,
                    Type::Number, text, at, Align::Middle);
    }

    const LaneInput& input_;
    const YardPicture& picture_;
    Sheet& sheet_;
    BandNumbers& numbers_;
    std::set<Day> cellsDays_;
    std::vector<QRectF> taken_;
    TakenPlaces apart_;  ///< the same with the air about them
};

BandNumbers numbersOf(const YardPicture& picture, Band band) {
    BandNumbers numbers{band, {}, std::vector<bool>(picture.columns.size(), false)};
    numbers.texts.reserve(picture.columns.size());
    int before = -1;  // most days count what the day before does
    for (const auto& column : picture.columns) {
        const int count = band == Band::Ready ? column.numbers.ready : wholeLikely(column.numbers);
        numbers.texts.push_back(count <= 0            ? QString()
                                : count == before     ? numbers.texts.back()
                                : band == Band::Ready ? chart_text::number(count)
                                                      : chart_text::more(count));
        before = count;
    }
    return numbers;
}

/// Where a batch's number has the best room.
struct BatchRoom {
    Room room;
    Band band{};
    bool isGood = false;  ///< high enough to look no further
};

/// Of a batch's places in the yard: the highest, and all together.
struct Heights {
    qreal most = 0;
    qreal sum = 0;
};

Heights heightsOf(const YardPicture& picture, Id<Batch> batch) {
    Heights heights;
    for (const auto& block : picture.blocks) {
        if (block.batch != batch) continue;
        heights.most = std::max(heights.most, block.bottom - block.top);
        heights.sum += block.bottom - block.top;
    }
    return heights;
}

/// Of these days, the first column and the one after the last.
std::pair<std::size_t, std::size_t> columnsOf(const YardPicture& picture, const DayWindow& days) {
    const auto from = [&](Day day) {
        return std::lower_bound(
                   picture.columns.begin(), picture.columns.end(), day,
                   [](const DayColumn& column, Day wanted) { return column.day < wanted; }) -
               picture.columns.begin();
    };
    return {static_cast<std::size_t>(from(days.first)),
            static_cast<std::size_t>(from(days.last + Days{1}))};
}

/// Where its virgins are due to fly, if that is most of the block on some day; else where most is.
BatchRoom bestRoom(const LaneInput& input, const YardPicture& picture, const BatchBlock& block,
                   const QSizeF& size) {
    const auto heights = heightsOf(picture, block.batch);
    BatchRoom best;
    if (heights.sum + 1 < size.height() + 2 * kAir) return best;  // most are, in a large season
    const qreal enough = std::min(0.6 * heights.most, 4 * size.height());
    const auto [first, end] = columnsOf(picture, block.days);
    for (const Band band :
         {Band::DueToFly, Band::Virgin, Band::Laying, Band::Cell, Band::JudgedGood}) {
        for (std::size_t i = first; i < end; ++i) {
            const auto room = roomFor(picture, i, false, band, block.batch, size);
            if (room.columns == 0 || input.ribbon.meets(room.rect)) continue;
            if (best.room.columns == 0 || room.rect.height() > best.room.rect.height())
                best = {room, band, room.rect.height() >= enough};
            if (best.isGood) return best;
        }
    }
    return best;
}

/// The batch's number, once in its block. @return what it takes; null where it has no room
QRectF writeNumber(const LaneInput& input, const YardPicture& picture, const BatchBlock& block,
                   const QString& text, Sheet& sheet) {
    const QSizeF size(sheet.ruler().width(text, Type::Batch), sheet.ruler().capHeight(Type::Batch));
    const auto best = bestRoom(input, picture, block, size);
    if (best.room.columns == 0) return {};
    const QPointF at(best.room.rect.center().x(),
                     sheet.baselineAt(Type::Batch, best.room.rect.center().y()));
    const auto rect = sheet.textRect(Type::Batch, text, at, Align::Middle);
    const bool crossed = input.isCrossed(rect);
    if (crossed || best.room.columns > 1)  // over the gaps between days, and the lines of days
        sheet.fill(crossed ? Layer::Words : Layer::Body, groundOf(best.band),
                   rect.adjusted(-2, -kAir, 2, kAir));
    sheet.text(Layer::Words, inkOn(best.band), Type::Batch, text, at, Align::Middle);
    return rect;
}

/// The number; after it, where there is room, how late weather makes the batch.
QRectF writeBatch(const LaneInput& input, const YardPicture& picture, const BatchBlock& block,
                  Sheet& sheet) {
    const auto* batch = input.find(block.batch);
    if (!batch) return {};
    const LateWords text{QString::fromStdString(batch->batch->label),
                         flying_text::late(input.outlook, *batch)};
    const auto late =
        text.words.isEmpty() ? QRectF() : writeLate(input, picture, block.batch, text, sheet);
    return late.isNull() ? writeNumber(input, picture, block, text.number, sheet) : late;
}

}  // namespace

void writeYardNumbers(const LaneInput& input, const YardPicture& picture, Sheet& sheet) {
    std::array numbers{numbersOf(picture, Band::Ready), numbersOf(picture, Band::Likely)};
    std::vector<QRectF> taken;
    for (auto& of : numbers)
        for (const auto& rect : NumbersWriter(input, picture, sheet, of).write())
            taken.push_back(rect);
    for (const auto& block : picture.yard->blocks) {
        if (!block.days.overlaps(input.visible)) continue;
        const auto rect = writeBatch(input, picture, block, sheet);
        if (!rect.isNull()) taken.push_back(rect);
    }
    for (const auto& of : numbers) laySlicePlates(input, picture, of, taken, sheet);
}

}  // namespace tenthday
