/// @file print_text.h  The words of choosing what to print.
#pragma once
#include <QString>

#include "options/print_choice.h"

namespace tenthday::print_text {

[[nodiscard]] QString menuEntry();
/// Of a task: to whom it is given.
[[nodiscard]] QString give();
[[nodiscard]] QString giveTo();
[[nodiscard]] QString head();
[[nodiscard]] QString what();
[[nodiscard]] QString day();
[[nodiscard]] QString about();
[[nodiscard]] QString who();
[[nodiscard]] QString everybody();
[[nodiscard]] QString nextWeekToo();
[[nodiscard]] QString onPaper();
[[nodiscard]] QString paper(Paper paper);
[[nodiscard]] QString landscape();
[[nodiscard]] QString large();
[[nodiscard]] QString labels();
/// Columns, rows, first free label.
[[nodiscard]] QString labelCount(int which);
/// Left, top, right, bottom, gap across, gap down.
[[nodiscard]] QString labelLength(int which);
[[nodiscard]] QString mm();
[[nodiscard]] QString cutLines();
[[nodiscard]] QString print();
[[nodiscard]] QString keepPdf();
[[nodiscard]] QString close();
[[nodiscard]] QString pages(int pages);
/// Why the choice cannot be printed.
[[nodiscard]] QString refused(const PrintChoice& choice);

}  // namespace tenthday::print_text
