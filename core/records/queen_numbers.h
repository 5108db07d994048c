/// @file queen_numbers.h  The numbers of caught queens, by a pattern of the user's.
///
///   {year}   year of birth, four digits     {line}   label of her line; nothing where not known
///   {yy}     the same, two digits           {batch}  label of her batch
///   {n}      running number; {n:3} with at least three digits: 007
///
/// All else stands as it is written: "{yy}-{n:3}" gives 27-001, 27-002 ... The number runs by
/// itself in each text around it: with "{line}{n}" each line counts from 1.
#pragma once
#include <map>
#include <set>
#include <string>
#include <vector>

#include "base/result.h"
#include "records/snapshot.h"

namespace tenthday {

/// What a number tells of a queen.
struct QueenNumberParts {
    std::int32_t year = 0;
    std::string line;
    std::string batch;
};

class QueenPattern {
public:
    /// "{yy}-{n:3}".
    [[nodiscard]] static std::string_view usual() { return "{yy}-{n:3}"; }
    /// Refused, naming what is wrong: the running number missing or twice, a word in braces that is
    /// none of those above, a brace alone.
    [[nodiscard]] static Result<QueenPattern> of(std::string_view text);

    /// What stands before and after the running number.
    struct Frame {
        std::string before;
        std::string after;
        friend auto operator<=>(const Frame&, const Frame&) = default;
    };
    [[nodiscard]] Frame frameOf(const QueenNumberParts& parts) const;
    /// @param number  not negative
    [[nodiscard]] std::string label(const Frame& frame, std::int32_t number) const;

private:
    struct Piece {
        enum class Kind : std::uint8_t { Text, Year, ShortYear, Line, Batch, Number } kind{};
        std::string text;
    };
    static Result<Piece> pieceOf(std::string_view word, std::size_t& width);

    std::vector<Piece> pieces_;
    std::size_t width_ = 1;  ///< digits of the number, at least
};

/// Gives numbers that no queen of the book has, one after the other: above the highest in use.
class QueenNumbers {
public:
    /// @param snapshot  must outlive it
    QueenNumbers(const Snapshot& snapshot, QueenPattern pattern)
        : snapshot_(snapshot), pattern_(std::move(pattern)) {}
    [[nodiscard]] std::string next(const QueenNumberParts& parts);

private:
    [[nodiscard]] std::int32_t highest(const QueenPattern::Frame& frame) const;

    const Snapshot& snapshot_;
    QueenPattern pattern_;
    std::map<QueenPattern::Frame, std::int32_t> last_;
    std::set<std::string> given_;
};

}  // namespace tenthday
