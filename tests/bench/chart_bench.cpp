/// The season chart at 1920x1080: what a frame of a drag and of a scroll costs, and what painting
/// costs against the bare calls of the painter for the same items. Run with
/// QT_QPA_PLATFORM=offscreen; the reach is 16 ms for 99 % of frames, painting at most twice the
/// bare calls, the first picture of the large season under 150 ms.
#include <benchmark/benchmark.h>

#include <QImage>
#include <QPainter>

#include "bench/a_look.h"
#include "bench/bench_application.h"
#include "bench/frame_times.h"
#include "chart/active_days.h"
#include "chart/chart_layout.h"
#include "chart/chart_painter.h"
#include "chart/ground_cache.h"
#include "outlook/outlook.h"
#include "records/verbs.h"
#include "support/large_season.h"

namespace tenthday {
namespace {

constexpr QSize kScreen{1920, 1080};
constexpr int kPlanned = 300;
constexpr int kWholeSeason = 0;

struct Scene {
    OutlookPtr outlook;
    ChartOptions options;
    Typeface face;
    std::unique_ptr<FontRuler> ruler;
    DayAxis axis;
    QImage image;
    OutlookMemo memo;
    LaidBefore before;
    bool isAtRest = true;  ///< nothing is dragged or scrolled yet

    /// @param days  to see, from today; kWholeSeason: as the season is first shown
    explicit Scene(int days) {
        (void)benchApplication();
        outlook = outlookOf(test::largeSeason(), memo);
        face = systemTypeface();
        face.basePx = 12;
        ruler = std::make_unique<FontRuler>(face);
        options.size = kScreen;
        const auto span = plotSpan(*outlook, options, *ruler);
        axis = DayAxis(outlook->season, span.left, span.width);
        const Day today = outlook->snapshot.today();
        axis = axis.fittedTo(days == kWholeSeason ? activeDays(*outlook)
                                                  : DayWindow{today, today + Days{days - 1}});
        image = QImage(kScreen, QImage::Format_RGB32);
    }
    [[nodiscard]] Layout layout() const { return layOut(*outlook, axis, options, *ruler); }
    /// As the window does: what did not change is kept from picture to picture.
    void paint(const ChartPainter& painter, GroundCache& ground) {
        const auto layout = layOut(outlook, axis, options, *ruler, before);
        QPainter on(&image);
        ground.paint(on, painter, layout, kScreen, 1);
        painter.paintOverGround(on, layout);
        if (!ground.isKept() && isAtRest) ground.keep(painter, layout);
        isAtRest = false;
    }
};

/// One batch a day further or back each time: season derived anew, laid out, painted.
/// `picture_p99_ms` is from the preview to the finished picture.
void dragFrame(benchmark::State& state) {
    Scene scene(static_cast<int>(state.range(0)));
    const auto saved = scene.outlook->snapshot;
    const auto batch = saved.find(test::largeSeasonBatch(kPlanned));
    const ChartPainter painter(paletteOf(Look::Light), scene.face);
    GroundCache ground;
    scene.paint(painter, ground);  // what is dragged stands in the window already
    int frame = 0;
    std::vector<double> pictures;
    timeFrames(state, [&] {
        const auto moved = moveBatch(saved, batch->id, batch->day + Days{draggedBy(frame++)});
        if (!moved) return state.SkipWithError(moved.error().text.c_str());
        const auto next = applied(saved, moved.value());
        if (!next) return state.SkipWithError(next.error().text.c_str());
        scene.outlook = outlookOf(next.value(), scene.memo);
        const auto derived = std::chrono::steady_clock::now();
        scene.paint(painter, ground);
        pictures.push_back(secondsSince(derived));
    });
    std::sort(pictures.begin(), pictures.end());
    state.counters["picture_p50_ms"] = pictures[pictures.size() / 2] * 1000;
    state.counters["picture_p99_ms"] = pictures[pictures.size() * 99 / 100] * 1000;
    state.counters["days_reckoned"] = benchmark::Counter(
        static_cast<double>(scene.before.stacks.reckoned()), benchmark::Counter::kAvgIterations);
}
BENCHMARK(dragFrame)
    ->Arg(30)
    ->Arg(120)
    ->Arg(kWholeSeason)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);

/// A look into a nuc entered, to and fro, up to its picture: all but the commit, which has its own
/// time.
void outcomeFrame(benchmark::State& state) {
    Scene scene(static_cast<int>(state.range(0)));
    const auto saved = scene.outlook->snapshot;
    const auto look = aLook(*scene.outlook);
    const ChartPainter painter(paletteOf(Look::Light), scene.face);
    GroundCache ground;
    scene.paint(painter, ground);
    bool there = false;
    timeFrames(state, [&] {
        there = !there;
        const auto next = there ? applied(saved, look).value() : saved;
        scene.outlook = outlookOf(next, scene.memo);
        scene.paint(painter, ground);
    });
}
BENCHMARK(outcomeFrame)
    ->Arg(30)
    ->Arg(120)
    ->Arg(kWholeSeason)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);

