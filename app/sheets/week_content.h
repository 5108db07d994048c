/// @file week_content.h  What stands on a week's sheet, in words, before it has a place.
#pragma once
#include <QString>
#include <QStringList>
#include <vector>

#include "calendar/iso_week.h"
#include "outlook/outlook.h"

namespace tenthday {

/// Boxes and their sides, to circle what is there.
struct LookGrid {
    struct Box {
        QString name;
        QStringList sides;
    };
    std::vector<Box> boxes;
    [[nodiscard]] bool isEmpty() const { return boxes.empty(); }
};

struct WeekRow {
    int number = 0;  ///< that of `tasks` and of the evening's entry
    bool must = false;
    bool done = false;
    QString what;
    QString how;
    QString who;    ///< initials; empty: given to nobody
    QString blank;  ///< beside the line to write on; empty: nothing to count
    LookGrid grid;
};

/// What is to be done in one yard on one day.
struct WeekBlock {
    Day day;
    QString yard;  ///< empty: in no particular yard
    QString takeAlong;
    std::vector<WeekRow> rows;
    QStringList
        sum;  ///< what the cells of the day must add up to; empty: no cells, or not the last
};

struct WeekDay {
    Day day;
    QString hours;                  ///< of work and driving; empty: nothing to do
    QStringList works;              ///< in a word each
    std::vector<WeekBlock> blocks;  ///< in driving order; none: nothing to do
};

struct WeekContent {
    IsoWeek week;
    QString operation;
    QString who;                ///< whose sheet; empty: everybody's
    QString hours;              ///< how the hours of the days come
    std::vector<WeekDay> days;  ///< seven, from Monday
    QStringList yards;          ///< those with work, for notes
    QStringList cautions;
};

/// @param who  initials: only tasks given to them, with the numbers they have in the whole week,
/// and
///             a line of how many are given to nobody; empty: all tasks
[[nodiscard]] WeekContent weekContent(const Outlook& outlook, IsoWeek week,
                                      const QString& who = {});

}  // namespace tenthday
