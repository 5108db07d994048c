#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <map>
#include <unordered_map>
#include <unordered_set>

#include "base/natural_order.h"
#include "base/side_by_side.h"
#include "findings/disease_hold.h"
#include "findings/drone_findings.h"
#include "findings/finding.h"
#include "findings/full_yards.h"
#include "findings/hold_trips.h"
#include "findings/larvae_not_seen.h"
#include "findings/queen_findings.h"
#include "occupancy/top_up.h"
#include "occupancy/winter.h"
#include "records/relations.h"
#include "records/yard_state.h"

namespace tenthday {
namespace {

/// How far ahead a cells day may lean on catches still to come before that is worth a word.
constexpr Days kNear{7};

/// Gathers findings from one snapshot's derived facts.
class Search {
public:
    Search(const Snapshot& snapshot, const Timelines& timelines,
           const SharedList<BuilderOutlook>& builders, const NucOutlook& nucs,
           const SeasonLimits& limits, const std::vector<DroneNeed>& drones)
        : snapshot_(snapshot),
          timelines_(timelines),
          builders_(builders),
          nucs_(nucs),
          limits_(limits),
          drones_(drones),
          queenlessAfterCatch_(std::max(queenlessDays(snapshot.facts()), Days{1})) {
        for (const auto& builder : snapshot.all<Builder>())
            builderLabels_[builder->id] = builder->label;
    }

    // Parts that need nothing of one another.
    void searchBatches() {
        for (const auto& [batch, timeline] : timelines_) {
            queenOut(batch, *timeline);
            fragileMoves(batch, *timeline);
            daysOff(batch, *timeline);
            beyondLimits(batch, *timeline);
            noMatingDays(batch, *timeline);
            hungryBuilders(batch, *timeline);
        }
        take(larvaeNotSeen(snapshot_, timelines_));
    }
    void searchBuilders() {
        for (const auto& builder : builders_) {
            overfull(builder);
            notFree(builder);
            wildQueens(builder);
        }
        takenNucs();
    }
    void searchCellsDays() {
        std::vector<ShortDay> days;
        for (const auto& day : nucs_.cellsDays)
            if (tooManyCells(day)) days.push_back({&day, {}});
        findHeld(days);
        for (const auto& day : days) heldByCatch(day);
        for (auto& finding : fullYards(snapshot_, timelines_, nucs_))
            if (!tooMany_.contains(std::get<Id<Batch>>(finding.subject)))
                found_.push_back(std::move(finding));
    }
    void searchYardsAndQueens() {
        take(aboutDrones(drones_, snapshot_.today()));
        take(leavesHold(snapshot_));
        take(tripsOutOfHold(snapshot_, timelines_, nucs_));
        take(aboutQueens(snapshot_));
    }

    /// What was found.
    [[nodiscard]] std::vector<Finding> found() && { return std::move(found_); }

private:
    /// 12:00 of today: the hour meant when only the day is known.
    [[nodiscard]] Moment now() const { return momentOf(snapshot_.today()); }

    void take(std::vector<Finding> more) {
        found_.insert(found_.end(), std::make_move_iterator(more.begin()),
                      std::make_move_iterator(more.end()));
    }
    Finding& add(FindingKind kind, Severity severity, Day day, Id<Batch> batch) {
        Finding finding;
        finding.kind = kind;
        finding.severity = severity;
        finding.day = day;
        finding.subject = batch;
        if (const auto row = snapshot_.find(batch)) finding.subjectLabel = row->label;
        found_.push_back(std::move(finding));
        return found_.back();
    }
    void name(Finding& finding, std::optional<Id<Builder>> builder) {
        finding.builder = builder;
        if (builder) finding.builderLabel = builderLabels_[*builder];
    }
    /// "701, 702".
    [[nodiscard]] std::string labelsOf(const std::vector<Id<Batch>>& batches) const {
        std::string labels;
        for (const auto batch : batches)
            if (const auto row = snapshot_.find(batch))
                labels += (labels.empty() ? "" : ", ") + row->label;
        return labels;
    }
    /// The last stay of the batch's cells before they leave.
    static std::optional<Id<Builder>> lastBuilder(const BatchTimeline& timeline) {
        return timeline.loads.empty() ? std::nullopt : timeline.loads.back().builder;
    }

