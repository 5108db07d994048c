/// @file csv.h  RFC 4180: fields between commas, quotes where needed, a record may span lines.
#pragma once
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace tenthday {

struct CsvRecord {
    std::int32_t line = 1;  ///< line of the text on which it begins, from 1
    std::vector<std::string> fields;
    friend bool operator==(const CsvRecord&, const CsvRecord&) = default;
};

/// Reads UTF-8 with LF or CRLF, with or without a byte order mark; empty lines are skipped.
/// Refused, with line and column (in characters, from 1): a quote out of place or never closed,
/// bytes that are no UTF-8, a zero byte, a lone carriage return outside quotes. What stands inside
/// quotes is kept to the byte.
[[nodiscard]] Result<std::vector<CsvRecord>> readCsv(std::string_view text);

/// Appends one record and LF. A field is quoted only when it must be.
void appendCsv(std::string& text, const std::vector<std::string>& fields);

/// Bytes of the valid UTF-8 character at the front: 1..4; 0 when there is none.
[[nodiscard]] std::size_t utf8Length(std::string_view text);

}  // namespace tenthday
