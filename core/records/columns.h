/// @file columns.h  Each row's columns, once: SQL, the change log, CSV and validity all read these.
#pragma once
#include <string_view>

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

/// Per row type: the table's name and its columns but `id` and `version`, in the table's order. A
/// function, no tuple: compiled where columns are walked, not in every source.
template <class Row>
struct ColumnsOf;

template <>
struct ColumnsOf<Book> {
    static constexpr std::string_view table = "book";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Book::label));
        visit(column("facts_revision", &Book::factsRevision));
        visit(column("catch_rule", &Book::catchRule));
        visit(column("today", &Book::today));
    }
};
template <>
struct ColumnsOf<FactOverride> {
    static constexpr std::string_view table = "fact_override";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("fact", &FactOverride::fact));
        visit(column("value_milli", &FactOverride::valueMilli));
    }
};
template <>
struct ColumnsOf<Season> {
    static constexpr std::string_view table = "season";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Season::label));
        visit(column("from_day", &Season::from));
        visit(column("until_day", &Season::until));
    }
};
template <>
struct ColumnsOf<Yard> {
    static constexpr std::string_view table = "yard";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Yard::label));
        visit(column("roles", &Yard::roles));
        visit(column("hemisphere", &Yard::hemisphere));
        visit(column("frost_day", &Yard::frostDay));
        visit(column("drones_out_day", &Yard::dronesOutDay));
        visit(column("drive_order", &Yard::driveOrder));
        visit(column("note", &Yard::note));
    }
};
template <>
struct ColumnsOf<Box> {
    static constexpr std::string_view table = "box";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Box::label));
        visit(column("note", &Box::note));
    }
};
template <>
struct ColumnsOf<BoxStay> {
    static constexpr std::string_view table = "box_stay";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("box", &BoxStay::box));
        visit(column("yard", &BoxStay::yard));
        visit(column("from_day", &BoxStay::from));
    }
};
template <>
struct ColumnsOf<BoxLayout> {
    static constexpr std::string_view table = "box_layout";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("box", &BoxLayout::box));
        visit(column("layout", &BoxLayout::layout));
        visit(column("from_day", &BoxLayout::from));
    }
};
template <>
struct ColumnsOf<NucSide> {
    static constexpr std::string_view table = "nuc_side";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("layout", &NucSide::layout));
        visit(column("side", &NucSide::side));
        visit(column("frames", &NucSide::frames));
    }
};
template <>
struct ColumnsOf<Stocking> {
    static constexpr std::string_view table = "stocking";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("side", &Stocking::side));
        visit(column("day", &Stocking::day));
        visit(column("hour", &Stocking::hour));
        visit(column("bees_ml", &Stocking::beesMl));
        visit(column("brood_frames", &Stocking::broodFrames));
        visit(column("open_brood", &Stocking::openBrood));
        visit(column("donor", &Stocking::donor));
        visit(column("note", &Stocking::note));
    }
};
template <>
struct ColumnsOf<Builder> {
    static constexpr std::string_view table = "builder";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Builder::label));
        visit(column("yard", &Builder::yard));
        visit(column("kind", &Builder::kind));
        visit(column("open_room", &Builder::openRoom));
        visit(column("sealed_room", &Builder::sealedRoom));
        visit(column("from_day", &Builder::from));
        visit(column("until_day", &Builder::until));
        visit(column("note", &Builder::note));
    }
};
template <>
struct ColumnsOf<MakeUp> {
    static constexpr std::string_view table = "make_up";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("builder", &MakeUp::builder));
        visit(column("day", &MakeUp::day));
        visit(column("hour", &MakeUp::hour));
        visit(column("open_brood", &MakeUp::openBrood));
        visit(column("bees_ml", &MakeUp::beesMl));
        visit(column("brood_frames", &MakeUp::broodFrames));
        visit(column("donors", &MakeUp::donors));
        visit(column("moved_away", &MakeUp::movedAway));
    }
};
template <>
struct ColumnsOf<BuilderNote> {
    static constexpr std::string_view table = "builder_note";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("builder", &BuilderNote::builder));
        visit(column("kind", &BuilderNote::kind));
        visit(column("day", &BuilderNote::day));
        visit(column("hour", &BuilderNote::hour));
        visit(column("open_brood", &BuilderNote::openBrood));
        visit(column("brood_age", &BuilderNote::broodAge));
        visit(column("donor", &BuilderNote::donor));
        visit(column("note", &BuilderNote::note));
    }
};
template <>
struct ColumnsOf<Method> {
    static constexpr std::string_view table = "method";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Method::label));
    }
};
template <>
struct ColumnsOf<Step> {
    static constexpr std::string_view table = "step";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("method", &Step::method));
        visit(column("step", &Step::step));
        visit(column("where_kind", &Step::where));
        visit(column("from_hour", &Step::fromHour));
        visit(column("to_hour", &Step::toHour));
        visit(column("rest_days", &Step::restDays));
    }
};
template <>
struct ColumnsOf<Line> {
    static constexpr std::string_view table = "line";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Line::label));
    }
};
template <>
struct ColumnsOf<Queen> {
    static constexpr std::string_view table = "queen";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Queen::label));
        visit(column("year", &Queen::year));
        visit(column("mother", &Queen::mother));
        visit(column("line", &Queen::line));
        visit(column("breeder_from", &Queen::breederFrom));
        visit(column("breeder_until", &Queen::breederUntil));
        visit(column("note", &Queen::note));
    }
};
template <>
struct ColumnsOf<Batch> {
    static constexpr std::string_view table = "batch";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Batch::label));
        visit(column("start", &Batch::start));
        visit(column("day", &Batch::day));
        visit(column("hour", &Batch::hour));
        visit(column("larva_from_h", &Batch::larvaFromH));
        visit(column("larva_to_h", &Batch::larvaToH));
        visit(column("method", &Batch::method));
        visit(column("mating", &Batch::mating));
        visit(column("catch_rule", &Batch::catchRule));
        visit(column("note", &Batch::note));
    }
};
template <>
struct ColumnsOf<BatchBar> {
    static constexpr std::string_view table = "batch_bar";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("batch", &BatchBar::batch));
        visit(column("bar", &BatchBar::bar));
        visit(column("breeder", &BatchBar::breeder));
        visit(column("cells", &BatchBar::cells));
    }
};
template <>
struct ColumnsOf<BatchLoad> {
    static constexpr std::string_view table = "batch_load";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("batch", &BatchLoad::batch));
        visit(column("bar", &BatchLoad::bar));
        visit(column("step", &BatchLoad::step));
        visit(column("builder", &BatchLoad::builder));
    }
};
template <>
struct ColumnsOf<BatchShare> {
    static constexpr std::string_view table = "batch_yard";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("batch", &BatchShare::batch));
        visit(column("yard", &BatchShare::yard));
        visit(column("cells", &BatchShare::cells));
    }
};
template <>
struct ColumnsOf<Placement> {
    static constexpr std::string_view table = "placement";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("batch", &Placement::batch));
        visit(column("side", &Placement::side));
        visit(column("target", &Placement::target));
        visit(column("day", &Placement::day));
        visit(column("hour", &Placement::hour));
        visit(column("done", &Placement::done));
    }
};
template <>
struct ColumnsOf<Outcome> {
    static constexpr std::string_view table = "outcome";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("batch", &Outcome::batch));
        visit(column("bar", &Outcome::bar));
        visit(column("side", &Outcome::side));
        visit(column("kind", &Outcome::kind));
        visit(column("day", &Outcome::day));
        visit(column("hour", &Outcome::hour));
        visit(column("count", &Outcome::count));
        visit(column("note", &Outcome::note));
    }
};
template <>
struct ColumnsOf<DayOff> {
    static constexpr std::string_view table = "day_off";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("from_day", &DayOff::from));
        visit(column("until_day", &DayOff::until));
        visit(column("note", &DayOff::note));
    }
};

