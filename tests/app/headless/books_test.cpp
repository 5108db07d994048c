/// Books that cannot be used: exit 1, one line that names the file, nothing changed.
#include "book/book_file.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QFileInfo>

#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class BadBook : public ProgramTest {
protected:
    /// Every verb that reads a book refuses it so, and leaves the folder as it was.
    void expectRefused(const std::string& book, const std::string& what) {
        const auto csv = write("yards.csv", "label\nHeron\n");
        const auto before = files();
        const auto bytes = QFileInfo(QString::fromStdString(book)).isFile() ? bytesOf(book) : "";
        const std::vector<std::vector<std::string>> calls{
            {"nucs", book, "--on", "2027-06-01"},
            {"findings", book},
            {"export", book, "yards"},
            {"import", book, "yards", csv},
            {"picture", book, "--out", at("chart.png")}};
        for (const auto& words : calls) {
            const auto done = runHere(words);
            EXPECT_EQ(done.exit, 1) << words.front();
            EXPECT_EQ(done.out, "") << words.front();
            const auto start = "tenthday: " + words.front() + ": " + book + ": " + what;
            EXPECT_EQ(done.err.substr(0, start.size()), start) << done.err;
            EXPECT_EQ(std::count(done.err.begin(), done.err.end(), '\n'), 1);
        }
        EXPECT_EQ(files(), before);
        if (!bytes.empty()) {
            EXPECT_EQ(bytesOf(book), bytes);
        }
    }
};

TEST_F(BadBook, Missing) { expectRefused(at("none.tenthday"), "there is no such file"); }

TEST_F(BadBook, NoBook) {
    expectRefused(write("text.tenthday", "no book at all"), "is not a Tenthday book");
    expectRefused(write("empty.tenthday", ""), "is not a Tenthday book");
    expectRefused(at(""), "is no file");
}

TEST_F(BadBook, Damaged) {
    const auto book = makeExample();
    auto bytes = bytesOf(book);
    for (std::size_t i = 4096; i < bytes.size(); i += 97) bytes[i] = '\x5A';
    write("example.tenthday", bytes);
    expectRefused(book, "the file is damaged");
}

TEST_F(BadBook, CutShort) {
    const auto book = makeExample();
    write("example.tenthday", bytesOf(book).substr(0, 20000));
    expectRefused(book, "the file is damaged");
}

TEST_F(BadBook, Newer) {
    const auto book = makeExample();
    {
        auto connection = openSqlite(QString::fromStdString(book), Access::ReadWrite);
        ASSERT_TRUE(connection.ok());
        ASSERT_TRUE(setUserVersion(*connection.value(), 999).ok());
    }
    expectRefused(book, "was made by a newer Tenthday (schema 999");
}

TEST_F(BadBook, ReadOnlyCanBeReadAndNotWritten) {
    const auto book = makeExample();
    ASSERT_TRUE(QFile::setPermissions(QString::fromStdString(book), QFileDevice::ReadOwner));
    const auto csv = write("yards.csv", "label\nHeron\n");
    const auto bytes = bytesOf(book);
    const auto done = runHere({"import", book, "yards", csv});
    EXPECT_EQ(done.exit, 1);
    EXPECT_EQ(done.err, "tenthday: import: " + book + ": is read only; nothing was changed\n");
    EXPECT_EQ(bytesOf(book), bytes);
    EXPECT_EQ(rowsOf(answer({"export", book, "yards"})).size(), 3U);
}

TEST_F(BadBook, HeldByAnotherWriterCanBeReadAndNotWritten) {
    const auto path = makeExample();
    auto held = BookFile::open(QString::fromStdString(path));
    ASSERT_TRUE(held.ok());
    const auto done = runHere({"import", path, "yards", write("yards.csv", "label\nHeron\n")});
    EXPECT_EQ(done.exit, 1);
    EXPECT_EQ(done.err.substr(0, 20 + path.size()), "tenthday: import: " + path + ": ");
    EXPECT_EQ(std::count(done.err.begin(), done.err.end(), '\n'), 1) << done.err;
    EXPECT_EQ(rowsOf(answer({"export", path, "yards"})).size(), 3U);
}

TEST_F(BadBook, TheExampleOverwritesNothing) {
    const auto path = write("mine.tenthday", "precious");
    const auto done = runHere({"example", path});
    EXPECT_EQ(done.exit, 1);
    EXPECT_EQ(done.err, "tenthday: example: " + path + ": is there already; nothing was changed\n");
    EXPECT_EQ(bytesOf(path), "precious");
    const auto nowhere = runHere({"example", at("no/such/folder.tenthday")});
    EXPECT_EQ(nowhere.exit, 1);
    EXPECT_EQ(std::count(nowhere.err.begin(), nowhere.err.end(), '\n'), 1);
}

TEST_F(BadBook, CheckTellsWhatIsBroken) {
    const auto book = makeExample();
    for (const auto& row : rowsOf(answer({"check", book})))
        EXPECT_EQ(row.at("result"), "good") << row.at("check") << row.at("detail");
    EXPECT_EQ(runHere({"check", at("none.tenthday")}).exit, 1);
    auto bytes = bytesOf(book);
    for (std::size_t i = 8192; i < bytes.size(); i += 97) bytes[i] = '\x5A';
    write("example.tenthday", bytes);
    std::size_t faults = 0;
    for (const auto& row : rowsOf(answer({"check", book}))) faults += row.at("result") == "fault";
    EXPECT_GT(faults, 0U);
}

}  // namespace
}  // namespace tenthday::test
