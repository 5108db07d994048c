/// @file source_rules.h  The rules of the house that a compiler does not check, as functions on
/// text.
#pragma once
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace tenthday::test {

/// One file of the project: its path from the top, with slashes, and its text.
struct SourceFile {
    std::string path;
    std::string text;
};

/// Says whether a path from the top is a file of the project.
using Exists = std::function<bool(const std::string& path)>;

/// The rooms of core and app in the order in which they may use one another.
[[nodiscard]] const std::vector<std::string_view>& coreRooms();
[[nodiscard]] const std::vector<std::string_view>& appRooms();

/// Code only: what follows `//` on a line is cut off.
[[nodiscard]] std::string withoutComments(std::string_view text);

/// Complaints, each "path:line: what": an include of a later room, of app from core, of Qt from
/// core, of a file that is not there, or a file in no room.
[[nodiscard]] std::vector<std::string> includeComplaints(const SourceFile& file,
                                                         const Exists& exists);
/// In core: clock, randomness, locale, files.
[[nodiscard]] std::vector<std::string> purityComplaints(const SourceFile& file);
/// Anywhere: numbers read as the language of the process writes them. "99.9" is 99 in most.
[[nodiscard]] std::vector<std::string> numberComplaints(const SourceFile& file);
/// In app outside look: colours written as numbers, names or Qt's constants.
[[nodiscard]] std::vector<std::string> colourComplaints(const SourceFile& file);
/// In app outside screen_text and headless: words written where a user would read them, or the
/// translator called.
[[nodiscard]] std::vector<std::string> wordComplaints(const SourceFile& file);

}  // namespace tenthday::test
