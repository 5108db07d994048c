#include <set>

#include "calendar/iso_week.h"
#include "chart/yard_picture.h"
#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr int kMostColumns = 4;  ///< a number may spread over so many equal days
constexpr qreal kAir = 2.5;

Role inkOn(Band band) {
    switch (band) {
        case Band::JudgedGood:
            return Role::JudgedGoodInk;
        case Band::Laying:
            return Role::LayingInk;
        case Band::DueToFly:
            return Role::DueToFlyInk;
        case Band::Virgin:
            return Role::VirginInk;
        case Band::Cell:
            return Role::CellsInk;
        default:
            return Role::NoQueenInk;
    }
}

Role groundOf(Band band) {
    switch (band) {
        case Band::JudgedGood:
            return Role::JudgedGood;
        case Band::Laying:
            return Role::Laying;
        case Band::DueToFly:
            return Role::DueToFly;
        case Band::Virgin:
            return Role::Virgin;
        default:
            return Role::SealedCells;
    }
}

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

class ReadyNumbersWriter {
public:
    ReadyNumbersWriter(const LaneInput& input, const YardPicture& picture, Sheet& sheet)
        : input_(input), picture_(picture), sheet_(sheet) {
        for (const auto& day : input.outlook.nucs.cellsDays) cellsDays_.insert(day.day);
    }

    void write() {
        // The chosen day first: no other number may take its room.
        for (std::size_t i = 0; i < picture_.columns.size(); ++i)
            if (input_.options.chosenDay == picture_.columns[i].day) writeAt(i, true);
        for (std::size_t i = 0; i < picture_.columns.size(); ++i)
            if (isWanted(i)) writeAt(i, false);
    }

private:
    /// Where the number changes, on Mondays and on cells days; every day when days are wide.
    [[nodiscard]] bool isWanted(std::size_t i) const {
        constexpr qreal kWideDay = 26;
        const auto& column = picture_.columns[i];
        if (column.ready <= 0) return false;
        return input_.axis.dayWidth() >= kWideDay || i == 0 ||
               picture_.columns[i - 1].ready != column.ready || isoWeekday(column.day) == 1 ||
               cellsDays_.contains(column.day);
    }

    void writeAt(std::size_t i, bool about) {
        const auto& column = picture_.columns[i];
        if (column.ready <= 0) return;
        const auto text = chart_text::number(column.ready);
        const QSizeF size(sheet_.ruler().width(text, Type::Number),
                          sheet_.ruler().capHeight(Type::Number));
        const auto room = roomFor(picture_, i, about, Band::Ready, {}, size);
        if (room.columns == 0) return;
        const QPointF at(room.rect.center().x(), sheet_.snap()(room.rect.bottom() - 4));
        const auto rect = sheet_.textRect(Type::Number, text, at, Align::Middle);
        for (const auto& other : taken_)
            if (other.adjusted(-4, -2, 4, 2).intersects(rect)) return;
        if (input_.ribbon.meets(rect.adjusted(-2, -1, 2, 1))) return;
        taken_.push_back(rect);
        sheet_.text(Layer::Words, Role::ReadyInk, Type::Number, text, at, Align::Middle);
    }

    const LaneInput& input_;
    const YardPicture& picture_;
    Sheet& sheet_;
    std::set<Day> cellsDays_;
    std::vector<QRectF> taken_;
};

/// The batch's number once in its block: where its virgins are due to fly, else where it fits.
void writeBatch(const LaneInput& input, const YardPicture& picture, const BatchBlock& block,
                Sheet& sheet) {
    const auto* batch = input.outlook.find(block.batch);
    if (!batch) return;
    const auto text = QString::fromStdString(batch->batch->label);
    const QSizeF size(sheet.ruler().width(text, Type::Batch), sheet.ruler().capHeight(Type::Batch));
    for (const Band band :
         {Band::DueToFly, Band::Virgin, Band::Laying, Band::Cell, Band::JudgedGood}) {
        for (std::size_t i = 0; i < picture.columns.size(); ++i) {
            if (!block.days.contains(picture.columns[i].day)) continue;
            const auto room = roomFor(picture, i, false, band, block.batch, size);
            if (room.columns == 0) continue;
            const QPointF at(room.rect.center().x(),
                             sheet.baselineAt(Type::Batch, room.rect.center().y()));
            const auto words = sheet.textRect(Type::Batch, text, at, Align::Middle);
            if (input.ribbon.meets(words)) continue;
            if (room.columns > 1)  // over the gaps between days
                sheet.fill(Layer::Body, groundOf(band), words.adjusted(-2, -3, 2, 3));
            sheet.text(Layer::Words, inkOn(band), Type::Batch, text, at, Align::Middle);
            return;
        }
    }
}

}  // namespace

void writeYardNumbers(const LaneInput& input, const YardPicture& picture, Sheet& sheet) {
    ReadyNumbersWriter(input, picture, sheet).write();
    for (const auto& block : picture.yard->blocks)
        if (block.days.overlaps(input.visible)) writeBatch(input, picture, block, sheet);
}

}  // namespace tenthday
