/// @file book_fixture.h  A folder of its own for each test, with the small book in it on demand.
#pragma once
#include <gtest/gtest.h>

#include <QByteArray>
#include <QMap>
#include <QTemporaryDir>

#include "book/book_file.h"
#include "support/small_book.h"

namespace tenthday::test {

/// Opens as on 1 June 2027; the clock of the change log stands still.
[[nodiscard]] OpenOptions fixedOptions(Access access = Access::ReadWrite);

/// Every file below a folder with a hash of its bytes.
using FolderState = QMap<QString, QByteArray>;
[[nodiscard]] FolderState stateOf(const QString& folder);

class BookTest : public ::testing::Test {
protected:
    /// Full path of a file in the test's folder.
    [[nodiscard]] QString at(const QString& name) const { return folder_.filePath(name); }
    [[nodiscard]] FolderState state() const { return stateOf(folder_.path()); }

    /// Makes the small book and gives its path.
    QString makeSmallBook(const QString& name = QStringLiteral("mill.tenthday"));
    /// Opens, or fails the test.
    std::unique_ptr<BookFile> open(const QString& path,
                                   const OpenOptions& options = fixedOptions());
    /// Runs one SQL statement on a file behind the program's back.
    void tamper(const QString& path, const QString& sql);
    /// Drops the tables that came with this schema (2..) or a later one.
    void dropTablesSince(const QString& path, int schema);
    /// What a fresh reader finds in the file.
    Snapshot reread(const QString& path);

private:
    QTemporaryDir folder_;
};

}  // namespace tenthday::test
