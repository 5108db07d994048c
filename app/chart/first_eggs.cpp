#include "chart/first_eggs.h"

namespace tenthday {
namespace {

constexpr double kHardlyAny = 0.1;
constexpr double kNearlyAll = 0.9;

double shareOf(const StateShares& shares, NucState state) {
    return static_cast<double>(shares[static_cast<std::size_t>(state)]);
}

std::optional<double> unsure(const StateShares& shares, double layingShare) {
    if (layingShare <= 0) return std::nullopt;
    const double eggs =
        (shareOf(shares, NucState::Laying) + shareOf(shares, NucState::JudgedGood)) / layingShare;
    return eggs >= kHardlyAny && eggs <= kNearlyAll ? std::optional(eggs) : std::nullopt;
}

}  // namespace

std::optional<double> unsureEggs(const SideDay& day) {
    if (day.round == nullptr || !day.round->isOpen()) return std::nullopt;
    return unsure(day.shares, day.round->timeline->hold.layingShare);
}

std::optional<double> unsureEggs(const NucHold& hold, Day day) {
    return unsure(hold.on(day), hold.layingShare);
}

}  // namespace tenthday