template <>
struct ColumnsOf<Order> {
    static constexpr std::string_view table = "orders";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("label", &Order::label));
        visit(column("kind", &Order::kind));
        visit(column("count", &Order::count));
        visit(column("not_before", &Order::notBefore));
        visit(column("due", &Order::due));
        visit(column("line", &Order::line));
        visit(column("part_ok", &Order::partOk));
        visit(column("sure_permille", &Order::sure));
        visit(column("weight", &Order::weight));
        visit(column("note", &Order::note));
    }
};
template <>
struct ColumnsOf<WeatherDay> {
    static constexpr std::string_view table = "weather_day";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("date", &WeatherDay::date));
        visit(column("tmax_tenths_c", &WeatherDay::tmaxC));
        visit(column("tmin_tenths_c", &WeatherDay::tminC));
        visit(column("rain_tenths_mm", &WeatherDay::rainMm));
        visit(column("wind_tenths_ms", &WeatherDay::windMs));
        visit(column("flew", &WeatherDay::flew));
    }
};
template <>
struct ColumnsOf<OwnTask> {
    static constexpr std::string_view table = "own_task";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("day", &OwnTask::day));
        visit(column("yard", &OwnTask::yard));
        visit(column("text", &OwnTask::text));
        visit(column("must", &OwnTask::must));
    }
};
template <>
struct ColumnsOf<TaskDone> {
    static constexpr std::string_view table = "task_done";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("rule", &TaskDone::rule));
        visit(column("subject", &TaskDone::subject));
        visit(column("place", &TaskDone::place));
        visit(column("occurrence", &TaskDone::occurrence));
        visit(column("day", &TaskDone::day));
    }
};

