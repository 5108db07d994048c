#include "drafting/day_trials.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "calendar/iso_week.h"
#include "drafting/draft_writers.h"

namespace tenthday {
namespace {

/// How far from the draft's day clear days are looked for, and from the wanted day starts.
constexpr Days kReach{60};

/// What makes two findings the same one.
auto identityOf(const Finding& finding) {
    return std::tuple(finding.kind, finding.day, finding.subjectLabel, finding.builderLabel,
                      finding.otherLabel, std::lround(finding.count), finding.sealed);
}

/// Whether it speaks against the day: warnings and worse, and that a box is not free, even where it
/// is only a note. Work on days off is told job by job; what finds no nuc in the yard that is named
/// for it goes to another.
bool speaksAgainstDay(const Finding& finding) {
    if (finding.kind == FindingKind::BuilderNotFree) return true;
    return finding.severity > Severity::Note && finding.kind != FindingKind::WorkOnDayOff &&
           finding.kind != FindingKind::YardFull;
}

/// Those that were not there before and speak against the day.
std::vector<Finding> newOnes(const std::vector<Finding>& now, const std::vector<Finding>& before) {
    std::multiset<decltype(identityOf(now.front()))> known;
    for (const auto& finding : before) known.insert(identityOf(finding));
    std::vector<Finding> fresh;
    for (const auto& finding : now) {
        if (const auto same = known.find(identityOf(finding)); same != known.end())
            known.erase(same);
        else if (speaksAgainstDay(finding))
            fresh.push_back(finding);
    }
    return fresh;
}

/// The book as if the batch had never been, also where deliveries keep it from being deleted.
Snapshot withoutBatch(const Snapshot& snapshot, Id<Batch> id) {
    ChangeSet unnamed;
    for (const auto& delivery : snapshot.all<Delivery>()) {
        if (delivery->fromBatch != id) continue;
        auto row = *delivery;
        row.fromBatch.reset();
        unnamed.edit(delivery, std::move(row));
    }
    auto rest = applied(snapshot, unnamed);
    const auto gone = rest ? deleteBatch(rest.value(), id) : Result<ChangeSet>(rest.error());
    if (gone) rest = applied(rest.value(), gone.value());
    return gone && rest ? std::move(rest).value() : snapshot;
}

/// The day, before today, of a make-up that the edit plans or moves there.
std::optional<Day> lateMakeUp(const Snapshot& before, const Snapshot& after) {
    for (const auto& makeUp : after.all<MakeUp>()) {
        const auto old = before.find(makeUp->id);
        if (makeUp->day < after.today() && (!old || old->day != makeUp->day)) return makeUp->day;
    }
    return std::nullopt;
}

}  // namespace

DayTrials::DayTrials(const Outlook& season, BatchDraft draft, FreeDays free)
    : base_(season.snapshot), draft_(std::move(draft)), free_(std::move(free)), memo_(season) {
    if (!draft_.id) draft_.id = {Uuid{~std::uint64_t{0}, 0}};
    const bool isNew = !base_.find(draft_.id);
    before_ = isNew ? season.findings : outlookOf(withoutBatch(base_, draft_.id), memo_)->findings;
}

/// The season with the draft on a day.
Result<OutlookPtr> DayTrials::tried(Day day, const Repeat& repeat) {
    auto draft = draft_;
    draft.day = day;
    const auto next = withDraft(base_, draft, repeat);
    if (!next) return next.error();
    auto outlook = outlookOf(next.value(), memo_);
    if (outlook->find(draft.id) == nullptr) return Error{"the batch is outside the season"};
    return outlook;
}

DayTrial DayTrials::clashesOf(const Outlook& tried) const {
    DayTrial trial;
    trial.clashes = newOnes(tried.findings, before_);
    trial.lateMakeUp = lateMakeUp(base_, tried.snapshot);
    return trial;
}

bool DayTrials::clashesWithNothing(Day day) {
    const auto outlook = tried(day, {});
    return outlook && clashesOf(*outlook.value()).clashesWithNothing();
}

Result<DayTrial> DayTrials::on(Day day, const Repeat& repeat) {
    const auto outlook = tried(day, repeat);
    if (!outlook) return outlook.error();
    const auto& there = *outlook.value();
    auto trial = clashesOf(there);
    trial.day = day;
    trial.graft = dayOf(there.find(draft_.id)->timeline.graft);
    trial.jobs = jobsOf(there, tasksOf(there), draft_.id);
    for (const auto& job : trial.jobs)
        if (free_.contains(job.dayBeside(free_))) trial.onFreeDays.push_back(job);
    return trial;
}

std::vector<DayTrial> DayTrials::week(const Cancelled& cancelled) {
    std::vector<DayTrial> trials;
    const auto own = on(draft_.day);
    if (!own) return trials;
    const Day monday = daysOf(isoWeekOf(own.value().graft)).first;
    const Days toStart = draft_.day - own.value().graft;
    for (int i = 0; i < 7; ++i) {
        if (cancelled && cancelled()) return {};
        if (auto trial = on(monday + Days{i} + toStart)) trials.push_back(std::move(trial).value());
    }
    return trials;
}

std::vector<DayTrial> DayTrials::nearestClear(std::size_t wanted, const Cancelled& cancelled) {
    std::vector<DayTrial> clear;
    const auto season = base_.season();
    const auto look = [&](Day day) {
        if (clear.size() == wanted || !season.contains(day) || day < base_.today()) return;
        if (auto trial = on(day); trial && trial.value().isClear())
            clear.push_back(std::move(trial).value());
    };
    for (Days away{0}; away <= kReach && clear.size() < wanted; away += Days{1}) {
        if (cancelled && cancelled()) return {};
        look(draft_.day - away);
        if (away > Days{0}) look(draft_.day + away);
    }
    return clear;
}

std::optional<Day> startFor(const Snapshot& snapshot, const BatchDraft& draft, Event event,
                            Day wanted, Sureness sureness) {
    OutlookMemo memo;
    const auto falls = [&](Day start) -> std::optional<Day> {
        auto tried = draft;
        if (!tried.id) tried.id = {Uuid{~std::uint64_t{0}, 0}};
        tried.day = start;
        const auto next = withDraft(snapshot, tried);
        if (!next) return std::nullopt;
        const auto batch = memo.batch(next.value(), next.value().find(tried.id));
        const auto* dates = batch->timeline.find(event);
        if (dates == nullptr) return std::nullopt;
        return dayOf(sureness == Sureness::Likely ? dates->likely : dates->latest);
    };
    const auto first = falls(draft.day);
    if (!first) return std::nullopt;
    // Dates keep their distance from the start but for what the season adds: near the answer at
    // once, then day by day.
    Day start = draft.day + (wanted - *first);
    const Day latest = start + kReach;
    for (int i = 0; i < kReach.count(); ++i) {
        const auto day = falls(start);
        if (!day) return std::nullopt;
        if (*day <= wanted) break;
        start -= Days{1};
    }
    for (Day later = start + Days{1}; later <= latest; later += Days{1}) {
        const auto day = falls(later);
        if (!day || *day > wanted) break;
        start = later;
    }
    const auto day = falls(start);
    return day && *day <= wanted ? std::optional(start) : std::nullopt;
}

}  // namespace tenthday
