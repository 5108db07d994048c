#include "records/queen_numbers.h"

#include <algorithm>

namespace tenthday {
namespace {

constexpr std::size_t kMostDigits = 6;  ///< of a running number that is padded
constexpr std::int32_t kEndOfNumbers = 999'999'999;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

std::string padded(std::int32_t number, std::size_t width) {
    auto digits = std::to_string(number);
    return digits.size() >= width ? digits : std::string(width - digits.size(), '0') + digits;
}

/// The number between the two texts, where the label is so made.
std::optional<std::int32_t> numberIn(std::string_view label, const QueenPattern::Frame& frame) {
    if (!label.starts_with(frame.before) || !label.ends_with(frame.after)) return std::nullopt;
    if (label.size() <= frame.before.size() + frame.after.size()) return std::nullopt;
    label.remove_prefix(frame.before.size());
    label.remove_suffix(frame.after.size());
    if (label.size() > 9 || !std::all_of(label.begin(), label.end(), isDigit)) return std::nullopt;
    std::int32_t number = 0;
    for (const char c : label) number = number * 10 + (c - '0');
    return number;
}

}  // namespace

/// One word in braces.
Result<QueenPattern::Piece> QueenPattern::pieceOf(std::string_view word, std::size_t& width) {
    using Kind = Piece::Kind;
    if (word == "year") return Piece{Kind::Year, {}};
    if (word == "yy") return Piece{Kind::ShortYear, {}};
    if (word == "line") return Piece{Kind::Line, {}};
    if (word == "batch") return Piece{Kind::Batch, {}};
    if (word == "n") return Piece{Kind::Number, {}};
    const bool digits = word.size() == 3 && word.starts_with("n:") && word[2] >= '1' &&
                        static_cast<std::size_t>(word[2] - '0') <= kMostDigits;
    if (!digits)
        return Error{"{" + std::string(word) + "} is none of {year} {yy} {line} {batch} {n} {n:3}"};
    width = static_cast<std::size_t>(word[2] - '0');
    return Piece{Kind::Number, {}};
}

Result<QueenPattern> QueenPattern::of(std::string_view text) {
    QueenPattern pattern;
    int numbers = 0;
    while (!text.empty()) {
        const auto open = text.find('{');
        const auto plain = text.substr(0, open);
        if (plain.find('}') != std::string_view::npos) return Error{"} without its {"};
        if (!plain.empty()) pattern.pieces_.push_back({Piece::Kind::Text, std::string(plain)});
        if (open == std::string_view::npos) break;
        const auto close = text.find('}', open);
        if (close == std::string_view::npos) return Error{"{ without its }"};
        auto piece = pieceOf(text.substr(open + 1, close - open - 1), pattern.width_);
        if (!piece) return piece.error();
        numbers += piece.value().kind == Piece::Kind::Number ? 1 : 0;
        pattern.pieces_.push_back(std::move(piece).value());
        text.remove_prefix(close + 1);
    }
    if (numbers != 1) return Error{"the running number {n} is needed just once"};
    return pattern;
}

QueenPattern::Frame QueenPattern::frameOf(const QueenNumberParts& parts) const {
    Frame frame;
    auto* side = &frame.before;
    for (const auto& piece : pieces_) switch (piece.kind) {
            case Piece::Kind::Text:
                *side += piece.text;
                break;
            case Piece::Kind::Year:
                *side += std::to_string(parts.year);
                break;
            case Piece::Kind::ShortYear:
                *side += padded(parts.year % 100, 2);
                break;
            case Piece::Kind::Line:
                *side += parts.line;
                break;
            case Piece::Kind::Batch:
                *side += parts.batch;
                break;
            case Piece::Kind::Number:
                side = &frame.after;
                break;
        }
    return frame;
}

std::string QueenPattern::label(const Frame& frame, std::int32_t number) const {
    return frame.before + padded(number, width_) + frame.after;
}

std::int32_t QueenNumbers::highest(const QueenPattern::Frame& frame) const {
    std::int32_t highest = 0;
    for (const auto& queen : snapshot_.all<Queen>())
        highest = std::max(highest, numberIn(queen->label, frame).value_or(0));
    return std::min(highest, kEndOfNumbers - 1);
}

std::string QueenNumbers::next(const QueenNumberParts& parts) {
    const auto frame = pattern_.frameOf(parts);
    const auto at = last_.find(frame);
    auto& last = at != last_.end() ? at->second : last_[frame] = highest(frame);
    // Two frames can make one label: 1 before "19" and 11 before "9".
    while (true)
        if (auto label = pattern_.label(frame, ++last); given_.insert(label).second) return label;
}

}  // namespace tenthday
