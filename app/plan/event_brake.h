/// @file event_brake.h  Keeps a stream of events to what an eye can follow.
#pragma once
#include <cstdint>
#include <optional>

namespace tenthday {

/// Lets the first event through, and after it one in each stretch of time at the most. One thread.
class EventBrake {
public:
    static constexpr std::int64_t kStretch = 100;  // ms

    /// @param now  ms since any fixed moment, never going back
    bool lets(std::int64_t now) {
        if (last_ && now - *last_ < kStretch) return false;
        last_ = now;
        return true;
    }

private:
    std::optional<std::int64_t> last_;
};

}  // namespace tenthday
