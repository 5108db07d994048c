/// @file role.h  What a colour is for. A colour literal stands in palette.cpp and nowhere else.
#pragma once
#include <cstddef>
#include <cstdint>

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
    Ready,  ///< the brightest thing there is
    ReadyEdge,
    ReadyInk,
    NotStockedHatch,
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
};
inline constexpr std::size_t kRoleCount = static_cast<std::size_t>(Role::CardEdge) + 1;

}  // namespace tenthday
