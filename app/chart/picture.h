/// @file picture.h  The season chart as a file: .png, .svg or .pdf, by the window's own painter.
#pragma once
#include <QString>

#include "base/result.h"
#include "chart/chart_options.h"
#include "look/palette.h"

namespace tenthday {

struct PictureOptions {
    std::optional<DayWindow> days;  ///< empty: those in which something happens (activeDays)
    QSize size{1920, 1080};         ///< logical px, each 200..20,000
    Look look = Look::Light;
    std::optional<Day> chosenDay;
    std::optional<Id<Batch>> selected;
};

/// Writes whole or not at all; an existing file is replaced. Refuses an unknown suffix, an empty
/// span of days, a size out of bounds, a file that cannot be written.
[[nodiscard]] Result<void> renderPicture(const Outlook& outlook, const PictureOptions& options,
                                         const QString& path);

}  // namespace tenthday
