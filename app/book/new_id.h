/// @file new_id.h  Makes ids (UUID version 7, RFC 9562), before the edit that uses them.
#pragma once
#include <cstdint>
#include <functional>
#include <mutex>

#include "base/id.h"

namespace tenthday {

/// Ids of one maker only rise, also within a millisecond and when the clock is set back.
class IdMaker {
public:
    using Milliseconds = std::function<std::uint64_t()>;  ///< since 1970-01-01 UTC
    using Randomness = std::function<std::uint64_t()>;

    IdMaker();  ///< the machine's clock and random numbers
    IdMaker(Milliseconds clock, Randomness random);

    [[nodiscard]] Uuid next();

private:
    Milliseconds clock_;
    Randomness random_;
    std::mutex mutex_;
    std::uint64_t millis_ = 0;
    std::uint32_t counter_ = 0;  ///< 12 bits: order within a millisecond
};

/// The process-wide maker.
[[nodiscard]] IdMaker& idMaker();

template <class Row>
[[nodiscard]] Id<Row> newId() {
    return {idMaker().next()};
}

}  // namespace tenthday
