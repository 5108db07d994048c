#include "chart/season_chart.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include "chart/card_for.h"
#include "chart/hit_test.h"
#include "chart/legend_marks.h"
#include "look/space.h"
#include "support/days.h"
#include "support/large_season.h"
#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

/// The chart with a desk made of the sample: previews and moves make a sample moved so.
class Chart : public ::testing::Test {
protected:
    Chart() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        chart.resize(1366, 768);
        chart.setOutlook(sampleOutlook());
        QObject::connect(&chart, &SeasonChart::previewRequested, [this](const ChartWish& wish) {
            wishes.push_back(wish);
            previews.push_back(dayOf(wish));
            chart.setPreview(sampleOutlook(labelOf(wish.batches.front()), previews.back()));
        });
        QObject::connect(&chart, &SeasonChart::previewDropped, [this] {
            ++drops;
            chart.setPreview(nullptr);
        });
        QObject::connect(&chart, &SeasonChart::wished, [this](const ChartWish& wish) {
            wishes.push_back(wish);
            const auto id = wish.batches.front();
            const Day to = dayOf(wish);
            moves.push_back({labelOf(id), to});
            saved[id] = to;
            chart.setOutlook(sampleOutlook(labelOf(id), to));
        });
        chart.show();
        (void)QTest::qWaitForWindowExposed(&chart);
    }

    Day dayOf(const ChartWish& wish) {
        if (!saved.contains(wish.batches.front()))
            saved[wish.batches.front()] = sampleOutlook()->find(wish.batches.front())->batch->day;
        return saved[wish.batches.front()] + wish.by;
    }
    std::string labelOf(Id<Batch> id) const { return chart.outlook()->find(id)->batch->label; }
    QPoint loadOf(std::string_view label) {
        for (const auto& target : chart.layoutNow().targets)
            if (target.key.hit == Hit::Load && target.key.batch == sampleBatch(label))
                return target.rect.center().toPoint();
        ADD_FAILURE() << "no load of " << label;
        return {};
    }
    void dragBy(QPoint from, int px, bool release = true) {
        QTest::mousePress(&chart, Qt::LeftButton, {}, from);
        for (int step = 1; step <= 4; ++step)
            QTest::mouseMove(&chart, from + QPoint(px * step / 4, 0));
        if (release) QTest::mouseRelease(&chart, Qt::LeftButton, {}, from + QPoint(px, 0));
    }
    int days(int count) const {
        return static_cast<int>(std::lround(count * chart.dayAxis().dayWidth()));
    }

    SeasonChart chart;
    std::map<Id<Batch>, Day> saved;
    std::vector<ChartWish> wishes;
    std::vector<Day> previews;
    std::vector<std::pair<std::string, Day>> moves;
    int drops = 0;
};

TEST_F(Chart, AClickSelectsTheBatch) {
    QTest::mouseClick(&chart, Qt::LeftButton, {}, loadOf("17"));
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("17"));
    EXPECT_TRUE(moves.empty());
}

TEST_F(Chart, ADoubleClickOrEnterChangesABatchAndADoubleClickOnADayPlansOne) {
    std::vector<Id<Batch>> edited;
    std::vector<Day> planned;
    QObject::connect(&chart, &SeasonChart::editRequested,
                     [&](Id<Batch> id) { edited.push_back(id); });
    QObject::connect(&chart, &SeasonChart::planRequested, [&](Day on) { planned.push_back(on); });
    QTest::mouseDClick(&chart, Qt::LeftButton, {}, loadOf("17"));
    EXPECT_EQ(edited, std::vector{sampleBatch("17")});
    chart.setSelectedBatch(sampleBatch("18"));
    QTest::keyClick(&chart, Qt::Key_Return);
    EXPECT_EQ(edited.back(), sampleBatch("18"));
    EXPECT_TRUE(planned.empty());
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::Head && target.key.day == day("2027-06-20")) {
            QTest::mouseDClick(&chart, Qt::LeftButton, {}, target.rect.center().toPoint());
            break;
        }
    EXPECT_EQ(planned, std::vector{day("2027-06-20")});
    EXPECT_TRUE(moves.empty());
    EXPECT_EQ(edited.size(), 2U);
}

TEST_F(Chart, ADoubleClickOnACellsDayAsksForIt) {
    std::vector<Day> asked;
    std::vector<Day> planned;
    QObject::connect(&chart, &SeasonChart::cellsDayRequested, [&](Day on) { asked.push_back(on); });
    QObject::connect(&chart, &SeasonChart::planRequested, [&](Day on) { planned.push_back(on); });
    std::optional<Target> target;
    for (const auto& at : chart.layoutNow().targets)
        if (at.key.hit == Hit::CellsDay) target = at;
    ASSERT_TRUE(target);
    QTest::mouseDClick(&chart, Qt::LeftButton, {}, target->rect.center().toPoint());
    EXPECT_EQ(asked, std::vector{*target->key.day});
    EXPECT_TRUE(planned.empty());
}

