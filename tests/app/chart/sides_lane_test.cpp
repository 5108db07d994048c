// A yard opened into its nucs.
#include "chart/sides_lane.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>
#include <algorithm>
#include <map>

#include "chart/card_for.h"
#include "chart/hit_test.h"
#include "chart/season_chart.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// Two yards; one box of two sides moves from East to West on 1 June and is one again on 1 July.
SeasonMaker season() {
    SeasonMaker maker("2027-05-15");
    maker.yard("East", 1).yard("West", 2).builder("Box", "East");
    maker.box("N1", "East", "3+3", "2027-04-01").box("N2", "West", "7", "2027-04-01");
    maker.stock("N1/A", "2027-05-10").stock("N1/B", "2027-05-10").stock("N2/-", "2027-05-10");
    maker.batch("41", "2027-05-10", 14, 4, "Box");
    maker.place("41", "N1/A", "2027-05-20", false);
    maker.layOut("N1", "7", "2027-07-01");
    return maker;
}

class OpenedYards : public ::testing::Test {
protected:
    OpenedYards() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        chart.resize(1366, 768);
        chart.setOutlook(maker.outlook());
        chart.show();
        (void)QTest::qWaitForWindowExposed(&chart);
        chart.showWholeSeason();
    }
    /// Rows by the nucs' names.
    std::map<std::string, QRectF> rows() {
        std::map<std::string, QRectF> found;
        for (const auto& target : chart.layoutNow().targets)
            if (target.key.hit == Hit::Nuc) {
                const auto& side =
                    chart.outlook()->nucs.sides[static_cast<std::size_t>(target.key.index)];
                auto& rect = found[side.box->label + "/" + side.side->side];
                rect = rect.united(target.rect);
            }
        return found;
    }
    QPoint nameOf(const std::string& yard) {
        for (const auto& target : chart.layoutNow().targets)
            if (target.key.hit == Hit::YardName && target.key.yard == maker.yardId(yard))
                return QPoint(static_cast<int>(target.rect.left()) + 20,
                              static_cast<int>(target.rect.center().y()));
        return {};
    }

    SeasonMaker maker = season();
    SeasonChart chart;
};

TEST_F(OpenedYards, ArePressedOpenAndShutByTheirNames) {
    EXPECT_TRUE(rows().empty());
    QTest::mouseClick(&chart, Qt::LeftButton, {}, nameOf("East"));
    // Side A and B until July, the whole box from then on.
    const auto open = rows();
    ASSERT_EQ(open.size(), 3U);
    EXPECT_LT(open.at("N1/A").right(), open.at("N1/-").right());
    EXPECT_NEAR(open.at("N1/A").right(), open.at("N1/-").left(), 1.5);
    EXPECT_LT(open.at("N1/A").top(), open.at("N1/B").top());
    QTest::mouseClick(&chart, Qt::LeftButton, {}, nameOf("East"));
    EXPECT_TRUE(rows().empty());
}

TEST_F(OpenedYards, OpenByTheirNumberKeyAndAllAtOnce) {
    QTest::keyClick(&chart, Qt::Key_2);
    EXPECT_EQ(rows().size(), 1U);
    chart.openOrCloseYards();
    EXPECT_EQ(rows().size(), 4U);
    chart.openOrCloseYards();
    EXPECT_TRUE(rows().empty());
    QTest::keyClick(&chart, Qt::Key_9);
    EXPECT_TRUE(rows().empty());
}

TEST_F(OpenedYards, EachDayTellsItsStateAndWhyItIsNotReady) {
    QTest::keyClick(&chart, Qt::Key_1);
    const auto card = [&](const char* on) {
        for (const auto& target : chart.layoutNow().targets)
            if (target.key.hit == Hit::Nuc && target.key.day == day(on) &&
                chart.outlook()
                        ->nucs.sides[static_cast<std::size_t>(target.key.index)]
                        .side->side == "A")
                return cardFor(*chart.outlook(), target.key);
        return CardText{};
    };
    const auto ready = card("2027-05-15");
    EXPECT_EQ(ready.title.toStdString(), "N1 A · Sat 15 May");
    EXPECT_EQ(ready.lines.back().name.toStdString(), "ready for a cell");
    EXPECT_TRUE(ready.lines.back().because.contains(QStringLiteral("24 h")));
    const auto filled = card("2027-05-21");
    EXPECT_EQ(filled.lines.front().name.toStdString(), "ripe cell");
    EXPECT_TRUE(filled.lines[1].name.contains(QStringLiteral("41")));
    EXPECT_EQ(filled.lines.back().value.toStdString(), "holds a cell");
    EXPECT_TRUE(filled.lines.back().because.startsWith(QStringLiteral("ready from ")));
}

