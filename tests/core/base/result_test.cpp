#include "base/result.h"

#include <gtest/gtest.h>

#include <memory>

namespace tenthday {
namespace {

Result<int> half(int number) {
    if (number % 2 != 0) return Error{"not even: " + std::to_string(number)};
    return number / 2;
}

static_assert(!std::is_convertible_v<Result<int>, bool>, "a Result<int> must not turn into 1");
static_assert(!std::is_convertible_v<Result<int>, int>);

TEST(Result, HoldsTheValueOrTheReason) {
    EXPECT_EQ(half(8).value(), 4);
    const auto refused = half(7);
    ASSERT_FALSE(refused.ok());
    EXPECT_FALSE(refused);
    EXPECT_EQ(refused.error().text, "not even: 7");
}

TEST(Result, GivesUpAValueThatCannotBeCopied) {
    Result<std::unique_ptr<int>> result(std::make_unique<int>(5));
    const std::unique_ptr<int> taken = std::move(result).value();
    EXPECT_EQ(*taken, 5);
}

TEST(Result, TellsAnErrorFromAValueOfText) {
    const Result<std::string> text(std::string("fine"));
    const Result<std::string> error(Error{"fine"});
    EXPECT_TRUE(text.ok());
    EXPECT_FALSE(error.ok());
}

TEST(Result, OfNothingIsDoneUnlessRefused) {
    EXPECT_TRUE(Result<void>().ok());
    const Result<void> refused = Error{"no"};
    EXPECT_FALSE(refused.ok());
    EXPECT_EQ(refused.error(), Error{"no"});
}

}  // namespace
}  // namespace tenthday