TEST_F(Chart, AClickOnAYardChoosesItsDay) {
    const auto& axis = chart.dayAxis();
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::YardDay && target.key.day == day("2027-06-20") &&
            target.key.batch == sampleBatch("18")) {
            QTest::mouseClick(&chart, Qt::LeftButton, {}, target.rect.center().toPoint());
            break;
        }
    EXPECT_EQ(chart.chosenDay(), day("2027-06-20"));
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("18"));
    EXPECT_TRUE(axis.showsAll());
}

TEST_F(Chart, ADragOfThreeDaysPreviewsThenSaves) {
    const auto from = loadOf("18");
    dragBy(from, days(3), false);
    ASSERT_FALSE(previews.empty());
    EXPECT_EQ(previews.back(), day("2027-06-10"));
    EXPECT_EQ(chart.outlook()->find(sampleBatch("18"))->batch->day, day("2027-06-10"));
    EXPECT_TRUE(chart.card().isVisible());
    EXPECT_NE(chart.card().card().title.toStdString().find("Thu 10 Jun (+3 d)"), std::string::npos)
        << chart.card().card().title.toStdString();
    EXPECT_TRUE(moves.empty());
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, from + QPoint(days(3), 0));
    ASSERT_EQ(moves.size(), 1U);
    EXPECT_EQ(moves[0], (std::pair<std::string, Day>{"18", day("2027-06-10")}));
}

TEST_F(Chart, ADragAsksOncePerDay) {
    dragBy(loadOf("18"), days(3), false);
    for (std::size_t i = 1; i < previews.size(); ++i) EXPECT_NE(previews[i], previews[i - 1]);
    EXPECT_LE(previews.size(), 3U);
}

TEST_F(Chart, EscDropsTheDrag) {
    const auto from = loadOf("18");
    dragBy(from, days(-4), false);
    ASSERT_FALSE(previews.empty());
    QTest::keyClick(&chart, Qt::Key_Escape);
    EXPECT_EQ(drops, 1);
    EXPECT_EQ(chart.outlook()->find(sampleBatch("18"))->batch->day, day("2027-06-07"));
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, from + QPoint(days(-4), 0));
    EXPECT_TRUE(moves.empty());
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("18"));
}

TEST_F(Chart, AShakyClickMovesNothing) {
    const auto from = loadOf("18");
    const int shake = QApplication::startDragDistance() - 1;
    QTest::mousePress(&chart, Qt::LeftButton, {}, from);
    QTest::mouseMove(&chart, from + QPoint(shake, 0));
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, from + QPoint(shake, 0));
    EXPECT_TRUE(previews.empty());
    EXPECT_TRUE(moves.empty());
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("18"));
}

TEST_F(Chart, ADragBackToItsDaySavesNothing) {
    const auto from = loadOf("18");
    dragBy(from, days(2), false);
    QTest::mouseMove(&chart, from);
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, from);
    EXPECT_TRUE(moves.empty());
    EXPECT_EQ(drops, 1);
}

TEST_F(Chart, AltArrowsMoveTheSelectedBatchADay) {
    chart.setSelectedBatch(sampleBatch("20"));
    QTest::keyClick(&chart, Qt::Key_Right, Qt::AltModifier);
    QTest::keyClick(&chart, Qt::Key_Left, Qt::AltModifier);
    ASSERT_EQ(moves.size(), 2U);
    EXPECT_EQ(moves[0].second, day("2027-06-25"));
    EXPECT_EQ(moves[1].second, day("2027-06-24"));
}

TEST_F(Chart, ArrowsMoveTheChosenDay) {
    chart.setChosenDay(day("2027-06-10"));
    QTest::keyClick(&chart, Qt::Key_Right);
    QTest::keyClick(&chart, Qt::Key_Right);
    QTest::keyClick(&chart, Qt::Key_Left);
    EXPECT_EQ(chart.chosenDay(), day("2027-06-11"));
    QTest::keyClick(&chart, Qt::Key_PageDown);
    EXPECT_EQ(chart.chosenDay(), day("2027-06-18"));
    QTest::keyClick(&chart, Qt::Key_Home);
    EXPECT_EQ(chart.chosenDay(), day("2027-06-02"));
    for (int i = 0; i < 80; ++i) QTest::keyClick(&chart, Qt::Key_PageUp);
    EXPECT_EQ(chart.chosenDay(), chart.outlook()->season.first);
}

TEST_F(Chart, TabAndArrowsWalkTheBatches) {
    QTest::keyClick(&chart, Qt::Key_Down);
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("14"));
    QTest::keyClick(&chart, Qt::Key_Tab);
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("15"));
    QTest::keyClick(&chart, Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("14"));
    QTest::keyClick(&chart, Qt::Key_Up);
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("14"));
    QTest::keyClick(&chart, Qt::Key_Escape);
    EXPECT_EQ(chart.selectedBatch(), std::nullopt);
}

