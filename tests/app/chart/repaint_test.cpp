// What stands in the window after only changes were painted must be what a whole painting gives.
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QPaintEvent>
#include <QPainter>
#include <QtTest/QTest>

#include "app/chart/hand_scene.h"
#include "chart/season_chart.h"

namespace tenthday::test {
namespace {

/// Where the chart was asked to paint itself.
class Asked : public QObject {
public:
    QRegion region;
    bool isOn = true;
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (isOn && event->type() == QEvent::Paint)
            region += static_cast<QPaintEvent*>(event)->region();
        return QObject::eventFilter(watched, event);
    }
};

class Repaint : public ::testing::Test {
protected:
    Repaint() : saved_(largeSeason({60, 300, 2})), shown_(outlookOf(saved_, memo_)) {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        chart_.installEventFilter(&asked_);
        window_.resize(1366, 768);
        chart_.setGeometry(window_.rect());
        chart_.setOutlook(shown_);
        window_.show();
        (void)QTest::qWaitForWindowExposed(&window_);
        settle();
        picture_ = whole();
    }
    ~Repaint() override { QLocale::setDefault(QLocale::c()); }

    static void settle() {
        for (int i = 0; i < 4; ++i) QCoreApplication::processEvents();
    }
    QImage whole() {
        asked_.isOn = false;
        auto image = chart_.grab().toImage();
        asked_.isOn = true;
        asked_.region = {};
        return image;
    }
    /// Paints into the picture what was asked for, and compares.
    void expectWhole(const std::string& what) {
        settle();
        const auto region = asked_.region;
        const auto now = whole();
        if (!region.isEmpty() && !(QRegion(chart_.rect()) - region).isEmpty()) ++inPart_;
        {
            QPainter painter(&picture_);
            for (const auto& piece : region) painter.drawImage(piece.topLeft(), now, piece);
        }
        EXPECT_EQ(picture_, now) << what;
        picture_ = now;
    }
    void drag(Id<Batch> batch, int by) {
        const auto changes = moveBatch(saved_, batch, saved_.find(batch)->day + Days{by});
        if (!changes) return;
        if (const auto next = applied(saved_, changes.value()))
            chart_.setPreview(outlookOf(next.value(), memo_));
    }
    std::string doOne(Hand& hand) {
        const auto batch = largeSeasonBatch(42 + hand.one(18));
        switch (hand.one(9)) {
            case 0:
                chart_.setSelectedBatch(batch);
                return "select";
            case 1:
                chart_.setChosenDay(shown_->snapshot.today() + Days{hand.one(40)});
                return "choose a day";
            case 2:
                QTest::keyClick(&chart_, Qt::Key_B,
                                hand.one(2) == 0 ? Qt::NoModifier : Qt::ShiftModifier);
                return "lanes out of sight";
            case 3:
                chart_.openOrCloseYards();
                return "yards";
            case 4:
                chart_.setPreview(nullptr);
                return "drop";
            case 5:
                chart_.setLook(hand.one(2) == 0 ? Look::Light : Look::Dark);
                return "look";
            default:
                drag(batch, hand.one(6) - 2);
                return "drag";
        }
    }

    OutlookMemo memo_;
    Snapshot saved_;
    OutlookPtr shown_;
    Asked asked_;
    QWidget window_;
    SeasonChart chart_{&window_};
    QImage picture_;
    int inPart_ = 0;
};

TEST_F(Repaint, OfChangesGivesWhatAWholeOneGives) {
    Hand hand(7);
    std::string done;
    for (int step = 0; step < 40 && !HasFailure(); ++step) {
        done += doOne(hand) + ", ";
        expectWhole(done);
    }
    EXPECT_GT(inPart_, 8);
}

TEST_F(Repaint, OfADragLeavesMostAsItStands) {
    const auto batch = largeSeasonBatch(45);
    chart_.setSelectedBatch(batch);
    drag(batch, 1);
    expectWhole("the first day");
    inPart_ = 0;
    for (const int by : {2, 3, 2, 1}) {
        drag(batch, by);
        expectWhole("dragged by " + std::to_string(by));
    }
    EXPECT_GE(inPart_, 3);
}

}  // namespace
}  // namespace tenthday::test
