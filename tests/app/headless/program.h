/// @file program.h  The real program as a process of its own.
#pragma once
#include <gtest/gtest.h>

#include <QProcessEnvironment>
#include <QTemporaryDir>
#include <map>
#include <string>
#include <vector>

namespace tenthday::test {

struct ProgramRun {
    int exit = -1;
    std::string out;
    std::string err;
};

/// Runs `tenthday` with these words. The environment is bare: PATH, HOME and what is given; no
/// display, no XDG_RUNTIME_DIR, no QT_QPA_PLATFORM.
[[nodiscard]] ProgramRun run(const std::vector<std::string>& words,
                             const std::map<std::string, std::string>& environment = {},
                             const std::string& folder = {});

/// A folder of its own for each test.
class ProgramTest : public ::testing::Test {
protected:
    [[nodiscard]] std::string at(const std::string& name) const;
    /// Writes a file and gives its path.
    std::string write(const std::string& name, const std::string& text) const;
    [[nodiscard]] std::string bytesOf(const std::string& path) const;
    /// Names of all files in the folder, in order.
    [[nodiscard]] std::vector<std::string> files() const;

    /// The example as a new book; its path.
    [[nodiscard]] std::string makeExample(const std::string& name = "example.tenthday") const;
    /// An empty book; its path.
    [[nodiscard]] std::string makeNew(const std::string& name = "new.tenthday") const;
    /// Imports and expects no complaint.
    void import(const std::string& book, const std::string& kind, const std::string& text) const;
    /// Runs with this folder as the working one, and expects an answer.
    [[nodiscard]] std::string answer(const std::vector<std::string>& words) const;
    /// Runs in this folder.
    [[nodiscard]] ProgramRun runHere(const std::vector<std::string>& words) const;

private:
    QTemporaryDir folder_;
};

/// The rows of a CSV text by column name; fails the test when it is none.
/// A number of a listing, whatever the language of the test's own process.
[[nodiscard]] double numberIn(const std::string& field);

[[nodiscard]] std::vector<std::map<std::string, std::string>> rowsOf(const std::string& csv);

}  // namespace tenthday::test
