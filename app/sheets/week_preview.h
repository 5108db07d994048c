/// @file week_preview.h  A week's sheet on the screen as it will be on paper; from there it is
/// printed or kept as PDF.
#pragma once
#include <QPrinter>

#include "sheets/week_content.h"

class QWidget;

namespace tenthday {

/// Paints the sheet for the paper the printer has chosen (the nearest of ours).
[[nodiscard]] bool printWeek(QPrinter& printer, const WeekContent& week);

/// Opens the preview; it goes when it is closed.
void showWeekPreview(const WeekContent& week, QWidget* parent);

}  // namespace tenthday