TEST_F(Chart, KeysZoomAndGoBack) {
    const qreal whole = chart.dayAxis().dayWidth();
    QTest::keyClick(&chart, Qt::Key_Plus);
    QTest::keyClick(&chart, Qt::Key_Plus);
    EXPECT_NEAR(chart.dayAxis().dayWidth(), whole * 1.25 * 1.25, 1e-6);
    QTest::keyClick(&chart, Qt::Key_Minus);
    EXPECT_NEAR(chart.dayAxis().dayWidth(), whole * 1.25, 1e-6);
    QTest::keyClick(&chart, Qt::Key_0);
    EXPECT_TRUE(chart.dayAxis().showsAll());
}

void wheel(SeasonChart& chart, QPointF at, int notches, Qt::KeyboardModifiers with) {
    QWheelEvent event(at, chart.mapToGlobal(at), {}, {0, notches * 120}, Qt::NoButton, with,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&chart, &event);
}

TEST_F(Chart, TheWheelZoomsAtThePointerAndScrolls) {
    const QPointF at(800, 400);
    const Day under = chart.dayAxis().dayAt(at.x());
    wheel(chart, at, 6, Qt::ControlModifier);
    EXPECT_GT(chart.dayAxis().dayWidth(), 20);
    EXPECT_EQ(chart.dayAxis().dayAt(at.x()), under);
    const qreal before = chart.dayAxis().scroll();
    wheel(chart, at, -1, Qt::ShiftModifier);
    EXPECT_GT(chart.dayAxis().scroll(), before);
}

TEST_F(Chart, TheGroundIsDraggedAndTheHeadChoosesDays) {
    wheel(chart, {800, 400}, 6, Qt::ControlModifier);
    const qreal before = chart.dayAxis().scroll();
    const Day grabbed = chart.dayAxis().dayAt(900);
    const auto y = static_cast<int>(chart.layoutNow().plot.top()) + 4;
    dragBy({900, y}, -200);
    EXPECT_NEAR(chart.dayAxis().scroll(), before + 200, 1.0);
    EXPECT_EQ(chart.dayAxis().dayAt(700), grabbed);
    dragBy({600, 10}, 150);
    EXPECT_EQ(chart.chosenDay(), chart.dayAxis().dayAt(750));
}

TEST_F(Chart, HoverTellsEachNumberAndItsSource) {
    QTest::mouseMove(&chart, loadOf("18"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return chart.card().isVisible(); }, 3000));
    const auto& card = chart.card().card();
    EXPECT_EQ(card.title.toStdString(), "Batch 18 · Builder 2");
    std::string all;
    for (const auto& line : card.lines)
        all += (line.name + u' ' + line.value + u' ' + line.because + u'\n').toStdString();
    EXPECT_NE(all.find("accepted 33 75 % (S19, S82, S83)"), std::string::npos) << all;
    EXPECT_NE(all.find("cells out Thu 17 Jun 9:00 240 h after the graft (S11, S22)"),
              std::string::npos)
        << all;
}

TEST_F(Chart, SaysWhatIsChosenToAScreenReader) {
    chart.setChosenDay(day("2027-06-17"));
    chart.setSelectedBatch(sampleBatch("18"));
    EXPECT_EQ(chart.accessibleName().toStdString(), "Season chart");
    EXPECT_EQ(chart.accessibleDescription().toStdString(),
              "Thu 17 Jun: 54 ready; batch 18, graft Mon 7 Jun, cells out Thu 17 Jun");
}

TEST_F(Chart, IsPaintedDarkOnADarkDesktop) {
    const auto corner = [&] { return chart.grab().toImage().pixelColor(6, 300).lightnessF(); };
    chart.setLook(Look::Light);
    EXPECT_GT(corner(), 0.9F);
    chart.setLook(std::nullopt);
    chart.setPalette(widgetPalette(Look::Dark));
    EXPECT_LT(corner(), 0.2F);
}

std::optional<Target> first(SeasonChart& chart, Hit hit) {
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == hit) return target;
    return std::nullopt;
}

TEST_F(Chart, CtrlAndAClickSelectSeveralThatMoveTogether) {
    QTest::mouseClick(&chart, Qt::LeftButton, {}, loadOf("17"));
    QTest::keyPress(&chart, Qt::Key_Control, Qt::ControlModifier);
    QTest::mouseClick(&chart, Qt::LeftButton, Qt::ControlModifier, loadOf("18"));
    QTest::keyRelease(&chart, Qt::Key_Control);
    EXPECT_EQ(chart.selectedBatches().size(), 2U);
    wishes.clear();
    dragBy(loadOf("18"), days(2));
    ASSERT_FALSE(wishes.empty());
    EXPECT_EQ(wishes.back().by, Days{2});
    EXPECT_EQ(wishes.back().batches, (std::vector{sampleBatch("18"), sampleBatch("17")}));
}

