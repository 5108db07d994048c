#include "exchange/import_rows.h"

namespace tenthday {
namespace {

Ptr<FactOverride> overrideOf(const Snapshot& snapshot, Fact fact) {
    for (const auto& row : snapshot.all<FactOverride>())
        if (row->fact == token(fact)) return row;
    return nullptr;
}

void takeFact(ImportWork& work, const ImportLine& line, Fact fact) {
    const auto before = overrideOf(work.snapshot, fact);
    const auto text = line.text("override");
    if (text.empty()) {  // the published value again
        if (before) work.changes.erase(before);
        return;
    }
    FactOverride row{{}, 1, std::string(token(fact)), 0};
    row.id = before ? before->id : Id<FactOverride>{work.newId()};
    if (const auto complaint = readThousandths(text, row.valueMilli))
        return work.errors.refuse(line.number(), "override", *complaint);
    checkLine(line.number(), row, work.errors);
    work.put(before, std::move(row));
}

}  // namespace

void importFacts(ImportWork& work, const ImportFile& file) {
    SeenOnce<Fact> facts("fact");
    for (std::size_t i = 0; i < file.size() && work.errors.none(); ++i) {
        const auto line = file.line(i);
        const auto fact = fromToken<Fact>(line.text("fact"));
        if (!line.find("override")) return work.errors.refuse(1, "override", "missing");
        if (!fact)
            return work.errors.refuse(line.number(), "fact",
                                      "no fact " + inQuotes(line.text("fact")));
        facts.add(line, *fact, work.errors);
        takeFact(work, line, *fact);
    }
}

}  // namespace tenthday
