#include "occupancy/builder_story.h"

#include <algorithm>

namespace tenthday {
namespace {

StoryKind kindOf(BuilderNoteKind kind) {
    switch (kind) {
        case BuilderNoteKind::Look:
            return StoryKind::Looked;
        case BuilderNoteKind::BroodIn:
            return StoryKind::BroodIn;
        case BuilderNoteKind::BeesIn:
            return StoryKind::BeesIn;
        case BuilderNoteKind::Feed:
            return StoryKind::Feed;
        case BuilderNoteKind::Pollen:
            break;
    }
    return StoryKind::Pollen;
}

Moment startOf(Day day) { return momentOf(day, Hour{0}); }

class Teller {
public:
    Teller(const Snapshot& snapshot, const BuilderOutlook& outlook)
        : snapshot_(snapshot), outlook_(outlook), window_(snapshot.startDays()) {}

    std::vector<BuilderStoryLine> tell() {
        for (const auto& row : outlook_.makeUps) madeUp(row);
        for (const auto& row : snapshot_.all<BuilderNote>().of(outlook_.builder->id.uuid))
            noted(row);
        for (const auto& clock : outlook_.clocks) {
            look(clock, false);
            look(clock, true);
        }
        for (const auto& load : outlook_.loads) cells(load);
        for (const auto& days : outlook_.idle)
            if (auto* line = add(StoryKind::Idle, startOf(days.first)))
                line->until = startOf(days.last);
        for (const auto& span : broodlessSpans(snapshot_, outlook_)) broodless(span);
        if (outlook_.builder->until) add(StoryKind::Ends, startOf(*outlook_.builder->until));
        std::stable_sort(lines_.begin(), lines_.end(), [](const auto& a, const auto& b) {
            return dayOf(a.from) != dayOf(b.from)
                       ? a.from < b.from
                       : std::pair(a.kind, a.from) < std::pair(b.kind, b.from);
        });
        return std::move(lines_);
    }

private:
    /// Null where it is of another season. The line stays where it is until the next is added.
    BuilderStoryLine* add(StoryKind kind, Moment from) {
        if (!window_.contains(dayOf(from))) return nullptr;
        auto& line = lines_.emplace_back();
        line.kind = kind;
        line.from = from;
        return &line;
    }

    [[nodiscard]] const WildClock* clockOf(Uuid cause) const {
        for (const auto& clock : outlook_.clocks)
            if (clock.cause == cause) return &clock;
        return nullptr;
    }

    void madeUp(const Ptr<MakeUp>& row) {
        auto* line = add(StoryKind::MadeUp, momentOf(row->day, row->hour));
        if (line == nullptr) return;
        line->makeUp = row;
        line->clock = clockOf(row->id.uuid);
    }

    void noted(const Ptr<BuilderNote>& row) {
        auto* line = add(kindOf(row->kind), momentOf(row->day, row->hour));
        if (line == nullptr) return;
        line->note = row;
        line->clock = clockOf(row->id.uuid);
    }

    [[nodiscard]] bool isNoted(Day look) const {
        const auto notes = snapshot_.all<BuilderNote>().of(outlook_.builder->id.uuid);
        return std::any_of(notes.begin(), notes.end(), [&](const auto& note) {
            return note->kind == BuilderNoteKind::Look && note->day == look;
        });
    }

    /// The second look ends the clock: then none is wanted any more.
    void look(const WildClock& clock, bool second) {
        const auto& ticked = second ? clock.secondTicked : clock.firstTicked;
        if (ticked && isNoted(*ticked)) return;
        const auto& days = second ? clock.secondLook : clock.firstLook;
        auto* line = add(StoryKind::LookWanted, startOf(ticked.value_or(days.first)));
        if (line == nullptr) return;
        if (!ticked) line->until = startOf(days.last);
        line->clock = &clock;
        line->second = second;
        const Day today = snapshot_.today();
        const bool over = clock.secondTicked || dayOf(clock.runsOut) < today;
        line->look = ticked               ? LookState::Ticked
                     : over               ? LookState::Missed
                     : today < days.first ? LookState::Ahead
                     : today > days.last  ? LookState::Overdue
                                          : LookState::Due;
    }

    /// A stay's cells: what the take left; of those that come sealed, what comes.
    static double cellsOf(const LoadSpan& load) {
        double cells = 0;
        for (const auto& piece : load.thickness) {
            if (piece.sealed && cells > 0) break;
            cells = piece.cells;
        }
        return cells;
    }

    void cells(const BuilderLoad& load) {
        auto* line = add(StoryKind::Load, load.span->span.from);
        if (line == nullptr) return;
        line->until = load.span->span.until;
        line->batch = snapshot_.find(load.batch);
        line->cells = cellsOf(*load.span);
        line->room = openRoomOn(snapshot_, *outlook_.builder, dayOf(line->from));
        line->overfull =
            std::any_of(outlook_.overfull.begin(), outlook_.overfull.end(), [&](const auto& full) {
                return full.batch == load.batch && load.span->span.contains(full.from);
            });
    }

    void broodless(const BroodlessSpan& span) {
        auto* line = add(StoryKind::NoOpenBrood, startOf(span.from));
        if (line == nullptr) return;
        if (span.until) line->until = startOf(*span.until);
        line->noBroodFrom = span.noneFrom;
    }

    const Snapshot& snapshot_;
    const BuilderOutlook& outlook_;
    DayWindow window_;
    std::vector<BuilderStoryLine> lines_;
};

}  // namespace

std::vector<BuilderStoryLine> builderStory(const Snapshot& snapshot,
                                           const BuilderOutlook& outlook) {
    return Teller(snapshot, outlook).tell();
}

}  // namespace tenthday
