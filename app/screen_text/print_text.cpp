#include "screen_text/print_text.h"

#include "screen_text/words.h"

namespace tenthday::print_text {

QString menuEntry() { return Words::tr("Print lists an&d cards ..."); }
QString give() { return Words::tr("&Give to ..."); }
QString giveTo() { return Words::tr("Initials of whom the task is given to; empty: to nobody"); }
QString head() { return Words::tr("Print"); }
QString what() { return Words::tr("&What"); }
QString day() { return Words::tr("&Day"); }
QString about() { return Words::tr("Of &which one"); }
QString who() { return Words::tr("For w&hom (initials)"); }
QString everybody() { return Words::tr("everybody"); }
QString nextWeekToo() { return Words::tr("&Next week too"); }
QString onPaper() { return Words::tr("P&aper"); }
QString paper(Paper paper) {
    switch (paper) {
        case Paper::A4:
            return Words::tr("A4");
        case Paper::Letter:
            return Words::tr("Letter");
        case Paper::A5:
            return Words::tr("A5");
    }
    return {};
}
QString landscape() { return Words::tr("A&cross the long side"); }
QString large() { return Words::tr("&Large print"); }
QString labels() { return Words::tr("Sheet of labels"); }

QString labelCount(int which) {
    switch (which) {
        case 0:
            return Words::tr("Columns");
        case 1:
            return Words::tr("Rows");
        default:
            return Words::tr("First free label");
    }
}

QString labelLength(int which) {
    switch (which) {
        case 0:
            return Words::tr("Margin left");
        case 1:
            return Words::tr("Margin top");
        case 2:
            return Words::tr("Margin right");
        case 3:
            return Words::tr("Margin bottom");
        case 4:
            return Words::tr("Gap across");
        default:
            return Words::tr("Gap down");
    }
}

QString mm() { return Words::tr(" mm"); }
QString cutLines() { return Words::tr("Lines to cut along"); }
QString print() { return Words::tr("&Print ..."); }
QString keepPdf() { return Words::tr("&Keep as PDF ..."); }
QString close() { return Words::tr("Close"); }
QString pages(int pages) { return Words::tr("%Ln page(s)", nullptr, pages); }

QString refused(const PrintChoice& choice) {
    switch (choice.kind) {
        case PaperKind::BatchCard:
            return Words::tr("There is no batch in this season.");
        case PaperKind::Order:
            return Words::tr("There is no order in this book.");
        default:
            return Words::tr(
                "Such labels go on no sheet: each must be 30 by 15 mm or more, and the "
                "first free one must be on the sheet.");
    }
}

}  // namespace tenthday::print_text
