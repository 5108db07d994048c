/// @file chart_proposals.h  Batches that somebody proposes and the book does not hold: drawn as
/// ghosts, in outline, among those that are planned. They cannot be hit.
///
/// To show some: make a ChartProposals and give it to SeasonChart::setProposals (or, for a picture,
/// to ChartOptions::proposals); null takes them away. They are painted by ghosts.cpp.
#pragma once
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "base/id.h"
#include "calendar/window.h"
#include "records/rows.h"

namespace tenthday {

/// Cells that would stand in a builder.
struct ProposedLoad {
    Id<Builder> builder;
    QString label;  ///< stands on it where it has room
    Moment from;
    Moment until;
    double cells = 0;  ///< the thickest it gets
};

/// Nucs that would be taken in a yard, from transfer to catch.
struct ProposedStay {
    Id<Yard> yard;
    QString label;
    DayWindow days;
    int nucs = 0;
};

struct ChartProposals {
    std::vector<ProposedLoad> loads;
    std::vector<ProposedStay> stays;
};
using ChartProposalsPtr = std::shared_ptr<const ChartProposals>;

}  // namespace tenthday