template <>
struct ColumnsOf<ClimateMonth> {
    static constexpr std::string_view table = "climate_month";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("month", &ClimateMonth::month));
        visit(column("tmax_tenths_c", &ClimateMonth::tmaxC));
        visit(column("rain_days_tenths", &ClimateMonth::rainDays));
    }
};
template <>
struct ColumnsOf<DroneSighting> {
    static constexpr std::string_view table = "drone_sighting";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("yard", &DroneSighting::yard));
        visit(column("day", &DroneSighting::day));
        visit(column("stage", &DroneSighting::stage));
        visit(column("colonies", &DroneSighting::colonies));
        visit(column("note", &DroneSighting::note));
    }
};
template <>
struct ColumnsOf<YardNote> {
    static constexpr std::string_view table = "yard_note";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("yard", &YardNote::yard));
        visit(column("kind", &YardNote::kind));
        visit(column("from_day", &YardNote::from));
        visit(column("until_day", &YardNote::until));
        visit(column("note", &YardNote::note));
    }
};
template <>
struct ColumnsOf<MatingStay> {
    static constexpr std::string_view table = "mating_stay";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("batch", &MatingStay::batch));
        visit(column("yard", &MatingStay::yard));
        visit(column("from_day", &MatingStay::from));
        visit(column("until_day", &MatingStay::until));
    }
};
template <>
struct ColumnsOf<NucCare> {
    static constexpr std::string_view table = "nuc_care";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("side", &NucCare::side));
        visit(column("day", &NucCare::day));
        visit(column("hour", &NucCare::hour));
        visit(column("kind", &NucCare::kind));
        visit(column("bees_ml", &NucCare::beesMl));
        visit(column("brood_frames", &NucCare::broodFrames));
        visit(column("open_brood", &NucCare::openBrood));
        visit(column("donor", &NucCare::donor));
        visit(column("note", &NucCare::note));
    }
};
template <>
struct ColumnsOf<MiteWork> {
    static constexpr std::string_view table = "mite_work";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("side", &MiteWork::side));
        visit(column("builder", &MiteWork::builder));
        visit(column("day", &MiteWork::day));
        visit(column("what", &MiteWork::what));
        visit(column("note", &MiteWork::note));
    }
};
template <>
struct ColumnsOf<QueenNote> {
    static constexpr std::string_view table = "queen_note";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("queen", &QueenNote::queen));
        visit(column("day", &QueenNote::day));
        visit(column("kind", &QueenNote::kind));
        visit(column("note", &QueenNote::note));
    }
};
template <>
struct ColumnsOf<CaughtQueen> {
    static constexpr std::string_view table = "caught_queen";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("queen", &CaughtQueen::queen));
        visit(column("batch", &CaughtQueen::batch));
        visit(column("side", &CaughtQueen::side));
        visit(column("day", &CaughtQueen::day));
    }
};
template <>
struct ColumnsOf<QueenStay> {
    static constexpr std::string_view table = "queen_stay";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("queen", &QueenStay::queen));
        visit(column("place", &QueenStay::place));
        visit(column("from_day", &QueenStay::from));
        visit(column("note", &QueenStay::note));
    }
};
template <>
struct ColumnsOf<OrderTerms> {
    static constexpr std::string_view table = "order_terms";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("order_id", &OrderTerms::order));
        visit(column("standing", &OrderTerms::standing));
        visit(column("purpose", &OrderTerms::purpose));
        visit(column("ship_days", &OrderTerms::shipDays));
    }
};
template <>
struct ColumnsOf<Earmark> {
    static constexpr std::string_view table = "earmark";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("order_id", &Earmark::order));
        visit(column("batch", &Earmark::batch));
        visit(column("count", &Earmark::count));
    }
};
template <>
struct ColumnsOf<Delivery> {
    static constexpr std::string_view table = "delivery";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("order_id", &Delivery::order));
        visit(column("day", &Delivery::day));
        visit(column("count", &Delivery::count));
        visit(column("from_batch", &Delivery::fromBatch));
        visit(column("yard", &Delivery::yard));
        visit(column("failed", &Delivery::failed));
        visit(column("why", &Delivery::why));
        visit(column("note", &Delivery::note));
    }
};
template <>
struct ColumnsOf<PromiseMove> {
    static constexpr std::string_view table = "promise_move";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("order_id", &PromiseMove::order));
        visit(column("day", &PromiseMove::day));
        visit(column("due_before", &PromiseMove::dueBefore));
        visit(column("due_after", &PromiseMove::dueAfter));
        visit(column("reason", &PromiseMove::reason));
    }
};
template <>
struct ColumnsOf<QueenLot> {
    static constexpr std::string_view table = "queen_lot";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("day", &QueenLot::day));
        visit(column("count", &QueenLot::count));
        visit(column("line", &QueenLot::line));
        visit(column("proven", &QueenLot::proven));
        visit(column("note", &QueenLot::note));
    }
};
template <>
struct ColumnsOf<LeftOut> {
    static constexpr std::string_view table = "left_out";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("batch", &LeftOut::batch));
        visit(column("reason", &LeftOut::reason));
    }
};
template <>
struct ColumnsOf<WorkTime> {
    static constexpr std::string_view table = "work_time";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("rule", &WorkTime::rule));
        visit(column("minutes", &WorkTime::minutes));
        visit(column("each_tenths_min", &WorkTime::each));
    }
};
template <>
struct ColumnsOf<DriveTime> {
    static constexpr std::string_view table = "drive_time";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("from_yard", &DriveTime::from));
        visit(column("to_yard", &DriveTime::to));
        visit(column("minutes", &DriveTime::minutes));
    }
};
template <>
struct ColumnsOf<TaskGiven> {
    static constexpr std::string_view table = "task_given";
    template <class Visitor>
    static constexpr void each(Visitor&& visit) {
        visit(column("rule", &TaskGiven::rule));
        visit(column("subject", &TaskGiven::subject));
        visit(column("place", &TaskGiven::place));
        visit(column("occurrence", &TaskGiven::occurrence));
        visit(column("who", &TaskGiven::who));
    }
};

/// Calls `visit(Column)` for each column of a row type.
template <class Row, class Visitor>
constexpr void forEachColumn(Visitor&& visit) {
    ColumnsOf<Row>::each(visit);
}

/// All row types, in an order in which each refers only to itself and to earlier ones.
template <class... Rows>
struct RowList {};
using AllRows =
    RowList<Book, FactOverride, Season, Yard, Box, BoxStay, BoxLayout, NucSide, Stocking, Builder,
            MakeUp, BuilderNote, Method, Step, Line, Queen, Batch, BatchBar, BatchLoad, BatchShare,
            Placement, Outcome, DayOff, Order, WeatherDay, OwnTask, TaskDone, ClimateMonth,
            DroneSighting, YardNote, MatingStay, NucCare, MiteWork, QueenNote, CaughtQueen,
            QueenStay, OrderTerms, Earmark, Delivery, PromiseMove, QueenLot, LeftOut, WorkTime,
            DriveTime, TaskGiven>;

template <class... Rows, class Visitor>
constexpr void forEachRowType(RowList<Rows...>, Visitor&& visit) {
    (visit(std::type_identity<Rows>{}), ...);
}

}  // namespace tenthday
