#include "sheets/preview.h"

#include <QMessageBox>
#include <QPrintPreviewDialog>

#include "screen_text/sheet_text.h"
#include "sheets/page_painter.h"

namespace tenthday {
namespace {

/// The largest of our papers that lies whole on the printer's, upright; A5 on anything smaller.
Paper paperOf(const QPrinter& printer) {
    const auto id = printer.pageLayout().pageSize().id();
    if (id == QPageSize::Letter) return Paper::Letter;
    const auto room = printer.pageLayout().pageSize().sizePoints();
    const auto fits = [&](Paper paper) {
        const auto size = sizeOf(paper);
        return size.width() <= room.width() + 1 && size.height() <= room.height() + 1;
    };
    if (fits(Paper::A4)) return Paper::A4;
    return fits(Paper::Letter) ? Paper::Letter : Paper::A5;
}

}  // namespace

bool printOn(QPrinter& printer, const PagesFor& pages) {
    printer.setFullPage(true);                          // the pages bring their own margins
    printer.setPageOrientation(QPageLayout::Portrait);  // and stand upright
    const auto paper = paperOf(printer);
    const auto size = sizeOf(paper);
    const auto room = printer.pageLayout().pageSize().sizePoints();
    if (room.width() + 1 < size.width() || room.height() + 1 < size.height())
        printer.setPageSize(QPageSize(QPageSize::A5));
    const PaperRuler ruler;
    return printPages(printer, printer.resolution(), pages(paper, ruler), ruler);
}

void showPreview(const QString& title, const PagesFor& pages, QWidget* parent) {
    auto* printer = new QPrinter(QPrinter::HighResolution);
    printer->setDocName(title);
    auto* preview = new QPrintPreviewDialog(printer, parent);
    preview->setAttribute(Qt::WA_DeleteOnClose);
    preview->setWindowTitle(title);
    QObject::connect(
        preview, &QPrintPreviewDialog::paintRequested, preview, [pages, preview](QPrinter* on) {
            if (!printOn(*on, pages))
                QMessageBox::warning(preview, preview->windowTitle(), sheet_text::cannotPrint());
        });
    QObject::connect(preview, &QObject::destroyed, preview, [printer] { delete printer; });
    preview->resize(900, 760);
    preview->show();
}

}  // namespace tenthday
