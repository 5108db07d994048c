#include "chart/chart_desk_link.h"

#include <QApplication>
#include <QTest>

#include "app/book/book_fixture.h"

namespace tenthday {
namespace {

using test::day;
using test::kBatch;

/// A chart on a real book of one batch, grafted on 4 June and not placed in a builder yet.
class LinkedChart : public test::BookTest {
protected:
    void SetUp() override {
        auto desk = Desk::open(makeSmallBook(), test::fixedOptions());
        ASSERT_TRUE(desk) << desk.error().text;
        desk_ = std::move(desk).value();
        chart_ = std::make_unique<SeasonChart>();
        link_ = new ChartDeskLink(*chart_, *desk_);
        chart_->resize(1200, 700);
        chart_->show();
        (void)QTest::qWaitForWindowExposed(chart_.get());
    }
    void TearDown() override {
        chart_.reset();
        desk_.reset();
    }

    QPoint load() {
        for (const auto& target : chart_->layoutNow().targets)
            if (target.key.hit == Hit::Load) return target.rect.center().toPoint();
        ADD_FAILURE() << "no load";
        return {};
    }
    void pressAndDrag(QPoint from, int days) {
        const int px = static_cast<int>(std::lround(days * chart_->dayAxis().dayWidth()));
        QTest::mousePress(chart_.get(), Qt::LeftButton, {}, from);
        QTest::mouseMove(chart_.get(), from + QPoint(px / 2, 0));
        QTest::mouseMove(chart_.get(), from + QPoint(px, 0));
    }
    Day shownDay() const { return desk_->outlook()->find(kBatch)->batch->day; }
    Day savedDay() const { return desk_->snapshot().find(kBatch)->day; }
    Day dayInFile() { return reread(desk_->path()).find(kBatch)->day; }

