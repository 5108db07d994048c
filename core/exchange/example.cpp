#include "exchange/example.h"

#include <array>
#include <cstdlib>

#include "exchange/import.h"
#include "exchange/kinds.h"
#include "records/method_catalogue.h"
#include "tenthday_core_embedded.h"

namespace tenthday {
namespace {

struct ExampleFile {
    std::string_view kind;
    std::string_view (*text)();
};
constexpr std::array kFiles{ExampleFile{"seasons", embedded::example_seasons},
                            ExampleFile{"yards", embedded::example_yards},
                            ExampleFile{"boxes", embedded::example_boxes},
                            ExampleFile{"stockings", embedded::example_stockings},
                            ExampleFile{"builders", embedded::example_builders},
                            ExampleFile{"makeups", embedded::example_makeups},
                            ExampleFile{"buildernotes", embedded::example_buildernotes},
                            ExampleFile{"queens", embedded::example_queens},
                            ExampleFile{"batches", embedded::example_batches},
                            ExampleFile{"bars", embedded::example_bars},
                            ExampleFile{"loads", embedded::example_loads},
                            ExampleFile{"shares", embedded::example_shares},
                            ExampleFile{"placements", embedded::example_placements},
                            ExampleFile{"outcomes", embedded::example_outcomes},
                            ExampleFile{"daysoff", embedded::example_daysoff},
                            ExampleFile{"drones", embedded::example_drones},
                            ExampleFile{"orders", embedded::example_orders},
                            ExampleFile{"orderterms", embedded::example_orderterms},
                            ExampleFile{"earmarks", embedded::example_earmarks},
                            ExampleFile{"deliveries", embedded::example_deliveries},
                            ExampleFile{"promisemoves", embedded::example_promisemoves},
                            ExampleFile{"weather", embedded::example_weather}};

/// Ids in the files end in small numbers under other heads; these are for rows that have none
/// there: the book, lines, and what a line of boxes makes.
class FixedIds {
public:
    Uuid operator()() { return {0x0196000000007000ULL, 0x8F00000000000000ULL | ++count_}; }

private:
    std::uint64_t count_ = 0;
};

ChangeSet bookAndMethods(const Uuid& id) {
    ChangeSet content{Verb::MakeBook, "Wrenfold queens", {}, {}};
    content.add(Book{{id},
                     1,
                     content.subject,
                     kNewestFactsRevision,
                     CatchRule::SealedBrood,
                     dayFromText("2027-06-03")});
    for (const auto& made : builtInMethods()) {
        content.add(made.method);
        for (const auto& step : made.steps) content.add(step);
    }
    return content;
}

/// The files are part of the program: one that is refused is a mistake of ours.
template <class T>
T sound(Result<T> result) {
    if (!result) std::abort();
    return std::move(result).value();
}

}  // namespace

ChangeSet exampleContent() {
    FixedIds ids;
    auto content = bookAndMethods(ids());
    auto snapshot = sound(applied(Snapshot{}, content));
    snapshot.setToday(*snapshot.book().today);
    for (const auto& file : kFiles) {
        const auto changes =
            sound(importOf(snapshot, file.kind, file.text(), [&] { return ids(); }));
        snapshot = sound(applied(snapshot, changes));
        content.rows.insert(content.rows.end(), changes.rows.begin(), changes.rows.end());
    }
    return content;
}

}  // namespace tenthday
