#include "headless/review.h"

#include "headless/optional_day.h"
#include "outlook/year_review.h"

namespace tenthday {
namespace {

Listing listingOf(const YearReview& review) {
    Listing listing{{"part", "what", "planned", "happened", "batches", "missing"}, {}};
    for (std::size_t i = 0; i < review.stages.size(); ++i) {
        const auto& stage = review.stages[i];
        const bool any = stage.batches > 0;
        listing.rows.push_back({cell("stage"), cell(static_cast<ReviewStage>(i)),
                                any ? decimal(stage.planned, 1) : ListingCell{},
                                any ? cell(stage.happened) : ListingCell{}, cell(stage.batches),
                                cell(stage.missing)});
    }
    const bool counted = review.at(ReviewStage::Started).batches > 0;
    listing.rows.push_back({cell("take"),
                            cell("percent_started"),
                            counted ? decimal(review.takePlanned * 100, 1) : ListingCell{},
                            counted ? decimal(review.takeSeen * 100, 1) : ListingCell{},
                            cell(review.at(ReviewStage::Started).batches),
                            {}});
    const auto why = [&](const char* part, const char* what, std::int32_t count) {
        listing.rows.push_back({cell(part), cell(what), {}, cell(count), {}, {}});
    };
    why("take", "batches_in_dearth", review.hungryBatches);
    why("weather", "flying_days", review.flyingDays);
    why("weather", "days_without_flying", review.groundedDays);
    why("weather", "late_batches", review.lateBatches);
    why("weather", "days_behind_late_batches", review.lateDays);
    why("nucs", "cells_without_nuc", review.withoutNuc);
    why("nucs", "no_queen", review.noQueen);
    why("nucs", "drone_layer", review.droneLayer);
    why("orders", "delivered", review.delivered);
    why("orders", "to_be_replaced", review.replaced);
    return listing;
}

Answer run(const Call& call) {
    const auto on = optionalDay(call.arguments, "--on");
    if (!on) return Answer::wrongUse(on.error());
    const auto outlook = readOutlook(call, on.value());
    if (!outlook) return Answer::failed(outlook.error());
    return call.print(listingOf(yearReview(*outlook.value())));
}

}  // namespace

const HeadlessVerb& reviewVerb() {
    static const HeadlessVerb verb{"review",
                                   {{"BOOK"}, {{"--on"}}},
                                   "BOOK [--on DAY]",
                                   "a season looked back on: planned, happened, and why",
                                   true,
                                   run};
    return verb;
}

}  // namespace tenthday
