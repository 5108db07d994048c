/// @file finding.h  Everything to warn of, as data. Words for the window stand in app/screen_text.
#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "limits/season_limits.h"
#include "occupancy/builders.h"
#include "occupancy/drone_needs.h"
#include "occupancy/nucs.h"

namespace tenthday {

enum class Severity : std::uint8_t { Note, Warning, Danger };
template <>
struct TokensOf<Severity> {
    static constexpr auto names = std::to_array<std::string_view>({"note", "warning", "danger"});
};

enum class FindingKind : std::uint8_t {
    BoxOverfull,         ///< count = started cells, or sealed ones (`sealed`); limit = room
    TooManyCells,        ///< count = ripe cells for nucs, numbers = what there is for them
    QueenOutBeforeMove,  ///< moment = first queen can be out (at the set risk), until = the move
    FragileMove,         ///< moment = the move
    WildQueenOverdue,    ///< moment = a wild queen can be out, until = the likely one
    WorkOnDayOff,        ///< event = the work, moment = when
    BuilderNotFree,      ///< moment = the batch comes, other = the batch before, day = free from
    NucNotFree,          ///< count = named nucs that will not take the cell, why = the first's
    CatchHoldsNucs,      ///< count = nucs that eggs would free in time, other = who wants them
    BeyondLimits,        ///< graftLimit = the first or last graft it lies beyond
    NoMatingDays,        ///< count = stays for mating given: none, or none that can serve
    HungryBuilder,       ///< moment = the graft, until = end of the dearth, limit = share started
    /// count = drone colonies noted, limit = wanted, virgins = that fly; or, where freeFrom is set:
    /// virgins fly from moment, drones are mature only from freeFrom
    FewDrones,
    LeavesHold,  ///< otherLabel = yard under a hold for disease, until = its last day
    /// of an order (subjectLabel): count = °C on that day, limit = what queens on the way should
    /// have, at the least where it is colder and at the most where it is warmer
    ShipWeather,
    BankFull,  ///< of a bank colony (subjectLabel): count = queens in it, limit = what it keeps
    BankLong,  ///< count = queens in it for longer than limit = days
    /// otherLabel = breeder queen without larvae fit to graft the day before the graft, moment =
    /// the graft; count = 1: looked, and none; 0: nobody has looked
    LarvaeNotSeen,
    YardFull,  ///< count = cells planned for a yard (otherLabel), limit = that find a nuc there
};
template <>
struct TokensOf<FindingKind> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"box_overfull", "too_many_cells", "queen_out_before_move", "fragile_move",
         "wild_queen_overdue", "work_on_day_off", "builder_not_free", "nuc_not_free",
         "catch_holds_nucs", "beyond_limits", "no_mating_days", "hungry_builder", "few_drones",
         "leaves_hold", "ship_weather", "bank_full", "bank_long", "larvae_not_seen", "yard_full"});
};

struct Finding {
    Day day;
    Severity severity{};
    FindingKind kind{};
    std::variant<std::monostate, Id<Batch>, Id<Builder>, Id<Yard>> subject;
    std::string subjectLabel;
    std::optional<Id<Builder>> builder;
    std::string builderLabel;
    Moment moment{};
    Moment until{};
    std::string otherLabel;  ///< of the other batch it is about
    double count = 0;
    double limit = 0;
    bool sealed = false;
    bool dearth = false;  ///< the room is that of a dearth
    double virgins = 0;
    std::optional<Day> freeFrom;
    NotReady why = NotReady::None;
    std::string nucs;  ///< their names, the first three
    std::optional<CatchRule> catchRule;
    std::int32_t nucDays = 0;  ///< more, per nuc, than were she caught on eggs
    ReadyNumbers numbers;
    std::optional<Event> event;
    std::optional<SeasonLimit> graftLimit;
};

/// The finding in one plain English sentence, for headless output.
[[nodiscard]] std::string englishText(const Finding& finding);

/// All findings, by day, then severity (worst first), then kind and subject.
[[nodiscard]] std::vector<Finding> findingsOf(const Snapshot& snapshot, const Timelines& timelines,
                                              const SharedList<BuilderOutlook>& builders,
                                              const NucOutlook& nucs, const SeasonLimits& limits,
                                              const std::vector<DroneNeed>& drones);

}  // namespace tenthday
