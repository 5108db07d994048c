#include <algorithm>

#include "calendar/plain_words.h"
#include "headless/date_options.h"
#include "headless/verb.h"

namespace tenthday {
namespace {

std::string noteOf(const EventDates& dates, const DateQuestion& question) {
    switch (dates.note) {
        case EventNote::None:
            return dates.event == Event::LatestMove ? "before " + plainPart(dates.likely) : "";
        case EventNote::Observed:
            return "observed";
        case EventNote::HeatClamped:
            return "temperature clamped to the measured " +
                   shortest(question.facts[Fact::ColdC]).text + " to " +
                   shortest(question.facts[Fact::NestC]).text + " C";
        case EventNote::QueenMayBeOut:
            return "age unknown: a queen may be out at once";
        case EventNote::NotEvenRipeSafe:
            return "not even day " +
                   std::to_string(static_cast<int>(question.facts[Fact::RipeH] / 24)) +
                   " is safe: cage them in place on day 9, or move them before the "
                   "fragile days; before " +
                   plainPart(dates.likely);
        case EventNote::CagesInPlaceOnly:
            return "cages in place only";
    }
    return {};
}

/// What the nucs cost, and what each other catch rule would: the day of the cells and the day of
/// the catch both count.
std::string nucDays(const BatchDates& dates, const EventDates& caught) {
    const auto daysUntil = [&](Moment moment) {
        return std::to_string(DayWindow{dayOf(dates.transfer), dayOf(moment)}.size());
    };
    std::string text = daysUntil(caught.likely) + " nuc days";
    std::string others;
    for (std::size_t i = 0; i < kTokenCount<CatchRule>; ++i)
        others += (others.empty() ? " (" : ", ") + std::string(token(static_cast<CatchRule>(i))) +
                  " " + daysUntil(dates.catchBy[i]);
    return text + others + ")";
}

Listing listingOf(const BatchDates& dates, const DateQuestion& question) {
    Listing listing{{"event", "day", "earliest", "likely", "latest", "note"}, {}};
    auto events = dates.events;
    std::stable_sort(events.begin(), events.end(),
                     [](const auto& a, const auto& b) { return a.event < b.event; });
    for (const auto& event : events) {
        const auto day = (dayOf(event.likely) - dayOf(dates.graft)).count();
        const auto note =
            event.event == Event::Catch ? nucDays(dates, event) : noteOf(event, question);
        listing.rows.push_back({cell(event.event), cell(static_cast<std::int32_t>(day)),
                                cell(event.earliest), cell(event.likely), cell(event.latest),
                                cell(note)});
    }
    return listing;
}

Answer run(const Call& call) {
    const auto question = readDateQuestion(call.arguments);
    if (!question) return Answer::wrongUse(question.error());
    const auto& [plan, facts] = question.value();
    return call.print(listingOf(datesOf(plan, facts, MatingTable(facts)), question.value()));
}

}  // namespace

const HeadlessVerb& datesVerb() {
    static const HeadlessVerb verb{
        "dates",
        {{}, dateOptions()},
        "--graft TIME | --confined TIME | --sealed-found TIME | --ripe TIME | --virgin TIME\n"
        "                    [--larva-age H | H-H] [--method NAME] [--cells N] [--incubator C]\n"
        "                    [--catch-rule eggs|sealed_brood|age] [--set FACT=VALUE]...",
        "the dates of a batch",
        true,
        run};
    return verb;
}

}  // namespace tenthday
