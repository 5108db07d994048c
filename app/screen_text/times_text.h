/// @file times_text.h  The words of the times of work and driving.
#pragma once
#include <QString>

namespace tenthday::times_text {

[[nodiscard]] QString menuEntry();
[[nodiscard]] QString head();
[[nodiscard]] QString explained();
[[nodiscard]] QString works();
[[nodiscard]] QString ways();
/// Kind of task, minutes once, minutes for each piece, where from; nothing over the buttons.
[[nodiscard]] QString workHead(int column);
/// From, to, minutes; nothing over the buttons.
[[nodiscard]] QString wayHead(int column);
[[nodiscard]] QString home();
[[nodiscard]] QString minutes();
[[nodiscard]] QString notSet();
[[nodiscard]] QString usual();
[[nodiscard]] QString own();
/// "ticks say about 35 min (8 times)".
[[nodiscard]] QString learned(int minutes, int gaps);
[[nodiscard]] QString takeLearned();
/// Why a pasted line cannot be: neither column of times is there, or one of two.
[[nodiscard]] QString noTimes();
[[nodiscard]] QString bothToTakeBack();
[[nodiscard]] QString clear();
/// What clearing the times of a kind, and those of a way, does.
[[nodiscard]] QString clearTip();
[[nodiscard]] QString clearWayTip();
/// What tick times can teach, and what not.
[[nodiscard]] QString paste();
[[nodiscard]] QString pasteTip();
[[nodiscard]] QString learnHint();
[[nodiscard]] QString nothingLearned();
[[nodiscard]] QString save();
[[nodiscard]] QString cancel();

}  // namespace tenthday::times_text
