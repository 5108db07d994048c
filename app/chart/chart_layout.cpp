#include "chart/chart_layout.h"

#include "base/side_by_side.h"
#include "chart/builder_row.h"
#include "chart/builders_lane.h"
#include "chart/cells_days_lane.h"
#include "chart/chart_head.h"
#include "chart/flying_lane.h"
#include "chart/folded_lane.h"
#include "chart/hidden_lanes.h"
#include "chart/hint_lane.h"
#include "chart/legend.h"
#include "chart/legend_marks.h"
#include "chart/promise_lane.h"
#include "chart/queens_lane.h"
#include "chart/ribbon.h"
#include "chart/season_strip.h"
#include "chart/sides_lane.h"
#include "chart/yard_lane.h"
#include "look/space.h"
#include "screen_text/chart_hand_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/flying_text.h"
#include "screen_text/order_text.h"
#include "screen_text/welcome_text.h"

namespace tenthday {
namespace {

constexpr qreal kMargin = space::kPage;
constexpr qreal kLeastNames = 92;
constexpr qreal kMostNames = 190;
constexpr qreal kAfterName = space::kName;
constexpr qreal kAboveLegend = space::kPart;

bool hasFlyingLane(const Outlook& outlook) {
    return knowsFlyingDays(outlook) || knowsDrones(outlook);
}

/// Whether a lane can stay in its place, with what it keeps.
template <class Kind>
bool isSuch(const Lane* lane) {
    return dynamic_cast<const Kind*>(lane) != nullptr;
}
bool isOfYard(const Lane* lane, std::size_t yard) {
    const auto* of = dynamic_cast<const YardLane*>(lane);
    return of != nullptr && of->yard() == yard;
}

/// Collects lanes from top to bottom; folded ones as a line with their name.
class LanesOf {
public:
    /// @param before  lanes that were laid last: those that are the same stay
    LanesOf(const Outlook& outlook, const ChartOptions& options, Lanes before)
        : outlook_(outlook), options_(options), before_(std::move(before)) {}

    Lanes all() {
        upper();
        yards();
        lower();
        return std::move(lanes_);
    }

private:
    template <class Kind>
    void named(LaneName name, const QString& title) {
        if (options_.isFolded(name))
            lanes_.push_back({std::make_unique<FoldedLane>(title), name, title});
        else if (!stays(isSuch<Kind>(before()), title))
            lanes_.push_back({std::make_unique<Kind>(), name, title});
    }
    /// The lane that stood last where the next one comes; null where none did.
    [[nodiscard]] const Lane* before() const {
        const auto place = lanes_.size();
        return place < before_.size() ? before_[place].lane.get() : nullptr;
    }
    /// Takes it over where it is the same. @return whether it was
    bool stays(bool isSame, const QString& title) {
        if (!isSame) return false;
        lanes_.push_back(std::move(before_[lanes_.size()]));
        lanes_.back().title = title;
        return true;
    }
    /// @param brief  a line: the season can well do without
    void hint(const QString& name, const QString& text, bool brief = false) {
        lanes_.push_back({std::make_unique<HintLane>(name, text, brief), {}, name});
    }
    void upper() {
        const bool isEmpty = outlook_.batches.empty();
        if (hasFlyingLane(outlook_))
            named<FlyingLane>(LaneName::FlyingDays, flying_text::flyingDays());
        else
            hint(flying_text::flyingDays(), chart_hand_text::noWeather(), true);
        if (outlook_.builders.empty() && isEmpty)
            hint(chart_text::builders(), welcome_text::noBuilders());
        else
            named<BuildersLane>(LaneName::Builders, chart_text::builders());
        if (isEmpty)
            hint(welcome_text::cellsDays(), welcome_text::noBatches());
        else
            named<CellsDaysLane>(LaneName::CellsDays, chart_text::matingNucs());
    }
    void yards() {
        const auto& yards = outlook_.nucs.yards;
        if (yards.empty()) hint(chart_text::matingNucs(), welcome_text::noNucs());
        for (std::size_t i = 0; i < yards.size(); ++i) {
            const auto label = QString::fromStdString(yards[i].yard->label);
            if (!stays(isOfYard(before(), i), label))
                lanes_.push_back({std::make_unique<YardLane>(i), {}, label});
            if (options_.isOpen(yards[i].yard->id))
                lanes_.push_back(
                    {std::make_unique<SidesLane>(i), {}, chart_hand_text::moreNucsOf(label), true});
        }
    }
    void lower() {
        if (!hasQueensOrOrders(outlook_))
            return hint(order_text::queensLane(), chart_hand_text::noOrders(), true);
        named<QueensLane>(LaneName::Queens, order_text::queensLane());
        named<PromiseLane>(LaneName::Promise, order_text::promiseLane());
    }

