/// @file preview.h  Pages onto the printer that was chosen.
#pragma once
#include <QPrinter>

#include "sheets/day_papers.h"

namespace tenthday {

/// A printer set to a form, whole sheets: the pages bring their own margins.
void setForm(QPrinter& printer, const PaperForm& form);

/// Paints the pages for the form. False when the printer cannot be painted on.
[[nodiscard]] bool printOn(QPrinter& printer, const PaperForm& form, const PagesFor& pages);

}  // namespace tenthday
