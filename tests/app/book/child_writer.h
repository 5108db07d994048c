/// @file child_writer.h  The test program as a writer that another one kills.
#pragma once

namespace tenthday::test {

inline constexpr auto kChildWriterFlag = "--child-writer";
inline constexpr int kRowsOfAChildEdit = 7;

/// `PROGRAM --child-writer BOOK FIRST`: writes edit after edit, kRowsOfAChildEdit rows each noted
/// with the edit's number, and prints the number once the edit is saved. Never ends by itself.
[[nodiscard]] int runChildWriter(int argc, char** argv);

}  // namespace tenthday::test
