#include <algorithm>
#include <cmath>

#include "records/relations.h"
#include "timeline/batch_timeline.h"
#include "weather/record_only.h"

namespace tenthday {
namespace {

/// Lists the events of one plan in the order of their tokens.
class Dates {
public:
    Dates(const DatePlan& plan, const Facts& facts, const MatingTable& mating, Trace* trace)
        : plan_(plan), facts_(facts), mating_(mating), trace_(trace) {}

    BatchDates list() {
        out_.events.reserve(kTokenCount<Event>);
        anchor();
        if (hasGraft(plan_.start)) beforeSealing();
        if (plan_.start <= Start::SealedFound) sealing();
        if (plan_.start <= Start::Ripe) untilTheMove();
        queens();
        return std::move(out_);
    }

private:
    using Kind = Reason::Kind;

    [[nodiscard]] double fact(Fact fact) const { return facts_[fact]; }
    [[nodiscard]] double hourOfMoment(Moment moment) const {
        return hoursBetween(out_.graft, moment);
    }

    void tell(Event event, Kind kind, std::optional<Event> from = {}, std::optional<Fact> fact = {},
              double hours = 0, std::initializer_list<Fact> also = {}) {
        if (trace_ != nullptr) trace_->reasons.push_back({event, kind, from, fact, hours, also});
    }
    /// A rule that leans on the queen's development: how old the larva was, and the spread.
    void tellDevelopment(Event event, Fact key, double hours) {
        if (trace_ == nullptr) return;
        tell(event, Kind::Rule, Event::Graft, key, hours, {Fact::EggH, Fact::EmergenceSdH});
        auto& also = trace_->reasons.back().also;
        if (plan_.start == Start::Confined) also.push_back(Fact::ConfineH);
        if ((plan_.start == Start::Graft || plan_.start == Start::Ripe) && !plan_.larvaFromH)
            also.insert(also.end(), {Fact::LarvaFromH, Fact::LarvaToH});
        if (heat()) also.insert(also.end(), {Fact::NestC, Fact::ColdC, Fact::ColdDelayH});
    }
    void put(Event event, double early, double likely, double late,
             EventNote note = EventNote::None) {
        out_.events.push_back({event, hoursAfterDown(out_.graft, early),
                               hoursAfter(out_.graft, likely), hoursAfterUp(out_.graft, late),
                               note});
    }
    void put(Event event, double hour, EventNote note = EventNote::None) {
        put(event, hour, hour, hour, note);
    }
    void put(Event event, const Spread& spread, EventNote note = EventNote::None) {
        put(event, spread.at(0.05), spread.at(0.5), spread.at(0.95), note);
    }
    /// So many hours after the first eggs of those that will lay.
    void putEggs(Event event, double later) {
        const auto at = [&](double q) { return out_.firstEggs.at(q) + later; };
        put(event, at(0.05), at(0.5), at(0.95));
    }
    /// An event set by a fact's hours after another.
    void rule(Event event, Event from, Fact key, double sign = 1,
              EventNote note = EventNote::None) {
        put(event, hourOfMoment(likely(from)) + sign * fact(key), note);
        tell(event, Kind::Rule, from, key, sign * fact(key));
    }
    [[nodiscard]] Moment likely(Event event) const {
        if (event == Event::Graft) return out_.graft;
        for (const auto& dates : out_.events)
            if (dates.event == event) return dates.likely;
        return out_.graft;
    }

    /// Day 0 and the clock of the queens, from whatever the plan starts with.
    void anchor() {
        double from = plan_.larvaFromH.value_or(fact(Fact::LarvaFromH));
        double to = plan_.larvaToH.value_or(std::max(from, fact(Fact::LarvaToH)));
        const double likelyAge = (fact(Fact::LarvaFromH) + fact(Fact::LarvaToH)) / 2;
        const double sealedSpan = fact(Fact::EmergenceH) - fact(Fact::SealingH);
        out_.graft = reckonedGraft(plan_.start, plan_.begin, facts_);
        if (plan_.graftSeen && hasGraft(plan_.start)) out_.graft = *plan_.graftSeen;
        if (plan_.start == Start::Confined) {
            // Eggs laid while she was confined, grafted when they are.
            const double oldest = hoursBetween(plan_.begin, out_.graft) - fact(Fact::EggH);
            to = std::max(oldest, 0.0);
            from = std::max(oldest - fact(Fact::ConfineH), 0.0);
        }
        if (plan_.start == Start::SealedFound) {
            from = likelyAge - sealedSpan / 2;
            to = likelyAge + sealedSpan / 2;
        }
        tellReckonedBack();
        out_.clock = QueenClock(facts_, from, to, heat());
        if (const auto seen = emergenceSeen()) out_.clock.setEmerged(hourOfMoment(*seen));
        out_.given = givenAs(plan_, facts_);
        out_.transfer = plan_.transfer.value_or(methodTransfer());
        out_.leaves = std::max(plan_.leaves.value_or(out_.transfer), out_.transfer);
    }

