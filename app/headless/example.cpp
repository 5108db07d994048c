#include "exchange/example.h"

#include "book/book_file.h"
#include "headless/verb.h"

namespace tenthday {
namespace {

Answer run(const Call& call) {
    const auto made =
        createBook(QString::fromStdString(call.arguments.operand(0)), exampleContent());
    return made ? Answer{} : Answer::failed(made.error());
}

}  // namespace

const HeadlessVerb& exampleVerb() {
    static const HeadlessVerb verb{
        "example", {{"BOOK"}, {}}, "BOOK", "the example season into a new book", false, run};
    return verb;
}

}  // namespace tenthday
