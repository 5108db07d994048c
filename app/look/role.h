/// @file role.h  What a colour is for. A colour literal stands in palette.cpp and nowhere else.
#pragma once
#include <cstddef>
#include <cstdint>

#include "base/tokens.h"

namespace tenthday {

enum class Role : std::uint8_t {
    Ground,         ///< behind everything
    WeekendGround,  ///< Saturdays and Sundays
    DayOffGround,   ///< days nobody works
    LaneGround,     ///< the band in which a lane's things stand
    Grid,           ///< weeks, lane edges
    GridStrong,     ///< months
    Ink,
    InkSoft,
    Danger,        ///< text of what will go wrong as planned
    DangerGround,  ///< filled behind DangerInk
    DangerInk,
    Caution,    ///< text of what wants a look
    Good,       ///< text of what is well
    OpenCells,  ///< started, not yet sealed
    OpenDots,   ///< the texture on them
    SealedCells,
    CellsInk,  ///< text on either
    Ribbon,    ///< the chosen batch's way, see-through
    Virgin,
    VirginInk,
    DueToFly,
    DueToFlyInk,
    Laying,
    LayingInk,
    JudgedGood,
    JudgedGoodInk,
    NoQueen,  ///< ground under its hatch
    NoQueenHatch,
    NoQueenInk,
    DroneLayer,
    DroneLayerHatch,
    Waiting,  ///< queenless, not ready: needs brood, or queenless too short
    WaitingInk,
    Ready,  ///< no ground of nucs is lighter; in the light look `ReadyEdge` parts it from Ground
    ReadyEdge,
    ReadyInk,
    Likely,  ///< white still in doubt
    LikelyHatch,
    LikelyInk,
    NotStockedHatch,
    OutsideHatch,  ///< days outside the season for grafts
    FlyingDay,     ///< sun: a day on which virgins can fly
    SpentGround,
    Separator,  ///< the line where neighbours in a stack meet
    Today,
    TodayInk,
    Chosen,  ///< lines of the chosen day
    ChosenGround,
    Selection,  ///< frame of the selected batch
    Ghost,      ///< where a dragged batch stood
    CardGround,
    CardEdge,
    MarkBlue,  ///< a queen's year mark; in the order of YearMark
    MarkWhite,
    MarkYellow,
    MarkRed,
    MarkGreen,
    MarkEdge,  ///< round each mark
};
inline constexpr std::size_t kRoleCount = static_cast<std::size_t>(Role::MarkEdge) + 1;

template <>
struct TokensOf<Role> {
    static constexpr auto names = std::to_array<std::string_view>({"ground",
                                                                   "weekend_ground",
                                                                   "day_off_ground",
                                                                   "lane_ground",
                                                                   "grid",
                                                                   "grid_strong",
                                                                   "ink",
                                                                   "ink_soft",
                                                                   "danger",
                                                                   "danger_ground",
                                                                   "danger_ink",
                                                                   "caution",
                                                                   "good",
                                                                   "open_cells",
                                                                   "open_dots",
                                                                   "sealed_cells",
                                                                   "cells_ink",
                                                                   "ribbon",
                                                                   "virgin",
                                                                   "virgin_ink",
                                                                   "due_to_fly",
                                                                   "due_to_fly_ink",
                                                                   "laying",
                                                                   "laying_ink",
                                                                   "judged_good",
                                                                   "judged_good_ink",
                                                                   "no_queen",
                                                                   "no_queen_hatch",
                                                                   "no_queen_ink",
                                                                   "drone_layer",
                                                                   "drone_layer_hatch",
                                                                   "waiting",
                                                                   "waiting_ink",
                                                                   "ready",
                                                                   "ready_edge",
                                                                   "ready_ink",
                                                                   "likely",
                                                                   "likely_hatch",
                                                                   "likely_ink",
                                                                   "not_stocked_hatch",
                                                                   "outside_hatch",
                                                                   "flying_day",
                                                                   "spent_ground",
                                                                   "separator",
                                                                   "today",
                                                                   "today_ink",
                                                                   "chosen",
                                                                   "chosen_ground",
                                                                   "selection",
                                                                   "ghost",
                                                                   "card_ground",
                                                                   "card_edge",
                                                                   "mark_blue",
                                                                   "mark_white",
                                                                   "mark_yellow",
                                                                   "mark_red",
                                                                   "mark_green",
                                                                   "mark_edge"});
};
static_assert(kTokenCount<Role> == kRoleCount);

}  // namespace tenthday
