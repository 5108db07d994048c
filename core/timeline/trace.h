/// @file trace.h  How a date came to be, told by the code that reckons it.
#pragma once
#include <optional>
#include <vector>

#include "facts/fact.h"
#include "timeline/event.h"

namespace tenthday {

/// One reason: `event` was set from `from` by adding a fact, or seen, or entered.
struct Reason {
    enum class Kind : std::uint8_t {
        Entered,       ///< typed by the user
        Observed,      ///< an outcome
        Rule,          ///< `from` plus the value of `fact`
        Method,        ///< hours of a step of the method
        FirstOfMany,   ///< first of so many cells to emerge
        LaterOf,       ///< `from`, being the later of two
        ReckonedBack,  ///< day 0 of a batch that starts later: from the moment entered
        Station,       ///< like Weather, on the days at a mating station
        Inseminated,   ///< days after insemination
        Weather  ///< from the flying days of the possible seasons or the climate, then the value of
                 ///< `fact`
    };
    Event event{};
    Kind kind{};
    std::optional<Event> from;
    std::optional<Fact> fact;
    double hours = 0;        ///< added, h; for FirstOfMany the number of cells
    std::vector<Fact> also;  ///< further trade numbers it leans on
};

struct Trace {
    std::vector<Reason> reasons;
};

}  // namespace tenthday
