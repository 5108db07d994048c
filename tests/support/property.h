/// @file property.h  What must hold for every case, tried on drawn ones (RapidCheck).
#pragma once
#include <functional>

namespace tenthday::test {

/// 0 to below n, each as likely, n > 0; only within a property. Made smaller when a case fails.
int drawnBelow(int n);

/// Tries `property` on so many cases that it makes out of drawnBelow() and checks by the macros of
/// gtest. A failure is one failure of the running test: the smallest case found, what it draws and
/// what was told of it. The same cases in every run; RC_PARAMS="seed=N max_success=N" in the
/// environment tries others.
void holdsFor(int cases, const std::function<void()>& property);

}  // namespace tenthday::test
