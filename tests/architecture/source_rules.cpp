#include "architecture/source_rules.h"

#include <algorithm>
#include <regex>
#include <sstream>

namespace tenthday::test {
namespace {

struct Place {
    std::string tree;  ///< core or app
    std::string room;  ///< empty for a file directly in the tree
};

Place placeOf(const std::string& path) {
    const auto first = path.find('/');
    const auto second = path.find('/', first + 1);
    if (first == std::string::npos) return {path, ""};
    if (second == std::string::npos) return {path.substr(0, first), ""};
    return {path.substr(0, first), path.substr(first + 1, second - first - 1)};
}

/// Place in the order of rooms; files beside the rooms of app (main.cpp) come last.
std::ptrdiff_t rank(const Place& place) {
    const auto& rooms = place.tree == "core" ? coreRooms() : appRooms();
    if (place.room.empty()) return std::ssize(rooms);
    const auto at = std::find(rooms.begin(), rooms.end(), place.room);
    return at == rooms.end() ? -1 : at - rooms.begin();
}

template <class Visit>
void forEachLine(const std::string& text, Visit&& visit) {
    std::istringstream lines(text);
    std::string line;
    for (int number = 1; std::getline(lines, line); ++number) visit(line, number);
}

std::string complaint(const SourceFile& file, int line, const std::string& what) {
    return file.path + ":" + std::to_string(line) + ": " + what;
}

/// Why a quoted include is not allowed, or empty.
std::string whyNot(const Place& from, const std::string& included, const Exists& exists) {
    if (included.find('/') == std::string::npos) return "";  // generated: embedded text, moc
    const bool inCore = exists("core/" + included);
    const bool inApp = exists("app/" + included);
    if (inCore && inApp) return "core and app both have " + included;
    if (!inCore && !inApp) return "no such file: " + included;
    if (from.tree == "core" && inApp) return "core includes app: " + included;
    const Place to = placeOf((inCore ? "core/" : "app/") + included);
    if (from.tree == to.tree && rank(to) > rank(from))
        return "against the order of rooms: " + from.room + " includes " + included;
    return "";
}

std::vector<std::string> matches(const SourceFile& file, const std::regex& pattern,
                                 const std::string& what) {
    std::vector<std::string> found;
    forEachLine(withoutComments(file.text), [&](const std::string& line, int number) {
        std::smatch match;
        if (std::regex_search(line, match, pattern))
            found.push_back(complaint(file, number, what + ": " + match.str()));
    });
    return found;
}

}  // namespace

const std::vector<std::string_view>& coreRooms() {
    static const std::vector<std::string_view> rooms{
        "base",    "calendar", "facts",   "weather",   "biology", "mating",   "losses",
        "records", "timeline", "limits",  "occupancy", "supply",  "tasks",    "findings",
        "outlook", "cellsday", "evening", "drafting",  "solver",  "planning", "exchange"};
    return rooms;
}

const std::vector<std::string_view>& appRooms() {
    static const std::vector<std::string_view> rooms{
        "look",    "options",  "screen_text", "book",     "desk",     "paste",   "reasons",
        "chart",   "batches",  "nucs",        "builders", "breeders", "yards",   "weather",
        "virgins", "facts",    "setup",       "orders",   "plan",     "sheets",  "week",
        "evening", "cellsday", "phone",       "help",     "window",   "headless"};
    return rooms;
}

std::string withoutComments(std::string_view text) {
    std::string code;
    forEachLine(std::string(text), [&](const std::string& line, int) {
        std::size_t end = line.find("//");
        while (end != std::string::npos && end > 0 && line[end - 1] == ':')
            end = line.find("//", end + 2);  // an address, not a comment
        code += line.substr(0, end) + "\n";
    });
    return code;
}

std::vector<std::string> includeComplaints(const SourceFile& file, const Exists& exists) {
    static const std::regex quoted(R"re(^\s*#\s*include\s*"([^"]+)")re");
    static const std::regex qt(R"(^\s*#\s*include\s*["<](Q[A-Z]|Qt|q[a-z]+\.h))");
    const Place from = placeOf(file.path);
    std::vector<std::string> found;
    if (rank(from) < 0) found.push_back(complaint(file, 1, "in no room: " + from.room));
    forEachLine(file.text, [&](const std::string& line, int number) {
        std::smatch match;
        if (from.tree == "core" && std::regex_search(line, match, qt))
            found.push_back(complaint(file, number, "Qt in core: " + line));
        if (!std::regex_search(line, match, quoted)) return;
        const std::string why = whyNot(from, match[1], exists);
        if (!why.empty()) found.push_back(complaint(file, number, why));
    });
    return found;
}

std::vector<std::string> purityComplaints(const SourceFile& file) {
    // <cctype> and <cstdio> follow the C locale: a Turkish one has no lower case for 'I'.
    static const std::regex impure(
        R"(<(random|locale|clocale|fstream|filesystem|iostream|cstdio|cctype|ctime|unistd\.h)>)"
        R"(|\b(system_clock|steady_clock|high_resolution_clock|random_device|mt19937\w*)\b)"
        R"(|\b(setlocale|getenv|fopen|strtod|stod|strtof|stof)\s*\()"
        R"(|\bstd::(time|rand|srand|locale|tolower|toupper|isspace|isdigit|isalpha)\b)");
    return matches(file, impure, "core knows no clock, randomness, locale or files");
}

std::vector<std::string> numberComplaints(const SourceFile& file) {
    static const std::regex reader(R"(\b(sto(d|f|ld)|strto(d|f|ld)|atof|sscanf)\s*\()");
    if (file.path.starts_with("tests/architecture/")) return {};  // they name what they look for
    return matches(file, reader, "reads numbers by the language of the process");
}

std::vector<std::string> colourComplaints(const SourceFile& file) {
    static const std::regex colour(
        R"(\bQColor(\s+\w+)?\s*[({]\s*(\d|QStringLiteral|QLatin1|u?"|Qt::(?!transparent)))"
        R"(|\b(qRgba?|QColor::from\w+)\s*\()"
        R"re(|["(]#([0-9a-fA-F]{3}|[0-9a-fA-F]{6}|[0-9a-fA-F]{8})\b)re"
        R"(|\bQt::(black|white|red|green|blue|cyan|magenta|yellow|gray|dark[A-Z]\w*|light[G]\w*)\b)");
    if (placeOf(file.path).room == "look") return {};
    return matches(file, colour, "a colour outside app/look");
}

std::vector<std::string> wordComplaints(const SourceFile& file) {
    static const std::regex words(
        R"re(\b(?!setObjectName|setDefaultSuffix)(set\w*(Text|Title|Tip|Suffix|Prefix|Name|Label|Labels|Description))re"
        R"re(|setWhatsThis|showMessage|addItem|addItems|addRow|addMenu|addAction|addTab)re"
        R"re(|Q(Label|PushButton|ToolButton|Action|GroupBox|CheckBox|RadioButton))re"
        R"re()\s*[({]\s*(QStringLiteral\s*\(\s*|QLatin1String\s*\(\s*|QString\s*\(\s*|u)?)re"
        R"re("(?!Tenthday")[^"]*[A-Za-z]{2,}[^"]*"|\b(Words::|QObject::|\s)tr\s*\(\s*")re");
    const auto room = placeOf(file.path).room;
    if (room.empty() || room == "screen_text" || room == "headless") return {};
    return matches(file, words, "words outside app/screen_text");
}

}  // namespace tenthday::test
