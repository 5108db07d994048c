#include "headless/verb.h"
#include "tasks/week.h"

namespace tenthday {
namespace {

Listing listingOf(const Outlook& outlook, IsoWeek week) {
    Listing listing{{"row", "day", "yard", "task", "subject", "count", "must", "done"}, {}};
    for (const auto& [number, task] : ofWeek(tasksOf(outlook), week)) {
        const auto yard = task.yard ? outlook.snapshot.find(*task.yard) : nullptr;
        listing.rows.push_back({cell(number), cell(task.day),
                                yard ? cell(yard->label) : ListingCell{}, cell(task.key.rule),
                                cell(task.subjectLabel),
                                task.count > 0 ? cell(task.count) : ListingCell{}, yesNo(task.must),
                                yesNo(task.done.has_value())});
    }
    return listing;
}

Answer run(const Call& call) {
    const auto week = weekOption(call.arguments);
    if (!week) return Answer::wrongUse(week.error());
    const auto outlook = readOutlook(call, daysOf(week.value()).last);
    if (!outlook) return Answer::failed(outlook.error());
    return call.print(listingOf(*outlook.value(), week.value()));
}

}  // namespace

const HeadlessVerb& tasksVerb() {
    static const HeadlessVerb verb{"tasks",
                                   {{"BOOK"}, {{"--week"}}},
                                   "BOOK --week YYYY-Www",
                                   "the tasks of a week, in the order of its sheet",
                                   true,
                                   run};
    return verb;
}

}  // namespace tenthday
