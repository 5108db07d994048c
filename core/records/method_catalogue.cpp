#include "records/method_catalogue.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

struct StepPlan {
    BuilderKind where;
    std::int32_t from;
    std::int32_t to;
    std::int32_t rest;
};

/// UUIDv7 form with time zero: made once, by hand, for the built-in rows.
template <class Row>
Id<Row> fixedId(std::uint64_t number) {
    return {Uuid{0x0000000000007000ULL, 0x8000000000000000ULL | number}};
}

MethodSteps make(std::uint64_t number, std::string label, std::vector<StepPlan> plan) {
    MethodSteps made{{fixedId<Method>(number), 1, std::move(label)}, {}};
    for (const auto& p : plan) {
        const auto step = static_cast<std::int32_t>(made.steps.size()) + 1;
        made.steps.push_back({fixedId<Step>(number * 16 + static_cast<std::uint64_t>(step)), 1,
                              made.method.id, step, p.where, p.from, p.to, p.rest});
    }
    return made;
}

}  // namespace

const std::vector<MethodSteps>& builtInMethods() {
    using enum BuilderKind;
    static const std::vector<MethodSteps> methods{
        make(1, "one box", {{StarterFinisher, 0, 240, 1}}),
        make(2, "starter and finisher", {{Starter, 0, 24, 1}, {Finisher, 24, 240, 0}}),
        make(3, "one box and incubator", {{StarterFinisher, 0, 120, 1}, {Incubator, 120, 240, 0}}),
        make(4, "starter, finisher and incubator",
             {{Starter, 0, 24, 1}, {Finisher, 24, 120, 0}, {Incubator, 120, 240, 0}}),
        make(5, "one box, young cells", {{StarterFinisher, 0, 72, 1}})};
    return methods;
}

std::vector<Step> stepsBy(const MethodSteps& made, const Facts& facts) {
    const Facts usual(facts.revision());
    auto steps = made.steps;
    const auto follow = [&](std::int32_t& hour) {
        for (const auto fact : {Fact::StarterH, Fact::IncubatorFromH, Fact::RipeH})
            if (hour == static_cast<std::int32_t>(usual[fact]))
                return void(hour = static_cast<std::int32_t>(std::lround(facts[fact])));
    };
    for (auto& step : steps) {
        follow(step.fromHour);
        follow(step.toHour);
        step.toHour = std::max(step.toHour, step.fromHour + 1);
    }
    return steps;
}

}  // namespace tenthday
