/// What gestures and keys ask of the season chart: selection, moves, the magnet, the place of keys.
#include <QAccessible>
#include <QGuiApplication>

#include "chart/chart_parts.h"
#include "chart/chart_selection.h"
#include "chart/hit_test.h"
#include "chart/season_chart.h"
#include "screen_text/chart_hand_text.h"

namespace tenthday {

TargetKey SeasonChart::placeAt(QPointF at, Hit hit) const {
    const auto* target = targetAt(const_cast<SeasonChart*>(this)->layoutNow(), at, hit);
    return target ? target->key : TargetKey{};
}

qreal SeasonChart::pxPerCell() const {
    return const_cast<SeasonChart*>(this)->layoutNow().pxPerCell;
}

bool SeasonChart::addsToSelection() const {
    return QGuiApplication::keyboardModifiers() & (Qt::ControlModifier | Qt::ShiftModifier);
}

std::vector<Id<Batch>> SeasonChart::selectedBatches() const {
    std::vector<Id<Batch>> all;
    if (options_.selected) all.push_back(*options_.selected);
    all.insert(all.end(), options_.alsoSelected.begin(), options_.alsoSelected.end());
    return all;
}

void SeasonChart::selectAlso(Id<Batch> batch) {
    auto all = selectedBatches();
    const auto at = std::find(all.begin(), all.end(), batch);
    if (at != all.end())
        all.erase(at);
    else
        all.insert(all.begin(), batch);
    setSelectedBatch(all.empty() ? std::nullopt : std::optional(all.front()));
    if (all.size() > 1) options_.alsoSelected.assign(all.begin() + 1, all.end());
    relayout();
}

std::vector<Id<Batch>> SeasonChart::movingWith(Id<Batch> batch) const {
    auto all = selectedBatches();
    const auto at = std::find(all.begin(), all.end(), batch);
    if (at == all.end()) return {batch};
    std::rotate(all.begin(), at, at + 1);
    return all;
}

std::optional<LoadMove> SeasonChart::loadMove(const TargetKey& load, Id<Builder> to) const {
    const auto* span = saved_ ? loadAt(*saved_, load) : nullptr;
    if (span == nullptr || span->builder == to) return std::nullopt;
    const auto able = buildersFor(*saved_, *span);
    if (std::find(able.begin(), able.end(), to) == able.end()) return std::nullopt;
    return LoadMove{load.batch, span->step, span->bars, span->builder, to};
}

int SeasonChart::savedGrafts(Id<Batch> batch, std::int32_t number) const {
    if (const auto* found = saved_ ? saved_->find(batch) : nullptr)
        for (const auto& bar : found->bars)
            if (bar->bar == number) return bar->cells.value;
    return 1;
}

void SeasonChart::beginMagnet(Id<Batch> batch) {
    options_.offersDays = true;
    options_.clearDays.clear();
    if (movingWith(batch).size() == 1) magnet_->begin(saved_, batch);
}

void SeasonChart::endMagnet() {
    magnet_->end();
    options_.offersDays = false;
    options_.clearDays.clear();
    relayout();
}

Days SeasonChart::drawn(Day start, qreal days) const {
    const bool isFree = QGuiApplication::keyboardModifiers() & Qt::ShiftModifier;
    return drawnTo(start, days, isFree ? std::vector<Day>{} : options_.clearDays);
}

void SeasonChart::scrollAtEdges() {
    constexpr qreal kEdge = 24;
    constexpr qreal kStep = 12;
    const auto plot = layoutNow().plot;
    const qreal x = pointer_.x() < plot.left() + kEdge    ? -kStep
                    : pointer_.x() > plot.right() - kEdge ? kStep
                                                          : 0;
    const qreal y = pointer_.y() < plot.top() + kEdge      ? -kStep
                    : pointer_.y() > plot.bottom() - kEdge ? kStep
                                                           : 0;
    const bool tall = layoutNow().contentHeight > plot.height();
    if (x == 0 && (y == 0 || !tall)) return;
    showAxis(axis_.scrolledBy(x), scrollY() + (tall ? y : 0));
    goTo(gesture_->moved(*this, pointer_));
}

// --- keys -------------------------------------------------------------------------------------

bool SeasonChart::placeKey(int key, Qt::KeyboardModifiers with) {
    if (!(with & Qt::ControlModifier) || (with & Qt::AltModifier)) return false;
    switch (key) {
        case Qt::Key_Left:
            return stepLoad(-1), true;
        case Qt::Key_Right:
            return stepLoad(1), true;
        case Qt::Key_Up:
            return stepYard(-1), true;
        case Qt::Key_Down:
            return stepYard(1), true;
        default:
            return false;
    }
}

bool SeasonChart::findKey(int key, Qt::KeyboardModifiers with) {
    if (with & (Qt::ControlModifier | Qt::AltModifier)) return false;  // of the window
    const int by = (with & Qt::ShiftModifier) ? -1 : 1;
    switch (key) {
        case Qt::Key_C:
            return goToClash(by), true;
        case Qt::Key_M:
            return goToMust(by), true;
        case Qt::Key_Y:  // some window managers keep Alt+Shift+Up and Down for themselves
            return moveToYard(by), true;
        case Qt::Key_B:
            return scrollLanes(by), true;
        case Qt::Key_Space:
            return tellPlace(), true;
        default:
            return false;
    }
}

bool SeasonChart::changeKey(int key, Qt::KeyboardModifiers with) {
    if (!(with & Qt::AltModifier)) return false;
    const bool toYard = with & Qt::ShiftModifier;
    switch (key) {
        case Qt::Key_Left:
            return moveSelected(-1), true;
        case Qt::Key_Right:
            return moveSelected(1), true;
        case Qt::Key_Up:
            return toYard ? moveToYard(-1) : moveToNeighbour(-1), true;
        case Qt::Key_Down:
            return toYard ? moveToYard(1) : moveToNeighbour(1), true;
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            return changeGrafts(1), true;
        case Qt::Key_Minus:
            return changeGrafts(-1), true;
        default:
            return foldKey(key);
    }
}

void SeasonChart::standOn(const TargetKey& key) {
    options_.place = key;
    relayout();
    bringIntoSight(key);
    tellPlace();
}

/// The card of the place, beside it; a screen reader is told by the focus that goes there.
void SeasonChart::tellPlace() {
    const auto* target = findTarget(layoutNow(), options_.place);
    if (target == nullptr) return;
    auto key = options_.place;
    if (key.hit == Hit::YardRow) {
        key.hit = Hit::YardDay;
        key.day = options_.chosenDay.value_or(shown_->snapshot.today());
    }
    const auto x = key.day ? axis_.middleOf(*key.day) : target->rect.center().x();
    card_->showCard(cardOf(key), {x, target->rect.center().y()});
    tellReader(options_.place);
    describe();
}

/// The focus of assistive programs goes to what stands at a place.
void SeasonChart::tellReader(const TargetKey& key) const {
    if (!QAccessible::isActive() || !shown_) return;
    int index = 0;
    for (const auto& part : chartParts(*shown_, options_)) {
        if (part.key == key) {
            QAccessibleEvent event(const_cast<SeasonChart*>(this), QAccessible::Focus);
            event.setChild(index);
            return QAccessible::updateAccessibility(&event);
        }
        ++index;
    }
}

void SeasonChart::stepLoad(int by) {
    if (!shown_) return;
    const auto next = nextLoad(*shown_, options_.place, by);
    if (!next) return;
    setSelectedBatch(next->batch);
    showAxis(axis_.showing(*next->day, 40), scrollY());
    standOn(*next);
}

void SeasonChart::stepYard(int by) {
    if (!shown_) return;
    if (const auto next = nextYard(*shown_, options_.place, by)) standOn(*next);
}

void SeasonChart::goToClash(int by) {
    if (!shown_) return;
    const Day from = options_.chosenDay.value_or(shown_->snapshot.today());
    const auto next = nextClash(*shown_, from, clash_, by);
    if (!next)
        return card_->showCard(chart_cards::refused(chart_hand_text::noClash()), rect().center());
    clash_ = *next;
    const auto& finding = shown_->findings[static_cast<std::size_t>(*next)];
    setChosenDay(finding.day);
    if (const auto batch = batchOf(finding)) setSelectedBatch(*batch);
    showAxis(axis_.showing(*options_.chosenDay, axis_.dayWidth()), scrollY());
    bringIntoSight(placeOf(finding));
    card_->showCard(chart_cards::trouble(finding),
                    {axis_.middleOf(*options_.chosenDay), layoutNow().plot.top() + 40});
}

void SeasonChart::goToTrouble(const TargetKey& trouble) {
    if (!shown_) return;
    if (!trouble.batch.isNone()) setSelectedBatch(trouble.batch);
    if (!trouble.day) return;
    setChosenDay(*trouble.day);
    showAxis(axis_.showing(*options_.chosenDay, axis_.dayWidth()), scrollY());
    bringIntoSight(placeOf(*shown_, trouble));
    card_->showCard(cardOf(trouble), pointer_);
}

void SeasonChart::goToMust(int by) {
    if (!shown_) return;
    const Day from = options_.chosenDay.value_or(shown_->snapshot.today());
    const auto day = nextMust(*shown_, from, by);
    if (!day)
        return card_->showCard(chart_cards::refused(chart_hand_text::noMust()), rect().center());
    setChosenDay(*day);
    showAxis(axis_.showing(*options_.chosenDay, axis_.dayWidth()), scrollY());
}

void SeasonChart::moveSelected(int byDays) {
    if (!options_.selected || gesture_->isBusy()) return;
    if (!savedStart(*options_.selected)) return;
    ChartWish wish;
    wish.batches = selectedBatches();
    wish.by = Days{byDays};
    save(wish);
    if (const auto now = savedStart(*options_.selected))
        showAxis(axis_.showing(*now, 40), scrollY());
}

/// The load keys stand on, or the selected batch's first one, to the next builder that can take it.
void SeasonChart::moveToNeighbour(int by) {
    if (!saved_ || !options_.selected || gesture_->isBusy()) return;
    auto place = options_.place;
    const auto* span = place.hit == Hit::Load ? loadAt(*saved_, place) : nullptr;
    const auto* batch = saved_->find(*options_.selected);
    if (span == nullptr && batch != nullptr && !batch->timeline.loads.empty()) {
        span = &batch->timeline.loads.front();
        place = {.hit = Hit::Load,
                 .batch = *options_.selected,
                 .builder = span->builder.value_or(Id<Builder>{}),
                 .day = dayOf(span->span.from),
                 .index = span->step};
    }
    if (span == nullptr) return;
    const auto able = buildersFor(*saved_, *span);
    const auto at = std::find(able.begin(), able.end(), place.builder);
    const auto next = at == able.end() ? (by > 0 ? 0 : static_cast<std::ptrdiff_t>(able.size()) - 1)
                                       : (at - able.begin()) + by;
    if (next < 0 || next >= static_cast<std::ptrdiff_t>(able.size())) return;
    const auto to = able[static_cast<std::size_t>(next)];
    ChartWish wish;
    wish.batches = {place.batch};
    wish.load = loadMove(place, to);
    if (wish.load) save(wish);
    place.builder = to;
    options_.place = place;
    relayout();
}

/// Cells of the selected batch in the yard keys stand on, else where most are, to the next yard.
void SeasonChart::moveToYard(int by) {
    if (!saved_ || !options_.selected || gesture_->isBusy()) return;
    const auto move = yardMove(*saved_, *options_.selected, options_.place.yard, by);
    if (!move) return;
    ChartWish wish;
    wish.batches = {*options_.selected};
    wish.share = *move;
    const auto before = saved_;
    save(wish);
    if (saved_ == before) return;  // refused: the card says why, and the keys stay
    standOn({.hit = Hit::YardRow, .yard = move->to});
}

void SeasonChart::changeGrafts(int by) {
    if (!saved_ || !options_.selected || gesture_->isBusy()) return;
    const auto* batch = saved_->find(*options_.selected);
    if (batch == nullptr || batch->bars.empty()) return;
    const auto& bar = *batch->bars.back();
    ChartWish wish;
    wish.batches = {*options_.selected};
    wish.grafts = ChartWish::Grafts{*options_.selected, bar.bar, std::max(1, bar.cells.value + by)};
    if (wish.grafts->cells != bar.cells.value) save(wish);
}

}  // namespace tenthday
