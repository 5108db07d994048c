#include "base/id.h"

namespace tenthday {
namespace {

constexpr int hexDigit(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    if (c >= 'A' && c <= 'F') return c - 'A' + 10;
    return -1;
}
constexpr bool isDashPlace(std::size_t i) { return i == 8 || i == 13 || i == 18 || i == 23; }

}  // namespace

std::string toText(const Uuid& uuid) {
    constexpr char kDigits[] = "0123456789abcdef";
    std::string text;
    text.reserve(36);
    for (int nibble = 0; nibble < 32; ++nibble) {
        if (isDashPlace(text.size())) text += '-';
        const auto half = nibble < 16 ? uuid.high : uuid.low;
        text += kDigits[(half >> (60 - 4 * (nibble % 16))) & 0xF];
    }
    return text;
}

std::optional<Uuid> uuidFromText(std::string_view text) {
    if (text.size() != 36) return std::nullopt;
    Uuid uuid;
    int nibble = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (isDashPlace(i)) {
            if (text[i] != '-') return std::nullopt;
            continue;
        }
        const int digit = hexDigit(text[i]);
        if (digit < 0) return std::nullopt;
        auto& half = nibble < 16 ? uuid.high : uuid.low;
        half = half << 4 | static_cast<std::uint64_t>(digit);
        ++nibble;
    }
    return uuid;
}

}  // namespace tenthday
