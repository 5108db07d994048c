#include "exchange/weather_file.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>

#include "exchange/csv.h"
#include "exchange/field_text.h"

namespace tenthday {
namespace {

constexpr std::size_t at(WeatherColumn column) { return static_cast<std::size_t>(column); }

std::string_view trimmed(std::string_view text) {
    while (text.starts_with(' ') || text.starts_with('\t')) text.remove_prefix(1);
    while (text.ends_with(' ') || text.ends_with('\t')) text.remove_suffix(1);
    return text;
}

std::string lowered(std::string_view text) {
    std::string low(trimmed(text));
    for (auto& c : low)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return low;
}

std::optional<WeatherColumn> columnCalled(const std::string& name) {
    static const std::map<std::string_view, WeatherColumn> names{
        {"date", WeatherColumn::Date},          {"day", WeatherColumn::Date},
        {"tmax_c", WeatherColumn::Tmax},        {"tmax", WeatherColumn::Tmax},
        {"temp_max", WeatherColumn::Tmax},      {"t_max", WeatherColumn::Tmax},
        {"maximum", WeatherColumn::Tmax},       {"tmin_c", WeatherColumn::Tmin},
        {"tmin", WeatherColumn::Tmin},          {"temp_min", WeatherColumn::Tmin},
        {"t_min", WeatherColumn::Tmin},         {"minimum", WeatherColumn::Tmin},
        {"rain_mm", WeatherColumn::Rain},       {"rain", WeatherColumn::Rain},
        {"precipitation", WeatherColumn::Rain}, {"prcp", WeatherColumn::Rain},
        {"wind_ms", WeatherColumn::Wind},       {"wind", WeatherColumn::Wind},
        {"wind_speed", WeatherColumn::Wind},    {"flew", WeatherColumn::Flew}};
    const auto found = names.find(name);
    return found == names.end() ? std::nullopt : std::optional(found->second);
}

std::optional<Day> readDay(std::string_view text) {
    if (text.size() != 8) return dayFromText(text);
    const std::string whole(text);
    return dayFromText(whole.substr(0, 4) + '-' + whole.substr(4, 2) + '-' + whole.substr(6));
}

bool isNoValue(std::string_view text) {
    const auto low = lowered(text);
    return low.empty() || low == "na" || low == "nan" || low == "null";
}

std::optional<double> readNumber(std::string_view text) {
    double number = 0;
    const auto* end = text.data() + text.size();
    const auto [stop, failed] = std::from_chars(text.data(), end, number);
    if (failed != std::errc{} || stop != end || !std::isfinite(number)) return std::nullopt;
    return number;
}

/// Nines that stand for a missing value in common records.
bool isPlaceholder(double number) {
    constexpr std::array kBoth{999.0, 999.9, 9999.0, 9999.9};
    constexpr std::array kBelow{-99.0, -99.9};
    return std::find(kBoth.begin(), kBoth.end(), std::abs(number)) != kBoth.end() ||
           std::find(kBelow.begin(), kBelow.end(), number) != kBelow.end();
}

/// In °C, mm or m/s.
double inOurUnit(double number, WeatherColumn column, const WeatherUnits& units) {
    constexpr double kMmPerInch = 25.4;
    constexpr double kKmhPerMs = 3.6;
    constexpr double kMsPerMph = 0.44704;
    switch (column) {
        case WeatherColumn::Rain:
            return units.rain == RainUnit::Inch ? number * kMmPerInch : number;
        case WeatherColumn::Wind:
            if (units.wind == WindUnit::KilometrePerHour) return number / kKmhPerMs;
            return units.wind == WindUnit::MilePerHour ? number * kMsPerMph : number;
        default:
            return units.heat == HeatUnit::Fahrenheit ? (number - 32) / 1.8 : number;
    }
}

/// What a book takes, in °C, mm or m/s.
bool isWeather(double value, WeatherColumn column) {
    if (column == WeatherColumn::Rain) return value >= 0 && value <= 2000;
    if (column == WeatherColumn::Wind) return value >= 0 && value <= 150;
    return value >= -60 && value <= 59.9;
}

/// Takes the lines of one file.
class Reading {
public:
    Reading(const WeatherUnits& units, const WeatherColumns& columns)
        : units_(units), columns_(columns) {}

    void take(const CsvRecord& record) {
        const auto text = field(record, WeatherColumn::Date);
        const auto date = readDay(text);
        if (!date)
            return note(record, WeatherTrouble::BadDate, WeatherColumn::Date, std::string(text));
        WeatherFileDay day{*date,
                           value(record, WeatherColumn::Tmax),
                           value(record, WeatherColumn::Tmin),
                           value(record, WeatherColumn::Rain),
                           value(record, WeatherColumn::Wind),
                           flew(record)};
        if (day.tmaxC && day.tminC && *day.tminC > *day.tmaxC) {
            note(record, WeatherTrouble::Nonsense, WeatherColumn::Tmin,
                 std::string(field(record, WeatherColumn::Tmin)));
            day.tminC.reset();
        }
        const auto [before, isNew] = days_.try_emplace(*date, Line{record.line, day});
        if (isNew) return;
        before->second = {record.line, day};
        note(record, WeatherTrouble::DoubleDay, WeatherColumn::Date, {}, DayWindow{*date, *date});
    }

