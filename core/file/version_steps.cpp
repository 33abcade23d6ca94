#include "core/file/version_steps.h"

#include "core/file/fields.h"
#include "core/file/refusal.h"

namespace lacewright {

void bringUpToDate(JsonValue& document, std::span<const VersionStep> steps) {
    const auto newest = static_cast<std::int64_t>(steps.size()) + 1;
    const JsonValue& found = Fields(document).need(
        "version", "the version of the chart format, " + std::to_string(newest));
    const std::int64_t* whole = found.whole();
    if (whole == nullptr || *whole < 1) {
        refuse(found, "Found " + shown(found) + "; expected the version of the chart format, " +
                          std::to_string(newest) + ".");
    }
    std::int64_t version = *whole;
    if (version > newest) {
        refuse(found,
               "The chart is of version " + std::to_string(version) +
                   "; this program reads version " +
                   (newest == 1 ? "1." : "1 to " + std::to_string(newest) + "."),
               ErrorCode::Unsupported);
    }
    for (; version < newest; ++version) {
        steps[static_cast<std::size_t>(version - 1)](document);
        for (JsonMember& member : std::get<JsonObject>(document.data)) {
            if (member.name == "version") member.value.data = version + 1;
        }
    }
}

}  // namespace lacewright
