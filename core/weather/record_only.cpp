#include "weather/record_only.h"

namespace tenthday {

bool isRecordOnly(const FlyingChain& chain) {
    for (Day day = chain.window().first; day <= chain.window().last; day += Days{1})
        if (chain.chance(day) && !chain.known(day)) return false;
    return true;
}

}  // namespace tenthday
