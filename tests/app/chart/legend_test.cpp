// Every mark that the chart draws is in its legend: all states are laid out, and each colour,
// hatch and glyph among the lanes is looked for there.
#include <cmath>

#include "app/chart/cold_spell.h"
#include "app/chart/glance.h"
#include "exchange/example.h"

namespace tenthday::test {
namespace {

bool isInLanes(const Item& item) {
    return item.shape != Shape::Text && item.layer >= Layer::Ground && item.layer <= Layer::Words;
}

bool isInLegend(const Layout& layout, const Item& item) {
    return item.shape != Shape::Text && item.layer == Layer::Heads &&
           item.rect.top() >= layout.plot.bottom();
}

/// Grounds, lines of days and lanes, and what has its word at the head of the chart.
bool isPlain(Role role) {
    return role == Role::Ground || role == Role::LaneGround || role == Role::Separator ||
           role == Role::Grid || role == Role::GridStrong || role == Role::Today ||
           role == Role::Chosen || role == Role::ChosenGround;
}

/// Outside the size and place: equal for equal glyphs; empty for what is no small sign.
std::string shapeOf(const Layout& layout, const Item& item) {
    constexpr qreal kSmall = 14;
    const bool isSign = item.role == Role::InkSoft || item.role == Role::Caution ||
                        item.role == Role::Good || item.role == Role::Danger;
    if (item.shape == Shape::Glyph && isSign) return "glyph " + std::to_string(item.detail);
    if ((item.shape != Shape::Path && item.shape != Shape::Stroke) || !isSign) return {};
    const auto& path = layout.paths[static_cast<std::size_t>(item.detail)];
    const auto box = path.boundingRect();
    if (box.width() > kSmall || box.height() > kSmall) return {};
    const qreal size = std::max(box.width(), box.height());
    std::string shape;
    for (int i = 0; i < path.elementCount(); ++i) {
        const auto at = path.elementAt(i);
        const auto rounded = [&](qreal value) {
            return std::to_string(std::lround(7 * value / size));
        };
        shape += std::to_string(at.type) + ":" + rounded(at.x - box.left()) + "," +
                 rounded(at.y - box.top()) + " ";
    }
    return shape;
}

struct Marks {
    std::set<Role> roles;
    std::set<std::tuple<Role, Slope, int>> hatches;  ///< with ten times the spacing
    std::set<std::string> shapes;

