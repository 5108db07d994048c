#include "headless/verb.h"

#include "book/book_file.h"
#include "book/earlier_reader.h"
#include "exchange/field_text.h"

namespace tenthday {
namespace {

/// The season that is meant on the day, unless it is the one shown.
std::optional<Id<Season>> otherSeason(const Snapshot& snapshot, Day day) {
    const auto season = seasonOf(snapshot.all<Season>(), day);
    return season.isNone() || season == snapshot.seasonId() ? std::nullopt : std::optional(season);
}

Result<std::unique_ptr<BookFile>> openToRead(const Call& call) {
    OpenOptions options;
    options.access = Access::ReadOnly;
    options.clock = call.clock;
    return BookFile::open(QString::fromStdString(call.arguments.operand(0)), options);
}

}  // namespace

Result<Day> dayOption(const Arguments& arguments, std::string_view option) {
    const auto text = arguments.value(option);
    if (!text) return optionError(option, "is missing");
    Day day;
    if (const auto complaint = readField(*text, day)) return optionError(option, *complaint);
    return day;
}

Result<IsoWeek> weekOption(const Arguments& arguments) {
    constexpr std::string_view kOption = "--week";
    const auto text = arguments.value(kOption);
    if (!text) return optionError(kOption, "is missing");
    const auto week = isoWeekFromText(*text);
    if (!week)
        return optionError(kOption, "a week such as 2027-W20 is needed, not " + inQuotes(*text));
    return *week;
}

Result<OutlookPtr> readOutlook(const Call& call, std::optional<Day> day) {
    auto book = openToRead(call);
    if (!book) return book.error();
    const auto snapshot = readSeason(*book.value(), day);
    if (!snapshot) return snapshot.error();
    OutlookMemo memo;
    return outlookOf(snapshot.value(), memo);
}

Result<OutlookPtr> readOutlookWithRates(const Call& call) {
    auto book = openToRead(call);
    if (!book) return book.error();
    auto snapshot = book.value()->read();
    if (!snapshot) return snapshot.error();
    auto earlier = readEarlier(*book.value(), snapshot.value());
    if (!earlier) return earlier.error();
    snapshot.value().setEarlier(std::move(earlier).value());
    OutlookMemo memo;
    return outlookOf(snapshot.value(), memo);
}

Result<Snapshot> readSeason(BookFile& book, std::optional<Day> day) {
    auto snapshot = book.read();
    if (!snapshot) return snapshot;
    const auto season = day ? otherSeason(snapshot.value(), *day) : std::nullopt;
    return season ? book.read({season, false}) : snapshot;
}

}  // namespace tenthday
