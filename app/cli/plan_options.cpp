#include "app/cli/plan_options.h"

#include "app/cli/measures.h"
#include "core/plan/body_sizes.h"
#include "core/plan/gauge.h"

namespace lacewright::cli {
namespace {

// An option that is a length; `otherwise` when it is not given.
Outcome readLength(const Call& call, const std::string& option, double& length) {
    if (!call.has(option)) return Done{};
    const auto value = lengthIn(call.get(option));
    if (!value) {
        return misuse(option + " must be a length such as 5 or 2in, not \"" + call.get(option) +
                      "\".");
    }
    length = *value;
    return Done{};
}

// "S=42,M=47.5": finished widths.
Result<std::vector<WantedWidth>> widthsFrom(const std::string& text) {
    std::vector<WantedWidth> widths;
    for (const std::string& part : split(text, ',')) {
        const std::size_t equals = part.rfind('=');
        const auto cm = equals == std::string::npos
                            ? std::nullopt
                            : lengthIn(std::string_view(part).substr(equals + 1));
        if (!cm)
            return misuse("--widths must be a list such as S=42,M=18.5in, not \"" + text + "\".");
        widths.push_back({part.substr(0, equals), *cm});
    }
    return widths;
}

// "women:bust": the middle of each measurement.
Result<std::vector<WantedWidth>> widthsOfTable(const std::string& text) {
    const auto parts = split(text, ':');
    std::vector<std::string> known;
    for (const BodySizeTable& table : bodySizeTables()) {
        for (const BodyMeasurement& measurement : table.measurements) {
            known.push_back(table.id + ":" + measurement.id);
            if (known.back() != (parts.size() == 1 ? text + ":bust" : text)) continue;
            std::vector<WantedWidth> widths;
            const bool girth = isGirth(measurement);
            for (std::size_t i = 0; i < table.sizes.size(); ++i) {
                widths.push_back({table.sizes[i], measurement.cm[i].middle()});
                if (girth) widths.back().body = widths.back().cm;
            }
            return widths;
        }
    }
    std::string all;
    for (const std::string& name : known) all += (all.empty() ? "" : ", ") + name;
    return misuse("There is no table \"" + text + "\"; there are " + all + ".");
}

Outcome readMultiple(const Call& call, PlanRequest& request) {
    const std::string text = call.get("--multiple", "1");
    const auto parts = split(text, '+');
    const auto multiple = wholeIn(parts[0]);
    const auto remainder = parts.size() == 2 ? wholeIn(parts[1]) : std::optional<int>(0);
    if (!multiple || !remainder || parts.size() > 2)
        return misuse("--multiple must be such as 2 or 4+2, not \"" + text + "\".");
    request.multiple = *multiple;
    request.remainder = *remainder;
    return Done{};
}

// "B=1,C=2": times of repeats by name.
Outcome readHeld(const Call& call, PlanRequest& request) {
    if (!call.has("--hold")) return Done{};
    for (const std::string& part : split(call.get("--hold"), ',')) {
        const std::size_t equals = part.rfind('=');
        const auto times = equals == std::string::npos
                               ? std::nullopt
                               : wholeIn(std::string_view(part).substr(equals + 1));
        if (!times) {
            return misuse("--hold must be a list such as B=1,C=2, not \"" + call.get("--hold") +
                          "\".");
        }
        request.held[part.substr(0, equals)] = *times;
    }
    return Done{};
}

}  // namespace

Result<PlanOptions> readPlanOptions(const Call& call, const Chart& chart) {
    if (call.has("--widths") && call.has("--table"))
        return misuse("Choose --widths or --table, not both.");
    PlanOptions options;
    PlanRequest& request = options.request;
    request.gauge = chart.gauge;
    if (call.has("--gauge")) {
        const auto gauge = gaugeFrom(call.get("--gauge"));
        if (!gauge) return gauge.error();
        request.gauge = *gauge;
    }
    const bool table = call.has("--table");
    auto widths = table ? widthsOfTable(call.get("--table")) : widthsFrom(call.get("--widths"));
    if (!widths) return widths.error();
    double ease = 0;
    for (const auto& [option, length] :
         {std::pair("--ease", &ease), std::pair("--tolerance", &request.toleranceCm),
          std::pair("--length", &options.lengthCm)}) {
        if (const Outcome read = readLength(call, option, *length); !read) return read.error();
    }
    const std::string part = call.get("--part", "1");
    const auto pieces = wholeIn(part);
    if (!pieces || *pieces < 1 || *pieces > 100)
        return misuse("--part must be into how many equal pieces the width is divided, not \"" +
                      part + "\".");
    for (WantedWidth& size : *widths) size.cm = (size.cm + ease) / *pieces;
    request.pieces = *pieces;
    request.sizes = std::move(*widths);
    const auto edge = wholeIn(call.get("--edge", "0"));
    if (!edge) return misuse("--edge must be a whole number of stitches.");
    request.edgeStitches = *edge;
    if (const Outcome read = readMultiple(call, request); !read) return read.error();
    if (const Outcome read = readHeld(call, request); !read) return read.error();
    return options;
}

}  // namespace lacewright::cli
