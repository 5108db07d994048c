#include "supply/queen_stock.h"

#include <algorithm>
#include <cmath>

namespace tenthday {

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
    const auto virgins =
        part.emerged(cells).without(std::max(taken.virgins - kept, 0)).shifted(part.virgins);
    return passed(virgins, part.rates[LossStage::Mated]);
}

QueenMaker::QueenMaker(const Snapshot& snapshot, const MatingTable& mating)
    : snapshot_(&snapshot), mating_(&mating), open_(snapshot.facts(), mating) {}

std::shared_ptr<const EggDays> QueenMaker::eggsOf(const RaisedPart& part) const {
    const auto& timeline = *part.timeline;
    const auto batch = snapshot_->find(part.batch);
    if (batch->mating == Mating::Insemination) {
        const auto* eggs = timeline.find(Event::FirstEggs);
        const Day day = eggs == nullptr ? timeline.hold.lookDay : dayOf(eggs->likely);
        return std::make_shared<const EggDays>(eggsOn(day));
    }
    const auto& emerged = timeline.clock.emerged();
    const auto stays = snapshot_->all<MatingStay>().of(part.batch.uuid);
    if (batch->mating == Mating::Open || stays.empty())
        return std::make_shared<const EggDays>(open_.eggs(emerged, timeline.graft));
    std::vector<DayWindow> days;
    for (const auto& stay : stays) days.push_back({stay->from, stay->until});
    const auto station = mating_->atStation(days, snapshot_->facts());
    return std::make_shared<const EggDays>(
        SeasonEggs(snapshot_->facts(), station).eggs(emerged, timeline.graft));
}

QueenStock QueenMaker::stock(std::span<const RaisedPart> raised, std::span<const TakenCells> taken,
                             std::optional<CatchRule> rule) const {
    QueenStock stock;
    stock.seasons = open_.seasons();
    const Days toSealed{static_cast<int>(std::lround(snapshot_->facts()[Fact::EggsToSealedD]))};
    const RaisedPart* before = nullptr;
    for (std::size_t i = 0; i < raised.size(); ++i) {
        const auto& part = raised[i];
        const auto& hold = part.timeline->hold;
        const auto by = rule.value_or(hold.catchRule);
        const bool isSame = before != nullptr && before->batch == part.batch;
        QueenPart queens;
        queens.batch = part.batch;
        queens.line = part.line;
        queens.isProven = by != CatchRule::Eggs;
        queens.from = std::max(hold.catchBy[static_cast<std::size_t>(by)], snapshot_->today());
        queens.toCatch = queens.isProven ? toSealed : Days{0};
        queens.mated = matedOf(part, taken[i]);
        if (queens.isProven) queens.judged = part.rates[LossStage::JudgedGood];
        queens.known = part.known;
        std::stable_sort(queens.known.begin(), queens.known.end(),
                         [](const auto& a, const auto& b) { return a.day < b.day; });
        queens.eggs = isSame ? stock.parts.back().eggs : eggsOf(part);
        stock.parts.push_back(std::move(queens));
        before = &part;
    }
    return stock;
}

}  // namespace tenthday
