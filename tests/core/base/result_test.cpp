#include "core/base/result.h"

#include <gtest/gtest.h>

#include <memory>

namespace lacewright {
namespace {

Result<std::string> half(int number) {
    if (number % 2 != 0) return Error{ErrorCode::Refused, "An odd number has no half.", "number"};
    return std::to_string(number / 2);
}

TEST(Result, HoldsAValue) {
    const auto result = half(8);
    ASSERT_TRUE(result.has_value());
    EXPECT_TRUE(static_cast<bool>(result));
    EXPECT_EQ(*result, "4");
    EXPECT_EQ(result.value(), "4");
    EXPECT_EQ(result->size(), 1U);
}

TEST(Result, HoldsAnError) {
    const auto result = half(7);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error(), (Error{ErrorCode::Refused, "An odd number has no half.", "number"}));
}

TEST(Result, LetsItsValueBeChangedAndMovedOut) {
    Result<std::unique_ptr<int>> result = std::make_unique<int>(3);
    **result = 5;
    const std::unique_ptr<int> taken = *std::move(result);
    EXPECT_EQ(*taken, 5);
}

TEST(Error, PutsThePlaceBeforeTheMessage) {
    EXPECT_EQ((Error{ErrorCode::Malformed, "A comma is missing.", "fern.lacewright:3:7"}).text(),
              "fern.lacewright:3:7: A comma is missing.");
    EXPECT_EQ((Error{ErrorCode::Malformed, "A comma is missing.", {}}).text(),
              "A comma is missing.");
}

}  // namespace
}  // namespace lacewright
