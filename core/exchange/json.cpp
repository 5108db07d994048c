#include "exchange/json.h"

namespace tenthday {
namespace {

void appendEscaped(std::string& json, char c) {
    constexpr std::string_view kHex = "0123456789abcdef";
    switch (c) {
        case '"':
            json += "\\\"";
            return;
        case '\\':
            json += "\\\\";
            return;
        case '\n':
            json += "\\n";
            return;
        case '\r':
            json += "\\r";
            return;
        case '\t':
            json += "\\t";
            return;
        default:
            break;
    }
    const auto code = static_cast<unsigned char>(c);
    if (code >= 0x20) {
        json += c;
        return;
    }
    json += "\\u00";
    json += kHex[code >> 4];
    json += kHex[code & 0xF];
}

}  // namespace

void appendJsonText(std::string& json, std::string_view text) {
    json += '"';
    for (const char c : text) appendEscaped(json, c);
    json += '"';
}

}  // namespace tenthday
