#include "base/side_by_side.h"

#include <tbb/parallel_for.h>
#include <tbb/task_arena.h>

#include <algorithm>
#include <atomic>
#include <utility>

namespace tenthday {
namespace {

thread_local bool oneByOne = false;

}  // namespace

OneByOne::OneByOne() : before_(std::exchange(oneByOne, true)) {}
OneByOne::~OneByOne() { oneByOne = before_; }

void sideBySide(std::size_t pieces, const std::function<void(std::size_t)>& piece) {
    if (pieces == 1 || oneByOne) {
        for (std::size_t i = 0; i < pieces; ++i) piece(i);
        return;
    }
    // Each core takes the next piece once it is done with one: pieces are of very different sizes.
    std::atomic<std::size_t> next = 0;
    const auto takeAll = [&](const tbb::blocked_range<std::size_t>&) {
        for (auto i = next++; i < pieces; i = next++) piece(i);
    };
    const auto cores = static_cast<std::size_t>(tbb::this_task_arena::max_concurrency());
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, std::min(pieces, cores), 1), takeAll,
                      tbb::simple_partitioner());
}

}  // namespace tenthday