    std::unique_ptr<Desk> desk_;
    std::unique_ptr<SeasonChart> chart_;
    ChartDeskLink* link_ = nullptr;
};

TEST_F(LinkedChart, ADragPreviewsThenIsSavedAndUndone) {
    const auto from = load();
    pressAndDrag(from, 3);
    EXPECT_EQ(shownDay(), day("2027-06-07"));
    EXPECT_EQ(savedDay(), day("2027-06-04"));
    EXPECT_EQ(dayInFile(), day("2027-06-04"));
    QTest::mouseRelease(chart_.get(), Qt::LeftButton, {}, from);
    // Released over the day it came from: nothing to save.
    EXPECT_EQ(savedDay(), day("2027-06-04"));

    pressAndDrag(from, 3);
    QTest::mouseRelease(
        chart_.get(), Qt::LeftButton, {},
        from + QPoint(static_cast<int>(std::lround(3 * chart_->dayAxis().dayWidth())), 0));
    EXPECT_EQ(dayInFile(), day("2027-06-07"));
    EXPECT_FALSE(desk_->isPreviewing());
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(dayInFile(), day("2027-06-04"));
    EXPECT_EQ(chart_->outlook()->find(kBatch)->batch->day, day("2027-06-04"));
}

TEST_F(LinkedChart, EscLeavesTheBookAlone) {
    pressAndDrag(load(), 5);
    ASSERT_TRUE(desk_->isPreviewing());
    QTest::keyClick(chart_.get(), Qt::Key_Escape);
    EXPECT_FALSE(desk_->isPreviewing());
    EXPECT_EQ(chart_->outlook(), desk_->outlook());
    EXPECT_EQ(dayInFile(), day("2027-06-04"));
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(LinkedChart, AltArrowIsOneUndoStep) {
    chart_->setSelectedBatch(kBatch);
    QTest::keyClick(chart_.get(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(dayInFile(), day("2027-06-05"));
    ASSERT_TRUE(desk_->undo());
    EXPECT_FALSE(desk_->canUndo());
    EXPECT_EQ(dayInFile(), day("2027-06-04"));
}

// The next day's season is derived while the hand is on its way there.
TEST_F(LinkedChart, WhatADragComesToIsThereBefore) {
    const auto from = load();
    const qreal day = chart_->dayAxis().dayWidth();
    QTest::mousePress(chart_.get(), Qt::LeftButton, {}, from);
    int days = 0;
    const bool wasThere = QTest::qWaitFor([&] {
        days = days % 9 + 1;
        QTest::mouseMove(chart_.get(), from + QPoint(static_cast<int>(std::lround(days * day)), 0));
        return desk_->previewsWereThere() > 1;
    });
    EXPECT_TRUE(wasThere);
    EXPECT_EQ(shownDay(), test::day("2027-06-04") + Days{days});
    EXPECT_EQ(dayInFile(), test::day("2027-06-04"));
    QTest::keyClick(chart_.get(), Qt::Key_Escape);
    EXPECT_EQ(chart_->outlook(), desk_->saved());
}

// And so is its picture: what is painted then was laid out before it was asked for.
TEST_F(LinkedChart, ThePictureADragComesToIsLaidOutBefore) {
    const auto from = load();
    const qreal day = chart_->dayAxis().dayWidth();
    QTest::mousePress(chart_.get(), Qt::LeftButton, {}, from);
    int days = 0;
    const bool wasThere = QTest::qWaitFor(
        [&] {
            days = days % 9 + 1;
            QTest::mouseMove(chart_.get(),
                             from + QPoint(static_cast<int>(std::lround(days * day)), 0));
            QTest::qWait(20);
            return chart_->layouts().wereThere() > 1;
        },
        20'000);
    EXPECT_TRUE(wasThere);
    EXPECT_EQ(shownDay(), test::day("2027-06-04") + Days{days});
    QTest::keyClick(chart_.get(), Qt::Key_Escape);
    EXPECT_EQ(chart_->outlook(), desk_->saved());
}

TEST_F(LinkedChart, WhatComesNextIsToldTheWayTheHandGoesFirst) {
    std::vector<ChartWish> told;
    QObject::connect(chart_.get(), &SeasonChart::previewsExpected, chart_.get(),
                     [&](const auto& wishes) { told = wishes; });
    const auto from = load();
    const auto moveTo = [&](qreal days) {
        const int px = static_cast<int>(std::lround(days * chart_->dayAxis().dayWidth()));
        QTest::mouseMove(chart_.get(), from + QPoint(px, 0));
    };
    const auto first = [&] { return told.empty() ? Days{0} : told.front().by; };
    QTest::mousePress(chart_.get(), Qt::LeftButton, {}, from);
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.size() == 4; })) << "either day beside, and on";
    EXPECT_EQ(first(), Days{1});
    EXPECT_EQ(told[1].by, Days{-1});
    EXPECT_EQ(told[2].by, Days{2});
    EXPECT_EQ(told[3].by, Days{3});
    moveTo(2);
    EXPECT_TRUE(QTest::qWaitFor([&] { return first() > Days{2}; }));
    moveTo(1.9);
    EXPECT_TRUE(QTest::qWaitFor([&] { return first() < Days{2}; }));
    QTest::keyClick(chart_.get(), Qt::Key_Escape);
    EXPECT_TRUE(QTest::qWaitFor([&] { return told.empty(); })) << "nothing is to come any more";
    EXPECT_FALSE(desk_->isPreviewing());
}

TEST_F(LinkedChart, AGraftMoreIsOneUndoStepWithItsName) {
    const auto grafts = [&] {
        return desk_->snapshot().all<BatchBar>().of(kBatch.uuid).front()->cells.value;
    };
    const int before = grafts();
    chart_->setSelectedBatch(kBatch);
    QTest::keyClick(chart_.get(), Qt::Key_Plus, Qt::AltModifier);
    EXPECT_EQ(grafts(), before + 1);
    ASSERT_TRUE(desk_->undoName());
    EXPECT_EQ(desk_->undoName()->verb, Verb::SetGrafts);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(grafts(), before);
    EXPECT_FALSE(desk_->canUndo());
}

}  // namespace
}  // namespace tenthday
