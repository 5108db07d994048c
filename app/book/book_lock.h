/// @file book_lock.h  Says who has a book open for writing. Readers need none.
#pragma once
#include <QLockFile>
#include <QString>
#include <memory>

#include "base/result.h"

namespace tenthday {

/// A file `BOOK.lock` beside the book, with host, process and (as its owner) user, for as long as
/// this object lives. A lock left by a process of this host that is gone is taken over.
class BookLock {
public:
    /// An Error names who has it.
    [[nodiscard]] static Result<std::unique_ptr<BookLock>> take(const QString& bookPath);

private:
    explicit BookLock(const QString& lockPath);
    QLockFile lock_;
};

/// Path of the lock file. Links to a book lead to the same one.
[[nodiscard]] QString lockPathOf(const QString& bookPath);

}  // namespace tenthday
