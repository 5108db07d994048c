#include "records/table.h"

namespace tenthday {
namespace {

/// Where a row belongs. Sorting these is one piece of code for all row types.
struct Place {
    Uuid owner;
    Uuid id;
    std::size_t at;
    friend auto operator<=>(const Place&, const Place&) = default;
};

template <class Row>
Place placeOf(const Row& row, std::size_t at) {
    if constexpr (Grouped<Row>)
        return {ownerOf(row), row.id.uuid, at};
    else
        return {{}, row.id.uuid, at};
}

template <class Row>
bool before(const Ptr<Row>& a, const Ptr<Row>& b) {
    if constexpr (Grouped<Row>)
        if (ownerOf(*a) != ownerOf(*b)) return ownerOf(*a) < ownerOf(*b);
    return a->id < b->id;
}

template <class Row>
auto place(const std::vector<Ptr<Row>>& rows, Id<Row> id) {
    if constexpr (Grouped<Row>)
        return std::find_if(rows.begin(), rows.end(),
                            [&](const auto& row) { return row->id == id; });
    else
        return std::lower_bound(rows.begin(), rows.end(), id,
                                [](const auto& row, Id<Row> wanted) { return row->id < wanted; });
}

}  // namespace

template <class Row>
Ptr<Row> Table<Row>::find(Id<Row> id) const {
    const auto at = place(*rows_, id);
    return at != rows_->end() && (*at)->id == id ? *at : nullptr;
}

template <class Row>
Table<Row> Table<Row>::from(Rows rows) {
    std::vector<Place> places;
    places.reserve(rows.size());
    for (const auto& row : rows) places.push_back(placeOf(*row, places.size()));
    std::sort(places.begin(), places.end());
    auto sorted = std::make_shared<Rows>();
    sorted->reserve(rows.size());
    for (const auto& place : places) sorted->push_back(std::move(rows[place.at]));
    Table table;
    table.rows_ = std::move(sorted);
    return table;
}

template <class Row>
Table<Row> Table<Row>::with(const Ptr<Row>& gone, const Ptr<Row>& come) const {
    auto rows = std::make_shared<Rows>(*rows_);
    if (gone)
        rows->erase(std::remove_if(rows->begin(), rows->end(),
                                   [&](const auto& row) { return row->id == gone->id; }),
                    rows->end());
    if (come) rows->insert(std::upper_bound(rows->begin(), rows->end(), come, before<Row>), come);
    Table table;
    table.rows_ = std::move(rows);
    return table;
}

template class Table<Book>;
template class Table<FactOverride>;
template class Table<Season>;
template class Table<Yard>;
template class Table<Box>;
template class Table<BoxStay>;
template class Table<BoxLayout>;
template class Table<NucSide>;
template class Table<Stocking>;
template class Table<Builder>;
template class Table<MakeUp>;
template class Table<BuilderNote>;
template class Table<Method>;
template class Table<Step>;
template class Table<Line>;
template class Table<Queen>;
template class Table<Batch>;
template class Table<BatchBar>;
template class Table<BatchLoad>;
template class Table<BatchShare>;
template class Table<Placement>;
template class Table<Outcome>;
template class Table<DayOff>;
template class Table<Order>;
template class Table<WeatherDay>;
template class Table<OwnTask>;
template class Table<TaskDone>;
template class Table<ClimateMonth>;
template class Table<DroneSighting>;
template class Table<YardNote>;
template class Table<MatingStay>;
template class Table<NucCare>;
template class Table<MiteWork>;
template class Table<QueenNote>;
template class Table<CaughtQueen>;
template class Table<QueenStay>;
template class Table<OrderTerms>;
template class Table<Earmark>;
template class Table<Delivery>;
template class Table<PromiseMove>;
template class Table<QueenLot>;
template class Table<LeftOut>;
template class Table<WorkTime>;
template class Table<DriveTime>;
template class Table<TaskGiven>;

}  // namespace tenthday
