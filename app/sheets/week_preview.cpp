#include "sheets/week_preview.h"

#include <QPrintPreviewDialog>

#include "screen_text/sheet_text.h"
#include "sheets/page_painter.h"
#include "sheets/week_layout.h"

namespace tenthday {
namespace {

Paper paperOf(const QPrinter& printer) {
    switch (printer.pageLayout().pageSize().id()) {
        case QPageSize::Letter:
            return Paper::Letter;
        case QPageSize::A5:
            return Paper::A5;
        default:
            return Paper::A4;
    }
}

}  // namespace

void printWeek(QPrinter& printer, const WeekContent& week) {
    printer.setFullPage(true);  // the pages bring their own margins
    const PaperRuler ruler;
    (void)printPages(printer, printer.resolution(), layOutWeek(week, paperOf(printer), ruler),
                     ruler);
}

void showWeekPreview(const WeekContent& week, QWidget* parent) {
    auto* printer = new QPrinter(QPrinter::HighResolution);
    printer->setDocName(sheet_text::week(week.week));
    auto* preview = new QPrintPreviewDialog(printer, parent);
    preview->setAttribute(Qt::WA_DeleteOnClose);
    preview->setWindowTitle(sheet_text::week(week.week));
    QObject::connect(preview, &QPrintPreviewDialog::paintRequested, preview,
                     [week](QPrinter* on) { printWeek(*on, week); });
    QObject::connect(preview, &QObject::destroyed, preview, [printer] { delete printer; });
    preview->resize(900, 760);
    preview->show();
}

}  // namespace tenthday
