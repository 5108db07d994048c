/// @file preview.h  Pages on the screen as they will be on paper; from there they are printed or
/// kept as PDF.
#pragma once
#include <QPrinter>
#include <functional>

#include "sheets/page.h"

class QWidget;

namespace tenthday {

/// Lays out the pages for one of our papers.
using PagesFor = std::function<std::vector<Page>(Paper, const PaperRuler&)>;

/// Paints them for the paper the printer has chosen (the nearest of ours).
[[nodiscard]] bool printOn(QPrinter& printer, const PagesFor& pages);

/// Opens the preview; it goes when it is closed.
void showPreview(const QString& title, const PagesFor& pages, QWidget* parent);

}  // namespace tenthday
