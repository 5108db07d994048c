/// @file writer.h  From a ChangeSet to one transaction.
#pragma once
#include <QByteArray>
#include <QDateTime>

#include "book/connection.h"
#include "records/change_set.h"

namespace tenthday {

/// Writes all rows of an edit and its line of the change log, or nothing at all. A row that is not
/// as the edit found it (by version) refuses the whole edit. Nothing is tried twice.
[[nodiscard]] Result<void> writeChanges(Connection& connection, const ChangeSet& changes,
                                        const QDateTime& utcNow);

/// The edit's rows as JSON: [{"table":"batch","before":{...}|null,"after":{...}|null}, ...].
[[nodiscard]] QByteArray imagesOf(const ChangeSet& changes);

/// Each row once, from how the edit found it to how it leaves it; rows that come and go in the
/// same edit are left out.
[[nodiscard]] std::vector<RowChange> netChanges(const ChangeSet& changes);

}  // namespace tenthday
