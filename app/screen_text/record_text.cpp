#include "screen_text/record_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::record_text {
namespace {

QString withYear(Day day) { return Words::tr("%1 %2").arg(shortDay(day), yearNumber(day)); }

QString span(const DayWindow& days) {
    if (days.first == days.last) return withYear(days.first);
    return Words::tr("%1 to %2").arg(withYear(days.first), withYear(days.last));
}

}  // namespace

QString importEntry() { return Words::tr("&Import a file ..."); }
QString head(const QString& fileName) { return Words::tr("Daily record from %1").arg(fileName); }
QString columns() { return Words::tr("Columns of the file"); }
QString units() { return Words::tr("Units of the file"); }
QString preview() { return Words::tr("The first days as they will stand in the book"); }
QString troubles() { return Words::tr("What is wrong in the file"); }

QString column(WeatherColumn column) {
    switch (column) {
        case WeatherColumn::Date:
            return Words::tr("Day");
        case WeatherColumn::Tmax:
            return Words::tr("Daily maximum");
        case WeatherColumn::Tmin:
            return Words::tr("Daily minimum");
        case WeatherColumn::Rain:
            return Words::tr("Rain");
        case WeatherColumn::Wind:
            return Words::tr("Wind");
        case WeatherColumn::Flew:
            return Words::tr("Queens flew");
    }
    return {};
}

QString columnHead(WeatherColumn of) {
    switch (of) {
        case WeatherColumn::Tmax:
        case WeatherColumn::Tmin:
            return Words::tr("%1, °C").arg(column(of));
        case WeatherColumn::Rain:
            return Words::tr("%1, mm").arg(column(of));
        case WeatherColumn::Wind:
            return Words::tr("%1, m/s").arg(column(of));
        default:
            return column(of);
    }
}

QString notInFile() { return Words::tr("not in the file"); }
QString noName(int column) { return Words::tr("column %1").arg(chart_text::number(column)); }
QString heat() { return Words::tr("Temperatures"); }
QString rain() { return column(WeatherColumn::Rain); }
QString wind() { return column(WeatherColumn::Wind); }
std::array<QString, 2> heatUnits() { return {Words::tr("°C"), Words::tr("°F")}; }
std::array<QString, 2> rainUnits() { return {Words::tr("mm"), Words::tr("inches")}; }
std::array<QString, 3> windUnits() {
    return {Words::tr("m/s"), Words::tr("km/h"), Words::tr("miles an hour")};
}

QString day(Day day) { return withYear(day); }

QString flew(std::optional<bool> flew) {
    if (!flew) return {};
    return *flew ? Words::tr("flew") : Words::tr("did not fly");
}

QString summary(const std::vector<WeatherFileDay>& days) {
    if (days.empty()) return Words::tr("No day of weather is found in the file.");
    return Words::tr("%Ln day(s): %1.", nullptr, static_cast<int>(days.size()))
        .arg(span({days.front().date, days.back().date}));
}

QString skip(WeatherTrouble kind, int count) {
    switch (kind) {
        case WeatherTrouble::BadDate:
            return Words::tr("Leave out %Ln line(s) whose day can't be read", nullptr, count);
        case WeatherTrouble::BadNumber:
            return Words::tr("Leave out %Ln value(s) that can't be read", nullptr, count);
        case WeatherTrouble::Nonsense:
            return Words::tr("Leave out %Ln value(s) that no weather has", nullptr, count);
        case WeatherTrouble::Placeholder:
            return Words::tr("Leave out %Ln placeholder(s) such as -999", nullptr, count);
        case WeatherTrouble::DoubleDay:
            return Words::tr("Of %Ln day(s) that stand there again take the last line", nullptr,
                             count);
        case WeatherTrouble::MissingDays:
            return Words::tr("Go on with %Ln gap(s) in the record", nullptr, count);
    }
    return {};
}

QString trouble(const WeatherTroubleAt& trouble) {
    const auto field = QString::fromStdString(trouble.text);
    const auto name = column(trouble.column);
    const auto days = trouble.days ? span(*trouble.days) : QString();
    QString what;
    switch (trouble.kind) {
        case WeatherTrouble::BadDate:
            what = Words::tr("\"%1\" is no day as 2027-06-03 or 20270603").arg(field);
            break;
        case WeatherTrouble::BadNumber:
            what = Words::tr("\"%1\" can't be read (%2)").arg(field, name);
            break;
        case WeatherTrouble::Nonsense:
            what = Words::tr("\"%1\" is not possible (%2)").arg(field, name);
            break;
        case WeatherTrouble::Placeholder:
            what = Words::tr("\"%1\" stands for a missing value (%2)").arg(field, name);
            break;
        case WeatherTrouble::DoubleDay:
            what = Words::tr("%1 stands there already").arg(days);
            break;
        case WeatherTrouble::MissingDays:
            what = Words::tr("nothing is known of %1").arg(days);
            break;
    }
    return Words::tr("Line %1: %2").arg(chart_text::number(trouble.line), what);
}

QString moreTroubles(int count) { return Words::tr("and %Ln more", nullptr, count); }
QString decide() {
    return Words::tr("Mend the file, or tick what may be left out, before it is taken in.");
}
QString importButton(int days) { return Words::tr("Import %Ln day(s)", nullptr, days); }
QString nothingNew() { return Words::tr("The book holds all of this already."); }
QString imported(int days) { return Words::tr("%Ln day(s) came in or changed.", nullptr, days); }

}  // namespace tenthday::record_text
