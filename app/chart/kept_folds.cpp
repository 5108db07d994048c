#include "chart/kept_folds.h"

namespace tenthday {

void keepFolds(SeasonChart& chart, Settings& settings) {
    const auto kept = settings.chartFolds();
    std::vector<LaneName> lanes;
    for (const auto& text : kept.lanes)
        if (const auto lane = fromToken<LaneName>(text.toStdString())) lanes.push_back(*lane);
    chart.setFolds(lanes, kept.legend);
    QObject::connect(&chart, &SeasonChart::foldsChanged, &chart, [&chart, &settings] {
        Settings::ChartFolds folds{{}, chart.legendFold()};
        for (const auto lane : chart.options().foldedLanes)
            folds.lanes += QString::fromStdString(std::string(token(lane)));
        settings.setChartFolds(folds);
    });
}

}  // namespace tenthday
