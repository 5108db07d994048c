/// @file type.h  What a text is for. Sizes in logical pixels, all from one base size.
#pragma once
#include <QFont>
#include <cstddef>

namespace tenthday {

enum class Type : std::uint8_t {
    Title,   ///< months
    Label,   ///< names of lanes, heads of cards
    Body,    ///< names of rows, texts of cards
    Small,   ///< weeks, second lines
    Strong,  ///< a word that must be seen, small
    Number,  ///< numbers standing in a picture
    Batch,   ///< a batch's own number
};
inline constexpr std::size_t kTypeCount = static_cast<std::size_t>(Type::Batch) + 1;

/// A family and the size of Body, from which the others follow.
struct Typeface {
    QString family;
    int basePx = 12;

    [[nodiscard]] QFont font(Type type) const;
    /// Line height of a type, logical px.
    [[nodiscard]] int linePx(Type type) const;
};

/// Inter where it is installed, else the desktop's own; the size follows the desktop's.
[[nodiscard]] Typeface systemTypeface();

}  // namespace tenthday