TEST_F(Chart, ShiftAndArrowsChooseMoreBatches) {
    chart.setSelectedBatch(sampleBatch("16"));
    QTest::keyClick(&chart, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(chart.selectedBatches(), (std::vector{sampleBatch("17"), sampleBatch("16")}));
    QTest::keyClick(&chart, Qt::Key_Right, Qt::AltModifier);
    ASSERT_FALSE(wishes.empty());
    EXPECT_EQ(wishes.back().batches.size(), 2U);
    EXPECT_EQ(wishes.back().by, Days{1});
}

TEST_F(Chart, ADragToAnotherBuilderOfItsKindMovesTheCellsThere) {
    const auto from = loadOf("18");
    std::optional<Target> row;
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::BuilderRow && target.key.builder == sampleBuilder("Builder 1"))
            row = target;
    ASSERT_TRUE(row);
    const QPoint to(from.x(), row->rect.center().toPoint().y());
    QTest::mousePress(&chart, Qt::LeftButton, {}, from);
    QTest::mouseMove(&chart, to);
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, to);
    ASSERT_FALSE(wishes.empty());
    ASSERT_TRUE(wishes.back().load);
    EXPECT_EQ(wishes.back().load->to, sampleBuilder("Builder 1"));
    EXPECT_EQ(wishes.back().load->from, sampleBuilder("Builder 2"));
    EXPECT_EQ(wishes.back().by, Days{0});
}

// In a whole season rows are thinner than a hand is steady.
TEST_F(Chart, AHandThatTremblesMovesNoCellsToAnotherBuilder) {
    SeasonChart season;
    season.resize(1366, 768);
    OutlookMemo memo;
    season.setOutlook(outlookOf(largeSeason({160, 600, 2}), memo));
    std::vector<ChartWish> asked;
    QObject::connect(&season, &SeasonChart::previewRequested,
                     [&](const ChartWish& wish) { asked.push_back(wish); });
    season.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&season));
    const auto layout = season.layoutNow();
    const auto toAnother = [&](QPoint from, int px) {
        asked.clear();
        const int days = static_cast<int>(std::lround(3 * season.dayAxis().dayWidth()));
        QTest::mousePress(&season, Qt::LeftButton, {}, from);
        QTest::mouseMove(&season, from + QPoint(2 * days, px / 2));
        QTest::mouseMove(&season, from + QPoint(days, px));
        QTest::keyClick(&season, Qt::Key_Escape);
        QTest::mouseRelease(&season, Qt::LeftButton, {}, from);
        return !asked.empty() && asked.back().load.has_value();
    };
    int tried = 0;
    int reached = 0;
    for (const auto& target : std::vector(layout.targets)) {
        const auto from = target.rect.center().toPoint();
        const auto* top = targetAt(layout, from);
        if (target.key.hit != Hit::Load || top == nullptr || top->key != target.key) continue;
        if (!layout.plot.adjusted(60, 60, -120, -60).contains(from) || ++tried > 12) continue;
        for (const int px : {-9, 9}) EXPECT_FALSE(toAnother(from, px));
        for (const int px : {-40, 40}) reached += toAnother(from, px);
    }
    EXPECT_GT(tried, 5);
    EXPECT_GT(reached, 0) << "a hand that means it goes there";
}

TEST_F(Chart, AnIncubatorTakesNoCellsThatNeedABox) {
    const auto from = loadOf("18");
    std::optional<Target> row;
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::BuilderRow && target.key.builder == sampleBuilder("Incubator"))
            row = target;
    ASSERT_TRUE(row);
    const QPoint to(from.x(), row->rect.center().toPoint().y());
    QTest::mousePress(&chart, Qt::LeftButton, {}, from);
    QTest::mouseMove(&chart, to);
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, to);
    EXPECT_TRUE(moves.empty());
}

TEST_F(Chart, TheUpperEdgeOfASelectedBatchSetsItsGrafts) {
    chart.setSelectedBatch(sampleBatch("20"));
    const auto edge = first(chart, Hit::Grafts);
    ASSERT_TRUE(edge);
    EXPECT_GE(edge->rect.height(), space::kLeastHit) << "a handle one can hit";
    const auto from = edge->rect.center().toPoint();
    QTest::mousePress(&chart, Qt::LeftButton, {}, from);
    QTest::mouseMove(&chart, from - QPoint(0, 15));
    QTest::mouseMove(&chart, from - QPoint(0, 30));
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, from - QPoint(0, 30));
    ASSERT_FALSE(wishes.empty());
    ASSERT_TRUE(wishes.back().grafts);
    EXPECT_EQ(wishes.back().grafts->batch, sampleBatch("20"));
    EXPECT_GT(wishes.back().grafts->cells, 3) << "30 px up from one graft";
    EXPECT_EQ(wishes.back().by, Days{0});
}