    void add(const Layout& layout, const Item& item) {
        roles.insert(item.role);
        if (item.shape == Shape::Hatch)
            hatches.insert({item.role, item.slope, static_cast<int>(10 * item.spacing)});
        if (const auto shape = shapeOf(layout, item); !shape.empty()) shapes.insert(shape);
    }
};

class Legend : public Glance {
protected:
    void expectExplained(const Layout& layout, const std::string& where) {
        Marks legend;
        for (const auto& item : layout.items)
            if (isInLegend(layout, item)) legend.add(layout, item);
        ASSERT_GT(legend.roles.size(), 15U) << where;
        Marks lanes;
        for (const auto& item : layout.items)
            if (isInLanes(item) && !isPlain(item.role)) lanes.add(layout, item);
        for (const auto role : lanes.roles) {
            EXPECT_TRUE(legend.roles.contains(role)) << token(role) << ", " << where;
            seen.insert(role);
        }
        for (const auto& hatch : lanes.hatches) {
            // The days outside the season have their own spacing: they lie behind bars.
            if (std::get<0>(hatch) == Role::OutsideHatch) continue;
            EXPECT_TRUE(legend.hatches.contains(hatch))
                << token(std::get<0>(hatch)) << ", " << where;
        }
        for (const auto& shape : lanes.shapes)
            EXPECT_TRUE(legend.shapes.contains(shape)) << shape << ", " << where;
        signs.insert(lanes.shapes.begin(), lanes.shapes.end());
    }
    void walk(const Outlook& of, const std::string& name) {
        for (const qreal height : {620.0, 1080.0})
            for (const int days : {1, 7, 28, 110, 184}) {
                options.size = {1366, height};
                const Day from = of.snapshot.today() - Days{days / 3};
                expectExplained(lay(of, {from, std::min(from + Days{days}, of.season.last)}),
                                name + ", " + std::to_string(days) + " days");
            }
    }
    void openAll(const Outlook& of) {
        for (const auto& yard : of.nucs.yards) options.openYards.push_back(yard.yard->id);
    }
    std::set<Role> seen;
    std::set<std::string> signs;
};

TEST_F(Legend, ExplainsEveryMarkOfTheLanes) {
    walk(*outlook, "sample");
    options.selected = outlook->batches[outlook->batches.size() / 2]->batch->id;
    options.chosenDay = outlook->snapshot.today() + Days{4};
    options.offersDays = true;
    options.clearDays = {outlook->snapshot.today() + Days{2}};
    walk(*outlook, "sample, a batch chosen and dragged");
    openAll(*outlook);
    walk(*outlook, "sample, yards opened");
    options = {};
    const auto cold = coldSpell().outlook();
    walk(*cold, "late");
    OutlookMemo memo;
    auto snapshot = applied(Snapshot{}, exampleContent()).value();
    snapshot.setToday(day("2027-06-03"));
    const auto example = outlookOf(snapshot, memo);
    options.orders = seasonOrdersOf(*example);
    walk(*example, "example");
    openAll(*example);
    walk(*example, "example, yards opened");
    // What the walk is for was met.
    for (const auto role :
         {Role::OpenCells, Role::SealedCells, Role::Ready, Role::LikelyHatch, Role::NoQueenHatch,
          Role::Caution, Role::DangerGround, Role::Danger, Role::Good, Role::JudgedGood,
          Role::WeekendGround, Role::DayOffGround, Role::Ribbon, Role::Selection, Role::FlyingDay})
        EXPECT_TRUE(seen.contains(role)) << token(role);
    EXPECT_GE(signs.size(), 5U) << "cup, roof, tick, arrow, sign of trouble";
}

TEST_F(Legend, TheArrowOfAnOrderThatLeavesIsThereInBothItsColours) {
    const auto layout = lay();
    std::map<std::string, std::set<Role>> arrows;  // by shape
    for (const auto& item : layout.items)
        if (isInLegend(layout, item) && (item.role == Role::Good || item.role == Role::Danger))
            if (const auto shape = shapeOf(layout, item); !shape.empty())
                arrows[shape].insert(item.role);
    EXPECT_TRUE(std::any_of(arrows.begin(), arrows.end(),
                            [](const auto& arrow) { return arrow.second.size() == 2; }));
}

/// Words of the legend.
std::set<std::string> entriesOf(const Layout& layout) {
    std::set<std::string> entries;
    for (const auto& item : layout.items)
        if (item.shape == Shape::Text && item.layer == Layer::Heads &&
            item.rect.top() >= layout.plot.bottom())
            entries.insert(layout.texts[static_cast<std::size_t>(item.detail)].text.toStdString());
    return entries;
}

TEST_F(Legend, NamesOnlyWhatTheSeasonHas) {
    auto bare = std::make_shared<Outlook>(*outlook);
    bare->findings.clear();
    for (auto& yard : bare->nucs.yards)
        for (auto& nucs : yard.days) {
            nucs.stack = {};
            nucs.numbers = {};
        }
    options.orders.reset();
    const auto all = entriesOf(lay());
    const auto few = entriesOf(lay(*bare, bare->season));
    for (const auto* entry : {"virgin", "laying, not judged", "ready for a cell", "not stocked"}) {
        EXPECT_TRUE(all.contains(entry)) << entry;
        EXPECT_FALSE(few.contains(entry)) << entry;
    }
    for (const auto* entry : {"open cells", "weekend", "chosen batch", "no clash, while dragging"})
        EXPECT_TRUE(few.contains(entry)) << entry;
    // Nobody drags in a picture, and nobody chooses.
    options.isPicture = true;
    options.size = {1366, 1400};
    const auto drawn = entriesOf(lay());
    EXPECT_TRUE(drawn.contains("open cells"));
    for (const auto* entry : {"chosen batch", "no clash, while dragging"})
        EXPECT_FALSE(drawn.contains(entry)) << entry;
    options.selected = outlook->batches.front()->batch->id;
    EXPECT_TRUE(entriesOf(lay()).contains("chosen batch"));
}

TEST_F(Legend, OfAPictureIsOfItsDays) {
    options.isPicture = true;
    options.size = {1366, 1400};
    const DayWindow early{outlook->season.first, outlook->season.first + Days{13}};
    EXPECT_TRUE(entriesOf(lay()).contains("laying, not judged"));
    EXPECT_FALSE(entriesOf(lay(*outlook, early)).contains("laying, not judged"));
}

TEST_F(Legend, HatchesDifferInDirectionOrAreCrossedAndInDensity) {
    auto changed = std::make_shared<Outlook>(*outlook);
    changed->nucs.yards[0].days[40].stack[static_cast<std::size_t>(NucState::DroneLayer)] = 1;
    const auto layout = lay(*changed, changed->season);
    std::map<Role, std::set<std::pair<Slope, int>>> hatches;
    for (const auto& item : layout.items)
        if (item.shape == Shape::Hatch && isInLegend(layout, item))
            hatches[item.role].insert({item.slope, static_cast<int>(10 * item.spacing)});
    const auto& likely = hatches[Role::LikelyHatch];
    const auto& none = hatches[Role::NoQueenHatch];
    ASSERT_EQ(likely.size(), 1U);
    ASSERT_EQ(none.size(), 1U);
    EXPECT_NE(likely.begin()->first, none.begin()->first);
    EXPECT_GE(likely.begin()->second, 2 * none.begin()->second);
    EXPECT_EQ(hatches[Role::DroneLayerHatch].size(), 2U) << "crossed";
    // What is only planned is a broken outline, and no bees are level lines: no hatch at all.
    EXPECT_FALSE(hatches.contains(Role::Ghost));
    EXPECT_FALSE(hatches.contains(Role::NotStockedHatch));
}

}  // namespace
}  // namespace tenthday::test
