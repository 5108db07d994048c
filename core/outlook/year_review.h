/// @file year_review.h  A season looked back on: what was planned, what happened, and what weather,
/// take and nucs had to do with it.
#pragma once
#include <array>
#include <vector>

#include "outlook/outlook.h"

namespace tenthday {

enum class ReviewStage : std::uint8_t {
    Grafted,  ///< larvae
    Started,  ///< cells at the take count
    Sealed,   ///< cells
    Ripe,     ///< cells taken out
    Laying,   ///< nucs with a laying queen
    Caught    ///< queens
};
template <>
struct TokensOf<ReviewStage> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"grafted", "started", "sealed", "ripe", "laying", "caught"});
};

/// One stage over the batches of which something is recorded there: only those compare.
struct StageReview {
    std::int32_t batches = 0;  ///< with a record
    std::int32_t missing = 0;  ///< whose day is past, without one
    double planned = 0;        ///< expected of those with a record, by the plan
    std::int32_t happened = 0;
};

struct YearReview {
    DayWindow season;
    Day until;                 ///< what is reviewed ends here: the season's last day, or today
    std::int32_t batches = 0;  ///< whose start is not after `until`
    std::array<StageReview, kTokenCount<ReviewStage>> stages{};

    // Why: take.
    double takePlanned = 0;          ///< share of grafts started, by the plan, 0..1
    double takeSeen = 0;             ///< as counted; 0 where nothing was
    double graftsPlanned = 0;        ///< behind takePlanned: of the batches with a take count
    double grafts = 0;               ///< behind takeSeen
    std::int32_t hungryBatches = 0;  ///< of these grafted in a builder whose yard was in a dearth

    // Why: weather.
    std::int32_t flyingDays = 0;    ///< recorded
    std::int32_t groundedDays = 0;  ///< recorded without flying
    std::int32_t lateBatches = 0;   ///< kept back by weather three days or more
    std::int32_t lateDays = 0;      ///< days without flying behind them, in all

    // Why: nucs.
    std::int32_t withoutNuc = 0;  ///< cells that were for nucs and found none
    std::int32_t noQueen = 0;     ///< nucs looked into: no queen
    std::int32_t droneLayer = 0;  ///< nucs with a drone layer

    // Orders.
    std::int32_t delivered = 0;  ///< of the season shown
    std::int32_t replaced = 0;   ///< of these

    [[nodiscard]] const StageReview& at(ReviewStage stage) const {
        return stages[static_cast<std::size_t>(stage)];
    }
};

/// Of the season shown. Batches that began in another season are left out.
[[nodiscard]] YearReview yearReview(const Outlook& outlook);

}  // namespace tenthday
