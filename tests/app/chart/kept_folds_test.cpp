// What of the chart is folded is found folded at the next start.
#include "chart/kept_folds.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <QTest>

#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

class KeptFolds : public ::testing::Test {
protected:
    Settings settings() {
        return Settings(std::make_unique<QSettings>(path(), QSettings::IniFormat));
    }
    QString path() const { return folder_.filePath(QStringLiteral("s.ini")); }

private:
    QTemporaryDir folder_;
};

TEST_F(KeptFolds, AreThereAtTheNextStart) {
    {
        auto kept = settings();
        SeasonChart chart;
        chart.resize(1366, 768);
        keepFolds(chart, kept);
        chart.setOutlook(sampleOutlook());
        chart.show();
        (void)QTest::qWaitForWindowExposed(&chart);
        EXPECT_TRUE(chart.options().foldedLanes.empty());
        for (const auto& target : chart.layoutNow().targets)
            if (target.key.hit == Hit::LaneName &&
                target.key.index == static_cast<int>(LaneName::Builders)) {
                QTest::mouseClick(&chart, Qt::LeftButton, {}, target.rect.center().toPoint());
                break;
            }
        QTest::keyClick(&chart, Qt::Key_L);
    }
    auto kept = settings();
    SeasonChart chart;
    keepFolds(chart, kept);
    chart.setOutlook(sampleOutlook());
    EXPECT_EQ(chart.options().foldedLanes, std::vector{LaneName::Builders});
    EXPECT_TRUE(chart.options().legendFolded);
}

TEST_F(KeptFolds, ALegendOpenedByHandIsOpenAtTheNextStartHoweverLittleRoomThereIs) {
    {
        auto kept = settings();
        SeasonChart chart;
        chart.resize(1366, 470);
        keepFolds(chart, kept);
        chart.setOutlook(sampleOutlook());
        chart.show();
        (void)QTest::qWaitForWindowExposed(&chart);
        ASSERT_TRUE(chart.layoutNow().legendFolded);
        QTest::keyClick(&chart, Qt::Key_L);
    }
    auto kept = settings();
    SeasonChart chart;
    chart.resize(1366, 470);
    keepFolds(chart, kept);
    chart.setOutlook(sampleOutlook());
    EXPECT_FALSE(chart.layoutNow().legendFolded);
    EXPECT_EQ(chart.legendFold(), LegendFold::Opened);
}

TEST_F(KeptFolds, SettingsFromBeforeAreRead) {
    const auto after = [&](bool folded) {
        QSettings(path(), QSettings::IniFormat)
            .setValue(QStringLiteral("chart/folded_legend"), folded);
        return settings().chartFolds().legend;
    };
    EXPECT_EQ(after(true), LegendFold::Folded);
    EXPECT_EQ(after(false), LegendFold::ByRoom);
}

TEST_F(KeptFolds, ALaneOfAnotherVersionIsPassedOver) {
    settings().setChartFolds({{QStringLiteral("moon"), QStringLiteral("queens")}, {}});
    auto kept = settings();
    SeasonChart chart;
    keepFolds(chart, kept);
    EXPECT_EQ(chart.options().foldedLanes, std::vector{LaneName::Queens});
    EXPECT_FALSE(chart.options().legendFolded);
}

}  // namespace
}  // namespace tenthday::test
