/// @file bench_application.h  The one application of all benchmarks that paint. It is left to the
/// end of the process: what it holds may be gone before it.
#pragma once
#include <QApplication>

namespace tenthday {

inline QApplication& benchApplication() {
    static int count = 1;
    static char name[] = "bench";
    static char* names[] = {name, nullptr};
    static auto* app = new QApplication(count, names);
    return *app;
}

}  // namespace tenthday
