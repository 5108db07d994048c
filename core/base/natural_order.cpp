#include "base/natural_order.h"

namespace tenthday {
namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }

/// Cuts a run of digits off the front, without its leading zeros.
std::string_view cutNumber(std::string_view& text) {
    std::size_t end = 0;
    while (end < text.size() && isDigit(text[end])) ++end;
    auto number = text.substr(0, end);
    text.remove_prefix(end);
    while (number.size() > 1 && number.front() == '0') number.remove_prefix(1);
    return number;
}

}  // namespace

bool naturalLess(std::string_view a, std::string_view b) {
    const auto wholeA = a;
    const auto wholeB = b;
    while (!a.empty() && !b.empty()) {
        if (isDigit(a.front()) && isDigit(b.front())) {
            const auto x = cutNumber(a);
            const auto y = cutNumber(b);
            if (x.size() != y.size()) return x.size() < y.size();
            if (x != y) return x < y;
        } else {
            if (a.front() != b.front()) return a.front() < b.front();
            a.remove_prefix(1);
            b.remove_prefix(1);
        }
    }
    return a.empty() && b.empty() ? wholeA < wholeB : a.empty() && !b.empty();
}

std::string naturalKey(std::string_view label) {
    std::string key;
    key.reserve(label.size() + 4);
    while (!label.empty()) {
        if (isDigit(label.front())) {
            const auto number = cutNumber(label);
            // Longer numbers are larger; '0' + length keeps their place among other characters.
            key += static_cast<char>('0');
            key += static_cast<char>(number.size() > 200 ? 201 : number.size());
            key += number;
        } else {
            key += label.front();
            label.remove_prefix(1);
        }
    }
    return key;
}

}  // namespace tenthday
