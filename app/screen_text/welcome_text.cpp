#include "screen_text/welcome_text.h"

#include <QLocale>

#include "screen_text/words.h"

namespace tenthday::welcome_text {

QString purpose() {
    return Words::tr(
        "Plans a season of raising queens: grafts, cell builders, mating nucs, and the week's "
        "work on paper.");
}
QString exampleDoes() { return Words::tr("An invented season to look at and to try things on."); }
QString openDoes() { return Words::tr("A book keeps one operation with all its seasons."); }
QString newDoes() { return Words::tr("Begins an empty book for your own operation."); }
QString recentHead() { return Words::tr("Opened lately"); }
QString recentMenu() { return Words::tr("Opened &lately"); }
QString noRecent() { return Words::tr("None yet"); }
QString recentKeys() { return Words::tr("Enter opens a book, Del takes it off this list."); }
QString openRecent() { return Words::tr("&Open"); }
QString forgetRecent() { return Words::tr("&Take off this list"); }
QString opened(const QDate& day) {
    return Words::tr("opened %1").arg(QLocale().toString(day, QLocale::ShortFormat));
}
QString notFound() { return Words::tr("not found"); }
QString closeBook() { return Words::tr("Close the &book"); }

QString operation() { return Words::tr("&Name of the operation"); }
QString place() { return Words::tr("&File"); }
QString choosePlace() { return Words::tr("C&hoose ..."); }
QString hemisphere() { return Words::tr("&Where"); }
QString north() { return Words::tr("northern hemisphere"); }
QString south() { return Words::tr("southern hemisphere"); }
QString seasonFrom() { return Words::tr("Season fr&om"); }
QString seasonUntil() { return Words::tr("&until"); }
QString firstYard() { return Words::tr("First &yard"); }
QString firstYardHint() { return Words::tr("may stay empty"); }
QString firstYardWanted() { return Words::tr("such as Home"); }
QString make() { return Words::tr("Make the book"); }
QString needsOperation() { return Words::tr("The operation needs a name."); }
QString needsPlace() { return Words::tr("The book needs a file."); }
QString endsBefore() { return Words::tr("The season ends before it begins."); }
QString seasonTooLong(int most) {
    return Words::tr("A season lasts %Ln day(s) at most.", nullptr, most);
}
QString noFolder() { return Words::tr("There is no such folder."); }
QString needsYard() {
    return Words::tr("In the south the first yard needs a name: the yards say where they stand.");
}
QString placeIsTaken() { return Words::tr("There is a file of this name already."); }

QString noBuilders() {
    return Words::tr("No builder yet: add the boxes that raise your cells in Set-up (Ctrl+8).");
}
QString cellsDays() { return Words::tr("Batches"); }
QString noBatches() {
    return Words::tr("No batch yet: double-click a day, or press Ctrl+B, to plan one.");
}
QString noNucs() {
    return Words::tr("No nuc yet: add your boxes, a dozen at once, in Set-up (Ctrl+8).");
}

}  // namespace tenthday::welcome_text
