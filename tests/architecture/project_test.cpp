/// The project's own files against the rules of the house.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "architecture/source_rules.h"

namespace tenthday::test {
namespace {

namespace fs = std::filesystem;
const fs::path kTop = TENTHDAY_SOURCE_DIR;

std::vector<SourceFile> filesOf(const char* tree) {
    std::vector<SourceFile> files;
    for (const auto& entry : fs::recursive_directory_iterator(kTop / tree)) {
        const auto kind = entry.path().extension();
        if (kind != ".h" && kind != ".cpp") continue;
        std::ostringstream text;
        text << std::ifstream(entry.path()).rdbuf();
        files.push_back({entry.path().lexically_relative(kTop).generic_string(), text.str()});
    }
    std::sort(files.begin(), files.end(),
              [](const auto& a, const auto& b) { return a.path < b.path; });
    return files;
}

std::string joined(const std::vector<std::string>& lines) {
    std::string all;
    for (const auto& line : lines) all += "\n" + line;
    return all;
}

TEST(Project, IncludesOnlyRoomsNamedEarlier) {
    const auto exists = [](const std::string& path) { return fs::is_regular_file(kTop / path); };
    for (const char* tree : {"core", "app"}) {
        const auto files = filesOf(tree);
        ASSERT_FALSE(files.empty()) << tree;
        for (const auto& file : files) EXPECT_EQ(joined(includeComplaints(file, exists)), "");
    }
}

TEST(Project, CoreKnowsNoClockRandomnessLocaleOrFiles) {
    for (const auto& file : filesOf("core")) EXPECT_EQ(joined(purityComplaints(file)), "");
}

// A test may run in any language, and only now and then in one that writes 99,9.
TEST(Project, ReadsNumbersAlikeInEveryLanguage) {
    for (const char* tree : {"core", "app", "tests"})
        for (const auto& file : filesOf(tree)) EXPECT_EQ(joined(numberComplaints(file)), "");
}

TEST(Project, WritesColoursOnlyInLook) {
    for (const auto& file : filesOf("app")) EXPECT_EQ(joined(colourComplaints(file)), "");
}

TEST(Project, KeepsItsWordsInOneRoom) {
    for (const auto& file : filesOf("app")) EXPECT_EQ(joined(wordComplaints(file)), "");
}

TEST(Project, TopHoldsOnlyWhatWasAgreed) {
    const std::vector<std::string> agreed{"README.md", "DEVELOPERS.md", "CMakeLists.txt",
                                          "LICENSE",   "app",           "core",
                                          "resources", "tests",         "translations"};
    for (const auto& entry : fs::directory_iterator(kTop)) {
        const auto name = entry.path().filename().string();
        if (name.starts_with('.') || name.starts_with("build")) continue;
        EXPECT_NE(std::find(agreed.begin(), agreed.end(), name), agreed.end()) << name;
    }
}

}  // namespace
}  // namespace tenthday::test
