/// @file chart_item.h  What a laid-out chart is made of: things to paint and places to hit.
#pragma once
#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "base/id.h"
#include "chart/day_axis.h"
#include "look/glyph.h"
#include "look/hatch.h"
#include "look/role.h"
#include "look/type.h"
#include "records/rows.h"

namespace tenthday {

/// Painted in this order: the days alone, what stands on them, then the column of names, then the
/// head.
enum class Layer : std::uint8_t {
    Ground,
    Under,
    Body,
    Ribbon,
    Marks,
    Words,
    Cover,
    Names,
    Top,
    Heads
};
inline constexpr std::size_t kLayerCount = static_cast<std::size_t>(Layer::Heads) + 1;

enum class Shape : std::uint8_t {
    Fill,    ///< the rectangle, corners rounded by `radius`
    Frame,   ///< its inner edge, `pen` wide
    Hatch,   ///< lines at 45 degrees, `pen` wide, `spacing` apart
    Dots,    ///< a grid of dots, `pen` across, `spacing` apart
    Dotted,  ///< a row of dots along its middle, `pen` across
    Path,    ///< `paths[detail]`, filled
    Stroke,  ///< `paths[detail]`, stroked `pen` wide
    Glyph,   ///< the glyph number `detail`, in the square `rect`
    Text,    ///< `texts[detail]`; rect is what the text takes, from digit top to baseline
};

struct Item {
    Layer layer{};
    Shape shape{};
    Role role{};
    Slope slope{};
    QRectF rect;
    qreal pen = 0;
    qreal radius = 0;
    qreal spacing = 0;
    int detail = -1;
    int target = -1;  ///< the place it belongs to, or -1
    friend bool operator==(const Item&, const Item&) = default;
};

struct TextRun {
    QString text;
    Type type{};
    QPointF baseline;
};

/// What lies at a place.
enum class Hit : std::uint8_t {
    None,
    Ground,    ///< a day, with nothing on it
    Head,      ///< a day, in the months and weeks
    Load,      ///< a batch's cells in a builder
    MakeUp,    ///< `index` in the builder's make-ups
    Look,      ///< `index` in the builder's clocks times 2, plus 1 for the second look
    Rest,      ///< a builder rests after a batch
    Idle,      ///< queenless without cells: `index` in the builder's idle spans
    CellsDay,  ///< `index` in the cells days
    YardDay,   ///< a yard's nucs on a day; `batch` where they are a batch's
    Nuc,       ///< one nuc on a day: `index` in the sides; `batch` where its cell or queen is in it
    YardName,  ///< a yard's name: opens and closes it
    ReadyTotal,     ///< ready nucs of all yards on a day
    Trouble,        ///< a word of warning: `index` in the findings
    FlyingDay,      ///< a day in the lane of flying days and drones
    OutsideLimits,  ///< a day outside the season for grafts, with nothing on it
    QueensDay,      ///< queens in hand on a day
    OrderFlag,      ///< an order: `index` in the orders, its due day
    PromiseWeek,    ///< what can be promised in the week that begins on the day
    Grafts,         ///< the upper edge of a selected batch's bars: `index` is the bar
    BuilderRow,     ///< all of a builder's row, with nothing on it
    YardRow,        ///< all of a yard's nucs, with nothing on them
    LaneName,       ///< a lane's name: folds and unfolds it; `index` as LaneName
    LegendName,     ///< folds and unfolds the legend
    Strip,          ///< a day in the strip of the whole season
    LanesAbove,     ///< names of lanes above the plot: scrolls to them
    LanesBelow,     ///< of those below it
};

/// Stable name of a place: the same thing keeps it from layout to layout.
struct TargetKey {
    Hit hit = Hit::None;
    Id<Batch> batch{};
    Id<Builder> builder{};
    Id<Yard> yard{};
    std::optional<Day> day{};
    int index = -1;
    friend bool operator==(const TargetKey&, const TargetKey&) = default;
};

struct Target {
    TargetKey key;
    QRectF rect;
};

/// Names of lanes out of sight, from top to bottom.
struct HiddenLanes {
    QStringList above;
    QStringList below;
    friend bool operator==(const HiddenLanes&, const HiddenLanes&) = default;
};

/// A chart laid out: everything painted and everything that can be hit, from one reckoning.
struct Layout {
    std::vector<Item> items;  ///< in painting order
    std::vector<Target> targets;
    std::vector<TextRun> texts;
    std::vector<QPainterPath> paths;
    DayAxis axis;
    QRectF plot;                ///< where days run, under the head
    qreal contentHeight = 0;    ///< of the lanes; taller than the plot when it can be scrolled
    qreal pxPerCell = 0;        ///< thickness of one cell in a builder
    bool legendFolded = false;  ///< by hand, or for want of room
    HiddenLanes hidden;
};

}  // namespace tenthday