TEST_F(Chart, CellsAreDraggedToAnotherYard) {
    std::optional<Target> block;
    std::optional<Target> row;
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::YardDay && target.key.batch == sampleBatch("18") &&
            (!block || target.rect.height() > block->rect.height()))
            block = target;
    ASSERT_TRUE(block);
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::YardRow && target.key.yard != block->key.yard) row = target;
    ASSERT_TRUE(row);
    const auto from = block->rect.center().toPoint();
    const QPoint to(from.x(), row->rect.center().toPoint().y());
    QTest::mousePress(&chart, Qt::LeftButton, {}, from);
    QTest::mouseMove(&chart, to);
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, to);
    ASSERT_FALSE(wishes.empty());
    ASSERT_TRUE(wishes.back().share);
    EXPECT_EQ(wishes.back().share->to, row->key.yard);
    EXPECT_EQ(wishes.back().share->from, block->key.yard);
}

TEST_F(Chart, DaysScrollWhileADragRestsAtTheEdge) {
    wheel(chart, {800, 400}, 8, Qt::ControlModifier);
    while (chart.selectedBatch() != sampleBatch("18")) QTest::keyClick(&chart, Qt::Key_Down);
    const auto plot = chart.layoutNow().plot;
    const auto from = (QRectF(loadOf("18"), QSizeF(1, 1)) & plot).center().toPoint();
    ASSERT_TRUE(plot.contains(from));
    const qreal before = chart.dayAxis().scroll();
    QTest::mousePress(&chart, Qt::LeftButton, {}, from);
    QTest::mouseMove(&chart, {static_cast<int>(plot.right()) - 4, from.y()});
    EXPECT_TRUE(QTest::qWaitFor([&] { return chart.dayAxis().scroll() > before + 30; }, 3000));
    QTest::keyClick(&chart, Qt::Key_Escape);
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, from);
    EXPECT_TRUE(moves.empty());
}

TEST_F(Chart, LanesAndTheLegendFold) {
    const auto before = chart.layoutNow().targets.size();
    const auto name = first(chart, Hit::LaneName);
    ASSERT_TRUE(name);
    QTest::mouseClick(&chart, Qt::LeftButton, {}, name->rect.center().toPoint());
    EXPECT_EQ(chart.options().foldedLanes.size(), 1U);
    EXPECT_LT(chart.layoutNow().targets.size(), before);
    QTest::mouseClick(&chart, Qt::LeftButton, {},
                      first(chart, Hit::LaneName)->rect.center().toPoint());
    EXPECT_TRUE(chart.options().foldedLanes.empty());
    QTest::keyClick(&chart, Qt::Key_2, Qt::AltModifier);
    EXPECT_EQ(chart.options().foldedLanes, std::vector{LaneName::Builders});
    QTest::keyClick(&chart, Qt::Key_2, Qt::AltModifier);
    EXPECT_TRUE(chart.options().foldedLanes.empty());
    const qreal plot = chart.layoutNow().plot.height();
    QTest::keyClick(&chart, Qt::Key_L);
    EXPECT_GE(chart.layoutNow().plot.height(), plot);
    const auto legend = first(chart, Hit::LegendName);
    ASSERT_TRUE(legend);
    QTest::mouseClick(&chart, Qt::LeftButton, {}, legend->rect.center().toPoint());
    EXPECT_FALSE(chart.options().legendFolded);
}

TEST_F(Chart, TheLegendGivesWayToTheLanesUnlessItIsOpenedByHand) {
    chart.resize(1366, 1000);
    EXPECT_FALSE(chart.layoutNow().legendFolded);
    chart.resize(1366, 470);
    EXPECT_TRUE(chart.layoutNow().legendFolded);
    EXPECT_FALSE(chart.options().legendFolded) << "not by hand: it comes back by itself";
    const qreal plot = chart.layoutNow().plot.height();
    QTest::keyClick(&chart, Qt::Key_L);
    EXPECT_FALSE(chart.layoutNow().legendFolded);
    EXPECT_LT(chart.layoutNow().plot.height(), plot);
    QTest::keyClick(&chart, Qt::Key_L);
    EXPECT_TRUE(chart.layoutNow().legendFolded);
    EXPECT_EQ(chart.legendFold(), LegendFold::ByRoom) << "as room has it: left to it again";
    chart.resize(1366, 1000);
    EXPECT_FALSE(chart.layoutNow().legendFolded);
    QTest::keyClick(&chart, Qt::Key_L);
    EXPECT_TRUE(chart.layoutNow().legendFolded) << "by hand, whatever room there is";
    EXPECT_EQ(chart.legendFold(), LegendFold::Folded);
    QTest::keyClick(&chart, Qt::Key_L);
    EXPECT_FALSE(chart.layoutNow().legendFolded);
    EXPECT_EQ(chart.legendFold(), LegendFold::ByRoom);
}

