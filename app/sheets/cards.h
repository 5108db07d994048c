/// @file cards.h  Cards of nucs, of a batch, and the confirmation of an order.
#pragma once
#include "outlook/outlook.h"
#include "sheets/label_sheet.h"
#include "sheets/list_paper.h"

namespace tenthday {

/// Of the nucs whose cell goes in on the day; where none does, of all that hold a cell or a queen:
/// what went in, when to look, when not to open. In driving order of the yards.
[[nodiscard]] std::vector<LabelCard> nucCards(const Outlook& outlook, Day day);

/// Bars, dates and builders of a batch, with room to write what is seen.
[[nodiscard]] ListPaper batchCard(const Outlook& outlook, const BatchOutlook& batch);

/// What was ordered, without prices, with the cautions of moving and selling bees. The day written
/// on it is today.
[[nodiscard]] ListPaper orderPaper(const Outlook& outlook, const Order& order);

/// The season shown, looked back on, on one page.
[[nodiscard]] ListPaper yearPaper(const Outlook& outlook);

}  // namespace tenthday