    /// Day 0 of cells or queens that came later than the graft.
    void tellReckonedBack() {
        const double hours = hoursBetween(plan_.begin, out_.graft);
        if (plan_.start == Start::SealedFound)
            tell(Event::Graft, Kind::ReckonedBack, {}, Fact::SealingH, hours,
                 {Fact::EmergenceH, Fact::EggH, Fact::LarvaFromH, Fact::LarvaToH});
        if (plan_.start == Start::Ripe)
            tell(Event::Graft, Kind::ReckonedBack, {}, Fact::RipeH, hours);
        if (plan_.start == Start::Virgin)
            tell(Event::Graft, Kind::ReckonedBack, {}, Fact::EmergenceH, hours,
                 {Fact::EggH, Fact::LarvaFromH, Fact::LarvaToH});
    }

    [[nodiscard]] std::optional<Moment> emergenceSeen() const {
        return plan_.start == Start::Virgin ? plan_.begin : plan_.emergenceSeen;
    }

    /// The stay in an incubator that is not as warm as the brood nest.
    [[nodiscard]] std::optional<HeatSpan> heat() const {
        if (!plan_.incubatorC || plan_.start >= Start::Ripe) return std::nullopt;
        // Cells that were found were somewhere else until then.
        const double here = plan_.start == Start::SealedFound ? hourOfMoment(plan_.begin) : 0;
        for (const auto& step : plan_.steps)
            if (step.where == BuilderKind::Incubator && step.toHour > here)
                return HeatSpan{std::max(static_cast<double>(step.fromHour), here),
                                static_cast<double>(step.toHour), *plan_.incubatorC};
        return std::nullopt;
    }

    /// Cells go into nucs when the method's last step ends; bought ones when they come.
    [[nodiscard]] Moment methodTransfer() const {
        if (plan_.start == Start::Virgin || plan_.start == Start::Ripe) return plan_.begin;
        const double hours = plan_.steps.empty() ? fact(Fact::RipeH) : plan_.steps.back().toHour;
        return std::max(hoursAfter(out_.graft, hours),
                        plan_.start == Start::SealedFound ? plan_.begin : out_.graft);
    }

    void beforeSealing() {
        const bool confined = plan_.start == Start::Confined;
        if (confined) {
            put(Event::Confine, hourOfMoment(plan_.begin));
            tell(Event::Confine, Kind::Entered);
        } else {
            rule(Event::Confine, Event::Graft, Fact::ConfineBeforeH, -1);
        }
        rule(Event::FreeBreeder, Event::Confine, Fact::ConfineH);
        rule(Event::MakeUpBuilder, Event::Graft, Fact::MakeUpBeforeH, -1);
        put(Event::Graft, 0, plan_.graftSeen ? EventNote::Observed : EventNote::None);
        if (plan_.graftSeen)
            tell(Event::Graft, Kind::Observed);
        else if (confined)
            tell(Event::Graft, Kind::Rule, Event::Confine, Fact::ConfineBeforeH,
                 fact(Fact::ConfineBeforeH));
        else
            tell(Event::Graft, Kind::Entered);
        put(Event::TakeCount, fact(Fact::TakeCountFromH), fact(Fact::TakeCountFromH),
            fact(Fact::TakeCountToH));
        tell(Event::TakeCount, Kind::Rule, Event::Graft, Fact::TakeCountFromH,
             fact(Fact::TakeCountFromH), {Fact::TakeCountToH});
        put(Event::TopUp, fact(Fact::TakeCountFromH), fact(Fact::TopUpByH), fact(Fact::TopUpByH));
        tell(Event::TopUp, Kind::Rule, Event::Graft, Fact::TopUpByH, fact(Fact::TopUpByH),
             {Fact::TakeCountFromH});
        for (const auto& step : plan_.steps)
            if (step.where == BuilderKind::Starter && step.toHour < fact(Fact::RipeH)) {
                put(Event::ToFinisher, step.toHour);
                tell(Event::ToFinisher, Kind::Method, Event::Graft, {}, step.toHour);
            }
    }

    void sealing() {
        put(Event::Sealed, out_.clock.sealed());
        tellDevelopment(Event::Sealed, Fact::SealingH, out_.clock.sealed().mean());
    }

