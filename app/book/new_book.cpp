#include "book/new_book.h"

#include "book/new_id.h"
#include "records/method_catalogue.h"

namespace tenthday {

ChangeSet newBookContent(const std::string& label, Day today) {
    ChangeSet content;
    content.verb = Verb::MakeBook;
    content.subject = label;
    Book book;
    book.id = newId<Book>();
    book.label = label;
    book.factsRevision = kNewestFactsRevision;
    content.add(book);
    const auto year = date::year_month_day{today}.year();
    content.add(Season{newId<Season>(), 1, std::to_string(int{year}),
                       Day{date::local_days{year / 3 / 1}}, Day{date::local_days{year / 10 / 31}}});
    for (const auto& [method, steps] : builtInMethods()) {
        content.add(method);
        for (const auto& step : steps) content.add(step);
    }
    return content;
}

}  // namespace tenthday
