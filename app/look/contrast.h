/// @file contrast.h  Contrast by WCAG 2.1, and which roles meet.
#pragma once
#include <QColor>
#include <span>
#include <utility>

#include "look/role.h"

namespace tenthday {

/// Relative luminance, 0 (black) to 1 (white). Alpha is not looked at.
[[nodiscard]] double luminance(const QColor& colour);
/// 1 (equal) to 21 (black on white).
[[nodiscard]] double contrastRatio(const QColor& a, const QColor& b);

/// Text and what it is written on, anywhere in the program: at least 4.5 to 1.
[[nodiscard]] std::span<const std::pair<Role, Role>> textPairs();
/// Lines and marks that carry meaning, and their ground: at least 3 to 1.
[[nodiscard]] std::span<const std::pair<Role, Role>> markPairs();

}  // namespace tenthday
