#include "chart/sides_lane.h"

#include "screen_text/chart_text.h"

namespace tenthday {
namespace {

constexpr qreal kAbove = 6;
constexpr qreal kBetween = 2;
constexpr qreal kWordAir = 3;

qreal rowHeight(const TextRuler& ruler) { return ruler.line(Type::Small) + kBetween; }

bool standsThere(const SideOutlook& side, Id<Yard> yard, const DayWindow& season) {
    if (!side.stands.overlaps(season)) return false;
    const Day first = std::max(side.stands.first, season.first);
    if (side.yardOn(first) == yard) return true;
    return std::any_of(side.stays.begin(), side.stays.end(), [&](const BoxStayFrom& stay) {
        return stay.yard == yard && stay.from >= first && stay.from <= season.last &&
               stay.from <= side.stands.last;
    });
}

/// Places in `outlook.nucs.sides` of the nucs that stand in a yard on any day of the season.
std::vector<int> sidesOf(const Outlook& outlook, Id<Yard> yard) {
    std::vector<int> places;
    for (std::size_t i = 0; i < outlook.nucs.sides.size(); ++i)
        if (standsThere(outlook.nucs.sides[i], yard, outlook.season))
            places.push_back(static_cast<int>(i));
    return places;
}

QString nameOf(const SideOutlook& side) {
    return chart_text::nuc(QString::fromStdString(side.box->label),
                           QString::fromStdString(side.side->side));
}

/// One nuc's row: its days joined where nothing changes.
class Row {
public:
    Row(const LaneInput& input, int place, Id<Yard> yard, const QRectF& area, Sheet& sheet)
        : input_(input),
          side_(input.outlook.nucs.sides[static_cast<std::size_t>(place)]),
          place_(place),
          yard_(yard),
          area_(area),
          gap_(dayGap(input.axis.dayWidth(), sheet.snap())),
          sheet_(sheet) {}

    void lay() {
        const Day today = input_.outlook.snapshot.today();
        for (Day day = input_.visible.first; day <= input_.visible.last; day += Days{1}) {
            if (side_.yardOn(day) == yard_ && side_.stands.contains(day))
                add(day, sideOn(side_, day, today));
            else
                endStretch();
        }
        endStretch();
        endStay();
    }

private:
    void add(Day day, const SideDay& is) {
        const auto band = bandOf(is);
        const auto* held = isCounted(band) ? is.round : nullptr;
        if (held != round_) endStay();
        round_ = held;
        const auto rect = sheet_.snap().rect(
            std::max(input_.axis.xOf(day), input_.axis.left()), area_.top(),
            std::min(input_.axis.xOf(day + Days{1}), input_.axis.right()), area_.bottom());
        const int target = sheet_.target({.hit = Hit::Nuc,
                                          .batch = held ? held->batch : Id<Batch>{},
                                          .yard = yard_,
                                          .day = day,
                                          .index = place_},
                                         rect);
        if (held) {
            stay_ = stay_.united(rect);
            if (wordRoom_.isNull()) wordBand_ = band;
            if (band == wordBand_) wordRoom_ = wordRoom_.united(rect);
        }
        if (!stretch_.isNull() && (band != band_ || (gap_ > 0 && isCounted(band)))) endStretch();
        stretch_ = stretch_.united(rect);
        band_ = band;
        target_ = target;
    }

    void endStretch() {
        if (!stretch_.isNull())
            layBand(band_, stretch_, isCounted(band_) ? gap_ : 0, sheet_, target_);
        stretch_ = QRectF();
    }

    /// The batch's number at the head of its stay, and a frame where the batch is selected.
    void endStay() {
        if (round_ != nullptr && !stay_.isNull()) {
            if (input_.isSelected(round_->batch))
                sheet_.frame(Layer::Marks, Role::Selection, stay_.adjusted(-1, -1, 1, 1), 1.2, 2);
            writeBatch();
        }
        stay_ = wordRoom_ = QRectF();
    }

    void writeBatch() {
        const auto* batch = input_.outlook.find(round_->batch);
        const auto text = batch ? QString::fromStdString(batch->batch->label) : QString();
        if (wordRoom_.width() < sheet_.ruler().width(text, Type::Strong) + 2 * kWordAir) return;
        const qreal baseline = sheet_.baselineAt(Type::Strong, area_.center().y());
        sheet_.text(Layer::Words, inkOn(wordBand_), Type::Strong, text,
                    {wordRoom_.left() + kWordAir, baseline}, Align::Left);
    }

    const LaneInput& input_;
    const SideOutlook& side_;
    int place_;
    Id<Yard> yard_;
    QRectF area_;
    qreal gap_;
    Sheet& sheet_;
    const SideRound* round_ = nullptr;
    QRectF stay_;      ///< all days of the round in sight
    QRectF wordRoom_;  ///< its first band in sight, where its number can stand
    Band wordBand_{};
    QRectF stretch_;
    Band band_{};
    int target_ = -1;
};

}  // namespace

Band bandOf(const SideDay& day) {
    switch (day.state) {
        case NucState::NotStocked:
            return Band::NotStocked;
        case NucState::Cell:
            return Band::Cell;
        case NucState::Virgin:
            return Band::Virgin;
        case NucState::DueToFly:
            return Band::DueToFly;
        case NucState::Laying:
            return Band::Laying;
        case NucState::JudgedGood:
            return Band::JudgedGood;
        case NucState::DroneLayer:
            return Band::DroneLayer;
        case NucState::Spent:
            return Band::Spent;
        case NucState::Ready:
        case NucState::NoQueen:
        case NucState::Caught:
            break;
    }
    if (day.ready) return Band::Ready;
    if (day.likely > 0.5) return Band::Likely;
    return day.state == NucState::NoQueen && !day.needsBrood ? Band::NoQueen : Band::Waiting;
}

LaneHeight SidesLane::height(const LaneInput& input, const TextRuler& ruler) const {
    const auto yard = input.outlook.nucs.yards[yard_].yard->id;
    const auto rows = static_cast<qreal>(sidesOf(input.outlook, yard).size());
    const qreal all = kAbove + rows * rowHeight(ruler);
    return {all, all, all, 0};
}

void SidesLane::lay(const LaneInput& input, const QRectF& area, Sheet& sheet) {
    const auto yard = input.outlook.nucs.yards[yard_].yard->id;
    const qreal height = rowHeight(sheet.ruler());
    qreal y = area.top() + kAbove;
    for (const int place : sidesOf(input.outlook, yard)) {
        const QRectF row(area.left(), y, area.width(), height - kBetween);
        y += height;
        if (row.bottom() < 0 || row.top() > input.options.size.height()) continue;
        Row(input, place, yard, row, sheet).lay();
        const auto& side = input.outlook.nucs.sides[static_cast<std::size_t>(place)];
        sheet.text(
            Layer::Names, Role::InkSoft, Type::Small,
            sheet.ruler().elided(nameOf(side), Type::Small, input.titleRight - input.titleLeft),
            {input.titleRight, sheet.baselineAt(Type::Small, row.center().y())}, Align::Right);
    }
}

}  // namespace tenthday