    const Outlook& outlook_;
    const ChartOptions& options_;
    Lanes before_;
    Lanes lanes_;
};

struct Sums {
    qreal least = 0;
    qreal wished = 0;
    qreal pull = 0;
};

Sums sumsOf(const std::vector<LaneHeight>& lanes) {
    Sums sums;
    for (const auto& lane : lanes) {
        sums.least += lane.least;
        sums.wished += lane.wished;
        sums.pull += lane.pull;
    }
    return sums;
}

/// Heights that fill `room`, between what each lane can bear and what it wishes, then beyond.
std::vector<qreal> heightsFor(const std::vector<LaneHeight>& lanes, qreal room) {
    const auto sums = sumsOf(lanes);
    std::vector<qreal> heights;
    for (const auto& lane : lanes) {
        if (room < sums.least) {
            heights.push_back(lane.scrolled.value_or(lane.least));
        } else if (room <= sums.wished) {
            const qreal span = sums.wished - sums.least;
            const qreal share = span > 0 ? (room - sums.least) / span : 0;
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
    for (const auto& yard : outlook.nucs.yards) {
        names = std::max(names, ruler.width(QString::fromStdString(yard.yard->label), Type::Label));
        for (const auto& day : {shortDay(outlook.season.last), chart_text::today()})
            names = std::max(names, ruler.width(chart_text::readyOn(day, 88, 88), Type::Strong));
    }
    int sides = 0;
    for (const auto& yard : outlook.nucs.yards) sides += yard.mostSides;
    if (outlook.nucs.yards.size() > 1)
        names = std::max(
            names, ruler.width(chart_text::readyOn(shortDay(outlook.season.last), sides, sides),
                               Type::Strong));
    if (hasQueensOrOrders(outlook))
        names = std::max({names, ruler.width(order_text::promiseLane(), Type::Label),
                          ruler.width(order_text::inHandRange(), Type::Small),
                          ruler.width(order_text::promiseHow(), Type::Small)});
    const qreal left = std::ceil(kMargin + std::min(names, kMostNames) + kAfterName);
    return {left, std::max(80.0, options.size.width() - left - kMargin)};
}

namespace {

/// Heights of what lies under the lanes.
struct Foot {
    qreal hidden = 0;  ///< names of lanes out of sight
    qreal strip = 0;
    qreal legend = kMargin;
    bool isFolded = false;
    std::vector<LegendMark> marks;  ///< of the legend
    [[nodiscard]] qreal height() const { return hidden + strip + legend; }
};

/// Lanes go before the legend, which the hand that opens it has the last word about.
bool foldsLegend(const ChartOptions& options, qreal room, qreal least) {
    const bool isSet = options.legendFolded || options.legendOpened;
    if (isSet || !(options.canFold || options.isPicture)) return options.legendFolded;
    return options.legendHeld ? options.legendHeld->folded : room < least;
}

/// A picture shows its days; a window can be scrolled to all others.
std::vector<LegendMark> marksOf(const LaneInput& input) {
    const auto& options = input.options;
    if (options.legendHeld) return options.legendHeld->marks;
    return legendMarks(input.outlook, options,
                       options.isPicture ? input.visible : input.outlook.season);
}

/// A picture cannot be scrolled: the last lanes for which it has no room are left out.
/// @param room  for lanes and what lies under them, px  @return their names
QStringList leaveOut(Lanes& lanes, std::vector<LaneHeight>& bounds, qreal room,
                     const TextRuler& ruler) {
    constexpr std::size_t kFewest = 2;
    QStringList names;
    while (lanes.size() > kFewest) {
        const qreal foot =
            kMargin + kAboveLegend + (names.isEmpty() ? 0 : hiddenLanesHeight(ruler));
        if (sumsOf(bounds).least + foot <= room) break;
        names.prepend(lanes.back().title);
        lanes.pop_back();
        bounds.pop_back();
    }
    return names;
}

/// @param room   for lanes and what lies under them, px
/// @param least  that lanes can bear
/// @param lacks  lanes are left out
Foot footOf(const LaneInput& input, qreal room, qreal least, bool lacks, const TextRuler& ruler) {
    const auto& options = input.options;
    const auto& axis = input.axis;
    Foot foot;
    if (lacks) foot.hidden = hiddenLanesHeight(ruler);
    if (options.strip && !axis.showsAll()) foot.strip = stripHeight(ruler) + 2 * kAboveLegend;
    if (options.legend) {
        foot.marks = marksOf(input);
        foot.legend = kAboveLegend + legendHeight(foot.marks, axis.width(), ruler);
        foot.isFolded = foldsLegend(options, room - foot.height(), least + kAboveLegend);
        if (foot.isFolded)
            foot.legend = options.isPicture ? kMargin : kAboveLegend + foldedLegendHeight(ruler);
    }
    if (!options.isPicture && room - foot.height() < least + kAboveLegend)
        foot.hidden = hiddenLanesHeight(ruler);
    return foot;
}

void layFoot(const LaneInput& input, const Foot& foot, const HiddenLanes& hidden,
             const QRectF& plot, Sheet& sheet) {
    const auto& axis = input.axis;
    const QRectF line(axis.left(), plot.bottom(), axis.width(), foot.hidden);
    if (input.options.isPicture)
        layLackingLanes(hidden.below, line, sheet);
    else
        layHiddenLanes(hidden, line, sheet);
    if (foot.strip > 0)
        layStrip(input,
                 {axis.left(), plot.bottom() + foot.hidden + kAboveLegend, axis.width(),
                  foot.strip - 2 * kAboveLegend},
                 sheet);
    if (!input.options.legend) return;
    const QRectF area(axis.left(), plot.bottom() + foot.hidden + foot.strip + kAboveLegend,
                      axis.width(), foot.legend - kAboveLegend);
    layLegend(input, foot.marks, foot.isFolded, area, sheet);
}

/// Everything of one lane but what must keep clear of the ribbon.
void layLane(const LaneInput& input, const PlacedLane& at, Sheet& sheet) {
    at.lane->lay(input, at.area, sheet);
    if (at.name && input.options.canFold)
        layFolder(input, *at.name, input.options.isFolded(*at.name), at.area,
                  at.lane->nameMiddle(at.area, sheet.ruler()), sheet);
}

/// The same with a ribbon of its own.
LaneInput withRibbon(const LaneInput& input, Ribbon& ribbon) {
    return {input.outlook,   input.axis, input.options, input.visible,   input.titleRight,
            input.titleLeft, ribbon,     input.stacks,  input.isAsBefore};
}

/// Frames of a drag are short of time: what nobody sees is left out of them. Keys that bring a
/// place into sight do not find it there until the drag ends.
bool isUnseen(const LaneInput& input, const QRectF& area, const QRectF& plot) {
    constexpr qreal kBeyond = 40;  // px: no lane reaches so far out of its area
    return input.options.before && !input.options.isPicture &&
           (area.bottom() < plot.top() - kBeyond || area.top() > plot.bottom() + kBeyond);
}

/// What a lane gave under other days or options holds no more once it was left out.
void passOver(PlacedLane& at, bool isAsBefore) {
    if (isAsBefore) return;
    at.laid.reset();
    at.written.reset();
}

/// Yards whose lanes will be laid, or still lie.
std::vector<const YardOutlook*> yardsSeen(const LaneInput& input, const Lanes& lanes,
                                          const QRectF& plot) {
    std::vector<const YardOutlook*> yards;
    for (const auto& at : lanes)
        if (const auto* of = dynamic_cast<const YardLane*>(at.lane.get());
            of && !isUnseen(input, at.area, plot))
            yards.push_back(&input.outlook.nucs.yards[of->yard()]);
    return yards;
}

/// Lanes side by side, each on a sheet and with ribbon's ends of its own; put together in their
/// order, whoever is ready first.
void layEach(const LaneInput& input, Lanes& lanes, const QRectF& plot, Sheet& sheet) {
    input.stacks.reckon(yardsSeen(input, lanes, plot), input.visible);
    sideBySide(lanes.size(), [&](std::size_t i) {
        auto& at = lanes[i];
        at.endsUnseen = {};
        at.isUnseen = isUnseen(input, at.area, plot) &&
                      at.lane->staysUnseen(withRibbon(input, at.endsUnseen), at.area);
        if (at.isUnseen) return passOver(at, input.isAsBefore);
        if (at.laid)
            if (const auto down = at.lane->stillLies(withRibbon(input, at.ends), at.area)) {
                if (*down != 0) at.laid->moveDown(*down), at.ends.moveEndsDown(*down);
                return;
            }
        at.laid = std::make_unique<Sheet>(sheet.ruler(), sheet.snap());
        at.ends = {};
        layLane(withRibbon(input, at.ends), at, *at.laid);
    });
    std::vector<const Sheet*> sheets;
    for (const auto& at : lanes) {
        if (!at.isUnseen) sheets.push_back(at.laid.get());
        input.ribbon.takeEnds(at.isUnseen ? at.endsUnseen : at.ends);
    }
    sheet.append(sheets);
}

/// Likewise what they write, clear of the ribbon.
void writeEach(const LaneInput& input, Lanes& lanes, Sheet& sheet) {
    sideBySide(lanes.size(), [&](std::size_t i) {
        auto& at = lanes[i];
        if (at.isUnseen) return;
        Ribbon ribbon;
        ribbon.course = input.ribbon.course;
        const auto own = withRibbon(input, ribbon);
        if (at.written)
            if (const auto down = at.lane->stillWritten(own)) {
                if (*down != 0) at.written->moveDown(*down);
                return;
            }
        at.written = std::make_unique<Sheet>(sheet.ruler(), sheet.snap());
        at.lane->write(own, *at.written);
    });
    std::vector<const Sheet*> sheets;
    for (const auto& at : lanes)
        if (!at.isUnseen) sheets.push_back(at.written.get());
    sheet.append(sheets);
}

/// Lays lane under lane.
std::vector<LaneSpan> layLanes(const LaneInput& input, Lanes& lanes,
                               const std::vector<LaneHeight>& bounds, const QRectF& plot,
                               Sheet& sheet) {
    const auto heights = heightsFor(bounds, plot.height() - kAboveLegend);
    qreal y = plot.top() - input.options.scrollY;
    std::vector<LaneSpan> spans;
    qreal underBuilders = 0;
    constexpr std::size_t kBuilders = 1;
    for (std::size_t i = 0; i < lanes.size(); ++i) {
        lanes[i].area = QRectF(plot.left(), y, plot.width(), heights[i]);
        y += heights[i];
        spans.push_back({lanes[i].title, y - heights[i], y, lanes[i].isRowsOfBefore});
        if (i == kBuilders) underBuilders = y;
    }
    layEach(input, lanes, plot, sheet);
    layRibbon(input, underBuilders, sheet);
    writeEach(input, lanes, sheet);
    return spans;
}

}  // namespace

LaidUnder::LaidUnder(const Outlook& outlook, const DayAxis& days, const ChartOptions& options,
                     const TextRuler& by)
    : axis(days),
      ruler(&by),
      pixelRatio(options.pixelRatio),
      chosenDay(options.chosenDay),
      selected(options.selected),
      alsoSelected(options.alsoSelected),
      openYards(options.openYards),
      foldedLanes(options.foldedLanes),
      canFold(options.canFold),
      isPicture(options.isPicture),
      proposals(options.proposals),
      today(outlook.snapshot.today()),
      season(outlook.season),
      facts(outlook.snapshot.factsPtr()),
      mating(outlook.mating) {}

Layout layOut(const Outlook& outlook, const DayAxis& axis, const ChartOptions& options,
              const TextRuler& ruler) {
    LaidBefore nothing;  // gone before the outlook can be
    return layOut(OutlookPtr(OutlookPtr(), &outlook), axis, options, ruler, nothing);
}

Layout layOut(const OutlookPtr& shown, const DayAxis& axis, const ChartOptions& options,
              const TextRuler& ruler, LaidBefore& before) {
    const auto& outlook = *shown;
    Sheet sheet(ruler, Snap{options.pixelRatio});
    Ribbon ribbon;
    before.stacks.show(shown);
    const LaidUnder under(outlook, axis, options, ruler);
    const LaneInput input{
        outlook, axis,   options,       axis.visible(),       axis.left() - kAfterName,
        kMargin, ribbon, before.stacks, before.under == under};
    before.under.reset();  // until all is laid
    const qreal head = headHeight(axis, ruler);
    auto& lanes = before.lanes;
    lanes = LanesOf(outlook, options, std::move(lanes)).all();
    std::vector<LaneHeight> bounds;
    for (const auto& lane : lanes) bounds.push_back(lane.lane->height(input, ruler));
    const qreal room = options.size.height() - head;
    HiddenLanes hidden;
    if (options.isPicture) hidden.below = leaveOut(lanes, bounds, room, ruler);
    const auto foot = footOf(input, room, sumsOf(bounds).least, !hidden.below.isEmpty(), ruler);
    const auto plot = sheet.snap().rect(axis.left(), head, axis.right(),
                                        std::max(head + 40, options.size.height() - foot.height()));
    layGround(input, plot, sheet);
    layDayLines(input, plot, sheet);
    const auto laid = layLanes(input, lanes, bounds, plot, sheet);
    if (options.place.hit != Hit::None)
        sheet.frameTarget(Layer::Marks, Role::Selection, options.place, 1);
    layCovers(input, options, plot, sheet);
    layHead(input, {axis.left(), 0, axis.width(), head}, sheet);
    if (!options.isPicture && foot.hidden > 0) hidden = hiddenLanes(laid, plot, ruler);
    layFoot(input, foot, hidden, plot, sheet);
    const qreal content = laid.back().bottom - laid.front().top + kAboveLegend;
    auto layout = std::move(sheet).finish(axis, plot, content);
    layout.legendFolded = foot.isFolded;
    layout.hidden = hidden;
    before.under = under;
    return layout;
}

}  // namespace tenthday
