#include "chart/chart_desk_link.h"

#include "records/verbs.h"

namespace tenthday {

ChartDeskLink::ChartDeskLink(SeasonChart& chart, Desk& desk)
    : QObject(&chart), chart_(chart), desk_(desk) {
    connect(&desk, &Desk::shown, this, &ChartDeskLink::show);
    connect(&chart, &SeasonChart::previewRequested, this, &ChartDeskLink::preview);
    connect(&chart, &SeasonChart::previewDropped, this, &ChartDeskLink::dropPreview);
    connect(&chart, &SeasonChart::moveRequested, this, &ChartDeskLink::move);
    chart.setOutlook(desk.outlook());
}

void ChartDeskLink::show(const OutlookPtr& outlook, const Changes& changes) {
    if (changes.isPreview())
        chart_.setPreview(outlook);
    else
        chart_.setOutlook(outlook);
}

void ChartDeskLink::preview(Id<Batch> batch, Day day) {
    const auto changes = moveBatch(desk_.snapshot(), batch, day);
    if (!changes) return tell(changes.error());
    if (const auto done = desk_.preview(changes.value()); !done) tell(done.error());
}

void ChartDeskLink::dropPreview() {
    if (const auto done = desk_.preview(std::nullopt); !done) tell(done.error());
}

void ChartDeskLink::move(Id<Batch> batch, Day day) {
    const auto changes = moveBatch(desk_.snapshot(), batch, day);
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
