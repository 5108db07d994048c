/// @file id_source.h  Where new ids come from: core never makes one itself.
#pragma once
#include <functional>

#include "base/id.h"

namespace tenthday {

/// Gives a new id at each call.
using IdSource = std::function<Uuid()>;

}  // namespace tenthday
