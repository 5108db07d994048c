/// @file spreadsheet.h  Lists as a spreadsheet of the user's locale opens them by a double click,
/// beside the plain ones of RFC 4180.
#pragma once
#include <string>
#include <string_view>

#include "exchange/listing.h"

namespace tenthday {

/// Signs a spreadsheet parts cells and decimals with. Where decimals have a comma, cells are parted
/// by semicolons.
struct SpreadsheetForm {
    char part = ';';
    char decimal = ',';
};
[[nodiscard]] constexpr SpreadsheetForm spreadsheetForm(bool decimalComma) {
    return decimalComma ? SpreadsheetForm{';', ','} : SpreadsheetForm{',', '.'};
}

/// The listing with a byte order mark, CRLF, these signs; columns of decimals of the kind get
/// theirs. @param kind  one of exportKinds()
[[nodiscard]] std::string renderForSpreadsheet(const Listing& listing, std::string_view kind,
                                               SpreadsheetForm form);

/// Any list of a kind as RFC 4180: what a spreadsheet saved with semicolons or tabs is put back,
/// its decimals with a comma too (in columns of decimals only). Lines keep their numbers. A text
/// with commas comes back as it is.
[[nodiscard]] std::string plainCsv(std::string_view text, std::string_view kind);

}  // namespace tenthday
