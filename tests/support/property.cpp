#include "support/property.h"

#include <gtest/gtest-spi.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cstdlib>
#include <sstream>

namespace tenthday::test {
namespace {

/// Making a failing case smaller ends after so many further runs, so that a failure is told soon.
constexpr int kShrinkingRuns = 300;

/// What the macros of gtest told during the run; empty where all held.
std::string failuresOf(const std::function<void()>& property) {
    testing::TestPartResultArray results;
    {
        const testing::ScopedFakeTestPartResultReporter caught(
            testing::ScopedFakeTestPartResultReporter::INTERCEPT_ONLY_CURRENT_THREAD, &results);
        property();
    }
    std::ostringstream text;
    for (int i = 0; i < results.size(); ++i)
        if (results.GetTestPartResult(i).failed()) text << results.GetTestPartResult(i);
    return text.str();
}

rc::detail::TestParams paramsFor(int cases) {
    if (std::getenv("RC_PARAMS") != nullptr) return rc::detail::configuration().testParams;
    rc::detail::TestParams params;
    params.seed = 1;
    params.maxSuccess = cases;
    return params;
}

}  // namespace

int drawnBelow(int n) { return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(0, n)); }

void holdsFor(int cases, const std::function<void()>& property) {
    std::string told;  // of the smallest case so far
    int further = 0;
    const auto run = [&] {
        if (!told.empty() && ++further > kShrinkingRuns) return;
        const auto failures = failuresOf(property);
        if (failures.empty()) return;
        told = failures;
        RC_FAIL(failures);
    };
    const auto result =
        rc::detail::checkTestable(run, rc::detail::TestMetadata{}, paramsFor(cases));
    if (result.template is<rc::detail::SuccessResult>()) return;
    std::ostringstream drawn;
    rc::detail::printResultMessage(result, drawn);
    ADD_FAILURE() << told << drawn.str();
}

}  // namespace tenthday::test
