/// @file week_layout.h  A week's content gets its places on pages. Pure: no printer.
#pragma once
#include "sheets/page.h"
#include "sheets/week_content.h"

namespace tenthday {

/// A row is split only where it alone is longer than half a page, a head never stands alone at a
/// page's foot, and no task is cut: what is too long is broken into lines. Names of yards, boxes
/// and of the operation end in an ellipsis where they would crowd out the rest. At least one page.
[[nodiscard]] std::vector<Page> layOutWeek(const WeekContent& week, const PaperForm& form,
                                           const PaperRuler& ruler);

}  // namespace tenthday
