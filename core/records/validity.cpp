#include "records/validity.h"

#include <algorithm>
#include <unordered_set>

#include "records/references.h"

namespace tenthday {
namespace {

constexpr std::int32_t kMostMinutes = 24 * 60;
constexpr std::int32_t kMostTenthsEach = 2400;

/// Collects the first complaint about a row.
class Complaint {
public:
    explicit Complaint(std::string_view table) : table_(table) {}
    void unless(bool good, std::string_view column, std::string_view what) {
        if (good || !result_) return;
        result_ = Error{std::string(table_) + "." + std::string(column) + ": " + std::string(what)};
    }
    [[nodiscard]] Result<void> result() const { return result_; }

private:
    std::string_view table_;
    Result<void> result_;
};

template <class T>
bool within(const std::optional<T>& value, T low, T high) {
    return !value || (low <= *value && *value <= high);
}
bool between(std::int32_t value, std::int32_t low, std::int32_t high) {
    return low <= value && value <= high;
}

template <class Row>
void checkOwn(const Row&, Complaint&) {}

void checkOwn(const FactOverride& r, Complaint& c) {
    const auto fact = fromToken<Fact>(r.fact);
    c.unless(fact.has_value(), "fact", "no such fact: " + r.fact);
    if (!fact) return;
    Facts facts;
    c.unless(facts.set(*fact, r.valueMilli / 1000.0).ok(), "value_milli", "out of range");
}
void checkOwn(const Book& r, Complaint& c) {
    c.unless(between(r.factsRevision, 1, kNewestFactsRevision), "facts_revision",
             "unknown revision");
}
void checkOwn(const Season& r, Complaint& c) {
    c.unless(r.from <= r.until, "until_day", "ends before it begins");
    c.unless(r.until - r.from <= kLongestSeason, "until_day",
             "a season lasts " + std::to_string(kLongestSeason.count()) + " days at most");
}
void checkOwn(const Yard& r, Complaint& c) {
    c.unless(between(r.driveOrder, 0, 9999), "drive_order", "0 to 9999 is needed");
}
void checkOwn(const BoxLayout& r, Complaint& c) {
    c.unless(!framesOfLayout(r.layout).empty(), "layout",
             "frames of each side are needed, such as 7 or 3+3: " + r.layout);
}
void checkOwn(const NucSide& r, Complaint& c) {
    c.unless(!r.side.empty(), "side", "a side needs a name");
    c.unless(between(r.frames.value, 1, 20), "frames", "1 to 20 is needed");
}
void checkOwn(const Stocking& r, Complaint& c) {
    c.unless(within(r.beesMl, BeesMl{0}, BeesMl{20000}), "bees_ml", "0 to 20000 is needed");
    c.unless(within(r.broodFrames, Frames{0}, Frames{20}), "brood_frames", "0 to 20 is needed");
}
void checkOwn(const Builder& r, Complaint& c) {
    c.unless(within(r.openRoom, Cells{0}, Cells{9999}), "open_room", "0 to 9999 is needed");
    c.unless(within(r.sealedRoom, Cells{0}, Cells{9999}), "sealed_room", "0 to 9999 is needed");
    c.unless(!r.until || *r.until >= r.from, "until_day", "ends before it begins");
}
void checkOwn(const MakeUp& r, Complaint& c) {
    c.unless(within(r.beesMl, BeesMl{0}, BeesMl{40000}), "bees_ml", "0 to 40000 is needed");
    c.unless(within(r.broodFrames, Frames{0}, Frames{40}), "brood_frames", "0 to 40 is needed");
}
void checkOwn(const Step& r, Complaint& c) {
    c.unless(between(r.step, 1, 20), "step", "1 to 20 is needed");
    c.unless(between(r.fromHour, 0, 480), "from_hour", "0 to 480 is needed");
    c.unless(between(r.toHour, r.fromHour + 1, 480), "to_hour", "after from_hour, 480 at most");
    c.unless(between(r.restDays, 0, 60), "rest_days", "0 to 60 is needed");
}
void checkOwn(const Queen& r, Complaint& c) {
    c.unless(!r.year || between(*r.year, 1950, 2199), "year", "1950 to 2199 is needed");
    c.unless(!r.breederFrom || !r.breederUntil || *r.breederFrom <= *r.breederUntil,
             "breeder_until", "ends before it begins");
    c.unless(r.mother != r.id, "mother", "a queen is not her own mother");
}
void checkOwn(const Batch& r, Complaint& c) {
    c.unless(!r.larvaFromH || between(*r.larvaFromH, 0, 72), "larva_from_h", "0 to 72 h is needed");
    c.unless(!r.larvaToH || between(*r.larvaToH, 0, 72), "larva_to_h", "0 to 72 h is needed");
    c.unless(!r.larvaFromH || !r.larvaToH || *r.larvaFromH <= *r.larvaToH, "larva_to_h",
             "the oldest larva is younger than the youngest");
}
void checkOwn(const BatchBar& r, Complaint& c) {
    c.unless(between(r.bar, 1, 99), "bar", "1 to 99 is needed");
    c.unless(between(r.cells.value, 1, 9999), "cells", "1 to 9999 is needed");
}
void checkOwn(const BatchLoad& r, Complaint& c) {
    c.unless(between(r.bar, 1, 99), "bar", "1 to 99 is needed");
    c.unless(between(r.step, 1, 20), "step", "1 to 20 is needed");
}
void checkOwn(const BatchShare& r, Complaint& c) {
    c.unless(between(r.cells.value, 0, 9999), "cells", "0 to 9999 is needed");
}
void checkOwn(const Placement& r, Complaint& c) {
    c.unless(r.side.has_value() == (r.target == CellTarget::Nuc), "side",
             "a nuc is named when, and only when, the cell goes into one");
}
void checkOwn(const Outcome& r, Complaint& c) {
    c.unless(!r.bar || between(*r.bar, 1, 99), "bar", "1 to 99 is needed");
    c.unless(within(r.count, Cells{0}, Cells{9999}), "count", "0 to 9999 is needed");
}
void checkOwn(const DayOff& r, Complaint& c) {
    c.unless(r.from <= r.until, "until_day", "ends before it begins");
}

void checkOwn(const Order& r, Complaint& c) {
    c.unless(between(r.count, 1, 9999), "count", "1 to 9999 is needed");
    c.unless(!r.notBefore || *r.notBefore <= r.due, "due", "is before the first day allowed");
    c.unless(between(r.sure.value, 1, 999), "sure", "0.1 to 99.9 is needed");
    c.unless(between(r.weight, 0, 999), "weight", "0 to 999 is needed");
}
void checkOwn(const WeatherDay& r, Complaint& c) {
    c.unless(within(r.tmaxC, Tenths{-600}, Tenths{599}), "tmax_c", "-60 to 59.9 is needed");
    c.unless(within(r.tminC, Tenths{-600}, Tenths{599}), "tmin_c", "-60 to 59.9 is needed");
    c.unless(!r.tmaxC || !r.tminC || *r.tminC <= *r.tmaxC, "tmin_c", "is above the maximum");
    c.unless(within(r.rainMm, Tenths{0}, Tenths{20000}), "rain_mm", "0 to 2000 is needed");
    c.unless(within(r.windMs, Tenths{0}, Tenths{1500}), "wind_ms", "0 to 150 is needed");
}
void checkOwn(const OwnTask& r, Complaint& c) {
    c.unless(!r.text.empty(), "text", "a text is needed");
}
void checkOwn(const TaskDone& r, Complaint& c) {
    c.unless(uuidFromText(r.subject).has_value(), "subject", "an id is needed");
    c.unless(r.place.empty() || uuidFromText(r.place), "place", "an id is needed");
    c.unless(between(r.occurrence, 0, 999), "occurrence", "0 to 999 is needed");
}

void checkOwn(const ClimateMonth& r, Complaint& c) {
    c.unless(between(r.month, 1, 12), "month", "1 to 12 is needed");
    c.unless(between(r.tmaxC.value, -600, 599), "tmax_c", "-60 to 59.9 is needed");
    c.unless(within(r.rainDays, Tenths{0}, Tenths{310}), "rain_days", "0 to 31 is needed");
}
void checkOwn(const DroneSighting& r, Complaint& c) {
    c.unless(!r.colonies || between(*r.colonies, 0, 999), "colonies", "0 to 999 is needed");
}
void checkOwn(const YardNote& r, Complaint& c) {
    c.unless(r.from <= r.until, "until_day", "ends before it begins");
}
void checkOwn(const MatingStay& r, Complaint& c) {
    c.unless(r.from <= r.until, "until_day", "ends before it begins");
}

void checkOwn(const NucCare& r, Complaint& c) {
    c.unless(within(r.beesMl, BeesMl{0}, BeesMl{20000}), "bees_ml", "0 to 20000 is needed");
    c.unless(within(r.broodFrames, Frames{0}, Frames{20}), "brood_frames", "0 to 20 is needed");
}
void checkOwn(const MiteWork& r, Complaint& c) {
    c.unless(r.side.has_value() != r.builder.has_value(), "builder",
             "either a nuc or a builder is needed");
    c.unless(!r.what.empty(), "what", "what was done is needed");
}
void checkOwn(const OrderTerms& r, Complaint& c) {
    const bool good = std::all_of(r.shipDays.begin(), r.shipDays.end(),
                                  [](char day) { return day >= '1' && day <= '7'; }) &&
                      std::adjacent_find(r.shipDays.begin(), r.shipDays.end(),
                                         std::greater_equal<>()) == r.shipDays.end();
    c.unless(good, "ship_days", "weekdays are needed, 1 for Monday to 7, rising: " + r.shipDays);
}
void checkOwn(const Earmark& r, Complaint& c) {
    c.unless(between(r.count, 1, 9999), "count", "1 to 9999 is needed");
}
void checkOwn(const Delivery& r, Complaint& c) {
    c.unless(between(r.count, 1, 9999), "count", "1 to 9999 is needed");
    c.unless(between(r.failed, 0, r.count), "failed", "0 to the count delivered is needed");
    c.unless((r.failed > 0) == (r.why != DeliveryLoss::None), "why",
             "a reason is needed when, and only when, queens have to be replaced");
}
void checkOwn(const PromiseMove& r, Complaint& c) {
    c.unless(r.dueBefore != r.dueAfter, "due_after", "is the same day");
}
void checkOwn(const QueenLot& r, Complaint& c) {
    c.unless(between(r.count, 1, 9999), "count", "1 to 9999 is needed");
}
void checkOwn(const LeftOut& r, Complaint& c) {
    c.unless(!r.reason.empty(), "reason", "a reason is needed");
}
void checkOwn(const WorkTime& r, Complaint& c) {
    c.unless(between(r.minutes, 0, kMostMinutes), "minutes", "0 to 1440 is needed");
    c.unless(between(r.each.value, 0, kMostTenthsEach), "each", "0 to 240 is needed");
}
void checkOwn(const DriveTime& r, Complaint& c) {
    c.unless(between(r.minutes, 0, kMostMinutes), "minutes", "0 to 1440 is needed");
    c.unless(r.from != r.to, "to_yard", "is the yard the way begins at");
}
void checkOwn(const TaskGiven& r, Complaint& c) {
    c.unless(uuidFromText(r.subject).has_value(), "subject", "an id is needed");
    c.unless(r.place.empty() || uuidFromText(r.place), "place", "an id is needed");
    c.unless(between(r.occurrence, 0, 999), "occurrence", "0 to 999 is needed");
    c.unless(between(static_cast<std::int32_t>(r.who.size()), 1, 12), "who",
             "initials are needed, 12 letters at most");
}

template <class Member>
void checkMember(const Member&, std::string_view, Complaint&) {}
void checkMember(const Day& day, std::string_view column, Complaint& c) {
    c.unless(day >= kFirstDay && day <= kLastDay, column, "the day is outside 1900 to 2199");
}
void checkMember(const Hour& hour, std::string_view column, Complaint& c) {
    c.unless(between(hour.value, 0, 23), column, "0 to 23 is needed");
}
void checkMember(const std::string& text, std::string_view column, Complaint& c) {
    c.unless(text.size() <= 4000, column, "the text is too long (4000 bytes at most)");
    if (column == "label") c.unless(!text.empty(), column, "a label is needed");
    c.unless(text.find('\0') == std::string::npos, column, "holds a zero byte");
}
template <class Member>
void checkMember(const std::optional<Member>& value, std::string_view column, Complaint& c) {
    if (value) checkMember(*value, column, c);
}

/// Rows of all seasons that name a batch, which may be of a season that is not read: the file
/// itself sees to it that there is one.
template <class Row>
constexpr bool kNamesAnyBatch = std::is_same_v<Row, Delivery> || std::is_same_v<Row, Earmark> ||
                                std::is_same_v<Row, CaughtQueen> || std::is_same_v<Row, LeftOut>;

/// Every reference of a row that came must lead to a row. One that stood before may lead to a batch
/// of another season, which is not read; should its row go, that is refused as it is in use.
template <class Row>
void checkReferences(const Snapshot& next, const Ptr<Row>& before, const Row& row, Complaint& c) {
    forEachReference(row, [&](const auto& column, const auto& id) {
        using To = std::remove_cvref_t<decltype(*id)>;
        if constexpr (kNamesAnyBatch<Row> && std::is_same_v<To, Id<Batch>>) return;
        const bool stood = before && (*before).*column.member == row.*column.member;
        if (id && !stood) c.unless(next.find(*id) != nullptr, column.name, "refers to nothing");
    });
}

/// A row that went must not be referred to any more.
void checkUnused(const Snapshot& next, const RowKey& gone, Complaint& c) {
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        for (const auto& row : next.all<Row>())
            c.unless(!refersTo(*row, gone), "id",
                     "still in use by " + std::string(ColumnsOf<Row>::table));
    });
}

