/// @file screen_place.h  Keeps a window where it can be seen and reached.
#pragma once
#include <QList>
#include <QRect>

namespace tenthday {

/// The smallest window that is of use; fits a screen of 1366 x 768 at a scale of 200 %.
inline constexpr QSize kSmallestWindow{560, 340};
/// Room kept for the window's own frame and title.
inline constexpr QSize kFrameRoom{8, 40};

/// A place for a window of which corner (with frame) and size (without) were remembered: on the
/// screen it overlaps most, else on the first; never larger than that, never beyond its edges.
/// A null rectangle gives a comfortable size in the middle of the first screen.
/// @param screens  their free areas, the first being the user's main one; not empty
[[nodiscard]] QRect placeOnScreen(const QRect& wanted, const QList<QRect>& screens);

}  // namespace tenthday
