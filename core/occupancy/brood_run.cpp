#include "occupancy/brood_run.h"

#include <algorithm>

namespace tenthday {
namespace {

/// The span that runs, should nothing more come in.
class Running {
public:
    explicit Running(Days worker) : worker_(worker) {}

    /// @return the span that new brood ends, where one ran
    std::optional<BroodlessSpan> take(const BroodGiven& brood) {
        auto ended = started_ ? endedBy(brood) : std::nullopt;
        if (ended) openless_ = brood.from;
        const Day emerged = brood.last + (brood.open     ? worker_
                                          : brood.sealed ? worker_ - kWorkerSealed
                                                         : Days{0});
        if (!started_) openless_ = brood.from;
        if (brood.open) openless_ = std::max(openless_, brood.last + kWorkerSealed);
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
    [[nodiscard]] std::optional<BroodlessSpan> endedBy(const BroodGiven& brood) const {
        const auto span = until(brood.from - Days{1});
        const bool ends = brood.open || (brood.sealed && span && span->noneFrom);
        return ends ? span : std::nullopt;
    }

    Days worker_;
    bool started_ = false;
    Day openless_{};
    Day emerged_{};
};

}  // namespace

std::vector<BroodlessSpan> spansBetween(const std::vector<BroodGiven>& brood, Days worker,
                                        std::optional<Day> end) {
    std::vector<BroodlessSpan> spans;
    if (brood.empty()) return spans;
    Running running(worker);
    for (const auto& given : brood)
        if (const auto ended = running.take(given)) spans.push_back(*ended);
    if (const auto last = running.until(end)) spans.push_back(*last);
    return spans;
}

}  // namespace tenthday
