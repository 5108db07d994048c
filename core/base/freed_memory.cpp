#include "base/freed_memory.h"

#include <cstdlib>  // says which C library it is

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace tenthday {

void keepFreedMemory() {
#ifdef __GLIBC__
    mallopt(M_TRIM_THRESHOLD, 256 << 20);
    mallopt(M_MMAP_THRESHOLD, 32 << 20);  // the most it takes
#endif
}

}  // namespace tenthday
