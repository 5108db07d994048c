#include "pictures/chart_states.h"

#include <QPainter>
#include <QTest>

#include "chart/active_days.h"
#include "chart/season_chart.h"
#include "exchange/example.h"
#include "options/language.h"
#include "outlook/season_orders.h"
#include "support/days.h"
#include "support/ids.h"
#include "support/large_season.h"

namespace tenthday::test {
namespace {

constexpr QSize kLaptop{1366, 768};
constexpr QSize kScreen{1920, 1080};
constexpr int kPatience = 10'000;  // ms

Snapshot exampleSeason() {
    auto snapshot = applied(Snapshot{}, exampleContent()).value();
    for (const auto& book : snapshot.all<Book>())
        if (book->today) snapshot.setToday(*book->today);
    snapshot.setSeason((*snapshot.all<Season>().begin())->id);
    return snapshot;
}

OutlookPtr derived(const Snapshot& snapshot) {
    OutlookMemo memo;
    return outlookOf(snapshot, memo);
}

const OutlookPtr& example() {
    static const OutlookPtr made = derived(exampleSeason());
    return made;
}

const OutlookPtr& large() {
    static const OutlookPtr made = derived(largeSeason());
    return made;
}

/// A book of which nothing is entered yet but its season.
OutlookPtr empty() {
    Snapshot bare;
    bare.setToday(day("2027-04-20"));
    return derived(bare);
}

/// What is painted, without a window.
struct Painted {
    OutlookPtr outlook = example();
    QSize size = kLaptop;
    Look look = Look::Light;
    qreal ratio = 1;
    std::optional<DayWindow> days{};
    std::function<void(ChartOptions&)> with{};

