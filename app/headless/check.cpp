#include "book/check_book.h"
#include "headless/verb.h"

namespace tenthday {
namespace {

Answer run(const Call& call) {
    const auto lines = checkBook(QString::fromStdString(call.arguments.operand(0)));
    if (!lines) return Answer::failed(lines.error());
    Listing listing{{"check", "result", "detail"}, {}};
    for (const auto& line : lines.value())
        listing.rows.push_back(
            {cell(line.subject), cell(line.good ? "good" : "fault"), cell(line.detail)});
    return call.print(listing);
}

}  // namespace

const HeadlessVerb& checkVerb() {
    static const HeadlessVerb verb{
        "check", {{"BOOK"}, {}}, "BOOK", "looks a book through, row by row", true, run};
    return verb;
}

}  // namespace tenthday
