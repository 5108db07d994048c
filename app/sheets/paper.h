/// @file paper.h  Papers and the type on them. One unit is a point, 1/72 inch.
#pragma once
#include <QFont>
#include <QFontMetricsF>
#include <QRectF>
#include <QStringList>
#include <array>

#include "options/print_choice.h"

namespace tenthday {

[[nodiscard]] constexpr qreal millimetres(qreal mm) { return mm * 72 / 25.4; }

/// The sheet of paper, turned as it is printed.
[[nodiscard]] QSizeF sheetSize(const PaperForm& form);
/// How much larger all is printed than it is laid out: a large print is laid out on less room.
[[nodiscard]] qreal zoomOf(const PaperForm& form);
/// The room a page is laid out on: the sheet less the zoom.
[[nodiscard]] QSizeF sizeOf(const PaperForm& form);
/// What may be printed on: that room less the margins, which every printer leaves.
[[nodiscard]] QRectF printable(const PaperForm& form);

enum class Print : std::uint8_t {
    Huge,    ///< the week
    Large,   ///< its days
    Strong,  ///< what is to be done
    Text,
    Small,  ///< how
    SmallStrong,
    Tiny,  ///< on labels, where Small does not go in
};
inline constexpr std::size_t kPrintCount = static_cast<std::size_t>(Print::Tiny) + 1;

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
    /// Broken between words, never at a no-break space (which is set as a space), and within a
    /// word only where it alone is wider than the room.
    [[nodiscard]] QStringList lines(const QString& text, Print type, qreal room) const;
    /// The first lines, the last of them ending in an ellipsis where there would be more.
    [[nodiscard]] QStringList atMost(int count, const QString& text, Print type, qreal room) const;

private:
    static std::size_t index(Print type) { return static_cast<std::size_t>(type); }
    std::array<QFont, kPrintCount> fonts_;
};

}  // namespace tenthday
