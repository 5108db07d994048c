/// The window as a hand has it: a batch of the large season, or of the example, dragged in the
/// chart of a 1920x1080 window, and the chart scrolled. A frame is the whole path, from the
/// pointer's event to the picture: the change, the season derived from it, all that listens, layout
/// and painting. Run with QT_QPA_PLATFORM=offscreen; the reach is 16 ms for 99 % of frames.
#include <QDeadlineTimer>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QSettings>
#include <QTemporaryDir>
#include <QTimer>
#include <QWheelEvent>
#include <set>

#include "bench/bench_application.h"
#include "bench/frame_times.h"
#include "book/book_file.h"
#include "chart/active_days.h"
#include "chart/hit_test.h"
#include "chart/season_chart.h"
#include "exchange/example.h"
#include "support/large_season.h"
#include "window/main_window.h"

namespace tenthday {
namespace {

constexpr QSize kScreen{1920, 1080};
constexpr int kWholeSeason = 0;
constexpr int kRestMs = 200;
constexpr int kFrameMs = 16;

/// A season to open.
struct Season {
    ChangeSet rows;
    Day today;
};
Season largeSeason() { return {test::largeSeasonRows(), test::largeSeason().today()}; }
Season exampleSeason() { return {exampleContent(), date::local_days{date::June / 17 / 2027}}; }

/// A window with a season's book, and a batch to drag.
class BookWindow {
public:
    /// @param days  to see, from today; kWholeSeason: as the season is first shown
    BookWindow(const Season& season, int days) {
        (void)benchApplication();
        const Clock clock(season.today);
        const auto book = folder_.filePath(QStringLiteral("season.tenthday"));
        OpenOptions options;
        options.clock = clock;
        if (!createBook(book, season.rows, options)) return;
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
        rest();
        takeNext();
    }

    [[nodiscard]] bool isReady() const { return !grip_.isNull(); }
    /// Lets go what is dragged, without keeping it, and takes hold of another batch.
    void takeNext() {
        auto& chart = *window_->chart();
        letGo();
        takeBatch(chart);
        chart.setSelectedBatch(batch_);
        send(QEvent::MouseButtonPress, 0);
        rest();
    }
    void letGo() {
        QKeyEvent esc(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
        QCoreApplication::sendEvent(window_->chart(), &esc);
        rest();
    }
    /// As far as a hand goes at once.
    [[nodiscard]] int daysToDrag() const {
        return window_->chart()->dayAxis().dayWidth() < 40 ? 10 : 5;
    }
    void dragBy(double days) { send(QEvent::MouseMove, days); }
    /// Where the dragged batch stands in what is shown.
    [[nodiscard]] Day day() const { return window_->chart()->outlook()->find(batch_)->batch->day; }
    /// By a turn of the wheel, along the days.
    void scroll(int turn) {
        auto& chart = *window_->chart();
        QWheelEvent event(grip_, chart.mapToGlobal(grip_), {}, {turn, 0}, Qt::NoButton,
                          Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&chart, &event);
    }
    [[nodiscard]] qreal leftDay() const { return window_->chart()->dayAxis().xOf(day()); }
    /// Until a screen asks for the next picture.
    void awaitFrame() {
        while (!nextFrame_.hasExpired())
            QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents,
                                            1);
        nextFrame_ = QDeadlineTimer(kFrameMs, Qt::PreciseTimer);
    }
    /// What stands in the queue: the picture with it.
    void settle() { QCoreApplication::processEvents(); }

private:
    /// What a hand waits for without knowing: all is painted, and nothing reckons any more.
    static void rest() {
        QTimer timer;
        timer.setSingleShot(true);
        timer.start(kRestMs);
        while (timer.isActive()) QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    /// A batch in sight that was not taken last and is not grafted yet, where nothing lies over its
    /// bar; once all were, from the first again.
    void takeBatch(SeasonChart& chart) {
        if (!findBatch(chart) && !taken_.empty()) {
            taken_.clear();
            (void)findBatch(chart);
        }
        taken_.insert(batch_);
    }
    [[nodiscard]] bool findBatch(SeasonChart& chart) {
        const auto& layout = chart.layoutNow();
        constexpr qreal kEdge = 40;  // nearer, a drag scrolls
        const auto way = layout.plot.adjusted(
            kEdge, kEdge, -kEdge - daysToDrag() * layout.axis.dayWidth(), -kEdge);
        for (const auto& target : layout.targets) {
            const auto at = target.rect.center();
            if (target.key.hit != Hit::Load || !way.contains(at)) continue;
            const auto* batch = chart.outlook()->find(target.key.batch);
            const auto* top = targetAt(layout, at);
            if (batch->timeline.grafted || !top || !(top->key == target.key)) continue;
            if (taken_.contains(target.key.batch)) continue;
            batch_ = target.key.batch;
            grip_ = at;
            return true;
        }
        return false;
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
    std::set<Id<Batch>> taken_;
    QPointF grip_;
    QDeadlineTimer nextFrame_;
};

/// Batch after batch, each day by day, ten days or five: what a hand drags over is new each time.
void dragFrames(benchmark::State& state, const Season& season) {
    BookWindow window(season, static_cast<int>(state.range(0)));
    if (!window.isReady()) return state.SkipWithError("there is no batch to drag");
    int days = 0;
    Day before = window.day();
    int still = 0;  // frames in which nothing moved
    const auto frame = [&] {
        window.dragBy(++days);
        window.settle();
        still += window.day() == before;
        before = window.day();
    };
    timeFrames(state, frame, [&] {
        window.awaitFrame();
        if (days < window.daysToDrag()) return;
        window.takeNext();
        days = 0;
        before = window.day();
    });
    if (still > 0) state.SkipWithError("the batch did not move in each frame");
}

void windowDragFrame(benchmark::State& state) { dragFrames(state, largeSeason()); }
void exampleDragFrame(benchmark::State& state) { dragFrames(state, exampleSeason()); }

/// Back and forth, an eighth of a notch each time.
void scrollFrames(benchmark::State& state, const Season& season) {
    BookWindow window(season, static_cast<int>(state.range(0)));
    if (!window.isReady()) return state.SkipWithError("there is no window");
    window.letGo();
    int frame = 0;
    qreal before = window.leftDay();
    int still = 0;
    timeFrames(state, [&] {
        window.scroll(frame++ / 20 % 2 == 0 ? -15 : 15);
        window.settle();
        still += window.leftDay() == before;
        before = window.leftDay();
    });
    if (still > 0) state.SkipWithError("the days did not move in each frame");
}

void windowScrollFrame(benchmark::State& state) { scrollFrames(state, largeSeason()); }
void exampleScrollFrame(benchmark::State& state) { scrollFrames(state, exampleSeason()); }

void parts(benchmark::internal::Benchmark* bench) {
    bench->Arg(30)->Arg(120)->Unit(benchmark::kMillisecond)->Iterations(200);
}
void partsAndWhole(benchmark::internal::Benchmark* bench) {
    parts(bench);
    bench->Arg(kWholeSeason);
}
BENCHMARK(windowDragFrame)->Apply(partsAndWhole);
BENCHMARK(windowScrollFrame)->Apply(parts);
BENCHMARK(exampleDragFrame)->Apply(partsAndWhole);
BENCHMARK(exampleScrollFrame)->Apply(parts);

}  // namespace
}  // namespace tenthday
