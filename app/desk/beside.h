/// @file beside.h  Work in threads beside the window's own.
#pragma once
#include <cstdint>
#include <functional>

namespace tenthday {

enum class Haste : std::uint8_t {
    Now,    ///< somebody is about to wait for it; one piece of work after the other
    Later,  ///< it gives way to all else (on Linux), yet never stands still
};

/// Calls `work` in another thread, on one core (see OneByOne); where all threads of its haste are
/// taken, once one is free. The application waits for it when it ends.
void beside(Haste haste, std::function<void()> work);

}  // namespace tenthday
