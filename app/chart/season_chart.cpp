#include "chart/season_chart.h"

#include <QApplication>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include "chart/active_days.h"
#include "chart/builder_row.h"
#include "chart/card_for.h"
#include "chart/cells_day_label.h"
#include "chart/chart_access.h"
#include "chart/counted_day.h"
#include "chart/dragged_card.h"
#include "chart/gesture_resting.h"
#include "chart/hit_test.h"
#include "chart/legend_marks.h"
#include "screen_text/chart_hand_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"

namespace tenthday {
namespace {

constexpr int kHoverDelayMs = 250;
constexpr int kEdgeStepMs = 30;
constexpr int kClearDaysMs = 50;
constexpr int kGroundMs = 30;

}  // namespace

SeasonChart::SeasonChart(QWidget* parent)
    : QWidget(parent),
      gesture_(std::make_unique<RestingGesture>()),
      card_(new HoverCard(this)),
      orders_(new ChartOrders(this)),
      magnet_(new Magnet(this)) {
    options_.canFold = true;
    options_.strip = true;
    installChartAccess();
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(chart_text::seasonChart());
    hoverTimer_.setSingleShot(true);
    hoverTimer_.setInterval(kHoverDelayMs);
    connect(&hoverTimer_, &QTimer::timeout, this, &SeasonChart::showHoverCard);
    connect(orders_, &ChartOrders::reckoned, this, &SeasonChart::showOrders);
    edgeTimer_.setInterval(kEdgeStepMs);
    connect(&edgeTimer_, &QTimer::timeout, this, &SeasonChart::scrollAtEdges);
    connect(magnet_, &Magnet::found, this, [this] {
        options_.clearDays = magnet_->clearDays();
        clearDayTimer_.start();
    });
    groundTimer_.setSingleShot(true);
    groundTimer_.setInterval(kGroundMs);
    connect(&groundTimer_, &QTimer::timeout, this, &SeasonChart::keepGround);
    clearDayTimer_.setSingleShot(true);
    clearDayTimer_.setInterval(kClearDaysMs);
    connect(&clearDayTimer_, &QTimer::timeout, this, &SeasonChart::relayout);
    restyle();
}

void SeasonChart::setOutlook(const OutlookPtr& outlook) {
    const bool isFirst = !saved_ || !outlook || saved_->season != outlook->season;
    saved_ = shown_ = outlook;
    forgetExpected();
    options_.before = nullptr;
    letGo();
    moving_.reset();
    if (outlook && isFirst) {
        if (!options_.chosenDay || !outlook->season.contains(*options_.chosenDay))
            options_.chosenDay =
                std::clamp(outlook->snapshot.today(), outlook->season.first, outlook->season.last);
        axis_ = DayAxis();
        fit_ = activeDays(*outlook);
    }
    if (outlook && options_.selected && !outlook->find(*options_.selected))
        options_.selected.reset();
    std::erase_if(options_.alsoSelected,
                  [&](Id<Batch> id) { return !outlook || !outlook->find(id); });
    clash_ = -1;
    orders_->show(outlook, false);
    showOrders();
    placeAxis();
    describe();
}

void SeasonChart::setPreview(const OutlookPtr& preview) {
    if (preview)
        options_ = optionsFor(preview);
    else
        letGo();
    shown_ = preview ? preview : saved_;
    if (!preview) options_.before = nullptr;
    orders_->show(shown_, preview != nullptr);
    showOrders();
    placeAxis();
}

/// What is shown, with this preview instead. A legend that came and went with each day of a drag
/// would move all that is dragged over, and so would rows that grow and shrink.
ChartOptions SeasonChart::optionsFor(const OutlookPtr& preview) {
    auto options = options_;
    if (!options.legendHeld) {
        options.legendHeld = {layoutNow().legendFolded,
                              legendMarks(*saved_, options_, saved_->season)};
        holdTracks(*saved_, options.heldTracks);
    }
    holdTracks(*preview, options.heldTracks);
    options.before = saved_;
    options.ordersAreOld = !orders_->areOf(preview);
    return options;
}

void SeasonChart::expectPreview(const OutlookPtr& preview) {
    expectedPreview_ = preview;
    layAhead();
}

void SeasonChart::layAhead() {
    if (!expectedPreview_ || !expected_ || expected_->empty()) return;
    if (isRepaintAsked_) return;  // else once that is laid out
    auto options = optionsFor(expectedPreview_);
    if (const auto& wish = expected_->front(); wish.by != Days{0}) {
        // A drag that begins with it offers days from then on, and selects a batch it moves alone.
        options.offersDays = true;
        if (wish.batches.size() == 1) {
            options.selected = wish.batches.front();
            options.alsoSelected.clear();
        }
    }
    const auto axis = axisFor(*expectedPreview_, options);
    layouts_.expect({expectedPreview_, axis, std::move(options)});
}

void SeasonChart::endFrame() {
    magnet_->frameEnds();
    Q_EMIT frameEnded();
}

void SeasonChart::forgetExpected() {
    expected_.reset();
    expectedPreview_.reset();
    layouts_.expectNothing();
}

/// To the left: what follows from a drag lies to the right.
void SeasonChart::showDragged() {
    const auto* now = orders_->areOld() ? nullptr : orders_->orders().get();
    card_->showCard(draggedCard(*saved_, *shown_, *moving_, orders_->saved().get(), now), pointer_,
                    CardSide::Left);
}

/// Back on its first day a drag has no preview, and goes on: nothing jumps until it ends.
void SeasonChart::letGo() {
    if (gesture_->isBusy() || (!options_.legendHeld && options_.heldTracks.empty())) return;
    options_.legendHeld.reset();
    options_.heldTracks.clear();
    relayout();
}

void SeasonChart::showOrders() {
    options_.orders = orders_->orders();
    options_.ordersAreOld = options_.before && orders_->areOld();  // saved: in a moment
    if (moving_ && options_.before) showDragged();
    relayout();
}

void SeasonChart::showRefusal(const QString& why) {
    endFrame();
    card_->showCard(chart_cards::refused(why), pointer_);
}

void SeasonChart::setLook(std::optional<Look> look) {
    wishedLook_ = look;
    restyle();
}

void SeasonChart::setChosenDay(Day day) {
    if (shown_) day = std::clamp(day, shown_->season.first, shown_->season.last);
    if (options_.chosenDay == day) return;
    options_.chosenDay = day;
    relayout();
    describe();
    Q_EMIT dayChosen(day);
}

void SeasonChart::setSelectedBatch(std::optional<Id<Batch>> batch) {
    if (options_.selected == batch && options_.alsoSelected.empty()) return;
    options_.selected = batch;
    options_.alsoSelected.clear();
    relayout();
    describe();
    Q_EMIT batchSelected();
}

const LaidOutPtr& SeasonChart::laidOutNow() {
    static const LaidOutPtr nothing =
        std::make_shared<const LaidOut>(Layout{}, PictureMarks(Layout{}, QSize(0, 0)));
    if (!shown_) return nothing;
    if (!laidOut_) laidOut_ = layouts_.of({shown_, axis_, options_});
    return laidOut_;
}

void SeasonChart::zoomIn() {
    showAxis(axis_.zoomedAt(axis_.left() + axis_.width() / 2, 1.25), scrollY());
}
void SeasonChart::zoomOut() {
    showAxis(axis_.zoomedAt(axis_.left() + axis_.width() / 2, 0.8), scrollY());
}
void SeasonChart::showWholeSeason() {
    showAxis(DayAxis(axis_.span(), axis_.left(), axis_.width()), scrollY());
}

void SeasonChart::goToToday() {
    if (!shown_) return;
    setChosenDay(shown_->snapshot.today());
    showAxis(axis_.centredOn(shown_->snapshot.today()), scrollY());
}

void SeasonChart::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    if (options_.pixelRatio != devicePixelRatioF()) {
        options_.pixelRatio = devicePixelRatioF();
        repaintAll();
    }
    const auto& layout = layoutNow();
    if (std::exchange(described_, layout.hidden) != layout.hidden) describe();
    for (const auto& piece : event->region()) {
        painter.setClipRect(piece);
        ground_.paint(painter, *painter_, layout, size(), options_.pixelRatio);
    }
    painter_->paintOverGround(painter, layout, event->region());
    painter.setClipping(false);
    if (!ground_.isKept()) groundTimer_.start();
    endFrame();
    if (!hasFocus()) return;
    painter.setPen(QPen(paletteOf(look_)[Role::Chosen], 1, Qt::DotLine));
    painter.drawRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5));
}

