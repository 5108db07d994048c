#include "book/book_file.h"
#include "book/new_id.h"
#include "exchange/field_text.h"
#include "headless/optional_day.h"
#include "planning/adopt.h"
#include "planning/ways.h"

namespace tenthday {
namespace {

constexpr std::string_view kFrom = "--from";
constexpr std::string_view kTo = "--to";
constexpr std::string_view kHours = "--hours";
constexpr std::string_view kKeep = "--keep";
constexpr std::string_view kWays = "--ways";
constexpr std::string_view kSums = "--sums";

/// Minutes of work a day.
Result<std::int32_t> hoursOption(const std::string& text) {
    constexpr std::int32_t kMost = 240;
    Tenths hours;
    if (readField(text, hours) || hours.value < 1 || hours.value > kMost)
        return optionError(kHours, "hours a day from 0.1 to 24 are needed, not " + inQuotes(text));
    return hours.value * 6;
}

Result<PlanQuestion> questionOf(const Arguments& arguments) {
    PlanQuestion question;
    const auto from = optionalDay(arguments, kFrom);
    if (!from) return from.error();
    const auto to = optionalDay(arguments, kTo);
    if (!to) return to.error();
    question.grafts.first = from.value().value_or(question.grafts.first);
    question.grafts.last = to.value().value_or(question.grafts.last);
    if (question.grafts.isEmpty()) return optionError(kTo, "lies before --from");
    if (const auto text = arguments.value(kHours)) {
        const auto minutes = hoursOption(*text);
        if (!minutes) return minutes.error();
        question.mostMinutesADay = minutes.value();
    }
    const int asked = arguments.has(kKeep) + arguments.has(kWays) + arguments.has(kSums);
    if (asked > 1) return Error{"only one of --keep, --ways and --sums can be asked for"};
    return question;
}

/// "Heath 12; Moor 5"
class Joined {
public:
    void add(const std::string& part) { text_ += (text_.empty() ? "" : "; ") + part; }
    [[nodiscard]] const std::string& text() const { return text_; }

private:
    std::string text_;
};

std::string buildersOf(const Snapshot& snapshot, const ProposedBar& bar) {
    Joined text;
    for (const auto& builder : bar.builders)
        if (const auto row = builder ? snapshot.find(*builder) : nullptr) text.add(row->label);
    return text.text();
}

std::string yardsOf(const Snapshot& snapshot, const ProposedBatch& batch) {
    Joined text;
    for (const auto& [yard, cells] : batch.shares)
        text.add(snapshot.find(yard)->label + " " + std::to_string(cells));
    return text.text();
}

std::string ordersOf(const Snapshot& snapshot, const ProposedBatch& batch) {
    Joined text;
    for (const auto& served : batch.orders)
        text.add(snapshot.find(served.order)->label + " " + decimal(served.count, 1).text);
    return text.text();
}

/// A line for each bar; cells are the batch's by the bar's part of its grafts.
Listing batchesOf(const Snapshot& snapshot, const PlanAnswer& answer) {
    Listing listing{
        {"graft", "bar", "breeder", "builder", "grafts", "cells", "yard", "order", "ready"}, {}};
    for (const auto& batch : answer.batches)
        for (std::size_t i = 0; i < batch.bars.size(); ++i) {
            const auto& bar = batch.bars[i];
            const auto breeder = bar.breeder ? snapshot.find(*bar.breeder) : nullptr;
            listing.rows.push_back({cell(batch.graft), cell(static_cast<std::int32_t>(i) + 1),
                                    cell(breeder ? breeder->label : std::string()),
                                    cell(buildersOf(snapshot, bar)), cell(bar.grafts),
                                    decimal(batch.cells * bar.grafts / batch.grafts(), 1),
                                    cell(yardsOf(snapshot, batch)), cell(ordersOf(snapshot, batch)),
                                    cell(batch.ready)});
        }
    return listing;
}

Listing sumsOf(const Snapshot& snapshot, const PlanAnswer& answer) {
    Listing listing{{"what", "order", "before", "after"}, {}};
    const auto add = [&](const char* what, const std::string& order, const ListingCell& before,
                         const ListingCell& after) {
        listing.rows.push_back({cell(std::string(what)), cell(order), before, after});
    };
    const auto& before = answer.before;
    const auto& after = answer.after;
    add("graft_days", "", cell(before.graftDays), cell(after.graftDays));
    add("grafts", "", cell(before.grafts), cell(after.grafts));
    add("trips", "", cell(before.trips), cell(after.trips));
    add("nuc_days", "", cell(before.nucDays), cell(after.nucDays));
    add("spare_queens", "", decimal(before.spareQueens, 1), decimal(after.spareQueens, 1));
    for (std::size_t i = 0; i < after.orders.size() && i < before.orders.size(); ++i)
        add("chance", snapshot.find(after.orders[i].order)->label,
            decimal(before.orders[i].chance * 100, 1), decimal(after.orders[i].chance * 100, 1));
    for (const auto& lacking : answer.shortOf) {
        const auto& label = snapshot.find(lacking.order)->label;
        add("short", label, ListingCell{}, cell(lacking.lacking));
        add("must_be", label, ListingCell{}, decimal(lacking.wanted * 100, 1));
    }
    add("status", "", ListingCell{}, cell(answer.status));
    add("least_graft_days", "", ListingCell{}, cell(answer.leastGraftDays));
    add("within_graft_days", "", ListingCell{}, cell(answer.graftDaysWithin));
    add("within_grafts", "", ListingCell{}, cell(answer.graftsWithin));
    return listing;
}

/// What a part of a way is about.
std::string subjectOf(const Snapshot& snapshot, const WayPart& part) {
    if (part.where) return std::string(token(*part.where));
    if (part.order) return snapshot.find(*part.order)->label;
    return {};
}

Listing waysOf(const Snapshot& snapshot, const std::vector<WayToFix>& ways) {
    Listing listing{{"way", "kind", "fixes", "amount", "subject", "from"}, {}};
    std::int32_t number = 0;
    for (const auto& way : ways) {
        ++number;
        for (const auto& part : way.parts) {
            const auto day = part.from ? part.from : part.due;
            listing.rows.push_back({cell(number), cell(part.kind), yesNo(way.fixes),
                                    way.fixes ? cell(part.amount) : ListingCell{},
                                    cell(subjectOf(snapshot, part)), cell(day)});
        }
    }
    return listing;
}

/// Looked at as it is in the book that is open, and written as one edit.
Answer keep(const Call& call, const PlanQuestion& question, std::optional<Day> day) {
    OpenOptions options;
    options.clock = call.clock;
    const auto book = BookFile::open(QString::fromStdString(call.arguments.operand(0)), options);
    if (!book) return Answer::failed(book.error());
    if (book.value()->isReadOnly())
        return Answer::failed({call.arguments.operand(0) + ": is read only; nothing was changed"});
    const auto snapshot = readSeasonWithRates(*book.value(), day);
    if (!snapshot) return Answer::failed(snapshot.error());
    OutlookMemo memo;
    const auto answer = planSeason(*outlookOf(snapshot.value(), memo), question);
    if (!answer) return Answer::failed(answer.error());
    const auto changes =
        adopt(snapshot.value(), answer.value().batches, [] { return idMaker().next(); });
    if (!changes) return Answer::failed(changes.error());
    if (!changes.value().isEmpty()) {
        if (auto kept = book.value()->backUp(); !kept) return Answer::failed(kept.error());
        if (auto kept = book.value()->write(changes.value()); !kept)
            return Answer::failed(kept.error());
    }
    return call.print(batchesOf(snapshot.value(), answer.value()));
}

Answer run(const Call& call) {
    const auto question = questionOf(call.arguments);
    if (!question) return Answer::wrongUse(question.error());
    const auto day =
        call.arguments.has(kFrom) ? std::optional(question.value().grafts.first) : std::nullopt;
    if (call.arguments.has(kKeep)) return keep(call, question.value(), day);
    const auto outlook = readOutlookWithRates(call, day);
    if (!outlook) return Answer::failed(outlook.error());
    const auto& snapshot = outlook.value()->snapshot;
    if (call.arguments.has(kWays)) {
        const auto ways = waysToFix(*outlook.value(), question.value());
        return ways ? call.print(waysOf(snapshot, ways.value())) : Answer::failed(ways.error());
    }
    const auto answer = planSeason(*outlook.value(), question.value());
    if (!answer) return Answer::failed(answer.error());
    return call.print(call.arguments.has(kSums) ? sumsOf(snapshot, answer.value())
                                                : batchesOf(snapshot, answer.value()));
}

}  // namespace

const HeadlessVerb& planVerb() {
    static const HeadlessVerb verb{
        "plan",
        {{"BOOK"}, {{kFrom}, {kTo}, {kHours}, {kKeep, false}, {kWays, false}, {kSums, false}}},
        "BOOK [--from DAY] [--to DAY] [--hours N] [--keep | --ways | --sums]",
        "what to graft, when and in what, to have what is ordered; --keep takes it over",
        true,
        run};
    return verb;
}

}  // namespace tenthday
