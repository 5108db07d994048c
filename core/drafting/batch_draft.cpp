#include "drafting/batch_draft.h"

#include <algorithm>

#include "base/natural_order.h"

namespace tenthday {
namespace {

template <class Row, class Member>
std::vector<Ptr<Row>> inOrder(std::span<const Ptr<Row>> rows, Member member) {
    std::vector<Ptr<Row>> sorted(rows.begin(), rows.end());
    std::stable_sort(sorted.begin(), sorted.end(),
                     [&](const auto& a, const auto& b) { return (*a).*member < (*b).*member; });
    return sorted;
}

std::vector<Ptr<Step>> stepsOf(const Snapshot& snapshot, Id<Method> method) {
    return inOrder(snapshot.all<Step>().of(method.uuid), &Step::step);
}

/// The newest count of started cells of one bar; of a lone bar also one of the whole batch.
std::optional<Cells> takenOf(const Snapshot& snapshot, Id<Batch> batch, std::int32_t bar,
                             bool alone) {
    const auto row = takeCountOf(snapshot, batch, bar, alone);
    return row ? row->count : std::nullopt;
}

/// The newest batch that starts on the day or before; else the first one after it; or null.
Ptr<Batch> modelFor(const Snapshot& snapshot, Day day) {
    Ptr<Batch> model;
    for (const auto& batch : snapshot.all<Batch>()) {
        const auto before = [&](const Batch& b) { return b.day <= day; };
        if (!model || (before(*batch) ? !before(*model) || batch->day > model->day
                                      : !before(*model) && batch->day < model->day))
            model = batch;
    }
    return model;
}

/// Builders for all steps of a method.
std::vector<std::optional<Id<Builder>>> buildersFor(const Snapshot& snapshot, Id<Method> method,
                                                    Day day) {
    std::vector<std::optional<Id<Builder>>> builders;
    for (const auto& step : stepsOf(snapshot, method))
        builders.push_back(builderFor(snapshot, step->where, day));
    return builders;
}

/// The first method, by label, all of whose steps have a builder; else the first that has most.
Id<Method> methodServed(const Snapshot& snapshot, Day day) {
    std::vector<Ptr<Method>> methods(snapshot.all<Method>().begin(), snapshot.all<Method>().end());
    std::sort(methods.begin(), methods.end(),
              [](const auto& a, const auto& b) { return naturalLess(a->label, b->label); });
    Id<Method> best;
    double most = -1;
    for (const auto& method : methods) {
        const auto builders = buildersFor(snapshot, method->id, day);
        const auto served = std::count_if(builders.begin(), builders.end(),
                                          [](const auto& b) { return b.has_value(); });
        const double share =
            builders.empty() ? 0
                             : static_cast<double>(served) / static_cast<double>(builders.size());
        if (share > most) most = share, best = method->id;
    }
    return best;
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }

/// The number at the end of a label and one more; it grows in front: "N9" -> "N10", "09" -> "10".
std::string countedOn(std::string label) {
    auto at = label.size();
    while (at > 0 && label[at - 1] == '9') label[--at] = '0';
    if (at == 0 || !isDigit(label[at - 1])) return label.substr(0, at) + "1" + label.substr(at);
    ++label[at - 1];
    return label;
}

}  // namespace

Ptr<Outcome> takeCountOf(const Snapshot& snapshot, Id<Batch> batch, std::int32_t bar, bool alone) {
    Ptr<Outcome> newest;
    for (const auto& outcome : snapshot.all<Outcome>().of(batch.uuid)) {
        const bool mine = outcome->bar == bar || (alone && !outcome->bar);
        if (outcome->kind == OutcomeKind::TakeCount && mine && outcome->count &&
            (!newest || outcome->day >= newest->day))
            newest = outcome;
    }
    return newest;
}

bool standsOn(const Builder& builder, Day day) {
    return builder.from <= day && (!builder.until || day <= *builder.until);
}

bool isBreederOn(const Queen& queen, Day day) {
    return queen.breederFrom && *queen.breederFrom <= day &&
           (!queen.breederUntil || day <= *queen.breederUntil);
}

namespace {

/// A bar of an earlier batch, once more: without what is retired by then.
void renew(const Snapshot& snapshot, Id<Method> method, Day day, BarDraft& bar) {
    bar.taken.reset();
    bar.number = 0;
    const auto queen = bar.breeder ? snapshot.find(*bar.breeder) : nullptr;
    if (queen && !isBreederOn(*queen, day)) bar.breeder.reset();
    const auto steps = stepsOf(snapshot, method);
    for (std::size_t i = 0; i < bar.steps.size() && i < steps.size(); ++i) {
        const auto builder = bar.steps[i] ? snapshot.find(*bar.steps[i]) : nullptr;
        if (builder && !standsOn(*builder, day))
            bar.steps[i] = builderFor(snapshot, steps[i]->where, day);
    }
}

}  // namespace

std::vector<std::int32_t> barNumbers(const Snapshot& snapshot, const BatchDraft& draft) {
    std::int32_t last = 0;
    for (const auto& bar : draft.bars) last = std::max(last, bar.number);
    for (const auto& bar : snapshot.all<BatchBar>().of(draft.id.uuid))
        last = std::max(last, bar->bar);
    for (const auto& outcome : snapshot.all<Outcome>().of(draft.id.uuid))
        last = std::max(last, outcome->bar.value_or(0));
    std::vector<std::int32_t> numbers;
    const auto isFree = [&](std::int32_t number) {
        return number > 0 && std::find(numbers.begin(), numbers.end(), number) == numbers.end();
    };
    for (const auto& bar : draft.bars) numbers.push_back(isFree(bar.number) ? bar.number : ++last);
    return numbers;
}

std::string nextLabel(const Snapshot& snapshot) {
    std::string label;
    for (const auto& batch : snapshot.all<Batch>())
        if (label.empty() || naturalLess(label, batch->label)) label = batch->label;
    if (label.empty()) label = "0";
    if (!isDigit(label.back())) label += " 0";
    do {
        label = countedOn(label);
    } while (findByLabel<Batch>(snapshot, label) || snapshot.isLabelOfOtherSeason(label));
    return label;
}

std::optional<Id<Builder>> builderFor(const Snapshot& snapshot, BuilderKind kind, Day day) {
    Ptr<Builder> found;
    for (const auto& builder : snapshot.all<Builder>()) {
        if (builder->kind == kind && standsOn(*builder, day) &&
            (!found || naturalLess(builder->label, found->label)))
            found = builder;
    }
    return found ? std::optional(found->id) : std::nullopt;
}

BatchDraft newDraft(const Snapshot& snapshot, Day day, Id<Batch> id) {
    BatchDraft draft;
    if (const auto model = modelFor(snapshot, day)) {
        draft = draftOf(snapshot, model->id);
        draft.start = Start::Graft;
        draft.note.clear();
        for (auto& bar : draft.bars) renew(snapshot, draft.method, day, bar);
        for (auto& stay : draft.stays) stay.id = {};
    } else {
        draft.method = methodServed(snapshot, day);
        draft.makeUp = MakeUpPlan::WithoutOpenBrood;
    }
    draft.id = id;
    draft.day = day;
    draft.label = nextLabel(snapshot);
    if (draft.bars.empty())
        draft.bars.push_back({0,
                              {},
                              Cells{static_cast<int>(snapshot.facts()[Fact::RoomFinisher])},
                              buildersFor(snapshot, draft.method, day),
                              {}});
    return draft;
}

Day plannedGraft(const Snapshot& snapshot, const BatchDraft& draft) {
    const auto begin = momentOf(draft.day, draft.hour);
    return dayOf(reckonedGraft(draft.start, begin, snapshot.facts()));
}

BatchDraft draftOf(const Snapshot& snapshot, Id<Batch> id) {
    const auto batch = snapshot.find(id);
    BatchDraft draft;
    draft.id = id;
    draft.label = batch->label;
    draft.start = batch->start;
    draft.day = batch->day;
    draft.hour = batch->hour;
    draft.larvaFromH = batch->larvaFromH;
    draft.larvaToH = batch->larvaToH;
    draft.method = batch->method;
    draft.mating = batch->mating;
    draft.catchRule = batch->catchRule;
    draft.note = batch->note;
    const auto bars = inOrder(snapshot.all<BatchBar>().of(id.uuid), &BatchBar::bar);
    const auto steps = stepsOf(snapshot, batch->method);
    for (const auto& bar : bars) {
        BarDraft one{bar->bar, bar->breeder, bar->cells, {}, {}};
        one.steps.resize(steps.size());
        for (const auto& load : snapshot.all<BatchLoad>().of(id.uuid))
            for (std::size_t i = 0; i < steps.size(); ++i)
                if (load->bar == bar->bar && load->step == steps[i]->step)
                    one.steps[i] = load->builder;
        one.taken = takenOf(snapshot, id, bar->bar, bars.size() == 1);
        draft.bars.push_back(std::move(one));
    }
    for (const auto& share : snapshot.all<BatchShare>().of(id.uuid))
        draft.shares.emplace_back(share->yard, share->cells);
    const Day graft = graftDay(snapshot, *batch);
    for (const auto& stay : inOrder(snapshot.all<MatingStay>().of(id.uuid), &MatingStay::from))
        draft.stays.push_back({stay->id, stay->yard, stay->from - graft, stay->until - graft});
    for (const auto& makeUp : makeUpsFor(snapshot, *batch))
        draft.makeUp = makeUp->openBrood || draft.makeUp == MakeUpPlan::WithOpenBrood
                           ? MakeUpPlan::WithOpenBrood
                           : MakeUpPlan::WithoutOpenBrood;
    return draft;
}

}  // namespace tenthday
