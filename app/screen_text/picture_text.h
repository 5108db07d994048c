/// @file picture_text.h  Words of the season as a picture.
#pragma once
#include <QString>

namespace tenthday::picture_text {

[[nodiscard]] QString entry();
/// Kinds of file, as a file dialog wants them.
[[nodiscard]] QString posterA3();
[[nodiscard]] QString posterA4();
[[nodiscard]] QString pixels();
[[nodiscard]] QString drawing();
[[nodiscard]] QString saved(const QString& path);
[[nodiscard]] QString cannotSave();

}  // namespace tenthday::picture_text
