#include "book/new_book.h"

#include "book/new_id.h"
#include "records/method_catalogue.h"

namespace tenthday {
namespace {

date::year yearOf(Day day) { return date::year_month_day{day}.year(); }

/// "2027"; "2027/28" across the new year.
std::string seasonLabel(const DayWindow& season) {
    const int first = int{yearOf(season.first)};
    const int last = int{yearOf(season.last)};
    if (first == last) return std::to_string(first);
    const auto text = std::to_string(last % 100);
    return std::to_string(first) + "/" + (text.size() < 2 ? "0" + text : text);
}

}  // namespace

BookPlan planFor(const std::string& label, Day today, Hemisphere hemisphere) {
    const auto year = yearOf(today);
    const auto day = [](const date::year_month_day& ymd) { return Day{date::local_days{ymd}}; };
    if (hemisphere == Hemisphere::North) {
        const auto runs = today > day(year / 10 / 31) ? year + date::years{1} : year;
        return {label, hemisphere, {day(runs / 3 / 1), day(runs / 10 / 31)}, {}};
    }
    const auto begins = today <= day(year / 4 / 30) ? year - date::years{1} : year;
    return {label, hemisphere, {day(begins / 9 / 1), day((begins + date::years{1}) / 4 / 30)}, {}};
}

ChangeSet newBookContent(const BookPlan& plan) {
    ChangeSet content;
    content.verb = Verb::MakeBook;
    content.subject = plan.label;
    Book book;
    book.id = newId<Book>();
    book.label = plan.label;
    book.factsRevision = kNewestFactsRevision;
    content.add(book);
    content.add(
        Season{newId<Season>(), 1, seasonLabel(plan.season), plan.season.first, plan.season.last});
    if (!plan.firstYard.empty()) {
        Yard yard;
        yard.id = newId<Yard>();
        yard.label = plan.firstYard;
        yard.roles = "mating builder donor drone";
        yard.hemisphere = plan.hemisphere;
        content.add(yard);
    }
    for (const auto& [method, steps] : builtInMethods()) {
        content.add(method);
        for (const auto& step : steps) content.add(step);
    }
    return content;
}

}  // namespace tenthday
