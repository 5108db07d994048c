#include "supply/what_if.h"

#include <algorithm>
#include <set>

#include "records/relations.h"
#include "records/verbs.h"

namespace tenthday {
namespace {

/// Edits a snapshot that is thrown away: rows are put straight into its tables.
class Supposed {
public:
    explicit Supposed(Snapshot snapshot) : snapshot_(std::move(snapshot)) {}

    template <class Row>
    void add(Row row) {
        row.id = Id<Row>{newId()};
        const auto made = std::make_shared<const Row>(std::move(row));
        snapshot_.setAll(snapshot_.all<Row>().with(nullptr, made));
    }
    template <class Row>
    void edit(const Ptr<Row>& before, Row row) {
        const auto made = std::make_shared<const Row>(std::move(row));
        snapshot_.setAll(snapshot_.all<Row>().with(before, made));
    }
    template <class Row>
    void erase(const Ptr<Row>& row) {
        snapshot_.setAll(snapshot_.all<Row>().with(row, nullptr));
    }
    [[nodiscard]] Uuid newId() { return {kSupposed, ++count_}; }

    [[nodiscard]] Snapshot& snapshot() { return snapshot_; }

private:
    static constexpr std::uint64_t kSupposed = 0xFFFF'FFFF'FFFF'FFFF;  // no id of a book

