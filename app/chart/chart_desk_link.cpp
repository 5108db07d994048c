#include "chart/chart_desk_link.h"

#include "book/new_id.h"

namespace tenthday {

ChartDeskLink::ChartDeskLink(SeasonChart& chart, Desk& desk)
    : QObject(&chart), chart_(chart), desk_(desk) {
    connect(&desk, &Desk::shown, this, &ChartDeskLink::show);
    connect(&chart, &SeasonChart::previewRequested, this, &ChartDeskLink::preview);
    connect(&chart, &SeasonChart::previewsExpected, this, &ChartDeskLink::expect);
    connect(&desk, &Desk::expectedIsThere, this, &ChartDeskLink::giveNext);
    connect(&chart, &SeasonChart::frameEnded, this, [this] {
        if (const auto edits = std::exchange(afterFrame_, std::nullopt)) desk_.expect(*edits);
    });
    connect(&chart, &SeasonChart::previewDropped, this, &ChartDeskLink::dropPreview);
    connect(&chart, &SeasonChart::wished, this, &ChartDeskLink::save);
    saved_ = desk.outlook();
    chart.setOutlook(saved_);
}

void ChartDeskLink::show(const OutlookPtr& outlook, const Changes& changes) {
    if (changes.isPreview()) return chart_.setPreview(outlook);
    saved_ = outlook;
    made_.clear();
    next_.reset();
    afterFrame_.reset();
    chart_.setOutlook(outlook);
}

Result<ChangeSet> ChartDeskLink::changesOf(const ChartWish& wish) {
    constexpr std::size_t kMostMade = 12;
    for (const auto& [made, changes] : made_)
        if (made == wish) return changes;
    auto changes = tenthday::changesOf(*saved_, wish, [] { return idMaker().next(); });
    if (!changes) return changes;
    made_.emplace_back(wish, changes.value());
    if (made_.size() > kMostMade) made_.pop_front();
    return changes;
}

void ChartDeskLink::preview(const ChartWish& wish) {
    const auto changes = changesOf(wish);
    if (!changes) return tell(changes.error());
    if (const auto done = desk_.preview(changes.value()); !done) tell(done.error());
}

void ChartDeskLink::expect(const std::vector<ChartWish>& wishes) {
    std::vector<ChangeSet> edits;
    next_.reset();
    for (const auto& wish : wishes)
        if (const auto changes = changesOf(wish)) {
            edits.push_back(changes.value());
            if (&wish == &wishes.front()) next_ = changes.value();
        }
    afterFrame_.reset();
    giveNext();
    // Where the next one is there already, cores are for its layout and this picture first.
    if (edits.empty() || next_)
        desk_.expect(edits);
    else
        afterFrame_ = std::move(edits);
}

void ChartDeskLink::giveNext() {
    const auto season = next_ ? desk_.expected(*next_) : nullptr;
    if (!season) return;
    next_.reset();
    chart_.expectPreview(season);
}

void ChartDeskLink::dropPreview() {
    if (const auto done = desk_.preview(std::nullopt); !done) tell(done.error());
}

void ChartDeskLink::save(const ChartWish& wish) {
    const auto changes = changesOf(wish);
    const auto done = changes ? desk_.apply(changes.value()) : Result<void>(changes.error());
    if (done) return;
    dropPreview();
    tell(done.error());
}

void ChartDeskLink::tell(const Error& error) {
    const auto why = QString::fromStdString(error.text);
    chart_.showRefusal(why);
    Q_EMIT refused(why);
}

}  // namespace tenthday
