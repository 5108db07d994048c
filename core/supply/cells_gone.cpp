#include "supply/cells_gone.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

constexpr double kRound = 1e-9;

class Gone {
public:
    explicit Gone(std::span<const RaisedPart> parts) : parts_(parts), taken_(parts.size()) {}

    void take(const CellsGone& gone) {
        const auto from = sourcesOf(gone);
        std::int32_t left = gone.count;
        for (const auto i : from) {
            auto& taken = gone.kind == OrderKind::RipeCell ? taken_[i].cells : taken_[i].virgins;
            const auto share = i == from.back() ? left : std::clamp(leftOf(i), 0, left);
            taken += share;
            left -= share;
        }
    }
    std::vector<TakenCells> result() { return std::move(taken_); }

private:
    [[nodiscard]] std::int32_t leftOf(std::size_t i) const {
        const auto& taken = taken_[i];
        return static_cast<std::int32_t>(std::floor(parts_[i].ripe.mean() + kRound)) - taken.cells -
               taken.virgins;
    }

    /// The parts it can have come out of, in the order in which they are drawn on.
    [[nodiscard]] std::vector<std::size_t> sourcesOf(const CellsGone& gone) const {
        std::vector<std::size_t> sources;
        for (std::size_t i = 0; i < parts_.size(); ++i)
            if (gone.batch ? parts_[i].batch == *gone.batch : serves(gone, parts_[i], gone.day))
                sources.push_back(i);
        if (sources.empty() && !gone.batch && gone.kind == OrderKind::RipeCell)
            sources = lastBefore(gone);
        std::stable_partition(sources.begin(), sources.end(),
                              [&](auto i) { return parts_[i].line == gone.line; });
        return sources;
    }

    static bool serves(const CellsGone& gone, const RaisedPart& part, Day day) {
        if (gone.line && part.line != gone.line) return false;
        if (gone.kind == OrderKind::RipeCell)
            return part.given == Given::Sealed && part.cellsDay() == day;
        return DayWindow{day - kVirginServes, day}.contains(part.outDay());
    }

    [[nodiscard]] std::vector<std::size_t> lastBefore(const CellsGone& gone) const {
        for (Day day = gone.day; day >= gone.day - kVirginServes; day -= Days{1}) {
            std::vector<std::size_t> sources;
            for (std::size_t i = 0; i < parts_.size(); ++i)
                if (serves(gone, parts_[i], day)) sources.push_back(i);
            if (!sources.empty()) return sources;
        }
        return {};
    }

    std::span<const RaisedPart> parts_;
    std::vector<TakenCells> taken_;
};

}  // namespace

std::vector<TakenCells> cellsGoneOf(std::span<const CellsGone> gone,
                                    std::span<const RaisedPart> parts) {
    Gone all(parts);
    for (const auto& delivery : gone) all.take(delivery);
    return all.result();
}

}  // namespace tenthday
