/// @file paper_book.h  A book in memory that tests fill by import.
#pragma once
#include <string>
#include <string_view>

#include "exchange/export.h"
#include "exchange/import.h"
#include "records/method_catalogue.h"

namespace tenthday::test {

/// Starts with the book's row, the built-in methods and the season 2027, as a new book does.
class PaperBook {
public:
    PaperBook() {
        ChangeSet changes{Verb::MakeBook, "", {}, {}};
        changes.add(Book{{next()}, 1, "Test yards", 1, CatchRule::SealedBrood, {}});
        for (const auto& made : builtInMethods()) {
            changes.add(made.method);
            for (const auto& step : made.steps) changes.add(step);
        }
        snapshot_ = applied(snapshot_, changes).value();
        snapshot_.setToday(Day{date::local_days{date::year{2028} / 6 / 1}});
    }

    /// "" when taken, else the error.
    std::string import(std::string_view kind, std::string_view text) {
        auto changes = importOf(snapshot_, kind, text, [this] { return next(); });
        if (!changes) return changes.error().text;
        changed = changes.value().rows.size();
        auto after = applied(snapshot_, changes.value());
        if (!after) return "not applied: " + after.error().text;
        snapshot_ = std::move(after).value();
        return "";
    }
    [[nodiscard]] std::string text(std::string_view kind) const {
        return render(exportOf(snapshot_, kind), ListingForm::Csv);
    }
    /// Without the ids, for reading.
    [[nodiscard]] std::string bareText(std::string_view kind) const {
        auto listing = exportOf(snapshot_, kind);
        if (listing.columns.front() != "id") return render(listing, ListingForm::Csv);
        listing.columns.erase(listing.columns.begin());
        for (auto& row : listing.rows) row.erase(row.begin());
        return render(listing, ListingForm::Csv);
    }
    [[nodiscard]] const Snapshot& snapshot() const { return snapshot_; }
    void setSnapshot(Snapshot snapshot) { snapshot_ = std::move(snapshot); }
    Uuid next() { return {0x0190000000007000ULL, 0x8000000000000000ULL | ++count_}; }

    std::size_t changed = 0;  ///< rows the last import changed

private:
    Snapshot snapshot_;
    std::uint64_t count_ = 0;
};

}  // namespace tenthday::test
