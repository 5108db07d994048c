#include "screen_text/derived_text.h"

#include "screen_text/words.h"

namespace tenthday::derived_text {

QString virgins() {
    return Words::tr(
        "Nothing can be pasted here: this is reckoned from cells, looks and weather. Paste looks "
        "on "
        "the page Evening.");
}
QString virginBatches() {
    return Words::tr(
        "Nothing can be pasted here: this is reckoned from the list of virgins. Paste looks on the "
        "page Evening.");
}
QString stockings() {
    return Words::tr(
        "Nothing can be pasted here: this is reckoned from the cells of a week. Paste what nucs "
        "are "
        "stocked with on the page Nucs.");
}
QString broodless() {
    return Words::tr(
        "Nothing can be pasted here: days without brood are reckoned. Choose lines and enter the "
        "work below them.");
}
QString rates() {
    return Words::tr(
        "Nothing can be pasted here: rates are reckoned from your counts and looks. Paste these on "
        "the page Evening.");
}
QString ownOutcomes() {
    return Words::tr(
        "Nothing can be pasted here: counts and looks are pasted on the page Evening. Enter leaves "
        "a batch out.");
}
QString whatIf() {
    return Words::tr(
        "Nothing can be pasted here: this is reckoned and not kept. Change the question above.");
}
QString proposals() {
    return Words::tr(
        "Nothing can be pasted here: proposals are reckoned. Change what is asked, or the batch "
        "once it is in the book.");
}
QString planSums() {
    return Words::tr(
        "Nothing can be pasted here: sums are reckoned. Change orders on the page Orders.");
}
QString nucsToTick() {
    return Words::tr("Nothing can be pasted here: tick nucs with Space or by drawing over them.");
}
QString wayOrder() {
    return Words::tr("Nothing can be pasted here: move and change the ways one by one.");
}
QString weatherFile() {
    return Words::tr("Nothing can be pasted here: this is what the file says. Change the file.");
}
QString pastedLines() {
    return Words::tr("This shows how the copied lines were read: paste into the field above.");
}
QString story() {
    return Words::tr(
        "Nothing can be pasted here: this is told from batches, diary and moves. Paste into the "
        "diary in the set-up.");
}
QString weekOfBatch() {
    return Words::tr(
        "Nothing can be pasted here: days are reckoned from the graft. Change the batch's fields.");
}
QString datesOfBatch() {
    return Words::tr(
        "Nothing can be pasted here: dates are reckoned. Change the batch, or paste what was seen "
        "on the page Evening.");
}

}  // namespace tenthday::derived_text
