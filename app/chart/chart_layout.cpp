#include "chart/chart_layout.h"

#include "chart/builder_row.h"
#include "chart/builders_lane.h"
#include "chart/cells_days_lane.h"
#include "chart/chart_head.h"
#include "chart/flying_lane.h"
#include "chart/hint_lane.h"
#include "chart/legend.h"
#include "chart/promise_lane.h"
#include "chart/queens_lane.h"
#include "chart/ribbon.h"
#include "chart/sides_lane.h"
#include "chart/yard_lane.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_text.h"
#include "screen_text/welcome_text.h"

namespace tenthday {
namespace {

constexpr qreal kMargin = 14;
constexpr qreal kLeastNames = 92;
constexpr qreal kMostNames = 190;
constexpr qreal kAfterName = 10;
constexpr qreal kAboveLegend = 6;

using Lanes = std::vector<std::unique_ptr<Lane>>;

bool hasFlyingLane(const Outlook& outlook) {
    return knowsFlyingDays(outlook) || knowsDrones(outlook);
}

/// From top to bottom.
Lanes lanesOf(const Outlook& outlook, const ChartOptions& options) {
    Lanes lanes;
    const auto hint = [&](const QString& name, const QString& text) {
        lanes.push_back(std::make_unique<HintLane>(name, text));
    };
    if (hasFlyingLane(outlook)) lanes.push_back(std::make_unique<FlyingLane>());
    if (outlook.builders.empty() && outlook.batches.empty())
        hint(chart_text::builders(), welcome_text::noBuilders());
    else
        lanes.push_back(std::make_unique<BuildersLane>());
    if (outlook.batches.empty())
        hint(welcome_text::cellsDays(), welcome_text::noBatches());
    else
        lanes.push_back(std::make_unique<CellsDaysLane>());
    if (outlook.nucs.yards.empty()) hint(chart_text::matingNucs(), welcome_text::noNucs());
    for (std::size_t i = 0; i < outlook.nucs.yards.size(); ++i) {
        lanes.push_back(std::make_unique<YardLane>(i));
        if (options.isOpen(outlook.nucs.yards[i].yard->id))
            lanes.push_back(std::make_unique<SidesLane>(i));
    }
    if (hasQueensOrOrders(outlook)) {
        lanes.push_back(std::make_unique<QueensLane>());
        lanes.push_back(std::make_unique<PromiseLane>());
    }
    return lanes;
}

struct Sums {
    qreal least = 0;
    qreal wished = 0;
    qreal pull = 0;
};

/// Heights that fill `room`, between what each lane can bear and what it wishes, then beyond.
std::vector<qreal> heightsFor(const std::vector<LaneHeight>& lanes, qreal room) {
    Sums sums;
    for (const auto& lane : lanes) {
        sums.least += lane.least;
        sums.wished += lane.wished;
        sums.pull += lane.pull;
    }
    std::vector<qreal> heights;
    for (const auto& lane : lanes) {
        if (room <= sums.wished) {
            const qreal span = sums.wished - sums.least;
            const qreal share = span > 0 ? std::max(0.0, (room - sums.least) / span) : 0;
            heights.push_back(lane.least + share * (lane.wished - lane.least));
        } else {
            const qreal more = sums.pull > 0 ? (room - sums.wished) * lane.pull / sums.pull : 0;
            heights.push_back(std::min(lane.most, lane.wished + more));
        }
    }
    return heights;
}

void layCovers(const LaneInput& input, const ChartOptions& options, const QRectF& plot,
               Sheet& sheet) {
    const auto& size = options.size;
    sheet.fill(Layer::Cover, Role::Ground, {0, 0, plot.left(), size.height()});
    sheet.fill(Layer::Cover, Role::Ground,
               {plot.right(), 0, size.width() - plot.right(), size.height()});
    sheet.fill(Layer::Top, Role::Ground,
               {0, plot.bottom(), size.width(), size.height() - plot.bottom()});
    const qreal hair = sheet.snap().hair();
    sheet.fill(Layer::Top, Role::GridStrong,
               {input.axis.left(), plot.bottom(), input.axis.width(), hair});
}

}  // namespace

PlotSpan plotSpan(const Outlook& outlook, const ChartOptions& options, const TextRuler& ruler) {
    qreal names = std::max(kLeastNames, ruler.width(chart_text::matingNucs(), Type::Label));
    for (const auto& row : builderRows(outlook))
        names = std::max(names, ruler.width(row.name, Type::Body));
    const auto widest = chart_text::readyOn(shortDay(outlook.season.last), 88, 88);
    for (const auto& yard : outlook.nucs.yards)
        names = std::max({names, ruler.width(QString::fromStdString(yard.yard->label), Type::Label),
                          ruler.width(widest, Type::Strong)});
    if (hasQueensOrOrders(outlook))
        names = std::max({names, ruler.width(order_text::promiseLane(), Type::Label),
                          ruler.width(order_text::inHandRange(), Type::Small)});
    const qreal left = std::ceil(kMargin + std::min(names, kMostNames) + kAfterName);
    return {left, std::max(80.0, options.size.width() - left - kMargin)};
}

Layout layOut(const Outlook& outlook, const DayAxis& axis, const ChartOptions& options,
              const TextRuler& ruler) {
    Sheet sheet(ruler, Snap{options.pixelRatio});
    Ribbon ribbon;
    const LaneInput input{outlook, axis,  options, axis.visible(), axis.left() - kAfterName,
                          kMargin, ribbon};
    const qreal head = headHeight(axis, ruler);
    const qreal legend =
        options.legend ? legendHeight(outlook, axis.width(), ruler) + kAboveLegend : kMargin;
    const auto plot = sheet.snap().rect(axis.left(), head, axis.right(),
                                        std::max(head + 40, options.size.height() - legend));
    layGround(input, plot, sheet);
    layDayLines(input, plot, sheet);

    const auto lanes = lanesOf(outlook, options);
    std::vector<LaneHeight> bounds;
    for (const auto& lane : lanes) bounds.push_back(lane->height(input, ruler));
    const auto heights = heightsFor(bounds, plot.height() - kAboveLegend);
    qreal y = plot.top() - options.scrollY;
    qreal content = kAboveLegend;
    qreal underBuilders = 0;
    const std::size_t builders = hasFlyingLane(outlook) ? 1 : 0;
    for (std::size_t i = 0; i < lanes.size(); ++i) {
        lanes[i]->lay(input, {plot.left(), y, plot.width(), heights[i]}, sheet);
        y += heights[i];
        content += heights[i];
        if (i == builders) underBuilders = y;
    }
    layRibbon(input, underBuilders, sheet);
    for (const auto& lane : lanes) lane->write(input, sheet);
    layCovers(input, options, plot, sheet);
    layHead(input, {axis.left(), 0, axis.width(), head}, sheet);
    if (options.legend)
        layLegend(outlook, {axis.left(), plot.bottom() + kAboveLegend, axis.width(), legend},
                  sheet);
    return std::move(sheet).finish(axis, plot, content);
}

}  // namespace tenthday
