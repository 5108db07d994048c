/// @file side_by_side.h  Pieces of work that touch nothing in common, on all of the machine's
/// cores.
#pragma once
#include <cstddef>
#include <functional>

namespace tenthday {

/// Calls `piece` with each number from 0 up to below `pieces`, several at a time and in no order,
/// and comes back when all are done. What comes out must not hang on that order: each piece writes
/// where no other reads or writes. What a piece throws is thrown on, once the others are done. On
/// one core, or where there is one piece, it is a plain loop.
void sideBySide(std::size_t pieces, const std::function<void(std::size_t)>& piece);

/// While one lives, sideBySide() is a plain loop in its thread: for work in the background, which
/// leaves the other cores to what somebody waits for.
class OneByOne {
public:
    OneByOne();
    ~OneByOne();
    OneByOne(const OneByOne&) = delete;
    OneByOne& operator=(const OneByOne&) = delete;

private:
    bool before_;
};

}  // namespace tenthday
