#include "core/file/version_steps.h"

#include <gtest/gtest.h>

#include <array>

#include "core/file/refusal.h"

namespace lacewright {
namespace {

// Two steps of an imagined format: from 1 to 2 "colour" is renamed, from 2 to 3 a member is added.
void renameColour(JsonValue& document) {
    for (JsonMember& member : std::get<JsonObject>(document.data)) {
        if (member.name == "colour") member.name = "yarn";
    }
}
void addNeedle(JsonValue& document) {
    std::get<JsonObject>(document.data).push_back({"needle", {std::int64_t{4}}});
}
constexpr std::array<VersionStep, 2> kSteps = {renameColour, addNeedle};

std::string upToDate(std::string_view text, std::span<const VersionStep> steps) {
    JsonValue document = parseJson(text);
    bringUpToDate(document, steps);
    return dumpJson(document);
}

TEST(VersionSteps, AreTakenFromTheVersionOfTheDocument) {
    EXPECT_EQ(upToDate(R"({"version": 1, "colour": "red"})", kSteps),
              R"({"version": 3, "yarn": "red", "needle": 4})");
    EXPECT_EQ(upToDate(R"({"version": 2, "colour": "red"})", kSteps),
              R"({"version": 3, "colour": "red", "needle": 4})");
    EXPECT_EQ(upToDate(R"({"version": 3, "colour": "red"})", kSteps),
              R"({"version": 3, "colour": "red"})");
}

TEST(VersionSteps, RefuseWhatIsNewerThanTheLast) {
    try {
        upToDate(R"({"version": 4})", kSteps);
        FAIL() << "version 4 was taken";
    } catch (const Refusal& refusal) {
        EXPECT_EQ(refusal.code, ErrorCode::Unsupported);
        EXPECT_EQ(refusal.message, "The chart is of version 4; this program reads version 1 to 3.");
    }
}

}  // namespace
}  // namespace lacewright
