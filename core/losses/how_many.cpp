#include "losses/how_many.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tenthday {
namespace {

std::vector<SeasonBatch> planned(const Split& split, std::span<const std::int32_t> grafts) {
    std::vector<SeasonBatch> batches;
    for (std::size_t i = 0; i < split.batches.size(); ++i) {
        const auto& batch = split.batches[i];
        batches.push_back({standing(grafts[i]), batch.rates, batch.seasonShare});
    }
    return batches;
}

/// Chances of the number wanted, for one split and any grafts; what is underway is summed once.
class Chances {
public:
    Chances(const Split& split, std::int32_t wanted)
        : split_(&split),
          wanted_(wanted),
          underway_(split.underway, split.seasonWeights, split.point) {}

    [[nodiscard]] double of(std::span<const std::int32_t> grafts) const {
        const SeasonCounts more(planned(*split_, grafts), split_->seasonWeights, split_->point);
        double chance = 0;
        for (std::size_t season = 0; season < more.seasons(); ++season)
            chance += more.weight(season) *
                      atLeastTogether(more.in(season), underway_.in(season), wanted_);
        return std::min(1.0, chance);
    }
    [[nodiscard]] double of(std::int32_t total) const { return of(graftsOf(*split_, total)); }

    /// See GraftsNeeded.
    [[nodiscard]] double ceiling() const {
        double chance = 0;
        for (std::size_t season = 0; season < underway_.seasons(); ++season)
            chance += underway_.weight(season) *
                      (givesIn(season) ? 1 : underway_.in(season).atLeast(wanted_));
        return std::min(1.0, chance);
    }

private:
    [[nodiscard]] bool givesIn(std::size_t season) const {
        const std::vector<std::int32_t> one(split_->batches.size(), 1);
        const auto batches = planned(*split_, one);
        return std::any_of(batches.begin(), batches.end(), [&](const auto& batch) {
            const double share = batch.seasonShare.empty() ? 1 : batch.seasonShare[season];
            return reached(batch.standing, batch.rates, split_->point, share).of(1) > 0;
        });
    }

    const Split* split_;
    std::int32_t wanted_;
    SeasonCounts underway_;
};

/// The least total from 0 to most with this chance. More is never less likely, so: a span that
/// doubles from the low end, where answers lie, then halves.
std::optional<std::int32_t> leastTotal(const Chances& chances, std::int32_t wanted, double chance,
                                       std::int32_t most) {
    std::int32_t tooFew = -1;
    std::int32_t enough = std::min(most, wanted);
    while (chances.of(enough) < chance) {
        if (enough == most) return std::nullopt;
        tooFew = enough;
        enough = std::min(most, 2 * enough + 1);
    }
    while (enough - tooFew > 1) {
        const auto middle = (tooFew + enough) / 2;
        (chances.of(middle) < chance ? tooFew : enough) = middle;
    }
    return enough;
}

}  // namespace

std::vector<std::int32_t> graftsOf(const Split& split, std::int32_t total) {
    const auto& batches = split.batches;
    std::vector<std::int32_t> grafts(batches.size());
    for (std::int32_t i = 0; i < total && !batches.empty(); ++i) {
        std::size_t next = 0;
        const auto claim = [&](std::size_t b) { return batches[b].share / (2 * grafts[b] + 1); };
        for (std::size_t b = 1; b < batches.size(); ++b)
            if (claim(b) > claim(next)) next = b;
        ++grafts[next];
    }
    return grafts;
}

SeasonCounts countsOf(const Split& split, std::span<const std::int32_t> grafts) {
    auto batches = planned(split, grafts);
    batches.insert(batches.end(), split.underway.begin(), split.underway.end());
    return {batches, split.seasonWeights, split.point};
}

double chanceOf(const Split& split, std::span<const std::int32_t> grafts, std::int32_t wanted) {
    return Chances(split, wanted).of(grafts);
}

GraftsNeeded graftsNeeded(const Split& split, std::int32_t wanted, double chance,
                          std::int32_t most) {
    const Chances chances(split, wanted);
    GraftsNeeded answer;
    answer.ceiling = chances.ceiling();
    if (chance <= answer.ceiling) answer.total = leastTotal(chances, wanted, chance, most);
    answer.grafts = graftsOf(split, answer.total.value_or(most));
    answer.chance = chances.of(answer.grafts);
    return answer;
}

Split withOneMore(const Split& split, std::vector<double> seasonShare) {
    auto more = split;
    if (split.batches.empty()) return more;
    auto batch = split.batches.back();
    batch.share = 0;
    for (const auto& other : split.batches) batch.share += other.share;
    batch.share /= static_cast<double>(split.batches.size());
    batch.seasonShare = std::move(seasonShare);
    more.batches.push_back(std::move(batch));
    return more;
}

}  // namespace tenthday
