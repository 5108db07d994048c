#include "records/uses.h"

#include <array>
#include <unordered_set>

#include "records/references.h"

namespace tenthday {
namespace {

/// The member by which a row is a part of another; most rows are none.
template <class Row>
struct PartOf {
    static constexpr std::nullptr_t whole = nullptr;
};
template <>
struct PartOf<BoxStay> {
    static constexpr auto whole = &BoxStay::box;
};
template <>
struct PartOf<BoxLayout> {
    static constexpr auto whole = &BoxLayout::box;
};
template <>
struct PartOf<NucSide> {
    static constexpr auto whole = &NucSide::layout;
};
template <>
struct PartOf<Step> {
    static constexpr auto whole = &Step::method;
};
template <>
struct PartOf<QueenNote> {
    static constexpr auto whole = &QueenNote::queen;
};
template <>
struct PartOf<CaughtQueen> {
    static constexpr auto whole = &CaughtQueen::queen;
};
template <>
struct PartOf<QueenStay> {
    static constexpr auto whole = &QueenStay::queen;
};
template <>
struct PartOf<DriveTime> {
    static constexpr auto whole = &DriveTime::to;
    static constexpr auto other = &DriveTime::from;
};
template <class Row>
concept IsPart = !std::is_same_v<decltype(PartOf<Row>::whole), const std::nullptr_t>;

/// A row with all its parts, by table and id.
class Whole {
public:
    Whole(const Snapshot& snapshot, const RowKey& key) {
        // Each type refers to earlier ones only: one walk finds the parts of parts too.
        forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
            if (key.table == kTable<Row>)
                if (const auto row = snapshot.find(Id<Row>{key.id})) take(row);
            if constexpr (IsPart<Row>)
                for (const auto& row : snapshot.all<Row>())
                    if (isPart(*row)) take(row);
        });
    }
    [[nodiscard]] bool has(const RowKey& key) const { return ids_[key.table].contains(key.id); }
    [[nodiscard]] std::vector<RowChange> erasures() const { return erasures_; }

private:
    template <class Row>
    [[nodiscard]] bool isPart(const Row& row) const {
        if constexpr (requires { PartOf<Row>::other; })
            if (const auto other = row.*PartOf<Row>::other; other && has(*other)) return true;
        return has(row.*PartOf<Row>::whole);
    }
    template <class Row>
    void take(const Ptr<Row>& row) {
        if (!ids_[kTable<Row>].insert(row->id.uuid).second) return;
        erasures_.insert(erasures_.begin(), RowChangeOf<Row>{row, nullptr});
    }

    std::array<std::unordered_set<Uuid>, kTables> ids_;
    std::vector<RowChange> erasures_;  // parts before what they are parts of
};

template <class Row>
bool uses(const Row& row, const Whole& whole) {
    bool found = false;
    forEachReference(row, [&](const auto&, const auto& id) { found |= id && whole.has(*id); });
    return found;
}

}  // namespace

std::vector<Use> usesOf(const Snapshot& snapshot, const RowKey& key) {
    const Whole whole(snapshot, key);
    std::vector<Use> all;
    forEachRowType(AllRows{}, [&]<class User>(std::type_identity<User>) {
        Use use{ColumnsOf<User>::table, 0};
        for (const auto& row : snapshot.all<User>())
            if (!whole.has(row->id) && uses(*row, whole)) ++use.count;
        if (use.count > 0) all.push_back(use);
    });
    return all;
}

std::vector<RowChange> erasures(const Snapshot& snapshot, const RowKey& key) {
    return Whole(snapshot, key).erasures();
}

}  // namespace tenthday
