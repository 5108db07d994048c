/// The rules themselves, on made-up files: each must be able to fail.
#include "architecture/source_rules.h"

#include <gtest/gtest.h>

#include <set>

namespace tenthday::test {
namespace {

bool exists(const std::string& path) {
    static const std::set<std::string> files{
        "core/base/id.h",    "core/calendar/day.h", "core/weather/record.h", "core/records/rows.h",
        "core/twice/same.h", "app/twice/same.h",    "app/look/roles.h",      "app/desk/desk.h",
        "app/chart/axis.h",  "app/weather/page.h",  "app/window/window.h"};
    return files.contains(path);
}

struct IncludeCase {
    const char* name;
    const char* path;
    const char* line;
    const char* expected;  ///< empty: allowed
};
void PrintTo(const IncludeCase& c, std::ostream* out) { *out << c.name; }
class IncludeRule : public ::testing::TestWithParam<IncludeCase> {};

TEST_P(IncludeRule, IsKept) {
    const auto& c = GetParam();
    const auto found = includeComplaints({c.path, std::string("\n") + c.line + "\n"}, exists);
    const std::string said = found.empty() ? "" : found.front();
    EXPECT_EQ(said, c.expected);
}

// clang-format off
INSTANTIATE_TEST_SUITE_P(Made, IncludeRule, ::testing::Values(
    IncludeCase{"Earlier", "core/records/x.h", "#include \"calendar/day.h\"", ""},
    IncludeCase{"SameRoom", "core/records/x.h", "#include \"records/rows.h\"", ""},
    IncludeCase{"Later", "core/base/x.h", "#include \"calendar/day.h\"", "core/base/x.h:2: against the order of rooms: base includes calendar/day.h"},
    IncludeCase{"LaterWithBlanks", "core/base/x.h", "  #  include  \"calendar/day.h\"", "core/base/x.h:2: against the order of rooms: base includes calendar/day.h"},
    IncludeCase{"AppFromCore", "core/exchange/x.h", "#include \"look/roles.h\"", "core/exchange/x.h:2: core includes app: look/roles.h"},
    IncludeCase{"CoreFromApp", "app/look/x.h", "#include \"records/rows.h\"", ""},
    IncludeCase{"LaterInApp", "app/desk/x.cpp", "#include \"chart/axis.h\"", "app/desk/x.cpp:2: against the order of rooms: desk includes chart/axis.h"},
    IncludeCase{"CoreWeatherFromAnyApp", "app/book/x.cpp", "#include \"weather/record.h\"", ""},
    IncludeCase{"AppWeatherFromChart", "app/chart/x.cpp", "#include \"weather/page.h\"", "app/chart/x.cpp:2: against the order of rooms: chart includes weather/page.h"},
    IncludeCase{"MainUsesAll", "app/main.cpp", "#include \"window/window.h\"", ""},
    IncludeCase{"InBothTrees", "app/window/x.cpp", "#include \"twice/same.h\"", "app/window/x.cpp:2: core and app both have twice/same.h"},
    IncludeCase{"Nowhere", "app/window/x.cpp", "#include \"twice/other.h\"", "app/window/x.cpp:2: no such file: twice/other.h"},
    IncludeCase{"Generated", "core/facts/x.cpp", "#include \"tenthday_core_embedded.h\"", ""},
    IncludeCase{"QtClassInCore", "core/facts/x.cpp", "#include <QString>", "core/facts/x.cpp:2: Qt in core: #include <QString>"},
    IncludeCase{"QtModuleInCore", "core/facts/x.cpp", "#include <QtCore/QString>", "core/facts/x.cpp:2: Qt in core: #include <QtCore/QString>"},
    IncludeCase{"QtHeaderInCore", "core/facts/x.cpp", "#include <qstring.h>", "core/facts/x.cpp:2: Qt in core: #include <qstring.h>"},
    IncludeCase{"QtInApp", "app/look/x.cpp", "#include <QColor>", ""},
    IncludeCase{"NoRoom", "core/misc/x.cpp", "", "core/misc/x.cpp:1: in no room: misc"}),
    [](const auto& test) { return test.param.name; });
// clang-format on

TEST(PurityRule, FindsClockRandomnessLocaleAndFiles) {
    for (const char* line :
         {"#include <random>", "#include <fstream>", "#include <cctype>", "#include <cstdio>",
          "auto now = std::chrono::system_clock::now();", "auto t = std::time(nullptr);",
          "double d = std::stod(text);", "std::mt19937_64 engine;", "setlocale(LC_ALL, \"\");"})
        EXPECT_EQ(purityComplaints({"core/base/x.cpp", line}).size(), 1U) << line;
}

TEST(PurityRule, LeavesPureCodeAndCommentsAlone) {
    for (const char* line :
         {"#include <chrono>", "std::chrono::hours h{3};", "// no system_clock here",
          "DayWindow timeline(Day day);", "auto moment = runtime(3);"})
        EXPECT_TRUE(purityComplaints({"core/base/x.cpp", line}).empty()) << line;
}

TEST(NumberRule, FindsWhatReadsNumbersByLanguage) {
    for (const char* line : {"double d = std::stod(text);", "EXPECT_GT(atof(text), 99);",
                             "auto x = std::strtod(from, &end);", "sscanf(text, \"%lf\", &x);"})
        EXPECT_EQ(numberComplaints({"tests/app/x.cpp", line}).size(), 1U) << line;
    for (const char* line : {"std::stoi(text)", "numberIn(text)", "std::from_chars(a, b, x)"})
        EXPECT_TRUE(numberComplaints({"tests/app/x.cpp", line}).empty()) << line;
}

TEST(ColourRule, FindsColoursOutsideLook) {
    for (const char* line :
         {"QColor(12, 34, 56)", "QColor c{0x123456};", "QColor ink(QStringLiteral(\"#123456\"));",
          "QColor(Qt::red)", "p.setPen(Qt::black);", "QColor::fromRgb(1, 2, 3)",
          "setStyleSheet(QStringLiteral(\"color:#fff\") + \"(#1a2b3c\");",
          "auto c = u\"#1a2b3c\"_qs;"})
        EXPECT_EQ(colourComplaints({"app/chart/x.cpp", line}).size(), 1U) << line;
    EXPECT_TRUE(colourComplaints({"app/look/x.cpp", "QColor(12, 34, 56)"}).empty());
}

TEST(ColourRule, LeavesRolesAlone) {
    for (const char* line :
         {"QColor c = look.colour(Role::Ripe);", "QColor(other)", "QColor colour(Role role);",
          "p.fill(Qt::transparent);", "QColor(Qt::transparent)", "// was #1a2b3c",
          "QStringLiteral(\"batch #12\")", "p.drawLine(0, 0, 1, 1);"})
        EXPECT_TRUE(colourComplaints({"app/chart/x.cpp", line}).empty()) << line;
}

TEST(WordRule, FindsWordsThatNoTranslatorSees) {
    for (const char* line :
         {"label->setText(QStringLiteral(\"Save it\"));", "new QLabel(\"Name\")",
          "button.setToolTip( QString(\"opens\") );", "statusBar()->showMessage(\"Saved\")",
          "box->addItem(QLatin1String(\"none yet\"))", "x = Words::tr(\"Save\");",
          "return tr(\"Save\");"}) {
        EXPECT_EQ(wordComplaints({"app/chart/x.cpp", line}).size(), 1U) << line;
        EXPECT_TRUE(wordComplaints({"app/screen_text/x.cpp", line}).empty());
    }
}

TEST(WordRule, LeavesNamesAndSignsAlone) {
    for (const char* line :
         {"list->setObjectName(QStringLiteral(\"recent\"));", "label->setText(batch_text::save());",
          "new QPushButton(QStringLiteral(\"×\"))", "// setText(\"words\")",
          "button->setText(name + QStringLiteral(\", \"))", "str(\"abc\")"})
        EXPECT_TRUE(wordComplaints({"app/chart/x.cpp", line}).empty()) << line;
}

TEST(Comments, AreCutButAddressesAreNot) {
    EXPECT_EQ(withoutComments("a // b\nhttp://c // d"), "a \nhttp://c \n");
}

}  // namespace
}  // namespace tenthday::test