    /// The cells have gone, by record; or so long ago that a warning helps nobody.
    [[nodiscard]] bool isOver(Id<Batch> batch, const BatchTimeline& timeline) const {
        if (snapshot_.today() <= dayOf(timeline.hold.leaves)) return false;
        const auto placements = snapshot_.all<Placement>().of(batch.uuid);
        const auto outcomes = snapshot_.all<Outcome>().of(batch.uuid);
        const auto* out = timeline.find(Event::Emergence);
        return std::any_of(placements.begin(), placements.end(),
                           [](const auto& p) { return p->done; }) ||
               std::any_of(outcomes.begin(), outcomes.end(),
                           [](const auto& o) { return o->kind == OutcomeKind::Ripe; }) ||
               out == nullptr || snapshot_.today() > dayOf(out->latest);
    }

    void queenOut(Id<Batch> batch, const BatchTimeline& timeline) {
        const Moment move = timeline.hold.leaves;
        if (move <= timeline.latestMove || isOver(batch, timeline)) return;
        auto& finding = add(FindingKind::QueenOutBeforeMove, Severity::Danger,
                            dayOf(timeline.latestMove), batch);
        finding.moment = timeline.latestMove;
        finding.until = move;
        name(finding, lastBuilder(timeline));
    }

    /// Moves between the last safe one by road and ripeness; into an incubator on its first day
    /// is a careful step, not a finding.
    void fragileMoves(Id<Batch> batch, const BatchTimeline& timeline) {
        if (timeline.find(Event::FragileFrom) == nullptr) return;
        const auto& facts = snapshot_.facts();
        const auto day = [&](Fact fact) { return static_cast<int>(std::floor(facts[fact] / 24)); };
        const auto fragile = [&](Moment moment, int from) {
            const int number = timeline.dayNumber(moment);
            return number >= from && number <= day(Fact::FragileUntilH) &&
                   dayOf(moment) >= snapshot_.today();
        };
        const auto tell = [&](Moment moment, std::optional<Id<Builder>> builder) {
            auto& finding = add(FindingKind::FragileMove, Severity::Warning, dayOf(moment), batch);
            finding.moment = moment;
            finding.count = timeline.dayNumber(moment);
            name(finding, builder);
        };
        if (fragile(timeline.hold.transfer, day(Fact::FragileFromH)))
            tell(timeline.hold.transfer, lastBuilder(timeline));
        for (const auto& load : timeline.loads) {
            if (load.step == 1) continue;
            const int careful = load.where == BuilderKind::Incubator ? 1 : 0;
            if (fragile(load.span.from, day(Fact::FragileFromH) + careful))
                tell(load.span.from, load.builder);
        }
    }

    /// Not for what is grafted, or meant for the past.
    void beyondLimits(Id<Batch> batch, const BatchTimeline& timeline) {
        const Day graft = dayOf(timeline.graft);
        if (timeline.grafted || graft < snapshot_.today()) return;
        const auto row = snapshot_.find(batch);
        const bool open = !row || row->mating == Mating::Open;
        // Drones and weather of the yards say nothing of a station, nor of insemination.
        const auto binds = [&](const SeasonLimit& limit) {
            return open ? limit.binds
                        : limit.limit == Limit::WinterBeesTwoRounds && limit.day.has_value();
        };
        const auto tell = [&](bool first) {
            for (const auto& limit : limits_.all) {
                if (!binds(limit) || isFirst(limit.limit) != first) continue;
                if (first ? graft >= *limit.day : graft <= *limit.day) return;
                auto& finding = add(FindingKind::BeyondLimits, Severity::Warning, graft, batch);
                finding.graftLimit = limit;
                return;
            }
        };
        tell(true);
        tell(false);
    }

