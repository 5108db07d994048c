#include "records/snapshot.h"

namespace tenthday {

const Book& Snapshot::book() const {
    static const Book none;
    return all<Book>().empty() ? none : **all<Book>().begin();
}

DayWindow Snapshot::season() const {
    if (const auto row = find(season_)) return {row->from, row->until};
    const auto year = date::year_month_day{today_}.year();
    return {Day{date::local_days{year / 1 / 1}}, Day{date::local_days{year / 12 / 31}}};
}

void Snapshot::deriveFacts() {
    Facts facts(book().factsRevision);
    for (const auto& row : all<FactOverride>())
        if (const auto fact = fromToken<Fact>(row->fact))
            (void)facts.set(*fact, row->valueMilli / 1000.0);
    if (!(facts == *facts_)) facts_ = std::make_shared<const Facts>(facts);
}

bool Snapshot::sameContent(const Snapshot& other) const {
    bool same = true;
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        const auto& mine = all<Row>();
        const auto& theirs = other.all<Row>();
        same = same && std::equal(mine.begin(), mine.end(), theirs.begin(), theirs.end(),
                                  [](const auto& a, const auto& b) {
                                      Row copy = *a;
                                      copy.version = b->version;
                                      return copy == *b;
                                  });
    });
    return same;
}

}  // namespace tenthday
