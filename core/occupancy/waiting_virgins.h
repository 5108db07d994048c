/// @file waiting_virgins.h  The nucs whose virgin has not been seen laying: how old she is, which
/// flying days she had, how long she can still mate, and what to do.
#pragma once
#include <array>
#include <optional>
#include <vector>

#include "occupancy/nucs.h"

namespace tenthday {

/// What to do with such a nuc.
enum class VirginAdvice : std::uint8_t {
    Wait,    ///< her first look is not due
    Look,    ///< on `look`: today, or once enough of such virgins can have eggs
    Recell,  ///< she is given up, and a ripe cell comes while her bees can still take one
    Combine  ///< she is given up, and none does: give her bees to another nuc
};
template <>
struct TokensOf<VirginAdvice> {
    static constexpr auto names =
        std::to_array<std::string_view>({"wait", "look", "recell", "combine"});
};

/// Why that is the advice.
enum class VirginReason : std::uint8_t {
    LookNotDue,       ///< younger than at the first look
    EggsDue,          ///< enough of those that will lay have eggs by that day
    FewFlyingDays,    ///< the look has to wait for flying days
    WeatherUnknown,   ///< by age alone: nothing is known of flying days
    SeenAgainstRule,  ///< seen without eggs after weather in which she should have laid
    SmallChance,      ///< hardly any flying day came or will come in time
    TooOld            ///< past her last useful day
};

/// One nuc, at the start of work on the day asked for.
struct WaitingVirgin {
    const SideOutlook* side = nullptr;
    const SideRound* round = nullptr;
    Id<Yard> yard;

    Day outEarliest;          ///< 5 % of her batch are out
    Day outLikely;            ///< the day that ages count from
    Day outLatest;            ///< 95 % are out
    bool outSeen = false;     ///< somebody saw it: all three are that day
    std::int32_t age = 0;     ///< d from outLikely; below 0 she is still in her cell
    std::optional<Day> seen;  ///< last seen without eggs, before the day

    Day dueDay;                ///< first day on which she could fly
    std::int32_t flew = 0;     ///< flying days from then to the day before, recorded or forecast
    std::int32_t idle = 0;     ///< days without flying among them
    std::int32_t unknown = 0;  ///< days of which nothing is recorded or forecast
    std::optional<double> flewMaybe = 0;  ///< flying days to be expected among those; none where
                                          ///< their chance is not known
    Day lastDay;                          ///< last day on which she can mate, inclusive
    std::optional<double> mated;  ///< chance that she mated before the day, for weather alone
    std::optional<double> still;  ///< chance that she does on it or later; the rest is never

    Day firstLook;            ///< due by her age
    std::optional<Day> look;  ///< the next look; none once she is given up
    VirginAdvice advice{};
    VirginReason reason{};
    std::optional<Day> cellDay;  ///< next ripe cells, of `cellBatch`
    Id<Batch> cellBatch;
    Day needsBroodFrom;  ///< her bees take no cell from here without open brood first

    /// Flying days she had, those nobody recorded by their chance; none where that is not known.
    [[nodiscard]] std::optional<double> flown() const {
        return flewMaybe ? std::optional(flew + *flewMaybe) : std::nullopt;
    }
    /// She could fly, still can, and has likely not mated yet.
    [[nodiscard]] bool isWaiting(Day day) const {
        return dueDay <= day && day <= lastDay && mated.value_or(0) < 0.5;
    }
};

/// The nucs of one batch in one yard.
struct VirginGroup {
    Id<Batch> batch;
    Id<Yard> yard;
    std::int32_t nucs = 0;
    std::int32_t youngest = 0;    ///< d
    std::int32_t oldest = 0;      ///< d
    std::optional<double> flown;  ///< means over its nucs; none where one of them has none
    std::optional<double> mated;
    std::optional<double> still;
    std::array<std::int32_t, kTokenCount<VirginAdvice>> advised{};  ///< nucs by advice
};

struct WaitingVirgins {
    Day day;
    std::vector<WaitingVirgin> nucs;  ///< oldest first, then in driving order
    std::vector<VirginGroup> groups;  ///< in driving order, by batch as grafted
    std::optional<Day> lastFlying;    ///< recorded or forecast, no gap in between
    std::int32_t idleDays = 0;        ///< without flying, in one run up to the day before
    std::optional<Day> nextFlying;    ///< on the day or later, no gap in between
    std::int32_t waiting = 0;         ///< nucs of which isWaiting() holds
    std::optional<Day> firstLastDay;  ///< the earliest last useful day of those
    std::int32_t untilThen = 0;       ///< those for which it is the last
};

/// All nucs with a virgin, or a cell that emerges within two days, that nobody has seen laying by
/// the start of work on `day`. Rules, in this order:
///
/// - Once she is due to fly: given up where the chance that she has mated or will mate is below the
///   fact give_up_chance (common practice), and where she was seen without eggs past her last
///   useful day and the weather is not known. Then *recell*, where cells get ripe while her bees
///   can take one; else *combine*. They can until no_brood_d after their last open brood, or after
///   she was seen alive (unseen she counts as lost at lost_virgin_d; S89, S90).
/// - *Wait* until first_look_d of age (S49).
/// - *Look* on the first day by which the share likely_level of those that will lay has eggs.
///
/// Inseminated batches do not wait for weather and are left out; those at a mating station count
/// the days of their stay only. On days ahead a nuc is listed until its plan frees it; one whose
/// box stands in no yard is left out.
[[nodiscard]] WaitingVirgins waitingVirgins(const Snapshot& snapshot, const NucOutlook& nucs,
                                            const MatingTable& mating, Day day);

}  // namespace tenthday
