/// @file frame_times.h  What single frames took, for a benchmark that counts frames.
#pragma once
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <utility>
#include <vector>

namespace tenthday {

inline double secondsSince(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// Days something has been dragged by, frame by frame: to and fro, one day each time.
inline int draggedBy(int frame) {
    constexpr int kFarthest = 5;
    const int at = frame % (2 * kFarthest);
    return (at < kFarthest ? at : 2 * kFarthest - at) + 1;
}

/// Runs a frame for each iteration and tells its middle, its slowest tenth and hundredth, in ms.
/// @param prepare  is called before each, and not timed here
template <class Frame, class Prepare>
void timeFrames(benchmark::State& state, Frame&& frame, Prepare&& prepare) {
    std::vector<double> frames;
    for (auto _ : state) {
        prepare();
        const auto start = std::chrono::steady_clock::now();
        frame();
        frames.push_back(secondsSince(start));
    }
    std::sort(frames.begin(), frames.end());
    state.counters["p50_ms"] = frames[frames.size() / 2] * 1000;
    state.counters["p90_ms"] = frames[frames.size() * 9 / 10] * 1000;
    state.counters["p99_ms"] = frames[frames.size() * 99 / 100] * 1000;
    state.counters["worst_ms"] = frames.back() * 1000;
}

template <class Frame>
void timeFrames(benchmark::State& state, Frame&& frame) {
    timeFrames(state, std::forward<Frame>(frame), [] {});
}

}  // namespace tenthday
