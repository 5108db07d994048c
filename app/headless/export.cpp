#include "exchange/export.h"

#include "book/book_file.h"
#include "exchange/field_text.h"
#include "exchange/kinds.h"
#include "exchange/spreadsheet.h"
#include "headless/verb.h"

namespace tenthday {
namespace {

Answer run(const Call& call) {
    const auto& kind = call.arguments.operand(1);
    if (!isKind(kind))
        return Answer::wrongUse(
            {"KIND: " + oneOfNeeded(exportKinds().data(), exportKinds().size(), kind)});
    if (const auto decimal = call.arguments.value("--spreadsheet");
        decimal && *decimal != "comma" && *decimal != "point")
        return Answer::wrongUse(
            optionError("--spreadsheet", "comma or point is needed, not " + inQuotes(*decimal)));
    OpenOptions options;
    options.access = Access::ReadOnly;
    options.clock = call.clock;
    const auto book = BookFile::open(QString::fromStdString(call.arguments.operand(0)), options);
    if (!book) return Answer::failed(book.error());
    const auto snapshot = book.value()->read({{}, true});
    if (!snapshot) return Answer::failed(snapshot.error());
    const auto listing = exportOf(snapshot.value(), kind);
    const auto decimal = call.arguments.value("--spreadsheet");
    if (!decimal) return call.print(listing);
    const auto form = spreadsheetForm(*decimal == "comma");
    return {Exit::Good, renderForSpreadsheet(listing, kind, form), {}};
}

}  // namespace

const HeadlessVerb& exportVerb() {
    static const HeadlessVerb verb{"export",
                                   {{"BOOK", "KIND"}, {{"--spreadsheet"}}},
                                   "BOOK KIND [--spreadsheet comma|point]",
                                   "all rows of a kind; for a spreadsheet with such decimals",
                                   true,
                                   run};
    return verb;
}

}  // namespace tenthday
