/// @file orders_paste.h  Orders as lines of a spreadsheet, both ways.
#pragma once
#include "paste/paste_dialog.h"

namespace tenthday {

[[nodiscard]] PasteKind ordersToPaste();

/// Head and cells of an order, as ordersToPaste() reads them back.
[[nodiscard]] std::vector<std::string> pastedHeads();
[[nodiscard]] std::vector<std::string> pastedCells(const Snapshot& book, const Order& order);

}  // namespace tenthday