    void untilTheMove() {
        const bool unknownAge = plan_.start == Start::SealedFound;
        const auto note = unknownAge ? EventNote::QueenMayBeOut : EventNote::None;
        if (plan_.start != Start::Ripe) {
            rule(Event::FragileFrom, Event::Graft, Fact::FragileFromH);
            rule(Event::FragileUntil, Event::Graft, Fact::FragileUntilH);
            // Cells given open hang one to a nuc: nothing to cage, no first queen to fear.
            if (out_.given != Given::Open)
                rule(Event::CageFrom, Event::Graft, Fact::CageFromH, 1,
                     EventNote::CagesInPlaceOnly);
        }
        rule(Event::Ripe, Event::Graft, Fact::RipeH, 1, note);
        if (out_.given == Given::Open) return;
        const double latest = firstOut(fact(Fact::FirstOutRisk));
        const bool safe = latest >= fact(Fact::RipeH);
        put(Event::LatestMove, latest,
            unknownAge ? EventNote::QueenMayBeOut
            : safe     ? EventNote::None
                       : EventNote::NotEvenRipeSafe);
        out_.latestMove = hoursAfterDown(out_.graft, latest);
        tell(Event::LatestMove, Kind::FirstOfMany, Event::Emergence, Fact::FirstOutRisk,
             plan_.cellsInBox, {Fact::EmergenceSdH});
        put(Event::FirstOut, firstOut(0.05), firstOut(0.5), firstOut(0.95), note);
        tell(Event::FirstOut, Kind::FirstOfMany, Event::Emergence, {}, plan_.cellsInBox,
             {Fact::EmergenceSdH});
    }

    /// Hour of the first queen out; cells that are here now cannot have lost one before.
    [[nodiscard]] double firstOut(double chance) const {
        const double hour = out_.clock.firstOutAt(plan_.cellsInBox, chance);
        return plan_.start == Start::SealedFound || plan_.start == Start::Ripe
                   ? std::max(hour, hourOfMoment(plan_.begin))
                   : hour;
    }

    void queens() {
        const auto& emerged = out_.clock.emerged();
        const bool seen = emergenceSeen().has_value();
        const auto note = seen && plan_.start != Start::Virgin ? EventNote::Observed
                          : out_.clock.heatClamped()           ? EventNote::HeatClamped
                          : plan_.start == Start::SealedFound  ? EventNote::QueenMayBeOut
                                                               : EventNote::None;
        put(Event::Emergence, emerged, note);
        if (seen)
            tell(Event::Emergence, plan_.start == Start::Virgin ? Kind::Entered : Kind::Observed);
        else
            tellDevelopment(Event::Emergence, Fact::EmergenceH, emerged.mean());
        put(Event::Mature, emerged.later(fact(Fact::MatureH)));
        tell(Event::Mature, Kind::Rule, Event::Emergence, Fact::MatureH, fact(Fact::MatureH));

        out_.dueToFly = mating_.dueToFly(emerged);
        auto laying = plan_.mating == Mating::Insemination ? inseminated(emerged)
                                                           : mating_.laying(emerged, out_.graft);
        out_.firstEggs = std::move(laying.eggs);
        out_.neverMates = laying.neverMates;
        out_.weather = laying.weather;
        put(Event::DueToFly, out_.dueToFly);
        tell(Event::DueToFly, Kind::Rule, Event::Emergence, Fact::FirstFlightD,
             out_.dueToFly.mean() - emerged.mean(),
             {Fact::FlightShare1, Fact::FlightShare2, Fact::FlightShare3});
        putEggs(Event::FirstEggs, 0);
        tellFirstEggs();
        looks();
    }

    /// On the day of it, else at the usual age. Eggs come about noon, as after a flight.
    [[nodiscard]] MatingTable::Laying inseminated(const Spread& emerged) const {
        const double later = fact(Fact::EggsAfterFlightD) * 24;
        const auto out = hoursAfter(out_.graft, emerged.at(0.5));
        if (!plan_.inseminated || *plan_.inseminated <= dayOf(out))  // none, or no queen yet
            return {EggHours(emerged.later(fact(Fact::InseminationAgeD) * 24 + later)), 0, false};
        const double hour = hourOfMoment(momentOf(*plan_.inseminated, Hour{14})) + later;
        return {EggHours(std::vector<EggHours::Step>{{hour, 1}}), 0, false};
    }

