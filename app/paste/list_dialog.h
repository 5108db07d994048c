/// @file list_dialog.h  A list of a kind taken into the open book, from a file or from the
/// clipboard.
#pragma once
#include "paste/paste_dialog.h"

namespace tenthday {

/// Asks, with all lines to be seen, whether a list is to be taken in. It is judged against the
/// batches of all seasons; what is taken is one undo step.
/// @param kind   one of exportKinds()
/// @param text   as a spreadsheet or `export` gives it: parted by tabs, semicolons or commas
/// @param taken  told how many rows came or changed; may be empty
/// @return for the caller to open; an Error where the book cannot be read
[[nodiscard]] Result<PasteDialog*> listDialog(Desk& desk, const std::string& kind,
                                              const std::string& text,
                                              std::function<void(int rows)> taken, QWidget* parent);

}  // namespace tenthday
