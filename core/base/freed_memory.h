/// @file freed_memory.h  What is freed stays with the program.
#pragma once

namespace tenthday {

/// Tells the allocator to keep what is freed for what is made next, up to 256 MiB. All facts of a
/// season are made anew for each frame of a drag; handing tens of megabytes to the system and back
/// takes longer than reckoning with them. Call once, before threads start. Does nothing where the
/// C library has no such setting.
void keepFreedMemory();

}  // namespace tenthday
