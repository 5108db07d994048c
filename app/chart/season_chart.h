/// @file season_chart.h  The season chart as a widget: shows an outlook, takes pointer and keys.
/// Knows no desk: it says what is wished by signals (see chart_desk_link.h).
#pragma once
#include <QTimer>
#include <QWidget>

#include "chart/chart_orders.h"
#include "chart/chart_painter.h"
#include "chart/gesture.h"
#include "chart/ground_cache.h"
#include "chart/hover_card.h"
#include "chart/layouts_ahead.h"
#include "chart/magnet.h"
#include "chart/trouble_place.h"
#include "options/legend_fold.h"
#include "outlook/outlook.h"

namespace tenthday {

class SeasonChart : public QWidget, private ChartHand {
    Q_OBJECT

public:
    explicit SeasonChart(QWidget* parent = nullptr);

    /// Shows what is saved. Zoom and scroll stay as long as the season's days do.
    void setOutlook(const OutlookPtr& outlook);
    /// Shows an unsaved preview over what is saved; the saved place of what moves stays as a ghost.
    void setPreview(const OutlookPtr& preview);
    /// The first of what previewsExpected() told last, derived: its picture is laid out beside, so
    /// that it is there by then.
    void expectPreview(const OutlookPtr& preview);
    /// A move cannot be: says why, beside the pointer.
    void showRefusal(const QString& why);
    /// Empty: goes with the desktop's own colours.
    void setLook(std::optional<Look> look);

    [[nodiscard]] const OutlookPtr& outlook() const { return shown_; }
    [[nodiscard]] std::optional<Day> chosenDay() const { return options_.chosenDay; }
    [[nodiscard]] std::optional<Id<Batch>> selectedBatch() const { return options_.selected; }
    void setChosenDay(Day day);
    /// Alone; what was selected beside it is let go.
    void setSelectedBatch(std::optional<Id<Batch>> batch);
    /// All that are selected, the one that keys and pages go by first.
    [[nodiscard]] std::vector<Id<Batch>> selectedBatches() const;
    /// Lanes folded to a line, and what a hand did to the legend: as they were left last.
    void setFolds(const std::vector<LaneName>& lanes, LegendFold legend);
    [[nodiscard]] LegendFold legendFold() const;
    /// Batches that somebody proposes, drawn as ghosts; null takes them away.
    void setProposals(const ChartProposalsPtr& proposals);
    /// Where the keys stand; Hit::None while they stand nowhere.
    [[nodiscard]] const TargetKey& place() const { return options_.place; }
    /// Puts the keys on a place and tells about it.
    void standOn(const TargetKey& key);
    [[nodiscard]] const ChartOptions& options() const { return options_; }

    [[nodiscard]] const DayAxis& dayAxis() const { return axis_; }
    /// The orders shown, reckoned beside; null until the first are there.
    [[nodiscard]] const SeasonOrdersPtr& orders() const { return options_.orders; }
    /// What is painted now.
    [[nodiscard]] const Layout& layoutNow() { return laidOutNow()->layout; }
    [[nodiscard]] const HoverCard& card() const { return *card_; }
    [[nodiscard]] const GroundCache& ground() const { return ground_; }
    [[nodiscard]] const LayoutsAhead& layouts() const { return layouts_; }

    void zoomIn();
    void zoomOut();
    void showWholeSeason();
    void goToToday();
    /// To the next clash (by > 0) or the one before, and tells what it is.
    void goToClash(int by);
    /// To the next day, or the one before, with work that must be done on that very day.
    void goToMust(int by);
    void foldOrUnfoldLegend() override;
    void scrollLanes(int by) override;
    /// Moves all that is selected, in one step.
    void moveSelected(int byDays);
    /// What its card says.
    [[nodiscard]] CardText cardOf(const TargetKey& key) const;
    /// Shows every yard nuc by nuc; all as stacks only where all are opened already.
    void openOrCloseYards();