    [[nodiscard]] WeatherFile result() {
        WeatherFile file;
        for (const auto& [date, line] : days_) {
            if (line.day == WeatherFileDay{date, {}, {}, {}, {}, {}}) continue;
            if (!file.days.empty() && file.days.back().date + Days{1} < date)
                troubles_.push_back({WeatherTrouble::MissingDays, line.number, WeatherColumn::Date,
                                     std::string(),
                                     DayWindow{file.days.back().date + Days{1}, date - Days{1}}});
            file.days.push_back(line.day);
        }
        std::stable_sort(troubles_.begin(), troubles_.end(),
                         [](const auto& a, const auto& b) { return a.line < b.line; });
        file.troubles = std::move(troubles_);
        return file;
    }

private:
    struct Line {
        std::int32_t number;
        WeatherFileDay day;
    };

    /// Empty where the line ends before it.
    [[nodiscard]] std::string_view field(const CsvRecord& record, WeatherColumn column) const {
        const auto index = columns_[at(column)];
        if (!index || *index >= record.fields.size()) return {};
        return trimmed(record.fields[*index]);
    }

    void note(const CsvRecord& record, WeatherTrouble kind, WeatherColumn column, std::string text,
              std::optional<DayWindow> days = std::nullopt) {
        troubles_.push_back({kind, record.line, column, std::move(text), days});
    }

    [[nodiscard]] std::optional<Tenths> value(const CsvRecord& record, WeatherColumn column) {
        const auto text = field(record, column);
        if (isNoValue(text)) return std::nullopt;
        const auto number = readNumber(text);
        auto kind = WeatherTrouble::BadNumber;
        if (number) {
            const auto ours = inOurUnit(*number, column, units_);
            kind = isPlaceholder(*number) ? WeatherTrouble::Placeholder : WeatherTrouble::Nonsense;
            if (kind == WeatherTrouble::Nonsense && isWeather(ours, column))
                return Tenths{static_cast<std::int32_t>(std::lround(ours * 10))};
        }
        note(record, kind, column, std::string(text));
        return std::nullopt;
    }

    [[nodiscard]] std::optional<bool> flew(const CsvRecord& record) {
        const auto text = field(record, WeatherColumn::Flew);
        if (isNoValue(text)) return std::nullopt;
        const auto low = lowered(text);
        if (low == "yes" || low == "true" || low == "1") return true;
        if (low == "no" || low == "false" || low == "0") return false;
        note(record, WeatherTrouble::BadNumber, WeatherColumn::Flew, std::string(text));
        return std::nullopt;
    }

    const WeatherUnits& units_;
    const WeatherColumns& columns_;
    std::map<Day, Line> days_;
    std::vector<WeatherTroubleAt> troubles_;
};

/// What the file knows of the day, on top of what the book knows.
WeatherDay joined(WeatherDay row, const WeatherFileDay& day) {
    if (day.tmaxC) row.tmaxC = day.tmaxC;
    if (day.tminC) row.tminC = day.tminC;
    if (day.rainMm) row.rainMm = day.rainMm;
    if (day.windMs) row.windMs = day.windMs;
    if (day.flew) row.flew = day.flew;
    // Of two sources that contradict each other the maximum counts: it tells a flying day.
    if (row.tmaxC && row.tminC && *row.tminC > *row.tmaxC) row.tminC.reset();
    return row;
}

}  // namespace

WeatherColumns weatherColumns(const std::vector<std::string>& header) {
    WeatherColumns columns;
    for (std::size_t i = 0; i < header.size(); ++i)
        if (const auto column = columnCalled(lowered(header[i])); column && !columns[at(*column)])
            columns[at(*column)] = i;
    return columns;
}

Result<WeatherFile> readWeatherFile(std::string_view text, const WeatherUnits& units,
                                    const std::optional<WeatherColumns>& columns) {
    const auto records = readCsv(text);
    if (!records) return records.error();
    if (records.value().empty()) return Error{"line 1: a header line is needed"};
    const auto used = columns.value_or(weatherColumns(records.value().front().fields));
    if (!used[at(WeatherColumn::Date)]) return Error{"no column holds the date"};
    if (!used[at(WeatherColumn::Tmax)] && !used[at(WeatherColumn::Flew)])
        return Error{"no column holds the daily maximum"};
    Reading reading(units, used);
    for (std::size_t i = 1; i < records.value().size(); ++i) reading.take(records.value()[i]);
    return reading.result();
}

Result<void> checkTroubles(const WeatherFile& file, const WeatherRefusals& refused) {
    for (const auto& trouble : file.troubles) {
        if (!refused[static_cast<std::size_t>(trouble.kind)]) continue;
        auto what = std::string(token(trouble.kind));
        if (trouble.days)
            what += ' ' + toText(trouble.days->first) + " to " + toText(trouble.days->last);
        else
            what += ' ' + inQuotes(trouble.text);
        return Error{"line " + std::to_string(trouble.line) + ": " + what};
    }
    return {};
}

ChangeSet weatherEdit(const Snapshot& snapshot, const std::vector<WeatherFileDay>& days,
                      const IdSource& newId) {
    std::map<Day, Ptr<WeatherDay>> there;
    for (const auto& row : snapshot.all<WeatherDay>()) there.emplace(row->date, row);
    ChangeSet changes{Verb::Import, "weather", {}, {}};
    for (const auto& day : days) {
        const auto before = there.find(day.date);
        if (before != there.end()) {
            changes.edit(before->second, joined(*before->second, day));
            continue;
        }
        WeatherDay row;
        row.id = {newId()};
        row.date = day.date;
        changes.add(joined(std::move(row), day));
    }
    return changes;
}

}  // namespace tenthday
