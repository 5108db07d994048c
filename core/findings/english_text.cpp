#include <cmath>

#include "calendar/plain_words.h"
#include "findings/finding.h"

namespace tenthday {
namespace {

std::string whole(double value) { return std::to_string(std::lround(value)); }

std::string cells(long count) { return std::to_string(count) + (count == 1 ? " cell" : " cells"); }

std::string nucs(long count) { return std::to_string(count) + (count == 1 ? " nuc" : " nucs"); }

std::string in(const Finding& f) { return f.builderLabel.empty() ? "" : " in " + f.builderLabel; }

std::string tooMany(const Finding& f) {
    std::string text = whole(f.count) + " ripe on " + plainDay(f.day) + ", " +
                       nucs(std::lround(f.limit)) +
                       " ready: " + cells(std::lround(f.count - f.limit)) + " too many";
    const auto likely = std::lround(std::floor(f.numbers.likely + 1e-6));
    const std::string before = plainDay(f.day - Days{1});
    if (f.numbers.canStock > 0)
        text += "; " + std::to_string(f.numbers.canStock) + " can be stocked by " + before;
    if (likely > 0) text += "; likely " + std::to_string(likely) + " more if caught by " + before;
    if (f.numbers.needsBrood > 0)
        text += "; " + std::to_string(f.numbers.needsBrood) +
                (f.numbers.needsBrood == 1 ? " needs" : " need") + " open brood first";
    return text;
}

std::string_view work(Event event) {
    switch (event) {
        case Event::Confine:
            return "confine the breeder queen";
        case Event::FreeBreeder:
            return "free the breeder queen";
        case Event::MakeUpBuilder:
            return "make up the builder";
        case Event::Graft:
            return "graft";
        case Event::ToFinisher:
            return "cells to the finisher";
        default:
            return "cells into the nucs";
    }
}

std::string_view notFree(const Finding& f) {
    switch (f.why) {
        case NotReady::HoldsCell:
            return "holds a cell then";
        case NotReady::HoldsVirgin:
            return "holds a virgin then";
        case NotReady::DueToFly:
            return "holds a queen due to fly";
        case NotReady::Laying:
        case NotReady::AwaitingCatch:
            return "holds a laying queen then";
        case NotReady::NeedsBrood:
            return "needs open brood first";
        case NotReady::NotStocked:
            return "is not stocked then";
        default:
            return "is given up, moved away or divided anew before the catch";
    }
}

std::string_view catchOn(const Finding& f) {
    return f.catchRule == CatchRule::Age ? "the age for catching" : "sealed brood";
}

/// What leaves a yard under a hold.
std::string leftOf(const Finding& f) {
    if (!f.event) return "bees, brood or a box";
    return f.event == Event::DueToFly ? "nucs on the way to or from a mating station" : "cells";
}

}  // namespace

std::string englishText(const Finding& f) {
    switch (f.kind) {
        case FindingKind::BoxOverfull:
            return whole(f.count) + (f.sealed ? " sealed" : " started") + " cells expected" +
                   in(f) + ", room for " + whole(f.limit) +
                   (f.dearth ? " in the dearth: give fewer, or feed" : "") +
                   (f.sealed || f.dearth ? "" : ": give fewer");
        case FindingKind::TooManyCells:
            return tooMany(f);
        case FindingKind::QueenOutBeforeMove:
            return "a queen can be out" + in(f) + " on " + plainMoment(f.moment) +
                   ", the cells leave on " + plainMoment(f.until) + ": move them before " +
                   plainPart(f.moment) + ", or cage them in place on day 9";
        case FindingKind::FragileMove:
            return "cells are moved on " + plainMoment(f.moment) + ", day " + whole(f.count) +
                   " after the graft, when they are fragile: move them by day 4 or from day 10";
        case FindingKind::WildQueenOverdue:
            return "no look for wild cells" + in(f) + ": a wild queen can be out from " +
                   plainMoment(f.moment) + ": look today, or cage the cells in place";
        case FindingKind::WorkOnDayOff:
            return std::string(work(f.event.value_or(Event::Ripe))) + " falls on a day off, " +
                   plainMoment(f.moment);
        case FindingKind::BuilderNotFree:
            if (!f.freeFrom)
                return "stands" + in(f) + " on " + plainMoment(f.moment) +
                       ", after the last day of that builder";
            if (f.otherLabel.empty())
                return "stands" + in(f) + " on " + plainMoment(f.moment) +
                       ", before the first day of that builder, " + plainDay(*f.freeFrom);
            return "comes" + (f.builderLabel.empty() ? "" : " into " + f.builderLabel) + " on " +
                   plainMoment(f.moment) + ", after batch " + f.otherLabel +
                   " the box is free from " + plainDay(*f.freeFrom);
        case FindingKind::NucNotFree:
            return (f.count == 1 ? "its cell is" : whole(f.count) + " of its cells are") +
                   " planned into " + f.nucs + " on " + plainDay(f.day) + ", which " +
                   (f.count == 1 ? "" : "will not be free: the first ") + std::string(notFree(f));
        case FindingKind::CatchHoldsNucs:
            return nucs(std::lround(f.count)) + (f.count == 1 ? " waits for " : " wait for ") +
                   std::string(catchOn(f)) + ", " + std::to_string(f.nucDays) +
                   " nuc days more each; caught on eggs they would be ready for batch " +
                   f.otherLabel + ", which has " + cells(std::lround(f.limit)) + " too many";
        case FindingKind::BeyondLimits:
            return std::string(isFirst(f.graftLimit->limit) ? "is grafted before the first"
                                                            : "is grafted after the last") +
                   " worth while, " + plainDay(*f.graftLimit->day) + ": " +
                   englishReason(*f.graftLimit);
        case FindingKind::NoMatingDays:
            return f.count > 0 ? "is at the mating station, or inseminated, on no day on which its "
                                 "queens can mate"
                               : "goes to a mating station, and the days its nucs are there are "
                                 "not given";
        case FindingKind::HungryBuilder:
            return "is grafted" + in(f) + " on " + plainMoment(f.moment) +
                   " in a dearth and no feed is noted: about " + whole(f.limit * 100) +
                   " % of the grafts are started: feed before the graft";
        case FindingKind::FewDrones:
            if (f.freeFrom)
                return "virgins are due to fly there from " + plainDay(dayOf(f.moment)) +
                       ", and its drones are mature only from " + plainDay(*f.freeFrom);
            return "about " + whole(f.virgins) + " virgins are due to fly there on " +
                   plainDay(f.day) + ": " + whole(f.limit) + " strong drone colonies are wanted, " +
                   whole(f.count) + (f.count == 1 ? " is" : " are") + " noted";
        case FindingKind::LeavesHold:
            return leftOf(f) + (f.count > 0 ? " left " : " would leave ") + f.otherLabel +
                   ", which is held until " + plainDay(dayOf(f.until)) + " for disease: " +
                   (f.count > 0 ? "tell the bee inspector"
                                : "leave them there, and ask the bee inspector");
        case FindingKind::ShipWeather:
            return whole(f.count) + " °C while its queens are on the way, who should have it " +
                   (f.count < f.limit ? "no colder" : "no warmer") + " than " + whole(f.limit) +
                   " °C: wait, or pack for it";
        case FindingKind::BankFull:
            return whole(f.count) + " queens are in the bank, which keeps up to " + whole(f.limit) +
                   ": set up another bank colony";
        case FindingKind::BankLong:
            return whole(f.count) + (f.count == 1 ? " queen is" : " queens are") +
                   " in the bank for longer than " + whole(f.limit) +
                   " days: use these queens first";
        case FindingKind::LarvaeNotSeen:
            return f.count > 0 ? "queen " + f.otherLabel +
                                     " was seen without larvae fit to graft, the graft is due on " +
                                     plainMoment(f.moment) + ": take a queen in reserve"
                               : "nobody has looked whether queen " + f.otherLabel +
                                     " has larvae fit to graft, the graft is due on " +
                                     plainMoment(f.moment);
        case FindingKind::YardFull:
            return cells(std::lround(f.count)) + (f.count == 1 ? " is" : " are") + " planned for " +
                   f.otherLabel + ", where " + nucs(std::lround(f.limit)) +
                   (f.limit == 1 ? " is" : " are") +
                   " free for them: give fewer there, or stock more";
    }
    return {};
}

}  // namespace tenthday
