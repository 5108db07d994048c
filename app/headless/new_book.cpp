#include "book/new_book.h"

#include <QFileInfo>

#include "book/book_file.h"
#include "headless/verb.h"

namespace tenthday {
namespace {

Answer run(const Call& call) {
    const auto path = QString::fromStdString(call.arguments.operand(0));
    const auto label =
        call.arguments.value("--label").value_or(QFileInfo(path).completeBaseName().toStdString());
    if (label.empty()) return Answer::wrongUse(optionError("--label", "a name is needed"));
    const auto made = createBook(path, newBookContent(planFor(label, call.clock.today({}))));
    return made ? Answer{} : Answer::failed(made.error());
}

}  // namespace

const HeadlessVerb& newVerb() {
    static const HeadlessVerb verb{"new",
                                   {{"BOOK"}, {{"--label"}}},
                                   "BOOK [--label NAME]",
                                   "an empty book with the built-in methods and this year's season",
                                   false,
                                   run};
    return verb;
}

}  // namespace tenthday