    void noMatingDays(Id<Batch> batch, const BatchTimeline& timeline) {
        const auto row = snapshot_.find(batch);
        const auto* due = timeline.find(Event::DueToFly);
        const auto* out = timeline.find(Event::Emergence);
        if (!row || row->mating == Mating::Open || due == nullptr || out == nullptr) return;
        if (dayOf(due->latest) < snapshot_.today()) return;
        const auto stays = snapshot_.all<MatingStay>().of(batch.uuid);
        const bool station = row->mating == Mating::Station;
        if (stays.empty()) {
            if (station) add(FindingKind::NoMatingDays, Severity::Note, dayOf(due->likely), batch);
            return;
        }
        const auto lastAge = static_cast<int>(snapshot_.facts()[Fact::LastMatingD]);
        const DayWindow able{station ? dayOf(due->earliest) : dayOf(out->likely) + Days{1},
                             station ? dayOf(out->latest) + Days{lastAge} : kLastDay};
        const bool serve = std::any_of(stays.begin(), stays.end(), [&](const auto& stay) {
            return (station ? stay->from : stay->until) <= able.last && stay->until >= able.first;
        });
        if (serve) return;
        add(FindingKind::NoMatingDays, Severity::Warning, dayOf(due->likely), batch).count =
            static_cast<double>(stays.size());
    }

    /// Until the take is counted: then what was started is known.
    void hungryBuilders(Id<Batch> id, const BatchTimeline& timeline) {
        const auto batch = snapshot_.find(id);
        if (!batch || dayOf(timeline.graft) < snapshot_.today()) return;
        for (const auto& hungry : inDearth(snapshot_, *batch)) {
            if (hungry.fed) continue;
            auto& finding =
                add(FindingKind::HungryBuilder, Severity::Warning, dayOf(timeline.graft), id);
            finding.moment = timeline.graft;
            finding.until = momentOf(hungry.dearth->until);
            finding.limit = std::min(snapshot_.facts()[Fact::AcceptedDearth],
                                     snapshot_.facts()[Fact::Accepted]);
            name(finding, hungry.builder->id);
        }
    }

    [[nodiscard]] bool isDayOff(Day day) const {
        return std::any_of(snapshot_.all<DayOff>().begin(), snapshot_.all<DayOff>().end(),
                           [&](const auto& off) { return off->from <= day && day <= off->until; });
    }

    /// Cells planned by name into nucs that will not be free for them: held by another, not
    /// stocked, without brood, or gone before the queen can be caught.
    void takenNucs() {
        std::map<std::pair<Day, Id<Batch>>, std::vector<std::pair<std::string, NotReady>>> taken;
        for (const auto& side : nucs_.sides)
            for (const auto& round : side.rounds) {
                if (round.done || !round.named || round.transferDay < snapshot_.today()) continue;
                const auto why = whyTaken(side, round);
                if (why == NotReady::None) continue;
                taken[{round.transferDay, round.batch}].emplace_back(nucName(*side.box, *side.side),
                                                                     why);
            }
        for (const auto& [where, nucs] : taken) {
            auto& finding =
                add(FindingKind::NucNotFree, Severity::Warning, where.first, where.second);
            finding.count = static_cast<double>(nucs.size());
            finding.why = nucs.front().second;
            for (std::size_t i = 0; i < nucs.size() && i < 3; ++i)
                finding.nucs += (i > 0 ? ", " : "") + nucs[i].first;
            if (nucs.size() > 3) finding.nucs += " ...";
        }
    }

    [[nodiscard]] NotReady whyTaken(const SideOutlook& side, const SideRound& round) const {
        const auto is = sideOn(side, round.transferDay, snapshot_.today());
        const bool gone =
            side.stands.last < round.catchDay ||
            std::any_of(side.stays.begin(), side.stays.end(), [&](const BoxStayFrom& stay) {
                return !stay.yard && stay.from > round.transferDay && stay.from <= round.catchDay;
            });
        // Short queenless time lowers acceptance but is no bar; one more bee is stocked in time.
        if (!is.ready && is.likely == 0 && is.reason != NotReady::QueenlessTooShort)
            return is.reason;
        return gone ? NotReady::Retired : NotReady::None;
    }

