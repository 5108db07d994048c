#include "exchange/import.h"

#include "book/book_file.h"
#include "book/finished_file.h"
#include "book/new_id.h"
#include "exchange/kinds.h"
#include "exchange/spreadsheet.h"
#include "headless/verb.h"

namespace tenthday {
namespace {

/// Checked in memory, then a backup of the day, then one transaction.
Result<void> keep(BookFile& book, const Snapshot& snapshot, const ChangeSet& changes) {
    if (changes.isEmpty()) return {};
    if (auto after = applied(snapshot, changes); !after) return after.error();
    if (auto kept = book.backUp(); !kept) return kept.error();
    return book.write(changes);
}

std::string summary(const ChangeSet& changes) {
    std::size_t added = 0;
    for (const auto& change : changes.rows)
        added += visitChange([](const auto& c) { return c.before ? 0U : 1U; }, change);
    return std::to_string(added) + " rows added, " + std::to_string(changes.rows.size() - added) +
           " changed\n";
}

Answer run(const Call& call) {
    const auto& kind = call.arguments.operand(1);
    const auto& fileName = call.arguments.operand(2);
    if (!isKind(kind))
        return Answer::wrongUse(
            {"KIND: " + oneOfNeeded(exportKinds().data(), exportKinds().size(), kind)});
    OpenOptions options;
    options.clock = call.clock;
    const auto book = BookFile::open(QString::fromStdString(call.arguments.operand(0)), options);
    if (!book) return Answer::failed(book.error());
    if (book.value()->isReadOnly())
        return Answer::failed({call.arguments.operand(0) + ": is read only; nothing was changed"});
    const auto text = readWhole(QString::fromStdString(fileName));
    if (!text) return Answer::failed(text.error());
    const auto snapshot = book.value()->read({{}, true});
    if (!snapshot) return Answer::failed(snapshot.error());
    const auto changes = importOf(snapshot.value(), kind, plainCsv(text.value(), kind),
                                  [] { return idMaker().next(); });
    if (!changes) return Answer::failed({fileName + " " + changes.error().text});
    if (auto kept = keep(*book.value(), snapshot.value(), changes.value()); !kept)
        return Answer::failed(kept.error());
    return {Exit::Good, summary(changes.value()), {}};
}

}  // namespace

const HeadlessVerb& importVerb() {
    static const HeadlessVerb verb{"import",
                                   {{"BOOK", "KIND", "FILE"}, {}},
                                   "BOOK KIND FILE.csv",
                                   "takes what export gives: all of it, or nothing",
                                   false,
                                   run};
    return verb;
}

}  // namespace tenthday