template <class Row>
concept HasLabel = requires(const Row& row) {
    row.label;
};

template <HasLabel Row>
Result<void> checkLabels(const Snapshot& next) {
    std::unordered_set<std::string_view> seen;
    const auto isTaken = [&](const std::string& label) {
        return std::is_same_v<Row, Batch> && next.isLabelOfOtherSeason(label);
    };
    for (const auto& row : next.all<Row>())
        if (!seen.insert(row->label).second || isTaken(row->label))
            return Error{std::string(ColumnsOf<Row>::table) +
                         ".label: is there already: " + row->label};
    return {};
}

}  // namespace

template <class Row>
Result<void> checkRow(const Row& row) {
    Complaint complaint(ColumnsOf<Row>::table);
    complaint.unless(!row.id.isNone(), "id", "an id is needed");
    forEachColumn<Row>(
        [&](const auto& column) { checkMember(row.*column.member, column.name, complaint); });
    checkOwn(row, complaint);
    return complaint.result();
}

template Result<void> checkRow(const Book&);
template Result<void> checkRow(const FactOverride&);
template Result<void> checkRow(const Season&);
template Result<void> checkRow(const Yard&);
template Result<void> checkRow(const Box&);
template Result<void> checkRow(const BoxStay&);
template Result<void> checkRow(const BoxLayout&);
template Result<void> checkRow(const NucSide&);
template Result<void> checkRow(const Stocking&);
template Result<void> checkRow(const Builder&);
template Result<void> checkRow(const MakeUp&);
template Result<void> checkRow(const BuilderNote&);
template Result<void> checkRow(const Method&);
template Result<void> checkRow(const Step&);
template Result<void> checkRow(const Line&);
template Result<void> checkRow(const Queen&);
template Result<void> checkRow(const Batch&);
template Result<void> checkRow(const BatchBar&);
template Result<void> checkRow(const BatchLoad&);
template Result<void> checkRow(const BatchShare&);
template Result<void> checkRow(const Placement&);
template Result<void> checkRow(const Outcome&);
template Result<void> checkRow(const DayOff&);
template Result<void> checkRow(const Order&);
template Result<void> checkRow(const WeatherDay&);
template Result<void> checkRow(const OwnTask&);
template Result<void> checkRow(const TaskDone&);
template Result<void> checkRow(const ClimateMonth&);
template Result<void> checkRow(const DroneSighting&);
template Result<void> checkRow(const YardNote&);
template Result<void> checkRow(const MatingStay&);
template Result<void> checkRow(const NucCare&);
template Result<void> checkRow(const MiteWork&);
template Result<void> checkRow(const QueenNote&);
template Result<void> checkRow(const CaughtQueen&);
template Result<void> checkRow(const QueenStay&);
template Result<void> checkRow(const OrderTerms&);
template Result<void> checkRow(const Earmark&);
template Result<void> checkRow(const Delivery&);
template Result<void> checkRow(const PromiseMove&);
template Result<void> checkRow(const QueenLot&);
template Result<void> checkRow(const LeftOut&);
template Result<void> checkRow(const WorkTime&);
template Result<void> checkRow(const DriveTime&);
template Result<void> checkRow(const TaskGiven&);

