#include "sheets/preview.h"

#include "sheets/page_painter.h"

namespace tenthday {
namespace {

QPageSize::PageSizeId idOf(Paper paper) {
    switch (paper) {
        case Paper::A4:
            return QPageSize::A4;
        case Paper::Letter:
            return QPageSize::Letter;
        case Paper::A5:
            return QPageSize::A5;
    }
    return QPageSize::A4;
}

}  // namespace

void setForm(QPrinter& printer, const PaperForm& form) {
    printer.setFullPage(true);
    printer.setPageSize(QPageSize(idOf(form.paper)));
    printer.setPageOrientation(form.landscape ? QPageLayout::Landscape : QPageLayout::Portrait);
}

bool printOn(QPrinter& printer, const PaperForm& form, const PagesFor& pages) {
    setForm(printer, form);
    const PaperRuler ruler;
    return printPages(printer, printer.resolution(), pages(form, ruler), form, ruler);
}

}  // namespace tenthday
