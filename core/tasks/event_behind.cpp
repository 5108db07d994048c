#include "tasks/event_behind.h"

namespace tenthday {
namespace {

std::optional<Event> eventOf(const Task& task, const BatchTimeline& timeline) {
    switch (task.key.rule) {
        case TaskRule::CellsOut:
            return Event::Ripe;
        case TaskRule::CellsIn:
            return timeline.find(Event::Ripe) != nullptr ? Event::Ripe : Event::Emergence;
        case TaskRule::CageCells:
            return Event::CageFrom;
        case TaskRule::FreeBreeder:
            return Event::FreeBreeder;
        case TaskRule::Confine:
            return Event::Confine;
        case TaskRule::MakeUpBuilder:
            return task.batch && task.key.subject == task.batch->uuid
                       ? std::optional(Event::MakeUpBuilder)
                       : std::nullopt;
        case TaskRule::Graft:
            return Event::Graft;
        case TaskRule::TakeCount:
            return Event::TakeCount;
        case TaskRule::MoveCells:
            return Event::ToFinisher;
        case TaskRule::FirstLook:
            return Event::FirstLook;
        case TaskRule::CatchQueens:
            return Event::Catch;
        case TaskRule::Feed:
            return Event::Graft;
        case TaskRule::ToStation:
        case TaskRule::Inseminate:
            return Event::DueToFly;
        case TaskRule::FromStation:
            return Event::FirstEggs;
        case TaskRule::CageQueens:
        case TaskRule::Deliver:
        case TaskRule::DroneComb:
        case TaskRule::FirstWildLook:
        case TaskRule::SecondWildLook:
        case TaskRule::StockNucs:
        case TaskRule::Own:
            return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace

std::optional<Event> eventBehind(const Task& task, const BatchTimeline& timeline) {
    const auto event = eventOf(task, timeline);
    return event && timeline.find(*event) != nullptr ? event : std::nullopt;
}

}  // namespace tenthday
