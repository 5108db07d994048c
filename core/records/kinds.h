/// @file kinds.h  Tokens of the records: the same in SQL, CSV and JSON.
#pragma once
#include <cstdint>

#include "base/tokens.h"
#include "biology/drones.h"

namespace tenthday {

enum class Hemisphere : std::uint8_t { North, South };
/// What the hours of a batch hang on.
enum class Start : std::uint8_t { Graft, Confined, SealedFound, Ripe, Virgin };
/// Whether larvae are grafted: the others begin with cells or queens that are there already.
[[nodiscard]] constexpr bool hasGraft(Start start) { return start <= Start::Confined; }
enum class Mating : std::uint8_t { Open, Station, Insemination };
enum class CatchRule : std::uint8_t { Eggs, SealedBrood, Age };
enum class BuilderKind : std::uint8_t { Starter, Finisher, StarterFinisher, Incubator, Holding };
/// Where a cell goes on the cells day.
enum class CellTarget : std::uint8_t { Nuc, Split, Sold, Caged, Incubator, GivenAway, Culled };
/// What was seen or done; counts belong to the first four.
enum class OutcomeKind : std::uint8_t {
    Graft,        ///< larvae grafted (count)
    TakeCount,    ///< cells started (count)
    Sealed,       ///< cells sealed (count)
    Ripe,         ///< ripe cells taken out (count)
    Emergence,    ///< queens out (nuc or box); of a nuc also: her virgin was seen
    NoneYet,      ///< looked, neither queen nor eggs yet: look again
    FirstEggs,    ///< eggs seen in a nuc
    Larvae,       ///< open worker brood seen in a nuc
    SealedBrood,  ///< sealed worker brood seen in a nuc
    JudgedGood,   ///< queen judged good
    NoQueen,      ///< looked, no queen, no eggs
    DroneLayer,   ///< queen lays drones only
    Catch,        ///< queen caught, nuc queenless
    Spent,        ///< nuc given up for the season
};
/// What an order is for.
enum class OrderKind : std::uint8_t { RipeCell, Virgin, Mated, Proven, Own };
/// Why there is something to do. In the order of one day's work at one place.
enum class TaskRule : std::uint8_t {
    CellsOut,       ///< ripe cells out of a builder
    CellsIn,        ///< cells or virgins into nucs
    CageCells,      ///< nursery cages over the cells in place
    FreeBreeder,    ///< the breeder queen back from the comb
    Confine,        ///< the breeder queen onto the comb
    MakeUpBuilder,  ///< shake bees and brood into a builder
    Feed,           ///< a builder that rears in a dearth
    Graft,
    TakeCount,      ///< count the started cells
    MoveCells,      ///< to the next builder of the method
    FirstWildLook,  ///< look for wild cells, first time
    SecondWildLook,
    FirstLook,  ///< into the nucs: who lays
    CatchQueens,
    CageQueens,   ///< for an order that is delivered the next day
    Deliver,      ///< an order
    StockNucs,    ///< bees into nucs
    ToStation,    ///< nucs to the mating station
    FromStation,  ///< and back
    Inseminate,
    DroneComb,  ///< drone comb into strong colonies, in time for the first flights
    Own,        ///< the user's own
};
/// What is done to keep up the bees of a nuc.
enum class NucCareKind : std::uint8_t { Boost, Thin, BroodIn, Feed };
/// What was seen of a breeder queen's comb the day before larvae are taken.
enum class QueenNoteKind : std::uint8_t { Larvae, NoLarvae };
/// Where a queen with a number of her own is.
enum class QueenPlace : std::uint8_t {
    Bank,
    Cage,
    Colony,
    Sold,
    Lost,
    Nuc  ///< left for the winter in the nuc that she was raised in
};
enum class OrderStanding : std::uint8_t {
    Open,
    Waiting,  ///< on the waiting list: nothing is kept for it
    Cancelled
};
/// What queens for oneself are for.
enum class OrderPurpose : std::uint8_t { None, Split, Requeen, Winter, Reserve };
/// Why delivered queens have to be replaced.
enum class DeliveryLoss : std::uint8_t { None, DeadOnArrival, DroneLayer, NotAccepted, Other };
/// A line in a builder's diary.
enum class BuilderNoteKind : std::uint8_t { Look, BroodIn, BeesIn, Feed, Pollen };
/// How old brood put in is at the most: what wild cells can come of it, and when.
enum class BroodAge : std::uint8_t {
    All,    ///< larvae of all ages among it
    Young,  ///< none older than for the graft, 36 h
    Eggs,   ///< eggs only
};
/// How a yard is off over a span of days.
enum class YardNoteKind : std::uint8_t {
    Flow,
    Dearth,
    Robbing,
    Disease,  ///< a hold: no bees, brood or nucs leave the yard
};

template <>
struct TokensOf<YardNoteKind> {
    static constexpr auto names =
        std::to_array<std::string_view>({"flow", "dearth", "robbing", "disease"});
};
template <>
struct TokensOf<Hemisphere> {
    static constexpr auto names = std::to_array<std::string_view>({"north", "south"});
};
template <>
struct TokensOf<Start> {
    static constexpr auto names =
        std::to_array<std::string_view>({"graft", "confined", "sealed_found", "ripe", "virgin"});
};
template <>
struct TokensOf<Mating> {
    static constexpr auto names =
        std::to_array<std::string_view>({"open", "station", "insemination"});
};
template <>
struct TokensOf<CatchRule> {
    static constexpr auto names = std::to_array<std::string_view>({"eggs", "sealed_brood", "age"});
};
template <>
struct TokensOf<BuilderKind> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"starter", "finisher", "starter_finisher", "incubator", "holding"});
};
template <>
struct TokensOf<CellTarget> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"nuc", "split", "sold", "caged", "incubator", "given_away", "culled"});
};
template <>
struct TokensOf<OutcomeKind> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"graft", "take_count", "sealed", "ripe", "emergence", "none_yet", "first_eggs", "larvae",
         "sealed_brood", "judged_good", "no_queen", "drone_layer", "catch", "spent"});
};
template <>
struct TokensOf<OrderKind> {
    static constexpr auto names =
        std::to_array<std::string_view>({"ripe_cell", "virgin", "mated", "proven", "own"});
};
template <>
struct TokensOf<TaskRule> {
    static constexpr auto names =
        std::to_array<std::string_view>({"cells_out",    "cells_in",        "cage_cells",
                                         "free_breeder", "confine",         "make_up_builder",
                                         "feed",         "graft",           "take_count",
                                         "move_cells",   "first_wild_look", "second_wild_look",
                                         "first_look",   "catch",           "cage_queens",
                                         "deliver",      "stock_nucs",      "to_station",
                                         "from_station", "inseminate",      "drone_comb",
                                         "own"});
};
template <>
struct TokensOf<NucCareKind> {
    static constexpr auto names =
        std::to_array<std::string_view>({"boost", "thin", "brood_in", "feed"});
};
template <>
struct TokensOf<QueenNoteKind> {
    static constexpr auto names = std::to_array<std::string_view>({"larvae", "no_larvae"});
};
template <>
struct TokensOf<QueenPlace> {
    static constexpr auto names =
        std::to_array<std::string_view>({"bank", "cage", "colony", "sold", "lost", "nuc"});
};
template <>
struct TokensOf<OrderStanding> {
    static constexpr auto names = std::to_array<std::string_view>({"open", "waiting", "cancelled"});
};
template <>
struct TokensOf<OrderPurpose> {
    static constexpr auto names =
        std::to_array<std::string_view>({"none", "split", "requeen", "winter", "reserve"});
};
template <>
struct TokensOf<DeliveryLoss> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"none", "dead_on_arrival", "drone_layer", "not_accepted", "other"});
};
template <>
struct TokensOf<BroodAge> {
    static constexpr auto names = std::to_array<std::string_view>({"all", "young", "eggs"});
};
template <>
struct TokensOf<BuilderNoteKind> {
    static constexpr auto names =
        std::to_array<std::string_view>({"look", "brood_in", "bees_in", "feed", "pollen"});
};

}  // namespace tenthday
