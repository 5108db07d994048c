#include "screen_text/season_text.h"

#include "screen_text/words.h"

namespace tenthday::season_text {

QString nextEntry() { return Words::tr("&Begin the next season ..."); }
QString head() { return Words::tr("Begin the next season"); }
QString explained() {
    return Words::tr(
        "What is ticked goes on into the next season. What is not is retired the day "
        "before it begins; its history stays. One undo takes all of it back.");
}
QString label() { return Words::tr("&Name"); }
QString from() { return Words::tr("&First day"); }
QString until() { return Words::tr("&Last day"); }
QString boxes() { return Words::tr("Boxes"); }
QString builders() { return Words::tr("Builders"); }
QString breeders() { return Words::tr("Breeder queens"); }
QString goOn() { return Words::tr("&Goes on"); }
QString always() {
    return Words::tr(
        "Yards, methods, trade numbers, times of work and driving, and what your own "
        "outcomes say go on of themselves.");
}
QString begin() { return Words::tr("&Begin the season"); }
QString cancel() { return Words::tr("Cancel"); }
QString cannot(const QString& why) {
    return Words::tr("The next season cannot begin so: %1").arg(why);
}
QString readOnly() { return Words::tr("The book is open for reading only."); }
QString takeInLines(int lines) { return Words::tr("&Take in %Ln line(s)", nullptr, lines); }
QString spreadsheetFiles() { return Words::tr("Lists for my spreadsheet (*.csv)"); }

}  // namespace tenthday::season_text
