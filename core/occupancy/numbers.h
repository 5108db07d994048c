/// @file numbers.h  "Ready for a cell" on a day: four numbers, never one. They are disjoint.
#pragma once
#include <cstdint>

namespace tenthday {

struct ReadyNumbers {
    std::int32_t ready = 0;     ///< stocked and queenless by then
    double likely = 0;          ///< expected number more, if caught or looked at by the day before
    std::int32_t canStock = 0;  ///< stand there empty and can be stocked by the day before
    std::int32_t needsBrood = 0;  ///< want open brood or combining first

    ReadyNumbers& operator+=(const ReadyNumbers& other) {
        ready += other.ready;
        likely += other.likely;
        canStock += other.canStock;
        needsBrood += other.needsBrood;
        return *this;
    }
};

}  // namespace tenthday
