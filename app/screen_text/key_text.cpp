#include "screen_text/key_text.h"

#include "screen_text/words.h"

namespace tenthday::key_text {

QString head() { return Words::tr("Keys"); }
QString anywhere() { return Words::tr("Anywhere"); }
QString onTheChart() { return Words::tr("On the season chart"); }
QString onThePageOfNucs() { return Words::tr("On the page of nucs"); }
QString onTheWeek() { return Words::tr("On the week"); }
QString onTheWeather() { return Words::tr("On the weather"); }
QString onTheEvening() { return Words::tr("On the evening page"); }
QString onTheCellsDay() { return Words::tr("On the cells day"); }
QString onTheVirgins() { return Words::tr("On the virgins"); }
QString onTheOrders() { return Words::tr("On the orders"); }
QString onTheTradeNumbers() { return Words::tr("On the trade numbers"); }
QString planningABatch() { return Words::tr("Planning a batch"); }
QString inTheSetUp() { return Words::tr("In the set-up"); }
QString withThePointer() { return Words::tr("With the pointer"); }

std::vector<Key> chartKeys() {
    return {
        {Words::tr("Left, Right"), Words::tr("the day before, the day after")},
        {Words::tr("Page up, Page down"), Words::tr("a week back, a week on")},
        {Words::tr("Home"), Words::tr("go to today")},
        {Words::tr("C, Shift+C"), Words::tr("the next clash, the one before")},
        {Words::tr("M, Shift+M"),
         Words::tr("the next day with work that must be done then, the one before")},
        {Words::tr("Up, Down"), Words::tr("the batch before, the batch after")},
        {Words::tr("Shift+Up, Shift+Down"), Words::tr("choose more batches")},
        {Words::tr("Tab"), Words::tr("the next batch; after the last one on to the next part")},
        {Words::tr("Ctrl+Left, Ctrl+Right"), Words::tr("the cells of a builder before, after")},
        {Words::tr("Ctrl+Up, Ctrl+Down"), Words::tr("the yard above, below")},
        {Words::tr("Space"), Words::tr("tell about the place again")},
        {Words::tr("Alt+Left, Alt+Right"), Words::tr("move the chosen batches by a day")},
        {Words::tr("Alt+Up, Alt+Down"), Words::tr("move its cells to the builder above, below")},
        {Words::tr("Alt+Shift+Up, Alt+Shift+Down"),
         Words::tr("move its cells to the yard above, below")},
        {Words::tr("Y, Shift+Y"), Words::tr("the same: to the yard below, above")},
        {Words::tr("Alt+plus, Alt+minus"), Words::tr("a graft more, a graft fewer")},
        {Words::tr("Insert"), Words::tr("begin a batch on the chosen day")},
        {Words::tr("Enter"), Words::tr("change the chosen batch")},
        {Words::tr("Esc"), Words::tr("drop a move, or let go of the chosen batch")},
        {Words::tr("+, -"), Words::tr("zoom in, zoom out")},
        {Words::tr("0"), Words::tr("the whole season")},
        {Words::tr("1 to 9"), Words::tr("show or hide each nuc of that yard")},
        {Words::tr("B, Shift+B"), Words::tr("the lanes below, the lanes above")},
        {Words::tr("L"), Words::tr("fold or unfold the legend")},
        {Words::tr("Alt+1 to Alt+5"),
         Words::tr("fold or unfold flying days, builders, mating nucs, queens, promises")},
    };
}

std::vector<Key> nucsKeys() {
    return {
        {Words::tr("Left, Right"), Words::tr("the day before, the day after")},
        {Words::tr("Home"), Words::tr("go to today")},
        {Words::tr("Shift+Up, Down"), Words::tr("choose more nucs; Ctrl+A all")},
        {Words::tr("Ctrl+C, Ctrl+V"), Words::tr("to a spreadsheet, and what is stocked back")},
    };
}

std::vector<Key> weekKeys() {
    return {
        {Words::tr("Page up, Page down"), Words::tr("the week before, the week after")},
        {Words::tr("Home"), Words::tr("go to today")},
        {Words::tr("Space"), Words::tr("tick the task as done, or take the tick back")},
        {Words::tr("Insert"), Words::tr("a new task of your own")},
        {Words::tr("G"), Words::tr("give the task to somebody")},
        {Words::tr("F2, Del"), Words::tr("change or delete a task of your own")},
        {Words::tr("Ctrl+C, Ctrl+V"), Words::tr("to a spreadsheet, and ticks and initials back")},
    };
}

std::vector<Key> orderKeys() {
    return {
        {Words::tr("Insert"), Words::tr("a new order")},
        {Words::tr("F2, Del"), Words::tr("change or delete the order")},
        {Words::tr("D, R"), Words::tr("deliver, replace what failed")},
        {Words::tr("M"), Words::tr("mean a batch for it by hand")},
        {Words::tr("L, C"), Words::tr("onto or off the waiting list; cancel or open again")},
        {Words::tr("B"), Words::tr("queens bought in")},
        {Words::tr("I, S"), Words::tr("what if; losses")},
        {Words::tr("Ctrl+C, Ctrl+V"), Words::tr("to and from a spreadsheet")},
    };
}

std::vector<Key> weatherKeys() {
    return {
        {Words::tr("Up, Down"), Words::tr("the day after, the day before")},
        {Words::tr("F, N, Del"), Words::tr("queens flew, did not fly, nobody looked")},
        {Words::tr("F2, or type"), Words::tr("the usual weather of a month; Enter keeps it")},
        {Words::tr("Ctrl+C, Ctrl+V"), Words::tr("to and from a spreadsheet")},
    };
}

std::vector<Key> eveningKeys() {
    return {
        {Words::tr("0 to 9"), Words::tr("a count; Enter alone: as expected")},
        {Words::tr("E, L, S, V, N, X"),
         Words::tr("eggs, larvae, sealed brood, virgin seen, none yet, gone")},
        {Words::tr("Space, Enter"), Words::tr("done, in, caught")},
        {Words::tr("Delete"), Words::tr("take back what was entered")},
        {Words::tr("F2"), Words::tr("correct the count, the hour or the note")},
        {Words::tr("Ctrl+C, Ctrl+V"),
         Words::tr("to and from a spreadsheet, a column of counts too")},
        {Words::tr("Left, Right"), Words::tr("the day before, the day after")},
        {Words::tr("Home"), Words::tr("go to today")},
    };
}

std::vector<Key> cellsDayKeys() {
    return {
        {Words::tr("Space"), Words::tr("tick the chosen nucs, or take the ticks away")},
        {Words::tr("Shift and Up, Down"), Words::tr("choose several nucs")},
        {Words::tr("Alt+Left, Alt+Right"), Words::tr("the cells day before, the cells day after")},
        {Words::tr("Ctrl+Z"), Words::tr("take back what was planned or recorded there")},
    };
}

std::vector<Key> virginKeys() {
    return {
        {Words::tr("Left, Right"), Words::tr("the day before, the day after")},
        {Words::tr("Home"), Words::tr("go to today")},
        {Words::tr("Enter"), Words::tr("go to the nuc on the page of nucs")},
    };
}

std::vector<Key> batchKeys() {
    return {
        {Words::tr("Ctrl+S"), Words::tr("save the batch")},
        {Words::tr("Esc"), Words::tr("leave it as it was")},
        {Words::tr("W on a date"), Words::tr("why this day")},
        {Words::tr("Enter on a line of the week"), Words::tr("graft on that day")},
    };
}

std::vector<Key> setupKeys() {
    return {
        {Words::tr("Insert, Ctrl+Shift+N"), Words::tr("something new")},
        {Words::tr("Ctrl+S, Enter"), Words::tr("save the form")},
        {Words::tr("Esc"), Words::tr("discard what is not saved")},
        {Words::tr("Del"), Words::tr("delete it, or retire what is in use")},
        {Words::tr("F4"), Words::tr("the season of the chosen builder or queen in order")},
        {Words::tr("Ctrl+F"), Words::tr("find in the list")},
        {Words::tr("Ctrl+C, Ctrl+V"), Words::tr("to and from a spreadsheet")},
    };
}

std::vector<Key> factsKeys() {
    return {{Words::tr("Up, Down"), Words::tr("the number before, the number after")},
            {Words::tr("F2, or type"), Words::tr("give a number of your own; Enter keeps it")},
            {Words::tr("Ctrl+C, Ctrl+V"), Words::tr("to and from a spreadsheet")}};
}

std::vector<Key> pointer() {
    return {
        {Words::tr("Drag a batch"), Words::tr("move it; what follows is shown at once")},
        {Words::tr("Drag the ground"), Words::tr("go through the season")},
        {Words::tr("Press a day"), Words::tr("choose it")},
        {Words::tr("Double-click a day"), Words::tr("plan a batch that starts on it")},
        {Words::tr("Double-click a batch"), Words::tr("change it")},
        {Words::tr("Press a yard's name"), Words::tr("show or hide each of its nucs")},
        {Words::tr("Wheel"),
         Words::tr("go through the season, or up and down where there is more")},
        {Words::tr("Ctrl+Wheel"), Words::tr("zoom at the pointer")},
        {Words::tr("Rest on anything"), Words::tr("what it is, and where each number comes from")},
    };
}

}  // namespace tenthday::key_text