TEST_F(Chart, ABatchDraggedBeforeTodaySaysSo) {
    const Day today = chart.outlook()->snapshot.today();
    const auto cardAfter = [&](Day to) {
        const auto start = sampleOutlook()->find(sampleBatch("18"))->batch->day;
        dragBy(loadOf("18"), days(static_cast<int>((to - start).count())), false);
        EXPECT_FALSE(previews.empty());
        EXPECT_EQ(previews.back(), to);
        const auto card = chart_cards::asPlainText(chart.card().card());
        QTest::keyClick(&chart, Qt::Key_Escape);
        return card;
    };
    EXPECT_TRUE(cardAfter(today - Days{2}).contains(QStringLiteral("before today")));
    EXPECT_FALSE(cardAfter(today + Days{3}).contains(QStringLiteral("before today")));
}

TEST_F(Chart, TheLegendStaysAsItIsWhileABatchIsDragged) {
    chart.resize(1366, 1000);
    const bool folded = chart.layoutNow().legendFolded;
    dragBy(loadOf("18"), days(2), false);
    ASSERT_FALSE(previews.empty());
    // Even where the lanes want more than there is.
    chart.resize(1366, 470);
    EXPECT_EQ(chart.layoutNow().legendFolded, folded);
    QTest::keyClick(&chart, Qt::Key_Escape);
    EXPECT_NE(chart.layoutNow().legendFolded, folded);
    // Nor does it grow by what the preview alone would have.
    chart.resize(1366, 1000);
    dragBy(loadOf("18"), days(2), false);
    ASSERT_TRUE(chart.options().legendHeld);
    EXPECT_EQ(chart.options().legendHeld->marks,
              legendMarks(*sampleOutlook(), chart.options(), sampleOutlook()->season));
    QTest::keyClick(&chart, Qt::Key_Escape);
    EXPECT_FALSE(chart.options().legendHeld);
}

TEST_F(Chart, ATroubleThatIsPressedLeadsToItsBatch) {
    const auto trouble = first(chart, Hit::Trouble);
    ASSERT_TRUE(trouble);
    ASSERT_TRUE(trouble->key.day);
    const auto at = trouble->rect.center().toPoint();
    // Its words are no batch that could be dragged.
    dragBy(at, days(3));
    EXPECT_TRUE(moves.empty());
    EXPECT_TRUE(previews.empty());
    const auto again = first(chart, Hit::Trouble);
    ASSERT_TRUE(again);
    QTest::mouseClick(&chart, Qt::LeftButton, {}, again->rect.center().toPoint());
    EXPECT_EQ(chart.selectedBatch(), again->key.batch);
    EXPECT_EQ(chart.chosenDay(), again->key.day);
    EXPECT_TRUE(chart.dayAxis().visible().contains(*again->key.day));
    EXPECT_TRUE(chart.card().isVisible());
}

/// The names under the plot of lanes that are out of sight; empty where there are none.
QString namedAs(SeasonChart& chart, Hit hit) {
    const auto& layout = chart.layoutNow();
    for (const auto& item : layout.items)
        if (item.shape == Shape::Text && item.target >= 0 &&
            layout.targets[static_cast<std::size_t>(item.target)].key.hit == hit)
            return layout.texts[static_cast<std::size_t>(item.detail)].text;
    return {};
}

TEST_F(Chart, LanesOutOfSightAreNamedAndReachedByPointerAndKey) {
    EXPECT_TRUE(namedAs(chart, Hit::LanesBelow).isEmpty()) << "all are in sight";
    chart.openOrCloseYards();
    chart.resize(1366, 470);
    const auto below = namedAs(chart, Hit::LanesBelow);
    EXPECT_TRUE(below.startsWith(QStringLiteral("below: "))) << below.toStdString();
    EXPECT_TRUE(namedAs(chart, Hit::LanesAbove).isEmpty());
    const auto yards = chart.outlook()->nucs.yards;
    EXPECT_TRUE(below.contains(QString::fromStdString(yards.back().yard->label)))
        << below.toStdString();
    const auto sign = first(chart, Hit::LanesBelow);
    ASSERT_TRUE(sign);
    QTest::mouseClick(&chart, Qt::LeftButton, {}, sign->rect.center().toPoint());
    const qreal once = chart.options().scrollY;
    EXPECT_GT(once, 0);
    EXPECT_TRUE(namedAs(chart, Hit::LanesAbove).startsWith(QStringLiteral("above: Flying days")))
        << namedAs(chart, Hit::LanesAbove).toStdString();
    for (int i = 0; i < 20; ++i) QTest::keyClick(&chart, Qt::Key_B);
    EXPECT_TRUE(namedAs(chart, Hit::LanesBelow).isEmpty())
        << namedAs(chart, Hit::LanesBelow).toStdString();
    const auto above = first(chart, Hit::LanesAbove);
    ASSERT_TRUE(above);
    EXPECT_FALSE(above->rect.contains(sign->rect.center())) << "pressed on, it does not turn back";
    EXPECT_DOUBLE_EQ(above->rect.right(), chart.layoutNow().plot.right());
    for (int i = 0; i < 20; ++i) QTest::keyClick(&chart, Qt::Key_B, Qt::ShiftModifier);
    EXPECT_EQ(chart.options().scrollY, 0);
    EXPECT_EQ(namedAs(chart, Hit::LanesBelow), below);
}

