/// @file colour_sight.h  How colours look to those who see some of them otherwise, and how far
/// apart two are; which roles must be told apart.
#pragma once
#include <QColor>
#include <span>
#include <utility>

#include "look/role.h"

namespace tenthday {

/// Ways of seeing colours: as most do, three kinds of colour blindness in full, in grey.
enum class Sight : std::uint8_t { Usual, NoRed, NoGreen, NoBlue, Grey };

/// A colour as it is seen so. The matrices for linear RGB are those of Machado, Oliveira and
/// Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE
/// Transactions on Visualization and Computer Graphics 15(6), 2009, for severity 1.0.
[[nodiscard]] QColor seenBy(Sight sight, const QColor& colour);

/// CIE 1976 L*a*b* difference under D65: 2.3 can just be seen, 100 is white to black.
[[nodiscard]] double colourDifference(const QColor& a, const QColor& b);

/// Filled roles that lie side by side on the chart without a texture that tells them apart.
[[nodiscard]] std::span<const std::pair<Role, Role>> neighbours();

}  // namespace tenthday
