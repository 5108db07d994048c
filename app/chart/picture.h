/// @file picture.h  The season chart as a file: .png, .svg or .pdf, by the window's own painter.
#pragma once
#include <QString>

#include "base/result.h"
#include "base/tokens.h"
#include "chart/chart_options.h"
#include "look/palette.h"

namespace tenthday {

/// A sheet for the wall, across.
enum class Poster : std::uint8_t { A3, A4 };
template <>
struct TokensOf<Poster> {
    static constexpr auto names = std::to_array<std::string_view>({"a3", "a4"});
};

struct PictureOptions {
    std::optional<DayWindow> days;  ///< empty: those in which something happens (activeDays)
    QSize size{1920, 1080};         ///< logical px, each 200..20,000
    Look look = Look::Light;
    std::optional<Day> chosenDay;
    std::optional<Id<Batch>> selected;
    /// Gives size and look, margins and a head with the operation's name and the season.
    std::optional<Poster> poster;
};

/// Writes whole or not at all; an existing file is replaced. Refuses an unknown suffix, an empty
/// span of days, a size out of bounds, a file that cannot be written.
[[nodiscard]] Result<void> renderPicture(const Outlook& outlook, const PictureOptions& options,
                                         const QString& path);

}  // namespace tenthday
