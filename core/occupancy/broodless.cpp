#include "occupancy/broodless.h"

#include <algorithm>

namespace tenthday {
namespace {

/// Brood that comes into a builder.
struct BroodIn {
    Day day;
    bool open;
    bool sealed;  ///< there may be some
};

std::vector<BroodIn> broodOf(const Snapshot& snapshot, const BuilderOutlook& outlook) {
    std::vector<BroodIn> all;
    for (const auto& row : outlook.makeUps)
        all.push_back({row->day, row->openBrood, row->broodFrames != Frames{0}});
    for (const auto& note : snapshot.all<BuilderNote>().of(outlook.builder->id.uuid))
        if (note->kind == BuilderNoteKind::BroodIn && note->day >= outlook.makeUps.front()->day)
            all.push_back({note->day, note->openBrood, true});
    std::stable_sort(all.begin(), all.end(),
                     [](const BroodIn& a, const BroodIn& b) { return a.day < b.day; });
    return all;
}

/// The span that runs, should nothing more come in.
class Running {
public:
    explicit Running(Days worker) : worker_(worker) {}

    /// @return the span that new brood ends, where one ran
    std::optional<BroodlessSpan> take(const BroodIn& brood) {
        auto ended = started_ ? endedBy(brood) : std::nullopt;
        if (ended) openless_ = brood.day;
        const Day emerged = brood.day + (brood.open     ? worker_
                                         : brood.sealed ? worker_ - kWorkerSealed
                                                        : Days{0});
        if (!started_) openless_ = brood.day;
        if (brood.open) openless_ = std::max(openless_, brood.day + kWorkerSealed);
        emerged_ = started_ ? std::max(emerged_, emerged) : emerged;
        started_ = true;
        return ended;
    }
    [[nodiscard]] std::optional<BroodlessSpan> until(std::optional<Day> last) const {
        if (last && *last < openless_) return std::nullopt;
        BroodlessSpan span{openless_, last, std::max(openless_, emerged_)};
        if (last && *span.noneFrom > *last) span.noneFrom.reset();
        return span;
    }

private:
    /// Sealed brood ends only days without any: from then on there is sealed brood again.
    [[nodiscard]] std::optional<BroodlessSpan> endedBy(const BroodIn& brood) const {
        const auto span = until(brood.day - Days{1});
        const bool ends = brood.open || (brood.sealed && span && span->noneFrom);
        return ends ? span : std::nullopt;
    }

    Days worker_;
    bool started_ = false;
    Day openless_{};
    Day emerged_{};
};

}  // namespace

std::vector<BroodlessSpan> broodlessSpans(const Snapshot& snapshot, const BuilderOutlook& outlook) {
    std::vector<BroodlessSpan> spans;
    if (outlook.makeUps.empty() || !outlook.builder) return spans;
    Running running(Days{static_cast<int>(snapshot.facts()[Fact::WorkerD])});
    for (const auto& brood : broodOf(snapshot, outlook))
        if (const auto ended = running.take(brood)) spans.push_back(*ended);
    if (const auto last = running.until(outlook.builder->until)) spans.push_back(*last);
    return spans;
}

}  // namespace tenthday
