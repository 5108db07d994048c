#include "chart/season_chart.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include "chart/hit_test.h"
#include "support/days.h"
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
              "Thu 17 Jun: ready 54; batch 18, graft Mon 7 Jun, cells out Thu 17 Jun");
}

TEST_F(Chart, IsPaintedDarkOnADarkDesktop) {
    const auto corner = [&] { return chart.grab().toImage().pixelColor(6, 300).lightnessF(); };
    chart.setLook(Look::Light);
    EXPECT_GT(corner(), 0.9F);
    chart.setLook(std::nullopt);
    chart.setPalette(widgetPalette(Look::Dark));
    EXPECT_LT(corner(), 0.2F);
}

}  // namespace
}  // namespace tenthday::test
