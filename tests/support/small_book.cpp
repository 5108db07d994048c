#include "support/small_book.h"

namespace tenthday::test {

ChangeSet smallBookRows() {
    ChangeSet rows;
    rows.verb = Verb::MakeBook;
    rows.add(Book{.id = id<Book>(1), .label = "Alder Lane", .today = {}});
    rows.add(Season{id<Season>(1), 1, "2027", day("2027-04-01"), day("2027-09-30")});
    rows.add(Yard{.id = kYard,
                  .label = "Mill",
                  .roles = "mating builder",
                  .frostDay = {},
                  .dronesOutDay = {},
                  .note = {}});
    rows.add(Box{kBox, 1, "12", ""});
    rows.add(BoxStay{id<BoxStay>(1), 1, kBox, kYard, day("2027-04-01")});
    rows.add(BoxLayout{kLayout, 1, kBox, "3+3", day("2027-04-01")});
    rows.add(NucSide{kSideA, 1, kLayout, "A", Frames{3}});
    rows.add(NucSide{kSideB, 1, kLayout, "B", Frames{3}});
    rows.add(Builder{.id = kBuilder,
                     .label = "North box",
                     .yard = kYard,
                     .openRoom = {},
                     .sealedRoom = {},
                     .from = day("2027-04-01"),
                     .until = {},
                     .note = {}});
    rows.add(Method{kMethod, 1, "our way"});
    rows.add(Step{id<Step>(1), 1, kMethod, 1, BuilderKind::StarterFinisher, 0, 240, 1});
    rows.add(Queen{.id = kQueen,
                   .label = "Q7",
                   .year = 2025,
                   .mother = {},
                   .line = {},
                   .breederFrom = day("2026-05-01"),
                   .breederUntil = {},
                   .note = {}});
    rows.add(Batch{.id = kBatch,
                   .label = "1",
                   .day = day("2027-06-04"),
                   .hour = Hour{14},
                   .larvaFromH = {},
                   .larvaToH = {},
                   .method = kMethod,
                   .catchRule = {},
                   .note = {}});
    rows.add(BatchBar{id<BatchBar>(1), 1, kBatch, 1, kQueen, Cells{20}});
    return rows;
}

Snapshot smallBook() {
    Snapshot empty;
    empty.setToday(day("2027-06-01"));
    empty.setSeason(id<Season>(1));
    auto book = applied(empty, smallBookRows());
    if (!book) throw std::logic_error(book.error().text);
    return std::move(book).value();
}

}  // namespace tenthday::test
