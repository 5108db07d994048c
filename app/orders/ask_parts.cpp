#include "orders/ask_parts.h"

#include "base/natural_order.h"
#include "screen_text/order_page_text.h"

namespace tenthday {

std::vector<FieldChoice> linesOf(const Snapshot& book) {
    std::vector<FieldChoice> lines;
    for (const auto& line : book.all<Line>()) lines.push_back({plain(line->label), {}});
    return lines;
}

std::vector<FieldChoice> batchChoices(const Outlook& outlook,
                                      const std::vector<Id<Batch>>& likely) {
    auto batches = outlook.batches;
    std::stable_sort(batches.begin(), batches.end(), [&](const auto& a, const auto& b) {
        const auto place = [&](const auto& batch) {
            return std::find(likely.begin(), likely.end(), batch->batch->id) - likely.begin();
        };
        if (place(a) != place(b)) return place(a) < place(b);
        return naturalKey(a->batch->label) < naturalKey(b->batch->label);
    });
    std::vector<FieldChoice> choices;
    for (const auto& batch : batches)
        choices.push_back({order_page_text::batchChoice(plain(batch->batch->label),
                                                        batch->timeline.hold.catchDay),
                           plain(toText(batch->batch->id.uuid))});
    return choices;
}

Result<ChangeSet> named(Result<ChangeSet> changes, Verb verb, const QString& subject) {
    if (!changes) return changes;
    changes.value().verb = verb;
    changes.value().subject = subject.toStdString();
    changes.value().day.reset();
    return changes;
}

}  // namespace tenthday
