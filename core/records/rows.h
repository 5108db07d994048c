/// @file rows.h  What a book keeps, a struct per table. Plain values; rules stand in validity.h.
///
/// Every row has an id made before the edit and a version that only rises (1 when new).
/// Days are calendar days at the apiary; an hour that is empty means 12:00 where one is needed.
#pragma once
#include <cstdint>
#include <memory>
#include <optional>
#include <string>

#include "base/count.h"
#include "base/id.h"
#include "calendar/day.h"
#include "records/kinds.h"

namespace tenthday {

/// A row in memory: never changed in place, shared between snapshots.
template <class Row>
using Ptr = std::shared_ptr<const Row>;

/// The operation; a book has one.
struct Book {
    Id<Book> id;
    std::int32_t version = 1;
    std::string label;               ///< name of the operation, printed on papers
    std::int32_t factsRevision = 1;  ///< pinned: a newer program keeps these defaults
    CatchRule catchRule = CatchRule::SealedBrood;
    std::optional<Day> today;  ///< set in the example only: its clock stands still
    friend bool operator==(const Book&, const Book&) = default;
};

/// A trade number of the user's own, in thousandths of the fact's unit.
struct FactOverride {
    Id<FactOverride> id;
    std::int32_t version = 1;
    std::string fact;  ///< token of a Fact
    std::int32_t valueMilli = 0;
    friend bool operator==(const FactOverride&, const FactOverride&) = default;
};

/// A rearing season; it may cross the new year.
struct Season {
    Id<Season> id;
    std::int32_t version = 1;
    std::string label;
    Day from;
    Day until;
    friend bool operator==(const Season&, const Season&) = default;
};

struct Yard {
    Id<Yard> id;
    std::int32_t version = 1;
    std::string label;
    std::string roles;  ///< any of: mating builder donor drone, a space between
    Hemisphere hemisphere = Hemisphere::North;
    std::optional<Day> frostDay;      ///< first hard frost; month and day count, the year does not
    std::optional<Day> dronesOutDay;  ///< drones are thrown out; month and day count
    std::int32_t driveOrder = 0;      ///< place on the round, 0 first
    std::string note;
    friend bool operator==(const Yard&, const Yard&) = default;
};

/// A nuc box. Where it stands and how it is divided are rows of their own.
struct Box {
    Id<Box> id;
    std::int32_t version = 1;
    std::string label;
    std::string note;
    friend bool operator==(const Box&, const Box&) = default;
};

/// A box stands in a yard from a day on, until its next stay.
struct BoxStay {
    Id<BoxStay> id;
    std::int32_t version = 1;
    Id<Box> box;
    std::optional<Id<Yard>> yard;  ///< empty: retired, stands nowhere
    Day from;
    friend bool operator==(const BoxStay&, const BoxStay&) = default;
};

/// A box is divided so from a day on, until its next layout. Its sides are NucSide rows.
struct BoxLayout {
    Id<BoxLayout> id;
    std::int32_t version = 1;
    Id<Box> box;
    std::string layout;  ///< frames of each side: "7", "3+3"
    Day from;
    friend bool operator==(const BoxLayout&, const BoxLayout&) = default;
};

/// One mating nuc: a side of a box under one layout. A new layout makes new sides.
struct NucSide {
    Id<NucSide> id;
    std::int32_t version = 1;
    Id<BoxLayout> layout;
    std::string side;  ///< A, B, C ...; "-" when undivided
    Frames frames;
    friend bool operator==(const NucSide&, const NucSide&) = default;
};

/// Bees put into a nuc.
struct Stocking {
    Id<Stocking> id;
    std::int32_t version = 1;
    Id<NucSide> side;
    Day day;
    std::optional<Hour> hour;
    std::optional<BeesMl> beesMl;
    std::optional<Frames> broodFrames;
    bool openBrood = false;
    std::string donor;  ///< yard or colony the bees came from
    std::string note;
    friend bool operator==(const Stocking&, const Stocking&) = default;
};

/// A box or colony that raises cells, or an incubator.
struct Builder {
    Id<Builder> id;
    std::int32_t version = 1;
    std::string label;
    Id<Yard> yard;
    BuilderKind kind = BuilderKind::StarterFinisher;
    std::optional<Cells> openRoom;    ///< started cells it takes; empty: the default of its kind
    std::optional<Cells> sealedRoom;  ///< sealed cells it takes; empty: no bound
    Day from;
    std::optional<Day> until;  ///< last day, inclusive; empty: still there
    std::string note;
    friend bool operator==(const Builder&, const Builder&) = default;
};

/// A builder is made up from shaken bees and brood, or dequeened.
struct MakeUp {
    Id<MakeUp> id;
    std::int32_t version = 1;
    Id<Builder> builder;
    Day day;
    std::optional<Hour> hour;
    bool openBrood = false;  ///< holds eggs or young larvae of its own: wild cells can be begun
    std::optional<BeesMl> beesMl;
    std::optional<Frames> broodFrames;
    std::string donors;
    bool movedAway = false;  ///< stands out of flight range of its donors
    friend bool operator==(const MakeUp&, const MakeUp&) = default;
};

struct BuilderNote {
    Id<BuilderNote> id;
    std::int32_t version = 1;
    Id<Builder> builder;
    BuilderNoteKind kind = BuilderNoteKind::Look;
    Day day;
    std::optional<Hour> hour;
    bool openBrood = false;  ///< brood put in had eggs or larvae
    BroodAge broodAge = BroodAge::All;
    std::string donor;  ///< yard or colony that bees or brood came from
    std::string note;
    friend bool operator==(const BuilderNote&, const BuilderNote&) = default;
};

/// A way of raising cells, as steps. A used method is copied, never edited.
struct Method {
    Id<Method> id;
    std::int32_t version = 1;
    std::string label;
    friend bool operator==(const Method&, const Method&) = default;
};

struct Step {
    Id<Step> id;
    std::int32_t version = 1;
    Id<Method> method;
    std::int32_t step = 1;  ///< 1, 2, ...
    BuilderKind where = BuilderKind::StarterFinisher;
    std::int32_t fromHour = 0;  ///< h after the graft
    std::int32_t toHour = 240;  ///< h after the graft, not included
    std::int32_t restDays = 0;  ///< days the builder rests after this step
    friend bool operator==(const Step&, const Step&) = default;
};

struct Line {
    Id<Line> id;
    std::int32_t version = 1;
    std::string label;
    friend bool operator==(const Line&, const Line&) = default;
};

/// A queen; a breeder queen is one with a span as breeder.
struct Queen {
    Id<Queen> id;
    std::int32_t version = 1;
    std::string label;
    std::optional<std::int32_t> year;  ///< year of birth, which gives her mark
    std::optional<Id<Queen>> mother;
    std::optional<Id<Line>> line;
    std::optional<Day> breederFrom;
    std::optional<Day> breederUntil;
    std::string note;
    friend bool operator==(const Queen&, const Queen&) = default;
};

struct Batch {
    Id<Batch> id;
    std::int32_t version = 1;
    std::string label;
    Start start = Start::Graft;
    Day day;  ///< day of the start (of the graft for Start::Graft)
    std::optional<Hour> hour;
    std::optional<std::int32_t> larvaFromH;  ///< youngest larva, h since hatching, 0..72
    std::optional<std::int32_t> larvaToH;    ///< oldest larva, h since hatching, 0..72
    Id<Method> method;
    Mating mating = Mating::Open;
    std::optional<CatchRule> catchRule;  ///< empty: the book's
    std::string note;
    friend bool operator==(const Batch&, const Batch&) = default;
};

/// One bar of a batch: grafts from one breeder queen.
struct BatchBar {
    Id<BatchBar> id;
    std::int32_t version = 1;
    Id<Batch> batch;
    std::int32_t bar = 1;  ///< 1, 2, ...
    std::optional<Id<Queen>> breeder;
    Cells cells;  ///< grafts
    friend bool operator==(const BatchBar&, const BatchBar&) = default;
};

/// Where a bar stands during a step of the method.
struct BatchLoad {
    Id<BatchLoad> id;
    std::int32_t version = 1;
    Id<Batch> batch;
    std::int32_t bar = 1;
    std::int32_t step = 1;
    Id<Builder> builder;
    friend bool operator==(const BatchLoad&, const BatchLoad&) = default;
};

/// Planned cells of a batch for a yard (table batch_yard).
struct BatchShare {
    Id<BatchShare> id;
    std::int32_t version = 1;
    Id<Batch> batch;
    Id<Yard> yard;
    Cells cells;
    friend bool operator==(const BatchShare&, const BatchShare&) = default;
};

/// One ripe cell given, or planned to be given, to a named place.
struct Placement {
    Id<Placement> id;
    std::int32_t version = 1;
    Id<Batch> batch;
    std::optional<Id<NucSide>> side;  ///< set when target is a nuc
    CellTarget target = CellTarget::Nuc;
    Day day;
    std::optional<Hour> hour;
    bool done = false;
    friend bool operator==(const Placement&, const Placement&) = default;
};

/// What was seen or done. What was observed never moves with a plan.
struct Outcome {
    Id<Outcome> id;
    std::int32_t version = 1;
    Id<Batch> batch;
    std::optional<std::int32_t> bar;
    std::optional<Id<NucSide>> side;
    OutcomeKind kind = OutcomeKind::Graft;
    Day day;
    std::optional<Hour> hour;
    std::optional<Cells> count;
    std::string note;
    friend bool operator==(const Outcome&, const Outcome&) = default;
};

struct DayOff {
    Id<DayOff> id;
    std::int32_t version = 1;
    Day from;
    Day until;  ///< inclusive
    std::string note;
    friend bool operator==(const DayOff&, const DayOff&) = default;
};

/// Queens or cells promised to somebody, or wanted for oneself.
struct Order {
    Id<Order> id;
    std::int32_t version = 1;
    std::string label;  ///< whom it is for, as a code
    OrderKind kind = OrderKind::Mated;
    std::int32_t count = 1;
    std::optional<Day> notBefore;
    Day due;
    std::optional<Id<Line>> line;  ///< empty: any
    bool partOk = false;           ///< may be delivered in parts
    Tenths sure{900};              ///< how sure it must be, %
    std::int32_t weight = 1;       ///< importance once something is short
    std::string note;
    friend bool operator==(const Order&, const Order&) = default;
};

/// The weather of one day at the apiary.
struct WeatherDay {
    Id<WeatherDay> id;
    std::int32_t version = 1;
    Day date;
    std::optional<Tenths> tmaxC;
    std::optional<Tenths> tminC;
    std::optional<Tenths> rainMm;
    std::optional<Tenths> windMs;
    std::optional<bool> flew;  ///< queens could fly: seen
    friend bool operator==(const WeatherDay&, const WeatherDay&) = default;
};

/// Something the user wants to be reminded of.
struct OwnTask {
    Id<OwnTask> id;
    std::int32_t version = 1;
    Day day;
    std::optional<Id<Yard>> yard;
    std::string text;
    bool must = false;  ///< on that very day
    friend bool operator==(const OwnTask&, const OwnTask&) = default;
};

/// A task ticked as done. Rule, subject, place and occurrence name it; its day does not, so a tick
/// survives when the task moves.
struct TaskDone {
    Id<TaskDone> id;
    std::int32_t version = 1;
    TaskRule rule = TaskRule::Own;
    std::string subject;          ///< id of the batch, make-up, brood note, stocking or own task
    std::string place;            ///< id of the builder or yard; empty where there is none
    std::int32_t occurrence = 0;  ///< step of a method, turn
    Day day;                      ///< on which it was done
    friend bool operator==(const TaskDone&, const TaskDone&) = default;
};

/// A month's usual weather at the apiary: stands in where no past year is recorded.
struct ClimateMonth {
    Id<ClimateMonth> id;
    std::int32_t version = 1;
    std::int32_t month = 1;  ///< 1 to 12
    Tenths tmaxC;            ///< mean of the daily highest temperatures
    std::optional<Tenths> rainDays;
    friend bool operator==(const ClimateMonth&, const ClimateMonth&) = default;
};

/// Drones or their brood seen in a yard, or drone comb put in.
struct DroneSighting {
    Id<DroneSighting> id;
    std::int32_t version = 1;
    Id<Yard> yard;
    Day day;
    DroneStage stage = DroneStage::CombIn;
    std::optional<std::int32_t> colonies;  ///< with drones, in this yard
    std::string note;
    friend bool operator==(const DroneSighting&, const DroneSighting&) = default;
};

/// Nectar flow, dearth or robbing in a yard.
struct YardNote {
    Id<YardNote> id;
    std::int32_t version = 1;
    Id<Yard> yard;
    YardNoteKind kind = YardNoteKind::Flow;
    Day from;
    Day until;  ///< inclusive
    std::string note;
    friend bool operator==(const YardNote&, const YardNote&) = default;
};

/// A batch's nucs at a mating station, or the days its queens are inseminated.
struct MatingStay {
    Id<MatingStay> id;
    std::int32_t version = 1;
    Id<Batch> batch;
    std::optional<Id<Yard>> yard;  ///< the station; none for insemination
    Day from;                      ///< brought there; first insemination
    Day until;                     ///< fetched back; last insemination
    friend bool operator==(const MatingStay&, const MatingStay&) = default;
};

/// Upkeep of a nuc's bees between its stockings.
struct NucCare {
    Id<NucCare> id;
    std::int32_t version = 1;
    Id<NucSide> side;
    Day day;
    std::optional<Hour> hour;
    NucCareKind kind = NucCareKind::Boost;
    std::optional<BeesMl> beesMl;  ///< put in, or taken out of a nuc that is thinned
    std::optional<Frames> broodFrames;
    bool openBrood = false;
    std::string donor;  ///< yard or colony that bees or brood came from
    std::string note;
    friend bool operator==(const NucCare&, const NucCare&) = default;
};

/// Work against mites in a nuc or a builder: what was done in a span without open brood. Just one
/// of side and builder is set.
struct MiteWork {
    Id<MiteWork> id;
    std::int32_t version = 1;
    std::optional<Id<NucSide>> side;
    std::optional<Id<Builder>> builder;
    Day day;
    std::string what;
    std::string note;
    friend bool operator==(const MiteWork&, const MiteWork&) = default;
};

/// Whether a breeder queen's comb had larvae fit to graft.
struct QueenNote {
    Id<QueenNote> id;
    std::int32_t version = 1;
    Id<Queen> queen;
    Day day;
    QueenNoteKind kind = QueenNoteKind::Larvae;
    std::string note;
    friend bool operator==(const QueenNote&, const QueenNote&) = default;
};

/// The catch a queen came from: a queen of her own row, out of a batch's nuc.
struct CaughtQueen {
    Id<CaughtQueen> id;
    std::int32_t version = 1;
    Id<Queen> queen;
    Id<Batch> batch;
    std::optional<Id<NucSide>> side;
    Day day;
    friend bool operator==(const CaughtQueen&, const CaughtQueen&) = default;
};

/// A queen is somewhere from a day on, until her next stay.
struct QueenStay {
    Id<QueenStay> id;
    std::int32_t version = 1;
    Id<Queen> queen;
    QueenPlace place = QueenPlace::Bank;
    Day from;
    std::string note;  ///< which bank or colony, to whom, how lost; nothing for her nuc
    friend bool operator==(const QueenStay&, const QueenStay&) = default;
};

/// How an order stands and what it is for. An order without one is open and goes any day.
struct OrderTerms {
    Id<OrderTerms> id;
    std::int32_t version = 1;
    Id<Order> order;  ///< has at most one
    OrderStanding standing = OrderStanding::Open;
    OrderPurpose purpose = OrderPurpose::None;
    std::string shipDays;  ///< ISO weekdays it can go on, rising: "1234"; empty: any
    friend bool operator==(const OrderTerms&, const OrderTerms&) = default;
};

/// Queens of a batch that are meant for an order, by hand.
struct Earmark {
    Id<Earmark> id;
    std::int32_t version = 1;
    Id<Order> order;
    Id<Batch> batch;
    std::int32_t count = 1;
    friend bool operator==(const Earmark&, const Earmark&) = default;
};

/// What went out for an order, and how much of it has to be replaced.
struct Delivery {
    Id<Delivery> id;
    std::int32_t version = 1;
    Id<Order> order;
    Day day;
    std::int32_t count = 1;
    std::optional<Id<Batch>> fromBatch;  ///< may be of another season
    std::optional<Id<Yard>> yard;        ///< where they mated
    std::int32_t failed = 0;             ///< of these: 0..count
    DeliveryLoss why = DeliveryLoss::None;
    std::string note;
    friend bool operator==(const Delivery&, const Delivery&) = default;
};

/// The due day of an order was moved.
struct PromiseMove {
    Id<PromiseMove> id;
    std::int32_t version = 1;
    Id<Order> order;
    Day day;  ///< of the change
    Day dueBefore;
    Day dueAfter;
    std::string reason;
    friend bool operator==(const PromiseMove&, const PromiseMove&) = default;
};

/// Mated queens bought in, or left from the year before.
struct QueenLot {
    Id<QueenLot> id;
    std::int32_t version = 1;
    Day day;  ///< in hand from
    std::int32_t count = 1;
    std::optional<Id<Line>> line;
    bool proven = false;
    std::string note;
    friend bool operator==(const QueenLot&, const QueenLot&) = default;
};

/// A batch that is odd, and does not speak for the rates of losses.
struct LeftOut {
    Id<LeftOut> id;
    std::int32_t version = 1;
    Id<Batch> batch;
    std::string reason;
    friend bool operator==(const LeftOut&, const LeftOut&) = default;
};

/// How long a kind of task takes: to begin and end it, and for each piece. A rule has one at most.
struct WorkTime {
    Id<WorkTime> id;
    std::int32_t version = 1;
    TaskRule rule = TaskRule::Own;
    std::int32_t minutes = 0;  ///< once per task, 0..1440
    Tenths each;               ///< minutes more for each graft, cell, queen or nuc, 0..240
    friend bool operator==(const WorkTime&, const WorkTime&) = default;
};

/// Minutes of driving between two places, the same both ways. Two places have one at most.
struct DriveTime {
    Id<DriveTime> id;
    std::int32_t version = 1;
    std::optional<Id<Yard>> from;  ///< empty: home
    Id<Yard> to;
    std::int32_t minutes = 0;  ///< 0..1440
    friend bool operator==(const DriveTime&, const DriveTime&) = default;
};

/// A task given to somebody. Named as in TaskDone, so that it stays given when the task moves.
struct TaskGiven {
    Id<TaskGiven> id;
    std::int32_t version = 1;
    TaskRule rule = TaskRule::Own;
    std::string subject;          ///< as in TaskDone
    std::string place;            ///< as in TaskDone
    std::int32_t occurrence = 0;  ///< as in TaskDone
    std::string who;              ///< initials, 1 to 12 bytes
    friend bool operator==(const TaskGiven&, const TaskGiven&) = default;
};

}  // namespace tenthday
