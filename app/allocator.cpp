// Tunes the allocator that programs are linked with. Stands beside main.cpp, in no library.
#include <mimalloc.h>

namespace {

/// A frame of a drag frees what the next one allocates again. Memory given back to the system at
/// once comes again page by page, each with a fault.
constexpr long kKeepFreedMs = 1000;

[[maybe_unused]] const bool isTuned = [] {
#if MI_MALLOC_VERSION >= 210
    mi_option_set(mi_option_purge_delay, kKeepFreedMs);
#else
    mi_option_set(mi_option_decommit_delay, kKeepFreedMs);
#endif
    return true;
}();

}  // namespace
