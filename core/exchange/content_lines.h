/// @file content_lines.h  The lines of an iCalendar text (RFC 5545, 3.1): folded, escaped, and
/// back.
#pragma once
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace tenthday {

/// A text as the value of a property (3.3.11): backslash, semicolon, comma and line ends escaped.
/// What no text may hold does not get in: bytes that are no UTF-8 become U+FFFD, control
/// characters a space.
[[nodiscard]] std::string escapedText(std::string_view text);
/// The text of such a value.
[[nodiscard]] std::string unescapedText(std::string_view value);
/// The parts of a value between commas, each still escaped.
[[nodiscard]] std::vector<std::string> partsOf(std::string_view value);

/// Appends one line and CRLF, folded at 75 octets and never inside a character.
/// @param line  name, parameters and value, valid UTF-8 without line ends
void appendContentLine(std::string& text, std::string_view line);

struct ContentLine {
    std::int32_t number = 1;  ///< line of the text on which it begins, from 1
    std::string name;
    std::string parameters;  ///< without the first semicolon; empty when there are none
    std::string value;
};

/// The lines of a text, unfolded; CRLF or LF. Refused, with the line: one without a colon or a
/// name, or one that cannot be in UTF-8.
[[nodiscard]] Result<std::vector<ContentLine>> readContentLines(std::string_view text);

/// "line 12: what".
[[nodiscard]] Error atLine(std::int32_t number, std::string_view what);

}  // namespace tenthday
