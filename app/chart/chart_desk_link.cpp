#include "chart/chart_desk_link.h"

#include "book/new_id.h"

namespace tenthday {

ChartDeskLink::ChartDeskLink(SeasonChart& chart, Desk& desk)
    : QObject(&chart), chart_(chart), desk_(desk) {
    connect(&desk, &Desk::shown, this, &ChartDeskLink::show);
    connect(&chart, &SeasonChart::previewRequested, this, &ChartDeskLink::preview);
    connect(&chart, &SeasonChart::previewDropped, this, &ChartDeskLink::dropPreview);
    connect(&chart, &SeasonChart::wished, this, &ChartDeskLink::save);
    saved_ = desk.outlook();
    chart.setOutlook(saved_);
}

void ChartDeskLink::show(const OutlookPtr& outlook, const Changes& changes) {
    if (changes.isPreview()) return chart_.setPreview(outlook);
    saved_ = outlook;
    chart_.setOutlook(outlook);
}

void ChartDeskLink::preview(const ChartWish& wish) {
    const auto changes = changesOf(*saved_, wish, [] { return idMaker().next(); });
    if (!changes) return tell(changes.error());
    if (const auto done = desk_.preview(changes.value()); !done) tell(done.error());
}

void ChartDeskLink::dropPreview() {
    if (const auto done = desk_.preview(std::nullopt); !done) tell(done.error());
}

void ChartDeskLink::save(const ChartWish& wish) {
    const auto changes = changesOf(*saved_, wish, [] { return idMaker().next(); });
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
