#include "exchange/content_lines.h"

#include <algorithm>

#include "exchange/csv.h"

namespace tenthday {
namespace {

constexpr std::size_t kMostOctets = 75;  // of a line, its end not counted: RFC 5545, 3.1

bool isControl(char c) { return (static_cast<unsigned char>(c) < 0x20 && c != '\t') || c == 0x7F; }

/// The lines of the text as they stand, without their ends.
std::vector<std::string_view> rawLines(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        auto line = text.substr(0, end);
        if (line.ends_with('\r')) line.remove_suffix(1);
        lines.push_back(line);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

bool isText(std::string_view line) {
    while (!line.empty()) {
        const auto length = utf8Length(line);
        if (length == 0 || isControl(line.front())) return false;
        line.remove_prefix(length);
    }
    return true;
}

/// The colon before the value: the first that stands in no quoted parameter.
std::size_t colonOf(std::string_view line) {
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (line[i] == '"') quoted = !quoted;
        if (line[i] == ':' && !quoted) return i;
    }
    return std::string_view::npos;
}

Result<ContentLine> takenApart(std::int32_t number, std::string_view line) {
    if (!isText(line)) return atLine(number, "not valid text in UTF-8");
    const auto colon = colonOf(line);
    if (colon == std::string_view::npos || colon == 0)
        return atLine(number, "a name and a colon are needed");
    const auto head = line.substr(0, colon);
    const auto semicolon = head.find(';');
    ContentLine content{
        number, std::string(head.substr(0, semicolon)), {}, std::string(line.substr(colon + 1))};
    if (semicolon != std::string_view::npos) content.parameters = head.substr(semicolon + 1);
    return content;
}

}  // namespace

Error atLine(std::int32_t number, std::string_view what) {
    return {"line " + std::to_string(number) + ": " + std::string(what)};
}

std::string escapedText(std::string_view text) {
    std::string value;
    while (!text.empty()) {
        const char c = text.front();
        auto length = utf8Length(text);
        if (c == '\r' || c == '\n') {
            value += "\\n";
            if (text.starts_with("\r\n")) length = 2;
        } else if (c == '\\' || c == ';' || c == ',') {
            value += {'\\', c};
        } else if (isControl(c)) {
            value += ' ';
        } else if (length == 0) {
            value += "\xEF\xBF\xBD";
        } else {
            value += text.substr(0, length);
        }
        text.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return value;
}

std::string unescapedText(std::string_view value) {
    std::string text;
    for (std::size_t i = 0; i < value.size(); ++i) {
        if (value[i] != '\\' || i + 1 == value.size()) {
            text += value[i];
            continue;
        }
        const char c = value[++i];
        text += c == 'n' || c == 'N' ? '\n' : c;
    }
    return text;
}

std::vector<std::string> partsOf(std::string_view value) {
    std::vector<std::string> parts(1);
    for (std::size_t i = 0; i < value.size(); ++i) {
        if (value[i] == ',') {
            parts.emplace_back();
            continue;
        }
        parts.back() += value[i];
        if (value[i] == '\\' && i + 1 < value.size()) parts.back() += value[++i];
    }
    return parts;
}

void appendContentLine(std::string& text, std::string_view line) {
    std::size_t octets = 0;
    while (!line.empty()) {
        const auto length = std::max<std::size_t>(utf8Length(line), 1);
        if (octets + length > kMostOctets) {
            text += "\r\n ";
            octets = 1;  // the space counts
        }
        text += line.substr(0, length);
        octets += length;
        line.remove_prefix(length);
    }
    text += "\r\n";
}

Result<std::vector<ContentLine>> readContentLines(std::string_view text) {
    const auto raw = rawLines(text);
    std::vector<ContentLine> lines;
    for (std::size_t i = 0; i < raw.size();) {
        const auto number = static_cast<std::int32_t>(i + 1);
        std::string whole(raw[i++]);
        // Put together before it is looked at: others may fold inside a character.
        for (; i < raw.size() && (raw[i].starts_with(' ') || raw[i].starts_with('\t')); ++i)
            whole += raw[i].substr(1);
        if (whole.empty() && i == raw.size()) break;
        auto line = takenApart(number, whole);
        if (!line) return line.error();
        lines.push_back(std::move(line).value());
    }
    return lines;
}

}  // namespace tenthday