    void tellFirstEggs() {
        const double later = fact(Fact::EggsAfterFlightD) * 24;
        if (plan_.mating == Mating::Insemination)
            return tell(Event::FirstEggs, Kind::Inseminated, Event::Emergence,
                        Fact::EggsAfterFlightD, later, {Fact::InseminationAgeD});
        if (!out_.weather)
            return tell(Event::FirstEggs, Kind::Rule, Event::Emergence, Fact::FirstEggsD,
                        fact(Fact::FirstEggsD) * 24, {Fact::FirstEggsSdD});
        const auto kind = plan_.stationDays ? Kind::Station : Kind::Weather;
        if (mating_.chain() && !isRecordOnly(*mating_.chain()))
            tell(Event::FirstEggs, kind, Event::DueToFly, Fact::EggsAfterFlightD, later,
                 {Fact::FlyTmaxC, Fact::TmaxSdC, Fact::FlyPersistence, Fact::SecondFlightShare,
                  Fact::LastMatingD});
        else if (mating_.chain())
            tell(Event::FirstEggs, kind, Event::DueToFly, Fact::EggsAfterFlightD, later,
                 {Fact::FlyTmaxC, Fact::FlyWindMs, Fact::FlyRainMm, Fact::SecondFlightShare,
                  Fact::LastMatingD});
        else
            tell(Event::FirstEggs, kind, Event::DueToFly, Fact::EggsAfterFlightD, later,
                 {Fact::FlyTmaxC, Fact::FlyWindMs, Fact::FlyRainMm, Fact::SecondFlightShare,
                  Fact::LastMatingD, Fact::SeasonShiftD});
    }

    void looks() {
        const double emergence = hourOfMoment(likely(Event::Emergence));
        const double byAge = emergence + fact(Fact::FirstLookD) * 24;
        const double byEggs = out_.firstEggs.at(fact(Fact::LikelyLevel));
        const double look = std::max(byAge, byEggs);
        out_.levelEggs = hoursAfter(out_.graft, byEggs);
        put(Event::FirstLook, look);
        if (byEggs > byAge)
            tell(Event::FirstLook, Kind::LaterOf, Event::FirstEggs, Fact::LikelyLevel,
                 byEggs - emergence, {Fact::FirstLookD});
        else
            tell(Event::FirstLook, Kind::Rule, Event::Emergence, Fact::FirstLookD,
                 fact(Fact::FirstLookD) * 24, {Fact::LikelyLevel});
        const double toSealed = fact(Fact::EggsToSealedD) * 24;
        putEggs(Event::SealedBrood, toSealed);
        tell(Event::SealedBrood, Kind::Rule, Event::FirstEggs, Fact::EggsToSealedD, toSealed);
        // A fixed figure gives the likely day; weather gives the day of the level asked for.
        const double sealed =
            out_.weather ? byEggs + toSealed : hourOfMoment(likely(Event::SealedBrood));
        const std::array byRule{look, std::max(look, sealed),
                                emergence + fact(Fact::CatchAgeD) * 24};
        for (std::size_t i = 0; i < byRule.size(); ++i)
            out_.catchBy[i] = hoursAfter(out_.graft, byRule[i]);
        put(Event::Catch, byRule[static_cast<std::size_t>(plan_.catchRule)]);
        switch (plan_.catchRule) {
            case CatchRule::Eggs:
                tell(Event::Catch, Kind::Rule, Event::FirstLook);
                break;
            case CatchRule::SealedBrood:
                tell(Event::Catch, Kind::LaterOf,
                     byRule[1] > look ? Event::SealedBrood : Event::FirstLook,
                     out_.weather ? std::optional(Fact::LikelyLevel) : std::nullopt);
                break;
            case CatchRule::Age:
                tell(Event::Catch, Kind::Rule, Event::Emergence, Fact::CatchAgeD,
                     fact(Fact::CatchAgeD) * 24);
                break;
        }
    }

    const DatePlan& plan_;
    const Facts& facts_;
    const MatingTable& mating_;
    Trace* trace_;
    BatchDates out_;
};

}  // namespace

namespace {

/// Hours from the graft of a larva of likely age to its cell's sealing.
double sealingHour(const Facts& facts) {
    return facts[Fact::SealingH] - facts[Fact::EggH] -
           (facts[Fact::LarvaFromH] + facts[Fact::LarvaToH]) / 2;
}

}  // namespace

Moment sealingOf(const DatePlan& plan, const Facts& facts) {
    if (!hasGraft(plan.start)) return Moment::min();
    const Moment graft = plan.graftSeen.value_or(reckonedGraft(plan.start, plan.begin, facts));
    return hoursAfter(graft, sealingHour(facts));
}

Given givenAs(const DatePlan& plan, const Facts& facts) {
    if (plan.start == Start::Virgin) return Given::Virgin;
    if (!hasGraft(plan.start)) return Given::Sealed;
    const bool open = plan.transfer
                          ? plan.leaves.value_or(*plan.transfer) < sealingOf(plan, facts)
                          : !plan.steps.empty() && plan.steps.back().toHour < sealingHour(facts);
    return open ? Given::Open : Given::Sealed;
}

BatchDates datesOf(const DatePlan& plan, const Facts& facts, const MatingTable& mating,
                   Trace* trace) {
    return Dates(plan, facts, mating, trace).list();
}

}  // namespace tenthday
