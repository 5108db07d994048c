/// @file day_papers.h  Any paper of a day, laid out as it was chosen.
#pragma once
#include <functional>
#include <memory>

#include "base/result.h"
#include "cellsday/propose.h"
#include "sheets/list_paper.h"

namespace tenthday {

/// What is printed.
struct PaperWish {
    PrintChoice choice;
    Day day;
    std::optional<Id<Batch>> batch;               ///< of the batch card
    std::optional<Id<Order>> order;               ///< of the confirmation
    WayOrder ways = usualWays();                  ///< for cells without a place yet
    std::shared_ptr<const ListPaper> placements;  ///< of the day, as drafted; null: as in the book
};

/// Lays out pages for a form.
using PagesFor = std::function<std::vector<Page>(const PaperForm&, const PaperRuler&)>;

struct DayPaper {
    QString title;
    PaperForm form;  ///< as chosen; leaves for a clip are always A5 across
    PagesFor pages;  ///< hangs on the outlook it was made of
};

/// Refused where labels go on no sheet, and without the batch or order it is about.
[[nodiscard]] Result<DayPaper> dayPaper(const OutlookPtr& outlook, const PaperWish& wish);

}  // namespace tenthday
