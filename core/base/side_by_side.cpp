#include "base/side_by_side.h"

#include <tbb/parallel_for.h>

namespace tenthday {

void sideBySide(std::size_t pieces, const std::function<void(std::size_t)>& piece) {
    if (pieces == 1) return piece(0);
    const tbb::blocked_range<std::size_t> all(0, pieces, 1);
    tbb::parallel_for(
        all,
        [&](const tbb::blocked_range<std::size_t>& some) {
            for (auto i = some.begin(); i != some.end(); ++i) piece(i);
        },
        tbb::simple_partitioner());
}

}  // namespace tenthday
