#include "occupancy/nuc_memo.h"

namespace tenthday {

const std::shared_ptr<const BareSides>& NucMemo::bareSides(const Snapshot& snapshot) {
    if (!bareSides_ || !bareSides_->areOf(snapshot))
        bareSides_ = std::make_shared<const BareSides>(snapshot);
    return bareSides_;
}

}  // namespace tenthday