    /// Only what must be done on its very day; looks and counts have days to choose from.
    void daysOff(Id<Batch> batch, const BatchTimeline& timeline) {
        if (snapshot_.all<DayOff>().empty()) return;
        constexpr std::array kFixed{Event::Confine, Event::FreeBreeder, Event::MakeUpBuilder,
                                    Event::Graft, Event::ToFinisher};
        const auto check = [&](Event event, Moment moment) {
            if (dayOf(moment) < snapshot_.today() || !isDayOff(dayOf(moment))) return;
            auto& finding = add(FindingKind::WorkOnDayOff, Severity::Warning, dayOf(moment), batch);
            finding.event = event;
            finding.moment = moment;
        };
        for (const auto event : kFixed)
            if (const auto* dates = timeline.find(event);
                dates != nullptr && dates->note != EventNote::Observed)
                check(event, dates->likely);
        check(Event::Ripe, timeline.hold.transfer);
    }

    void overfull(const BuilderOutlook& builder) {
        for (const auto& full : builder.overfull) {
            if (dayOf(full.from) < snapshot_.today()) continue;
            auto& finding =
                add(FindingKind::BoxOverfull, Severity::Warning, dayOf(full.from), full.batch);
            finding.moment = full.from;
            finding.count = full.cells;
            finding.limit = full.room;
            finding.sealed = full.sealed;
            finding.dearth = full.dearth;
            name(finding, builder.builder->id);
        }
    }

    /// The batch before once more, soon after it and while its cells still stand in the box: meant
    /// so, it seems.
    [[nodiscard]] bool isInsurance(const BuilderOutlook& builder,
                                   const BuilderOutlook::TooSoon& soon) const {
        const Days inTime{static_cast<int>(snapshot_.facts()[Fact::TopUpByH]) / 24};
        const Day comes = dayOf(soon.from);
        return std::any_of(builder.loads.begin(), builder.loads.end(),
                           [&](const auto& load) {
                               const auto& span = load.span->span;
                               return load.batch == soon.after && dayOf(span.from) < comes &&
                                      comes <= dayOf(span.from) + inTime &&
                                      comes < dayOf(span.until);
                           }) &&
               isRepeatOf(snapshot_, soon.after, soon.batch);
    }

    void notFree(const BuilderOutlook& builder) {
        for (const auto& soon : builder.tooSoon) {
            const Day day = dayOf(soon.from);
            if (day < snapshot_.today()) continue;
            const auto severity = isInsurance(builder, soon) ? Severity::Note : Severity::Warning;
            auto& finding = add(FindingKind::BuilderNotFree, severity, day, soon.batch);
            finding.moment = soon.from;
            finding.freeFrom = soon.freeFrom;
            if (const auto row = snapshot_.find(soon.after)) finding.otherLabel = row->label;
            name(finding, builder.builder->id);
        }
    }

    /// A task until its last day at noon; overdue from then, while there are cells to lose.
    void wildQueens(const BuilderOutlook& builder) {
        for (const auto& clock : builder.clocks) {
            const bool due = now() >= momentOf(clock.secondLook.last) && !clock.secondTicked;
            if (!due || now() >= clock.runsOut) continue;
            for (const auto& load : builder.loads) {
                const auto& span = load.span->span;
                if (!span.contains(now()) || span.until <= clock.oldest) continue;
                auto& finding = add(FindingKind::WildQueenOverdue, Severity::Danger,
                                    snapshot_.today(), load.batch);
                finding.moment = clock.oldest;
                finding.until = clock.old;
                name(finding, builder.builder->id);
            }
        }
    }

    /// Whether it is told.
    bool tooManyCells(const CellsDay& cells) {
        if (cells.day < snapshot_.today() || cells.toNucs <= cells.numbers.ready) return false;
        const double likely = std::floor(cells.numbers.likely + 1e-6);
        const bool covered = cells.toNucs <= cells.numbers.ready + likely;
        if (covered && cells.day - snapshot_.today() > kNear) return false;
        auto& finding =
            add(FindingKind::TooManyCells, covered ? Severity::Warning : Severity::Danger,
                cells.day, cells.batches.front());
        finding.subjectLabel = labelsOf(cells.batches);
        finding.moment = momentOf(cells.day);
        finding.count = cells.toNucs;
        finding.limit = cells.numbers.ready;
        finding.numbers = cells.numbers;
        tooMany_.insert(cells.batches.begin(), cells.batches.end());
        return true;
    }

