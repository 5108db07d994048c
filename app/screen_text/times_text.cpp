#include "screen_text/times_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/words.h"

namespace tenthday::times_text {

QString menuEntry() { return Words::tr("Ti&mes of work and driving ..."); }
QString head() { return Words::tr("Times of work and driving"); }
QString explained() {
    return Words::tr(
        "From these come the hours of a day on the week's sheet and on the loading "
        "list. Until you set times of your own, those of common practice count; "
        "nobody has measured them.");
}
QString works() { return Words::tr("Kinds of tasks"); }
QString ways() { return Words::tr("Ways"); }
QString workHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("Task");
        case 1:
            return Words::tr("Once");
        case 2:
            return Words::tr("And for each");
        case 3:
            return Words::tr("From");
        default:
            return {};
    }
}
QString wayHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("From");
        case 1:
            return Words::tr("To");
        case 2:
            return Words::tr("Driving");
        default:
            return {};
    }
}
QString home() { return Words::tr("home"); }
QString minutes() { return Words::tr(" min"); }
QString notSet() { return Words::tr("not set"); }
QString usual() { return Words::tr("common practice"); }
QString own() { return Words::tr("your own"); }
QString learned(int minutes, int gaps) {
    return Words::tr("ticks say about %1 min (%Ln time(s))", nullptr, gaps)
        .arg(chart_text::number(minutes));
}
QString takeLearned() { return Words::tr("&Take what ticks say"); }
QString noTimes() { return Words::tr("there is no time in this line"); }
QString bothToTakeBack() {
    return Words::tr(
        "an empty cell: to take your own times back, both columns of times have to be there");
}
QString clear() { return Words::tr("Clear"); }
QString clearTip() {
    return Words::tr("Takes your own times back: those of common practice count again.");
}
QString clearWayTip() { return Words::tr("Takes the time back: nothing is counted for this way."); }
QString paste() { return Words::tr("&Paste lines ..."); }
QString pasteTip() {
    return Words::tr(
        "Takes in lines copied in a spreadsheet. Ctrl+C in a table copies it with its heads.");
}
QString learnHint() {
    return Words::tr(
        "Ticks teach something only where you tick each task as you finish it: the "
        "time since the tick before, the way there and breaks with it. Ticks entered "
        "together in the evening teach nothing and are left out.");
}
QString nothingLearned() { return Words::tr("Your ticks say nothing about times yet."); }
QString save() { return Words::tr("&Save"); }
QString cancel() { return Words::tr("Cancel"); }

}  // namespace tenthday::times_text