Result<void> checkChanges(const Snapshot& next, const ChangeSet& changes) {
    Result<void> result;
    std::vector<bool> touched(kTables);
    for (const auto& change : changes.rows) {
        touched[change.table()] = true;
        visitChange(
            [&]<class Row>(const RowChangeOf<Row>& c) {
                if (!result) return;
                Complaint complaint(ColumnsOf<Row>::table);
                if (c.after) {
                    result = checkRow(*c.after);
                    checkReferences(next, c.before, *c.after, complaint);
                } else if (!next.find(c.before->id)) {  // else it came back in the same edit
                    checkUnused(next, c.before->id, complaint);
                }
                if (result) result = complaint.result();
            },
            change);
        if (!result) return result;
    }
    std::size_t index = 0;
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        if constexpr (HasLabel<Row>)
            if (result && touched[index]) result = checkLabels<Row>(next);
        ++index;
    });
    return result;
}

std::vector<std::int32_t> framesOfLayout(std::string_view layout) {
    std::vector<std::int32_t> sides{0};
    for (const char c : layout) {
        if (c == '+') {
            if (sides.back() == 0) return {};
            sides.push_back(0);
        } else if (c >= '0' && c <= '9' && sides.back() < 100) {
            sides.back() = sides.back() * 10 + (c - '0');
        } else {
            return {};
        }
    }
    const bool good = sides.size() <= 6 && std::all_of(sides.begin(), sides.end(), [](auto frames) {
                          return frames >= 1 && frames <= 20;
                      });
    return good ? sides : std::vector<std::int32_t>{};
}

std::string sideName(std::size_t index, std::size_t sides) {
    return sides == 1 ? "-" : std::string(1, static_cast<char>('A' + index));
}

}  // namespace tenthday
