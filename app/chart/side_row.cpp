#include "chart/side_row.h"

#include "chart/first_eggs.h"

namespace tenthday {
namespace {

constexpr qreal kWordAir = 3;

/// High enough for words.
bool hasWords(qreal row, const Sheet& sheet) {
    return row >= sheet.ruler().capHeight(Type::Strong) + 2;
}

bool canCarry(Band band) { return band == Band::Virgin || band == Band::DueToFly; }

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

LaySideRow::LaySideRow(const LaneInput& input, int place, Id<Yard> yard, const QRectF& area,
                       Sheet& sheet)
    : input_(input),
      side_(input.outlook.nucs.sides[static_cast<std::size_t>(place)]),
      place_(place),
      yard_(yard),
      area_(area),
      gap_(dayGap(input.axis.dayWidth(), sheet.snap())),
      sheet_(sheet) {
    const Day today = input_.outlook.snapshot.today();
    for (Day day = input_.visible.first; day <= input_.visible.last; day += Days{1}) {
        if (side_.yardOn(day) == yard_ && side_.stands.contains(day))
            add(day, sideOn(side_, day, today));
        else
            end();
    }
    end();
}

void LaySideRow::end() {
    endStretch();
    endStay();
    round_ = nullptr;
}

void LaySideRow::add(Day day, const SideDay& is) {
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
    addToStretch(is, band, rect, target);
}

void LaySideRow::addToStretch(const SideDay& is, Band band, const QRectF& rect, int target) {
    const auto eggs = unsureEggs(is);
    if (!stretch_.isNull() && (eggs || band != band_ || (gap_ > 0 && isCounted(band))))
        endStretch();
    if (eggs) return layUnsureEggs(*eggs, rect, gap_, sheet_, target);
    if (canCarry(band)) wait_.boxes.push_back({band, rect});
    stretch_ = stretch_.united(rect);
    band_ = band;
    target_ = target;
}

void LaySideRow::endStretch() {
    if (!stretch_.isNull()) layBand(band_, stretch_, isCounted(band_) ? gap_ : 0, sheet_, target_);
    stretch_ = QRectF();
}

/// The batch's number at the head of its stay, and a frame where the batch is selected.
void LaySideRow::endStay() {
    if (round_ != nullptr && !stay_.isNull()) {
        if (input_.isSelected(round_->batch))
            sheet_.frame(Layer::Marks, Role::Selection, stay_.adjusted(-1, -1, 1, 1), 1.2, 2);
        writeBatch();
        wait_.batch = round_->batch;
        if (!wait_.boxes.empty()) waits_.push_back(wait_);
    }
    stay_ = wordRoom_ = QRectF();
    wait_ = {};
}

void LaySideRow::writeBatch() {
    const auto* batch = input_.find(round_->batch);
    const auto text = batch ? QString::fromStdString(batch->batch->label) : QString();
    if (!hasWords(area_.height(), sheet_)) return;
    if (wordRoom_.width() < sheet_.ruler().width(text, Type::Strong) + 2 * kWordAir) return;
    const QPointF at(wordRoom_.left() + kWordAir,
                     sheet_.baselineAt(Type::Strong, area_.center().y()));
    sheet_.text(Layer::Words, inkOn(wordBand_), Type::Strong, text, at, Align::Left);
    const qreal right = sheet_.textRect(Type::Strong, text, at, Align::Left).right() + kWordAir;
    std::erase_if(wait_.boxes, [&](const auto& box) { return box.rect.left() < right; });
}

namespace {

/// Of all days the words could begin on, the first without a line through them.
std::optional<std::size_t> startOf(const LaneInput& input, const SideWait& wait, qreal width) {
    for (std::size_t i = 0; i < wait.boxes.size(); ++i) {
        if (wait.boxes[i].band != Band::DueToFly) continue;
        const auto& from = wait.boxes[i].rect;
        if (wait.boxes.back().rect.right() - from.left() < width + 2 * kWordAir) break;
        const QRectF words(from.left(), from.top(), width + 2 * kWordAir, from.height());
        if (!input.ribbon.meets(words) && !input.isCrossed(words)) return i;
    }
    return std::nullopt;
}

}  // namespace

bool writeLate(const LaneInput& input, const SideWait& wait, const QString& words, Sheet& sheet) {
    if (wait.boxes.empty() || !hasWords(wait.boxes.front().rect.height(), sheet)) return false;
    const qreal width = sheet.ruler().width(words, Type::Strong);
    const auto start = startOf(input, wait, width);
    if (!start) return false;
    const auto& from = wait.boxes[*start].rect;
    const QPointF at(from.left() + kWordAir, sheet.baselineAt(Type::Strong, from.center().y()));
    const auto plate = sheet.textRect(Type::Strong, words, at, Align::Left).adjusted(-2, -2, 2, 2);
    for (const auto& box : wait.boxes)  // over the gaps between days
        sheet.fill(Layer::Body, groundOf(box.band), box.rect.intersected(plate));
    sheet.text(Layer::Words, inkOn(Band::DueToFly), Type::Strong, words, at, Align::Left);
    return true;
}

}  // namespace tenthday
