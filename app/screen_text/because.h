/// @file because.h  A fact in force as words: its value, what it is counted from, its source.
#pragma once
#include <QString>

#include "facts/facts.h"

namespace tenthday::because {

/// "75 % (S19, S82, S83)".
[[nodiscard]] QString share(const Facts& facts, Fact fact);
/// "1 % chance a queen is out by then (derived)".
[[nodiscard]] QString chance(const Facts& facts, Fact fact, const QString& ofWhat);
/// "240 h after the graft (S11, S22)".
[[nodiscard]] QString hours(const Facts& facts, Fact fact, const QString& fromWhat);
/// "21 d without open brood or queen (S89, S90)".
[[nodiscard]] QString days(const Facts& facts, Fact fact, const QString& ofWhat);

}  // namespace tenthday::because
