/// @file kind_columns.h  The kinds whose lines are rows, with their columns in the contract's
/// order.
///
/// boxes, methods and facts are no such kinds: a line of theirs is a day in a box's life, a step,
/// a trade number. They stand in files of their own.
#pragma once
#include <algorithm>
#include <string_view>
#include <tuple>

#include "records/columns.h"

namespace tenthday {

/// A member with its name in the file. References (Id members) are written as labels.
template <class Row, class Member>
struct FileColumn {
    std::string_view name;
    Member Row::*member;
    bool needed;                  ///< the file must have the column and every line a value
    std::string_view alias = {};  ///< another name the column may have in a file
};
/// Two columns, `box` and `side`, that name a NucSide on the row's day.
template <class Row, class Member>
struct SideColumns {
    Member Row::*member;
    bool needed;
};

namespace file {
template <class Row, class Member>
constexpr FileColumn<Row, Member> needed(std::string_view name, Member Row::*member) {
    return {name, member, true};
}
template <class Row, class Member>
constexpr FileColumn<Row, Member> free(std::string_view name, Member Row::*member,
                                       std::string_view alias = {}) {
    return {name, member, false, alias};
}
template <class Row>
constexpr SideColumns<Row, Id<NucSide>> side(Id<NucSide> Row::*member) {
    return {member, true};
}
template <class Row>
constexpr SideColumns<Row, std::optional<Id<NucSide>>> side(
    std::optional<Id<NucSide>> Row::*member) {
    return {member, false};
}
}  // namespace file

/// Per row type: the kind's name and its columns but `id`. A line without an id is told by its
/// label; where a kind has none, by `same`: what can't stand twice in a book (a batch has one
/// bar 2), with `sameColumn` to blame when it does. `same` without a value: always a new row.
template <class Row>
struct KindOf;

/// Lines of the kind carry the row's id; those that do not are told by `same` alone.
template <class Row>
constexpr bool hasIdColumn() {
    if constexpr (requires { KindOf<Row>::isNamed; }) return KindOf<Row>::isNamed;
    return true;
}

template <class Row>
concept LabelledRow = requires(const Row& row) {
    row.label;
};

template <>
struct KindOf<Season> {
    static constexpr std::string_view name = "seasons";
    static constexpr auto columns =
        std::tuple{file::needed("label", &Season::label), file::needed("from", &Season::from),
                   file::needed("until", &Season::until)};
};
template <>
struct KindOf<Yard> {
    static constexpr std::string_view name = "yards";
    static constexpr auto columns = std::tuple{file::needed("label", &Yard::label),
                                               file::free("roles", &Yard::roles),
                                               file::free("hemisphere", &Yard::hemisphere),
                                               file::free("frost_day", &Yard::frostDay),
                                               file::free("drones_out_day", &Yard::dronesOutDay),
                                               file::free("drive_order", &Yard::driveOrder),
                                               file::free("note", &Yard::note)};
};
template <>
struct KindOf<Stocking> {
    static constexpr std::string_view name = "stockings";
    static constexpr std::string_view sameColumn = "side";
    static constexpr auto columns = std::tuple{file::side(&Stocking::side),
                                               file::needed("day", &Stocking::day),
                                               file::free("hour", &Stocking::hour),
                                               file::free("bees_ml", &Stocking::beesMl),
                                               file::free("brood_frames", &Stocking::broodFrames),
                                               file::free("open_brood", &Stocking::openBrood),
                                               file::free("donor", &Stocking::donor),
                                               file::free("note", &Stocking::note)};
    static auto same(const Stocking& r) { return std::optional{std::tuple{r.side, r.day}}; }
};
template <>
struct KindOf<Builder> {
    static constexpr std::string_view name = "builders";
    static constexpr auto columns = std::tuple{file::needed("label", &Builder::label),
                                               file::needed("yard", &Builder::yard),
                                               file::needed("kind", &Builder::kind),
                                               file::free("open_room", &Builder::openRoom),
                                               file::free("sealed_room", &Builder::sealedRoom),
                                               file::needed("from", &Builder::from),
                                               file::free("until", &Builder::until),
                                               file::free("note", &Builder::note)};
};
template <>
struct KindOf<MakeUp> {
    static constexpr std::string_view name = "makeups";
    static constexpr std::string_view sameColumn = "day";
    static constexpr auto columns = std::tuple{
        file::needed("builder", &MakeUp::builder), file::needed("day", &MakeUp::day),
        file::free("hour", &MakeUp::hour),         file::free("open_brood", &MakeUp::openBrood),
        file::free("bees_ml", &MakeUp::beesMl),    file::free("brood_frames", &MakeUp::broodFrames),
        file::free("donors", &MakeUp::donors),     file::free("moved_away", &MakeUp::movedAway)};
    static auto same(const MakeUp& r) {
        return std::optional{std::tuple{r.builder, r.day, r.hour}};
    }
};
template <>
struct KindOf<BuilderNote> {
    static constexpr std::string_view name = "buildernotes";
    static constexpr std::string_view sameColumn = "day";
    static constexpr auto columns = std::tuple{file::needed("builder", &BuilderNote::builder),
                                               file::needed("kind", &BuilderNote::kind),
                                               file::needed("day", &BuilderNote::day),
                                               file::free("hour", &BuilderNote::hour),
                                               file::free("open_brood", &BuilderNote::openBrood),
                                               file::free("brood_age", &BuilderNote::broodAge),
                                               file::free("donor", &BuilderNote::donor),
                                               file::free("note", &BuilderNote::note)};
    static auto same(const BuilderNote& r) {
        return std::optional{std::tuple{r.builder, r.kind, r.day, r.hour}};
    }
};
template <>
struct KindOf<Queen> {
    static constexpr std::string_view name = "queens";
    static constexpr auto columns = std::tuple{file::needed("label", &Queen::label),
                                               file::free("year", &Queen::year),
                                               file::free("mother", &Queen::mother),
                                               file::free("line", &Queen::line),
                                               file::free("breeder_from", &Queen::breederFrom),
                                               file::free("breeder_until", &Queen::breederUntil),
                                               file::free("note", &Queen::note)};
};
template <>
struct KindOf<Batch> {
    static constexpr std::string_view name = "batches";
    static constexpr auto columns = std::tuple{file::needed("label", &Batch::label),
                                               file::free("start", &Batch::start),
                                               file::needed("day", &Batch::day),
                                               file::free("hour", &Batch::hour),
                                               file::free("larva_from_h", &Batch::larvaFromH),
                                               file::free("larva_to_h", &Batch::larvaToH),
                                               file::free("method", &Batch::method),
                                               file::free("mating", &Batch::mating),
                                               file::free("catch_rule", &Batch::catchRule),
                                               file::free("note", &Batch::note)};
};
template <>
struct KindOf<BatchBar> {
    static constexpr std::string_view name = "bars";
    static constexpr std::string_view sameColumn = "bar";
    static constexpr auto columns = std::tuple{
        file::needed("batch", &BatchBar::batch), file::needed("bar", &BatchBar::bar),
        file::free("breeder", &BatchBar::breeder), file::needed("cells", &BatchBar::cells)};
    static auto same(const BatchBar& r) { return std::optional{std::tuple{r.batch, r.bar}}; }
};
template <>
struct KindOf<BatchLoad> {
    static constexpr bool isNamed = false;
    static constexpr std::string_view name = "loads";
    static constexpr std::string_view sameColumn = "step";
    static constexpr auto columns = std::tuple{
        file::needed("batch", &BatchLoad::batch), file::needed("bar", &BatchLoad::bar),
        file::needed("step", &BatchLoad::step), file::needed("builder", &BatchLoad::builder)};
    static auto same(const BatchLoad& r) {
        return std::optional{std::tuple{r.batch, r.bar, r.step}};
    }
};
template <>
struct KindOf<BatchShare> {
    static constexpr bool isNamed = false;
    static constexpr std::string_view name = "shares";
    static constexpr std::string_view sameColumn = "yard";
    static constexpr auto columns = std::tuple{file::needed("batch", &BatchShare::batch),
                                               file::needed("yard", &BatchShare::yard),
                                               file::needed("cells", &BatchShare::cells)};
    static auto same(const BatchShare& r) { return std::optional{std::tuple{r.batch, r.yard}}; }
};
template <>
struct KindOf<Placement> {
    static constexpr std::string_view name = "placements";
    static constexpr std::string_view sameColumn = "side";
    static constexpr auto columns =
        std::tuple{file::needed("batch", &Placement::batch), file::side(&Placement::side),
                   file::free("target", &Placement::target), file::needed("day", &Placement::day),
                   file::free("hour", &Placement::hour),     file::free("done", &Placement::done)};
    /// A nuc takes one cell a day; of sold or caged cells there can be many alike.
    static auto same(const Placement& r) {
        std::optional<std::tuple<Id<Batch>, Id<NucSide>, Day>> key;
        if (r.side) key.emplace(r.batch, *r.side, r.day);
        return key;
    }
};
template <>
struct KindOf<Outcome> {
    static constexpr std::string_view name = "outcomes";
    static constexpr std::string_view sameColumn = "kind";
    static constexpr auto columns = std::tuple{file::needed("batch", &Outcome::batch),
                                               file::free("bar", &Outcome::bar),
                                               file::side(&Outcome::side),
                                               file::needed("kind", &Outcome::kind),
                                               file::needed("day", &Outcome::day),
                                               file::free("hour", &Outcome::hour),
                                               file::free("count", &Outcome::count),
                                               file::free("note", &Outcome::note)};
    static auto same(const Outcome& r) {
        return std::optional{std::tuple{r.batch, r.bar, r.side, r.kind, r.day, r.hour}};
    }
};
template <>
struct KindOf<DayOff> {
    static constexpr std::string_view name = "daysoff";
    static constexpr std::string_view sameColumn = "from";
    static constexpr auto columns =
        std::tuple{file::needed("from", &DayOff::from), file::needed("until", &DayOff::until),
                   file::free("note", &DayOff::note)};
    static auto same(const DayOff& r) { return std::optional{std::tuple{r.from, r.until}}; }
};

template <>
struct KindOf<Order> {
    static constexpr std::string_view name = "orders";
    static constexpr auto columns = std::tuple{
        file::needed("label", &Order::label),  file::needed("kind", &Order::kind),
        file::needed("count", &Order::count),  file::free("not_before", &Order::notBefore),
        file::needed("due", &Order::due),      file::free("line", &Order::line),
        file::free("part_ok", &Order::partOk), file::free("sure", &Order::sure),
        file::free("weight", &Order::weight),  file::free("note", &Order::note)};
};
template <>
struct KindOf<WeatherDay> {
    static constexpr bool isNamed = false;
    static constexpr std::string_view name = "weather";
    static constexpr std::string_view sameColumn = "date";
    static constexpr auto columns =
        std::tuple{file::needed("date", &WeatherDay::date),
                   file::free("tmax_c", &WeatherDay::tmaxC, "temp_max"),
                   file::free("tmin_c", &WeatherDay::tminC, "temp_min"),
                   file::free("rain_mm", &WeatherDay::rainMm, "precipitation"),
                   file::free("wind_ms", &WeatherDay::windMs, "wind"),
                   file::free("flew", &WeatherDay::flew)};
    static auto same(const WeatherDay& r) { return std::optional{r.date}; }
};
template <>
struct KindOf<OwnTask> {
    static constexpr std::string_view name = "owntasks";
    static constexpr std::string_view sameColumn = "text";
    static constexpr auto columns =
        std::tuple{file::needed("day", &OwnTask::day), file::free("yard", &OwnTask::yard),
                   file::needed("text", &OwnTask::text), file::free("must", &OwnTask::must)};
    static auto same(const OwnTask& r) { return std::optional{std::tuple{r.day, r.yard, r.text}}; }
};
/// Made by the program: subject and place are ids.
template <>
struct KindOf<TaskDone> {
    static constexpr std::string_view name = "ticks";
    static constexpr std::string_view sameColumn = "subject";
    static constexpr auto columns = std::tuple{
        file::needed("rule", &TaskDone::rule), file::needed("subject", &TaskDone::subject),
        file::free("place", &TaskDone::place), file::free("occurrence", &TaskDone::occurrence),
        file::needed("day", &TaskDone::day)};
    static auto same(const TaskDone& r) {
        return std::optional{std::tuple{r.rule, r.subject, r.place, r.occurrence}};
    }
};

template <>
struct KindOf<ClimateMonth> {
    static constexpr bool isNamed = false;
    static constexpr std::string_view name = "climate";
    static constexpr std::string_view sameColumn = "month";
    static constexpr auto columns = std::tuple{file::needed("month", &ClimateMonth::month),
                                               file::needed("tmax_c", &ClimateMonth::tmaxC),
                                               file::free("rain_days", &ClimateMonth::rainDays)};
    static auto same(const ClimateMonth& r) { return std::optional{r.month}; }
};
template <>
struct KindOf<DroneSighting> {
    static constexpr std::string_view name = "drones";
    static constexpr std::string_view sameColumn = "stage";
    static constexpr auto columns = std::tuple{
        file::needed("yard", &DroneSighting::yard), file::needed("day", &DroneSighting::day),
        file::needed("stage", &DroneSighting::stage),
        file::free("colonies", &DroneSighting::colonies), file::free("note", &DroneSighting::note)};
    static auto same(const DroneSighting& r) {
        return std::optional{std::tuple{r.yard, r.day, r.stage}};
    }
};
template <>
struct KindOf<YardNote> {
    static constexpr std::string_view name = "yardnotes";
    static constexpr std::string_view sameColumn = "from";
    static constexpr auto columns =
        std::tuple{file::needed("yard", &YardNote::yard), file::needed("kind", &YardNote::kind),
                   file::needed("from", &YardNote::from), file::needed("until", &YardNote::until),
                   file::free("note", &YardNote::note)};
    static auto same(const YardNote& r) {
        return std::optional{std::tuple{r.yard, r.kind, r.from}};
    }
};
template <>
struct KindOf<MatingStay> {
    static constexpr std::string_view name = "matings";
    static constexpr std::string_view sameColumn = "from";
    static constexpr auto columns = std::tuple{
        file::needed("batch", &MatingStay::batch), file::free("yard", &MatingStay::yard),
        file::needed("from", &MatingStay::from), file::needed("until", &MatingStay::until)};
    static auto same(const MatingStay& r) { return std::optional{std::tuple{r.batch, r.from}}; }
};
template <>
struct KindOf<NucCare> {
    static constexpr std::string_view name = "nuccare";
    static constexpr std::string_view sameColumn = "side";
    static constexpr auto columns = std::tuple{file::side(&NucCare::side),
                                               file::needed("day", &NucCare::day),
                                               file::free("hour", &NucCare::hour),
                                               file::needed("kind", &NucCare::kind),
                                               file::free("bees_ml", &NucCare::beesMl),
                                               file::free("brood_frames", &NucCare::broodFrames),
                                               file::free("open_brood", &NucCare::openBrood),
                                               file::free("donor", &NucCare::donor),
                                               file::free("note", &NucCare::note)};
    static auto same(const NucCare& r) { return std::optional{std::tuple{r.side, r.day, r.kind}}; }
};
template <>
struct KindOf<MiteWork> {
    static constexpr std::string_view name = "mitework";
    static constexpr std::string_view sameColumn = "what";
    static constexpr auto columns =
        std::tuple{file::free("builder", &MiteWork::builder), file::side(&MiteWork::side),
                   file::needed("day", &MiteWork::day), file::needed("what", &MiteWork::what),
                   file::free("note", &MiteWork::note)};
    static auto same(const MiteWork& r) {
        return std::optional{std::tuple{r.side, r.builder, r.day, r.what}};
    }
};
template <>
struct KindOf<QueenNote> {
    static constexpr std::string_view name = "queennotes";
    static constexpr std::string_view sameColumn = "day";
    static constexpr auto columns =
        std::tuple{file::needed("queen", &QueenNote::queen), file::needed("day", &QueenNote::day),
                   file::needed("kind", &QueenNote::kind), file::free("note", &QueenNote::note)};
    static auto same(const QueenNote& r) { return std::optional{std::tuple{r.queen, r.day}}; }
};
template <>
struct KindOf<CaughtQueen> {
    static constexpr std::string_view name = "caught";
    static constexpr std::string_view sameColumn = "queen";
    static constexpr auto columns = std::tuple{
        file::needed("queen", &CaughtQueen::queen), file::needed("batch", &CaughtQueen::batch),
        file::side(&CaughtQueen::side), file::needed("day", &CaughtQueen::day)};
    static auto same(const CaughtQueen& r) { return std::optional{r.queen}; }
};
template <>
struct KindOf<QueenStay> {
    static constexpr std::string_view name = "queenstays";
    static constexpr std::string_view sameColumn = "from";
    static constexpr auto columns = std::tuple{
        file::needed("queen", &QueenStay::queen), file::needed("place", &QueenStay::place),
        file::needed("from", &QueenStay::from), file::free("note", &QueenStay::note)};
    static auto same(const QueenStay& r) { return std::optional{std::tuple{r.queen, r.from}}; }
};
template <>
struct KindOf<OrderTerms> {
    static constexpr std::string_view name = "orderterms";
    static constexpr std::string_view sameColumn = "order";
    static constexpr auto columns = std::tuple{file::needed("order", &OrderTerms::order),
                                               file::free("standing", &OrderTerms::standing),
                                               file::free("purpose", &OrderTerms::purpose),
                                               file::free("ship_days", &OrderTerms::shipDays)};
    static auto same(const OrderTerms& r) { return std::optional{r.order}; }
};
template <>
struct KindOf<Earmark> {
    static constexpr std::string_view name = "earmarks";
    static constexpr std::string_view sameColumn = "batch";
    static constexpr auto columns =
        std::tuple{file::needed("order", &Earmark::order), file::needed("batch", &Earmark::batch),
                   file::needed("count", &Earmark::count)};
    static auto same(const Earmark& r) { return std::optional{std::tuple{r.order, r.batch}}; }
};
template <>
struct KindOf<Delivery> {
    static constexpr std::string_view name = "deliveries";
    static constexpr std::string_view sameColumn = "day";
    static constexpr auto columns = std::tuple{
        file::needed("order", &Delivery::order), file::needed("day", &Delivery::day),
        file::needed("count", &Delivery::count), file::free("batch", &Delivery::fromBatch),
        file::free("yard", &Delivery::yard),     file::free("failed", &Delivery::failed),
        file::free("why", &Delivery::why),       file::free("note", &Delivery::note)};
    /// Several may be alike: a line without an id is a new row.
    static std::optional<Day> same(const Delivery&) { return {}; }
};
template <>
struct KindOf<PromiseMove> {
    static constexpr std::string_view name = "promisemoves";
    static constexpr std::string_view sameColumn = "day";
    static constexpr auto columns = std::tuple{file::needed("order", &PromiseMove::order),
                                               file::needed("day", &PromiseMove::day),
                                               file::needed("due_before", &PromiseMove::dueBefore),
                                               file::needed("due_after", &PromiseMove::dueAfter),
                                               file::free("reason", &PromiseMove::reason)};
    /// Several may be alike: a line without an id is a new row.
    static std::optional<Day> same(const PromiseMove&) { return {}; }
};
template <>
struct KindOf<QueenLot> {
    static constexpr std::string_view name = "bought";
    static constexpr std::string_view sameColumn = "day";
    static constexpr auto columns =
        std::tuple{file::needed("day", &QueenLot::day), file::needed("count", &QueenLot::count),
                   file::free("line", &QueenLot::line), file::free("proven", &QueenLot::proven),
                   file::free("note", &QueenLot::note)};
    /// Several may be alike: a line without an id is a new row.
    static std::optional<Day> same(const QueenLot&) { return {}; }
};
template <>
struct KindOf<LeftOut> {
    static constexpr std::string_view name = "leftout";
    static constexpr std::string_view sameColumn = "batch";
    static constexpr auto columns = std::tuple{file::needed("batch", &LeftOut::batch),
                                               file::needed("reason", &LeftOut::reason)};
    static auto same(const LeftOut& r) { return std::optional{r.batch}; }
};
template <>
struct KindOf<WorkTime> {
    static constexpr std::string_view name = "worktimes";
    static constexpr std::string_view sameColumn = "rule";
    static constexpr auto columns =
        std::tuple{file::needed("rule", &WorkTime::rule), file::free("minutes", &WorkTime::minutes),
                   file::free("each", &WorkTime::each)};
    static auto same(const WorkTime& r) { return std::optional{r.rule}; }
};
template <>
struct KindOf<DriveTime> {
    static constexpr std::string_view name = "drives";
    static constexpr std::string_view sameColumn = "to";
    static constexpr auto columns =
        std::tuple{file::free("from", &DriveTime::from), file::needed("to", &DriveTime::to),
                   file::needed("minutes", &DriveTime::minutes)};
    static auto same(const DriveTime& r) {  // both ways are one
        const std::optional<Id<Yard>> to = r.to;
        return std::optional{std::pair{std::min(r.from, to), std::max(r.from, to)}};
    }
};
template <>
struct KindOf<TaskGiven> {
    static constexpr std::string_view name = "given";
    static constexpr std::string_view sameColumn = "subject";
    static constexpr auto columns = std::tuple{
        file::needed("rule", &TaskGiven::rule), file::needed("subject", &TaskGiven::subject),
        file::free("place", &TaskGiven::place), file::free("occurrence", &TaskGiven::occurrence),
        file::needed("who", &TaskGiven::who)};
    static auto same(const TaskGiven& r) {
        return std::optional{std::tuple{r.rule, r.subject, r.place, r.occurrence}};
    }
};

using FileKinds =
    RowList<Season, Yard, Stocking, Builder, MakeUp, BuilderNote, Queen, Batch, BatchBar, BatchLoad,
            BatchShare, Placement, Outcome, DayOff, Order, WeatherDay, OwnTask, TaskDone,
            ClimateMonth, DroneSighting, YardNote, MatingStay, NucCare, MiteWork, QueenNote,
            CaughtQueen, QueenStay, OrderTerms, Earmark, Delivery, PromiseMove, QueenLot, LeftOut,
            WorkTime, DriveTime, TaskGiven>;

}  // namespace tenthday