    [[nodiscard]] QImage picture() const {
        Typeface face = systemTypeface();
        face.basePx = 12;
        const FontRuler ruler(face);
        ChartOptions options;
        options.size = size;
        options.pixelRatio = ratio;
        options.strip = true;
        options.canFold = true;
        if (outlook->mating) options.orders = seasonOrdersOf(*outlook);
        if (with) with(options);
        const auto span = plotSpan(*outlook, options, ruler);
        const auto axis = DayAxis(outlook->season, span.left, span.width)
                              .fittedTo(days.value_or(activeDays(*outlook)));
        QImage image((QSizeF(size) * ratio).toSize(), QImage::Format_RGB32);
        image.setDevicePixelRatio(ratio);
        QPainter painter(&image);
        ChartPainter(paletteOf(look), face)
            .paint(painter, layOut(*outlook, axis, options, ruler), QRectF(QPointF(), size));
        return image;
    }
};

DayWindow zoomTo(int before, int after) {
    const Day today = example()->snapshot.today();
    return {today - Days{before}, today + Days{after}};
}

/// The batch grafted next.
Id<Batch> nextBatch() {
    for (const auto& batch : example()->batches)
        if (!batch->timeline.grafted) return batch->batch->id;
    return example()->batches.back()->batch->id;
}

/// A chart in a window of its own, dragged by a hand that does not let go.
QImage dragged(QPoint by) {
    SeasonChart chart;
    OutlookMemo memo;
    QObject::connect(&chart, &SeasonChart::previewRequested, [&](const ChartWish& wish) {
        std::uint64_t next = 7'000'000;
        const auto fresh = [&next] { return id<Batch>(++next).uuid; };
        const auto changes = changesOf(*example(), wish, fresh);
        if (!changes) return chart.showRefusal(QString::fromStdString(changes.error().text));
        if (const auto moved = applied(example()->snapshot, changes.value()))
            chart.setPreview(outlookOf(moved.value(), memo));
    });
    chart.resize(kLaptop);
    chart.setOutlook(example());
    chart.show();
    (void)QTest::qWaitForWindowExposed(&chart, kPatience);
    (void)QTest::qWaitFor([&] { return chart.orders() != nullptr; }, kPatience);
    QPoint from;
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::Load && target.key.batch == nextBatch())
            from = target.rect.center().toPoint();
    QTest::mousePress(&chart, Qt::LeftButton, {}, from);
    QTest::mouseMove(&chart, from + by / 2);
    QTest::mouseMove(&chart, from + by);
    (void)QTest::qWaitFor([&] { return !chart.options().clearDays.empty(); }, kPatience);
    const auto image = chart.grab().toImage();
    QTest::keyClick(&chart, Qt::Key_Escape);
    return image;
}

QImage inLanguage(Language language) {
    const QLocale before;
    useTexts(language);
    QLocale::setDefault(localeFor(language, QLocale::AnyTerritory));
    const auto image = Painted{}.picture();
    useTexts(Language::English);
    QLocale::setDefault(before);
    return image;
}

QString named(const char* name) { return QStringLiteral("chart-") + QLatin1String(name); }

void addLooksAndZooms(std::vector<ChartState>& states) {
    struct Zoom {
        const char* name;
        std::optional<DayWindow> days;
    };
    const Zoom zooms[] = {{"year", example()->season},
                          {"season", {}},
                          {"month", zoomTo(3, 26)},
                          {"week", zoomTo(1, 5)},
                          {"day", zoomTo(0, 0)}};
    for (const auto& zoom : zooms)
        for (const auto look : {Look::Light, Look::Dark, Look::Paper})
            states.push_back(
                {named(zoom.name) + u'-' + QString::fromStdString(std::string(token(look))),
                 [days = zoom.days, look] {
                     return Painted{.look = look, .days = days}.picture();
                 }});
    for (const auto look : {Look::Light, Look::Dark})
        states.push_back(
            {named("month-chosen-") + QString::fromStdString(std::string(token(look))), [look] {
                 return Painted{.look = look,
                                .days = zoomTo(3, 26),
                                .with =
                                    [](ChartOptions& options) {
                                        options.chosenDay = example()->snapshot.today() + Days{12};
                                    }}
                     .picture();
             }});
    for (const int percent : {125, 150, 200})
        states.push_back({named("at-") + QString::number(percent),
                          [percent] { return Painted{.ratio = percent / 100.0}.picture(); }});
    states.push_back({named("wide"), [] { return Painted{.size = kScreen}.picture(); }});
}

void addSeasons(std::vector<ChartState>& states) {
    states.push_back({named("empty"), [] { return Painted{.outlook = empty()}.picture(); }});
    states.push_back({named("empty-dark"),
                      [] { return Painted{.outlook = empty(), .look = Look::Dark}.picture(); }});
    states.push_back(
        {named("large"), [] { return Painted{.outlook = large(), .size = kScreen}.picture(); }});
    states.push_back({named("crowded"), [] {
                          return Painted{.size = {900, 620},
                                         .with =
                                             [](ChartOptions& options) {
                                                 for (const auto& yard : example()->nucs.yards)
                                                     options.openYards.push_back(yard.yard->id);
                                             }}
                              .picture();
                      }});
    states.push_back({named("opened"), [] {
                          return Painted{.with =
                                             [](ChartOptions& options) {
                                                 options.openYards = {
                                                     example()->nucs.yards.front().yard->id};
                                             }}
                              .picture();
                      }});
    for (const auto language :
         {Language::English, Language::German, Language::French, Language::Spanish})
        states.push_back({named("in-") + QString::fromStdString(std::string(token(language))),
                          [language] { return inLanguage(language); }});
}

void addHands(std::vector<ChartState>& states) {
    states.push_back({named("selected"), [] {
                          return Painted{.with =
                                             [](ChartOptions& options) {
                                                 options.selected = nextBatch();
                                                 options.chosenDay =
                                                     example()->snapshot.today() + Days{9};
                                             }}
                              .picture();
                      }});
    states.push_back({named("several"), [] {
                          return Painted{.with =
                                             [](ChartOptions& options) {
                                                 options.selected = nextBatch();
                                                 for (const auto& batch : example()->batches)
                                                     if (batch->batch->id != nextBatch())
                                                         options.alsoSelected.push_back(
                                                             batch->batch->id);
                                             }}
                              .picture();
                      }});
    states.push_back({named("folded"), [] {
                          return Painted{.with =
                                             [](ChartOptions& options) {
                                                 options.legendFolded = true;
                                                 options.foldedLanes = {LaneName::FlyingDays,
                                                                        LaneName::Builders,
                                                                        LaneName::Queens};
                                             }}
                              .picture();
                      }});
    states.push_back(
        {named("proposed"), [] {
             return Painted{
                 .with =
                     [](ChartOptions& options) {
                         ChartProposals proposals;
                         const Day from = example()->snapshot.today() + Days{20};
                         proposals.loads.push_back({example()->builders[0].builder->id,
                                                    QStringLiteral("24"), Moment{from},
                                                    Moment{from + Days{10}}, 24});
                         proposals.stays.push_back({example()->nucs.yards.front().yard->id,
                                                    QStringLiteral("18"),
                                                    {from + Days{10}, from + Days{32}},
                                                    18});
                         options.proposals = std::make_shared<const ChartProposals>(proposals);
                     }}
                 .picture();
         }});
    states.push_back({named("drag"), [] { return dragged({60, 0}); }});
    states.push_back({named("drag-clash"), [] { return dragged({-120, 0}); }});
}

}  // namespace

std::vector<ChartState> chartStates() {
    std::vector<ChartState> states;
    addLooksAndZooms(states);
    addSeasons(states);
    addHands(states);
    return states;
}

}  // namespace tenthday::test