TEST_F(Chart, LanesOutOfSightHaveACardThatNamesThemAndTheKey) {
    chart.openOrCloseYards();
    chart.resize(1366, 470);
    const auto sign = first(chart, Hit::LanesBelow);
    ASSERT_TRUE(sign);
    const auto card = cardFor(*chart.outlook(), chart.layoutNow(), *sign, nullptr);
    EXPECT_EQ(card.title, QStringLiteral("Lanes below"));
    QStringList lines;
    for (const auto& line : card.lines) lines += line.name;
    const auto& below = chart.layoutNow().hidden.below;
    EXPECT_FALSE(below.isEmpty());
    EXPECT_EQ(lines.mid(0, lines.size() - 1), below);
    EXPECT_TRUE(lines.last().contains(QStringLiteral("key B")));
}

TEST_F(Chart, AQuickSecondPressScrollsTheLanesOnceMore) {
    chart.openOrCloseYards();
    chart.resize(1366, 360);
    const auto sign = first(chart, Hit::LanesBelow);
    ASSERT_TRUE(sign);
    const QPoint at(static_cast<int>(sign->rect.left()) + 4,  // names get fewer
                    sign->rect.center().toPoint().y());
    QTest::mouseClick(&chart, Qt::LeftButton, {}, at);
    const qreal once = chart.options().scrollY;
    ASSERT_GT(once, 0);
    ASSERT_TRUE(first(chart, Hit::LanesBelow)) << "there is more";
    // The second of two presses comes as a double click.
    QMouseEvent second(QEvent::MouseButtonDblClick, at, chart.mapToGlobal(at), Qt::LeftButton,
                       Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&chart, &second);
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, at);
    EXPECT_GT(chart.options().scrollY, once);
}

TEST_F(Chart, WhatKeysStandOnIsScrolledTo) {
    chart.openOrCloseYards();
    chart.resize(1366, 470);
    const auto last = chart.outlook()->nucs.yards.back().yard->id;
    const auto inSight = [&] {
        const auto* row = findTarget(chart.layoutNow(), {.hit = Hit::YardRow, .yard = last});
        return row != nullptr && chart.layoutNow().plot.contains(row->rect.center());
    };
    EXPECT_FALSE(inSight());
    chart.standOn({.hit = Hit::YardRow, .yard = last});
    EXPECT_TRUE(inSight());
}

TEST_F(Chart, AClashIsScrolledToAndItsLaneUnfolded) {
    const auto& findings = chart.outlook()->findings;
    const auto of = std::find_if(findings.begin(), findings.end(), [](const Finding& finding) {
        return std::holds_alternative<Id<Batch>>(finding.subject) &&
               finding.severity != Severity::Note && finding.kind != FindingKind::TooManyCells;
    });
    ASSERT_NE(of, findings.end());
    const auto batch = std::get<Id<Batch>>(of->subject);
    const auto inSight = [&] {
        for (const auto& target : chart.layoutNow().targets)
            if (target.key.hit == Hit::Load && target.key.batch == batch &&
                chart.layoutNow().plot.contains(target.rect.center()))
                return true;
        return false;
    };
    const auto goThere = [&] {
        chart.setChosenDay(chart.outlook()->season.first);
        for (std::size_t i = 0; i < findings.size() && !inSight(); ++i) chart.goToClash(1);
    };
    chart.setFolds({LaneName::Builders}, LegendFold::ByRoom);
    EXPECT_FALSE(inSight());
    goThere();
    EXPECT_TRUE(inSight());
    EXPECT_FALSE(chart.options().isFolded(LaneName::Builders));
    chart.openOrCloseYards();
    chart.resize(1366, 470);
    for (int i = 0; i < 20; ++i) QTest::keyClick(&chart, Qt::Key_B);
    EXPECT_FALSE(inSight());
    goThere();
    EXPECT_TRUE(inSight());
}

TEST_F(Chart, TheStripJumpsToAnyPartOfTheSeason) {
    EXPECT_FALSE(first(chart, Hit::Strip)) << "all is shown";
    wheel(chart, {800, 400}, 6, Qt::ControlModifier);
    const auto strip = first(chart, Hit::Strip);
    ASSERT_TRUE(strip);
    const int y = strip->rect.center().toPoint().y();
    QTest::mouseClick(&chart, Qt::LeftButton, {}, {static_cast<int>(strip->rect.right()) - 3, y});
    EXPECT_EQ(chart.dayAxis().visible().last, chart.outlook()->season.last);
    QTest::mouseClick(&chart, Qt::LeftButton, {}, {static_cast<int>(strip->rect.left()) + 3, y});
    EXPECT_EQ(chart.dayAxis().visible().first, chart.outlook()->season.first);
    EXPECT_TRUE(moves.empty());
}

