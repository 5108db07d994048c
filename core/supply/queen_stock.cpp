#include "supply/queen_stock.h"

#include <algorithm>
#include <cmath>

#include "supply/order_needs.h"

namespace tenthday {

double QueenPart::meanShareOn(Day day) const {
    const auto shares = sharesOn(day);
    const auto rows = eggs->rows();
    double sum = 0;
    for (std::size_t row = 0; row < rows; ++row) sum += shares.in(row);
    return sum / static_cast<double>(rows);
}

KnownQueens QueenPart::knownOn(Day day) const {
    KnownQueens sum{day, 0, 0};
    for (const auto& queens : known) {
        if (queens.day > day) break;
        sum.laying += queens.laying;
        sum.certain += queens.certain;
    }
    return sum;
}

CountSpread QueenPart::caught(double share, Day day) const {
    const auto seen = knownOn(day);
    return passed(passed(mated, {share, 0}).shifted(seen.laying), judged).shifted(seen.certain);
}

double QueenPart::meanCaught(double share, Day day) const {
    const auto seen = knownOn(day);
    return (mated.mean() * share + seen.laying) * judged.mean + seen.certain;
}

Day QueenPart::lastDay() const {
    Day last = mated.last() > 0 ? std::max(from, eggs->last() + toCatch) : kFirstDay;
    if (!known.empty()) last = std::max(last, known.back().day);
    return last;
}

bool QueenPart::isCertainOn(Day day) const {
    const bool isOpen = mated.last() > 0 && day >= std::max(from, eggs->first + toCatch);
    return !isOpen && knownOn(day).laying == 0;
}

CountSpread matedOf(const RaisedPart& part, const TakenCells& taken) {
    auto cells = CountSpread(part.unseen);
    if (!part.isSettled) {
        const auto& away = part.elsewhere;
        const auto gone = std::max(away.sold, taken.cells) + away.kept + away.other;
        cells =
            part.ripe.without(gone + part.looked).cappedAt(std::max(part.room - part.looked, 0));
    }
    const auto kept =
        static_cast<std::int32_t>(std::lround(part.elsewhere.kept * part.emergedShare()));
    const auto virgins = part.emerged(cells).without(std::max(taken.virgins - kept, 0));
    return passed(virgins, part.rates[LossStage::Mated]);
}

std::vector<QueenPart> boughtQueens(const Snapshot& snapshot) {
    const auto none = std::make_shared<const EggDays>(eggsOn(kLastDay));
    std::vector<QueenPart> parts;
    for (const auto& lot : snapshot.all<QueenLot>()) {
        if (!isOfSeason(snapshot, lot->day, kLeadIn)) continue;
        QueenPart part;
        part.line = lot->line;
        part.isProven = lot->proven;
        part.from = lot->day;
        part.eggs = none;
        part.known.push_back({lot->day, 0, lot->count});
        parts.push_back(std::move(part));
    }
    return parts;
}

QueenMaker::QueenMaker(const Snapshot& snapshot, const MatingTable& mating)
    : snapshot_(&snapshot), mating_(&mating), open_(snapshot.facts(), mating) {}

std::shared_ptr<const EggDays> QueenMaker::eggsOf(const RaisedPart& part) {
    const auto& timeline = *part.timeline;
    const auto batch = snapshot_->find(part.batch);
    if (batch->mating == Mating::Insemination) {
        const auto* eggs = timeline.find(Event::FirstEggs);
        const Day day = eggs == nullptr ? timeline.hold.lookDay : dayOf(eggs->likely);
        return std::make_shared<const EggDays>(eggsOn(day));
    }
    const auto& emerged = timeline.clock.emerged();
    const auto stays = snapshot_->all<MatingStay>().of(part.batch.uuid);
    if (batch->mating == Mating::Open || stays.empty()) {
        Out out{timeline.graft, {}};
        for (const auto& share : emergenceShares(emerged, timeline.graft))
            out.second.emplace_back(share.day, share.share);
        auto& eggs = alike_[std::move(out)];
        if (!eggs) eggs = std::make_shared<const EggDays>(open_.eggs(emerged, timeline.graft));
        return eggs;
    }
    std::vector<DayWindow> days;
    for (const auto& stay : stays) days.push_back({stay->from, stay->until});
    const auto station = mating_->atStation(days, snapshot_->facts());
    return std::make_shared<const EggDays>(
        SeasonEggs(snapshot_->facts(), station).eggs(emerged, timeline.graft));
}

EggDays eggsAfter(const EggDays& eggs, Day noEggsOn, double lays) {
    auto ahead = eggs;
    for (std::size_t row = 0; row < eggs.rows(); ++row) {
        const double before = eggs.by(noEggsOn, row);
        for (std::size_t day = 0; day < eggs.days; ++day) {
            auto& share = ahead.shares[row * eggs.days + day];
            const double later = std::max(static_cast<double>(share) - before, 0.0);
            share = static_cast<float>(later > 0 ? lays * later / (1 - lays * before) : 0);
        }
    }
    return ahead;
}

QueenPart QueenMaker::queensOf(const RaisedPart& part, CatchRule rule) const {
    const auto& facts = snapshot_->facts();
    const auto& hold = part.timeline->hold;
    QueenPart queens;
    queens.batch = part.batch;
    queens.line = part.line;
    queens.isProven = rule != CatchRule::Eggs;
    queens.from = std::max(hold.catchBy[static_cast<std::size_t>(rule)], snapshot_->today());
    if (queens.isProven) {
        queens.toCatch = Days{static_cast<int>(std::lround(facts[Fact::EggsToSealedD]))};
        queens.judged = part.rates[LossStage::JudgedGood];
    }
    return queens;
}

QueenStock QueenMaker::stock(std::span<const RaisedPart> raised, std::span<const TakenCells> taken,
                             std::optional<CatchRule> rule) {
    QueenStock stock;
    stock.seasons = open_.seasons();
    const auto none = std::make_shared<const EggDays>(eggsOn(kLastDay));
    std::shared_ptr<const EggDays> eggs;
    for (std::size_t i = 0; i < raised.size(); ++i) {
        const auto& part = raised[i];
        if (i == 0 || raised[i - 1].batch != part.batch) eggs = nullptr;
        auto mated = matedOf(part, taken[i]);
        // Most batches that are over have no queen nobody knows of.
        if (!eggs && (mated.last() > 0 || !part.waiting.empty())) eggs = eggsOf(part);
        const auto bare = queensOf(part, rule.value_or(part.timeline->hold.catchRule));
        const double fair = part.rates[LossStage::Mated].mean;
        for (const auto& waiting : part.waiting) {
            auto queens = bare;
            queens.mated = CountSpread(waiting.nucs);
            const double lays = waiting.isOut ? fair : part.emergedShare() * fair;
            queens.eggs = std::make_shared<const EggDays>(eggsAfter(*eggs, waiting.seen, lays));
            stock.parts.push_back(std::move(queens));
        }
        auto queens = bare;
        queens.mated = std::move(mated);
        queens.known = part.known;
        std::stable_sort(queens.known.begin(), queens.known.end(),
                         [](const auto& a, const auto& b) { return a.day < b.day; });
        queens.eggs = eggs ? eggs : none;
        stock.parts.push_back(std::move(queens));
    }
    return stock;
}

}  // namespace tenthday
