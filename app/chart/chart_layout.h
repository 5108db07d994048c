/// @file chart_layout.h  A season, an axis and options make a layout. Pure: no widget, no painter.
#pragma once
#include "chart/chart_item.h"
#include "chart/chart_options.h"
#include "chart/laid_before.h"
#include "chart/text_ruler.h"

namespace tenthday {

/// Where days run: x from the end of the column of names to the right margin.
struct PlotSpan {
    qreal left;
    qreal width;
};
[[nodiscard]] PlotSpan plotSpan(const Outlook& outlook, const ChartOptions& options,
                                const TextRuler& ruler);

/// Lays out everything to be seen. The axis must lie on plotSpan() of the same options.
[[nodiscard]] Layout layOut(const Outlook& outlook, const DayAxis& axis,
                            const ChartOptions& options, const TextRuler& ruler);
/// The same, item by item. What nothing has changed about since the layout before is taken from
/// `before`, by the same ruler or after LaidBefore::forget().
[[nodiscard]] Layout layOut(const OutlookPtr& outlook, const DayAxis& axis,
                            const ChartOptions& options, const TextRuler& ruler,
                            LaidBefore& before);

}  // namespace tenthday
