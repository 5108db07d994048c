#include "exchange/export.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <set>

#include "base/natural_order.h"
#include "exchange/kind_columns.h"
#include "exchange/kinds.h"
#include "exchange/lookup.h"

namespace tenthday {
namespace {

using Fields = std::vector<ListingCell>;

/// Writes the members of rows as fields.
class RowWriter {
public:
    explicit RowWriter(const Lookup& lookup) : lookup_(lookup) {}

    template <class Row>
    Fields fields(const Row& row) const {
        Fields cells;
        if (hasIdColumn<Row>()) cells.push_back(cell(toText(row.id.uuid)));
        std::apply([&](const auto&... c) { (append(cells, row, c), ...); }, KindOf<Row>::columns);
        return cells;
    }

private:
    template <class Row, class Member>
    void append(Fields& cells, const Row& row, const FileColumn<Row, Member>& column) const {
        cells.push_back(field(row.*column.member));
    }
    template <class Row, class Member>
    void append(Fields& cells, const Row& row, const SideColumns<Row, Member>& column) const {
        const std::optional<Id<NucSide>> side = row.*column.member;
        const auto place = side ? lookup_.placeOf(*side) : Lookup::Place{};
        cells.push_back(side ? cell(place.box) : ListingCell{});
        cells.push_back(side ? cell(place.side) : ListingCell{});
    }
    template <class T>
    ListingCell field(const T& value) const {
        return fieldOf(value);
    }
    template <class Other>
    ListingCell field(Id<Other> id) const {
        return cell(lookup_.nameOf(id));
    }
    template <class Other>
    ListingCell field(const std::optional<Id<Other>>& id) const {
        return id ? field(*id) : ListingCell{};
    }

    const Lookup& lookup_;
};

/// By all fields from `first` on; an id before them breaks ties.
bool before(const Fields& a, const Fields& b, std::size_t first) {
    for (std::size_t i = first; i < a.size(); ++i)
        if (a[i].text != b[i].text) return naturalLess(a[i].text, b[i].text);
    return a[0].text < b[0].text;
}

template <class Row>
std::vector<Fields> rowsOf(const Snapshot& snapshot, const Lookup& lookup) {
    std::vector<Fields> rows;
    const RowWriter writer(lookup);
    for (const auto& row : snapshot.all<Row>()) rows.push_back(writer.fields(*row));
    const std::size_t first = hasIdColumn<Row>() ? 1 : 0;
    std::sort(rows.begin(), rows.end(),
              [&](const Fields& a, const Fields& b) { return before(a, b, first); });
    return rows;
}

/// A line per day on which the box was moved or laid out anew, each with what is in force then.
void appendBox(std::vector<Fields>& rows, const Lookup& lookup, const Box& box) {
    std::map<Day, Ptr<BoxStay>> stays;
    for (const auto& stay : lookup.snapshot().all<BoxStay>().of(box.id.uuid))
        stays[stay->from] = stay;
    std::set<Day> days;
    for (const auto& [day, stay] : stays) days.insert(day);
    for (const auto& layout : lookup.layoutsOf(box.id)) days.insert(layout->from);
    const auto append = [&](const Ptr<BoxStay>& stay, const Ptr<BoxLayout>& layout) {
        const bool stands = stay && stay->yard;
        rows.push_back({cell(toText(box.id.uuid)), cell(box.label),
                        stands ? cell(lookup.nameOf(*stay->yard)) : ListingCell{},
                        stay ? cell(stay->from) : ListingCell{},
                        layout ? cell(layout->layout) : ListingCell{},
                        layout ? cell(layout->from) : ListingCell{}, cell(box.note)});
    };
    for (const Day day : days) {
        const auto after = stays.upper_bound(day);
        append(after == stays.begin() ? nullptr : std::prev(after)->second,
               lookup.layoutOn(box.id, day));
    }
    if (days.empty()) append(nullptr, nullptr);
}

template <class Row>
std::vector<Ptr<Row>> byLabel(const Snapshot& snapshot) {
    std::vector<Ptr<Row>> rows(snapshot.all<Row>().begin(), snapshot.all<Row>().end());
    std::sort(rows.begin(), rows.end(),
              [](const auto& a, const auto& b) { return naturalLess(a->label, b->label); });
    return rows;
}

std::vector<Fields> boxRows(const Snapshot& snapshot, const Lookup& lookup) {
    std::vector<Fields> rows;
    for (const auto& box : byLabel<Box>(snapshot)) appendBox(rows, lookup, *box);
    return rows;
}

std::vector<Fields> methodRows(const Snapshot& snapshot) {
    std::vector<Fields> rows;
    for (const auto& method : byLabel<Method>(snapshot)) {
        const auto steps = snapshot.all<Step>().of(method->id.uuid);
        std::map<std::int32_t, Ptr<Step>> inOrder;
        for (const auto& step : steps) inOrder[step->step] = step;
        for (const auto& [number, step] : inOrder)
            rows.push_back({cell(toText(method->id.uuid)), cell(method->label), cell(number),
                            cell(step->where), cell(step->fromHour), cell(step->toHour),
                            cell(step->restDays)});
    }
    return rows;
}

std::vector<Fields> factRows(const Snapshot& snapshot) {
    std::vector<Fields> rows;
    const auto& facts = snapshot.facts();
    for (const auto& entry : factsRevision(facts.revision()))
        rows.push_back(
            {cell(entry.fact), shortest(entry.value), cell(entry.unit),
             cell(shortest(entry.low).text + ".." + shortest(entry.high).text), cell(entry.source),
             facts.isOverridden(entry.fact) ? shortest(facts[entry.fact]) : ListingCell{}});
    return rows;
}

}  // namespace

Listing exportOf(const Snapshot& snapshot, std::string_view kind) {
    assert(isKind(kind));
    Listing listing;
    for (const auto& column : columnsOf(kind)) listing.columns.emplace_back(column.name);
    const Lookup lookup(snapshot);
    if (kind == kBoxes) listing.rows = boxRows(snapshot, lookup);
    if (kind == kMethods) listing.rows = methodRows(snapshot);
    if (kind == kFacts) listing.rows = factRows(snapshot);
    forEachRowType(FileKinds{}, [&]<class Row>(std::type_identity<Row>) {
        if (KindOf<Row>::name == kind) listing.rows = rowsOf<Row>(snapshot, lookup);
    });
    return listing;
}

}  // namespace tenthday
