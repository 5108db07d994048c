#include "occupancy/nuc_memo.h"

#include <algorithm>

namespace tenthday {

const std::shared_ptr<const BareSides>& NucMemo::bareSides(const Snapshot& snapshot) {
    if (!bareSides_ || !bareSides_->areOf(snapshot))
        bareSides_ = std::make_shared<const BareSides>(snapshot);
    return bareSides_;
}

void NucMemo::keep(std::shared_ptr<const FittedNucs> fitted) {
    fitted_ = std::move(fitted);
    differing_.clear();
}

void NucMemo::sawDiffering(Differing differing) {
    constexpr std::ptrdiff_t kFew = 3;
    const auto stayed = std::count_if(differing.begin(), differing.end(), [&](const auto& one) {
        return std::find(differing_.begin(), differing_.end(), one) != differing_.end();
    });
    differing_ = std::move(differing);
    if (stayed > kFew) fitted_.reset();
}

}  // namespace tenthday
