#include <benchmark/benchmark.h>

#include "base/freed_memory.h"

int main(int argc, char** argv) {
    tenthday::keepFreedMemory();  // as the program does
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
