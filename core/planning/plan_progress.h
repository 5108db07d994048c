/// @file plan_progress.h  How far a plan is, and how to stop it. Called on the thread that plans.
#pragma once
#include <atomic>
#include <cstdint>
#include <functional>
#include <optional>

namespace tenthday {

enum class PlanPhase : std::uint8_t {
    Reading,    ///< what stands, by day
    Orders,     ///< as little short as can be
    GraftDays,  ///< as few graft days as can be
    Grafts,     ///< grafts and earliness
    Sureness,   ///< the exact chance of each order
    Ways,       ///< a way to fix a shortfall is tried
};

struct PlanProgress {
    PlanPhase phase = PlanPhase::Reading;
    std::int32_t round = 1;       ///< 1 the first time; of Ways, the way that is tried
    std::optional<double> best;   ///< of the phase's aim so far: what is short (weighted), graft
                                  ///< days, or grafts with earliness
    std::optional<double> bound;  ///< no plan is better than that
    /// Settled, while later aims are sought: short by weight, at the chances asked for; graft days.
    std::optional<std::int32_t> shortBy;
    std::optional<std::int32_t> graftDays;
};

/// All optional. A plan that is cancelled, or runs out of time, gives the best found so far and is
/// told as stopped. Without a limit the same question has the same answer always.
struct PlanControl {
    std::function<void(const PlanProgress&)> report;
    const std::atomic<bool>* cancel = nullptr;  ///< true: stop soon
    std::optional<double> seconds;              ///< of the whole plan, about

    [[nodiscard]] bool isCancelled() const { return cancel != nullptr && cancel->load(); }
    void tell(const PlanProgress& progress) const {
        if (report) report(progress);
    }
};

}  // namespace tenthday
