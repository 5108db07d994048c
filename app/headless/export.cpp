#include "exchange/export.h"

#include "book/book_file.h"
#include "exchange/field_text.h"
#include "exchange/kinds.h"
#include "headless/verb.h"

namespace tenthday {
namespace {

Answer run(const Call& call) {
    const auto& kind = call.arguments.operand(1);
    if (!isKind(kind))
        return Answer::wrongUse(
            {"KIND: " + oneOfNeeded(exportKinds().data(), exportKinds().size(), kind)});
    OpenOptions options;
    options.access = Access::ReadOnly;
    options.clock = call.clock;
    const auto book = BookFile::open(QString::fromStdString(call.arguments.operand(0)), options);
    if (!book) return Answer::failed(book.error());
    const auto snapshot = book.value()->read({{}, true});
    if (!snapshot) return Answer::failed(snapshot.error());
    return call.print(exportOf(snapshot.value(), kind));
}

}  // namespace

const HeadlessVerb& exportVerb() {
    static const HeadlessVerb verb{
        "export", {{"BOOK", "KIND"}, {}}, "BOOK KIND", "all rows of a kind", true, run};
    return verb;
}

}  // namespace tenthday
