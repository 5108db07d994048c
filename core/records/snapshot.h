/// @file snapshot.h  Everything known at one moment, immutable: records, facts, today.
#pragma once
#include <memory>
#include <set>
#include <string>
#include <tuple>

#include "calendar/window.h"
#include "facts/facts.h"
#include "records/columns.h"
#include "records/table.h"

namespace tenthday {

struct EarlierOutcomes;  // earlier_outcomes.h

/// Days before a season's first day from which batches are read with it: their queens may still
/// sit in its nucs.
inline constexpr Days kLeadIn{60};

/// A copy costs a few pointers; an edit makes a new one (see ChangeSet). Rows are shared.
/// Holds the lasting things whole and, of batches and what hangs on them, one season's.
class Snapshot {
public:
    template <class Row>
    [[nodiscard]] const Table<Row>& all() const {
        return std::get<Table<Row>>(tables_);
    }
    template <class Row>
    void setAll(Table<Row> table) {
        std::get<Table<Row>>(tables_) = std::move(table);
        if constexpr (std::is_same_v<Row, Book> || std::is_same_v<Row, FactOverride>) deriveFacts();
    }
    /// The row, or null.
    template <class Row>
    [[nodiscard]] Ptr<Row> find(Id<Row> id) const {
        return all<Row>().find(id);
    }

    /// The book's own row. Every snapshot of a book has one; a bare snapshot gives defaults.
    [[nodiscard]] const Book& book() const;
    /// The season shown. A bare snapshot gives the calendar year of today.
    [[nodiscard]] DayWindow season() const;
    /// Days on which the batches of the season shown start: it, and kLeadIn before. Others are kept
    /// in the book, and not shown.
    [[nodiscard]] DayWindow startDays() const { return {season().first - kLeadIn, season().last}; }
    /// Labels of batches of other seasons: a label is given once in a book.
    [[nodiscard]] bool isLabelOfOtherSeason(const std::string& label) const {
        return otherLabels_ && otherLabels_->contains(label);
    }
    void setLabelsOfOtherSeasons(std::set<std::string> labels) {
        otherLabels_ = std::make_shared<const std::set<std::string>>(std::move(labels));
    }
    /// What batches of earlier seasons say of the rates of losses; null where that was not read.
    [[nodiscard]] const std::shared_ptr<const EarlierOutcomes>& earlier() const { return earlier_; }
    void setEarlier(std::shared_ptr<const EarlierOutcomes> outcomes) {
        earlier_ = std::move(outcomes);
    }
    [[nodiscard]] Id<Season> seasonId() const { return season_; }
    void setSeason(Id<Season> id) { season_ = id; }

    /// Trade numbers in force: the book's revision with its overrides.
    [[nodiscard]] const Facts& facts() const { return *facts_; }
    /// Equal pointers mean equal facts.
    [[nodiscard]] const std::shared_ptr<const Facts>& factsPtr() const { return facts_; }

    /// The day it is; comes from outside. With a day only, the hour meant is 12:00.
    [[nodiscard]] Day today() const { return today_; }
    void setToday(Day day) { today_ = day; }

    /// Same rows but for their versions.
    [[nodiscard]] bool sameContent(const Snapshot& other) const;

private:
    void deriveFacts();

    template <class List>
    struct TablesOf;
    template <class... Rows>
    struct TablesOf<RowList<Rows...>> {
        using type = std::tuple<Table<Rows>...>;
    };
    TablesOf<AllRows>::type tables_;
    std::shared_ptr<const std::set<std::string>> otherLabels_;
    std::shared_ptr<const EarlierOutcomes> earlier_;
    std::shared_ptr<const Facts> facts_ = std::make_shared<const Facts>();
    Id<Season> season_;
    Day today_{date::local_days{date::year{2027} / 1 / 1}};
};

/// The row of this label, or null. Labels are unique per kind.
template <class Row>
[[nodiscard]] Ptr<Row> findByLabel(const Snapshot& snapshot, std::string_view label) {
    for (const auto& row : snapshot.all<Row>())
        if (row->label == label) return row;
    return nullptr;
}

}  // namespace tenthday
