#include "sheets/week_preview.h"

#include "screen_text/sheet_text.h"
#include "sheets/preview.h"
#include "sheets/week_layout.h"

namespace tenthday {
namespace {

PagesFor pagesOf(const WeekContent& week) {
    return [week](Paper paper, const PaperRuler& ruler) { return layOutWeek(week, paper, ruler); };
}

}  // namespace

bool printWeek(QPrinter& printer, const WeekContent& week) {
    return printOn(printer, pagesOf(week));
}

void showWeekPreview(const WeekContent& week, QWidget* parent) {
    showPreview(sheet_text::week(week.week), pagesOf(week), parent);
}

}  // namespace tenthday
