/// @file headless.h  The program without a window: verbs that answer on standard output.
#pragma once
#include <string>
#include <vector>

namespace tenthday {

/// True when the command line asks for an answer, not for a window: it names a verb, or what can
/// only be a mistaken one. A lone path to a book, or nothing, is for the window.
/// @param words  what follows the program's name
[[nodiscard]] bool isHeadless(const std::vector<std::string>& words);

/// Answers and returns the exit status: 0 good, 1 refused or failed, 2 wrong use. Standard error
/// gets one line at most. Needs no display and no environment; call it before any QCoreApplication
/// is made.
[[nodiscard]] int runHeadless(const std::vector<std::string>& words);

}  // namespace tenthday
