#include "cellsday/propose.h"

#include <algorithm>

#include "cellsday/choose_nucs.h"

namespace tenthday {
namespace {

CellTarget targetOf(Way way) {
    switch (way) {
        case Way::Split:
            return CellTarget::Split;
        case Way::Sold:
            return CellTarget::Sold;
        case Way::Caged:
            return CellTarget::Caged;
        case Way::Incubator:
            return CellTarget::Incubator;
        case Way::GivenAway:
            return CellTarget::GivenAway;
        case Way::Culled:
            return CellTarget::Culled;
        case Way::OtherYards:
            break;
    }
    return CellTarget::Nuc;
}

class Proposer {
public:
    Proposer(const Outlook& outlook, const std::vector<CellsNuc>& nucs, CellsDraft draft)
        : snapshot_(outlook.snapshot), nucs_(nucs), draft_(std::move(draft)) {}

    CellsDraft run(const WayOrder& order) {
        fillNamedYards();
        fillTogether();
        for (const auto& step : order)
            step.way == Way::OtherYards ? goNear(step.most) : goElsewhere(step);
        return std::move(draft_);
    }

private:
    [[nodiscard]] auto sharesOf(const BatchCells& cells) const {
        return snapshot_.all<BatchShare>().of(cells.batch.uuid);
    }
    [[nodiscard]] bool namesYards(const BatchCells& cells) const {
        const auto shares = sharesOf(cells);
        return std::any_of(shares.begin(), shares.end(),
                           [](const auto& share) { return share->cells.value > 0; });
    }
    /// Open nucs nobody has drafted; `stop` empty: of all yards.
    [[nodiscard]] std::vector<NucOffer> offers(std::optional<std::size_t> stop = {}) const {
        std::vector<NucOffer> offers;
        for (std::size_t i = 0; i < nucs_.size(); ++i) {
            const auto& nuc = nucs_[i];
            if (!nuc.isOpen() || draft_.in(nuc.id()) != nullptr) continue;
            if (!stop || nuc.stop == *stop)
                offers.push_back({i, nuc.stop, *nuc.since, nuc.fit == NucFit::Ready});
        }
        return offers;
    }
    /// Stops on the round at which cells are given already.
    [[nodiscard]] std::set<std::size_t> used() const {
        std::set<std::size_t> stops;
        for (const auto& nuc : nucs_)
            if (draft_.in(nuc.id()) != nullptr) stops.insert(nuc.stop);
        return stops;
    }

    void fillNamedYards() {
        for (std::size_t i = 0; i < draft_.batches.size(); ++i)
            for (const auto& stop : stops()) {
                for (const auto& share : sharesOf(draft_.batches[i]))
                    if (share->yard == stop.yard) {
                        const auto wanted = share->cells.value - given(i, stop.yard);
                        take(i, offers(stop.stop), std::min(wanted, left(i)));
                    }
            }
    }
    void fillTogether() {
        std::int32_t wanted = 0;
        for (const auto& cells : draft_.batches)
            if (!namesYards(cells)) wanted += std::max(cells.left(), 0);
        const auto on = offers();
        auto chosen = chooseNucs(on, static_cast<std::size_t>(wanted), used());
        auto next = chosen.begin();
        for (std::size_t i = 0; i < draft_.batches.size(); ++i)
            if (!namesYards(draft_.batches[i]))
                while (left(i) > 0 && next != chosen.end())
                    give(draft_, i, nucs_[on[*next++].nuc].id());
    }
    void goNear(std::optional<std::int32_t> most) {
        std::int32_t room = most.value_or(static_cast<std::int32_t>(nucs_.size()));
        for (std::size_t i = 0; i < draft_.batches.size(); ++i)
            while (left(i) > 0 && room > 0) {
                const auto stop = nearest();
                if (!stop) return;
                room -= take(i, offers(*stop), std::min(left(i), room));
            }
    }
    void goElsewhere(const WayStep& step) {
        const auto target = targetOf(step.way);
        for (auto& cells : draft_.batches) {
            std::int32_t some = std::max(cells.left(), 0);
            if (step.most) some = std::min(some, std::max(*step.most - draft_.on(target), 0));
            cells.others[static_cast<std::size_t>(target)] += some;
        }
    }

    struct Stop {
        std::size_t stop;
        Id<Yard> yard;
    };
    /// Yards with nucs, along the round.
    [[nodiscard]] std::vector<Stop> stops() const {
        std::vector<Stop> all;
        for (const auto& nuc : nucs_)
            if (all.empty() || all.back().stop != nuc.stop) all.push_back({nuc.stop, nuc.yard});
        return all;
    }
    /// Cells of a batch that go to a yard, recorded ones too.
    [[nodiscard]] std::int32_t given(std::size_t batch, Id<Yard> yard) const {
        const auto& done = draft_.batches[batch].doneNucs;
        return cellsIn(draft_, nucs_, batch, yard) +
               static_cast<std::int32_t>(
                   std::count_if(nucs_.begin(), nucs_.end(), [&](const CellsNuc& nuc) {
                       return nuc.yard == yard &&
                              std::find(done.begin(), done.end(), nuc.id()) != done.end();
                   }));
    }
    [[nodiscard]] std::int32_t left(std::size_t batch) const {
        return draft_.batches[batch].left();
    }
    std::int32_t take(std::size_t batch, const std::vector<NucOffer>& on, std::int32_t cells) {
        if (cells <= 0) return 0;
        const auto chosen = chooseNucs(on, static_cast<std::size_t>(cells), {});
        for (const auto at : chosen) give(draft_, batch, nucs_[on[at].nuc].id());
        return static_cast<std::int32_t>(chosen.size());
    }
    /// The yard with an open nuc that is nearest to one that gets cells; of equals the earlier.
    [[nodiscard]] std::optional<std::size_t> nearest() const {
        const auto from = used();
        std::optional<std::size_t> best;
        std::size_t bestWay = 0;
        for (const auto& offer : offers()) {
            std::size_t way = from.empty() ? offer.stop : nucs_.size() + offer.stop;
            for (const auto stop : from)
                way = std::min(way, stop > offer.stop ? stop - offer.stop : offer.stop - stop);
            if (!best || way < bestWay) best = offer.stop, bestWay = way;
        }
        return best;
    }

    const Snapshot& snapshot_;
    const std::vector<CellsNuc>& nucs_;
    CellsDraft draft_;
};

}  // namespace

WayOrder usualWays() { return {{Way::OtherYards, {}}, {Way::Caged, {}}}; }

CellsDraft proposeWays(const Outlook& outlook, const std::vector<CellsNuc>& nucs, CellsDraft draft,
                       const WayOrder& order) {
    return Proposer(outlook, nucs, std::move(draft)).run(order);
}

}  // namespace tenthday
