/// @file weather_file.h  A daily weather record from any CSV text: columns by name or chosen, units
/// chosen, and every trouble named with its line.
#pragma once
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/id_source.h"
#include "calendar/window.h"
#include "records/change_set.h"

namespace tenthday {

/// What a column of the file holds.
enum class WeatherColumn : std::uint8_t { Date, Tmax, Tmin, Rain, Wind, Flew };
template <>
struct TokensOf<WeatherColumn> {
    static constexpr auto names =
        std::to_array<std::string_view>({"date", "tmax", "tmin", "rain", "wind", "flew"});
};

/// Per meaning the column that holds it, from 0; none where the file has it not.
using WeatherColumns = std::array<std::optional<std::size_t>, kTokenCount<WeatherColumn>>;

enum class HeatUnit : std::uint8_t { Celsius, Fahrenheit };
enum class RainUnit : std::uint8_t { Millimetre, Inch };
enum class WindUnit : std::uint8_t { MetrePerSecond, KilometrePerHour, MilePerHour };
struct WeatherUnits {
    HeatUnit heat = HeatUnit::Celsius;
    RainUnit rain = RainUnit::Millimetre;
    WindUnit wind = WindUnit::MetrePerSecond;
};

enum class WeatherTrouble : std::uint8_t {
    BadDate,      ///< no day of the calendar: the line is left out
    BadNumber,    ///< a value that can't be read counts as missing
    Nonsense,     ///< a value no weather has counts as missing; so does a minimum above the maximum
    Placeholder,  ///< -999 and its like stand for a missing value
    DoubleDay,    ///< a day there twice: the last line counts
    MissingDays   ///< days the record jumps over, or without any value
};
template <>
struct TokensOf<WeatherTrouble> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"bad_date", "bad_number", "nonsense", "placeholder", "double_day", "missing_days"});
};

struct WeatherTroubleAt {
    WeatherTrouble kind = WeatherTrouble::BadDate;
    std::int32_t line = 1;  ///< of the text, from 1; of missing days that of the day after them
    WeatherColumn column = WeatherColumn::Date;
    std::string text;               ///< the field as it stands; empty of missing and double days
    std::optional<DayWindow> days;  ///< missing, or double
};

struct WeatherFileDay {
    Day date;
    std::optional<Tenths> tmaxC;   ///< -60..59.9 °C
    std::optional<Tenths> tminC;   ///< -60 °C..tmaxC
    std::optional<Tenths> rainMm;  ///< 0..2000 mm
    std::optional<Tenths> windMs;  ///< 0..150 m/s
    std::optional<bool> flew;
    friend bool operator==(const WeatherFileDay&, const WeatherFileDay&) = default;
};

struct WeatherFile {
    std::vector<WeatherFileDay> days;        ///< by date, each once; those with a value only
    std::vector<WeatherTroubleAt> troubles;  ///< by line
};

/// Per trouble whether it refuses the file; else it is skipped, as told beside the trouble.
using WeatherRefusals = std::array<bool, kTokenCount<WeatherTrouble>>;

/// The columns of a header by their usual names, whatever their case.
[[nodiscard]] WeatherColumns weatherColumns(const std::vector<std::string>& header);

/// Reads the lines after the header. Days are YYYY-MM-DD or YYYYMMDD. An empty field, "NA", "NaN"
/// and "null" are no value. Values are rounded to tenths of °C, mm and m/s.
/// Refused: no CSV, no header, a file without the columns of date and of daily maximum or flights.
/// @param columns  as chosen; without them, as weatherColumns() finds them
[[nodiscard]] Result<WeatherFile> readWeatherFile(
    std::string_view text, const WeatherUnits& units,
    const std::optional<WeatherColumns>& columns = std::nullopt);

/// Refuses a file by the first of its troubles that is not to be skipped: "line 7: bad_date 'x'".
[[nodiscard]] Result<void> checkTroubles(const WeatherFile& file, const WeatherRefusals& refused);

/// The days as one edit, row by date: new ones come, of those that are there what the file knows is
/// taken over. Nothing is deleted; empty when the file says nothing new.
[[nodiscard]] ChangeSet weatherEdit(const Snapshot& snapshot,
                                    const std::vector<WeatherFileDay>& days, const IdSource& newId);

}  // namespace tenthday
