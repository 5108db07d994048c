#include "base/side_by_side.h"

#include <tbb/parallel_for.h>

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
    const tbb::blocked_range<std::size_t> all(0, pieces, 1);
    tbb::parallel_for(
        all,
        [&](const tbb::blocked_range<std::size_t>& some) {
            for (auto i = some.begin(); i != some.end(); ++i) piece(i);
        },
        tbb::simple_partitioner());
}

}  // namespace tenthday
