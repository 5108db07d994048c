/// @file season_chart.h  The season chart as a widget: shows an outlook, takes pointer and keys.
/// Knows no desk: it says what is wished by signals (see chart_desk_link.h).
#pragma once
#include <QTimer>
#include <QWidget>

#include "chart/chart_layout.h"
#include "chart/chart_orders.h"
#include "chart/chart_painter.h"
#include "chart/gesture.h"
#include "chart/hover_card.h"
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
    /// A move cannot be: says why, beside the pointer.
    void showRefusal(const QString& why);
    /// Empty: goes with the desktop's own colours.
    void setLook(std::optional<Look> look);

    [[nodiscard]] const OutlookPtr& outlook() const { return shown_; }
    [[nodiscard]] std::optional<Day> chosenDay() const { return options_.chosenDay; }
    [[nodiscard]] std::optional<Id<Batch>> selectedBatch() const { return options_.selected; }
    void setChosenDay(Day day);
    void setSelectedBatch(std::optional<Id<Batch>> batch);

    [[nodiscard]] const DayAxis& dayAxis() const { return axis_; }
    /// The orders shown, reckoned beside; null until the first are there.
    [[nodiscard]] const SeasonOrdersPtr& orders() const { return options_.orders; }
    /// What is painted now.
    [[nodiscard]] const Layout& layoutNow();
    [[nodiscard]] const HoverCard& card() const { return *card_; }

    void zoomIn();
    void zoomOut();
    void showWholeSeason();
    void goToToday();
    /// Shows every yard nuc by nuc; all as stacks only where all are opened already.
    void openOrCloseYards();

    [[nodiscard]] QSize sizeHint() const override { return {1280, 720}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {480, 320}; }

Q_SIGNALS:
    void previewRequested(tenthday::Id<tenthday::Batch> batch, tenthday::Day day);
    void previewDropped();
    void moveRequested(tenthday::Id<tenthday::Batch> batch, tenthday::Day day);
    void batchSelected();
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
    [[nodiscard]] const DayAxis& axis() const override { return axis_; }
    [[nodiscard]] qreal scrollY() const override { return options_.scrollY; }
    [[nodiscard]] int dragDistance() const override;
    [[nodiscard]] std::optional<Day> savedStart(Id<Batch> batch) const override;
    void choose(Day day) override { setChosenDay(day); }
    void select(Id<Batch> batch) override { setSelectedBatch(batch); }
    void openOrClose(Id<Yard> yard) override;
    void showAxis(const DayAxis& axis, qreal scrollY) override;
    void hover(QPointF at) override;
    void setPointer(Qt::CursorShape shape) override { setCursor(shape); }
    void showPreview(Id<Batch> batch, Day day) override;
    void dropPreview() override;
    void saveMove(Id<Batch> batch, Day day) override;

    void goTo(Gesture::Next next);
    bool moveKey(int key, Qt::KeyboardModifiers with);
    bool viewKey(int key);
    bool cancelKey();
    void stepBatch(int by);
    void stepDay(int by);
    void moveSelected(int byDays);
    void placeAxis();
    void showOrders();
    void restyle();
    void relayout();
    void showHoverCard();
    void describe();

    OutlookPtr saved_;
    OutlookPtr shown_;
    ChartOptions options_;
    DayAxis axis_;
    mutable std::optional<Layout> layout_;
    std::optional<DayWindow> fit_;  ///< days that fill the window, until the user zooms or scrolls
    std::optional<Look> wishedLook_;
    Look look_ = Look::Light;
    Typeface face_;
    std::unique_ptr<FontRuler> ruler_;
    std::unique_ptr<ChartPainter> painter_;
    std::unique_ptr<Gesture> gesture_;
    std::optional<Id<Batch>> moving_;  ///< previewed now
    HoverCard* card_;
    ChartOrders* orders_;
    QTimer hoverTimer_;
    QPointF pointer_;
};

}  // namespace tenthday