void SeasonChart::resizeEvent(QResizeEvent* /*event*/) { placeAxis(); }

void SeasonChart::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
        event->type() == QEvent::LocaleChange)
        restyle();
    QWidget::changeEvent(event);
}

TargetKey SeasonChart::under(QPointF at) const {
    const auto* target = targetAt(const_cast<SeasonChart*>(this)->layoutNow(), at);
    return target ? target->key : TargetKey{};
}

int SeasonChart::dragDistance() const { return QApplication::startDragDistance(); }

std::optional<Day> SeasonChart::savedStart(Id<Batch> batch) const {
    const auto* found = saved_ ? saved_->find(batch) : nullptr;
    return found ? std::optional(found->batch->day) : std::nullopt;
}

void SeasonChart::showAxis(const DayAxis& axis, qreal scrollY) {
    fit_.reset();
    axis_ = axis;
    options_.scrollY = std::max(0.0, scrollY);
    relayout();
    const auto& layout = layoutNow();
    const qreal longest = std::max(0.0, layout.contentHeight - layout.plot.height());
    if (options_.scrollY <= longest) return;
    options_.scrollY = longest;
    relayout();
}

void SeasonChart::hover(QPointF at) {
    pointer_ = at;
    card_->hide();
    hoverTimer_.start();
}

