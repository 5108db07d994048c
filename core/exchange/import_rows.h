/// @file import_rows.h  What the imports of all kinds share.
#pragma once
#include <set>

#include "exchange/import.h"
#include "exchange/import_file.h"
#include "records/validity.h"

namespace tenthday {

/// What one import works with.
struct ImportWork {
    const Snapshot& snapshot;
    const IdSource& newId;
    Lookup lookup;
    ImportErrors errors;
    ChangeSet changes;

    ImportWork(const Snapshot& from, std::string_view kind, const IdSource& ids)
        : snapshot(from),
          newId(ids),
          lookup(from),
          changes{Verb::Import, std::string(kind), {}, {}} {}
    [[nodiscard]] Result<ChangeSet> result() const {
        return errors.none() ? Result<ChangeSet>(changes) : Result<ChangeSet>(errors.first());
    }
    template <class Row>
    void put(const Ptr<Row>& before, Row after) {
        before ? changes.edit(before, std::move(after)) : changes.add(std::move(after));
    }
};

/// "no yard 'Foo'".
template <class Row>
std::string nothingNamed(std::string_view text) {
    return "no " + std::string(ColumnsOf<Row>::table) + " " + inQuotes(text);
}

/// The line's id; none where the field is empty or is no id, which is refused.
[[nodiscard]] Uuid idOf(const ImportLine& line, ImportErrors& errors);

/// Ids named in a file. A row named by its id is not found by its label or place as well.
[[nodiscard]] std::set<Uuid> idsNamed(const ImportFile& file, ImportErrors& errors);

/// Puts the line and the file's column name on what validity said ("yard.drive_order: ...").
void refuseInvalid(std::int32_t line, const Error& invalid, ImportErrors& errors);

template <class Row>
void checkLine(std::int32_t line, const Row& row, ImportErrors& errors) {
    if (const auto valid = checkRow(row); !valid) refuseInvalid(line, valid.error(), errors);
}

void importBoxes(ImportWork& work, const ImportFile& file);
void importMethods(ImportWork& work, const ImportFile& file);
void importFacts(ImportWork& work, const ImportFile& file);

}  // namespace tenthday