    /// A day on which cells lack nucs, and queens that wait on it for a catch that eggs would have
    /// allowed, by batch.
    struct ShortDay {
        const CellsDay* cells;
        std::map<Id<Batch>, double> held;
    };
    void findHeld(std::vector<ShortDay>& days) const {
        if (days.empty()) return;
        for (const auto& side : nucs_.sides)
            for (const auto& round : side.rounds) {
                if (round.catchDay + queenlessAfterCatch_ <= days.front().cells->day) continue;
                for (auto& [cells, held] : days)
                    if (freeOnEggs(round, cells->day)) held[round.batch] += round.layingShare();
            }
    }

    /// Says whose they are, how many, and what the rule costs.
    void heldByCatch(const ShortDay& day) {
        const auto& [on, held] = day;
        const auto& cells = *on;
        double count = 0;
        for (const auto& [batch, expected] : held) count += expected;
        count = std::floor(count + 1e-6);
        if (count < 1) return;
        Finding finding;
        finding.otherLabel = labelsOf(cells.batches);
        finding.limit = cells.toNucs - cells.numbers.ready;
        std::vector<Id<Batch>> batches;
        for (const auto& [batch, timeline] : timelines_) {
            if (!held.contains(batch)) continue;
            const auto& hold = timeline->hold;
            if (batches.empty()) finding.catchRule = hold.catchRule;
            batches.push_back(batch);
            finding.nucDays =
                std::max(finding.nucDays, hold.nucDays() - hold.nucDays(CatchRule::Eggs));
        }
        finding.subject = batches.front();
        finding.subjectLabel = labelsOf(batches);
        finding.kind = FindingKind::CatchHoldsNucs;
        finding.severity = Severity::Note;
        finding.day = cells.day;
        finding.count = count;
        found_.push_back(std::move(finding));
    }

    /// Not ready on the day by its rule, but ready had the queen been caught on eggs.
    [[nodiscard]] bool freeOnEggs(const SideRound& round, Day day) const {
        const Days queenless = queenlessAfterCatch_;
        // Held on the day at all: most are not, and this is asked of every round.
        if (round.transferDay >= day || round.catchDay + queenless <= day) return false;
        const Day eggs = std::max(round.timeline->hold.catchBy[0], snapshot_.today());
        const bool mayHold =
            !round.seen || *round.seen == NucState::Laying || *round.seen == NucState::JudgedGood;
        return mayHold && !staysForWinter(round) && eggs + queenless <= day &&
               round.catchDay > eggs;
    }

    const Snapshot& snapshot_;
    const Timelines& timelines_;
    const SharedList<BuilderOutlook>& builders_;
    const NucOutlook& nucs_;
    const SeasonLimits& limits_;
    const std::vector<DroneNeed>& drones_;
    const Days queenlessAfterCatch_;
    std::unordered_map<Id<Builder>, std::string> builderLabels_;
    std::unordered_set<Id<Batch>> tooMany_;  ///< told: no yard has room for all
    std::vector<Finding> found_;
};

}  // namespace

std::vector<Finding> findingsOf(const Snapshot& snapshot, const Timelines& timelines,
                                const SharedList<BuilderOutlook>& builders, const NucOutlook& nucs,
                                const SeasonLimits& limits, const std::vector<DroneNeed>& drones) {
    constexpr std::array parts{&Search::searchBatches, &Search::searchBuilders,
                               &Search::searchCellsDays, &Search::searchYardsAndQueens};
    std::array<std::vector<Finding>, parts.size()> found;
    sideBySide(parts.size(), [&](std::size_t i) {
        Search search(snapshot, timelines, builders, nucs, limits, drones);
        (search.*parts[i])();
        found[i] = std::move(search).found();
    });
    auto all = std::move(found[0]);
    for (std::size_t i = 1; i < parts.size(); ++i)
        all.insert(all.end(), std::make_move_iterator(found[i].begin()),
                   std::make_move_iterator(found[i].end()));
    std::stable_sort(all.begin(), all.end(), [](const Finding& a, const Finding& b) {
        if (a.day != b.day) return a.day < b.day;
        if (a.severity != b.severity) return a.severity > b.severity;
        if (a.kind != b.kind) return a.kind < b.kind;
        return naturalLess(a.subjectLabel, b.subjectLabel);
    });
    return all;
}

}  // namespace tenthday