    [[nodiscard]] QSize sizeHint() const override { return {1280, 720}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {480, 320}; }

Q_SIGNALS:
    void previewRequested(const tenthday::ChartWish& wish);
    void previewDropped();
    /// One of these is likely to be requested next, the first sooner than the others; none: nothing
    /// is any more.
    void previewsExpected(const std::vector<tenthday::ChartWish>& wishes);
    /// What was asked for last is painted, or there was nothing to paint.
    void frameEnded();
    /// To be saved, in one step.
    void wished(const tenthday::ChartWish& wish);
    void batchSelected();
    /// A lane or the legend was folded or unfolded.
    void foldsChanged();
    /// Enter, or a double click on the batch.
    void editRequested(tenthday::Id<tenthday::Batch> batch);
    /// A double click where no batch is.
    void planRequested(tenthday::Day day);
    /// A double click on the numbers of a cells day.
    void cellsDayRequested(tenthday::Day day);
    void dayChosen(tenthday::Day day);
    /// A double click on the flag of an order.
    void orderRequested(tenthday::Id<tenthday::Order> order);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    // What gestures ask and do.
    [[nodiscard]] TargetKey under(QPointF at) const override;
    [[nodiscard]] TargetKey placeAt(QPointF at, Hit hit) const override;
    [[nodiscard]] qreal pxPerCell() const override;
    [[nodiscard]] bool addsToSelection() const override;
    [[nodiscard]] std::vector<Id<Batch>> movingWith(Id<Batch> batch) const override;
    [[nodiscard]] std::optional<LoadMove> loadMove(const TargetKey& load,
                                                   Id<Builder> to) const override;
    [[nodiscard]] int savedGrafts(Id<Batch> batch, std::int32_t bar) const override;
    [[nodiscard]] const DayAxis& axis() const override { return axis_; }
    [[nodiscard]] qreal scrollY() const override { return options_.scrollY; }
    [[nodiscard]] int dragDistance() const override;
    [[nodiscard]] std::optional<Day> savedStart(Id<Batch> batch) const override;
    void choose(Day day) override { setChosenDay(day); }
    void select(Id<Batch> batch) override { setSelectedBatch(batch); }
    void selectAlso(Id<Batch> batch) override;
    void goToTrouble(const TargetKey& trouble) override;
    void bringIntoSight(const TroublePlace& place);
    void bringIntoSight(const TargetKey& key);
    void scrollTo(const QRectF& rect);
    void openOrClose(Id<Yard> yard) override;
    void foldOrUnfold(LaneName lane) override;
    void showAxis(const DayAxis& axis, qreal scrollY) override;
    void hover(QPointF at) override;
    void setPointer(Qt::CursorShape shape) override { setCursor(shape); }
    void beginMagnet(Id<Batch> batch) override;
    void endMagnet() override;
    [[nodiscard]] Days drawn(Day start, qreal days) const override;
    void showPreview(const ChartWish& wish) override;
    void dropPreview() override;
    void save(const ChartWish& wish) override;

    void goTo(Gesture::Next next);
    bool expectNext();
    void layAhead();
    void forgetExpected();
    void endFrame();
    [[nodiscard]] const LaidOutPtr& laidOutNow();
    [[nodiscard]] ChartOptions optionsFor(const OutlookPtr& preview);
    [[nodiscard]] DayAxis axisFor(const Outlook& outlook, const ChartOptions& options) const;
    bool moveKey(int key, Qt::KeyboardModifiers with);
    bool placeKey(int key, Qt::KeyboardModifiers with);
    bool findKey(int key, Qt::KeyboardModifiers with);
    bool changeKey(int key, Qt::KeyboardModifiers with);
    bool viewKey(int key, Qt::KeyboardModifiers with);
    bool foldKey(int key);
    bool cancelKey();
    void stepBatch(int by, bool extend = false);
    void stepDay(int by);
    void stepLoad(int by);
    void stepYard(int by);
    void tellPlace();
    void tellReader(const TargetKey& key) const;
    void moveToNeighbour(int by);
    void moveToYard(int by);
    void changeGrafts(int by);
    void scrollAtEdges();
    void placeAxis();
    void letGo();
    void showOrders();
    void showDragged();
    void restyle();
    void relayout();
    void repaintChanges();
    void repaintAll();
    void keepGround();
    void showHoverCard();
    void describe();

    OutlookPtr saved_;
    OutlookPtr shown_;
    ChartOptions options_;
    DayAxis axis_;
    LaidOutPtr laidOut_;            ///< null: what is shown is not laid out yet
    std::optional<DayWindow> fit_;  ///< days that fill the window, until the user zooms or scrolls
    std::optional<Look> wishedLook_;
    Look look_ = Look::Light;
    Typeface face_;
    std::shared_ptr<const FontRuler> ruler_;
    LayoutsAhead layouts_;
    std::unique_ptr<ChartPainter> painter_;
    GroundCache ground_;
    QTimer groundTimer_;                      ///< keeps the ground as a picture, once frames rest
    std::optional<PictureMarks> shownMarks_;  ///< of what is painted, or about to be
    HiddenLanes described_;                   ///< lanes out of sight, as they are described
    bool isRepaintAsked_ = false;
    std::unique_ptr<Gesture> gesture_;
    std::optional<ChartWish> moving_;                 ///< previewed now
    std::optional<std::vector<ChartWish>> expected_;  ///< to be next, as it was told last
    OutlookPtr expectedPreview_;                      ///< the first of them
    HoverCard* card_;
    ChartOrders* orders_;
    Magnet* magnet_;
    QTimer hoverTimer_;
    QTimer edgeTimer_;      ///< scrolls while a drag rests near an edge
    QTimer clearDayTimer_;  ///< marks more clear days, unless they come with the next frame
    QPointF pointer_;
    int clash_ = -1;  ///< the finding gone to last
};

}  // namespace tenthday
