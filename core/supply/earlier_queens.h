/// @file earlier_queens.h  Queens of batches of earlier seasons that are still in hand.
#pragma once
#include <vector>

#include "supply/queen_stock.h"

namespace tenthday {

/// Queens in a bank or cage, and those left in their nucs over the winter, of batches that are not
/// read with the season; a part for each batch and line, proven ones apart (left in a nuc she had
/// been judged good; of others the book does not know by which rule they were caught). Each counts
/// from the day she was caught, or, still in her nuc, from today: she can be caught any day.
/// Breeder queens are none.
///
/// Which queen went out a delivery does not say. So of a batch as many are gone as were delivered
/// of it, whether their stays say so or not; of queens nothing was said of since their catch also
/// as many as deliveries of earlier seasons, of no batch in particular, leave unexplained. A queen
/// whose stay says that she went this season is counted as long as such a delivery of this season
/// takes her from the stock. Queens in colonies of one's own answer for deliveries to own needs,
/// queens sold for all others.
[[nodiscard]] std::vector<QueenPart> earlierQueens(const Snapshot& snapshot);

}  // namespace tenthday
