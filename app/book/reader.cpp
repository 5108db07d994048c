#include "book/reader.h"

#include "book/row_sql.h"
#include "book/sqlite.h"

namespace tenthday {
namespace {

/// Read with its season's batches. What hangs on an order or a queen, too, is read of all seasons,
/// and which batches do not speak for the rates of losses.
template <class Row>
concept OfBatch = std::is_same_v<Row, Batch> ||
    (!std::is_same_v<Row, Earmark> && !std::is_same_v<Row, CaughtQueen> &&
     !std::is_same_v<Row, LeftOut> && requires(const Row& row) { row.batch; });

template <class Row>
QString withinDays() {
    const auto days = QStringLiteral("day BETWEEN ? AND ?");
    if constexpr (std::is_same_v<Row, Batch>) return QStringLiteral(" WHERE ") + days;
    return QStringLiteral(" WHERE batch IN (SELECT id FROM batch WHERE %1)").arg(days);
}

template <class Row>
Result<Table<Row>> readTable(Connection& connection, const QString& where, const Values& values) {
    typename Table<Row>::Rows rows;
    const auto sql = selectStatement(ColumnsOf<Row>::table, columnNames<Row>()) + where;
    auto done = connection.read(sql, values, [&](const Values& cells) -> Result<void> {
        auto row = rowOf<Row>(cells);
        if (!row) return row.error();
        rows.push_back(std::make_shared<const Row>(std::move(row).value()));
        return {};
    });
    if (!done) return done.error();
    return Table<Row>::from(std::move(rows));
}

/// So long after its season a late batch can still bring work, from the graft to the catch.
constexpr Days kBatchLasts{75};

/// The days whose batches are wanted; nothing means all.
std::optional<DayWindow> daysWanted(const Snapshot& snapshot, const ReadRange& range) {
    if (range.allSeasons || snapshot.seasonId().isNone()) return std::nullopt;
    return snapshot.startDays();
}

Result<void> chooseSeason(Snapshot& snapshot, const Clock& clock, const ReadRange& range) {
    snapshot.setToday(clock.today(snapshot.book()));
    if (range.season && !snapshot.find(*range.season)) return Error{"there is no such season"};
    snapshot.setSeason(range.season.value_or(seasonOf(snapshot.all<Season>(), snapshot.today())));
    return {};
}

/// Labels of the batches that are not read.
Result<void> readOtherLabels(Snapshot& snapshot, Connection& connection, const ReadRange& range) {
    const auto days = daysWanted(snapshot, range);
    if (!days) return {};
    std::set<std::string> labels;
    const auto sql = QStringLiteral("SELECT label FROM batch WHERE day NOT BETWEEN ? AND ?");
    auto done = connection.read(sql, {toCell(days->first), toCell(days->last)},
                                [&](const Values& cells) -> Result<void> {
                                    if (const auto* label = std::get_if<std::string>(&cells.at(0)))
                                        labels.insert(*label);
                                    return {};
                                });
    if (!done) return done.error();
    snapshot.setLabelsOfOtherSeasons(std::move(labels));
    return {};
}

template <class Row>
Result<void> readInto(Snapshot& snapshot, Connection& connection, const ReadRange& range) {
    QString where;
    Values values;
    if constexpr (OfBatch<Row>) {
        if (const auto days = daysWanted(snapshot, range)) {
            where = withinDays<Row>();
            values = {toCell(days->first), toCell(days->last)};
        }
    }
    auto table = readTable<Row>(connection, where, values);
    if (!table) return table.error();
    snapshot.setAll(std::move(table).value());
    return {};
}

}  // namespace

Id<Season> seasonOf(const Table<Season>& seasons, Day today) {
    Ptr<Season> ended;
    Ptr<Season> next;
    for (const auto& season : seasons) {
        if (season->from <= today && today <= season->until) return season->id;
        if (season->until < today && (!ended || season->until > ended->until)) ended = season;
        if (season->from > today && (!next || season->from < next->from)) next = season;
    }
    if (!ended || !next) return ended ? ended->id : next ? next->id : Id<Season>{};
    const bool atWork = today <= ended->until + kBatchLasts && today < next->from - kLeadIn;
    return atWork ? ended->id : next->id;
}

Result<Snapshot> readSnapshot(Connection& connection, const Clock& clock, const ReadRange& range) {
    auto moment = Transaction::beginReading(connection);
    if (!moment) return moment.error();
    Snapshot snapshot;
    Result<void> done;
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        if (done) done = readInto<Row>(snapshot, connection, range);
        // Book and seasons come first: what is wanted of the rest hangs on them.
        if (done && std::is_same_v<Row, Season>) done = chooseSeason(snapshot, clock, range);
    });
    if (done) done = readOtherLabels(snapshot, connection, range);
    if (!done) return done.error();
    if (auto ended = moment.value()->commit(); !ended) return ended.error();
    return snapshot;
}

}  // namespace tenthday