    Snapshot snapshot_;
    std::uint64_t count_ = 0;
};

void makeCold(const DayWindow& days, Supposed& supposed) {
    for (Day day = days.first; day <= days.last; day += Days{1}) {
        Ptr<WeatherDay> known;
        for (const auto& row : supposed.snapshot().all<WeatherDay>())
            if (row->date == day) known = row;
        WeatherDay cold = known ? *known : WeatherDay{};
        cold.date = day;
        cold.flew = false;
        known ? supposed.edit(known, cold) : supposed.add(cold);
    }
}

Outcome outcomeOf(Id<Batch> batch, OutcomeKind kind, Day day) {
    Outcome outcome;
    outcome.batch = batch;
    outcome.kind = kind;
    outcome.day = day;
    return outcome;
}

void loseBuilder(const WhatIf::BuilderLost& lost, const Timelines& timelines, Supposed& supposed) {
    for (const auto& [id, timeline] : timelines) {
        std::set<std::int32_t> bars;
        for (const auto& load : timeline->loads)
            if (load.builder == lost.builder && load.span.days().last >= lost.from)
                bars.insert(load.bars.begin(), load.bars.end());
        if (bars.empty()) continue;
        const Day day = std::max(lost.from, dayOf(timeline->graft));
        if (bars.size() == supposed.snapshot().all<BatchBar>().of(id.uuid).size()) {
            supposed.add(outcomeOf(id, OutcomeKind::Spent, day));
            continue;
        }
        for (const auto bar : bars) {
            auto none = outcomeOf(id, OutcomeKind::Ripe, day);
            none.bar = bar;
            none.count = Cells{0};
            supposed.add(none);
        }
    }
}

/// What is lost with a nuc, the more the worse; nothing where no bees are in it.
std::optional<int> harmOf(NucState state) {
    switch (state) {
        case NucState::NotStocked:
        case NucState::Spent:
            return std::nullopt;
        case NucState::Ready:
        case NucState::NoQueen:
        case NucState::Caught:
        case NucState::DroneLayer:
            return 0;
        case NucState::Cell:
            return 1;
        case NucState::Virgin:
        case NucState::DueToFly:
            return 2;
        case NucState::Laying:
            return 3;
        case NucState::JudgedGood:
            return 4;
    }
    return std::nullopt;
}

/// The nucs that are robbed out, or why there are not so many.
Result<std::vector<const SideOutlook*>> robbed(const Snapshot& snapshot, const NucOutlook& nucs,
                                               const WhatIf::NucsRobbed& what) {
    std::vector<std::pair<int, const SideOutlook*>> there;
    for (const auto& side : nucs.sides) {
        const auto yard = side.yardOn(what.from);
        if (!yard || !side.stands.contains(what.from) || (what.yard && yard != what.yard)) continue;
        if (const auto harm = harmOf(sideOn(side, what.from, snapshot.today()).state))
            there.emplace_back(*harm, &side);
    }
    if (what.count < 1) return Error{"one nuc at least is needed"};
    if (there.size() < static_cast<std::size_t>(what.count))
        return Error{"only " + std::to_string(there.size()) + " nucs with bees stand there on " +
                     toText(what.from)};
    std::stable_sort(there.begin(), there.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<const SideOutlook*> sides;
    for (std::int32_t i = 0; i < what.count; ++i)
        sides.push_back(there[static_cast<std::size_t>(i)].second);
    return sides;
}

/// The cell or queen that is in a nuc on a day is lost. One that no placement names is named now.
void loseRound(const SideOutlook& side, const SideRound& round, Day day, Supposed& supposed) {
    if (!round.named) {
        Placement placement;
        placement.batch = round.batch;
        placement.side = side.side->id;
        placement.day = round.transferDay;
        placement.hour = hourOf(round.timeline->hold.transfer);
        supposed.add(placement);
    }
    auto spent = outcomeOf(round.batch, OutcomeKind::Spent, day);
    spent.side = side.side->id;
    supposed.add(spent);
}

/// The nuc stands nowhere from a day on: it gets a box of its own, that goes.
void takeAway(const SideOutlook& side, Day from, Supposed& supposed) {
    Box box = *side.box;
    box.id = Id<Box>{supposed.newId()};
    auto& snapshot = supposed.snapshot();
    snapshot.setAll(snapshot.all<Box>().with(nullptr, std::make_shared<const Box>(box)));
    for (const auto& stay : side.stays)
        if (stay.from < from) supposed.add(BoxStay{{}, 1, box.id, stay.yard, stay.from});
    supposed.add(BoxStay{{}, 1, box.id, {}, from});
    BoxLayout layout = *snapshot.find(side.side->layout);
    layout.id = Id<BoxLayout>{supposed.newId()};
    layout.box = box.id;
    snapshot.setAll(
        snapshot.all<BoxLayout>().with(nullptr, std::make_shared<const BoxLayout>(layout)));
    NucSide moved = *side.side;
    moved.layout = layout.id;
    supposed.edit(side.side, moved);
}

void rob(const std::vector<const SideOutlook*>& sides, Day from, Supposed& supposed) {
    for (const auto* side : sides) {
        for (const auto& round : side->rounds)
            if ((round.transferDay < from || round.done) && round.catchDay >= from)
                loseRound(*side, round, from, supposed);
        const auto placements = supposed.snapshot().all<Placement>();
        for (const auto& placement : placements)
            if (placement->side == side->side->id && !placement->done && placement->day >= from)
                supposed.erase(placement);
        takeAway(*side, from, supposed);
    }
}

Result<void> setTake(double take, Supposed& supposed) {
    const auto least =
        std::min(take, supposed.snapshot().facts()[Fact::AcceptedDearth]);  // no more than fed
    for (const auto& [fact, share] :
         {std::pair{Fact::Accepted, take}, {Fact::AcceptedDearth, least}}) {
        const auto set =
            setFact(supposed.snapshot(), fact, share, Id<FactOverride>{supposed.newId()});
        if (!set) return set.error();
        auto next = applied(supposed.snapshot(), set.value());
        if (!next) return next.error();
        supposed.snapshot() = std::move(next).value();
    }
    return {};
}

}  // namespace

Result<Snapshot> snapshotIf(const Snapshot& snapshot, const Timelines& timelines,
                            const NucOutlook& nucs, const WhatIf& what) {
    Supposed supposed(snapshot);
    if (what.cold) makeCold(*what.cold, supposed);
    if (what.builder) {
        if (!snapshot.find(what.builder->builder)) return Error{"there is no such builder"};
        loseBuilder(*what.builder, timelines, supposed);
    }
    if (what.nucs) {
        const auto sides = robbed(snapshot, nucs, *what.nucs);
        if (!sides) return sides.error();
        rob(sides.value(), what.nucs->from, supposed);
    }
    if (what.take)
        if (auto set = setTake(*what.take, supposed); !set) return set.error();
    return std::move(supposed.snapshot());
}

WhatIfAnswer compared(SeasonSupply& before, SeasonSupply& after) {
    WhatIfAnswer answer;
    const auto then = after.orders();
    for (auto& order : before.orders()) {
        const auto same = std::find_if(then.begin(), then.end(), [&](const auto& other) {
            return other.order->id == order.order->id;
        });
        if (same != then.end()) answer.orders.push_back({std::move(order), *same});
    }
    const Day end = before.snapshot().season().last + kLeadIn;
    answer.queensBefore = before.expectedBy(end);
    answer.queensAfter = after.expectedBy(end);
    return answer;
}

}  // namespace tenthday