TEST_F(OpenedYards, ANucsDaySelectsItsBatchAndDay) {
    QTest::keyClick(&chart, Qt::Key_1);
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::Nuc && target.key.day == day("2027-05-21") &&
            !target.key.batch.isNone()) {
            const auto at = target.rect.center().toPoint();
            QTest::mouseClick(&chart, Qt::LeftButton, {}, at);
            break;
        }
    EXPECT_EQ(chart.selectedBatch(), maker.batchId("41"));
    EXPECT_EQ(chart.chosenDay(), day("2027-05-21"));
}

TEST_F(OpenedYards, FirstEggsRiseWithTheirChanceUntilTheyAreSeen) {
    const auto heights = [&] {
        std::map<Day, double> found;  // of the height of the row
        const auto& layout = chart.layoutNow();
        for (const auto& item : layout.items) {
            if (item.role != Role::Laying || item.layer != Layer::Body || item.target < 0) continue;
            const auto& target = layout.targets[static_cast<std::size_t>(item.target)];
            if (target.key.hit != Hit::Nuc) continue;
            const auto& side =
                chart.outlook()->nucs.sides[static_cast<std::size_t>(target.key.index)];
            if (side.side->side != "A") continue;
            found[*target.key.day] = item.rect.height() / target.rect.height();
        }
        return found;
    };
    QTest::keyClick(&chart, Qt::Key_1);
    const auto reckoned = heights();
    std::vector<double> slope;
    for (const auto& [on, height] : reckoned)
        if (height < 0.88) slope.push_back(height);
    ASSERT_GE(slope.size(), 4U) << "some days from 10 to 90 %";
    EXPECT_TRUE(std::is_sorted(slope.begin(), slope.end()));
    EXPECT_LT(slope.front(), 0.3);
    EXPECT_GT(slope.back(), 0.6);
    maker.outcome("41", OutcomeKind::FirstEggs, "2027-06-03", {}, "N1/A");
    chart.setOutlook(maker.outlook());
    for (const auto& [on, height] : heights()) EXPECT_GT(height, 0.8) << toText(on);
}

TEST(BandOfANuc, FollowsItsState) {
    SideDay is;
    is.state = NucState::Caught;
    is.ready = true;
    EXPECT_EQ(bandOf(is), Band::Ready);
    is.ready = false;
    is.likely = 1;
    EXPECT_EQ(bandOf(is), Band::Likely);
    is.likely = 0;
    EXPECT_EQ(bandOf(is), Band::Waiting);
    is.state = NucState::NoQueen;
    EXPECT_EQ(bandOf(is), Band::NoQueen);
    is.needsBrood = true;
    EXPECT_EQ(bandOf(is), Band::Waiting);
    is.state = NucState::Laying;
    EXPECT_EQ(bandOf(is), Band::Laying);
}

/// Outlines of the plan in sight, from their first to their last day.
std::vector<DayWindow> ghosts(SeasonChart& chart) {
    std::vector<DayWindow> found;
    const auto& layout = chart.layoutNow();
    for (const auto& item : layout.items)
        if (item.role == Role::Ghost && item.shape == Shape::Stroke &&
            item.layer != Layer::Heads)  // not the legend's
            found.push_back({layout.axis.dayAt(item.rect.left() + 2),
                             layout.axis.dayAt(item.rect.right() - 2)});
    return found;
}

// Grafted two days late: bars, nucs in the yard and each opened nuc keep the plan in outline.
TEST_F(OpenedYards, ThePlanRemainsAsAnOutline) {
    EXPECT_TRUE(ghosts(chart).empty());
    maker.outcome("41", OutcomeKind::Graft, "2027-05-12", 4);
    chart.setOutlook(maker.outlook());
    const auto closed = ghosts(chart);
    ASSERT_EQ(closed.size(), 3U) << "in the builder and in both yards";
    QTest::keyClick(&chart, Qt::Key_1);
    const auto open = ghosts(chart);
    ASSERT_GT(open.size(), closed.size()) << "and in each nuc of the yard that is opened";
    const auto& timeline = chart.outlook()->batches.at(0)->timeline;
    for (const auto& days : {closed[1], closed[2], open.back()})
        EXPECT_LT(days.last, timeline.hold.catchDay) << "two days sooner";
}

}  // namespace
}  // namespace tenthday
