/// @file plan_steps_text.h  The words of the way to a season's plan in three steps.
#pragma once
#include <QString>

#include "calendar/window.h"
#include "screen_text/setup_text.h"

namespace tenthday {

/// What a book has for a season's plan.
struct PlanGround {
    QString seasonLabel;
    DayWindow season{};
    bool isOver = false;
    int batches = 0;  ///< that are in the season already
    int orders = 0;   ///< open ones, due in it
    int wanted = 0;   ///< queens, cells and virgins of these
    int nucs = 0;     ///< sides, on the day that has most
    int yards = 0;    ///< with nucs
    int builders = 0;
    int breeders = 0;  ///< breeder queens

    [[nodiscard]] bool canPlan() const { return !isOver && orders > 0 && builders > 0; }
};

namespace plan_steps_text {

/// "Season 2028, 1 March to 31 October: nothing is planned in it yet."
[[nodiscard]] QString season(const PlanGround& ground);
[[nodiscard]] QString seasons();
/// "1  Orders in"; "2  Boxes and builders as they are"; "3  A plan out".
[[nodiscard]] QString name(int step);
/// What is there, and what is missing.
[[nodiscard]] QString state(int step, const PlanGround& ground);
[[nodiscard]] QString go(int step);
/// What is to be entered first.
[[nodiscard]] setup_text::Kind missing(const PlanGround& ground);

}  // namespace plan_steps_text
}  // namespace tenthday
