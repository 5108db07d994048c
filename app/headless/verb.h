/// @file verb.h  What every headless verb is made of.
#pragma once
#include <string>
#include <string_view>

#include "calendar/iso_week.h"
#include "exchange/listing.h"
#include "headless/arguments.h"
#include "options/clock.h"
#include "outlook/outlook.h"

namespace tenthday {

class BookFile;

enum class Exit : std::uint8_t { Good = 0, Failed = 1, WrongUse = 2 };

/// How a verb ended: what goes to standard output, or the one line for standard error.
struct Answer {
    Exit exit = Exit::Good;
    std::string out;
    std::string error;

    static Answer failed(const Error& error) { return {Exit::Failed, {}, error.text}; }
    static Answer wrongUse(const Error& error) { return {Exit::WrongUse, {}, error.text}; }
};

/// One call of a verb, its options read.
struct Call {
    Arguments arguments;
    ListingForm form = ListingForm::Csv;
    Clock clock;

    [[nodiscard]] Answer print(const Listing& listing) const {
        return {Exit::Good, render(listing, form), {}};
    }
};

struct HeadlessVerb {
    std::string_view name;
    CallForm form;
    std::string_view usage;  ///< after the verb's name: "BOOK --on DAY [--totals]"
    std::string_view what;   ///< what it does, for --help
    bool lists;              ///< takes --csv and --json
    Answer (*run)(const Call& call);
};

/// Each in a file of its own.
[[nodiscard]] const HeadlessVerb& newVerb();
[[nodiscard]] const HeadlessVerb& exampleVerb();
[[nodiscard]] const HeadlessVerb& datesVerb();
[[nodiscard]] const HeadlessVerb& nucsVerb();
[[nodiscard]] const HeadlessVerb& virginsVerb();
[[nodiscard]] const HeadlessVerb& stockingVerb();
[[nodiscard]] const HeadlessVerb& broodlessVerb();
[[nodiscard]] const HeadlessVerb& findingsVerb();
[[nodiscard]] const HeadlessVerb& limitsVerb();
[[nodiscard]] const HeadlessVerb& dronesVerb();
[[nodiscard]] const HeadlessVerb& promiseVerb();
[[nodiscard]] const HeadlessVerb& ordersVerb();
[[nodiscard]] const HeadlessVerb& graftsVerb();
[[nodiscard]] const HeadlessVerb& planVerb();
[[nodiscard]] const HeadlessVerb& whatIfVerb();
[[nodiscard]] const HeadlessVerb& ratesVerb();
[[nodiscard]] const HeadlessVerb& checkVerb();
[[nodiscard]] const HeadlessVerb& pictureVerb();
[[nodiscard]] const HeadlessVerb& tasksVerb();
[[nodiscard]] const HeadlessVerb& sheetVerb();
[[nodiscard]] const HeadlessVerb& icsVerb();
[[nodiscard]] const HeadlessVerb& exportVerb();
[[nodiscard]] const HeadlessVerb& importVerb();

/// A day in an option that was given.
[[nodiscard]] Result<Day> dayOption(const Arguments& arguments, std::string_view option);

/// The ISO week in `--week`.
[[nodiscard]] Result<IsoWeek> weekOption(const Arguments& arguments);

/// The outlook of a book, read only. With a day, of the season that holds it, where there is one.
[[nodiscard]] Result<OutlookPtr> readOutlook(const Call& call, std::optional<Day> day = {});
/// The same with what earlier seasons say of the rates of losses, for chances of orders.
[[nodiscard]] Result<OutlookPtr> readOutlookWithRates(const Call& call);

/// The same of a book that is open, for a verb that writes.
[[nodiscard]] Result<Snapshot> readSeason(BookFile& book, std::optional<Day> day);

}  // namespace tenthday