/// Scrolled by 7 px each time, back and forth: laid out and painted.
void scrollFrame(benchmark::State& state) {
    Scene scene(static_cast<int>(state.range(0)));
    const ChartPainter painter(paletteOf(Look::Light), scene.face);
    GroundCache ground;
    scene.paint(painter, ground);
    int frame = 0;
    timeFrames(state, [&] {
        scene.axis = scene.axis.scrolledBy(frame++ / 50 % 2 == 0 ? 7 : -7);
        scene.paint(painter, ground);
    });
}
BENCHMARK(scrollFrame)
    ->Arg(30)
    ->Arg(120)
    ->Arg(kWholeSeason)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);

void layoutAlone(benchmark::State& state) {
    Scene scene(static_cast<int>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(scene.layout());
}
BENCHMARK(layoutAlone)->Arg(30)->Arg(120)->Arg(kWholeSeason)->Unit(benchmark::kMillisecond);

void paintingAlone(benchmark::State& state) {
    const Scene scene(static_cast<int>(state.range(0)));
    const auto layout = scene.layout();
    const ChartPainter painter(paletteOf(Look::Light), scene.face);
    QImage image(kScreen, QImage::Format_RGB32);
    for (auto _ : state) {
        QPainter on(&image);
        painter.paint(on, layout, QRectF(QPointF(), QSizeF(kScreen)));
    }
}
BENCHMARK(paintingAlone)->Arg(30)->Arg(120)->Arg(kWholeSeason)->Unit(benchmark::kMillisecond);

/// The least calls that put the same shapes on the picture: everything prepared beforehand.
void bareCalls(benchmark::State& state) {
    const Scene scene(static_cast<int>(state.range(0)));
    const auto layout = scene.layout();
    const auto& colours = paletteOf(Look::Light);
    struct Call {
        const Item* item;
        QColor colour;
        QList<QLineF> lines;
        QPainterPath dots;
        QPainterPath glyph;
    };
    std::vector<Call> calls;
    for (const auto& item : layout.items) {
        Call call{&item, colours[item.role], {}, {}, {}};
        if (item.shape == Shape::Hatch)
            call.lines = hatchLines(item.rect, item.spacing, item.slope);
        if (item.shape == Shape::Dots)
            for (const auto& dot : dotGrid(item.rect, item.spacing, item.pen / 2))
                call.dots.addEllipse(dot, item.pen / 2, item.pen / 2);
        if (item.shape == Shape::Glyph)
            call.glyph =
                glyphPath(static_cast<Glyph>(item.detail), item.rect.center(), item.rect.width());
        calls.push_back(std::move(call));
    }
    std::vector<QFont> fonts;
    for (std::size_t i = 0; i < kTypeCount; ++i)
        fonts.push_back(scene.face.font(static_cast<Type>(i)));
    QImage image(kScreen, QImage::Format_RGB32);
    for (auto _ : state) {
        QPainter on(&image);
        on.setRenderHint(QPainter::Antialiasing);
        on.fillRect(image.rect(), colours[Role::Ground]);
        for (const auto& [item, colour, lines, dots, glyph] : calls) {
            const auto detail = static_cast<std::size_t>(std::max(0, item->detail));
            switch (item->shape) {
                case Shape::Fill:
                    on.fillRect(item->rect, colour);
                    break;
                case Shape::Hatch:
                    on.setPen(QPen(colour, item->pen));
                    on.drawLines(lines);
                    break;
                case Shape::Text:
                    on.setPen(colour);
                    on.setFont(fonts[static_cast<std::size_t>(layout.texts[detail].type)]);
                    on.drawText(layout.texts[detail].baseline, layout.texts[detail].text);
                    break;
                case Shape::Path:
                    on.fillPath(layout.paths[detail], colour);
                    break;
                case Shape::Stroke:
                    on.strokePath(layout.paths[detail], QPen(colour, item->pen));
                    break;
                case Shape::Glyph:
                    if (isFilled(static_cast<Glyph>(item->detail)))
                        on.fillPath(glyph, colour);
                    else
                        on.strokePath(glyph, QPen(colour, item->rect.width() / 6));
                    break;
                case Shape::Dots:
                    on.fillPath(dots, colour);
                    break;
                case Shape::Frame:
                    on.setPen(QPen(colour, item->pen));
                    on.setBrush(Qt::NoBrush);
                    on.drawRect(item->rect);
                    break;
                case Shape::Dotted:
                    on.setPen(QPen(colour, item->pen, Qt::DotLine));
                    on.drawLine(item->rect.topLeft(), item->rect.topRight());
                    break;
            }
        }
    }
}
BENCHMARK(bareCalls)->Arg(30)->Arg(120)->Arg(kWholeSeason)->Unit(benchmark::kMillisecond);

/// From a season that is loaded and derived to its first picture.
void firstPicture(benchmark::State& state) {
    (void)benchApplication();
    OutlookMemo memo;
    const auto outlook = outlookOf(test::largeSeason(), memo);
    for (auto _ : state) {
        Typeface face = systemTypeface();
        const FontRuler ruler(face);
        ChartOptions options;
        options.size = kScreen;
        const auto span = plotSpan(*outlook, options, ruler);
        const DayAxis axis(activeDays(*outlook), span.left, span.width);
        const auto layout = layOut(*outlook, axis, options, ruler);
        QImage image(kScreen, QImage::Format_RGB32);
        QPainter on(&image);
        ChartPainter(paletteOf(Look::Light), face)
            .paint(on, layout, QRectF(QPointF(), QSizeF(kScreen)));
    }
}
BENCHMARK(firstPicture)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tenthday