TEST_F(Chart, KeysWalkLoadsYardsClashesAndWork) {
    QTest::keyClick(&chart, Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(chart.place().hit, Hit::Load);
    EXPECT_EQ(chart.selectedBatch(), chart.place().batch);
    EXPECT_TRUE(chart.card().isVisible());
    QTest::keyClick(&chart, Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(chart.place().hit, Hit::YardRow);
    EXPECT_TRUE(chart.card().isVisible());
    chart.setChosenDay(chart.outlook()->season.first);
    QTest::keyClick(&chart, Qt::Key_C);
    EXPECT_TRUE(chart.card().isVisible());
    const auto clash = chart.chosenDay();
    EXPECT_TRUE(std::any_of(chart.outlook()->findings.begin(), chart.outlook()->findings.end(),
                            [&](const Finding& finding) { return finding.day == clash; }));
    chart.setChosenDay(day("2027-06-02"));
    QTest::keyClick(&chart, Qt::Key_M);
    EXPECT_GT(*chart.chosenDay(), day("2027-06-02"));
    QTest::keyClick(&chart, Qt::Key_M, Qt::ShiftModifier);
    EXPECT_LE(*chart.chosenDay(), day("2027-06-02"));
}

TEST_F(Chart, InsertBeginsABatchOnTheChosenDay) {
    std::vector<Day> planned;
    QObject::connect(&chart, &SeasonChart::planRequested, [&](Day on) { planned.push_back(on); });
    chart.setChosenDay(day("2027-06-20"));
    QTest::keyClick(&chart, Qt::Key_Insert);
    EXPECT_EQ(planned, std::vector{day("2027-06-20")});
}

/// The sample in which a builder has two loads at a time.
OutlookPtr crowded() {
    auto made = std::make_shared<Outlook>(*sampleOutlook());
    auto first = made->builders[0];
    first.loads.push_back(first.loads.front());
    made->builders.replace(0, std::move(first));
    return made;
}

std::vector<QRectF> builderRowsIn(SeasonChart& chart) {
    std::vector<QRectF> rects;
    for (const auto& target : chart.layoutNow().targets)
        if (target.key.hit == Hit::BuilderRow) rects.push_back(target.rect);
    return rects;
}

TEST_F(Chart, RowsKeepTheirTracksWhileABatchIsDragged) {
    const auto before = builderRowsIn(chart);
    chart.setPreview(crowded());
    const auto during = builderRowsIn(chart);
    EXPECT_NE(during, before);
    chart.setPreview(sampleOutlook());
    EXPECT_EQ(builderRowsIn(chart), during) << "the row stays high where it was needed once";
    chart.setPreview(nullptr);
    EXPECT_EQ(builderRowsIn(chart), before);
}

TEST_F(Chart, RowsHoldStillToTheEndOfADragThatComesBackToItsDay) {
    const auto before = builderRowsIn(chart);
    const auto from = loadOf("18");
    dragBy(from, days(2), false);
    chart.setPreview(crowded());
    const auto during = builderRowsIn(chart);
    ASSERT_NE(during, before);
    const int row = loadOf("18").y();  // its builder's stands elsewhere now
    QTest::mouseMove(&chart, QPoint(from.x(), row));
    ASSERT_EQ(drops, 1) << "back on its own day there is no preview";
    chart.setOutlook(sampleOutlook());
    EXPECT_EQ(builderRowsIn(chart), during);
    QTest::mouseMove(&chart, QPoint(from.x() + days(2), row));
    EXPECT_EQ(builderRowsIn(chart), during);
    QTest::keyClick(&chart, Qt::Key_Escape);
    EXPECT_EQ(builderRowsIn(chart), before);
}

TEST_F(Chart, TheGroundIsPaintedOnceForAllOfADrag) {
    (void)chart.grab();
    const auto isKept = [&] { return chart.ground().isKept(); };
    ASSERT_TRUE(QTest::qWaitFor(isKept)) << "once frames rest";
    const int made = chart.ground().timesMade();
    dragBy(loadOf("18"), days(1), false);
    for (int by = 2; by < 6; ++by) {
        QTest::mouseMove(&chart, loadOf("18") + QPoint(days(1), 0));
        (void)chart.grab();
    }
    EXPECT_EQ(chart.ground().timesMade(), made);
    QTest::keyClick(&chart, Qt::Key_Escape);
    QTest::keyClick(&chart, Qt::Key_Plus);
    const auto straight = chart.grab().toImage();
    EXPECT_EQ(chart.ground().timesMade(), made) << "while days move nothing is kept";
    ASSERT_TRUE(QTest::qWaitFor(isKept));
    EXPECT_EQ(chart.ground().timesMade(), made + 1);
    EXPECT_EQ(chart.grab().toImage(), straight);
}

}  // namespace
}  // namespace tenthday::test
