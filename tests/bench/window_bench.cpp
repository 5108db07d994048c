/// The window as a hand has it: a batch of the large season dragged in the chart of a 1920x1080
/// window. A frame is the whole path, from the pointer's event to the picture: the change, the
/// season derived from it, all that listens, layout and painting. Run with
/// QT_QPA_PLATFORM=offscreen; the reach is 16 ms for 99 % of frames.
#include <QMouseEvent>
#include <QSettings>
#include <QTemporaryDir>

#include "bench/bench_application.h"
#include "bench/frame_times.h"
#include "book/book_file.h"
#include "chart/active_days.h"
#include "chart/hit_test.h"
#include "chart/season_chart.h"
#include "support/large_season.h"
#include "window/main_window.h"

namespace tenthday {
namespace {

constexpr QSize kScreen{1920, 1080};
constexpr int kWholeSeason = 0;

/// A window with the large season's book, and a batch to drag.
class LargeWindow {
public:
    /// @param days  to see, from today; kWholeSeason: as the season is first shown
    explicit LargeWindow(int days) {
        (void)benchApplication();
        const Clock clock(test::largeSeason().today());
        const auto book = folder_.filePath(QStringLiteral("large.tenthday"));
        OpenOptions options;
        options.clock = clock;
        if (!createBook(book, test::largeSeasonRows(), options)) return;
        window_ = std::make_unique<MainWindow>(
            Settings(std::make_unique<QSettings>(folder_.filePath(QStringLiteral("settings.ini")),
                                                 QSettings::IniFormat)),
            clock, nullptr);
        window_->resize(kScreen);
        window_->show();
        if (!window_->open(book)) return;
        settle();
        auto& chart = *window_->chart();
        if (days != kWholeSeason)
            while (chart.dayAxis().visible().size() > days) chart.zoomIn();
        if (days != kWholeSeason) chart.goToToday();
        takeBatch(chart);
        chart.setSelectedBatch(batch_);
        settle();
    }

    [[nodiscard]] bool isReady() const { return !grip_.isNull(); }
    void press() { send(QEvent::MouseButtonPress, 0); }
    void dragBy(double days) { send(QEvent::MouseMove, days); }
    /// Where the dragged batch stands in what is shown.
    [[nodiscard]] Day day() const { return window_->chart()->outlook()->find(batch_)->batch->day; }
    /// What stands in the queue: the picture with it.
    void settle() { QCoreApplication::processEvents(); }

private:
    /// Takes a batch in sight that is not grafted yet, where nothing lies over its bar.
    void takeBatch(SeasonChart& chart) {
        const auto& layout = chart.layoutNow();
        for (const auto& target : layout.targets) {
            const auto at = target.rect.center();
            if (target.key.hit != Hit::Load || !layout.plot.contains(at)) continue;
            const auto* batch = chart.outlook()->find(target.key.batch);
            const auto* top = targetAt(layout, at);
            if (batch->timeline.grafted || !top || !(top->key == target.key)) continue;
            batch_ = target.key.batch;
            grip_ = at;
            return;
        }
    }
    void send(QEvent::Type type, double days) {
        auto& chart = *window_->chart();
        const QPointF at = grip_ + QPointF(days * chart.dayAxis().dayWidth(), 0);
        const bool moves = type == QEvent::MouseMove;
        QMouseEvent event(type, at, chart.mapToGlobal(at), moves ? Qt::NoButton : Qt::LeftButton,
                          Qt::LeftButton,
                          moves ? Qt::ShiftModifier : Qt::NoModifier);  // free of the magnet
        QCoreApplication::sendEvent(&chart, &event);
    }

    QTemporaryDir folder_;
    std::unique_ptr<MainWindow> window_;
    Id<Batch> batch_;
    QPointF grip_;
};

void windowDragFrame(benchmark::State& state) {
    LargeWindow window(static_cast<int>(state.range(0)));
    if (!window.isReady()) return state.SkipWithError("there is no batch to drag");
    window.press();
    int frame = 0;
    Day before = window.day();
    int still = 0;  // frames in which nothing moved
    timeFrames(state, [&] {
        window.dragBy(draggedBy(frame++));
        window.settle();
        still += window.day() == before;
        before = window.day();
    });
    if (still > 0) state.SkipWithError("the batch did not move in each frame");
}
BENCHMARK(windowDragFrame)
    ->Arg(30)
    ->Arg(120)
    ->Arg(kWholeSeason)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);

}  // namespace
}  // namespace tenthday
