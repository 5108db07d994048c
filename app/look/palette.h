/// @file palette.h  The three sets of colours: light, dark, and paper.
#pragma once
#include <QColor>
#include <QPalette>
#include <array>

#include "base/tokens.h"
#include "look/role.h"

namespace tenthday {

enum class Look : std::uint8_t { Light, Dark, Paper };
template <>
struct TokensOf<Look> {
    static constexpr auto names = std::to_array<std::string_view>({"light", "dark", "paper"});
};

/// One colour per role. Paper is for print and vector files: white ground, dark ink, always.
class Palette {
public:
    explicit Palette(const std::array<QRgb, kRoleCount>& colours);
    [[nodiscard]] const QColor& operator[](Role role) const {
        return colours_[static_cast<std::size_t>(role)];
    }

private:
    std::array<QColor, kRoleCount> colours_;
};

[[nodiscard]] const Palette& paletteOf(Look look);
/// The screen look that goes with the desktop's own colours.
[[nodiscard]] Look lookOf(const QPalette& desktop);
/// Qt's widgets in the colours of a look.
[[nodiscard]] QPalette widgetPalette(Look look);

/// On paper that is read outdoors nothing is grey: pure black on white.
[[nodiscard]] QColor printInk();
[[nodiscard]] QColor printGround();

}  // namespace tenthday
