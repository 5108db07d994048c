/// @file columns.h  Each row's columns, once: SQL, the change log, CSV and validity all read these.
#pragma once
#include <string_view>
#include <tuple>

#include "records/rows.h"

namespace tenthday {

template <class Row, class Member>
struct Column {
    std::string_view name;
    Member Row::*member;
};
template <class Row, class Member>
constexpr Column<Row, Member> column(std::string_view name, Member Row::*member) {
    return {name, member};
}

/// Per row type: the table's name and its columns but `id` and `version`, in the table's order.
template <class Row>
struct ColumnsOf;

template <>
struct ColumnsOf<Book> {
    static constexpr std::string_view table = "book";
    static constexpr auto columns =
        std::tuple{column("label", &Book::label), column("facts_revision", &Book::factsRevision),
                   column("catch_rule", &Book::catchRule), column("today", &Book::today)};
};
template <>
struct ColumnsOf<FactOverride> {
    static constexpr std::string_view table = "fact_override";
    static constexpr auto columns = std::tuple{column("fact", &FactOverride::fact),
                                               column("value_milli", &FactOverride::valueMilli)};
};
template <>
struct ColumnsOf<Season> {
    static constexpr std::string_view table = "season";
    static constexpr auto columns =
        std::tuple{column("label", &Season::label), column("from_day", &Season::from),
                   column("until_day", &Season::until)};
};
template <>
struct ColumnsOf<Yard> {
    static constexpr std::string_view table = "yard";
    static constexpr auto columns = std::tuple{column("label", &Yard::label),
                                               column("roles", &Yard::roles),
                                               column("hemisphere", &Yard::hemisphere),
                                               column("frost_day", &Yard::frostDay),
                                               column("drones_out_day", &Yard::dronesOutDay),
                                               column("drive_order", &Yard::driveOrder),
                                               column("note", &Yard::note)};
};
template <>
struct ColumnsOf<Box> {
    static constexpr std::string_view table = "box";
    static constexpr auto columns =
        std::tuple{column("label", &Box::label), column("note", &Box::note)};
};
template <>
struct ColumnsOf<BoxStay> {
    static constexpr std::string_view table = "box_stay";
    static constexpr auto columns =
        std::tuple{column("box", &BoxStay::box), column("yard", &BoxStay::yard),
                   column("from_day", &BoxStay::from)};
};
template <>
struct ColumnsOf<BoxLayout> {
    static constexpr std::string_view table = "box_layout";
    static constexpr auto columns =
        std::tuple{column("box", &BoxLayout::box), column("layout", &BoxLayout::layout),
                   column("from_day", &BoxLayout::from)};
};
template <>
struct ColumnsOf<NucSide> {
    static constexpr std::string_view table = "nuc_side";
    static constexpr auto columns =
        std::tuple{column("layout", &NucSide::layout), column("side", &NucSide::side),
                   column("frames", &NucSide::frames)};
};
template <>
struct ColumnsOf<Stocking> {
    static constexpr std::string_view table = "stocking";
    static constexpr auto columns = std::tuple{column("side", &Stocking::side),
                                               column("day", &Stocking::day),
                                               column("hour", &Stocking::hour),
                                               column("bees_ml", &Stocking::beesMl),
                                               column("brood_frames", &Stocking::broodFrames),
                                               column("open_brood", &Stocking::openBrood),
                                               column("donor", &Stocking::donor),
                                               column("note", &Stocking::note)};
};
template <>
struct ColumnsOf<Builder> {
    static constexpr std::string_view table = "builder";
    static constexpr auto columns = std::tuple{column("label", &Builder::label),
                                               column("yard", &Builder::yard),
                                               column("kind", &Builder::kind),
                                               column("open_room", &Builder::openRoom),
                                               column("sealed_room", &Builder::sealedRoom),
                                               column("from_day", &Builder::from),
                                               column("until_day", &Builder::until),
                                               column("note", &Builder::note)};
};
template <>
struct ColumnsOf<MakeUp> {
    static constexpr std::string_view table = "make_up";
    static constexpr auto columns = std::tuple{
        column("builder", &MakeUp::builder), column("day", &MakeUp::day),
        column("hour", &MakeUp::hour),       column("open_brood", &MakeUp::openBrood),
        column("bees_ml", &MakeUp::beesMl),  column("brood_frames", &MakeUp::broodFrames),
        column("donors", &MakeUp::donors),   column("moved_away", &MakeUp::movedAway)};
};
template <>
struct ColumnsOf<BuilderNote> {
    static constexpr std::string_view table = "builder_note";
    static constexpr auto columns = std::tuple{column("builder", &BuilderNote::builder),
                                               column("kind", &BuilderNote::kind),
                                               column("day", &BuilderNote::day),
                                               column("hour", &BuilderNote::hour),
                                               column("open_brood", &BuilderNote::openBrood),
                                               column("brood_age", &BuilderNote::broodAge),
                                               column("donor", &BuilderNote::donor),
                                               column("note", &BuilderNote::note)};
};
template <>
struct ColumnsOf<Method> {
    static constexpr std::string_view table = "method";
    static constexpr auto columns = std::tuple{column("label", &Method::label)};
};
template <>
struct ColumnsOf<Step> {
    static constexpr std::string_view table = "step";
    static constexpr auto columns =
        std::tuple{column("method", &Step::method),    column("step", &Step::step),
                   column("where_kind", &Step::where), column("from_hour", &Step::fromHour),
                   column("to_hour", &Step::toHour),   column("rest_days", &Step::restDays)};
};
template <>
struct ColumnsOf<Line> {
    static constexpr std::string_view table = "line";
    static constexpr auto columns = std::tuple{column("label", &Line::label)};
};
template <>
struct ColumnsOf<Queen> {
    static constexpr std::string_view table = "queen";
    static constexpr auto columns = std::tuple{column("label", &Queen::label),
                                               column("year", &Queen::year),
                                               column("mother", &Queen::mother),
                                               column("line", &Queen::line),
                                               column("breeder_from", &Queen::breederFrom),
                                               column("breeder_until", &Queen::breederUntil),
                                               column("note", &Queen::note)};
};
template <>
struct ColumnsOf<Batch> {
    static constexpr std::string_view table = "batch";
    static constexpr auto columns = std::tuple{column("label", &Batch::label),
                                               column("start", &Batch::start),
                                               column("day", &Batch::day),
                                               column("hour", &Batch::hour),
                                               column("larva_from_h", &Batch::larvaFromH),
                                               column("larva_to_h", &Batch::larvaToH),
                                               column("method", &Batch::method),
                                               column("mating", &Batch::mating),
                                               column("catch_rule", &Batch::catchRule),
                                               column("note", &Batch::note)};
};
template <>
struct ColumnsOf<BatchBar> {
    static constexpr std::string_view table = "batch_bar";
    static constexpr auto columns =
        std::tuple{column("batch", &BatchBar::batch), column("bar", &BatchBar::bar),
                   column("breeder", &BatchBar::breeder), column("cells", &BatchBar::cells)};
};
template <>
struct ColumnsOf<BatchLoad> {
    static constexpr std::string_view table = "batch_load";
    static constexpr auto columns =
        std::tuple{column("batch", &BatchLoad::batch), column("bar", &BatchLoad::bar),
                   column("step", &BatchLoad::step), column("builder", &BatchLoad::builder)};
};
template <>
struct ColumnsOf<BatchShare> {
    static constexpr std::string_view table = "batch_yard";
    static constexpr auto columns =
        std::tuple{column("batch", &BatchShare::batch), column("yard", &BatchShare::yard),
                   column("cells", &BatchShare::cells)};
};
template <>
struct ColumnsOf<Placement> {
    static constexpr std::string_view table = "placement";
    static constexpr auto columns =
        std::tuple{column("batch", &Placement::batch),   column("side", &Placement::side),
                   column("target", &Placement::target), column("day", &Placement::day),
                   column("hour", &Placement::hour),     column("done", &Placement::done)};
};
template <>
struct ColumnsOf<Outcome> {
    static constexpr std::string_view table = "outcome";
    static constexpr auto columns =
        std::tuple{column("batch", &Outcome::batch), column("bar", &Outcome::bar),
                   column("side", &Outcome::side),   column("kind", &Outcome::kind),
                   column("day", &Outcome::day),     column("hour", &Outcome::hour),
                   column("count", &Outcome::count), column("note", &Outcome::note)};
};
template <>
struct ColumnsOf<DayOff> {
    static constexpr std::string_view table = "day_off";
    static constexpr auto columns =
        std::tuple{column("from_day", &DayOff::from), column("until_day", &DayOff::until),
                   column("note", &DayOff::note)};
};

template <>
struct ColumnsOf<Order> {
    static constexpr std::string_view table = "orders";
    static constexpr auto columns =
        std::tuple{column("label", &Order::label),    column("kind", &Order::kind),
                   column("count", &Order::count),    column("not_before", &Order::notBefore),
                   column("due", &Order::due),        column("line", &Order::line),
                   column("part_ok", &Order::partOk), column("sure_permille", &Order::sure),
                   column("weight", &Order::weight),  column("note", &Order::note)};
};
template <>
struct ColumnsOf<WeatherDay> {
    static constexpr std::string_view table = "weather_day";
    static constexpr auto columns = std::tuple{column("date", &WeatherDay::date),
                                               column("tmax_tenths_c", &WeatherDay::tmaxC),
                                               column("tmin_tenths_c", &WeatherDay::tminC),
                                               column("rain_tenths_mm", &WeatherDay::rainMm),
                                               column("wind_tenths_ms", &WeatherDay::windMs),
                                               column("flew", &WeatherDay::flew)};
};
template <>
struct ColumnsOf<OwnTask> {
    static constexpr std::string_view table = "own_task";
    static constexpr auto columns =
        std::tuple{column("day", &OwnTask::day), column("yard", &OwnTask::yard),
                   column("text", &OwnTask::text), column("must", &OwnTask::must)};
};
template <>
struct ColumnsOf<TaskDone> {
    static constexpr std::string_view table = "task_done";
    static constexpr auto columns =
        std::tuple{column("rule", &TaskDone::rule), column("subject", &TaskDone::subject),
                   column("place", &TaskDone::place), column("occurrence", &TaskDone::occurrence),
                   column("day", &TaskDone::day)};
};

template <>
struct ColumnsOf<ClimateMonth> {
    static constexpr std::string_view table = "climate_month";
    static constexpr auto columns = std::tuple{column("month", &ClimateMonth::month),
                                               column("tmax_tenths_c", &ClimateMonth::tmaxC),
                                               column("rain_days_tenths", &ClimateMonth::rainDays)};
};
template <>
struct ColumnsOf<DroneSighting> {
    static constexpr std::string_view table = "drone_sighting";
    static constexpr auto columns = std::tuple{
        column("yard", &DroneSighting::yard), column("day", &DroneSighting::day),
        column("stage", &DroneSighting::stage), column("colonies", &DroneSighting::colonies),
        column("note", &DroneSighting::note)};
};
template <>
struct ColumnsOf<YardNote> {
    static constexpr std::string_view table = "yard_note";
    static constexpr auto columns =
        std::tuple{column("yard", &YardNote::yard), column("kind", &YardNote::kind),
                   column("from_day", &YardNote::from), column("until_day", &YardNote::until),
                   column("note", &YardNote::note)};
};
template <>
struct ColumnsOf<MatingStay> {
    static constexpr std::string_view table = "mating_stay";
    static constexpr auto columns =
        std::tuple{column("batch", &MatingStay::batch), column("yard", &MatingStay::yard),
                   column("from_day", &MatingStay::from), column("until_day", &MatingStay::until)};
};
template <>
struct ColumnsOf<NucCare> {
    static constexpr std::string_view table = "nuc_care";
    static constexpr auto columns = std::tuple{column("side", &NucCare::side),
                                               column("day", &NucCare::day),
                                               column("hour", &NucCare::hour),
                                               column("kind", &NucCare::kind),
                                               column("bees_ml", &NucCare::beesMl),
                                               column("brood_frames", &NucCare::broodFrames),
                                               column("open_brood", &NucCare::openBrood),
                                               column("donor", &NucCare::donor),
                                               column("note", &NucCare::note)};
};
template <>
struct ColumnsOf<MiteWork> {
    static constexpr std::string_view table = "mite_work";
    static constexpr auto columns =
        std::tuple{column("side", &MiteWork::side), column("builder", &MiteWork::builder),
                   column("day", &MiteWork::day), column("what", &MiteWork::what),
                   column("note", &MiteWork::note)};
};
template <>
struct ColumnsOf<QueenNote> {
    static constexpr std::string_view table = "queen_note";
    static constexpr auto columns =
        std::tuple{column("queen", &QueenNote::queen), column("day", &QueenNote::day),
                   column("kind", &QueenNote::kind), column("note", &QueenNote::note)};
};
template <>
struct ColumnsOf<CaughtQueen> {
    static constexpr std::string_view table = "caught_queen";
    static constexpr auto columns =
        std::tuple{column("queen", &CaughtQueen::queen), column("batch", &CaughtQueen::batch),
                   column("side", &CaughtQueen::side), column("day", &CaughtQueen::day)};
};
template <>
struct ColumnsOf<QueenStay> {
    static constexpr std::string_view table = "queen_stay";
    static constexpr auto columns =
        std::tuple{column("queen", &QueenStay::queen), column("place", &QueenStay::place),
                   column("from_day", &QueenStay::from), column("note", &QueenStay::note)};
};
template <>
struct ColumnsOf<OrderTerms> {
    static constexpr std::string_view table = "order_terms";
    static constexpr auto columns = std::tuple{
        column("order_id", &OrderTerms::order), column("standing", &OrderTerms::standing),
        column("purpose", &OrderTerms::purpose), column("ship_days", &OrderTerms::shipDays)};
};
template <>
struct ColumnsOf<Earmark> {
    static constexpr std::string_view table = "earmark";
    static constexpr auto columns =
        std::tuple{column("order_id", &Earmark::order), column("batch", &Earmark::batch),
                   column("count", &Earmark::count)};
};
template <>
struct ColumnsOf<Delivery> {
    static constexpr std::string_view table = "delivery";
    static constexpr auto columns =
        std::tuple{column("order_id", &Delivery::order), column("day", &Delivery::day),
                   column("count", &Delivery::count),    column("from_batch", &Delivery::fromBatch),
                   column("yard", &Delivery::yard),      column("failed", &Delivery::failed),
                   column("why", &Delivery::why),        column("note", &Delivery::note)};
};
template <>
struct ColumnsOf<PromiseMove> {
    static constexpr std::string_view table = "promise_move";
    static constexpr auto columns = std::tuple{
        column("order_id", &PromiseMove::order), column("day", &PromiseMove::day),
        column("due_before", &PromiseMove::dueBefore), column("due_after", &PromiseMove::dueAfter),
        column("reason", &PromiseMove::reason)};
};
template <>
struct ColumnsOf<QueenLot> {
    static constexpr std::string_view table = "queen_lot";
    static constexpr auto columns =
        std::tuple{column("day", &QueenLot::day), column("count", &QueenLot::count),
                   column("line", &QueenLot::line), column("proven", &QueenLot::proven),
                   column("note", &QueenLot::note)};
};
template <>
struct ColumnsOf<LeftOut> {
    static constexpr std::string_view table = "left_out";
    static constexpr auto columns =
        std::tuple{column("batch", &LeftOut::batch), column("reason", &LeftOut::reason)};
};

/// Calls `visit(Column)` for each column of a row type.
template <class Row, class Visitor>
constexpr void forEachColumn(Visitor&& visit) {
    std::apply([&](const auto&... c) { (visit(c), ...); }, ColumnsOf<Row>::columns);
}

/// All row types, in an order in which each refers only to itself and to earlier ones.
template <class... Rows>
struct RowList {};
using AllRows =
    RowList<Book, FactOverride, Season, Yard, Box, BoxStay, BoxLayout, NucSide, Stocking, Builder,
            MakeUp, BuilderNote, Method, Step, Line, Queen, Batch, BatchBar, BatchLoad, BatchShare,
            Placement, Outcome, DayOff, Order, WeatherDay, OwnTask, TaskDone, ClimateMonth,
            DroneSighting, YardNote, MatingStay, NucCare, MiteWork, QueenNote, CaughtQueen,
            QueenStay, OrderTerms, Earmark, Delivery, PromiseMove, QueenLot, LeftOut>;

template <class... Rows, class Visitor>
constexpr void forEachRowType(RowList<Rows...>, Visitor&& visit) {
    (visit(std::type_identity<Rows>{}), ...);
}

}  // namespace tenthday
