/// @file earlier_reader.h  What the batches of earlier seasons say of the rates of losses.
#pragma once
#include "book/book_file.h"
#include "records/earlier_outcomes.h"

namespace tenthday {

/// Reads every season of the book that ended before the one shown began, one after the other; null
/// where there is none. Takes a good part of a second for many seasons: not for the window's own
/// thread.
/// @param isCancelled  asked between seasons; what was read by then is dropped
[[nodiscard]] Result<std::shared_ptr<const EarlierOutcomes>> readEarlier(
    BookFile& book, const Snapshot& shown, const std::function<bool()>& isCancelled = {});

/// The seasons that ended before the one shown began, by their first days.
[[nodiscard]] std::vector<Ptr<Season>> earlierSeasons(const Snapshot& shown);

}  // namespace tenthday