CardText SeasonChart::cardOf(const TargetKey& key) const {
    return shown_ ? cardFor(*shown_, key, options_.orders.get()) : CardText{};
}

void SeasonChart::showHoverCard() {
    if (!shown_ || gesture_->isBusy()) return;
    const auto* target = targetAt(layoutNow(), pointer_);
    const auto* orders = options_.orders.get();
    card_->showCard(target ? cardFor(*shown_, layoutNow(), *target, orders) : CardText{}, pointer_);
}

void SeasonChart::showPreview(const ChartWish& wish) {
    moving_ = wish;
    magnet_->frameBegins();
    Q_EMIT previewRequested(wish);
}

void SeasonChart::dropPreview() {
    moving_.reset();
    forgetExpected();
    card_->hide();
    Q_EMIT previewDropped();
}

void SeasonChart::save(const ChartWish& wish) {
    moving_.reset();
    card_->hide();
    Q_EMIT wished(wish);
}

void SeasonChart::goTo(Gesture::Next next) {
    if (next) gesture_ = std::move(next);
    if (!options_.before) letGo();
    if (!gesture_->scrollsAtEdges())
        edgeTimer_.stop();
    else if (!edgeTimer_.isActive())
        edgeTimer_.start();
    if (isRepaintAsked_) return;  // else once that is laid out
    (void)expectNext();
    Q_EMIT frameEnded();  // none is made
}

/// @return whether other previews are expected than before
bool SeasonChart::expectNext() {
    const auto wishes = gesture_->expected(*this);
    if (std::exchange(expected_, wishes) == wishes) return false;
    expectedPreview_.reset();
    if (wishes.empty()) layouts_.expectNothing();
    Q_EMIT previewsExpected(wishes);
    return true;
}

void SeasonChart::placeAxis() {
    options_.size = size();
    if (shown_) axis_ = axisFor(*shown_, options_);
    relayout();
}

DayAxis SeasonChart::axisFor(const Outlook& outlook, const ChartOptions& options) const {
    const auto span = plotSpan(outlook, options, *ruler_);
    const DayAxis whole(outlook.season, span.left, span.width);
    if (fit_) return whole.fittedTo(*fit_);
    return axis_.width() <= 1 ? whole : axis_.placed(outlook.season, span.left, span.width);
}

void SeasonChart::restyle() {
    look_ = wishedLook_.value_or(lookOf(palette()));
    face_ = systemTypeface();
    ruler_ = std::make_shared<const FontRuler>(face_);
    layouts_.measureBy(ruler_);
    painter_ = std::make_unique<ChartPainter>(paletteOf(look_), face_);
    ground_.forget();
    repaintAll();
    card_->setLook(look_, face_);
    placeAxis();
}

/// What changes is painted once all that changes with it is there: a preview comes with its orders.
void SeasonChart::relayout() {
    laidOut_.reset();
    clearDayTimer_.stop();
    if (std::exchange(isRepaintAsked_, true)) return;
    QMetaObject::invokeMethod(this, &SeasonChart::repaintChanges, Qt::QueuedConnection);
}

void SeasonChart::repaintChanges() {
    isRepaintAsked_ = false;
    if (!shown_ || !isVisible() || window()->isMinimized()) {
        endFrame();
        return repaintAll();
    }
    const auto& marks = laidOutNow()->marks;
    const auto changed = shownMarks_ ? marks.changedSince(*shownMarks_) : QRegion(rect());
    shownMarks_ = marks;
    // A core is free while this one paints.
    if (!expectNext()) layAhead();  // with other options, maybe
    if (changed.isEmpty()) return endFrame();
    update(changed);
}

/// Where another layout is not painted yet, that starts the timer anew.
void SeasonChart::keepGround() {
    if (laidOut_ && !isRepaintAsked_) ground_.keep(*painter_, laidOut_->layout);
}

void SeasonChart::repaintAll() {
    laidOut_.reset();
    shownMarks_.reset();
    update();
}

void SeasonChart::describe() {
    if (!shown_) return;
    QStringList words;
    if (options_.chosenDay) {
        const auto all = readyInAllYards(*shown_, *options_.chosenDay);
        words +=
            chart_text::readyOn(weekdayAndDay(*options_.chosenDay), all.ready, wholeLikely(all));
    }
    if (options_.selected)
        if (const auto* batch = shown_->find(*options_.selected))
            words += chart_text::batchBrief(QString::fromStdString(batch->batch->label),
                                            weekdayAndDay(dayOf(batch->timeline.graft)),
                                            weekdayAndDay(batch->timeline.hold.transferDay));
    if (!described_.above.isEmpty()) words += chart_hand_text::lanesAbove(described_.above, 0);
    if (!described_.below.isEmpty()) words += chart_hand_text::lanesBelow(described_.below, 0);
    setAccessibleDescription(words.join(QStringLiteral("; ")));
}

}  // namespace tenthday
