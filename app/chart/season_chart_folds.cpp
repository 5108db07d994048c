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

void SeasonChart::setFolds(const std::vector<LaneName>& lanes, LegendFold legend) {
    options_.foldedLanes = lanes;
    options_.legendFolded = legend == LegendFold::Folded;
    options_.legendOpened = legend == LegendFold::Opened;
    relayout();
}

LegendFold SeasonChart::legendFold() const {
    return options_.legendFolded   ? LegendFold::Folded
           : options_.legendOpened ? LegendFold::Opened
                                   : LegendFold::ByRoom;
}

void SeasonChart::foldOrUnfoldLegend() {
    const bool folds = !layoutNow().legendFolded;
    options_.legendFolded = options_.legendOpened = false;
    relayout();
    // What room would choose anyway is left to it.
    if (layoutNow().legendFolded != folds)
        (folds ? options_.legendFolded : options_.legendOpened) = true;
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

// --- lanes in sight ---------------------------------------------------------------------------

void SeasonChart::scrollLanes(int by) {
    constexpr qreal kKept = 40;  ///< of what was seen before stays in sight
    if (layoutNow().contentHeight <= layoutNow().plot.height()) return;  // all are in sight
    showAxis(axis_, scrollY() + by * std::max(kKept, layoutNow().plot.height() - kKept));
}

/// As little as brings it into the plot: its upper edge, where it is higher.
void SeasonChart::scrollTo(const QRectF& rect) {
    constexpr qreal kAir = 12;
    const auto plot = layoutNow().plot;
    const qreal below = rect.bottom() + kAir - plot.bottom();
    const qreal above = rect.top() - kAir - plot.top();
    if (above < 0)
        showAxis(axis_, scrollY() + above);
    else if (below > 0)
        showAxis(axis_, scrollY() + std::min(below, above));
}

void SeasonChart::bringIntoSight(const TargetKey& key) {
    if (const auto* target = findTarget(layoutNow(), key)) scrollTo(target->rect);
}

void SeasonChart::bringIntoSight(const TroublePlace& place) {
    if (const auto lane = place.lane(); lane && options_.isFolded(*lane)) foldOrUnfold(*lane);
    std::optional<QRectF> first;
    for (const auto& target : layoutNow().targets) {
        if (!place.is(target.key)) continue;
        if (layoutNow().plot.contains(target.rect.center())) return;
        if (!first) first = target.rect;
    }
    if (first) scrollTo(*first);
}

}  // namespace tenthday
