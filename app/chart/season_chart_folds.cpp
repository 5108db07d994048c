/// What of the season chart is folded or opened: lanes, the legend, yards.
#include "chart/hit_test.h"
#include "chart/season_chart.h"

namespace tenthday {

void SeasonChart::foldOrUnfold(LaneName lane) {
    auto& folded = options_.foldedLanes;
    if (options_.isFolded(lane))
        folded.erase(std::find(folded.begin(), folded.end(), lane));
    else
        folded.push_back(lane);
    showAxis(axis_, scrollY());
    Q_EMIT foldsChanged();
}

void SeasonChart::setFolds(const std::vector<LaneName>& lanes, bool legend) {
    options_.foldedLanes = lanes;
    options_.legendFolded = legend;
    relayout();
}

void SeasonChart::foldOrUnfoldLegend() {
    const bool folds = !layoutNow().legendFolded;
    options_.legendFolded = folds;
    options_.legendOpened = !folds;
    showAxis(axis_, scrollY());
    Q_EMIT foldsChanged();
}

/// 1 to 5: a lane from the top down, where it is there.
bool SeasonChart::foldKey(int key) {
    const int lane = key - Qt::Key_1;
    if (lane < 0 || lane > static_cast<int>(LaneName::Promise)) return false;
    const TargetKey name{.hit = Hit::LaneName, .index = lane};
    if (findTarget(layoutNow(), name) == nullptr) return false;
    foldOrUnfold(static_cast<LaneName>(lane));
    return true;
}

void SeasonChart::setProposals(const ChartProposalsPtr& proposals) {
    options_.proposals = proposals;
    relayout();
}

void SeasonChart::openOrClose(Id<Yard> yard) {
    auto& open = options_.openYards;
    if (options_.isOpen(yard))
        open.erase(std::find(open.begin(), open.end(), yard));
    else
        open.push_back(yard);
    showAxis(axis_, scrollY());
}

void SeasonChart::openOrCloseYards() {
    if (!shown_) return;
    std::vector<Id<Yard>> all;
    for (const auto& yard : shown_->nucs.yards) all.push_back(yard.yard->id);
    const bool areOpen =
        std::all_of(all.begin(), all.end(), [&](Id<Yard> id) { return options_.isOpen(id); });
    options_.openYards = areOpen ? std::vector<Id<Yard>>{} : all;
    showAxis(axis_, scrollY());
}

}  // namespace tenthday
