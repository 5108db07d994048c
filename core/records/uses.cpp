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
template <class Row>
concept IsPart = !std::is_same_v<decltype(PartOf<Row>::whole), const std::nullptr_t>;

/// A row with all its parts, by table and id.
class Whole {
public:
    template <class Row>
    Whole(const Snapshot& snapshot, Id<Row> id) {
        if (const auto row = snapshot.find(id)) take(row);
        // Each type refers to earlier ones only: one walk finds the parts of parts too.
        forEachRowType(AllRows{}, [&]<class Part>(std::type_identity<Part>) {
            if constexpr (IsPart<Part>)
                for (const auto& row : snapshot.all<Part>())
                    if (has((*row).*PartOf<Part>::whole)) take(row);
        });
    }
    template <class Row>
    [[nodiscard]] bool has(Id<Row> id) const {
        return ids_[tableIndex<Row>()].contains(id.uuid);
    }
    [[nodiscard]] std::vector<RowChange> erasures() const { return erasures_; }

private:
    template <class Row>
    static std::size_t tableIndex() {
        return RowChange(RowChangeOf<Row>{}).index();
    }
    template <class Row>
    void take(const Ptr<Row>& row) {
        ids_[tableIndex<Row>()].insert(row->id.uuid);
        erasures_.insert(erasures_.begin(), RowChangeOf<Row>{row, nullptr});
    }

    std::array<std::unordered_set<Uuid>, std::variant_size_v<RowChange>> ids_;
    std::vector<RowChange> erasures_;  // parts before what they are parts of
};

template <class Row>
bool uses(const Row& row, const Whole& whole) {
    bool found = false;
    forEachReference(row, [&](const auto&, const auto& id) { found |= id && whole.has(*id); });
    return found;
}

}  // namespace

template <class Row>
std::vector<Use> usesOf(const Snapshot& snapshot, Id<Row> id) {
    const Whole whole(snapshot, id);
    std::vector<Use> all;
    forEachRowType(AllRows{}, [&]<class User>(std::type_identity<User>) {
        Use use{ColumnsOf<User>::table, 0};
        for (const auto& row : snapshot.all<User>())
            if (!whole.has(row->id) && uses(*row, whole)) ++use.count;
        if (use.count > 0) all.push_back(use);
    });
    return all;
}

template <class Row>
std::vector<RowChange> erasures(const Snapshot& snapshot, Id<Row> id) {
    return Whole(snapshot, id).erasures();
}

template std::vector<Use> usesOf(const Snapshot&, Id<Yard>);
template std::vector<Use> usesOf(const Snapshot&, Id<Box>);
template std::vector<Use> usesOf(const Snapshot&, Id<Builder>);
template std::vector<Use> usesOf(const Snapshot&, Id<Method>);
template std::vector<Use> usesOf(const Snapshot&, Id<Queen>);
template std::vector<Use> usesOf(const Snapshot&, Id<DayOff>);
template std::vector<Use> usesOf(const Snapshot&, Id<Season>);
template std::vector<Use> usesOf(const Snapshot&, Id<DroneSighting>);
template std::vector<Use> usesOf(const Snapshot&, Id<YardNote>);
template std::vector<Use> usesOf(const Snapshot&, Id<MakeUp>);
template std::vector<Use> usesOf(const Snapshot&, Id<BuilderNote>);
template std::vector<RowChange> erasures(const Snapshot&, Id<Yard>);
template std::vector<RowChange> erasures(const Snapshot&, Id<Box>);
template std::vector<RowChange> erasures(const Snapshot&, Id<Builder>);
template std::vector<RowChange> erasures(const Snapshot&, Id<Method>);
template std::vector<RowChange> erasures(const Snapshot&, Id<Queen>);
template std::vector<RowChange> erasures(const Snapshot&, Id<DayOff>);
template std::vector<RowChange> erasures(const Snapshot&, Id<Season>);
template std::vector<RowChange> erasures(const Snapshot&, Id<DroneSighting>);
template std::vector<RowChange> erasures(const Snapshot&, Id<YardNote>);
template std::vector<RowChange> erasures(const Snapshot&, Id<MakeUp>);
template std::vector<RowChange> erasures(const Snapshot&, Id<BuilderNote>);

}  // namespace tenthday
