#include "facts/sources.h"

#include <map>

#include "tenthday_core_embedded.h"

namespace tenthday {
namespace {

using Sources = std::map<std::string_view, std::string_view>;

Sources parse(std::string_view text) {
    Sources sources;
    while (!text.empty()) {
        const auto end = text.find('\n');
        const auto line = text.substr(0, end);
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        const auto tab = line.find('\t');
        if (!line.empty() && line.front() != '#' && tab != std::string_view::npos)
            sources[line.substr(0, tab)] = line.substr(tab + 1);
    }
    return sources;
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    return text;
}

}  // namespace

std::vector<std::string> sourceLines(std::string_view keys) {
    static const auto sources = parse(embedded::facts_sources());
    std::vector<std::string> lines;
    while (!keys.empty()) {
        const auto end = keys.find_first_of(",;");
        const auto key = trimmed(keys.substr(0, end));
        keys = end == std::string_view::npos ? std::string_view{} : keys.substr(end + 1);
        if (key.empty()) continue;
        const auto found = sources.find(key);
        lines.emplace_back(key);
        if (found != sources.end()) lines.back() += " " + std::string(found->second);
    }
    return lines;
}

}  // namespace tenthday
