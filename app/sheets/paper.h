/// @file paper.h  Papers and the type on them. One unit is a point, 1/72 inch.
#pragma once
#include <QFont>
#include <QFontMetricsF>
#include <QRectF>
#include <QStringList>
#include <array>

#include "base/tokens.h"

namespace tenthday {

enum class Paper : std::uint8_t { A4, Letter, A5 };
template <>
struct TokensOf<Paper> {
    static constexpr auto names = std::to_array<std::string_view>({"a4", "letter", "a5"});
};

[[nodiscard]] constexpr qreal millimetres(qreal mm) { return mm * 72 / 25.4; }

[[nodiscard]] QSizeF sizeOf(Paper paper);
/// What may be printed on: the page less its margins, which every printer leaves.
[[nodiscard]] QRectF printable(Paper paper);

enum class Print : std::uint8_t {
    Huge,    ///< the week
    Large,   ///< its days
    Strong,  ///< what is to be done
    Text,
    Small,  ///< how
    SmallStrong,
};
inline constexpr std::size_t kPrintCount = static_cast<std::size_t>(Print::SmallStrong) + 1;

/// Measures what is printed, and breaks it into lines.
class PaperRuler {
public:
    PaperRuler();
    [[nodiscard]] const QFont& font(Print type) const { return fonts_[index(type)]; }
    [[nodiscard]] qreal width(const QString& text, Print type) const;
    /// From one baseline to the next.
    [[nodiscard]] qreal line(Print type) const;
    /// From the top of a line to its baseline.
    [[nodiscard]] qreal ascent(Print type) const;
    /// Broken between words, and within one only where it alone is wider than the room.
    [[nodiscard]] QStringList lines(const QString& text, Print type, qreal room) const;
    /// The first lines, the last of them ending in an ellipsis where there would be more.
    [[nodiscard]] QStringList atMost(int count, const QString& text, Print type, qreal room) const;

private:
    static std::size_t index(Print type) { return static_cast<std::size_t>(type); }
    std::array<QFont, kPrintCount> fonts_;
};

}  // namespace tenthday
