/// @file json.h  The little of JSON (RFC 8259) that listings need.
#pragma once
#include <string>
#include <string_view>

namespace tenthday {

/// Appends the text in quotes, escaped. UTF-8 stays as it is.
void appendJsonText(std::string& json, std::string_view text);

}  // namespace tenthday
